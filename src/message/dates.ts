// Date phrases in a text. Our own scanner marks the short spans; the phrase library reads only those.

import * as chrono from "chrono-node";
import { addDays, addMonths, isLocalDate, localDate, monthOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Known, Language, Vocabulary } from "../core/reading/vocabulary.ts";
import { agoAt } from "./ago.ts";
import { among, under } from "./among.ts";
import type { Dated } from "./dated.ts";
import { beforeLastAt, monthYearAt } from "./past-spans.ts";
import { foldWord, type Token } from "./scan.ts";
import { seasonOrYear, seasonSoFar, spanSoFar } from "./vague-span.ts";

const LONGEST_SPAN = 6;

/** Every date phrase of a text, in order. */
export function datesIn(text: string, tokens: readonly Token[], known: Known): readonly Dated[] {
  const found: Dated[] = [];
  const begins = openersOf(known.vocabulary);
  const saysAgo = tokens.some((token) => token.is === "word" && agoWordsOf(known.vocabulary).has(token.folded));
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    const ago = saysAgo ? agoAt(text, tokens, at, known) : null;
    if (ago !== null) {
      const behind = tokens.slice(ago.to + 1, ago.to + 3).some((each) => each.is === "word" && among(known.vocabulary.weekdays, each.folded));
      found.push({
        // "A week ago on Sunday" is no Wednesday.
        ...(behind ? { unsure: true } : {}),
        options: ago.on === null ? [] : [ago.on],
        span: ago.span,
        typed: text.slice(token?.start, tokens[ago.to]?.end),
        from: ago.from,
        to: ago.to,
      });
      at = ago.to;
      continue;
    }
    // Most words say nothing of a day.
    if (token === undefined || token.is === "break" || (token.is === "word" && !begins.has(token.folded) && !isDigit(token.text))) continue;
    const hit =
      (token.is === "word" ? beforeLastAt(text, tokens, at, known, (weekday) => readPhrase(weekday, known)) : null) ??
      (isDigit(token.text) ? monthYearAt(text, tokens, at, known) : null) ??
      figuresAt(text, tokens, at, known) ??
      thisSpanAt(text, tokens, at, known) ??
      (isLastSpan(tokens, at, known) ? spanAt(text, tokens, at, known) : null) ??
      phraseAt(text, tokens, at, known) ??
      spanAt(text, tokens, at, known);
    if (hit === null) continue;
    // "Last week of October" is a week of another month.
    const isOf = (token: Token | undefined): boolean => token?.is === "word" && among(known.vocabulary.ago.of, token.folded);
    const end = isOf(tokens[hit.to]) ? hit.to - 1 : hit.to;
    const isOther = isOf(tokens[end + 1]) && isMonth(tokens[end + 2], known);
    if (isOther || isAhead(tokens, hit, known)) {
      at = hit.to;
      continue;
    }
    const whole = orOther(text, tokens, withWeek(text, tokens, hit, known), known);
    found.push(whole);
    at = whole.to;
  }
  return found;
}

/** "All good for sat": a day by its bare name behind such a word is one to come, and says nothing of when a thing was read or done. */
function isAhead(tokens: readonly Token[], { from, to }: Dated, { vocabulary }: Known): boolean {
  const before = tokens[from - 1];
  const only = tokens[from];
  return from === to && before?.is === "word" && among(vocabulary.dateAhead, before.folded) && only?.is === "word" && among(vocabulary.weekdays, only.folded);
}

const isDigit = (text: string): boolean => text.charCodeAt(0) >= 48 && text.charCodeAt(0) <= 57;

const agoWords = new WeakMap<Vocabulary, ReadonlySet<string>>();
/** Words without which a text says nothing of how long ago. */
function agoWordsOf(vocabulary: Vocabulary): ReadonlySet<string> {
  const ready = agoWords.get(vocabulary);
  if (ready !== undefined) return ready;
  const { behind, before, weekend, days, beforeMine } = vocabulary.ago;
  const made = new Set([
    ...behind,
    ...before,
    ...weekend,
    ...beforeMine.map((phrase) => phrase.split(" ", 1)[0] ?? ""),
    ...Object.keys(days).map((phrase) => phrase.split(" ").at(-1) ?? ""),
  ]);
  agoWords.set(vocabulary, made);
  return made;
}

