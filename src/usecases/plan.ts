// The plan of a bike as it stands, line by line.

import { isFitted } from "../core/equipment.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import type { PlanItem, Repeat } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { offersFor, type PlanOffer } from "./plan-offers.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result } from "./refusals.ts";
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
  /** Other plans that there are for the bike. */
  readonly offers: readonly PlanOffer[];
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
    return done({
      bike: g.bike.id,
      nickname: g.bike.nickname,
      planName: base.name,
      column: g.bike.column,
      lines,
      dropped: droppedIn(ctx, g),
      offers: await offersFor(q, ctx, g),
    });
  });
}

/** What was dropped, by name; what the bike is not fitted for was never in it. */
const droppedIn = (ctx: Ctx, g: Garaged): readonly string[] =>
  g.plan.dropped.filter((item) => isFitted(item.fits, g.bike.equipment)).map((item) => ctx.itemName(item.key, item.called));
