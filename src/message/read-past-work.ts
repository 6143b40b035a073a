// "Spring 2023 at 9,800, receipt": when a job was done, at what figure, by whom, and how the member knows.

import { LONG_AGO, vagueDate } from "../core/calendar/arithmetic.ts";
import type { VagueDate } from "../core/calendar/dates.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { unitsNamed } from "../core/quantity/parse.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { HOW_WE_KNOW, type HowWeKnow } from "../core/schedule/facts.ts";
import type { Cost } from "../core/work-detail.ts";
import { among, under } from "./among.ts";
import { inItsLanguage } from "./language.ts";
import { readCost } from "./read-detail.ts";
import { type ReadDial, readDial } from "./read-dial.ts";
import { readVagueDate } from "./read-vague-date.ts";
import { foldWord } from "./scan.ts";

export type PastWork = {
  readonly on: VagueDate | null;
  readonly odometer: RecordWork["odometer"];
  /** How far back it was, where it was said so: "3k ago". */
  readonly back: ReadDial | null;
  readonly how: HowWeKnow | null;
  /** Who did it, as typed; null where nobody was named. */
  readonly by: string | null;
  readonly cost: Cost | null;
};

/** What a part is read by. */
type With = { readonly known: Known; readonly unit: DistanceUnit };

const NOTHING: PastWork = { on: null, odometer: null, back: null, how: null, by: null, cost: null };

/** "unknown" when the text says so; null when some part of it is not understood, so that nothing is passed over. */
export function readPastWork(text: string, of: Known, unit: DistanceUnit): PastWork | "unknown" | null {
  const known = inItsLanguage(text, of);
  const whole = bare(text);
  if (among(known.vocabulary.unknown, foldWord(whole))) return "unknown";
  let said: PastWork | null = NOTHING;
  for (const part of partsOf(whole, known)) said = said === null ? null : readPart(part, { known, unit }, said);
  return said === null || (said.on === null && said.odometer === null && said.back === null) ? null : said;
}

const bare = (text: string): string => text.trim().replace(/[\s.!,]+$/u, "");
const wordsOf = (text: string): readonly string[] => text.split(/\s+/u).filter((word) => word !== "");

/** Parts stand behind commas or an at-word; a comma between three digits belongs to a figure. */
function partsOf(text: string, { vocabulary }: Known): readonly string[] {
  const isAt = (word: string): boolean => among(vocabulary.at, foldWord(word)) && unitsNamed(word, vocabulary.units).length === 0;
  return text
    .split(/,(?!\d{3})|;|@|\n/u)
    .flatMap((part) => {
      const parts: string[][] = [[]];
      for (const word of wordsOf(part)) {
        if (isAt(word)) parts.push([]);
        else parts.at(-1)?.push(word);
      }
      return parts.map((words) => words.join(" "));
    })
    .filter((part) => part !== "");
}

/** What was said with one part more, read as a whole or without what stands at its ends and says something by itself; null where it is not understood. */
function readPart(part: string, by: With, said: PastWork): PastWork | null {
  const typed = bare(part);
  const whole = typed === "" ? said : readWhole(typed, by, said);
  if (whole !== null) return whole;
  const words = wordsOf(typed);
  const folded = words.map(foldWord);
  const doer = readDoer(words, by, said);
  if (doer !== null) return doer;
  for (const how of said.how === null ? HOW_WE_KNOW : [])
    for (const phrase of by.known.vocabulary.how[how]) {
      const rest = withoutEnd(words, folded, phrase.split(" "));
      if (rest !== null) return readPart(rest, by, { ...said, how });
    }
  for (const idle of idleWords(by.known)) {
    const rest = withoutEnd(words, folded, idle.split(" "));
    if (rest !== null) return readPart(rest, by, said);
  }
  return readWithDial(words, by, said);
}

