// What is wrong with what was just read, where only the sign of it is said: "rear 40 psi, nail in it", "front pads 3 mm, oily".

import type { DefectWords } from "../core/reading/defect-words.ts";
import type { Intent, LogReading, NoteDefect } from "../core/reading/intent.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { bare, indexOf, longest } from "./defect-index.ts";
import { commaParts, notedAs } from "./defects-said.ts";
import { kindWordsIn } from "./kind-of.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import { namesThing } from "./things-named.ts";

/**
 * Defects of the things that were read in a clause or right before it, by signs that nothing else accounts for.
 * @param used tokens that work and defects account for; those of the signs are added
 * @param readings those of the clause @param before the last one read in the clause before it, if it has none itself
 */
export function signsBeside(
  layout: Layout,
  clause: Clause,
  used: Set<number>,
  readings: readonly LogReading[],
  before: LogReading | null,
): readonly NoteDefect[] {
  const { beside } = layout.known.vocabulary.defects;
  const subjects = [...(before === null ? [] : [before]), ...readings].filter(({ kind }) => beside.kinds[kind] !== undefined);
  if (subjects.length === 0) return [];
  const parts = commaParts(layout, clause);
  return parts.flatMap((part, n): readonly NoteDefect[] => {
    const sign = signIn(layout, part, used, subjects);
    if (sign === null) return [];
    const noted = notedAs(layout, part, sign.seen, parts[n + 1] ?? null, used);
    return noted.map((each) => ({ ...each, ...ofSubject(layout, each, sign.subject, part, sign.seen) }));
  });
}

/** The last reading that the clause after it may still be about. */
export const subjectOf = (intents: readonly Intent[]): LogReading | null => intents.findLast((intent) => intent.do === "log reading") ?? null;

type Sign = { readonly subject: LogReading; readonly seen: { readonly from: number; readonly to: number; readonly kind: string; readonly asks: boolean } };

function signIn(layout: Layout, part: Part, used: ReadonlySet<number>, subjects: readonly LogReading[]): Sign | null {
  const { defects } = layout.known.vocabulary;
  const { signs, things } = indexOf(defects);
  for (const at of tokensOf(part)) {
    if (layout.taken.has(at) || used.has(at) || !signs.firsts.has(bare(layout.tokens, at) ?? "")) continue;
    const start = layout.tokens[at]?.start ?? 0;
    const subject = subjects.findLast(({ typed }) => within(layout.text.indexOf(typed.text), start)) ?? null;
    if (subject === null) continue;
    const kinds = defects.beside.kinds[subject.kind] ?? [];
    const found = longest(layout.tokens, at, part.to, signs, rulesOf(defects, subject.kind));
    // The kinds stand in the order in which they are believed: a crack is one before it is a leak.
    const kind = kinds.find((each) => found?.rules.some((rule) => rule.split("/")[0] === each));
    if (found === null || kind === undefined) continue;
    const phrase = wordsOf(layout, { from: at, to: found.to });
    // What names a thing or an end is no sign, and how far a chain hangs is what was read.
    if (
      things.rules.has(phrase) ||
      defects.beside.not.includes(phrase) ||
      defects.beside.where.includes(phrase) ||
      isPlaceOnly(layout, { from: at, to: found.to })
    )
      continue;
    if (subject.kind === "odometer" && !defects.beside.alone.includes(phrase)) continue;
    const ofParts = defects.beside.parts[subject.kind] ?? [];
    const lead = leadOf(layout, part, at, subject, ofParts);
    if (
      lead === null ||
      !tokensOf({ from: lead, to: at - 1 }).every((each) => mayLead(layout, each) || among(ofParts, wordAt(layout.tokens, each))) ||
      namesThing(layout, { from: found.to + 1, to: part.to })
    )
      continue;
    // "Cracked flux cover": a word that is not known may be what it is of.
    const asks = tokensOf({ from: found.to + 1, to: part.to }).some((each) => !mayFollow(layout, each));
    const named = tokensOf({ from: lead, to: at - 1 }).find((each) => among(ofParts, wordAt(layout.tokens, each)));
    return { subject, seen: { from: named ?? at, to: found.to, kind, asks } };
  }
  return null;
}

const rules = new WeakMap<DefectWords, Map<ReadingKind, readonly string[]>>();

