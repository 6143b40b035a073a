// How far a thing goes until it is worn: the distance left until its wear line reaches the limit, with an 80 % range.
// The chance that the limit is reached within a distance is the chance that the line lies at or beyond it there (Fieller, 1954, J. R. Stat. Soc. B 16,
// for the ratio of two uncertain figures), widened for roads and riding that change.

import type { Stretch } from "../quantity/distance.ts";
import { normalBelow } from "../usage/chances.ts";
import { type Belief, type Line, lineThrough, type Point, valueAt } from "./line.ts";

/** What is known beforehand of a kind of part: a row of trade/wear.ts. Figures are canonical units, rates per kilometre. */
export type WearHabits = {
  /** A new one. */
  readonly fresh: Belief;
  /** Worn off per kilometre ridden; positive. */
  readonly rate: Belief;
  /** Standard deviation of one reading with a common gauge. */
  readonly noise: number;
  /** A reading better by so much is of another part: a gauge is off by less. */
  readonly another: number;
  /** Riding changes: for so many kilometres at a time the rate is off its mean by such a share (standard deviation). */
  readonly wander: { readonly share: number; readonly over: number };
  readonly source: string;
};

/** A reading of the part: how far it had been ridden since it was fitted (or since it was first measured), and what was read. */
export type WearReading = { readonly ridden: Stretch; readonly value: number };

export type Wear =
  | {
      readonly is: "line";
      readonly readings: number;
      /** Distance left from the last reading on, the likely figure and its 80 % range; `high` null when it may never come. */
      readonly left: { readonly likely: Stretch; readonly low: Stretch; readonly high: Stretch | null };
      /** Worn off per 1,000 km, in canonical units. */
      readonly per1000km: number;
      /** For a drawing: the value where `ridden` is zero and at the last reading. */
      readonly start: number;
      readonly now: number;
    }
  /** The last reading is at the limit or beyond. */
  | { readonly is: "worn"; readonly readings: number }
  /** Fewer than two, or two that say too little: `wide` when the range they give is of no use. */
  | { readonly is: "too few"; readonly readings: number; readonly wide: boolean };

const KM = 10_000_000;
/** A range whose ends are so many times apart tells nobody anything. */
const OF_NO_USE = 5;
/** Beyond so many times the likely life of a new one, "never" is said. */
const NEVER = 8;

/**
 * Where the wear line reaches the limit.
 * @param readings of one part at one place, oldest first
 * @param sinceNew was it new where `ridden` is zero?
 */
export function wearOf(readings: readonly WearReading[], limit: number, habits: WearHabits, sinceNew: boolean): Wear {
  const last = readings.at(-1);
  const count = readings.length;
  if (last === undefined) return { is: "too few", readings: 0, wide: false };
  if (last.value <= limit) return { is: "worn", readings: count };
  if (count < 2) return { is: "too few", readings: count, wide: false };
  // All read at one place of the road, they say nothing of the pace.
  if (readings.every(({ ridden }) => ridden === last.ridden)) return { is: "too few", readings: count, wide: true };
  const line = wearLine(readings, habits, sinceNew);
  if (line === null) return { is: "too few", readings: count, wide: true };
  const x = last.ridden / KM;
  const now = valueAt(line, x).mean;
  const most = (NEVER * habits.fresh.mean) / habits.rate.mean;
  const reached = (km: number): number => chanceOfReaching(line, x, km, limit, habits);
  const at = (share: number): number | null => (reached(most) < share ? null : solve(reached, share, most));
  const [low, likely, high] = [at(0.1), at(0.5), at(0.9)];
  if (low === null || likely === null || (count === 2 && (high === null || high > OF_NO_USE * Math.max(low, 1))))
    return { is: "too few", readings: count, wide: true };
  const stretch = (km: number): Stretch => Math.round(km * KM) as Stretch;
  return {
    is: "line",
    readings: count,
    left: { likely: stretch(likely), low: stretch(low), high: high === null ? null : stretch(high) },
    per1000km: -line.slope * 1000,
    start: line.start,
    now,
  };
}

/** The line through the readings in kilometres, with what is known of such parts. */
function wearLine(readings: readonly WearReading[], habits: WearHabits, sinceNew: boolean): Line | null {
  const points: readonly Point[] = readings.map(({ ridden, value }) => ({ x: ridden / KM, y: value }));
  const slope: Belief = { mean: -habits.rate.mean, sd: habits.rate.sd };
  return lineThrough(points, habits.noise, { start: sinceNew ? habits.fresh : null, slope });
}

/** The chance that the limit is reached within so many kilometres of the last reading. */
function chanceOfReaching(line: Line, x: number, km: number, limit: number, { wander }: WearHabits): number {
  const { mean, variance } = valueAt(line, x + km);
  // The road ahead differs from the road behind, over which the rate was learnt.
  const each = wander.share * wander.share * line.slope * line.slope * wander.over;
  const sd = Math.sqrt(variance + each * km * (1 + km / Math.max(x, wander.over)));
  return normalBelow((limit - mean) / sd);
}

/** Where a rising chance passes `share`, by halving, to a thousandth of the span. */
function solve(chance: (km: number) => number, share: number, most: number): number {
  let [from, to] = [0, most];
  for (let n = 0; n < 24; n++) {
    const middle = (from + to) / 2;
    if (chance(middle) < share) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
