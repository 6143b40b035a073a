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

/** Months between two names on an axis, from the finest. */
const STEPS = [1, 2, 3, 6, 12, 24, 60, 120];

/** @param text what a first of a month is called: it decides how many have room */
export function timeAxis(from: LocalDate, to: LocalDate, [left, right]: readonly [number, number], text: (day: LocalDate) => string): TimeAxis {
  const scale = scaleLinear([dayNumber(from), Math.max(dayNumber(to), dayNumber(from) + 1)], [left, right]).clamp(true);
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
