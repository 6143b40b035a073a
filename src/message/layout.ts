// What stands where in a message: names of bikes, dates, and the bike and day that each place speaks of.

import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import type { Known, KnownBike, Vocabulary } from "../core/reading/vocabulary.ts";
import { type Airs, airsIn, tyreWarmthIn } from "./airs.ts";
import { among, under } from "./among.ts";
import { bikesNamed, type Named } from "./bikes.ts";
import { type Clause, clausesOf, type Part } from "./clauses.ts";
import { cutTokens } from "./cut-tokens.ts";
import type { Dated } from "./dated.ts";
import { datesIn } from "./dates.ts";
import { beginsAt, type Phrases, phrasesIn, standsBeside } from "./phrases.ts";
import type { NumberToken, Token } from "./scan.ts";
import { type TyreMark, tyreMarksIn } from "./tyre-marks.ts";

export type Layout = {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly known: Known;
  readonly clauses: readonly Clause[];
  readonly named: readonly Named[];
  /** Do all names in it mean the same? */
  readonly oneName: boolean;
  readonly dates: readonly Dated[];
  /** Tokens that say that tyres were not cold: of which figures, `isWarmAt` says. */
  readonly warm: readonly number[];
  /** True when some word names the tread. */
  readonly treadSaid: boolean;
  /** True when some word calls a level one. */
  readonly levelSaid: boolean;
  /** Tokens that belong to a bike's name or a date. */
  readonly taken: ReadonlySet<number>;
  /** The phrases that stand with measured values. */
  readonly phrases: Phrases;
  /** Tokens at which a word for a kind of reading ends, and a word for a place begins. */
  readonly kindEnds: ReadonlySet<number>;
  readonly placeStarts: ReadonlySet<number>;
  /** Numbers that name a valve or a cylinder, by token. */
  readonly indexes: ReadonlyMap<number, number>;
  /** Sizes of tyres, with their load and speed: taken too. */
  readonly marks: readonly TyreMark[];
  /** How warm the garage and the road are: taken too. */
  readonly airs: Airs | null;
  /** What was worked out of its parts, by what works it out. */
  readonly once: Map<unknown, Map<Part, unknown>>;
};

export function layOut(text: string, scanned: readonly Token[], known: Known): Layout {
  const tokens = cutTokens(text, scanned, known);
  const dates = datesIn(text, tokens, known);
  const inDate = placesIn(dates);
  const named = bikesNamed(tokens, known).filter((name) => !inDate.has(name.from));
  const marks = tyreMarksIn(text, tokens, known);
  const phrases = phrasesIn(tokens, known.vocabulary);
  const tyreWarmth = tyreWarmthIn(tokens, known.vocabulary);
  const byKilometres = known.bikes.length > 0 && known.bikes.every(({ unit }) => unit === "km");
  const airs = airsIn(tokens, phrases, known.vocabulary, placesIn(tyreWarmth), byKilometres);
  const taken = placesIn(dates, named, marks, airs?.spans ?? [], tyreWarmth);
  return {
    text,
    tokens,
    known,
    clauses: clausesOf(tokens, known, inDate, taken),
    named,
    oneName: named.length > 0 && named.every((name) => nameKey(name) === nameKey(named[0])),
    dates,
    warm: [
      ...tyreWarmth.map(({ from }) => from),
      ...tokens.flatMap((token, at) => (token.is === "word" && (among(known.vocabulary.warm, token.folded) || isInSun(tokens, at, known)) ? [at] : [])),
    ],
    levelSaid: tokens.some((token) => token.is === "word" && among(known.vocabulary.measuring.levelWords, token.folded)),
    treadSaid: tokens.some((token) => token.is === "word" && among(known.vocabulary.kinds.tread, token.folded)),
    taken,
    airs,
    marks,
    phrases,
    kindEnds: new Set(phrases.kind.map(({ to }) => to)),
    placeStarts: new Set(phrases.place.map(({ at }) => at)),
    indexes: indexesIn(tokens, phrases, known),
    once: new Map(),
  };
}

const isInSun = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean =>
  vocabulary.measuring.inSun.some((phrase) => beginsAt(tokens, at, phrase));

/** Stands for several numbers named at once, so that the member is asked which a value is of. */
export const SEVERAL = 0;

