// The phrases of a language that stand with measured values, found in one pass over a message: the longest that fits, one subject at a time.

import type { ConditionRead } from "../core/reading/detail.ts";
import type { Level, ReadingKind } from "../core/reading/kinds.ts";
import type { PlaceWord } from "../core/reading/measuring-words.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import type { SpecUse } from "../core/spec/spec.ts";
import { among } from "./among.ts";
import { foldWord, type Token } from "./scan.ts";

/** What a phrase can be. One phrase can name several kinds ("sag"); figures and units then tell them apart. */
type Subjects = {
  kind: ReadingKind;
  place: PlaceWord;
  level: Level | "low";
  condition: ConditionRead;
  load: SpecUse;
  side: "inner" | "outer";
  state: "found" | "left";
  sign: "minus" | "higher" | "lower";
  trip: "trip" | "since last";
  fill: "full" | "not full";
  spec: "spec";
};
type Subject = keyof Subjects;

/** A phrase at tokens `at` to `to` (both included). */
export type Phrase<S extends Subject> = { readonly at: number; readonly to: number; readonly are: readonly Subjects[S][] };
export type Phrases = { readonly [S in Subject]: readonly Phrase<S>[] };

type Entry = { readonly words: readonly string[]; readonly are: string[] };
type Index = {
  /** By first word, then by subject, the longest phrase first: most words of a message begin none. */
  readonly byFirst: ReadonlyMap<string, readonly (readonly [Subject, readonly Entry[]])[]>;
  /** Every word that may stand beside a reading without changing it. */
  readonly beside: ReadonlySet<string>;
};
const indexes = new WeakMap<Vocabulary, Index>();

function listsOf({ kinds, places, specs, measuring: m }: Vocabulary): Readonly<Record<Subject, Readonly<Record<string, readonly string[]>>>> {
  return {
    kind: kinds,
    place: places,
    level: { ...m.levels, low: m.low },
    condition: m.conditions,
    load: Object.fromEntries(Object.entries(specs.uses).map(([use, phrases]) => [use, phrases.flatMap((phrase) => [phrase, phrase.replaceAll(" ", "-")])])),
    side: m.sides,
    state: { found: m.found, left: m.left },
    sign: { minus: m.minus, higher: m.higher, lower: m.lower },
    trip: { trip: m.trip, "since last": m.sinceLast },
    fill: { full: m.full, "not full": m.notFull },
    spec: { spec: m.ofSpec },
  };
}

function indexOf(vocabulary: Vocabulary): Index {
  const known = indexes.get(vocabulary);
  if (known !== undefined) return known;
  const lists = listsOf(vocabulary);
  const bySubject = new Map<Subject, Map<string, Entry[]>>();
  const beside = new Set<string>();
  for (const subject of Object.keys(lists) as Subject[]) {
    const byFirst = new Map<string, Entry[]>();
    for (const [key, phrases] of Object.entries(lists[subject])) {
      for (const phrase of phrases) {
        const words = foldWord(phrase).split(" ");
        const first = words[0] ?? "";
        if (subject !== "spec") for (const word of words) beside.add(word);
        const entries = byFirst.get(first) ?? [];
        const same = entries.find((entry) => entry.words.join(" ") === words.join(" "));
        if (same === undefined) entries.push({ words, are: [key] });
        else same.are.push(key);
        byFirst.set(first, entries);
      }
    }
    for (const entries of byFirst.values()) entries.sort((a, b) => b.words.length - a.words.length);
    bySubject.set(subject, byFirst);
  }
  const { around, articles, joins, at, onBike, beside: plain, warm, measuring } = vocabulary;
  for (const list of [
    around,
    articles,
    joins,
    at,
    onBike,
    plain,
    warm,
    measuring.pitches,
    measuring.rpm,
    measuring.hours,
    measuring.minutes,
    measuring.forces,
    measuring.currencies,
    measuring.acrossTread,
    ...[measuring.inSun, measuring.sweeps].map((phrases) => phrases.flatMap((phrase) => phrase.split(" "))),
  ])
    for (const word of list) beside.add(word);
  const byFirst = new Map<string, [Subject, readonly Entry[]][]>();
  for (const [subject, entries] of bySubject) for (const [first, list] of entries) byFirst.set(first, [...(byFirst.get(first) ?? []), [subject, list]]);
  const made = { byFirst, beside };
  indexes.set(vocabulary, made);
  return made;
}

