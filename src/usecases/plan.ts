// The plan of a bike: shown, and its intervals changed by its owner. The change is shown beside what is, and saved only when said so.

import type { Bike } from "../core/bike.ts";
import { isFitted } from "../core/equipment.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { fold } from "../core/plan/fold.ts";
import type { Interval, PlanItem, Repeat } from "../core/plan/plan.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import { firstMarks } from "../core/schedule/marks.ts";
import { readEvery } from "../message/read-every.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { type DueBike, type DueLine, dueBike } from "./due.ts";
import { editPlan } from "./edit-plan.ts";
import { type Garaged, garagedOf } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { itemsNamed, nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

/** One line of a plan. `before`: what it said when the bike got it, where that has been changed. */
export type PlanLine = Pick<PlanItem, "system" | "anchor" | "first" | "repeat"> & {
  readonly item: ItemKey;
  readonly name: string;
  readonly before: Repeat | null;
};
export type PlanShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly planName: string;
  readonly column: DistanceUnit;
  readonly lines: readonly PlanLine[];
  /** Names of items that were dropped. */
  readonly dropped: readonly string[];
};

/** Every line of a bike's plan, as it stands. */
export async function showPlan(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<PlanShown>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const base = await q.bikes.base(g.bike.planHash);
    const was = new Map(base.items.map((item) => [item.key, item.repeat]));
    const lines = g.plan.items.map(({ key, system, anchor, first, repeat }): PlanLine => {
      const before = was.get(key);
      const changed = before !== undefined && JSON.stringify(before) !== JSON.stringify(repeat);
      return { item: key, name: nameIn(ctx, g, key), system, anchor, first, repeat, before: changed ? before : null };
    });
    return done({ bike: g.bike.id, nickname: g.bike.nickname, planName: base.name, column: g.bike.column, lines, dropped: droppedIn(ctx, g) });
  });
}

/** What was dropped, by name; what the bike is not fitted for was never in it. */
const droppedIn = (ctx: Ctx, g: Garaged): readonly string[] =>
  g.plan.dropped.filter((item) => isFitted(item.fits, g.bike.equipment)).map((item) => ctx.itemName(item.key, item.called));

/** An item under one interval: its first marks, where it goes by marks, and how it stands. */
export type Under = { readonly repeat: Repeat; readonly marks: readonly Ridden[]; readonly due: DueLine };
export type IntervalChange = {
  readonly bike: Omit<DueBike, "dues" | "first">;
  readonly column: DistanceUnit;
  readonly item: ItemKey;
  readonly name: string;
  readonly was: Under;
  readonly will: Under;
  readonly every: Interval;
  /** Counts the changes of the plan: a change is saved only on the plan that it was shown with. */
  readonly rev: number;
  readonly saved: boolean;
};

/** An interval as typed, beside the one in force. Nothing is saved by it. */
export async function proposeInterval(
  ctx: Ctx,
  input: { readonly bike?: string; readonly item: string; readonly every: string },
): Promise<Result<IntervalChange>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const named = itemsNamed(ctx, all, which.value, input.item);
    if (named.is === "refused") return named;
    const [key, ...others] = named.value;
    if (key === undefined || others.length > 0)
      return refused({ why: "which item", typed: input.item, items: named.value.map((each) => nameIn(ctx, which.value, each)) });
    const every = readEvery(input.every, knownOf(ctx, all));
    return every === null ? refused({ why: "not an interval", typed: input.every }) : changed(ctx, which.value, key, { by: "interval", every });
  });
}

/** Saves an interval that was shown. @param rev the plan that it was shown with */
export async function saveInterval(
  ctx: Ctx,
  input: { readonly bike: BikeId; readonly item: ItemKey; readonly every: Interval; readonly rev: number },
): Promise<Result<IntervalChange>> {
  return editing(ctx, input.bike, input.rev, (g) => changed(ctx, g, input.item, { by: "interval", every: input.every }));
}

/** Takes the last change of a plan back, by a change of its own: the record of both stays. */
export async function undoInterval(ctx: Ctx, input: { readonly bike: BikeId; readonly rev: number }): Promise<Result<IntervalChange>> {
  return editing(ctx, input.bike, input.rev, async (g, q) => {
    const last = g.bike.edits.at(-1)?.edit;
    if (last?.change !== "interval") return refused({ why: "gone" });
    const edits = g.bike.edits.slice(0, -1).map(({ edit }) => edit);
    const before = fold(await q.bikes.base(g.bike.planHash), edits).items.find((item) => item.key === last.item);
    return before === undefined ? refused({ why: "gone" }) : changed(ctx, g, last.item, before.repeat);
  });
}

function editing(
  ctx: Ctx,
  bike: BikeId,
  rev: number,
  work: (g: Garaged, q: Repos) => Result<IntervalChange> | Promise<Result<IntervalChange>>,
): Promise<Result<IntervalChange>> {
  return editPlan<IntervalChange>(ctx, bike, rev, async (g, q) => {
    const change = await work(g, q);
    if (change.is === "refused") return change;
    const { item, will } = change.value;
    return done({ edits: [{ change: "interval", item, repeat: will.repeat }], value: { ...change.value, rev: rev + 1, saved: true } });
  });
}

/** The bike as it is and as it would be. */
function changed(ctx: Ctx, g: Garaged, key: ItemKey, repeat: Repeat): Result<IntervalChange> {
  const item = g.plan.items.find((each) => each.key === key);
  if (item === undefined) return refused({ why: "gone" });
  if (JSON.stringify(item.repeat) === JSON.stringify(repeat)) return refused({ why: "already so", state: nameIn(ctx, g, key) });
  const items = g.plan.items.map((each) => (each.key === key ? { ...each, repeat } : each));
  const { epochs } = g.track;
  const then = garagedOf(g.bike, { ...g.plan, items }, { ...g, epochs }, g.today);
  const { dues: _dues, first: _first, ...bike } = dueBike(ctx, g);
  const [was, will] = [under(ctx, g, key), under(ctx, then, key)];
  if (was === null || will === null) return refused({ why: "gone" });
  const every = repeat.by === "interval" ? repeat.every : NO_LEGS;
  return done({ bike, column: g.bike.column, item: key, name: nameIn(ctx, g, key), was, will, every, rev: revOf(g.bike), saved: false });
}

const NO_LEGS: Interval = { miles: null, km: null, months: null, hours: null };
const revOf = (bike: Bike): number => bike.edits.length;

function under(ctx: Ctx, g: Garaged, key: ItemKey): Under | null {
  const item = g.plan.items.find((each) => each.key === key);
  const due = dueBike(ctx, g).dues.find((each) => each.item === key);
  return item === undefined || due === undefined
    ? null
    : { repeat: item.repeat, marks: item.anchor === "marks" ? firstMarks(item.repeat, g.bike.column) : [], due };
}
