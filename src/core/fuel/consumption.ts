// How much fuel a bike used, from fill to fill: what went in since the tank was last full, over what was ridden since then.
// Only between two full tanks is it known what was burnt; a part fill is counted in, and a fill of which nothing was said counts as a part fill.

import { between, type DistanceUnit, type Ridden, type Stretch, stretchOf } from "../quantity/distance.ts";
import { fromCanonical, type UnitId } from "../quantity/units.ts";

/** One fill, as it is known. `full` null: not said. `trip`: the distance since the fill before it, as the member said it. */
export type Fill = {
  readonly id: string;
  readonly litres: number;
  readonly full: boolean | null;
  readonly ridden: Ridden | null;
  readonly trip: Stretch | null;
};

/** What was used up to one fill. `by`: how the distance is known. */
export type FuelUsed = { readonly fill: string; readonly litres: number; readonly distance: Stretch; readonly by: "odometer" | "trip meter" };

/** Shorter stretches say more of the pump's cut-off than of the engine. Common practice. */
const LEAST = stretchOf(20, "km");

/** The stretches that a bike's fills close. @param fills oldest first */
export function fuelUsed(fills: readonly Fill[]): readonly FuelUsed[] {
  return fills.flatMap((fill, n): readonly FuelUsed[] => {
    if (fill.full !== true) return [];
    const last = fills.slice(0, n).findLastIndex(({ full }) => full === true);
    const since = fills.slice(last + 1, n + 1);
    const distance = distanceOf(fills[last] ?? null, since);
    const litres = since.reduce((sum, each) => sum + each.litres, 0);
    return distance === null || distance.distance < LEAST || litres <= 0 ? [] : [{ fill: fill.id, litres, ...distance }];
  });
}

/** By the odometer at both ends; else by the trip meter, which must have been said at every fill between. Without an earlier fill it can only be of this tank. */
function distanceOf(last: Fill | null, since: readonly Fill[]): Pick<FuelUsed, "distance" | "by"> | null {
  const ridden = since.at(-1)?.ridden ?? null;
  if (last !== null && last.ridden !== null && ridden !== null) return { distance: between(last.ridden, ridden), by: "odometer" };
  let sum = 0;
  for (const { trip } of since) {
    if (trip === null) return null;
    sum += trip;
  }
  return last === null && since.length > 1 ? null : { distance: sum as Stretch, by: "trip meter" };
}

/** Litres for a hundred kilometres. */
export const perHundredKm = ({ litres, distance }: Pick<FuelUsed, "litres" | "distance">): number => (litres * 100 * 10_000_000) / distance;

export type ConsumptionUnit = Extract<UnitId, "L/100 km" | "mpg US" | "mpg imp">;

/**
 * The units in which a member knows consumption. On kilometres litres; on miles the gallon that was typed, else that of the place; where neither says which gallon, both.
 * @param filled the unit in which the fuel was typed @param gallon that of the bike's place
 */
export function consumptionUnits(dial: DistanceUnit, filled: UnitId | null, gallon: "US gal" | "imp gal" | null): readonly ConsumptionUnit[] {
  if (dial === "km") return ["L/100 km"];
  const typed = filled === "US gal" || filled === "imp gal" ? filled : gallon;
  return typed === "US gal" ? ["mpg US"] : typed === "imp gal" ? ["mpg imp"] : ["mpg imp", "mpg US"];
}

/** A consumption in a unit. */
export const consumptionIn = (used: Pick<FuelUsed, "litres" | "distance">, unit: ConsumptionUnit): number => fromCanonical(perHundredKm(used), unit);
