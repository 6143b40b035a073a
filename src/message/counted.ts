// The part right before a value that goes with it.

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

/** "Need to order rear pads, old ones at 1.5 mm": what the first part that says how things are goes on from, though that itself is planned or denied. */
export function aheadOf({ tokens, known: { vocabulary } }: Layout, clause: Part, part: Part): Part | null {
  const { ones } = vocabulary.measuring;
  const goesOn = [0, 1, 2].some((n) => part.from + n <= part.to && among(ones, wordAt(tokens, part.from + n)));
  return part.from > clause.from && goesOn ? { from: clause.from, to: part.from - 1 } : null;
}
