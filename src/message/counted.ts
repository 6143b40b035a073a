// What is counted beside a value, in its own part or the one right before: pitches, revolutions.

import { dimensionOf } from "../core/quantity/units.ts";
import { kindRow, type ReadingKind } from "../core/reading/kinds.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { kindWordsIn } from "./kind-of.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";

/** "Battery sat for 3 weeks, 12.4 V", "measured 21 pins, 319 mm": the part right before that names the kind and has no value of it, where the figure's own names none. */
export function partBefore(layout: Layout, part: Part, kind: ReadingKind): readonly Part[] {
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to);
  const before = clause?.parts.findLast(({ to }) => to < part.from);
  if (before === undefined || kindWordsIn(layout, part).length > 0) return [];
  const isValue = (at: number): boolean => {
    const token = layout.tokens[at];
    return token?.is === "number" && (token.decimals > 0 || token.units.some((unit) => dimensionOf(unit) === kindRow(kind).dimension));
  };
  return kindWordsIn(layout, before).some(({ are }) => are.includes(kind)) && !tokensOf(before).some(isValue) ? [before] : [];
}

/** "Over 20 pitches"; 21 pins are the same. */
export function pitchesIn(layout: Layout, part: Part): number | null {
  const { pitches, pins } = layout.known.vocabulary.measuring;
  const counted = countOf(layout, part, pins);
  return counted === null ? countOf(layout, part, pitches) : counted - 1;
}

/** The number before one of some words: "over 20 pitches", "at 4000 rpm". */
export function countOf(layout: Layout, part: Part, words: readonly string[]): number | null {
  for (const at of tokensOf(part)) {
    const token = layout.tokens[at];
    if (token?.is === "number" && among(words, wordAt(layout.tokens, at + 1))) return token.value;
  }
  return null;
}
