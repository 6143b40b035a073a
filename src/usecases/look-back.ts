// Looking back at work: what was done, when, at what odometer, by whom, with what, and how we know; what was taken back is shown as taken back.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { readVagueDate } from "../message/read-vague-date.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import type { Ctx } from "./context.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import type { Garaged } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { itemsNamed } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type CostSum = { readonly currency: string | null; readonly minor: number };
export type BikeRecords = {
  readonly bike: string;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  /** Newest first; withdrawn ones stand among them. */
  readonly work: readonly WorkRecord[];
  /** Of what stands. */
  readonly costs: readonly CostSum[];
  /** For its owner alone. */
  readonly defects: readonly DefectShown[];
};
export type LookBack = { readonly is: "records"; readonly bikes: readonly BikeRecords[] };

/** Work on record of one bike or of each, of one item or of all, since a day or from the beginning. */
export async function lookBack(
  ctx: Ctx,
  input: { readonly bike?: string; readonly item?: string; readonly since?: string; readonly share?: boolean },
): Promise<Result<LookBack>> {
  return ctx.store.read(async (q): Promise<Result<LookBack>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const since = input.since === undefined ? null : readVagueDate(input.since, knownOf(ctx, all));
    if (input.since !== undefined && (since === null || since === "unknown")) return refused({ why: "not a date", typed: input.since });
    const from = since === null || since === "unknown" ? null : since.from;
    const bikes: BikeRecords[] = [];
    let missed: Result<never> | null = null;
    for (const g of one === null ? all : [one.value]) {
      const items = input.item === undefined ? null : itemsNamed(ctx, all, g, input.item);
      if (items?.is === "refused") {
        missed = items;
        continue;
      }
      bikes.push(await recordsOf(q, g, items === null ? null : items.value, from, input.share === true));
    }
    // An item that none of the bikes has; one of them having it is enough.
    return bikes.length === 0 && missed !== null ? missed : done({ is: "records", bikes });
  });
}

async function recordsOf(q: Repos, g: Garaged, items: readonly string[] | null, from: LocalDate | null, shared: boolean): Promise<BikeRecords> {
  const work = (await q.work.everyOf(g.bike.id)).filter(
    (record) => (items === null || record.items.some(({ item }) => items.includes(item))) && (from === null || record.on.to >= from),
  );
  const defects = shared || items !== null ? [] : (await q.defects.ofBike(g.bike.id)).filter(({ on }) => from === null || on >= from);
  return {
    ...{ bike: g.bike.id, nickname: g.bike.nickname, unit: g.unit, work, costs: costsOf(work) },
    defects: defects.map((defect) => defectShown(g, defect)),
  };
}

/** Summed by currency: no amount is converted. */
function costsOf(work: readonly WorkRecord[]): readonly CostSum[] {
  const sums = new Map<string | null, number>();
  for (const { state, detail } of work) {
    if (state !== "live" || detail.cost === null) continue;
    sums.set(detail.cost.currency, (sums.get(detail.cost.currency) ?? 0) + detail.cost.minor);
  }
  return [...sums].map(([currency, minor]) => ({ currency, minor }));
}
