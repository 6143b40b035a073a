// Values found and left, as they are typed beside an item: "0.09 mm intake 1, 0.15 mm intake 2". What is no value is handed back as it was typed.

import { parseAmount } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { ItemValue } from "../core/work-detail.ts";

/** `words`: what named no value, such as "low"; null when all of it did. */
export type ReadValues = { readonly values: readonly ItemValue[]; readonly words: string | null };

/** The longest name of a place behind a value. */
const LONGEST_PLACE = 24;

/** @param usual the unit of a bare figure where no other value has one; null: a bare figure is no value */
export function readValues(text: string, known: Pick<Known, "numbers" | "vocabulary">, usual: UnitId | null): ReadValues {
  const pieces = valuePieces(text.replace(PAD_PAIR, "$1 mm, $2 mm")).map((piece) => ({
    piece,
    read: parseAmount(piece, known.vocabulary.units, known.numbers),
  }));
  const said = [...new Set(pieces.flatMap(({ read }) => (read.is === "amount" && read.unit !== null ? [read.unit] : [])))];
  // "4.5 mm inner, 0.8 outer": the unit of the one is the other's.
  const bare = said.length === 1 ? (said[0] ?? usual) : usual;
  const values: ItemValue[] = [];
  const words: string[] = [];
  for (const { piece, read } of pieces) {
    const placed = bare === null ? null : placedFigure(piece, known);
    // A share of something is in no unit, whatever a bare figure would be in there.
    const isShare = read.is === "amount" && /^(?:%|per\s?cent|prozent)/iu.test(read.rest);
    const unit = read.is === "amount" && !isShare ? (read.unit ?? bare) : null;
    if (placed !== null && bare !== null && (read.is !== "amount" || read.unit === null)) values.push({ ...placed, unit: bare });
    else if (read.is !== "amount" || unit === null || read.from !== read.to || read.other !== null || read.rest.length > LONGEST_PLACE) words.push(piece);
    else values.push({ value: read.from, unit, place: read.rest === "" ? null : read.rest });
  }
  return { values, words: words.length === 0 ? null : words.join(", ") };
}

/** The values of a text apart, as typed. A comma with a space behind it parts values; one without is a decimal comma or parts thousands. */
export const valuePieces = (text: string): readonly string[] =>
  text
    .split(/[,;]\s+|;/u)
    .map((each) => each.trim())
    .filter((each) => each !== "");

/** "0.8 outer", "0,18 exhaust 2": a figure with nothing but the names of places behind it, so that no unit is meant by them. */
function placedFigure(piece: string, { numbers, vocabulary }: Pick<Known, "numbers" | "vocabulary">): Pick<ItemValue, "value" | "place"> | null {
  const [, figure = "", place = ""] = /^([\d.,]+)\s+(\p{L}[\p{L}\s\d/]*)$/u.exec(piece) ?? [];
  const read = parseAmount(figure, vocabulary.units, numbers);
  if (read.is !== "amount" || read.from !== read.to || read.other !== null || read.rest !== "" || place.length > LONGEST_PLACE) return null;
  const names = new Set([...Object.values(vocabulary.places), ...Object.values(vocabulary.measuring.sides)].flat());
  const isPlace = place
    .toLowerCase()
    .split(/\s+/u)
    .every((word) => names.has(word) || /^\d{1,2}$/u.test(word));
  return isPlace ? { value: read.from, place } : null;
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
