// Calendar arithmetic on local dates: days and months as the calendar counts them, no zones, no clock.
// Days are counted by the proleptic Gregorian calendar, with the civil-day algorithm in whole numbers.

import type { LocalDate, VagueDate } from "./dates.ts";

/** Is this a real day, written `2026-11-25`? */
export function isLocalDate(text: string): text is LocalDate {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return false;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** The day written in `text`. @throws RangeError when there is no such day */
export function localDate(text: string): LocalDate {
  if (!isLocalDate(text)) throw new RangeError(`not a date: ${text}`);
  return text;
}

/** The day that lies `days` later (earlier when negative). */
export const addDays = (date: LocalDate, days: number): LocalDate => fromDayNumber(dayNumber(date) + days);

/** Days from `a` to `b`; negative when `b` is earlier. */
export const daysBetween = (a: LocalDate, b: LocalDate): number => dayNumber(b) - dayNumber(a);

/**
 * The day `months` calendar months from the anchor day; where the month is shorter, its last day.
 * Always counted from the anchor: 31 January + 1 month is the last day of February, + 2 months is 31 March.
 */
export function addMonths(anchor: LocalDate, months: number): LocalDate {
  const count = yearOf(anchor) * 12 + monthOf(anchor) - 1 + months;
  const year = Math.floor(count / 12);
  const month = count - year * 12 + 1;
  return write(year, month, Math.min(dayOf(anchor), daysInMonth(year, month)));
}

/** 1 Monday to 7 Sunday (ISO 8601). */
export const weekdayOf = (date: LocalDate): number => ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;

// Digit by digit: this is asked hundreds of times for one due list.
export const yearOf = (date: LocalDate): number => two(date, 0) * 100 + two(date, 2);
export const monthOf = (date: LocalDate): number => two(date, 5);
export const dayOf = (date: LocalDate): number => two(date, 8);
const two = (text: string, at: number): number => (text.charCodeAt(at) - 48) * 10 + text.charCodeAt(at + 1) - 48;

/** Days since 1 January 1970. */
export function dayNumber(date: LocalDate): number {
  const month = monthOf(date);
  const year = yearOf(date) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOf(date) - 1;
  return era * 146_097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719_468;
}

/** The day that is `days` after 1 January 1970. */
export function fromDayNumber(days: number): LocalDate {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted + (shifted < 10 ? 3 : -9);
  return write(yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1);
}

/** The month (1 to 12) of a day number, and the day number on which the next month begins: for loops that go month by month. */
export function monthFrom(days: number): { readonly month: number; readonly next: number } {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted + (shifted < 10 ? 3 : -9);
  const before = dayOfYear - Math.floor((153 * shifted + 2) / 5);
  return { month, next: days - before + daysInMonth(yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month) };
}

/** Days in a month of the Gregorian calendar. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** A vague date from its span. @throws RangeError when it ends before it begins */
export function vagueDate(from: LocalDate, to: LocalDate, typed: string): VagueDate {
  if (to < from) throw new RangeError(`a span cannot end before it begins: ${from} to ${to}`);
  return { from, to, typed };
}

/** Before every day: where a span begins of which nothing says how long ago. */
export const LONG_AGO = "0001-01-01" as LocalDate;

/** Some day up to the one given; how long before it nobody knows. */
export const someDayBy = (to: LocalDate, typed: string): VagueDate => vagueDate(LONG_AGO, to, typed);

/** Is nothing known of a day but which one it came before? */
export const isUndated = ({ from }: Pick<VagueDate, "from">): boolean => from === LONG_AGO;

export type Grain = "day" | "month" | "season" | "year";

/** How coarsely a vague date is known, and so how coarsely anything counted from it may be printed. */
export function grainOf(vague: VagueDate): Grain {
  const days = daysBetween(vague.from, vague.to);
  return days === 0 ? "day" : days <= 31 ? "month" : days <= 100 ? "season" : "year";
}

function write(year: number, month: number, day: number): LocalDate {
  return `${String(year).padStart(4, "0")}-${month < 10 ? "0" : ""}${month}-${day < 10 ? "0" : ""}${day}` as LocalDate;
}