const openers = new WeakMap<Vocabulary, ReadonlySet<string>>();
/** The words that a day, a month, a season or a span can begin with. */
function openersOf(vocabulary: Vocabulary): ReadonlySet<string> {
  const ready = openers.get(vocabulary);
  if (ready !== undefined) return ready;
  const { dateWords, ago, lastSpans, last, spanBefore, months, seasons, dayBefore } = vocabulary;
  const made = new Set([
    ...dateWords,
    ...ago.these,
    ...ago.beforeLast,
    ...Object.keys(lastSpans),
    ...last,
    ...spanBefore,
    ...dayBefore,
    ...Object.keys(months),
    ...Object.keys(seasons),
  ]);
  openers.set(vocabulary, made);
  return made;
}

/** "On the 12th or the 13th": the other day is as good as the first, so both are named. */
function orOther(text: string, tokens: readonly Token[], first: Dated, known: Known): Dated {
  const or = tokens[first.to + 1];
  if (or?.is !== "word" || !among(known.vocabulary.either, or.folded) || first.span !== null) return first;
  for (const at of [first.to + 2, first.to + 3]) {
    const token = tokens[at];
    // Behind a day of the month another needs no "on".
    const ordinal = token?.is === "word" && ORDINAL.test(token.text) ? latestDay(Number.parseInt(token.text, 10), known.today) : null;
    const other = ordinal === null ? (figuresAt(text, tokens, at, known) ?? phraseAt(text, tokens, at, known)) : { options: [ordinal], to: at };
    if (other === null || other.options.length === 0) continue;
    const options = [...new Set([...first.options, ...other.options])];
    return { ...first, options, typed: text.slice(tokens[first.from]?.start, tokens[other.to]?.end), to: other.to };
  }
  return first;
}

/** 2026-05-03, 3.5.2026, 3/5/2026: read from the text itself, since the tokens split them. */
function figuresAt(text: string, tokens: readonly Token[], at: number, known: Known): Dated | null {
  const token = tokens[at];
  // "3.5.2026" is no number, so the scanner has it as a word.
  if (token === undefined || token.is === "break" || !/^\d/.test(token.text)) return null;
  const iso = /^\d{4}-\d{2}-\d{2}(?!\d)/.exec(text.slice(token.start, token.start + 11))?.[0];
  if (iso !== undefined && isLocalDate(iso)) return spanOf(tokens, at, token.start, iso.length, [iso], iso);
  const marked = /^(\d{1,2})([./])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/.exec(text.slice(token.start, token.start + 11));
  if (marked === null) return dayAndMonthAt(text, tokens, at, known);
  const [a, b] = [Number(marked[1]), Number(marked[3])];
  const year = Number(marked[4]) + (marked[4]?.length === 2 ? 2000 : 0);
  // Points are day first wherever they are used; slashes are day first or month first by country, so both are named.
  const orders: readonly (readonly [number, number])[] =
    marked[2] === "." || a === b
      ? [[a, b]]
      : [
          [a, b],
          [b, a],
        ];
  const options = orders.map(([day, month]) => `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`).filter(isLocalDate);
  return options.length === 0 ? null : spanOf(tokens, at, token.start, marked[0].length, options, marked[0]);
}

