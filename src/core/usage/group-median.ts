// What the bikes of a group ride in a year: the figure that serves a rider who has said none and logged too little.

import { daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { Stretch } from "../quantity/distance.ts";
import { YEAR } from "./stints.ts";

/** What a bike was ridden between its first reading and its last. */
export type RiddenBetween = { readonly from: LocalDate; readonly to: LocalDate; readonly distance: Stretch };

/** Less than most of a year is of a season, and says little of a year. */
const FEWEST_DAYS = 300;
/** The median of fewer bikes would tell on one of them. */
const FEWEST_BIKES = 3;

/** The median distance a year of the bikes that were read for long enough; null when there are too few of them. */
export function medianYear(bikes: readonly RiddenBetween[]): Stretch | null {
  const years = bikes
    .map(({ from, to, distance }) => ({ days: daysBetween(from, to), distance }))
    .filter(({ days }) => days >= FEWEST_DAYS)
    .map(({ days, distance }) => (distance / days) * YEAR)
    .sort((a, b) => a - b);
  if (years.length < FEWEST_BIKES) return null;
  const half = years.length >> 1;
  return Math.round(years.length % 2 === 1 ? (years[half] ?? 0) : ((years[half - 1] ?? 0) + (years[half] ?? 0)) / 2) as Stretch;
}
