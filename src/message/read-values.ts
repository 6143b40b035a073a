// Values found and left, as they are typed beside an item: "0.09 mm intake 1, 0.15 mm intake 2". What is no value is handed back as it was typed.

import { parseAmount } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { ItemValue } from "../core/work-detail.ts";

/** `words`: what named no value, such as "low"; null when all of it did. */
export type ReadValues = { readonly values: readonly ItemValue[]; readonly words: string | null };

/** The longest name of a place behind a value. */
const LONGEST_PLACE = 24;

/** @param usual the unit of a bare figure; null: a bare figure is no value */
export function readValues(text: string, known: Pick<Known, "numbers" | "vocabulary">, usual: UnitId | null): ReadValues {
  const values: ItemValue[] = [];
  const words: string[] = [];
  // A comma with a space behind it parts values; one without is a decimal comma or parts thousands.
  for (const piece of text
    .replace(PAD_PAIR, "$1 mm, $2 mm")
    .split(/[,;]\s+|;/u)
    .map((each) => each.trim())) {
    if (piece === "") continue;
    const read = parseAmount(piece, known.vocabulary.units, known.numbers);
    // A share of something is in no unit, whatever a bare figure would be in there.
    const isShare = read.is === "amount" && /^(?:%|per\s?cent|prozent)/iu.test(read.rest);
    const unit = read.is === "amount" && !isShare ? (read.unit ?? usual) : null;
    if (read.is !== "amount" || unit === null || read.from !== read.to || read.other !== null || read.rest.length > LONGEST_PLACE) words.push(piece);
    else values.push({ value: read.from, unit, place: read.rest === "" ? null : read.rest });
  }
  return { values, words: words.length === 0 ? null : words.join(", ") };
}

/** "2/3 mm": both pads of a caliper. Only an inch has fractions. */
export const PAD_PAIR = /(?<![\d/.,])(\d{1,2}(?:[.,]\d)?)\s?\/\s?(\d{1,2}(?:[.,]\d)?)\s?mm\b/gu;

/** What a bill came to: "380", "€ 412.50", "38,60 CHF". The currency is what stands beside the figure; null when it is not one figure of money. */
export function readCost(typed: string): { readonly minor: number; readonly currency: string | null; readonly typed: string } | null {
  const [, before = "", whole = "", cents = "", after = ""] =
    /^(\p{Sc}|\p{L}{1,4})?\s*(\d{1,3}(?:[ ,.’']\d{3})+|\d+)(?:[.,](\d{1,2}))?\s*(\p{Sc}|\p{L}{1,10})?$/u.exec(typed.trim()) ?? [];
  if (whole === "") return null;
  const minor = Number(whole.replace(/\D/gu, "")) * 100 + Number(cents.padEnd(2, "0") || 0);
  return Number.isSafeInteger(minor) ? { minor, currency: before || after || null, typed: typed.trim() } : null;
}
