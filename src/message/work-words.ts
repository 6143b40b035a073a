// Words of work: which verbs do what, and what may stand beside a job.

import type { WorkAction } from "../core/plan/plan.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { isOfConstruction } from "./construction-said.ts";
import { type Layout, phrasesInside } from "./layout.ts";
import { isAnd, isVerb, oncePerPart, tokensOf } from "./pieces.ts";
import type { ItemPhrase } from "./read-items.ts";

export const isArticle = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.articles, wordAt(layout.tokens, at));

/** A word that neither stands around work nor says how far a ride was. */
export function isUnknown(layout: Layout, at: number): boolean {
  const word = wordAt(layout.tokens, at);
  const { notOdometer, measuring } = layout.known.vocabulary;
  // "New ones": of what was named before.
  const known = among(notOdometer, word) || among(measuring.ones, word);
  // "On the side stand" is how it was measured.
  const how = layout.phrases.condition.some((phrase) => at >= phrase.at && at <= phrase.to);
  return word !== null && !mayStandBeside(layout, at) && !known && !isPlace(layout, word) && !how;
}

const isPlace = (layout: Layout, word: string): boolean => Object.values(layout.known.vocabulary.places).some((list) => among(list, word));

/** Does a part name both ends? */
export const bothSaid = oncePerPart((layout: Layout, part: Part): boolean => {
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are);
  return ends.includes("both") || (ends.includes("front") && ends.includes("rear"));
});

/** The only end of the bike that a part names. */
export const endSaid = oncePerPart((layout: Layout, part: Part): "front" | "rear" | null => {
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are);
  if (ends.includes("both") || ends.includes("front") === ends.includes("rear")) return null;
  return ends.includes("front") ? "front" : "rear";
});

export const saysNew = oncePerPart((layout: Layout, part: Part): boolean => tokensOf(part).some((at) => isRenewed(layout, at)));

export const isRenewed = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.renewed, wordAt(layout.tokens, at));

/** Verbs of the workshop and little else: who bled, greased, cleaned or replaced something worked on the bike. */
export const isWorkshop = (known: Known, verb: string): boolean =>
  actionsOf(known, verb).some((action) => action === "replace" || action === "bleed" || action === "lubricate" || action === "clean");

/** "Cleaned and oiled": verbs joined to the one at a token, the first first. Behind the thing they go on, before it they go back. */
export function verbGroup(layout: Layout, at: number, part: Part, behind: boolean): readonly string[] {
  const found = [wordAt(layout.tokens, at) ?? ""];
  const step = behind ? 2 : -2;
  for (let next = at + step; next >= part.from && next <= part.to && isAnd(layout, next - step / 2) && isVerb(layout, next); next += step)
    found[behind ? "push" : "unshift"](wordAt(layout.tokens, next) ?? "");
  return found;
}

export const actionsOf = (known: Known, verb: string): readonly WorkAction[] =>
  under(known.vocabulary.workDone, verb) ??
  (among(known.vocabulary.renewed, verb) || among(known.vocabulary.puts, verb) || among(known.vocabulary.gets, verb) ? ["replace"] : []);

/** @param ends may the ends of the bike stand beside them too: "new tyres front and rear" */
export function holdsOnlyItems(layout: Layout, part: Part, phrases: readonly Pick<ItemPhrase, "from" | "to">[], ends = false): boolean {
  return tokensOf(part).every(
    (at) =>
      layout.taken.has(at) ||
      phrases.some((phrase) => at >= phrase.from && at <= phrase.to) ||
      mayStandBeside(layout, at) ||
      isCost(layout, at) ||
      isShop(layout, at) ||
      (ends && isPlace(layout, wordAt(layout.tokens, at) ?? "")),
  );
}

/** "Tyres 2022": a bare year at the end of a part. */
export function endsInYear(tokens: Layout["tokens"], { to }: Part): boolean {
  const token = tokens[to];
  return token?.is === "number" && token.units.length === 0 && token.code === undefined && /^(?:19|20)\d\d$/u.test(token.text);
}

/** "Oil change at the dealer": whoever did it changes nothing about what was done. A "tyre shop" did nothing. */
const isShop = ({ tokens, known: { vocabulary } }: Layout, at: number): boolean =>
  among(vocabulary.details.shops, wordAt(tokens, at)) && among(vocabulary.details.byWhom, wordAt(tokens, at - 1));

/** "For 140 quid": what it cost stands beside any job. */
function isCost({ tokens, known }: Layout, at: number): boolean {
  const { currencies, forCost } = known.vocabulary.details;
  const word = wordAt(tokens, at) ?? "";
  return under(currencies, word) !== undefined || (among(forCost, word) && (tokens[at + 1]?.is === "number" || tokens[at + 2]?.is === "number"));
}

/** The words either side must be ones that can stand beside a job: "oil cooler" is not oil, "chain guard" is no chain. */
export function standsFree(layout: Layout, phrase: ItemPhrase, part: Part): boolean {
  const [before, after] = [phrase.from - 1, phrase.to + 1];
  // "Replaced front and rear tyres": an end beside a thing that either end has.
  const may = (at: number): boolean => mayStandBeside(layout, at) || isPlace(layout, wordAt(layout.tokens, at) ?? "");
  return (before < part.from || may(before)) && (after > part.to || may(after));
}

/** A word that changes nothing about the job beside it, and whatever is no word. */
export function mayStandBeside(layout: Layout, at: number): boolean {
  const token = layout.tokens[at];
  if (token === undefined || token.is !== "word" || layout.taken.has(at)) return true;
  const word = token.folded;
  const { vocabulary } = layout.known;
  return (
    among(vocabulary.around, word) ||
    isVerb(layout, at) ||
    among(vocabulary.beside, word) ||
    among(vocabulary.at, word) ||
    (among(vocabulary.roundly, word) && layout.tokens[at + 1]?.is === "number") ||
    among(vocabulary.onBike, word) ||
    among(vocabulary.dateWords, word) ||
    isOfConstruction(vocabulary.details.constructions, word)
  );
}
