// Is a new odometer reading believable beside the ones before and after it? What is not is held for the member's answer.

import { daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import { type Dial, dialOf, type Stretch, stretchOf } from "../quantity/distance.ts";
import { riddenAtDial, type Track, type TrackPoint } from "./track.ts";

/** A planned or ridden trip: its days may hold any distance. */
export type Trip = { readonly from: LocalDate; readonly to: LocalDate };

export type Judgement =
  | { readonly is: "fine" }
  /** Below an earlier reading. */
  | { readonly is: "runs backwards"; readonly against: TrackPoint }
  /** Above a reading of a later day. */
  | { readonly is: "beyond a later one"; readonly against: TrackPoint }
  | { readonly is: "implausible jump"; readonly since: TrackPoint; readonly perDay: Stretch };

/** More than this in a day off a trip is a slip more often than a ride. Common practice: long-distance events count 1,000 miles in a day as a feat. */
const MOST_IN_A_DAY = stretchOf(1500, "mi");

/** Holds a dial figure read on a day against the track. */
export function judgeReading(track: Track, dial: Dial, on: LocalDate, trips: readonly Trip[]): Judgement {
  if (dial < dialOf(0, "km")) return { is: "runs backwards", against: { on, ridden: riddenAtDial(track, dial, on), reading: "" } };
  const ridden = riddenAtDial(track, dial, on);
  const before = track.points.findLast((point) => point.on <= on);
  const after = track.points.find((point) => point.on > on);
  if (before !== undefined && ridden < before.ridden) return { is: "runs backwards", against: before };
  if (after !== undefined && ridden > after.ridden) return { is: "beyond a later one", against: after };
  if (before === undefined || trips.some((trip) => trip.from <= on && before.on <= trip.to)) return { is: "fine" };
  const days = Math.max(1, daysBetween(before.on, on));
  const perDay = Math.round((ridden - before.ridden) / days) as Stretch;
  return perDay > MOST_IN_A_DAY ? { is: "implausible jump", since: before, perDay } : { is: "fine" };
}
