// The words in a pasted chart: its legend, and what stands in its last column.

import type { PrintedBeside } from "../core/plan/from-chart.ts";
import type { ChartWords, Meaning } from "../core/reading/chart-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { readEvery } from "./read-every.ts";
import { readRepeat } from "./read-repeat.ts";
import { foldWord } from "./scan.ts";

/** "R = replace; I: inspect and clean": each letter with the kinds of work named, the first foremost. Null when the line is no legend. */
export function legendIn(line: string, words: ChartWords): Readonly<Record<string, readonly Meaning[]>> | null {
  const found: Record<string, readonly Meaning[]> = {};
  // A comma ends an entry only where another begins: "I = inspect and clean, adjust or replace, R = replace".
  const bare = line
    .trim()
    .replace(/[,;\t"]+$/u, "")
    .replace(/^"/u, "");
  const entries = bare.split(/[,;|\t]\s*(?=[^\s=:]{1,2}\s*[=:])|;|\s{2,}/u).map((entry) => entry.trim());
  for (const entry of entries.filter((each) => each !== "")) {
    const [, letter, said] = /^([^\s=:]{1,2})\s*(?:[=:]|\s[-–—]\s)\s*(\p{L}.*)$/u.exec(entry) ?? [];
    const meanings = said === undefined ? [] : actionsIn(said, words);
    if (letter === undefined || meanings.length === 0) return null;
    found[letter.toUpperCase()] = meanings;
  }
  return Object.keys(found).length === 0 ? null : found;
}

function actionsIn(text: string, { actions }: ChartWords): readonly Meaning[] {
  const folded = foldWord(text);
  const found = Object.entries(actions).flatMap(([word, action]) => {
    const at = new RegExp(`(?:^|[^\\p{L}])${word}(?![\\p{L}])`, "u").exec(folded);
    return at === null ? [] : [{ action, word, at: at.index + (at[0].length - word.length) }];
  });
  // "check tightness" is one kind of work, not a check as well.
  const whole = found.filter(
    (each) => !found.some((other) => other !== each && other.word.length > each.word.length && other.at <= each.at && each.at < other.at + other.word.length),
  );
  return [...new Set(whole.sort((a, b) => a.at - b.at).map((each) => each.action))];
}

/** What the last column says; null when it is empty, undefined when it is not understood. */
export function besideIn(text: string, known: Pick<Known, "numbers" | "vocabulary">): (PrintedBeside & { readonly letter: string | null }) | null | undefined {
  const { chart } = known.vocabulary;
  if (chart.nothing.includes(text.trim())) return null;
  const [, letter = null, said = text] = /^\s*(\p{Lu})(?:\s*[:=]\s*|\s+)(.*)$/u.exec(text) ?? [];
  let words = foldWord(said).trim();
  const phrase = chart.fromLast.find((each) => words.includes(each));
  words = words.replace(phrase ?? "", "").trim();
  for (const lead of chart.or) words = words.replace(new RegExp(`^${lead}\\s+`, "u"), "");
  const every = readEvery(words, known);
  if (every !== null) return { every, fromLast: phrase !== undefined, letter };
  const bare = chart.along.reduce((text, lead) => text.replace(new RegExp(`^${lead}\\s+`, "u"), ""), words);
  const nth = bare === words ? null : readRepeat(bare, known);
  if (nth?.by !== "nth time" || nth.first !== undefined) return undefined;
  return { every: { miles: null, km: null, months: nth.months, hours: null }, fromLast: true, letter, along: { nth: nth.nth, of: nth.of } };
}

/** What a mark beside a name stands for, below the chart: "* replace every 2 years". */
export type Footnote = { readonly mark: string; readonly action: Meaning; readonly beside: PrintedBeside };

/** Null where a line is no footnote, or says anything but one kind of work and how often. */
export function footnoteIn(line: string, known: Pick<Known, "numbers" | "vocabulary">): Footnote | null {
  const { chart } = known.vocabulary;
  const [, mark, said] = /^\s*(\*+|†|‡)\)?\s*[:=]?\s*(\p{L}.*?)[.\s]*$/u.exec(line) ?? [];
  if (mark === undefined || said === undefined) return null;
  const [action, ...others] = actionsIn(said, chart);
  if (action === undefined || others.length > 0) return null;
  const words = Object.keys(chart.actions).filter((word) => chart.actions[word] === action);
  const rest = words.reduce((text, word) => text.replace(new RegExp(`^${word}\\s+`, "u"), ""), foldWord(said).trim());
  const beside = besideIn(rest, known);
  return beside == null || beside.letter !== null ? null : { mark, action, beside: { every: beside.every, fromLast: beside.fromLast } };
}
