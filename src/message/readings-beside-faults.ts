// A reading and a fault in one breath are two parts: "headlight out and battery 11.9".

import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { kindWordsIn, namesWheel } from "./kind-of.ts";
import type { Layout } from "./layout.ts";
import { isAnd, tokensOf } from "./pieces.ts";

/** A clause with its parts cut at an "and" between a fault and what names a kind or an end of its own with a figure. @param used the tokens of the faults */
export function cutAtFaults(layout: Layout, clause: Clause, used: ReadonlySet<number>): Clause {
  if (used.size === 0) return clause;
  const parts = clause.parts.flatMap((part): readonly Part[] => {
    const ofFault = tokensOf(part).filter((at) => used.has(at));
    const [first, last] = [ofFault[0], ofFault.at(-1)];
    if (first === undefined || last === undefined) return [part];
    const behind = { from: last + 2, to: part.to };
    if (isAnd(layout, last + 1) && isReading(layout, behind)) return [{ from: part.from, to: last }, behind];
    // "And the chain is rusty".
    const join = among(layout.known.vocabulary.articles, wordAt(layout.tokens, first - 1)) ? first - 2 : first - 1;
    const before = { from: part.from, to: join - 1 };
    if (isAnd(layout, join) && isReading(layout, before)) return [before, { from: first, to: part.to }];
    return [part];
  });
  return parts.length === clause.parts.length ? clause : { ...clause, parts };
}

const isReading = (layout: Layout, part: Part): boolean =>
  part.from <= part.to &&
  tokensOf(part).some((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at)) &&
  tokensOf(part).some((at) => wordAt(layout.tokens, at) !== null) &&
  (kindWordsIn(layout, part).length > 0 || namesWheel(layout, part));
