// What the bikes of a group ride in a year: the figure that serves a rider who has said none and logged too little.

import { daysBetween } from "../calendar/arithmetic.ts";
import type { Stretch } from "../quantity/distance.ts";
import { YEAR } from "./stints.ts";
import type { Track } from "./track.ts";

/** A track over less than a year is of a season, and says little of a year. */
const FEWEST_DAYS = 300;
/** The median of fewer bikes would tell on one of them. */
const FEWEST_BIKES = 3;

/** The median distance a year of the bikes that were read for long enough; null when there are too few of them. */
export function medianYear(tracks: readonly Track[]): Stretch | null {
  const years = tracks.flatMap(({ points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) return [];
    const days = daysBetween(first.on, last.on);
    return days < FEWEST_DAYS ? [] : [((last.ridden - first.ridden) / days) * YEAR];
  });
  if (years.length < FEWEST_BIKES) return null;
  years.sort((a, b) => a - b);
  const half = years.length >> 1;
  return Math.round(years.length % 2 === 1 ? (years[half] ?? 0) : ((years[half - 1] ?? 0) + (years[half] ?? 0)) / 2) as Stretch;
}
