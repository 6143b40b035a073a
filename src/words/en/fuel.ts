// What a bike used, in English.

import type { Stretch } from "../../core/quantity/distance.ts";
import { symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { Printer } from "../printer.ts";

type Used = {
  readonly litres: number;
  readonly distance: Stretch;
  readonly by: "odometer" | "trip meter";
  readonly rates: readonly { readonly unit: UnitId; readonly value: number }[];
};

export const fuelWords = (p: Printer) => {
  const rates = (used: Used): string => used.rates.map(({ unit, value }) => `${p.figure(value, 1)} ${symbolOf(unit)}`).join(" or ");
  return {
    /** "5.2 L/100 km". */
    rates,
    /** "Since the last full tank: 12.4 L over 240 km, 5.2 L/100 km." */
    used: (used: Used, of: { readonly unit: "mi" | "km" }): string =>
      `${used.by === "odometer" ? "Since the last full tank" : "By the trip meter"}: ${p.figure(used.litres, 1)} L over ${p.distance(used.distance, of)}, ${rates(used)}.`,
  };
};
