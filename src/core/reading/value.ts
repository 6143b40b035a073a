// The value of a reading in the canonical unit of its kind.

import { toCanonical } from "../quantity/units.ts";
import type { ReadingUnit } from "./kinds.ts";

/** `value` of `unit` in the canonical unit; a level is its own number. */
export const canonicalReading = (value: number, unit: ReadingUnit): number => (unit === "level" ? value : toCanonical(value, unit));
