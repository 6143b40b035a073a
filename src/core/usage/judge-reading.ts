// Is a new odometer reading believable beside the ones before and after it? What is not is held for the member's answer.

import { daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import { type Dial, dialOf, stretchOf } from "../quantity/distance.ts";
import { riddenAtDial, type Track, type TrackPoint } from "./track.ts";

/** A planned or ridden trip: its days may hold any distance. */
export type Trip = { readonly from: LocalDate; readonly to: LocalDate };

export type Judgement =
  | { readonly is: "fine" }
  /** Below an earlier reading. */
  | { readonly is: "runs backwards"; readonly against: TrackPoint }
  /** Above a reading of a later day. */
  | { readonly is: "beyond a later one"; readonly against: TrackPoint }
  /** More than a bike is ridden in the days since the reading before, or until the one after. */
  | { readonly is: "implausible jump"; readonly against: TrackPoint }
  /** Ridden, as it seems, while it is laid up. */
  | { readonly is: "moved while laid up"; readonly against: TrackPoint };

/** More than this in a day off a trip is a slip more often than a ride. Common practice: long-distance events count 1,000 miles in a day as a feat. */
const MOST_IN_A_DAY = stretchOf(1500, "mi");

/** Nobody keeps that up: days in a row, and what a day holds at most of those and of the ones behind them. Common practice: tours of 300 miles a day, and some 40,000 miles in a year of riding for a living. */
const STEPS = [
  { days: 3, most: MOST_IN_A_DAY },
  { days: 27, most: stretchOf(300, "mi") },
  { days: Number.POSITIVE_INFINITY, most: stretchOf(120, "mi") },
] as const;

/** The most that is believed in some days, in the unit of a track. */
function mostIn(days: number): number {
  let [left, most] = [Math.max(1, days), 0];
  for (const step of STEPS) {
    const here = Math.min(left, step.days);
    most += here * step.most;
    left -= here;
    if (left <= 0) break;
  }
  return most;
}

/** A day on which a bike is worked at is none for a long ride: beyond what the dial showed that day, more than this is mostly the figure of a service. Common practice. */
const MOST_BESIDE_WORK = stretchOf(500, "mi");

/** A bike laid up is moved to a workshop and tried after work, and no further; until the day on which it was, it was ridden as most are, some 10,000 miles a year at the most. Common practice. */
const MOST_LAID_UP = { moved: stretchOf(100, "mi"), aDay: stretchOf(30, "mi") } as const;

/** Days out of use; `to` null while they last. */
type Rest = { readonly from: LocalDate; readonly to: LocalDate | null };

/**
 * Holds a dial figure read on a day against the track.
 * @param atWork it was given with work done that day
 * @param rests days on which it stands
 */
export function judgeReading(
  track: Track,
  dial: Dial,
  on: LocalDate,
  trips: readonly Trip[],
  { atWork = false, rests = [] }: { readonly atWork?: boolean; readonly rests?: readonly Rest[] } = {},
): Judgement {
  if (dial < dialOf(0, "km")) return { is: "runs backwards", against: { on, ridden: riddenAtDial(track, dial, on), reading: "" } };
  const ridden = riddenAtDial(track, dial, on);
  const before = track.points.findLast((point) => point.on <= on);
  const after = track.points.find((point) => point.on > on);
  if (before !== undefined && ridden < before.ridden) return { is: "runs backwards", against: before };
  if (after !== undefined && ridden > after.ridden) return { is: "beyond a later one", against: after };
  const onTrip = (from: LocalDate, to: LocalDate): boolean => trips.some((trip) => trip.from <= to && from <= trip.to);
  const leaps = (from: { on: LocalDate; ridden: number }, to: { on: LocalDate; ridden: number }): boolean =>
    !onTrip(from.on, to.on) && to.ridden - from.ridden > (atWork && from.on === to.on ? MOST_BESIDE_WORK : mostIn(daysBetween(from.on, to.on)));
  const here = { on, ridden };
  if (before !== undefined && leaps(before, here)) return { is: "implausible jump", against: before };
  if (after !== undefined && leaps(here, after)) return { is: "implausible jump", against: after };
  const rest = rests.find(({ from, to }) => from <= on && (to === null || on < to));
  if (before !== undefined && rest !== undefined && !onTrip(before.on, on)) {
    const most = MOST_LAID_UP.moved + MOST_LAID_UP.aDay * Math.max(0, daysBetween(before.on, rest.from));
    if (ridden - before.ridden > most) return { is: "moved while laid up", against: before };
  }
  return { is: "fine" };
}
