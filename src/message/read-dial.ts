// A figure meant as an odometer, as an option or a form field has it.

import type { DistanceUnit } from "../core/quantity/distance.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import type { Known } from "../core/reading/vocabulary.ts";

export type ReadDial = { readonly value: number; readonly unit: DistanceUnit; readonly unitTyped: boolean };

/** "14,820 mi", "14 820", "23.9k km"; a bare figure is in `unit`. Null when it is no distance, a window, negative, or can be read two ways. */
export function readDial(text: string, known: Pick<Known, "numbers" | "vocabulary">, unit: DistanceUnit): ReadDial | null {
  const read = parseAmount(text, known.vocabulary.units, known.numbers);
  if (read.is !== "amount" || read.from !== read.to || read.rest !== "" || read.fraction !== null || read.from < 0) return null;
  if (read.unit !== null && read.unit !== "mi" && read.unit !== "km") return null;
  // "14.820" on a dial that shows tenths at most: three digits behind the mark are thousands.
  return { value: read.from, unit: read.unit ?? unit, unitTyped: read.unit !== null };
}
