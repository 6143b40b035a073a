// The value of a reading in the canonical unit of its kind.

import { toCanonical, type UnitId } from "../quantity/units.ts";
import type { ReadingUnit } from "./kinds.ts";

/** Is it a unit of quantity? The others stand for themselves: a level, per cent, a date code. */
export const isQuantity = (unit: ReadingUnit): unit is UnitId => unit !== "level" && unit !== "%" && unit !== "date code";

/** `value` of `unit` in the canonical unit; what is no quantity is its own number. */
export const canonicalReading = (value: number, unit: ReadingUnit): number => (isQuantity(unit) ? toCanonical(value, unit) : value);
