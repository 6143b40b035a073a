// How far ahead a member wants to look: a day ("1 June", "in 6 weeks", "midsummer", "spring"), an odometer ("18,000 mi") or a distance more ("+1,500 mi").

import * as chrono from "chrono-node";
import { isLocalDate, localDate, monthOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { under } from "./among.ts";
import { readDial } from "./read-dial.ts";
import { foldWord } from "./scan.ts";

export type Until =
  | { readonly is: "day"; readonly on: LocalDate }
  | { readonly is: "distance"; readonly value: number; readonly unit: DistanceUnit; readonly more: boolean };

/** Reads the whole of a text; null when it is neither, or can be read two ways. A bare figure is a distance in `unit`, unless it could be a year. */
export function readUntil(text: string, known: Known, unit: DistanceUnit): Until | null {
  const typed = text.trim();
  const day = readDay(typed, known);
  if (day !== null) return { is: "day", on: day };
  const more = /^(?:\+\s*|another\s+)|\s+(?:more|further|on)$/iu;
  const dial = readDial(typed.replace(more, ""), known, unit);
  if (dial === null || (!dial.unitTyped && /^(19|20)\d\d$/u.test(typed))) return null;
  return { is: "distance", value: dial.value, unit: dial.unit, more: more.test(typed) };
}

function readDay(typed: string, known: Known): LocalDate | null {
  const { months, seasons, midsummer } = known.vocabulary;
  const words = foldWord(typed).split(/[\s,]+/u);
  const year = /^20\d\d$/u.test(words.at(-1) ?? "") ? Number(words.at(-1)) : null;
  const name = words.slice(0, year === null ? undefined : -1).join(" ");
  // The solstice by the calendar: the 21st of June in the north, of December in the south.
  if (midsummer.includes(name)) return next(known.south ? 12 : 6, 21, year, known.today);
  const north = under(seasons, name);
  if (north !== undefined) return next(known.south ? ((north + 5) % 12) + 1 : north, 1, year, known.today);
  const month = under(months, name);
  if (month !== undefined) return next(month, 1, year, known.today);
  if (isLocalDate(typed)) return typed;
  const point = /^(\d{1,2})\.(\d{1,2})\.(20\d\d)$/u.exec(typed);
  if (point !== null) return dayOrNull(Number(point[3]), Number(point[2]), Number(point[1]));
  // A slash is day first or month first by country.
  if (/\d\/\d/u.test(typed)) return null;
  return readPhrase(typed, known.today);
}

/** The next such day from tomorrow on, or that of the year named. */
function next(month: number, day: number, year: number | null, today: LocalDate): LocalDate | null {
  const inYear = (y: number): LocalDate | null => dayOrNull(y, month, day);
  if (year !== null) return inYear(year);
  const passed = month < monthOf(today) || (month === monthOf(today) && Number(today.slice(8)) >= day);
  return inYear(yearOf(today) + (passed ? 1 : 0));
}

function dayOrNull(year: number, month: number, day: number): LocalDate | null {
  const text = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return isLocalDate(text) ? localDate(text) : null;
}

/** One phrase, read by the library against noon of the member's day; what is to come is meant. */
function readPhrase(phrase: string, today: LocalDate): LocalDate | null {
  const [found, ...others] = chrono.en.GB.parse(phrase, new Date(`${today}T12:00:00`), { forwardDate: true });
  if (found === undefined || others.length > 0 || found.text.length < phrase.replace(/^(?:until|by|the|on)\s+/iu, "").length) return null;
  const { start } = found;
  const [y, m, d] = [start.get("year"), start.get("month"), start.get("day")];
  // "At 12" is an hour to the library.
  const named =
    start.isCertain("day") || start.isCertain("weekday") || /\d\s*(day|week|month|year)|\b(a|one|two|three|four|six) (day|week|month|year)|next/iu.test(phrase);
  return y === null || m === null || d === null || !named ? null : dayOrNull(y, m, d);
}