/** "On 03/04": a day and a month, and nobody says which is which. Elsewhere it is a part of something. */
function dayAndMonthAt(text: string, tokens: readonly Token[], at: number, { today, vocabulary }: Known): Dated | null {
  const [before, token] = [tokens[at - 1], tokens[at]];
  // "1.11. 14.280": a line that begins with a day and a month as points are used for.
  const dotted =
    before === undefined || (before.is === "break" && before.mark === "\n")
      ? /^(\d{1,2})\.(\d{1,2})\.(?=\s)/.exec(text.slice(token?.start, (token?.start ?? 0) + 7))
      : null;
  const on = dotted === null ? "" : `${yearOf(today)}-${two(Number(dotted[2]))}-${two(Number(dotted[1]))}`;
  if (token !== undefined && dotted !== null && isLocalDate(on))
    return spanOf(tokens, at, token.start, dotted[0].length, [on > today ? addMonths(on, -12) : on], dotted[0]);
  if (token === undefined || before?.is !== "word" || !among(vocabulary.dayBefore, before.folded) || (token.is === "number" && token.units.length > 0))
    return null;
  const found = /^(\d{1,2})\/(\d{1,2})(?![\d/])/.exec(text.slice(token.start, token.start + 6));
  if (found === null) return null;
  const [a, b] = [Number(found[1]), Number(found[2])];
  const year = yearOf(today);
  const past = [...new Set([`${two(b)}-${two(a)}`, `${two(a)}-${two(b)}`])]
    .map((day) => `${year}-${day}`)
    .filter(isLocalDate)
    .map((day) => (day > today ? addMonths(day, -12) : day));
  return past.length === 0 ? null : spanOf(tokens, at, token.start, found[0].length, past, found[0]);
}
const two = (n: number): string => String(n).padStart(2, "0");

function spanOf(tokens: readonly Token[], from: number, start: number, length: number, options: readonly LocalDate[], typed: string): Dated {
  let to = from;
  while ((tokens[to + 1]?.start ?? Number.POSITIVE_INFINITY) < start + length) to++;
  return { options, span: null, typed, from, to };
}

/** "Last week" is a week, where the phrase library would take a day of it. */
const isLastSpan = (tokens: readonly Token[], at: number, known: Known): boolean => {
  const [first, second] = [tokens[at], tokens[at + 1]];
  const { last, lastSpans } = known.vocabulary;
  return first?.is === "word" && second?.is === "word" && among(last, first.folded) && under(lastSpans, second.folded) !== undefined;
};

/** "This summer", "this week": what of it has been. */
function thisSpanAt(text: string, tokens: readonly Token[], at: number, { vocabulary, today, south }: Known): Dated | null {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first?.is !== "word" || second?.is !== "word" || !among(vocabulary.ago.these, first.folded)) return null;
  const typed = text.slice(first.start, second.end);
  const whole = under(vocabulary.lastSpans, second.folded);
  const season = under(vocabulary.seasons, second.folded);
  const span = whole !== undefined ? spanSoFar(today, whole, typed) : season !== undefined ? seasonSoFar(today, season, south, typed) : null;
  return span === null ? null : { options: [], span, typed, from: at, to: at + 1 };
}

/** "Last Sunday week": a Sunday, and nobody can say which. */
function withWeek(text: string, tokens: readonly Token[], hit: Dated, { vocabulary }: Known): Dated {
  const [day, week] = [tokens[hit.to], tokens[hit.to + 1]];
  const isWeek = day?.is === "word" && among(vocabulary.weekdays, day.folded) && week?.is === "word" && under(vocabulary.lastSpans, week.folded) === "week";
  return isWeek ? { ...hit, typed: text.slice(tokens[hit.from]?.start, week.end), to: hit.to + 1, unsure: true } : hit;
}

const LONGEST_VAGUE = 4;

/** "In May 2025", "last spring", "in 2024": a month, a season or a year needs a word before it or a year behind it, since "may" and "spring" are other things too. */
function spanAt(text: string, tokens: readonly Token[], at: number, known: Known): Dated | null {
  const token = tokens[at];
  if (token?.is !== "word") return null;
  const { months, seasons, last, lastSpans, spanBefore } = known.vocabulary;
  const first = token.folded;
  const opens = among(spanBefore, first) || among(last, first);
  if (!opens && under(months, first) === undefined && under(seasons, first) === undefined) return null;
  for (let to = Math.min(tokens.length - 1, at + LONGEST_VAGUE - 1); to >= (opens ? at + 1 : at); to--) {
    const slice = tokens.slice(at, to + 1);
    const short = isShortYear(tokens, to);
    const whole = short ? slice.slice(0, -2) : slice;
    if (whole.some((t) => t.is === "break" || (t.is === "number" && !isYear(t)))) continue;
    const isLastYear = whole.some((t, n) => t.is === "word" && among(last, t.folded) && under(lastSpans, wordOf(whole[n + 1])) === "year");
    if (!opens && !short && !whole.some(isYear) && !isLastYear) continue;
    const typed = text.slice(token.start, tokens[to]?.end);
    const span = seasonOrYear(foldWord(typed), typed, known);
    if (span !== null) return { options: [], span, typed, from: at, to };
  }
  return null;
}

