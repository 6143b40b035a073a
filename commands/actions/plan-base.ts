// Taking a change of a plan back, taking another plan, pasting one, sharing one in place of the group's.

import { z } from "zod";
import type { Form } from "../../src/chat/reply.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { type BadFile, type BaseChange, compareBase, proposePasted, takeBase } from "../../src/usecases/plan-base.ts";
import { type PlanEdited, undoEdit } from "../../src/usecases/plan-edits.ts";
import { type PlanShared, replaceShared, unsharePlan } from "../../src/usecases/plan-share.ts";
import type { Words } from "../../src/words/en/english.ts";
import { handler, shapeOf } from "../define.ts";
import { baseChange, planEdited, planShared, sayBase, sayEdited, sayShared } from "../replies/plan-edits.ts";
import { formButton, said } from "../replies/said.ts";

const base = shapeOf<BaseChange>(baseChange);

export const pasteForm = ({ planEdits }: Words): Form => ({
  title: planEdits.form.title,
  fields: [{ name: "text", label: planEdits.form.text, kind: "paragraph", required: true, value: null, hint: null, options: [] }],
});

export const undoPlanEdit = handler<PlanEdited>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<PlanEdited>(planEdited),
  run: (ctx, { subject, rev }) => undoEdit(ctx, { bike: subject as BikeId, rev }),
  say: sayEdited,
});
export const takePlan = handler<BaseChange>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: base,
  run: (ctx, { subject, rev }) => {
    const [bike = "", hash = ""] = subject.split("/");
    return takeBase(ctx, { bike: bike as BikeId, hash, rev });
  },
  say: sayBase,
});
/** The subject is a bike and the plan that is offered: "starter plan" or "group plan" by its first word. */
export const showBeside = handler<BaseChange>({
  kind: "press",
  visibility: "private",
  data: base,
  run: (ctx, { subject }) => {
    const [bike = "", plan = ""] = subject.split("/");
    return compareBase(ctx, { bike, with: plan === "group" ? "group plan" : "starter plan" });
  },
  say: sayBase,
});
export const pastePlan = handler<BaseChange | BadFile>({
  kind: "form",
  visibility: "private",
  data: shapeOf<BaseChange | BadFile>(
    z.union([baseChange, z.object({ is: z.literal("bad file"), bike: z.string(), why: z.looseObject({ why: z.string() }) })]),
  ),
  open: async (_ctx, _pressed, words) => ({ is: "done", value: pasteForm(words) }),
  run: (ctx, { subject, fields }) => proposePasted(ctx, { bike: subject, text: fields["text"] ?? "" }),
  say: (out, words) =>
    "is" in out
      ? said([words.refusal(out.why)], { actions: [formButton("plan-paste", out.bike, words.planEdits.labels.pasteAgain, pasteForm(words))] })
      : sayBase(out, words),
});
const shares = { kind: "press", settles: true, visibility: "shared", data: shapeOf<PlanShared>(planShared), say: sayShared } as const;
/** In place of the group's plan: the subject is the bike and the plan that was shown, the revision names the group's. */
export const shareInstead = handler<PlanShared>({
  ...shares,
  run: (ctx, { subject, rev }) => {
    const [bike = "", hash = ""] = subject.split("/");
    return replaceShared(ctx, { bike: bike as BikeId, hash, rev });
  },
});
export const takeShareBack = handler<PlanShared>({ ...shares, run: (ctx, { subject }) => unsharePlan(ctx, { share: subject }) });
