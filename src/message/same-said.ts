// "Front 34 psi, rear same": what was read at one end and is alike at the other.

import type { LogReading } from "../core/reading/intent.ts";
import { kindRow } from "../core/reading/kinds.ts";
import { among } from "./among.ts";
import type { Clause, Part } from "./clauses.ts";
import type { Layout, SaidAt } from "./layout.ts";
import { isAnd, oncePerPart, tokensOf } from "./pieces.ts";

/** The end that a part says is alike, where it says nothing else; null else. */
export const sameEnd = oncePerPart((layout: Layout, part: Part): "front" | "rear" | null => {
  const { places, measuring, articles, maybe, at: atWords, onBike } = layout.known.vocabulary;
  let end: "front" | "rear" | null = null;
  let same = false;
  for (const at of tokensOf(part)) {
    const token = layout.tokens[at];
    if (token?.is !== "word") return null;
    const here = among(places.front, token.folded) ? "front" : among(places.rear, token.folded) ? "rear" : null;
    if (here !== null && end !== null) return null;
    const isSame = among(measuring.same, token.folded);
    same ||= isSame;
    end ??= here;
    if (here === null && !isSame && ![articles, maybe.is, atWords, onBike].some((list) => among(list, token.folded)) && !isAnd(layout, at)) return null;
  }
  return same ? end : null;
});

/** The readings of a clause, in order, with those of the other end behind what they are alike to. */
export function withSame(layout: Layout, clause: Clause, said: readonly SaidAt[]): readonly LogReading[] {
  const more = clause.parts.flatMap((part): readonly SaidAt[] => {
    const end = sameEnd(layout, part);
    const other = end === "front" ? "rear" : "front";
    const like = end === null ? undefined : said.findLast(({ at }) => at < part.from);
    const fits = like?.reading.place === other && end !== null && (kindRow(like.reading.kind).places as readonly string[]).includes(end);
    return like === undefined || !fits ? [] : [{ at: part.from, reading: { ...like.reading, place: end } }];
  });
  return more.length === 0 ? said.map(({ reading }) => reading) : [...said, ...more].toSorted((a, b) => a.at - b.at).map(({ reading }) => reading);
}
