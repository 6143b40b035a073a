// "Two bikes, Heron 14,820 mi, Bramble 41,950 km", from someone who has none yet: names with what their odometers show.

import { dimensionOf } from "../core/quantity/units.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { inItsLanguage } from "./language.ts";
import { standsBeside } from "./phrases.ts";
import { ownWords, scan, type Token } from "./scan.ts";

/** A nickname and an odometer, as typed. */
export type BikeTold = { readonly name: string; readonly odometer: string };

const LONGEST_TEXT = 2000;
/** A garage told in one message is no longer. */
const MOST = 4;
/** With no word for bikes said, distances as short as these may be those between towns. */
const FAR = 2000;

/** The bikes that a message tells of; empty where it may tell of something else. Several, or one where bikes are spoken of. */
export function bikesTold(text: string, of: Known): readonly BikeTold[] {
  if (text.length > LONGEST_TEXT) return [];
  const own = ownWords(text);
  const known = inItsLanguage(own, of);
  const tokens = scan(own, known.vocabulary.units, known.numbers);
  const told: (BikeTold & { readonly far: boolean })[] = [];
  for (const [at, token] of tokens.entries()) {
    if (token.is !== "number" || !token.units.some((unit) => dimensionOf(unit) === "distance")) continue;
    const before = tokens[isLead(tokens[at - 1], known) ? at - 2 : at - 1];
    if (before?.is === "word" && isName(before.folded, known)) told.push({ name: before.text, odometer: token.text, far: token.value >= FAR });
  }
  const spoken = tokens.some((token) => token.is === "word" && among(known.vocabulary.others.bikes, token.folded));
  const sure = told.length >= 2 ? spoken || told.every(({ far }) => far) : spoken && told.every(({ far }) => far);
  return sure ? told.slice(0, MOST).map(({ name, odometer }) => ({ name, odometer })) : [];
}

/** "Heron: 14,820 mi", "Heron at 14,820 mi". */
const isLead = (token: Token | undefined, { vocabulary: { at, stands, others } }: Known): boolean =>
  token?.is === "break" ? [":", "-", "="].includes(token.mark) : token?.is === "word" && [at, stands, others.has].some((list) => among(list, token.folded));

/** A word that the reader has no other use for. */
function isName(word: string, { vocabulary }: Known): boolean {
  const { notOdometer, notDone, notReading, dateWords, around, onBike, at, questions, kinds, others } = vocabulary;
  const lists = [notOdometer, notDone, notReading, dateWords, around, onBike, at, questions, kinds.odometer, others.bikes];
  return word.length >= 2 && !standsBeside(word, vocabulary) && under(vocabulary.workDone, word) === undefined && !lists.some((list) => among(list, word));
}
