// What is moulded on a tyre and typed with it: its size, and behind it its load and speed. None of its figures is a reading or an odometer.

import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { foldWord, ownWords, type Token } from "./scan.ts";

/** A marking at tokens `from` to `to` (both included), as typed. */
export type TyreMark = { readonly from: number; readonly to: number; readonly typed: string };

/** "180/55ZR17", "120/70-17", "3.25-19", "MT90B16", with "M/C", load and speed behind it. Source: 49 CFR 571.119 S6.5 names what is moulded; the order of a size is that of its trade. */
const MARK =
  /(?<![\p{L}\p{N}.,/])(?:(?:[5-9]\d|[1-3]\d{2})\/\d{2,3} ?-?(?:ZR|Z?[RB]|-)-?\d{2}|[1-9]\.\d{2} ?[SHV]?-\d{2}|M[A-Z]\d{2} ?[RB-]-?\d{2})(?![\d.,]\d|[\p{L}\d])(?: ?M\/C)?(?: ?(?:\(\d{2,3}[A-Z]\)|\d{2,3}[H-Z](?![\p{L}\p{N}])))?(?: ?T[LT](?![\p{L}\p{N}]))?/giu;

export type MarkSaid = { readonly typed: string; readonly place: "front" | "rear" | null };

/** The markings of a message that says nothing else, each with the end that stands before it, or else behind; empty where it says more. "Rear tyre 150/70R17 69V". */
export function onlyMarksSaid(said: string, { vocabulary, bikes }: Known): readonly MarkSaid[] {
  const text = ownWords(said);
  if (text.length > LONGEST) return [];
  const found = [...text.matchAll(MARK)];
  if (found.length === 0 || found.length > 2) return [];
  const between = [0, ...found.map((match) => match.index + match[0].length)].map((from, n) => text.slice(from, found[n]?.index ?? text.length));
  const { places, measuring, articles, onBike } = vocabulary;
  const words = between.map((gap) => [...gap.matchAll(/[\p{L}\p{N}'-]+/gu)].map(([word]) => foldWord(word)));
  const ofNames = new Set(bikes.flatMap(({ nickname }) => foldWord(nickname).split(" ")));
  const plain = [places.front, places.rear, measuring.tyre, measuring.codeBeside, measuring.sizes, articles, onBike];
  if (!words.flat().every((word) => ofNames.has(word) || plain.some((list) => among(list, word)))) return [];
  const endIn = (gap: readonly string[] | undefined): MarkSaid["place"] =>
    gap?.flatMap((word) => (["front", "rear"] as const).filter((end) => among(places[end], word))).at(0) ?? null;
  // "Front 110/80-19, rear 150/70-17", or both the other way round.
  const before = found.map((_match, n) => endIn(words[n]));
  const ends = before.includes(null) ? found.map((_match, n) => endIn(words[n + 1])) : before;
  const told = ends.includes(null) && found.length === 1 ? [before[0] ?? ends[0] ?? null] : ends;
  return found.map((match, n) => ({ typed: match[0].trim(), place: told[n] ?? null }));
}
const LONGEST = 120;

/** Markings in a message that speaks of a tyre. */
export function tyreMarksIn(text: string, tokens: readonly Token[], { vocabulary }: Known): readonly TyreMark[] {
  if (!tokens.some((token) => token.is === "word" && among(vocabulary.measuring.tyre, token.folded))) return [];
  return [...text.matchAll(MARK)].flatMap((match): readonly TyreMark[] => {
    const [typed] = match;
    const end = match.index + typed.length;
    const from = tokens.findIndex((token) => token.end > match.index);
    const to = tokens.findLastIndex((token) => token.start < end);
    return from < 0 || to < from ? [] : [{ from, to, typed }];
  });
}
