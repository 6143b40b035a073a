// A track cut into stints between readings, and the long trips among them.

import { dayNumber } from "../calendar/arithmetic.ts";
import { stretchOf } from "../quantity/distance.ts";
import type { Track } from "./track.ts";

export const YEAR = 365.25;
const MILE = stretchOf(1, "mi");
/** Tuned by npm run backtest: a stint that goes so far beyond twice the usual pace holds a long trip. */
const TRIP = 400 * MILE;

/** Readings before this are too old to say how the bike is ridden. */
const OLDEST = 4 * YEAR;
/** Readings nearer than so many days are taken together. */
const STINT = 6;

/** Day numbers: from a reading's day to before the next one's. */
export type Stint = { readonly from: number; readonly to: number; distance: number };

/** One long trip a year: how long, about which day, how likely in a year, and the days on which it came. */
export type Trip = { readonly distance: number; readonly day: number; readonly rate: number; readonly seen: readonly number[] };

/** The track as stints between readings. @param isLaidUp days on which the bike was off the road */
export function stintsOf(track: Track, isLaidUp: ((day: number) => boolean) | null): Stint[] {
  const stints: Stint[] = [];
  const { points } = track;
  const last = points.at(-1);
  let from = points[0];
  if (from === undefined || last === undefined) return [];
  const end = dayNumber(last.on);
  let start = dayNumber(from.on);
  for (const point of points) {
    const day = dayNumber(point.on);
    if (day - start < STINT && point !== last) continue;
    if (day > start && start > end - OLDEST) stints.push({ from: start, to: day, distance: point.ridden - from.ridden });
    [from, start] = [point, day];
  }
  return isLaidUp === null ? stints : stints.flatMap((stint) => riddenPart(stint, isLaidUp));
}

/** The parts of a stint outside lay-ups, which share its distance by their days; where it was ridden although laid up, the days are taken as they are. */
function riddenPart(stint: Stint, isLaidUp: (day: number) => boolean): Stint[] {
  const parts: { from: number; to: number }[] = [];
  for (let day = stint.from; day < stint.to; day++) {
    if (isLaidUp(day)) continue;
    const part = parts.at(-1);
    if (part?.to === day) part.to++;
    else parts.push({ from: day, to: day + 1 });
  }
  if (parts.length === 0) return stint.distance > 0 ? [stint] : [];
  const days = parts.reduce((sum, { from, to }) => sum + to - from, 0);
  return parts.map(({ from, to }) => ({ from, to, distance: (stint.distance * (to - from)) / days }));
}

/** Takes long trips out of the stints (riding far above the usual), and says when in the year one may be expected and how likely it is. */
export function takeTrips(stints: readonly Stint[]): Trip | null {
  const paces = stints.map(({ from, to, distance }) => distance / (to - from)).sort((a, b) => a - b);
  const usual = Math.max(5 * MILE, paces[Math.floor(paces.length * 0.8)] ?? 0);
  const trips: { day: number; distance: number }[] = [];
  for (const stint of stints) {
    const days = stint.to - stint.from;
    if (stint.distance - 2 * usual * days < TRIP) continue;
    const beyond = stint.distance - usual * days;
    const before = trips.at(-1);
    if (before !== undefined && stint.from - before.day < 25) before.distance += beyond;
    else trips.push({ day: stint.from + days / 2, distance: beyond });
    stint.distance = usual * days;
  }
  const latest = trips.at(-1);
  const [first, last] = [stints[0], stints.at(-1)];
  if (latest === undefined || first === undefined || last === undefined) return null;
  const around = (day: number): number => ((((day - latest.day) % YEAR) + YEAR * 1.5) % YEAR) - YEAR / 2;
  return {
    distance: trips.reduce((sum, { distance }) => sum + distance, 0) / trips.length,
    day: latest.day + trips.reduce((sum, { day }) => sum + around(day), 0) / trips.length,
    rate: Math.min(0.95, trips.length / Math.max(trips.length, Math.round((last.to - first.from) / YEAR))),
    seen: trips.map(({ day }) => day),
  };
}
