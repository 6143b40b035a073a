// The service chart of a bike's plan, for what it is fitted with and how it is used.

import type { BikeId } from "../core/ids.ts";
import { type Chart, type ChartRow, chartOf } from "../core/plan/chart.ts";
import type { Condition } from "../core/plan/plan.ts";
import { figureIn, stretchOf } from "../core/quantity/distance.ts";
import { readDial } from "../message/read-dial.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type ChartLine = ChartRow & { readonly name: string };
export type ChartShown = Omit<Chart, "rows" | "below"> & {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly planName: string;
  /** Uses of the bike that shorten intervals: counted in. */
  readonly conditions: readonly Condition[];
  readonly rows: readonly ChartLine[];
  readonly below: readonly ChartLine[];
};

const MOST = 200_000;

/** The chart up to one whole cycle, or up to a distance typed. */
export async function showChart(ctx: Ctx, input: { readonly bike?: string; readonly until?: string }): Promise<Result<ChartShown>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const end = input.until === undefined ? null : endTyped(ctx, all, g, input.until);
    if (input.until !== undefined && end === null) return refused({ why: "not a distance", typed: input.until, unit: g.bike.column });
    const chart = chartOf(g.plan.items, g.bike.column, g.bike.conditions, end);
    const named = (rows: readonly ChartRow[]): ChartLine[] => rows.map((row) => ({ ...row, name: nameIn(ctx, g, row.item) }));
    const base = await q.bikes.base(g.bike.planHash);
    return done({
      ...{ ...chart, bike: g.bike.id, nickname: g.bike.nickname, planName: base.name },
      ...{ conditions: g.bike.conditions, rows: named(chart.rows), below: named(chart.below) },
    });
  });
}

function endTyped(ctx: Ctx, all: readonly Garaged[], g: Garaged, typed: string): number | null {
  const { column } = g.bike;
  const dial = readDial(typed, knownOf(ctx, all), column);
  if (dial === null || dial.value <= 0 || dial.value > MOST) return null;
  return Math.round(figureIn(stretchOf(dial.value, dial.unit), column));
}