/** "12,500 in May", "May 12,500": a dial's figure beside something else, and nothing between. */
function readWithDial(words: readonly string[], by: With, said: PastWork): PastWork | null {
  if (said.odometer !== null || said.back !== null) return null;
  for (const at of words.keys())
    for (const to of [at + 2, at + 1]) {
      const dial = at > 0 && to < words.length ? null : readDial(words.slice(at, to).join(" "), by.known, by.unit);
      if (dial === null || dial.value < LEAST_DIAL) continue;
      const beside = [...words.slice(0, at), ...words.slice(to)].join(" ");
      const figure = beside === "" ? null : readWhole(words.slice(at, to).join(" "), by, { ...said, on: said.on ?? NO_DAY });
      const all = figure === null ? null : readPart(beside, by, { ...figure, on: said.on });
      if (all !== null) return all;
    }
  return null;
}

/** Smaller ones are days of a month, or years of two digits. */
const LEAST_DIAL = 1000;
/** Keeps a figure from being read as a year. */
const NO_DAY = vagueDate(LONG_AGO, LONG_AGO, "");

/** A longer name is none. */
const MOST_WORDS = 4;

/** "2024 by the dealer", "done by me last summer": who did it stands behind the word, and something else may stand behind them. */
function readDoer(words: readonly string[], by: With, said: PastWork): PastWork | null {
  const { details, articles } = by.known.vocabulary;
  const at = words.findIndex((word) => among(details.byName, foldWord(word)));
  if (at < 0 || said.by !== null) return null;
  const from = among(articles, foldWord(words[at + 1] ?? "")) ? at + 2 : at + 1;
  for (let to = from + 1; to <= Math.min(words.length, from + MOST_WORDS); to++) {
    const name = words.slice(from, to).join(" ");
    if (/\d/u.test(name)) return null;
    const how = howOf(name, by.known);
    const before = readPart(words.slice(0, at).join(" "), by, { ...said, how: said.how ?? how, by: how === "did it" ? null : name });
    const all = before === null ? null : readPart(words.slice(to).join(" "), by, before);
    if (all !== null) return all;
  }
  return null;
}

/** What is left of words that begin or end with a phrase, as typed; null where they do neither. */
function withoutEnd(words: readonly string[], folded: readonly string[], phrase: readonly string[]): string | null {
  const from = folded.length - phrase.length;
  if (from < 0) return null;
  if (phrase.every((word, n) => folded[from + n] === word)) return words.slice(0, from).join(" ");
  return phrase.every((word, n) => folded[n] === word) ? words.slice(phrase.length).join(" ") : null;
}

/** Words that change nothing: that it was done is known, and how sure a vague day is. */
function idleWords({ vocabulary }: Known): readonly string[] {
  const { roughly, spanIdle, around, renewed, workDone, details } = vocabulary;
  return [...roughly, ...spanIdle, ...around, ...renewed, ...Object.keys(workDone), ...details.fresh];
}

const howOf = (text: string, { vocabulary }: Known): HowWeKnow | null =>
  HOW_WE_KNOW.find((each) => [each, ...vocabulary.how[each]].includes(foldWord(text))) ?? null;

/** What was said with a part that says one thing. */
function readWhole(typed: string, { known, unit }: With, said: PastWork): PastWork | null {
  const { vocabulary } = known;
  const how = howOf(typed, known);
  if (how !== null && said.how === null) return { ...said, how };
  const shop = shopOf(typed, known);
  if (shop !== null && said.by === null) return { ...said, by: shop };
  const on = said.on === null ? dayOf(typed, known) : null;
  if (on !== null) return { ...said, on };
  const isMoney = (foldWord(typed).match(/[^\p{L}\p{N}\s.,]|\p{L}+/gu) ?? []).some((word) => under(vocabulary.details.currencies, word) !== undefined);
  const cost = isMoney && said.cost === null ? readCost(typed, known) : null;
  if (cost !== null) return { ...said, cost };
  // "Done" by itself says no more than was asked.
  const folded = foldWord(typed);
  if (under(vocabulary.workDone, folded) !== undefined || among(vocabulary.renewed, folded)) return said;
  if (said.odometer !== null || said.back !== null) return null;
  const ago = withoutEnd(wordsOf(typed), wordsOf(folded), [vocabulary.ago.behind[0] ?? "-"]);
  const back = ago === null ? null : readDial(ago, known, unit);
  if (back !== null && back.value >= LEAST_BACK) return { ...said, back };
  const dial = readDial(typed, known, unit);
  return dial === null ? null : { ...said, odometer: { value: dial.value, unit: dial.unit, typed: { text: typed, unit: dial.unitTyped ? dial.unit : null } } };
}

