// How far a thing goes until it is worn: the distance left until its wear line reaches the limit, with an 80 % range.
// The chance that the limit is reached within a distance is the chance that the line lies at or beyond it there (Fieller, 1954, J. R. Stat. Soc. B 16,
// for the ratio of two uncertain figures), summed over the paces that readings and habit leave open, and widened for roads and riding that change.

import type { Stretch } from "../quantity/distance.ts";
import { normalBelow } from "../usage/chances.ts";
import { type Belief, lineThrough, type Point } from "./line.ts";

/** A belief about a figure that is never negative and lies within factors (log-normal): half of all lie above the median, two thirds between median / times and median * times. */
export type Spread = { readonly median: number; readonly times: number };

/** What is known beforehand of a kind of part: a row of trade/wear.ts. Figures are canonical units, rates per kilometre. */
export type WearHabits = {
  /** A new one. */
  readonly fresh: Belief;
  /** Worn off per kilometre ridden. */
  readonly rate: Spread;
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
  const paces = pacesOf(readings, habits, sinceNew);
  if (paces === null) return { is: "too few", readings: count, wide: true };
  const x = last.ridden / KM;
  const most = (NEVER * habits.fresh.mean) / habits.rate.median;
  const reached = (km: number): number => chanceOfReaching(paces, x, km, limit, habits);
  const at = (share: number): number | null => (reached(most) < share ? null : solve(reached, share, most));
  const [low, likely, high] = [at(0.1), at(0.5), at(0.9)];
  if (low === null || likely === null || (count === 2 && (high === null || high > OF_NO_USE * Math.max(low, 1))))
    return { is: "too few", readings: count, wide: true };
  const stretch = (km: number): Stretch => Math.round(km * KM) as Stretch;
  return {
    is: "line",
    readings: count,
    left: { likely: stretch(likely), low: stretch(low), high: high === null ? null : stretch(high) },
    per1000km: mean(paces, ({ rate }) => rate) * 1000,
    start: mean(paces, ({ start }) => start),
    now: mean(paces, ({ start, rate }) => start - rate * x),
  };
}

/** One pace that the part may wear at, how likely it is, and the value at zero that goes with it. */
type Pace = { readonly rate: number; readonly share: number; readonly start: number };
/** `variance`: of the value at any place, where the pace is given. */
type Paces = { readonly each: readonly Pace[]; readonly variance: number };

/** How many paces are looked at at a time, and how often it is looked closer. */
const STEPS = 32;
const CLOSER = 3;
/** Beyond so many widths of the belief no pace is looked for. */
const WIDTHS = 5;
/** A pace less likely than the likeliest by so much (in natural logarithms) adds nothing. */
const NOTHING = 7;

/**
 * The paces that the readings leave open, weighed by what is known of such parts: least squares say how far the readings are from each (Gelman et al., ch. 2.4 and 3.1,
 * a posterior on a grid), and the belief how common it is.
 */
function pacesOf(readings: readonly WearReading[], { fresh, rate, noise }: WearHabits, sinceNew: boolean): Paces | null {
  const points: readonly Point[] = readings.map(({ ridden, value }) => ({ x: ridden / KM, y: value }));
  const line = lineThrough(points, noise, { start: sinceNew ? fresh : null, slope: null });
  if (line === null) return null;
  const { slope, slopeVar, covariance } = line;
  const [middle, width] = [Math.log(rate.median), Math.log(rate.times)];
  const weigh = (u: number): number => -(((u - middle) / width) ** 2 + (Math.exp(u) + slope) ** 2 / slopeVar) / 2;
  let [from, to] = [middle - WIDTHS * width, middle + WIDTHS * width];
  let grid: { readonly u: number; readonly weight: number }[] = [];
  let top = 0;
  for (let closer = 0; closer <= CLOSER; closer++) {
    const step = (to - from) / STEPS;
    grid = Array.from({ length: STEPS + 1 }, (_, n) => ({ u: from + n * step, weight: weigh(from + n * step) }));
    top = grid.reduce((most, { weight }) => Math.max(most, weight), Number.NEGATIVE_INFINITY);
    const open = grid.filter(({ weight }) => weight > top - NOTHING);
    if (closer === CLOSER || open.length > STEPS / 2) break;
    [from, to] = [(open[0]?.u ?? from) - step, (open.at(-1)?.u ?? to) + step];
  }
  const total = grid.reduce((sum, { weight }) => sum + Math.exp(weight - top), 0);
  const each = grid
    .filter(({ weight }) => weight > top - NOTHING)
    .map(({ u, weight }): Pace => {
      const pace = Math.exp(u);
      return { rate: pace, share: Math.exp(weight - top) / total, start: line.start + (covariance / slopeVar) * (-pace - slope) };
    });
  return { each, variance: Math.max(0, line.startVar - (covariance * covariance) / slopeVar) };
}

/** A figure of the part, by all the paces that it may wear at. */
const mean = ({ each }: Paces, of: (pace: Pace) => number): number => each.reduce((sum, pace) => sum + pace.share * of(pace), 0);

/** The chance that the limit is reached within so many kilometres of the last reading. */
function chanceOfReaching(paces: Paces, x: number, km: number, limit: number, { wander }: WearHabits): number {
  // The road ahead differs from the road behind, over which the rate was learnt.
  const differs = wander.share * wander.share * wander.over * km * (1 + km / Math.max(x, wander.over));
  return mean(paces, ({ rate, start }) => normalBelow((limit - start + rate * (x + km)) / Math.sqrt(paces.variance + rate * rate * differs)));
}

/** Where a rising chance passes `share`, by halving, to a hundred-thousandth of the span. */
function solve(chance: (km: number) => number, share: number, most: number): number {
  let [from, to] = [0, most];
  for (let n = 0; n < 17; n++) {
    const middle = (from + to) / 2;
    if (chance(middle) < share) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