/** How a token is compared with the words of a phrase; a possessive s does not matter. */
const wordOf = (token: Token | undefined): string | null =>
  token?.is === "word" ? (token.folded.endsWith("'s") ? token.folded.slice(0, -2) : token.folded) : null;

/** Every phrase of a message. A word that is part of a longer phrase of its subject stands in no other of that subject. */
export function phrasesIn(tokens: readonly Token[], vocabulary: Vocabulary): Phrases {
  const { byFirst } = indexOf(vocabulary);
  const found: { [S in Subject]: Phrase<S>[] } = {
    kind: [],
    place: [],
    level: [],
    condition: [],
    load: [],
    side: [],
    state: [],
    sign: [],
    trip: [],
    fill: [],
    spec: [],
  };
  const words = tokens.map(wordOf);
  const isAt = (parts: readonly string[], at: number): boolean => {
    // The first is what they were looked up by.
    for (let n = 1; n < parts.length; n++) if (words[at + n] !== parts[n]) return false;
    return true;
  };
  for (let at = 0; at < words.length; at++) {
    const first = words[at];
    const begun = first == null ? undefined : byFirst.get(first);
    if (begun === undefined) continue;
    for (const [subject, entries] of begun) {
      const list = found[subject] as Phrase<Subject>[];
      if ((list.at(-1)?.to ?? -1) >= at) continue;
      const entry = entries.find((each) => isAt(each.words, at));
      if (entry !== undefined) list.push({ at, to: at + entry.words.length - 1, are: entry.are as Subjects[Subject][] });
    }
  }
  // "Pumped it back up to 33" names no end.
  const isAgain = ({ at, to }: Phrase<"place">): boolean =>
    at === to && among(vocabulary.measuring.again, words[at] ?? null) && among(vocabulary.measuring.againTo, words[at + 1] ?? null);
  // "With my wife on the back".
  const isOfLoad = ({ at, to }: Phrase<"place">): boolean => found.load.some((load) => at >= load.at && to <= load.to);
  // "3.9/3.4/3.8 l to r": there "r" is no rear.
  const sweeps = vocabulary.measuring.sweeps.flatMap((phrase) => {
    const parts = phrase.split(" ");
    return words.flatMap((word, at) => (word === parts[0] && isAt(parts, at) ? [{ at, to: at + parts.length - 1 }] : []));
  });
  const isSwept = ({ at }: Phrase<"place">): boolean => sweeps.some((sweep) => at >= sweep.at && at <= sweep.to);
  // "Left intake 0.05": a side, and no value that was left.
  const { places, measuring } = vocabulary;
  const isOfValve = (at: number): boolean => [places.intake, places.exhaust, places.cylinder, measuring.valves].some((list) => among(list, words[at] ?? null));
  const isSideOfValve = ({ at, to }: Phrase<"state">): boolean => at === to && among(places.left, words[at] ?? null) && isOfValve(at + 1);
  return {
    ...found,
    state: found.state.filter((phrase) => !isSideOfValve(phrase)),
    place: withShortIntake(
      tokens,
      found.place.filter((phrase) => !isAgain(phrase) && !isOfLoad(phrase) && !isSwept(phrase)),
      vocabulary,
    ),
  };
}

/** "In 0.10 0.12 ex 0.20 0.21": before a figure, and only beside the exhaust valves, "in" is the intake ones. */
function withShortIntake(tokens: readonly Token[], places: readonly Phrase<"place">[], { measuring }: Vocabulary): readonly Phrase<"place">[] {
  if (!places.some(({ are }) => are.includes("exhaust"))) return places;
  const short = tokens.flatMap((token, at): readonly Phrase<"place">[] =>
    token.is === "word" && among(measuring.shortIntake, token.folded) && tokens[at + 1]?.is === "number" ? [{ at, to: at, are: ["intake"] }] : [],
  );
  return short.length === 0 ? places : [...places, ...short].sort((a, b) => a.at - b.at);
}

/** Do the words of a phrase stand from a token on? */
export const beginsAt = (tokens: readonly Token[], at: number, phrase: string): boolean => {
  const first = wordOf(tokens[at]);
  return first !== null && phrase.startsWith(first) && phrase.split(" ").every((word, n) => wordOf(tokens[at + n]) === word);
};

/** May a word stand beside a reading without changing it? */
export function standsBeside(word: string, vocabulary: Vocabulary): boolean {
  const { beside } = indexOf(vocabulary);
  // "The tyre's at 28 psi".
  return beside.has(word) || (word.endsWith("'s") && beside.has(word.slice(0, -2)));
}