/** Figures behind "intake", "exhaust", "cylinder" that say which one it is: a small whole number with its value beside it. */
function indexesIn(tokens: readonly Token[], phrases: Phrases, { vocabulary }: Known): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  for (const { at, to: end, are } of phrases.place) {
    // "Exhaust valve 2": the word for a valve may stand between.
    const valve = tokens[end + 1];
    const behind = valve?.is === "word" && among(vocabulary.measuring.valves, valve.folded) ? end + 1 : end;
    const to = overNumberSign(tokens, behind, vocabulary);
    const token = tokens[to + 1];
    // "No. 2 exhaust valve 0.15 mm": the sign before its number says that it is one.
    const ahead = behind === to && token?.is === "number" && !isIndex(token) ? indexBefore(tokens, at, vocabulary) : null;
    if (ahead !== null && !are.includes("cylinder") && are.some((place) => place === "intake" || place === "exhaust")) {
      found.set(ahead.at, ahead.value);
      found.set(end + 1, ahead.value);
      continue;
    }
    if (!isIndex(token)) continue;
    const cylinder = are.includes("cylinder");
    const last = lastOfSeveral(tokens, to + 1, vocabulary);
    if (last !== null && (cylinder || are.some((place) => place === "intake" || place === "exhaust"))) {
      for (let each = end + 1; each <= last; each++) found.set(each, SEVERAL);
      continue;
    }
    if (!cylinder && !are.some((place) => place === "intake" || place === "exhaust")) continue;
    const next = tokens.slice(to + 2, to + 4).find((each) => each.is !== "break" || ![":", "="].includes(each.mark));
    const before = tokens[at - 1];
    if (cylinder || next?.is === "number" || valueFollows(tokens, phrases, to + 1) || (before?.is === "number" && before.decimals > 0))
      for (let each = end + 1; each <= to + 1; each++) found.set(each, token.value);
  }
  return found;
}

/** The last of several numbers, joined, before a figure that is a value: "1 and 2 0.10". */
function lastOfSeveral(tokens: readonly Token[], at: number, { and }: Vocabulary): number | null {
  const isAnd = (token: Token | undefined): boolean =>
    token?.is === "word" ? among(and, token.folded) : token?.is === "break" && [...and, ",", "/"].includes(token.mark);
  let last = at;
  while (isAnd(tokens[last + 1]) && isIndex(tokens[last + 2])) last += 2;
  const value = tokens[last + 1];
  return last > at && value?.is === "number" && (value.decimals > 0 || value.units.length > 0) ? last : null;
}

/** A bare whole number no higher than valves and cylinders are counted. */
const isIndex = (token: Token | undefined): token is NumberToken =>
  token?.is === "number" && token.units.length === 0 && /^\d{1,2}$/u.test(token.text) && token.value >= 1 && token.value <= 12;

/** Past the words that say that a number follows: "on no. 2", "number 2". */
function overNumberSign(tokens: readonly Token[], to: number, { measuring }: Vocabulary): number {
  const isSign = (at: number): boolean => {
    const token = tokens[at];
    return token?.is === "word" ? among(measuring.numberSigns, token.folded) : token?.is === "break" && ["#", "."].includes(token.mark);
  };
  let end = to;
  while (end < to + 3 && isSign(end + 1)) end++;
  return end === to || !isIndex(tokens[end + 1]) ? to : end;
}

/** The number right before a word, behind a sign that says it is one: "no. 2 exhaust". */
function indexBefore(tokens: readonly Token[], at: number, { measuring }: Vocabulary): { readonly at: number; readonly value: number } | null {
  const token = tokens[at - 1];
  if (!isIndex(token)) return null;
  const signed = [at - 2, at - 3].some((each) => {
    const sign = tokens[each];
    return sign?.is === "word" ? among(measuring.numberSigns, sign.folded) : sign?.is === "break" && sign.mark === "#";
  });
  return signed ? { at: at - 1, value: token.value } : null;
}

/** "Intake 1 valve clearance 0.09 mm": behind a bare number, before any mark or other place, a figure that can only be the value. */
function valueFollows(tokens: readonly Token[], phrases: Phrases, at: number): boolean {
  const own = tokens[at];
  if (own?.is !== "number" || own.units.length > 0) return false;
  const stop = phrases.place.find((place) => place.at > at)?.at ?? tokens.length;
  const end = tokens.findIndex((token, n) => n > at && (n >= stop || token.is !== "word"));
  const value = end === -1 || end >= stop ? undefined : tokens[end];
  return value?.is === "number" && (value.decimals > 0 || value.units.length > 0);
}

