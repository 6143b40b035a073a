// Who works on bikes for others, as the message has it: "the dealer", "Miller's garage", "at Miller's".

import { unitsNamed } from "../core/quantity/parse.ts";
import { among } from "./among.ts";
import { wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { isArticle, mayStandBeside } from "./work-words.ts";

/** Longer than this is no name. */
const MOST_WORDS = 4;

/** The shop of a service by its own name as typed, else the word for one. Marks the words as accounted for. @param at the tokens that may name it */
export function shopNamed(layout: Layout, at: readonly number[], used: Set<number>): string | null {
  const { details } = layout.known.vocabulary;
  for (const each of at) {
    if (!among(details.byName, wordAt(layout.tokens, each))) continue;
    const from = isArticle(layout, each + 1) || among(details.byWhom, wordAt(layout.tokens, each + 1)) ? each + 2 : each + 1;
    let to = from;
    while (at.includes(to) && to - from < MOST_WORDS && isOfName(layout, to, used)) to++;
    if (to === from) continue;
    for (let n = each; n < to; n++) used.add(n);
    const [only] = to - from === 1 ? [wordAt(layout.tokens, from)] : [];
    return only != null && details.shops.includes(only) ? only : layout.text.slice(layout.tokens[from]?.start, layout.tokens[to - 1]?.end);
  }
  const shop = at.find((each) => among(details.shops, wordAt(layout.tokens, each)));
  if (shop === undefined) return null;
  used.add(shop);
  return wordAt(layout.tokens, shop);
}

/** A word for a shop, or one that the reader has no other use for. */
function isOfName(layout: Layout, at: number, used: ReadonlySet<number>): boolean {
  const word = wordAt(layout.tokens, at);
  if (word === null || used.has(at) || layout.taken.has(at)) return false;
  const { details, units, notOdometer } = layout.known.vocabulary;
  if (among(details.shops, word)) return true;
  return (
    !mayStandBeside(layout, at) &&
    !among(details.service, word) &&
    !among(details.byWhom, word) &&
    unitsNamed(word, units).length === 0 &&
    !among(notOdometer, word)
  );
}
