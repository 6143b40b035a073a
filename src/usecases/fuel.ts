// What a bike's fills come to: worked out from its readings each time, stored nowhere.

import { type ConsumptionUnit, consumptionIn, consumptionUnits, type Fill, type FuelUsed, fuelUsed } from "../core/fuel/consumption.ts";
import { stretchOf } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { gallonOf } from "../trade/gallons.ts";
import type { Garaged } from "./garage.ts";

/** What was used up to one fill, in the units that the member knows. */
export type FuelShown = FuelUsed & { readonly bike: string; readonly rates: readonly { readonly unit: ConsumptionUnit; readonly value: number }[] };

/** The consumption that some of a bike's fills close; what was just logged is on record. */
export async function fuelOf(q: Repos, g: Garaged, fills: readonly ReadingRecord[]): Promise<readonly FuelShown[]> {
  const wanted = fills.filter(({ bike, kind }) => bike === g.bike.id && kind === "fuel");
  if (wanted.length === 0) return [];
  const all = await q.readings.ofKinds(g.bike.id, ["fuel", "odometer"]);
  const used = fuelUsed(all.filter(({ kind }) => kind === "fuel").map((fill) => asFill(fill, all, g)));
  const home = g.bike.homeGroup === null ? null : ((await q.members.groupsByIds([g.bike.homeGroup])).get(g.bike.homeGroup) ?? null);
  return wanted.flatMap((fill) => {
    const mine = used.find((each) => each.fill === fill.id);
    if (mine === undefined) return [];
    const units = consumptionUnits(g.unit, fill.unit as UnitId, gallonOf(home?.place ?? null));
    return [{ ...mine, bike: g.bike.id, rates: units.map((unit) => ({ unit, value: consumptionIn(mine, unit) })) }];
  });
}

/** A fill with the odometer that its own message said. */
function asFill(fill: ReadingRecord, all: readonly ReadingRecord[], g: Garaged): Fill {
  const beside = all.find(
    ({ kind, message, on, dial }) => kind === "odometer" && message !== null && message === fill.message && on === fill.on && dial !== null,
  );
  const trip = fill.detail?.trip;
  return {
    ...{ id: fill.id, litres: fill.value ?? 0, full: fill.detail?.full ?? null },
    ridden: beside === undefined || beside.dial === null ? null : riddenAtDial(g.track, beside.dial, beside.on),
    trip: trip === undefined ? null : stretchOf(trip.value, trip.unit ?? g.unit),
  };
}