/** "'23": an apostrophe and two figures that touch it. */
function isShortYear(tokens: readonly Token[], at: number): boolean {
  const [mark, year] = [tokens[at - 1], tokens[at]];
  return mark?.is === "break" && /^['’]$/u.test(mark.mark) && year?.is === "number" && /^\d\d$/u.test(year.text) && mark.end === year.start;
}

const wordOf = (token: Token | undefined): string => (token?.is === "word" ? token.folded : "");

const isYear = (token: Token): boolean => token.is === "number" && token.units.length === 0 && /^(19|20)\d\d$/.test(token.text);

function phraseAt(text: string, tokens: readonly Token[], at: number, known: Known): Dated | null {
  const token = tokens[at];
  if (token === undefined || token.is === "break") return null;
  const words = known.vocabulary.dateWords;
  // Most words say nothing of a day, and most figures stand before no month.
  if (token.is === "word" && !among(words, token.folded) && !/^\d/u.test(token.text)) return null;
  const isDateWord = (t: Token | undefined, n: number): boolean => t?.is === "word" && among(words, t.folded) && !isNoDay(tokens, n, known);
  // "3 May" and "3rd of May" begin with the day's figure; everything else with a word of its own.
  const ordinalOf = isOrdinalPoint(tokens, at + 1, known) ? tokens[at + 2] : undefined;
  const dayFirst =
    (token.is === "number" && token.decimals === 0 && token.value >= 1 && token.value <= 31 && token.units.length === 0) ||
    (token.is === "word" && /^\d{1,2}(st|nd|rd|th)$/iu.test(token.text));
  const nextWord = tokens[at + 1];
  const afterOf = nextWord?.is === "word" && nextWord.folded === "of" ? tokens[at + 2] : nextWord;
  const ordinal = token.is === "word" && /^\d{1,2}(st|nd|rd|th)$/iu.test(token.text);
  if (!isDateWord(token, at) && !(dayFirst && (isMonth(afterOf, known) || isMonth(ordinalOf, known))) && !ordinal) return null;
  const turned = monthFirst(text, tokens, at, known);
  if (turned !== null) return turned;
  if (!isAnchored(tokens, at, known)) return dayAlone(text, tokens, at, known);
  for (let to = Math.min(tokens.length - 1, at + LONGEST_SPAN - 1); to >= at; to--) {
    const slice = tokens.slice(at, to + 1);
    if (slice.some((t) => t.is === "break" && t.mark === "\n")) continue;
    if (
      !slice.every(
        (t, n) =>
          isDateWord(t, at + n) || isOrdinalPoint(slice, n, known) || (t.is === "word" && /^(of|the|\d{1,2}(st|nd|rd|th))$/iu.test(t.text)) || isDayOrYear(t),
      )
    )
      continue;
    const typed = text.slice(token.start, tokens[to]?.end);
    const behind = tokens[to + 1];
    // "On the 2nd try" is no day.
    if (
      behind?.is === "word" &&
      among(known.vocabulary.counted, behind.folded) &&
      ORDINAL.test(tokens[to]?.is === "word" ? (tokens[to] as { text: string }).text : "")
    )
      continue;
    const read = readPhrase(typed, known);
    if (read !== null) return { options: [read], span: null, typed, from: at, to, ...(isSoonAgain(read, typed, known) ? { unsure: true } : {}) };
  }
  return null;
}

/** "30 November" on the 25th: a year ago, or a slip? With its year, or longer away, it is no question. */
const isSoonAgain = (read: LocalDate, typed: string, { today }: Known): boolean =>
  !/\d{4}/u.test(typed) && read < addDays(today, -300) && addMonths(read, 12) > today && addMonths(read, 12) <= addDays(today, SOON);
/** Days. */
const SOON = 31;

/** "Nov 10", "October 3rd, 2025": read day first, as the library wants it. */
function monthFirst(text: string, tokens: readonly Token[], at: number, known: Known): Dated | null {
  const [month, day] = [tokens[at], tokens[at + 1]];
  if (known.vocabulary.language !== "en" || month?.is !== "word" || !isMonth(month, known) || day === undefined || day.is === "break") return null;
  if (!/^\d{1,2}(?:st|nd|rd|th)?$/iu.test(day.text) || (day.is === "number" && !isDayOrYear(day))) return null;
  const [comma, after] = [tokens[at + 2], tokens[at + 3]];
  const year = [comma, comma?.is === "break" && comma.mark === "," ? after : undefined].find((token) => token !== undefined && isYear(token));
  const to = year === undefined ? at + 1 : year === comma ? at + 2 : at + 3;
  const read = readPhrase([Number.parseInt(day.text, 10), month.text, ...(year?.is === "number" ? [year.text] : [])].join(" "), known);
  const typed = text.slice(month.start, tokens[to]?.end);
  if (read === null) return null;
  // "Jun 23": a day, or the year? A day of these weeks is one.
  const mayBeYear = year === undefined && Number.parseInt(day.text, 10) >= 19 && Number.parseInt(day.text, 10) <= yearOf(known.today) % 100;
  const isOld = mayBeYear && read < addDays(known.today, -SOON * 2);
  return { options: [read], span: null, typed, from: at, to, ...(isOld || isSoonAgain(read, typed, known) ? { unsure: true } : {}) };
}

/** Is some word of the span a day's or a month's own, and not only one that may lead to it ("on", "two", "this")? */
function isAnchored(tokens: readonly Token[], at: number, { vocabulary }: Known): boolean {
  for (let n = at; n < at + LONGEST_SPAN; n++) {
    const token = tokens[n];
    if (token?.is === "break" && !isOrdinalPoint(tokens, n, { vocabulary })) return false;
    if (token?.is !== "word") continue;
    if (isNoDay(tokens, n, { vocabulary })) continue;
    if (ORDINAL.test(token.text) || (among(vocabulary.dateWords, token.folded) && !among(vocabulary.dateJoins, token.folded))) return true;
  }
  return false;
}
/** "Sat overnight", "in the sun": a word that is a day and something else is one only where it stands as a day does. */
function isNoDay(tokens: readonly Token[], at: number, { vocabulary }: Pick<Known, "vocabulary">): boolean {
  const { otherWords, weekdays, joins, and, either, dateAhead, dateWords, measuring } = vocabulary;
  const word = wordOf(tokens[at]);
  const other = under(otherWords, word);
  if (other === undefined) return false;
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  if (among(other.notBehind, wordOf(before))) return true;
  const behind = [wordOf(next), `${wordOf(next)} ${wordOf(tokens[at + 2])}`];
  if (other.notBefore.some((phrase) => behind.includes(phrase))) return true;
  // "Sat 3 weeks".
  const counted = next?.is === "number" ? (next.unitText?.toLowerCase() ?? wordOf(tokens[at + 2])) : null;
  if (counted !== null) return under(measuring.spans, counted) !== undefined || [measuring.hours, measuring.minutes].some((list) => among(list, counted));
  if (before === undefined || next === undefined || before.is === "break" || next.is === "break") return false;
  const joined = [joins, and, either];
  const leads = [...joined, weekdays, dateAhead, dateWords].some((list) => among(list, wordOf(before)));
  const follows = [...joined, dateWords].some((list) => among(list, wordOf(next)));
  return !(leads || follows);
}

/** "3. Mai": in German the point behind a day makes it the third. */
function isOrdinalPoint(tokens: readonly Token[], at: number, { vocabulary }: Pick<Known, "vocabulary">): boolean {
  const [day, point] = [tokens[at - 1], tokens[at]];
  return vocabulary.language === "de" && point?.is === "break" && point.mark === "." && day?.is === "number" && isDayOrYear(day) && day.end === point.start;
}

/** "Am 3.", "am 3.5.": a day of the month without its name, the latest there was. */
function dayAlone(text: string, tokens: readonly Token[], at: number, known: Known): Dated | null {
  const [opens, day] = [tokens[at], tokens[at + 1]];
  if (known.vocabulary.language !== "de" || opens?.is !== "word" || day?.is !== "number" || !among(known.vocabulary.dayBefore, opens.folded)) return null;
  const found = /^(\d{1,2})\.(?:(\d{1,2})\.)?(?![\d.])/u.exec(text.slice(day.start, day.start + 7));
  if (found === null) return null;
  const [year, ofMonth] = [yearOf(known.today), found[2] === undefined ? null : Number(found[2])];
  const month = ofMonth ?? monthOf(known.today);
  const on = `${year}-${String(month).padStart(2, "0")}-${String(Number(found[1])).padStart(2, "0")}`;
  if (!isLocalDate(on)) return null;
  const past = on <= known.today ? on : addMonths(on, ofMonth === null ? -1 : -12);
  return spanOf(tokens, at, opens.start, day.start + found[0].length - opens.start, [past], text.slice(opens.start, day.start + found[0].length));
}

/** The latest such day of a month there was; null where the month of today and the one before have none. */
function latestDay(day: number, today: LocalDate): LocalDate | null {
  for (const month of [today, addMonths(localDate(`${today.slice(0, 7)}-01`), -1)]) {
    const on = `${month.slice(0, 7)}-${String(day).padStart(2, "0")}`;
    if (isLocalDate(on) && on <= today) return on;
  }
  return null;
}
const ORDINAL = /^\d{1,2}(st|nd|rd|th)$/iu;

const isMonth = (token: Token | undefined, known: Known): boolean => token?.is === "word" && under(known.vocabulary.months, token.folded) !== undefined;
const isDayOrYear = (token: Token): boolean =>
  token.is === "number" &&
  token.units.length === 0 &&
  token.decimals === 0 &&
  ((token.value >= 1 && token.value <= 31) || (token.value >= 1990 && token.value <= 2099));

const PARSERS: Readonly<Record<Language, { readonly parse: typeof chrono.en.GB.parse }>> = { en: chrono.en.GB, de: chrono.de.casual };

/** What phrases came to, by day: the same few are said over and over. */
const read = new Map<string, LocalDate | null>();
const KEPT = 2000;

function readPhrase(phrase: string, known: Known): LocalDate | null {
  const key = `${known.vocabulary.language} ${known.today} ${phrase}`;
  const ready = read.get(key);
  if (ready !== undefined) return ready;
  if (read.size >= KEPT) read.clear();
  const date = readAnew(phrase, known);
  read.set(key, date);
  return date;
}

/** One phrase, read by the library against noon of the member's day; the past is meant unless a year says otherwise. */
function readAnew(phrase: string, { today, vocabulary }: Known): LocalDate | null {
  const slips = vocabulary.dateSlips;
  const meant = phrase
    .trim()
    .split(" ")
    .map((word) => slips[foldWord(word)] ?? word)
    .join(" ")
    .replace(/^on /iu, "");
  const ordinal = /^(?:the )?(\d{1,2})(?:st|nd|rd|th)$/iu.exec(meant)?.[1];
  // A day of the month by itself only where it is said as one: "on the 3rd".
  if (ordinal !== undefined) return /^on /iu.test(phrase.trim()) ? latestDay(Number(ordinal), today) : null;
  const noon = new Date(`${today}T12:00:00`);
  const [found] = PARSERS[vocabulary.language].parse(meant, noon, { forwardDate: false });
  if (found === undefined || found.text.length < meant.length - 4) return null;
  const [year, month, day] = [found.start.get("year"), found.start.get("month"), found.start.get("day")];
  if (year === null || month === null || day === null || !(found.start.isCertain("day") || found.start.isCertain("weekday"))) return null;
  let date = localDate(`${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`);
  // Work and readings lie behind us: a bare weekday or day of a month means the last one.
  if (date > today && found.start.isCertain("weekday")) date = addDays(date, -7);
  else if (date > today && !found.start.isCertain("year")) date = found.start.isCertain("month") ? addMonths(date, -12) : addMonths(date, -1);
  return date;
}