/** "3 ago" is no distance. */
const LEAST_BACK = 50;

/** "The dealer", "Miller's garage". */
function shopOf(typed: string, { vocabulary }: Known): string | null {
  const words = wordsOf(typed);
  const from = among(vocabulary.articles, foldWord(words[0] ?? "")) ? 1 : 0;
  const isName = words.length <= from + 2 && !/\d/u.test(typed) && !words.some((word) => among(vocabulary.details.byName, foldWord(word)));
  return isName && among(vocabulary.details.shops, foldWord(words.at(-1) ?? "")) ? words.slice(from).join(" ") : null;
}

function dayOf(typed: string, known: Known): VagueDate | null {
  const { vocabulary, today } = known;
  const { ago, months } = vocabulary;
  const word = foldWord(typed);
  if (ago.justNow.includes(word)) return vagueDate(today, today, typed);
  // "Jan 25" may be a day or a year.
  const [, month, two] = /^(\p{L}+)\.? (\d{2})$/u.exec(word) ?? [];
  if (month !== undefined && under(months, month) !== undefined && Number(two) >= 10 && Number(two) <= Number(today.slice(2, 4))) return null;
  const read = readVagueDate(typed.replace(/(?<=\p{L} ?)['’](\d{2})$/u, " 20$1"), known);
  return read === "unknown" || read === null ? null : { ...read, typed };
}

/** "Front 2021, rear last autumn": what is said of each end, the word for the end left out; null where no end is named. Two ends named at once share what follows. */
export function splitByEnd(text: string, { vocabulary }: Known): ReadonlyMap<"front" | "rear", string> | null {
  const { places } = vocabulary;
  const joins = vocabulary.and.filter((word) => /^\p{L}+$/u.test(word));
  const said = foldWord(text);
  // Behind a name of the place, "tyre" says nothing more.
  const words = [...said.matchAll(/[\p{L}\p{N}][\p{L}\p{N}'’]*/gu)].map(({ 0: word, index }) => ({ word, at: index, to: index + word.length }));
  const ends = words.flatMap(({ word, at, to }, n) => {
    const end = (["front", "rear"] as const).find((each) => word.length > 1 && places[each].includes(word));
    const next = words[n + 1];
    return end === undefined ? [] : [{ end, at, to: next !== undefined && isTyre(next.word) ? next.to : to }];
  });
  const [first] = ends;
  if (first === undefined || !isNothing(said.slice(0, first.at), joins)) return null;
  const pieces = ends.map(({ end, to }, n) => ({ end, text: text.slice(to, ends[n + 1]?.at ?? text.length) }));
  const told = new Map<"front" | "rear", string>();
  for (const [n, { end }] of pieces.entries()) {
    const own = pieces.slice(n).find((piece) => !isNothing(foldWord(piece.text), joins));
    if (told.has(end) || own === undefined) return null;
    told.set(end, trimmed(own.text, joins));
  }
  return told;
}

const isTyre = (word: string): boolean => /^(?:tyres?|tires?|reifen|one)$/u.test(word);
/** Without the marks and the "and" around what is said of one end. */
const trimmed = (text: string, joins: readonly string[]): string =>
  text
    .replace(/^[\s,;:/&=-]+/u, "")
    .replace(new RegExp(`[\\s,;:/&-]+(?:(?:${joins.join("|")})\\s*)?$`, "iu"), "")
    .trim();
const isNothing = (text: string, joins: readonly string[]): boolean => joins.includes(trimmed(text, []).trim()) || trimmed(text, joins) === "";