/** The rules of the kinds that a sign beside a reading can be of, made once a language. */
function rulesOf(words: DefectWords, of: ReadingKind): readonly string[] {
  const made = rules.get(words) ?? new Map<ReadingKind, readonly string[]>();
  rules.set(words, made);
  const ready = made.get(of) ?? (words.beside.kinds[of] ?? []).flatMap((kind) => (words.kinds[kind] ?? []).map((_, n) => `${kind}/${n}`));
  made.set(of, ready);
  return ready;
}

/** "On the rear". */
function isPlaceOnly(layout: Layout, part: Part): boolean {
  const { defects, places, articles } = layout.known.vocabulary;
  const lists = [defects.joins, articles, ...Object.values(places)];
  return tokensOf(part).every((at) => lists.some((list) => among(list, wordAt(layout.tokens, at))));
}

const within = (start: number, end: number): boolean => start >= 0 && start < end;

const wordsOf = (layout: Layout, part: Part): string =>
  tokensOf(part)
    .map((at) => bare(layout.tokens, at) ?? "")
    .join(" ");

/** Where what leads to a sign begins, behind the figure that was read; null where that names something else. */
function leadOf(layout: Layout, part: Part, at: number, subject: LogReading, ofParts: readonly string[]): number | null {
  const figures = tokensOf(part).filter((each) => each < at && layout.tokens[each]?.is === "number");
  // A level is said in words: what leads begins behind them.
  const said = layout.text.indexOf(subject.typed.text) + subject.typed.text.length;
  const level = figures.length > 0 ? undefined : tokensOf(part).findLast((each) => each < at && (layout.tokens[each]?.end ?? Number.POSITIVE_INFINITY) <= said);
  const from = (figures.at(-1) ?? level ?? part.from - 1) + 1;
  const lead = { from, to: at - 1 };
  if (figures.length === 0 && kindWordsIn(layout, lead).some((word) => !word.are.includes(subject.kind) && !among(ofParts, wordAt(layout.tokens, word.at))))
    return null;
  return from;
}

/** "Roads were cut up": a word that is not known is what it is said of. */
function mayLead(layout: Layout, at: number): boolean {
  const { before, past, none, mended } = layout.known.vocabulary.defects;
  return mayFollow(layout, at) || [before, past, none, mended].some((list) => among(list, wordAt(layout.tokens, at)));
}

function mayFollow(layout: Layout, at: number): boolean {
  const { defects, around, beside, onBike, places, articles } = layout.known.vocabulary;
  const word = wordAt(layout.tokens, at);
  if (word === null || layout.taken.has(at)) return true;
  return [defects.between, defects.joins, defects.itself, around, beside, onBike, articles, ...Object.values(places)].some((list) => among(list, word));
}

/** The end, the bike and the day of what was read, and its words as typed from the figure on. */
function ofSubject(
  layout: Layout,
  noted: NoteDefect,
  subject: LogReading,
  part: Part,
  seen: Part,
): Pick<NoteDefect, "words" | "bike" | "on" | "gaps" | "kind"> {
  const { byEnd } = layout.known.vocabulary.defects;
  const ends = noted.kind === null ? undefined : byEnd[noted.kind];
  const end = subject.place === "front" || subject.place === "rear" || subject.place === "sidecar" ? subject.place : null;
  const from = startOf(layout, subject);
  const to = Math.max(seen.to, ...tokensOf({ from: seen.to + 1, to: part.to }).filter((at) => wordAt(layout.tokens, at) !== null && !layout.taken.has(at)));
  return {
    kind: ends === undefined || end === null ? noted.kind : ends[end],
    bike: subject.bike,
    on: subject.on,
    gaps: [...noted.gaps.filter(({ need }) => need === "defect"), ...subject.gaps.filter(({ need }) => need === "bike")],
    words: layout.text.slice(from, layout.tokens[to]?.end),
  };
}

/** Where the part of a text that a reading was read in begins. */
function startOf({ text, tokens, clauses }: Layout, { typed }: LogReading): number {
  const figure = text.indexOf(typed.text);
  const at = tokens.findIndex(({ start, end }) => figure >= start && figure < end);
  const part = clauses.flatMap(({ parts }) => parts).find(({ from, to }) => at >= from && at <= to);
  return tokens[part?.from ?? at]?.start ?? figure;
}
