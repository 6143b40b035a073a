// What is pressed, picked and filled in while a check is walked through.

import { z } from "zod";
import type { Form } from "../../src/chat/reply.ts";
import { BIKE_STATES } from "../../src/core/bike.ts";
import { FAULT_GRADES } from "../../src/core/check/checklist.ts";
import { ANSWERS } from "../../src/core/check/result.ts";
import { type BikeShown, changeBike, showBike } from "../../src/usecases/change-bike.ts";
import { answerPoints, type CheckStep, goTo, measurePoint, notePoint, showCheck } from "../../src/usecases/check-answer.ts";
import { beginCheck, listNamed } from "../../src/usecases/check-begin.ts";
import { type CheckMine, finishCheck, myBikesFor, reopenCheck } from "../../src/usecases/check-finish.ts";
import type { PointShown } from "../../src/usecases/check-view.ts";
import type { Ctx } from "../../src/usecases/context.ts";
import { given } from "../../src/usecases/given.ts";
import { done, type Result, refused } from "../../src/usecases/refusals.ts";
import type { Words } from "../../src/words/en/english.ts";
import { handler, shapeOf } from "../define.ts";
import { sayChanged } from "../replies/bikes.ts";
import { faultForm, measureForm, noteForm, sayMine, sayStep } from "../replies/check.ts";
import { checkMine as checkMineShape, checkStep } from "../replies/check-shapes.ts";
import { said } from "../replies/said.ts";
import { bikeShown } from "../shapes.ts";

const data = shapeOf<CheckStep>(checkStep);
/** A card of its own, in a message that stays. */
const fresh = { lasting: true, visibility: "private", data, say: sayStep } as const;
/** The card takes the place of the card pressed. */
const card = { ...fresh, settles: true } as const;

/** A subject is the check, and the place of a point in it. */
const partsOf = (subject: string): { readonly check: string; readonly n: number; readonly rest: string } => {
  const [check = "", n = "", rest = ""] = subject.split(".");
  return { check, n: /^\d{1,3}$/u.test(n) ? Number(n) : -1, rest };
};

const opening =
  (form: (point: PointShown, words: Words) => Form) =>
  async (ctx: Ctx, { subject }: { readonly subject: string }, words: Words): Promise<Result<Form>> => {
    const { check, n } = partsOf(subject);
    const shown = await showCheck(ctx, { check });
    if (shown.is === "refused") return shown;
    const point = shown.value.sections.flatMap((section) => section.points)[n];
    return point === undefined || shown.value.state !== "open" ? refused({ why: "gone" }) : done(form(point, words));
  };

export const checkBegin = handler<CheckStep>({
  ...fresh,
  kind: "pick",
  run: async (ctx, { subject, values }) => {
    const [bike = "", named = ""] = (values[0] ?? subject).split(".");
    const list = listNamed(named);
    if (list === null) return refused({ why: "gone" });
    const begun = await beginCheck(ctx, { list, bike });
    return begun.is === "refused" ? begun : done({ ...begun.value, logged: null });
  },
});
/** In the channel, before the season or at its end: each who presses gets a button for each bike of their own. */
export const checkMine = handler<CheckMine>({
  kind: "press",
  visibility: "private",
  data: shapeOf<CheckMine>(checkMineShape),
  run: (ctx, { subject }) => {
    const list = listNamed(subject);
    return list === null ? Promise.resolve(refused({ why: "gone" })) : myBikesFor(ctx, list);
  },
  say: sayMine,
});
export const checkShow = handler<CheckStep>({ ...fresh, kind: "press", run: (ctx, { subject }) => showCheck(ctx, { check: subject }) });

/** A button names its point; a list's points are what was picked. */
export const checkAnswer = handler<CheckStep>({
  ...card,
  kind: "press",
  run: async (ctx, { subject, rev, values }) => {
    const { check, n, rest } = partsOf(subject);
    const answer = ANSWERS.find((each) => each === rest);
    const points = values.length > 0 ? values.map(Number) : [n];
    return answer === undefined ? refused({ why: "gone" }) : answerPoints(ctx, { check, rev, n: points, answer });
  },
});
export const checkFault = handler<CheckStep>({
  ...card,
  kind: "form",
  open: opening(faultForm),
  run: async (ctx, { subject, rev, fields }) => {
    const { check, n } = partsOf(subject);
    const grade = FAULT_GRADES.find((each) => each === fields["grade"]);
    return answerPoints(ctx, { check, rev, n: [n], answer: "needs work", ...given({ grade, note: fields["what"], link: fields["link"] }) });
  },
});
export const checkMeasure = handler<CheckStep>({
  ...card,
  kind: "form",
  open: opening(measureForm),
  run: async (ctx, { subject, fields }) => {
    const { check, n } = partsOf(subject);
    return measurePoint(ctx, { check, n, figures: Array.from({ length: 5 }, (_, at) => fields[`figure${at}`] ?? "") });
  },
});
export const checkNote = handler<CheckStep>({
  ...card,
  kind: "form",
  open: opening(noteForm),
  run: async (ctx, { subject, fields }) => {
    const { check, n } = partsOf(subject);
    return notePoint(ctx, { check, n, note: fields["note"] ?? "", link: fields["link"] ?? "" });
  },
});
export const checkMore = handler<{ readonly key: string }>({
  kind: "press",
  visibility: "private",
  data: shapeOf(z.object({ key: z.string() })),
  run: async (ctx, { subject }) => {
    const { check, n } = partsOf(subject);
    const shown = await showCheck(ctx, { check });
    if (shown.is === "refused") return shown;
    return done({ key: shown.value.sections.flatMap((section) => section.points)[n]?.key ?? "" });
  },
  say: ({ key }, words) => said([words.checks.more(key) ?? words.checks.nothingMore()]),
});
export const checkSection = handler<CheckStep>({
  ...card,
  kind: "pick",
  run: async (ctx, { subject, values }) => goTo(ctx, { check: subject, section: Number(values[0] ?? -1) }),
});
export const checkFinish = handler<CheckStep>({ ...card, kind: "press", run: (ctx, { subject, rev }) => finishCheck(ctx, { check: subject, rev }) });
export const checkReopen = handler<CheckStep>({ ...card, kind: "press", run: (ctx, { subject, rev }) => reopenCheck(ctx, { check: subject, rev }) });

/** Put away at the end of a lay-up, ridden again at the end of a check out of storage. */
export const checkState = handler<BikeShown>({
  kind: "press",
  visibility: "private",
  data: shapeOf<BikeShown>(bikeShown),
  run: async (ctx, { subject }) => {
    const [bike = "", named] = subject.split(".");
    const state = BIKE_STATES.find((each) => each === named);
    return state === undefined ? refused({ why: "gone" }) : changeBike(ctx, { bike, state });
  },
  say: sayChanged,
});

/** A silent bike that is ridden all the same: it was asked about once, and is left alone until it is logged and silent again. */
export const checkRiding = handler<BikeShown>({
  kind: "press",
  visibility: "private",
  data: shapeOf<BikeShown>(bikeShown),
  run: (ctx, { subject }) => showBike(ctx, { bike: subject }),
  say: ({ nickname }, words) => said([words.season.rides(nickname)]),
});
