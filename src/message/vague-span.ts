// Spans of time by name: "spring 2023", "May 2023", "last May", "last week", "2023".

import { addDays, addMonths, daysInMonth, localDate, monthOf, vagueDate, weekdayOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";

/** The span that a folded text names, null when it names none. @param typed the same as typed, kept with the span */
export function seasonOrYear(folded: string, typed: string, known: Known): VagueDate | null {
  const { months, seasons, last, lastSpans } = known.vocabulary;
  const words = folded
    .split(/[\s,]+/u)
    .filter((word) => !among(known.vocabulary.spanIdle, word))
    // "Summer '23".
    .map((word) => word.replace(/^['’](?=\d\d$)/u, "20"));
  const [first, second, third] = words;
  // "May of last year".
  if (words.length === 3 && first !== undefined && among(last, second ?? null) && under(lastSpans, third ?? "") === "year")
    return seasonOrYear(`${first} ${yearOf(known.today) - 1}`, typed, known);
  if (first === undefined || words.length > 2) return null;
  const year = /^(19|20)\d{2}$/.test(second ?? first) ? Number(second ?? first) : null;
  if (words.length === 1 && year !== null) return vagueDate(localDate(`${year}-01-01`), localDate(`${year}-12-31`), typed);
  const isLast = among(last, first) && second !== undefined;
  const whole = isLast ? under(lastSpans, second) : undefined;
  if (whole !== undefined) {
    const [from, to] = spanBefore(known.today, whole);
    return vagueDate(from, to, typed);
  }
  const name = isLast ? (second ?? "") : first;
  if (!isLast && second !== undefined && year === null) return null;
  const month = under(months, name);
  if (month !== undefined) {
    const [from, to] = monthSpan(year ?? yearOfLast(month, known.today), month);
    return vagueDate(from, to, typed);
  }
  const north = under(seasons, name);
  if (north === undefined) return null;
  const season = known.south ? southern(north) : north;
  const [from, to] = seasonSpan(year ?? yearOfLast(season, known.today), season);
  return vagueDate(from, to, typed);
}

/** The month in which a season begins south of the equator. */
const southern = (north: number): number => ((north + 5) % 12) + 1;

/** The three months from the one in which a season begins. */
function seasonSpan(year: number, month: number): readonly [LocalDate, LocalDate] {
  const [from] = monthSpan(year, month);
  const [, to] = monthSpan(month + 2 > 12 ? year + 1 : year, ((month + 1) % 12) + 1);
  return [from, to];
}

/** "This summer": the latest one that has begun, up to today. @param north the month in which it begins in the north */
export function seasonSoFar(today: LocalDate, north: number, south: boolean, typed: string): VagueDate {
  const season = south ? southern(north) : north;
  const [from, to] = seasonSpan(yearOfLast(season, today), season);
  return vagueDate(from, to > today ? today : to, typed);
}

/** "This week": from its first day up to today. */
export function spanSoFar(today: LocalDate, whole: "week" | "month" | "year", typed: string): VagueDate {
  const from =
    whole === "week" ? addDays(today, -((weekdayOf(today) + 6) % 7)) : localDate(whole === "month" ? `${today.slice(0, 7)}-01` : `${today.slice(0, 4)}-01-01`);
  return vagueDate(from, today, typed);
}

/** "Two winters ago": the last that is over is the first of them. @param north the season's first month in the north */
export function seasonsAgo(north: number, count: number, known: Known): { readonly from: LocalDate; readonly to: LocalDate } {
  const first = known.south ? ((north + 5) % 12) + 1 : north;
  const [from] = monthSpan(yearOfLast(first, known.today), first);
  const isOver = addMonths(from, 3) <= known.today;
  const begins = addMonths(from, -12 * (isOver ? count - 1 : count));
  return { from: begins, to: addDays(addMonths(begins, 3), -1) };
}

/** The week (Monday to Sunday), month or year before the present one. */
function spanBefore(today: LocalDate, whole: "week" | "month" | "year"): readonly [LocalDate, LocalDate] {
  switch (whole) {
    case "week":
      return [addDays(today, -weekdayOf(today) - 6), addDays(today, -weekdayOf(today))];
    case "month": {
      const before = addMonths(today, -1);
      return monthSpan(yearOf(before), monthOf(before));
    }
    case "year":
      return [localDate(`${yearOf(today) - 1}-01-01`), localDate(`${yearOf(today) - 1}-12-31`)];
  }
}

/** First and last day of a month. */
function monthSpan(year: number, month: number): readonly [LocalDate, LocalDate] {
  const text = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}`;
  return [localDate(`${text}-01`), localDate(`${text}-${daysInMonth(year, month)}`)];
}

/** The year of the latest month `month` that has begun by today. */
const yearOfLast = (month: number, today: LocalDate): number => yearOf(today) - (month > monthOf(today) ? 1 : 0);
