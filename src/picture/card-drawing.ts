// A roadside card: names at the left, what is known at the right in letters larger than elsewhere, and a blank line to write on where nothing is.

import { widthOf, wrapped } from "./letters.ts";
import { EDGE, INK, SMALL, TEXT, WIDE } from "./look.ts";
import { type Band, page, words } from "./page.ts";
import { line } from "./svg.ts";

export type CardDrawing = {
  readonly title: string;
  readonly rows: readonly { readonly name: string; readonly value: string | null }[];
  readonly notes: readonly string[];
};

const RIGHT = WIDE - EDGE;
/** Names are given no more of the width than this. */
const NAMES = 0.42;
const STEP = TEXT * 1.25;

/** The card as SVG. */
export function drawCard({ title, rows, notes }: CardDrawing): string {
  const names = Math.min((RIGHT - EDGE) * NAMES, Math.max(0, ...rows.map(({ name }) => widthOf(name, SMALL))));
  const from = EDGE + names + 24;
  return page(
    title,
    rows.map(({ name, value }): Band => {
      const named = wrapped(name, SMALL, names);
      const said = value === null ? [] : wrapped(value, TEXT, RIGHT - from);
      const high = Math.max(named.length * SMALL * 1.25, Math.max(1, said.length) * STEP) + 18;
      return {
        high,
        draw: (top) =>
          [
            ...named.map((each, at) => words(each, EDGE, top + 10 + SMALL * (1.25 * at + 1), SMALL, INK.quiet)),
            ...said.map((each, at) => words(each, from, top + 8 + STEP * at + TEXT * 0.9, TEXT)),
            // Something to write on, darker than the rules between rows.
            ...(value === null ? [line({ x: from, y: top + high - 14 }, { x: RIGHT, y: top + high - 14 }, INK.quiet, 2, "2 8")] : []),
            line({ x: EDGE, y: top + high }, { x: RIGHT, y: top + high }, INK.faint, 1.5),
          ].join(""),
      };
    }),
    notes,
  );
}
