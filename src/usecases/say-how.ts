// How a reading was taken, said after it was logged: what a judgement lacked, given by a press.

import { CONDITIONS_READ, type ConditionRead, type ReadingDetail } from "../core/reading/detail.ts";
import { Conflict } from "../store/store.ts";
import { type Counted, countedFor } from "./checked.ts";
import type { Ctx } from "./context.ts";
import type { DefectShown } from "./defect-shown.ts";
import { duesOf, pick } from "./garage.ts";
import type { JudgedOn } from "./judged.ts";
import { named, shownOn } from "./log-set.ts";
import type { NamedBike } from "./message-outcome.ts";
import { ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { noteVerdicts } from "./verdict-defects.ts";

/** Readings judged anew. */
export type ToldHow = {
  readonly bike: NamedBike;
  readonly judged: readonly JudgedOn[];
  /** Items that the readings count for as looked at, and what is lacking of others. */
  readonly counted: readonly Counted[];
  readonly defects: readonly DefectShown[];
  readonly closed: readonly DefectShown[];
};

/** What can be said afterwards. */
export const HOW = [...CONDITIONS_READ, "rpm", "pitches"] as const;
export type How = (typeof HOW)[number];

/** Between what each figure lies: an engine between idling and racing, some of a chain's links up to the whole of it. */
const FIGURES = { rpm: [300, 20_000], pitches: [2, 200] } as const;

/** Says it of a reading and of all of its kind from the same message: both valves of a cylinder were cold. @param figure as typed, for rpm and pitches */
export async function sayHow(ctx: Ctx, input: { readonly reading: string; readonly how: How; readonly figure?: string }): Promise<Result<ToldHow>> {
  const said = saidOf(input.how, input.figure ?? "");
  if (said === null) return refused({ why: "not how", how: input.how === "pitches" ? "pitches" : "rpm", typed: input.figure ?? "" });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<ToldHow>> => {
    const reading = await q.readings.byId(input.reading);
    if (reading === null || reading.state === "withdrawn") return refused({ why: "gone" });
    const before = pick(await ownGarage(q, ctx), reading.bike);
    if (before === null) return refused({ why: "not yours" });
    const beside = reading.message === null ? [reading] : await q.readings.ofMessage(reading.message);
    const those = beside.filter(({ kind, bike }) => kind === reading.kind && bike === reading.bike);
    for (const each of those) {
      const next = { ...each, rev: each.rev + 1, by: ctx.who.member, at: ctx.now, why: "how it was taken", detail: withHow(each.detail, said) };
      if (!(await q.readings.revise(next))) throw new Conflict("reading changed meanwhile");
    }
    await touch(q, ctx, [reading.bike]);
    const after = pick(await ownGarage(q, ctx), reading.bike);
    if (after === null) return refused({ why: "gone" });
    const judged = after.judged.filter(({ id }) => those.some((each) => each.id === id)).map((each) => ({ ...each, bike: reading.bike, first: true }));
    // Told how, it may turn out not to be ridden on, or right again.
    const { noted, closed } = await noteVerdicts(q, ctx, [after], { judged, readings: those, work: [] }, ctx.event, 0);
    const counted = countedFor(ctx, after, duesOf(before), judged, new Set());
    return done({ bike: named(after), judged, counted, defects: shownOn([after], noted), closed: shownOn([after], closed) });
  });
  return onceHeard(acted);
}

type Said = { readonly condition: ConditionRead } | { readonly rpm: number } | { readonly pitches: number };

function saidOf(how: How, figure: string): Said | null {
  if (how !== "rpm" && how !== "pitches") return { condition: how };
  const value = Number(figure.replace(/[\s,.]/gu, ""));
  const [least, most] = FIGURES[how];
  if (!Number.isInteger(value) || value < least || value > most) return null;
  return how === "rpm" ? { rpm: value } : { pitches: value };
}

/** Of two conditions that exclude each other the later word holds. */
const INSTEAD: Partial<Record<ConditionRead, readonly ConditionRead[]>> = {
  ...{ cold: ["warm", "running", "idling"], warm: ["cold"], upright: ["on the side stand", "under load"], "on the side stand": ["upright", "under load"] },
  ...{ "under load": ["upright", "on the side stand"] },
};

function withHow(detail: ReadingDetail | null, said: Said): ReadingDetail {
  if (!("condition" in said)) return { ...detail, ...said };
  const others = (detail?.conditions ?? []).filter((each) => each !== said.condition && INSTEAD[said.condition]?.includes(each) !== true);
  const { stood: _stood, ...same } = detail ?? {};
  return { ...(said.condition === "rested" ? same : detail), conditions: [...others, said.condition] };
}
