// Whether a part of a message names a thing that can be wrong with a bike, or says that something is.

import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { bare, indexOf, longest } from "./defect-index.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";

/** Does a part name a thing that can be wrong with a bike? */
export function namesThing(layout: Layout, part: Part): boolean {
  const { defects, places } = layout.known.vocabulary;
  const { things, whole } = indexOf(defects);
  return tokensOf(part).some((at) => {
    const word = bare(layout.tokens, at);
    if (word === null || !(things.firsts.has(word) || whole.firsts.has(word))) return false;
    // The bike itself and its ends are named by the way.
    const byTheWay = [defects.itself, ...Object.values(places)];
    const found = longest(layout.tokens, at, part.to, things) ?? longest(layout.tokens, at, part.to, whole);
    return found !== null && !(found.to === at && byTheWay.some((list) => among(list, word)));
  });
}

/** Does a part hold a word for something wrong, whatever it is of? */
export const namesSign = (layout: Layout, part: Part): boolean =>
  tokensOf(part).some(
    (at) =>
      longest(layout.tokens, at, part.to, indexOf(layout.known.vocabulary.defects).stray) !== null &&
      // "No cracks" says that nothing is.
      !among(layout.known.vocabulary.defects.none, wordAt(layout.tokens, at - 1)),
  );

/** Kinds of which a part names a thing or the whole. */
export function thingsIn(layout: Layout, part: Part): readonly string[] {
  const index = indexOf(layout.known.vocabulary.defects);
  return tokensOf(part).flatMap((at) => {
    const found = longest(layout.tokens, at, part.to, index.things);
    const whole = longest(layout.tokens, at, part.to, index.whole);
    return [...(found?.rules.map((rule) => rule.split("/")[0] ?? "") ?? []), ...(whole?.rules ?? [])];
  });
}
