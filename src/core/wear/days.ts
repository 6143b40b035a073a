// When a part is at its limit: how far it goes and how fast the road goes by are both in doubt.

import { addDays, daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";

/** A day that an odometer is likely reached, with its 80 % range; `to` null when it may not come for years. */
export type DayRange = { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null };

/**
 * The 80 % range of the day on which a limit is reached. The two doubts are independent, so that their ranges add as roots of squares (JCGM 100:2008, 5.1.2).
 * @param likely the day of the likely distance, with the range that the riding alone gives it
 * @param low the likely day of the shortest distance of its 80 % range @param high that of the longest; null when it may have no end
 */
export function dayRange(likely: DayRange, low: LocalDate, high: LocalDate | null): DayRange {
  const apart = (a: LocalDate, b: LocalDate): number => Math.max(0, daysBetween(a, b));
  const early = Math.round(Math.hypot(apart(low, likely.on), apart(likely.from, likely.on)));
  const to = high === null || likely.to === null ? null : addDays(likely.on, Math.round(Math.hypot(apart(likely.on, high), apart(likely.on, likely.to))));
  return { on: likely.on, from: addDays(likely.on, -early), to };
}
