// Work that was done at a thing of the trade that none of the member's bikes has: "timing belts changed at 15,100".

import type { ItemKey } from "../core/ids.ts";
import type { KnownBike, Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { isVerb, tokensOf } from "./pieces.ts";
import { itemPhrases } from "./read-items.ts";
import { actionsOf, mayStandBeside, standsFree } from "./work-words.ts";

const bikes = new WeakMap<Vocabulary, KnownBike>();

/** A bike that has every item which the language names: only its plan is asked for. */
function havingAll(layout: Layout): KnownBike | null {
  const { vocabulary, bikes: own } = layout.known;
  const [some] = own;
  const [item] = some?.items ?? [];
  if (some === undefined || item === undefined) return null;
  const ready = bikes.get(vocabulary) ?? { ...some, items: Object.keys(vocabulary.items).map((key) => ({ ...item, key: key as ItemKey, called: null })) };
  bikes.set(vocabulary, ready);
  return ready;
}

/** Does a clause say that such work was done, with nothing but plain words between the thing and its verb? */
export function saysWorkDone(layout: Layout, clause: Clause): boolean {
  const bike = havingAll(layout);
  if (bike === null) return false;
  return clause.parts.some((part) => {
    const { maybe } = layout.known.vocabulary;
    const verbs = tokensOf(part).filter((at) => {
      const word = wordAt(layout.tokens, at) ?? "";
      return isVerb(layout, at) && (actionsOf(layout.known, word).length > 0 || among(maybe.done, word));
    });
    if (verbs.length === 0) return false;
    const things = itemPhrases(layout.tokens, layout.known, bike, part.from, part.to).filter(
      (phrase) =>
        standsFree(layout, phrase, part) && !phrase.items.some((item) => layout.known.bikes.some(({ items }) => items.some(({ key }) => key === item))),
    );
    return things.some(({ from, to }) =>
      verbs.some((verb) => tokensOf(verb > to ? { from: to + 1, to: verb - 1 } : { from: verb + 1, to: from - 1 }).every((at) => mayStandBeside(layout, at))),
    );
  });
}
