// Which language a message is written in: the one that has the most of its words for itself. Where none has more, the member's own.

import { unitsNamed } from "../core/quantity/parse.ts";
import type { Known, Spoken, Vocabulary } from "../core/reading/vocabulary.ts";
import { foldWord } from "./scan.ts";

/** What is known of the member, in the language of a text. */
export function inItsLanguage(text: string, known: Known): Known {
  const { also = [] } = known;
  if (also.length === 0) return known;
  const own: Spoken = { vocabulary: known.vocabulary, numbers: known.numbers };
  const all = [own, ...also];
  const ofOne = ofOneOnly(all.map(({ vocabulary }) => vocabulary));
  // "Am 3. Mai": the point behind the day is as good as a word.
  const counts: number[] = all.map(({ vocabulary }) => (vocabulary.language === "de" && /(?:^|\s)am \d{1,2}\./iu.test(text) ? 1 : 0));
  for (const { 0: typed, index } of text.matchAll(WORDS)) {
    const whose = ofOne.get(foldWord(typed)) ?? (isBehindFigure(text, index) ? unitOfOne(typed, all) : undefined);
    // A unit behind its figure is written alike everywhere, and says nothing.
    if (whose !== undefined && !(isBehindFigure(text, index) && unitsNamed(typed, known.vocabulary.units).length > 0)) counts[whose] = (counts[whose] ?? 0) + 1;
  }
  let [best, most] = [own, -1];
  for (const [n, each] of all.entries()) {
    const count = counts[n] ?? 0;
    if (count > most) [best, most] = [each, count];
  }
  return best === own ? known : { ...known, ...best };
}

/** "14.350 Meilen": the only language that has such a unit, where it is not the member's own. */
function unitOfOne(typed: string, all: readonly Spoken[]): number | undefined {
  const [first, ...others] = all.flatMap(({ vocabulary }, n) => (unitsNamed(typed, vocabulary.units).length > 0 ? [n] : []));
  return others.length === 0 && first !== 0 ? first : undefined;
}

/** A digit, and a space at most, before a word. */
function isBehindFigure(text: string, at: number): boolean {
  const code = text.charCodeAt(text[at - 1] === " " ? at - 2 : at - 1);
  return code >= 48 && code <= 57;
}
const WORDS = /\p{L}[\p{L}\p{M}'-]*/gu;
const taken = new WeakMap<Vocabulary, ReadonlySet<string>>();
const apart = new WeakMap<Vocabulary, { readonly of: readonly Vocabulary[]; readonly words: ReadonlyMap<string, number> }>();

/** The words that one of some languages has for itself, with its place among them. */
function ofOneOnly(all: readonly Vocabulary[]): ReadonlyMap<string, number> {
  const [first] = all;
  const ready = first === undefined ? undefined : apart.get(first);
  if (ready !== undefined && ready.of.length === all.length && ready.of.every((each, n) => each === all[n])) return ready.words;
  const words = new Map<string, number>();
  for (const [n, vocabulary] of all.entries())
    for (const word of wordsOf(vocabulary)) if (!all.some((other) => other !== vocabulary && wordsOf(other).has(word))) words.set(word, n);
  if (first !== undefined) apart.set(first, { of: all, words });
  return words;
}

/** Every word of a language's lists that messages are read by. */
export function wordsOf(vocabulary: Vocabulary): ReadonlySet<string> {
  const ready = taken.get(vocabulary);
  if (ready !== undefined) return ready;
  const { asking: _asking, chart: _chart, specs: _specs, turns: _turns, oneEnd: _oneEnd, how: _how, units: _units, language: _language, ...read } = vocabulary;
  const found = new Set<string>();
  const take = (of: unknown): void => {
    if (typeof of === "string") for (const word of foldWord(of).match(WORDS) ?? []) found.add(word);
    else if (Array.isArray(of)) of.forEach(take);
    else if (of !== null && typeof of === "object") Object.values(of).forEach(take);
  };
  take(read);
  // Tables whose keys are words as well.
  for (const table of [read.workDone, read.months, read.seasons, read.lastSpans, read.dateSlips, read.loneWork]) take(Object.keys(table));
  taken.set(vocabulary, found);
  return found;
}
