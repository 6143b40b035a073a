// "Front disc 4.6 mm min 4.5", "front disc 4.6 mm (min 4.5 mm)": a limit behind a reading is a part of its own, as if a comma stood between them.

import type { Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import type { Token } from "./scan.ts";

type Part = { readonly from: number; readonly to: number };

/** A part cut before the words of a limit or a manual's figure that stand behind a value and before another; and behind that, where a bracket closes. */
export function cutAtLimit(tokens: readonly Token[], part: Part, vocabulary: Vocabulary): readonly Part[] {
  const { ofSpec, limitBeside } = vocabulary.measuring;
  const isMark = (token: Token | undefined): boolean => token?.is === "break" && "(/:=-.".includes(token.mark);
  const isLimit = (at: number): boolean => among(ofSpec, wordAt(tokens, at));
  for (let at = part.from + 1; at < part.to; at++) {
    if (!isLimit(at) || (isLimit(at - 1) && at - 1 > part.from)) continue;
    let before = at - 1;
    while (before > part.from && (isMark(tokens[before]) || among(limitBeside, wordAt(tokens, before)))) before--;
    let behind = at + 1;
    while (behind < part.to && (isMark(tokens[behind]) || isLimit(behind) || among(limitBeside, wordAt(tokens, behind)))) behind++;
    const [value, limit] = [tokens[before], tokens[behind]];
    if (value?.is !== "number" || limit?.is !== "number") continue;
    // "Rested 30 min 12.6 V" says how long: a bare whole figure is no value of its own.
    if (value.units.length === 0 && (value.decimals === 0 || limit.decimals === 0)) continue;
    const close = tokens[behind + 1];
    const end = close?.is === "break" && close.mark === ")" ? behind : part.to;
    const rest = { from: end + 2, to: part.to };
    let first = before + 1;
    while (isMark(tokens[first])) first++;
    return [{ from: part.from, to: before }, { from: first, to: end }, ...(rest.to >= rest.from ? cutAtLimit(tokens, rest, vocabulary) : [])];
  }
  return [part];
}

const wordAt = (tokens: readonly Token[], at: number): string | null => {
  const token = tokens[at];
  return token?.is === "word" ? token.folded : null;
};
