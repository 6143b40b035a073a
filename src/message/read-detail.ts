// The details of a job from labelled fields: what it cost, what was used.

import { dimensionOf } from "../core/quantity/units.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Cost, PartFitted, Quantity, WorkDetail } from "../core/work-detail.ts";
import { scan } from "./scan.ts";

/** "48.60", "£48.60", "48,60 EUR"; null when it is no amount. */
export function readCost(typed: string, known: Known): Cost | null {
  const { currencies } = known.vocabulary.details;
  const tokens = scan(typed.trim(), known.vocabulary.units, known.numbers);
  const [figure, ...others] = tokens.filter((token) => token.is === "number");
  const words = tokens.filter((token) => token.is !== "number").map((token) => (token.is === "word" ? token.folded : token.mark));
  // A currency of its own is kept as typed: three letters, as in CZK.
  const named = words.map((word) => currencies[word] ?? (/^[a-z]{3}$/u.test(word) ? word.toUpperCase() : null));
  const [currency = null] = named;
  if (figure?.is !== "number" || others.length > 0 || figure.fraction !== null || named.length > 1 || (named.length === 1 && currency === null)) return null;
  return { minor: Math.round(figure.value * 100), currency: currency ?? figure.unitText, typed };
}

/** "3.2 L 20W-50, crush washer, split pin": quantities where there is a volume, parts for the rest. */
export function readUsed(typed: string, known: Known): Pick<WorkDetail, "quantities" | "parts"> {
  const quantities: Quantity[] = [];
  const parts: PartFitted[] = [];
  for (const piece of typed.split(/[,;\n](?!\d)/u).map((each) => each.trim())) {
    if (piece === "") continue;
    const [first] = scan(piece, known.vocabulary.units, known.numbers);
    const unit = first?.is === "number" ? (first.units.find((each) => dimensionOf(each) === "volume") ?? null) : null;
    const of = first === undefined ? "" : piece.slice(first.end).trim();
    if (first?.is !== "number" || unit === null) parts.push({ words: piece, item: null, made: null });
    else quantities.push({ value: first.value, unit, of: of === "" ? null : of, typed: first.text });
  }
  return { quantities, parts };
}
