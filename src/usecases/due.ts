// What is due: every item of the speaker's bikes with its status and the facts of its reason.

import type { LocalDate } from "../core/calendar/dates.ts";
import { worstFirst } from "../core/defect.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { callsForWork } from "../core/judgement/verdict.ts";
import type { Condition } from "../core/plan/plan.ts";
import type { DistanceUnit, Stretch } from "../core/quantity/distance.ts";
import { doTheseFirst } from "../core/schedule/do-these-first.ts";
import type { Due } from "../core/schedule/facts.ts";
import type { Basis } from "../core/usage/forecast.ts";
import type { PutOff } from "../store/notices.ts";
import type { Ctx } from "./context.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { duesOf, figureOfLast, type Garaged, itemsOf, pick } from "./garage.ts";
import type { Judged } from "./judged.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { type NextShown, nextOf } from "./picture-next.ts";
import { putOffsShown } from "./put-off.ts";
import { done, type Result, refused } from "./refusals.ts";
import { type Standing, whileItStands } from "./standing.ts";
import { defectOf } from "./verdict-defects.ts";
import { type WornPart, wornParts } from "./wear.ts";
import { whichBike } from "./which-bike.ts";

export type DueBike = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  /** Subtract from a ridden distance to get what the dial shows. */
  readonly offset: number;
  readonly today: LocalDate;
  readonly odometer: { readonly figure: number; readonly on: LocalDate } | null;
  readonly perWeek: Stretch | null;
  readonly basis: Basis;
  readonly laidUp: boolean;
  readonly conditions: readonly Condition[];
  readonly dues: readonly DueLine[];
  /** Keys of what a used bike with no history wants first. */
  readonly first: readonly ItemKey[];
  readonly standing?: Standing | null;
  /** How far tyres and pads still go, where a line can be drawn through their readings. */
  readonly worn?: readonly WornPart[];
  /** What was measured at its limit or beyond and no line of the plan speaks of; for the owner alone. */
  readonly measured?: readonly Judged[];
  /** What stands open, do not ride first; for the owner alone. */
  readonly defects?: readonly DefectShown[];
};

export type DueLine = Due & {
  readonly name: string;
  readonly caution: string | null;
  /** Until when its owner put off hearing of it. */
  readonly putOff?: { readonly until: LocalDate; readonly figure: { readonly at: number; readonly unit: DistanceUnit } | null };
};

/** The caution of the most urgent of several things told together, since one line of caution is said. */
export const mostUrgentCaution = (dues: readonly Pick<DueLine, "status" | "caution">[]): string | null =>
  (["overdue", "due", "soon"] as const).flatMap((status) => dues.filter((due) => due.status === status && due.caution !== null))[0]?.caution ?? null;

/** `next`: what its picture shows, where one was asked for. */
export type DueReport = { readonly bikes: readonly DueBike[]; readonly next?: readonly NextShown[] };

/** More bikes than these are not drawn: one answer holds only so many files. */
export const MOST_PICTURES = 5;

/** Status and reasons of one bike, or of all the speaker's bikes when none is named. */
export async function whatIsDue(ctx: Ctx, input: { readonly bike?: string; readonly picture?: boolean; readonly share?: boolean }): Promise<Result<DueReport>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const named = one === null ? all : [one.value];
    // What is wrong with a bike, and what its owner would not hear of, is theirs alone: in words and in the picture.
    const chosen = input.share === true ? named.map(withoutFaults) : named;
    const put = input.share === true ? [] : await q.notices.putOffsOf(chosen.map((g) => g.bike.id));
    return done({
      bikes: chosen.map((g) => ownDueBike(ctx, g, put)),
      ...(input.picture === true ? { next: chosen.slice(0, MOST_PICTURES).map((g) => nextOf(ctx, g)) } : {}),
    });
  });
}

/** A bike as others may see it. */
export const withoutFaults = (g: Garaged): Garaged => ({ ...g, defects: [], judged: [] });

/** The due list of one bike by its id, as a button names it. */
export async function whatIsDueOn(ctx: Ctx, bike: BikeId): Promise<Result<DueReport>> {
  return ctx.store.read(async (q) => {
    const g = pick(await ownGarage(q, ctx), bike);
    if (g === null) return refused({ why: "not yours" });
    return done({ bikes: [ownDueBike(ctx, g, await q.notices.putOffsOf([bike]))] });
  });
}

const ownDueBike = (ctx: Ctx, g: Garaged, put: readonly PutOff[]): DueBike => ({
  ...withPutOffs(dueBike(ctx, g), putOffsShown(g, put)),
  standing: whileItStands(ctx, g),
  worn: wornParts(g).filter(({ wear }) => wear.is === "line"),
  measured: unplanned(g),
  defects: g.defects.toSorted(worstFirst).map((defect) => defectShown(g, defect)),
});

const withPutOffs = (bike: DueBike, put: ReturnType<typeof putOffsShown>): DueBike => ({
  ...bike,
  dues: bike.dues.map((line) => {
    const putOff = put.get(line.item);
    return putOff === undefined ? line : { ...line, putOff };
  }),
});

/** A verdict that makes no item due is told by itself, unless a defect tells it; and a level that is low unless it was looked at otherwise than it has to be. */
const unplanned = (g: Garaged): readonly Judged[] =>
  g.judged.filter(
    (judged) =>
      ((callsForWork(judged.judgement) && !g.plan.items.some(({ key }) => key === judged.item)) || (judged.unit === "level" && judged.ifSo !== null)) &&
      !g.defects.some(({ from, kind }) => from === "verdict" && kind === defectOf(judged)),
  );

/** The due list of one bike, ready to be worded. */
export function dueBike(ctx: Pick<Ctx, "itemName">, g: Garaged): DueBike {
  const items = new Map(itemsOf(g).map((item) => [item.key, item]));
  const dues = duesOf(g);
  const last = g.track.points.at(-1);
  const figure = figureOfLast(g);
  return {
    bike: g.bike.id,
    nickname: g.bike.nickname,
    unit: g.unit,
    offset: g.track.epochs.at(-1)?.offset ?? 0,
    today: g.today,
    odometer: last === undefined || figure === null ? null : { figure, on: last.on },
    perWeek: g.at.forecast.perWeek,
    basis: g.at.forecast.basis,
    laidUp: g.bike.state === "laid up",
    conditions: g.bike.conditions,
    dues: dues.map((due) => ({ ...due, name: ctx.itemName(due.item, items.get(due.item)?.called ?? null), caution: items.get(due.item)?.caution ?? null })),
    first: doTheseFirst(dues, g.plan),
  };
}
