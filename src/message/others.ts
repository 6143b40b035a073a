// What is said of somebody else's bike: "Tess's front tyre was at 18 psi", "Mara has 4 mm left on her rear pads". None of it is the speaker's.

import { among, under } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";

/** Does a clause speak of a bike that is not the speaker's? One that names a bike of theirs does not. */
export function isOthers(layout: Layout, clause: Clause): boolean {
  const { named, tokens } = layout;
  if (named.some(({ from, to, bikes }) => bikes.length > 0 && from >= clause.from && to <= clause.to)) return false;
  for (let at = clause.from; at <= clause.to; at++) {
    const token = tokens[at];
    if (token?.is === "word" && (ownsNext(layout, at) || (at === clause.from && isName(layout, at) && has(layout, at + 1)))) return true;
  }
  return false;
}

/** "her pads", "Tess's front tyre": whose it is, right before what it is of. */
function ownsNext(layout: Layout, at: number): boolean {
  const { vocabulary } = layout.known;
  const token = layout.tokens[at];
  if (token?.is !== "word" || !isThing(layout, at + 1)) return false;
  return among(vocabulary.others.whose, token.folded) || (/^\p{Lu}\p{Ll}+['’]s$/u.test(token.text) && !among(vocabulary.dateWords, bare(token.folded)));
}

/** Something of a bike: a place, a kind of reading, a part that is worked at. */
function isThing({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const word = wordAt(tokens, at);
  if (word === null) return false;
  const listed = [...Object.values(vocabulary.places), ...Object.values(vocabulary.kinds), ...Object.values(vocabulary.items)];
  return among(vocabulary.others.bikes, word) || listed.some((list) => list.some((each) => each === word || each.startsWith(`${word} `)));
}

/** A capital at the beginning of a clause is a name only where the word is none that the reader knows. */
function isName({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const token = tokens[at];
  if (token?.is !== "word" || !/^\p{Lu}\p{Ll}+$/u.test(token.text)) return false;
  const lists = [vocabulary.dateWords, vocabulary.beside, vocabulary.around, vocabulary.articles, vocabulary.at, vocabulary.joins, vocabulary.others.own];
  const listed = [...Object.values(vocabulary.places), ...Object.values(vocabulary.kinds), ...Object.values(vocabulary.items)];
  const said = (list: readonly string[]): boolean => list.some((each) => each === token.folded || each.startsWith(`${token.folded} `));
  return !lists.some((list) => among(list, token.folded)) && under(vocabulary.workDone, token.folded) === undefined && !listed.some(said);
}

const has = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.others.has, wordAt(layout.tokens, at));
const bare = (word: string): string => word.replace(/['’]s$/u, "");
