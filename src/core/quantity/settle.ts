// Which unit was typed and which are wanted, once each is held against the other.

import { type Refused, refused } from "./conversion.ts";
import type { ParsedAmount } from "./parse.ts";
import { type Dimension, dimensionOf, UNITS, type UnitId } from "./units.ts";
import { ALSO, INCH, METRIC, USUAL } from "./usual-units.ts";
import type { Wanted } from "./wanted.ts";

type Amount = Extract<ParsedAmount, { is: "amount" }>;
type Settled = { readonly is: "settled"; readonly unit: UnitId; readonly taken: UnitId | null; readonly targets: readonly UnitId[] };

/** @param hint what is measured, where a word named it ("of torque") */
export function settle(amount: Amount, wanted: Wanted, hint: Dimension | null): Settled | Refused {
  // A bare fraction is a spanner or a drill: inches.
  const typed = amount.unit ?? (amount.fraction === null ? null : "in");
  if (typed === null) return refused("unit missing");
  const bare = amount.unit === null ? typed : null;
  const dimension = wanted.is === "units" ? (wanted.units.find((unit) => dimensionOf(unit) === dimensionOf(typed)) ?? wanted.units[0]) : undefined;
  const asked = hint !== null && ALSO[typed]?.[hint] !== undefined ? hint : dimension === undefined ? null : dimensionOf(dimension);
  const also = asked === null || asked === dimensionOf(typed) ? undefined : ALSO[typed]?.[asked];
  if (also !== undefined && also.length > 1) return refused("unknown unit", also.map(String));
  const unit = also?.[0] ?? typed;
  const taken = also === undefined ? bare : asked === "temperature difference" ? null : unit;
  if (wanted.is !== "units") return { is: "settled", unit, taken, targets: wanted.is === "system" ? inSystem(unit, wanted.system) : usual(unit) };
  const targets = wanted.units.flatMap((each) => (dimensionOf(each) === dimensionOf(unit) ? [each] : (ALSO[each]?.[dimensionOf(unit)] ?? [])));
  if (targets.length > 0) return { is: "settled", unit, taken, targets: [...new Set(targets)] };
  // "24 in Nm": the word before the unit wanted was no inch.
  return amount.unit === "in" && /\bin$/u.test(amount.said) ? refused("unit missing") : refused("other dimension", [], wanted.word);
}

const inSystem = (unit: UnitId, system: "metric" | "imperial"): readonly UnitId[] => {
  const named = (system === "metric" ? METRIC : INCH)[dimensionOf(unit)];
  return named ?? usual(unit);
};

/** What a unit is usually turned into; into itself only where there is nothing else. */
function usual(unit: UnitId): readonly UnitId[] {
  const all = USUAL[UNITS[unit].dimension].find(([from]) => from.includes(unit))?.[1] ?? [unit];
  const others = all.filter((each) => each !== unit);
  return others.length > 0 ? others : all;
}
