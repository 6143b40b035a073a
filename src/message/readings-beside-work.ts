// "34 front 38 rear and lubed the chain": readings and a job in one breath are two parts, as if a comma stood between them.

import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { standsBeside } from "./phrases.ts";
import type { Token } from "./scan.ts";

type Part = { readonly from: number; readonly to: number };

/** A part cut at "and" where one side is nothing but readings by their places and the other has a verb of work. */
export function cutAtWork(tokens: readonly Token[], part: Part, known: Known, taken: ReadonlySet<number>): readonly Part[] {
  // Most parts say no work.
  if (!isWork(tokens, part, known)) return [part];
  for (let at = part.from + 1; at < part.to; at++) {
    const token = tokens[at];
    const join = token?.is === "break" ? token.mark : wordAt(tokens, at);
    if (taken.has(at) || !among(known.vocabulary.and, join)) continue;
    const [left, right] = [
      { from: part.from, to: at - 1 },
      { from: at + 1, to: part.to },
    ];
    const cuts =
      (isReadings(tokens, left, known, taken) && isWork(tokens, right, known)) || (isWork(tokens, left, known) && isReadings(tokens, right, known, taken));
    if (cuts) return [left, ...cutAtWork(tokens, right, known, taken)];
  }
  return [part];
}

const isWork = (tokens: readonly Token[], { from, to }: Part, { vocabulary }: Known): boolean => {
  for (let at = from; at <= to; at++) if (under(vocabulary.workDone, wordAt(tokens, at)) !== undefined) return true;
  return false;
};

/** Figures of the size that is read by an end of the bike, that end, and nothing that says more. */
function isReadings(tokens: readonly Token[], { from, to }: Part, { vocabulary }: Known, taken: ReadonlySet<number>): boolean {
  let [figures, places] = [0, 0];
  for (let at = from; at <= to; at++) {
    const token = tokens[at];
    if (token === undefined || token.is === "break" || taken.has(at)) continue;
    if (token.is === "number") {
      if (token.value >= MOST || among(vocabulary.at, wordAt(tokens, at - 1))) return false;
      figures++;
    } else if ([vocabulary.places.front, vocabulary.places.rear, vocabulary.places.both].some((list) => among(list, token.folded))) places++;
    else if (!standsBeside(token.folded, vocabulary) || under(vocabulary.workDone, token.folded) !== undefined) return false;
  }
  return figures > 0 && places > 0;
}

const wordAt = (tokens: readonly Token[], at: number): string | null => {
  const token = tokens[at];
  return token?.is === "word" ? token.folded : null;
};

/** Pressures, depths and slacks are below. */
const MOST = 200;