/** A reading and the token that its value stands at. */
export type SaidAt = { readonly at: number; readonly reading: LogReading };

/** Phrases that lie inside a part. */
export function phrasesInside<P extends { readonly at: number; readonly to: number }>(phrases: readonly P[], part: Part): readonly P[] {
  if (phrases.length === 0) return phrases;
  // They stand in order, so the first is found by halving.
  let [low, high] = [0, phrases.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((phrases[middle]?.at ?? 0) < part.from) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while ((phrases[end]?.to ?? Number.POSITIVE_INFINITY) <= part.to) end++;
  return phrases.slice(low, end);
}

/** What names of one bike have in common. */
const nameKey = (name: Named | undefined): string => name?.bikes.join() || (name?.typed ?? "");

/** The tokens of some spans. */
function placesIn(...all: readonly (readonly Part[])[]): ReadonlySet<number> {
  const places = new Set<number>();
  for (const spans of all) for (const { from, to } of spans) for (let at = from; at <= to; at++) places.add(at);
  return places;
}

export const inside = (span: { readonly from: number; readonly to: number }, within: Part): boolean => span.from >= within.from && span.to <= within.to;

/** The bike meant at a place: sure, or the question that settles it. */
export type MeantBike = { readonly bike: KnownBike | null; readonly gap: Extract<Gap, { need: "bike" }> | null };

/** Which bike a span speaks of: the only one named; else the one that its part names; else the one named before it when the message begins with a name, else the one named after it; else the only bike there is. */
export function bikeAt(layout: Layout, span: Part): MeantBike {
  const { named, known } = layout;
  const [first] = named;
  if (first === undefined) {
    const [only] = known.bikes;
    return known.bikes.length === 1 && only !== undefined
      ? { bike: only, gap: null }
      : { bike: null, gap: { need: "bike", options: known.bikes.map((bike) => bike.id), named: null } };
  }
  if (layout.oneName) return resolved(first, known);
  // A sentence that names a bike speaks of that one, whatever the next one names.
  const clause = layout.clauses.find((each) => each.from <= span.from && span.to <= each.to);
  const part = clause?.parts.find((each) => inside(span, each));
  const own = part === undefined ? null : ownOf(layout, part, span);
  if (own !== null) return resolved(own, known);
  const here = clause === undefined ? [] : named.filter((name) => inside(name, clause));
  const from = here.length === 0 ? named : here;
  const before = from.findLast((name) => name.from <= span.to);
  const after = from.find((name) => name.to >= span.from);
  const begins = (from[0] ?? first).from <= (here.length === 0 || clause === undefined ? 0 : clause.from) + 1;
  // "14,300 on Heron, slack 30 mm, lubed the chain on Otter": between two bikes and with no name of its own it may be of either.
  if (!begins && before !== undefined && after !== undefined && nameKey(before) !== nameKey(after))
    return { bike: null, gap: { need: "bike", options: [...new Set([...before.bikes, ...after.bikes])], named: null } };
  return resolved((begins ? (before ?? after) : (after ?? before)) ?? first, known);
}

/** The name that its own part has for a span: where figures come first and names last ("14,820 Heron 8,700 Bramble") the one behind it, else the one before it. */
function ownOf({ text, named, tokens, taken, known }: Layout, part: Part, span: Part): Named | null {
  const names = named.filter((name) => inside(name, part));
  const [first, last] = [names[0], names.at(-1)];
  if (first === undefined || last === undefined) return null;
  const isFigureIn = (from: number, to: number): boolean => {
    for (let at = from; at <= to; at++) if (tokens[at]?.is === "number" && !taken.has(at)) return true;
    return false;
  };
  // "34 front on Heron and Bramble": said of both, so that which of them it was read on is asked.
  const [, second, third] = names;
  const join = tokens[first.to + 1];
  const isJoined = join?.is === "word" ? among(known.vocabulary.and, join.folded) : join?.is === "break" && among(known.vocabulary.and, join.mark);
  if (
    second !== undefined &&
    third === undefined &&
    isJoined &&
    second.from === first.to + 2 &&
    isFigureIn(part.from, first.from) !== isFigureIn(second.to + 1, part.to)
  )
    return {
      bikes: [...new Set([...first.bikes, ...second.bikes])],
      typed: text.slice(tokens[first.from]?.start, tokens[second.to]?.end),
      from: first.from,
      to: second.to,
    };
  const namesLast = isFigureIn(part.from, first.from) && !isFigureIn(last.to + 1, part.to);
  const before = names.findLast((name) => name.from <= span.from);
  const after = names.find((name) => name.to >= span.from);
  return (namesLast ? (after ?? before) : (before ?? after)) ?? null;
}

/** The bike that a name means, or the question which. */
export function resolved(name: Named, known: Known): MeantBike {
  const [one] = name.bikes;
  const bike = known.bikes.find((each) => each.id === one) ?? null;
  if (name.bikes.length === 1 && bike !== null) return { bike, gap: null };
  const options = name.bikes.length > 0 ? name.bikes : known.bikes.map((each) => each.id);
  // Of several that it may mean there is none to say that it is not known.
  const typed = name.bikes.length > 1 && name.unheard !== true ? null : name.typed;
  return { bike: null, gap: { need: "bike", options, named: typed, ...(name.unheard === true ? { unheard: true } : {}) } };
}

/** The day meant at a place: its own, or the question between two readings of it; today when none is said. */
export type MeantDay = {
  readonly on: LocalDate;
  /** The span meant when no day was named; enough for work, while a reading needs its day. */
  readonly span: VagueDate | null;
  readonly gap: Extract<Gap, { need: "date" }> | null;
  readonly typed: string;
};

/**
 * A date belongs to its own part; one that stands alone in a part, or at the very start of the message, to all of it.
 * @param shared the parts that speak of one thing together (pressures, a list of jobs): a date in any of them is theirs
 * @param at the token of the figure whose day is wanted: in a part with several days it has one of them
 */
export function dayAt(layout: Layout, part: Part, shared: readonly Part[], at?: number): MeantDay {
  const { tokens, known } = layout;
  // "12.6 V, standing since Sunday": so long it has stood; read it was now.
  const dates = at === undefined ? layout.dates : layout.dates.filter((dated) => !isSince(layout, dated));
  if (dates.length === 0) return meantBy(null, known.today);
  const several = at === undefined ? [] : daysIn(layout, part);
  if (at !== undefined && several.length > 1) return meantBy(besideOf(layout, part, several, at), known.today);
  // "Battery was 12.1 on Sunday, 12.6 now".
  if (several.length === 0 && at !== undefined && saysNow(layout, part)) return meantBy(null, known.today);
  const own = dates.find((dated) => inside(dated, part)) ?? dates.find((dated) => shared.some((other) => inside(dated, other)));
  const general =
    dates.find((dated) => dated.from <= 1 && tokens.slice(0, dated.from).every((token) => token.is === "word")) ??
    dates.find((dated) => layout.clauses.some((clause) => clause.parts.some((each) => inside(dated, each) && holdsOnly(layout, each, dated))));
  return meantBy(own ?? general ?? lookedOn(layout, part) ?? closing(layout, part) ?? (at === undefined ? null : dayBefore(layout, part)), known.today);
}

/** Does a date say since when something is so? */
export const isSince = ({ tokens, known }: Pick<Layout, "tokens" | "known">, { from }: Dated): boolean =>
  [from, from - 1].some((at) => {
    const token = tokens[at];
    return token?.is === "word" && among(known.vocabulary.measuring.since, token.folded);
  });

const saysNow = ({ tokens, known }: Layout, part: Part): boolean =>
  tokens.slice(part.from, part.to + 1).some((token) => token.is === "word" && among(known.vocabulary.now, token.folded));

/** The days of a part, where they differ. */
function daysIn(layout: Layout, part: Part): readonly Dated[] {
  const within = layout.dates.filter((dated) => inside(dated, part) && !isSince(layout, dated));
  return new Set(within.map(({ options, span }) => options.join() || span?.from)).size > 1 ? within : within.slice(0, 1);
}

/** "33 front yesterday, 31 today": of several days of a part the one that stands by a figure, before it where the first one leads; where none does, any of them. */
function besideOf({ tokens, taken }: Layout, part: Part, days: readonly Dated[], at: number): Dated | null {
  const isFigure = (n: number): boolean => tokens[n]?.is === "number" && !taken.has(n);
  let first = part.from;
  while (first < at && !isFigure(first)) first++;
  const leads = (days[0]?.from ?? 0) < first;
  for (let n = at + (leads ? -1 : 1); n >= part.from && n <= part.to && !isFigure(n); n += leads ? -1 : 1) {
    const day = days.find(({ from, to }) => n >= from && n <= to);
    if (day !== undefined) return day;
  }
  const [any] = days;
  return any === undefined
    ? null
    : { ...any, options: [...new Set(days.flatMap(({ options }) => options))], typed: days.map(({ typed }) => typed).join(" / ") };
}

/** "13,300 mi, rear tread 5 mm, front 35 psi on 1 July": the only day of a list of readings, said at its very end, is the day of all of them. */
function closing({ clauses, dates, tokens, known: { vocabulary } }: Layout, part: Part): Dated | null {
  const [only, another] = dates;
  const clause = clauses.find((each) => each.parts.includes(part));
  if (only === undefined || another !== undefined || clause === undefined || only.to !== clause.to || only.from <= part.to) return null;
  const last = clause.parts.find((each) => inside(only, each));
  // "14,402 mi, service booked on 1 December": what has no figure of its own is no reading, and its day is of something else.
  if (last === undefined || !tokens.slice(last.from, only.from).some(({ is }) => is === "number")) return null;
  for (let at = part.from; at < only.from; at++) {
    const token = tokens[at];
    if (token?.is !== "word") continue;
    const word = token.folded;
    // What was done has a day of its own, and so has what is so now or was so then.
    if (under(vocabulary.workDone, word) !== undefined || among(vocabulary.now, word) || among(vocabulary.defects.past, word)) return null;
    if (at >= last.from && !standsBeside(word, vocabulary)) return null;
  }
  return only;
}

/** "Checked the tyres yesterday, 31 psi front": what is read behind a look with a day of its own was read then. */
function lookedOn(layout: Layout, part: Part): Dated | null {
  const { clauses, dates, tokens, known } = layout;
  const clause = clauses.find((each) => each.parts.includes(part));
  const within = clause === undefined ? [] : dates.filter((dated) => inside(dated, clause));
  const [dated, ...others] = within;
  if (saysNow(layout, part)) return null;
  const look = dated === undefined || others.length > 0 ? undefined : clause?.parts.find((each) => inside(dated, each) && each.to < part.from);
  if (look === undefined || dated === undefined) return null;
  const said = tokens.slice(look.from, look.to + 1).filter((_, n) => look.from + n < dated.from || look.from + n > dated.to);
  const looks = said.some((token) => token.is === "word" && (known.vocabulary.workDone[token.folded] ?? []).includes("inspect"));
  return looks && !said.some((token) => token.is === "number") ? dated : null;
}

/** "14,300 yesterday, front 33": read that day too, or now? */
function dayBefore({ clauses, dates, known }: Layout, part: Part): Dated | null {
  const clause = clauses.find((each) => each.parts.includes(part));
  const before = clause === undefined ? undefined : dates.findLast((dated) => inside(dated, clause) && dated.to < part.from);
  if (before === undefined || before.span !== null || before.options.includes(known.today)) return null;
  return { ...before, options: [...before.options, known.today] };
}

/** The day that a date phrase means; today when there is none. */
export function meantBy(meant: Dated | null, today: LocalDate): MeantDay {
  if (meant === null) return { on: today, span: null, gap: null, typed: "" };
  const [on = today] = meant.options;
  if (meant.span !== null) return { on: meant.span.from, span: meant.span, gap: { need: "date", options: [], typed: meant.typed }, typed: meant.typed };
  return {
    on,
    span: null,
    gap: meant.options.length > 1 || meant.unsure === true ? { need: "date", options: meant.options, typed: meant.typed } : null,
    typed: meant.typed,
  };
}

function holdsOnly(layout: Layout, part: Part, dated: Dated): boolean {
  for (let at = part.from; at <= part.to; at++) {
    const token = layout.tokens[at];
    if (at >= dated.from && at <= dated.to) continue;
    if (token?.is === "number" || layout.taken.has(at)) return false;
    if (token?.is === "word" && !among(layout.known.vocabulary.onBike, token.folded) && !among(layout.known.vocabulary.dateAlone, token.folded)) return false;
  }
  return true;
}

/** The span meant, or a day as a span of one. */
export const asSpan = (day: MeantDay): VagueDate => day.span ?? { from: day.on, to: day.on, typed: day.typed };
