// The pieces that a bike has had at each position, as the reader and the list of parts name them.

import { isUndated } from "../core/calendar/arithmetic.ts";
import type { PartRow } from "../core/parts/fitted.ts";
import { FIRST_PIECE, fittingsOf, type Piece, piecesOf, type Refit, refitKey } from "../core/parts/pieces.ts";
import type { Ridden } from "../core/quantity/distance.ts";
import type { KnownPieces } from "../core/reading/vocabulary.ts";
import { PART_ROWS } from "../trade/parts.ts";
import { type Garaged, itemsOf, placeOf } from "./garage.ts";

export type PieceNamed = Piece & Refit;

/** Every piece of a position that was ever on. */
export function piecesAt(g: Garaged, row: PartRow): readonly PieceNamed[] {
  const fittings = fittingsOf(row, g.facts.jobs, (job) => placeOf(job, g.track), g.bike.knownFrom);
  const start = g.bike.knownFrom.ridden;
  return piecesOf(fittings, start, (g.at.ridden ?? start) as Ridden).map((piece) => ({ ...piece, part: row.part, label: labelOf(g, row, piece.piece) }));
}

/** What a piece is told by: what was noted of it, a tyre's week and year where that is all, else the day of the work that first put it on. */
function labelOf(g: Garaged, row: PartRow, piece: string): string {
  if (piece === FIRST_PIECE) return "";
  const record = g.work.find(({ id }) => id === piece);
  const noted = record?.detail.parts.find(({ item, words }) => (item === null || row.items.includes(item)) && !row.kit.includes(words));
  // "New rear tyre 3725": the part's own name tells nothing, its week and year do.
  const words = noted?.words.toLowerCase() === row.part ? noted.made : noted?.words;
  return (words ?? (record === undefined ? piece : isUndated(record.on) ? record.on.typed : record.on.from)).replaceAll("/", " ");
}

/** What may be put back on, by position: only where the plan has the part. Tyres that are swapped as sets are no pieces of their own. */
export function knownPieces(g: Garaged): readonly KnownPieces[] {
  return PART_ROWS.flatMap((row): readonly KnownPieces[] => {
    const renew = row.items.find((key) => itemsOf(g).some((item) => item.key === key));
    if (!row.again || renew === undefined) return [];
    const isOfSets = g.facts.fittings.length > 0 && g.facts.ofTyres.has(renew);
    const pieces = isOfSets ? [] : piecesAt(g, row).map((piece) => ({ key: refitKey(piece), label: piece.label, fitted: piece.fitted }));
    return [{ part: row.part, renew, pieces }];
  });
}
