// "Front brake fluid below the low mark and dark": behind a reading and a joining word, that something is wrong with what was read. The reading stands for itself.

import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { indexOf, longest } from "./defect-index.ts";
import type { Layout } from "./layout.ts";
import { isAnd, tokensOf } from "./pieces.ts";

/** The part without a sign that is joined to its end and fills all that stands behind the join; the part itself where there is none. */
export function withoutSign(layout: Layout, part: Part): Part {
  const { defects, joins } = layout.known.vocabulary;
  const { signs } = indexOf(defects);
  const isJoin = (at: number): boolean => isAnd(layout, at) || among(joins, wordAt(layout.tokens, at));
  const join = tokensOf(part).findLast((at) => at > part.from && isJoin(at));
  if (join === undefined) return part;
  const isLead = (at: number): boolean => [defects.between, defects.itself].some((list) => among(list, wordAt(layout.tokens, at)));
  for (let at = join + 1; at <= part.to; at++) {
    const sign = longest(layout.tokens, at, part.to, signs);
    // "And weeping at the drain plug": where it is.
    const where =
      sign !== null &&
      among(defects.joins, wordAt(layout.tokens, sign.to + 1)) &&
      !tokensOf({ from: sign.to, to: part.to }).some((each) => layout.tokens[each]?.is === "number");
    if (sign?.to === part.to || where) return { from: part.from, to: join - 1 };
    if (!isLead(at)) return part;
  }
  return part;
}
