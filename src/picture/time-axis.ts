// Days across a page, with the months on top of it, and where today is.

import { scaleLinear } from "d3-scale";
import { addMonths, dayNumber, localDate } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { widthOf } from "./letters.ts";
import { SMALL } from "./look.ts";

/** Days from the left to the right of a page. */
export type TimeAxis = {
  readonly from: LocalDate;
  readonly to: LocalDate;
  /** Where a day lies; a day outside lies at the nearer end. */
  readonly at: (day: LocalDate) => number;
  /** Firsts of months, no more than have room for their names. */
  readonly ticks: readonly LocalDate[];
};

/** Texts under the days: firsts of months; of days too close for two of them, the first and the last by name. */
export function underDays(
  time: TimeAxis,
  month: (first: LocalDate) => string,
  day: (on: LocalDate) => string,
): { readonly x: number; readonly text: string }[] {
  if (time.ticks.length > 1) return time.ticks.map((on) => ({ x: time.at(on), text: month(on) }));
  const apart = time.at(time.to) - time.at(time.from) > (widthOf(day(time.from), SMALL) + widthOf(day(time.to), SMALL)) / 2 + 16;
  return (apart ? [time.from, time.to] : [time.from]).map((on) => ({ x: time.at(on), text: day(on) }));
}

/** Months between two names on an axis, from the finest. */
const STEPS = [1, 2, 3, 6, 12, 24, 60, 120];

/** @param text what a first of a month is called: it decides how many have room */
export function timeAxis(from: LocalDate, to: LocalDate, [left, right]: readonly [number, number], text: (day: LocalDate) => string): TimeAxis {
  // One day alone lies in the middle.
  const days = from < to ? [dayNumber(from), dayNumber(to)] : [dayNumber(from) - 1, dayNumber(from) + 1];
  const scale = scaleLinear(days, [left, right]).clamp(true);
  const at = (day: LocalDate): number => scale(dayNumber(day));
  const fits = (days: readonly LocalDate[]): boolean =>
    days.every((day, n) => {
      const next = days[n + 1];
      return next === undefined || at(next) - at(day) > (widthOf(text(day), SMALL) + widthOf(text(next), SMALL)) / 2 + 16;
    });
  const candidates = STEPS.map((step) => firsts(from, to, step));
  return { from, to, at, ticks: candidates.find(fits) ?? candidates.at(-1)?.slice(0, 1) ?? [] };
}

/** The firsts of every so many months between two days, counted from January. */
function firsts(from: LocalDate, to: LocalDate, step: number): LocalDate[] {
  const found: LocalDate[] = [];
  const anchor = localDate(`${String(Math.floor(Number(from.slice(0, 4)) / 10) * 10).padStart(4, "0")}-01-01`);
  const months = (Number(from.slice(0, 4)) - Number(anchor.slice(0, 4))) * 12 + Number(from.slice(5, 7)) - 1;
  for (let n = Math.floor(months / step) * step; ; n += step) {
    const day = addMonths(anchor, n);
    if (day > to) return found;
    if (day >= from) found.push(day);
  }
}
