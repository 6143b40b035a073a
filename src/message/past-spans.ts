// Spans of the past that are typed in figures or counted backwards: "09/2024", "2023-06", "the week before last", "vorletzten Sonntag".

import { addDays, addMonths, daysInMonth, localDate, monthOf, vagueDate, weekdayOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import type { Dated } from "./dated.ts";
import type { Token } from "./scan.ts";

/** A month of a year in figures: 09/2024, 5.2024, 2023-06. A month to come is none. */
export function monthYearAt(text: string, tokens: readonly Token[], at: number, { today }: Known): Dated | null {
  const token = tokens[at];
  if (token === undefined || token.is === "break" || (token.is === "number" && token.units.length > 0)) return null;
  const written = text.slice(token.start, token.start + 8);
  const found =
    /^(?<month>\d{1,2})[./-](?<year>(?:19|20)\d\d)(?![\d./-]\d|\d)/u.exec(written) ?? /^(?<year>(?:19|20)\d\d)-(?<month>\d\d)(?![-\d])/u.exec(written);
  const [month, year] = [Number(found?.groups?.["month"]), Number(found?.groups?.["year"])];
  if (found === null || !(month >= 1 && month <= 12) || /[\d./-]/u.test(text[token.start - 1] ?? " ")) return null;
  const first = localDate(`${year}-${String(month).padStart(2, "0")}-01`);
  if (first > today) return null;
  let to = at;
  while ((tokens[to + 1]?.start ?? Number.POSITIVE_INFINITY) < token.start + found[0].length) to++;
  return { options: [], span: vagueDate(first, upTo(today, addDays(first, daysInMonth(year, month) - 1)), found[0]), typed: found[0], from: at, to };
}

const upTo = (today: LocalDate, day: LocalDate): LocalDate => (day > today ? today : day);

/** "The week before last", "Sunday before last", "vorletzte Woche": the one before the last. @param lastOf the last such day of the week */
export function beforeLastAt(
  text: string,
  tokens: readonly Token[],
  at: number,
  { today, vocabulary }: Known,
  lastOf: (weekday: string) => LocalDate | null,
): Dated | null {
  const { ago, lastSpans, weekdays } = vocabulary;
  const word = (n: number): string => {
    const token = tokens[n];
    return token?.is === "word" ? token.folded : "";
  };
  const leads = among(ago.beforeLast, word(at));
  const named = leads ? at + 1 : at;
  const isNamed = under(lastSpans, word(named)) !== undefined || among(weekdays, word(named));
  if (!isNamed) return null;
  const behind = ago.beforeLast.find((phrase) => phrase.includes(" ") && phrase.split(" ").every((each, n) => word(named + 1 + n) === each));
  if (!leads && behind === undefined) return null;
  const to = leads ? named : named + (behind ?? "").split(" ").length;
  const typed = text.slice(tokens[at]?.start, tokens[to]?.end);
  const whole = under(lastSpans, word(named));
  if (whole === undefined) {
    const last = lastOf(word(named));
    return last === null ? null : { options: [addDays(last, -7)], span: null, typed, from: at, to };
  }
  const [from, end] = spanTwiceBefore(today, whole);
  return { options: [], span: vagueDate(from, end, typed), typed, from: at, to };
}

function spanTwiceBefore(today: LocalDate, whole: "week" | "month" | "year"): readonly [LocalDate, LocalDate] {
  if (whole === "week") {
    const monday = addDays(today, -((weekdayOf(today) + 6) % 7) - 14);
    return [monday, addDays(monday, 6)];
  }
  if (whole === "year") return [localDate(`${yearOf(today) - 2}-01-01`), localDate(`${yearOf(today) - 2}-12-31`)];
  const first = addMonths(localDate(`${today.slice(0, 7)}-01`), -2);
  return [first, addDays(first, daysInMonth(yearOf(first), monthOf(first)) - 1)];
}
