// Where a rider stands on a day of asking: what was read until then, and what came.

import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { dialOf } from "../../src/core/quantity/distance.ts";
import { judgeReading } from "../../src/core/usage/judge-reading.ts";
import { buildTrack, type Epoch, type OdometerReading, type Track } from "../../src/core/usage/track.ts";
import { chance } from "./random.ts";
import { quantile } from "./score.ts";
import { FUTURE, futureOf, type Population, READ_DAYS, type Rider, readingsOf, riderOf, type Typed, truthOf } from "./simulate.ts";

/** What is asked on each day: how far in so many days, or on which day after so many miles. */
export type Question = { readonly unit: "days" | "miles"; readonly horizon: number };
export const QUESTIONS: readonly Question[] = [
  ...[14, 30, 60, 120, 240].map((horizon) => ({ unit: "days", horizon }) as const),
  ...[100, 250, 500, 1000].map((horizon) => ({ unit: "miles", horizon }) as const),
];

const FIRST_IN_MILES = QUESTIONS.findIndex(({ unit }) => unit === "miles");

/** An answer or an outcome: miles, or days; infinite where a distance is not reached within the simulated future. */
export type Said = { readonly low: number; readonly likely: number; readonly high: number };
/** What the oracle says, and which share of its futures falls below and on what came. */
export type Oracle = Said & { readonly below: number; readonly on: number };
export type Point = { readonly day: number; readonly miles: number };
export type Origin = {
  readonly rider: Rider;
  readonly points: readonly Point[];
  readonly track: Track;
  /** The day of the last reading, from which is asked. */
  readonly day: number;
  readonly actual: readonly number[];
  readonly oracle: readonly Oracle[];
};

export const START = localDate("2023-01-01");
const DIAL = 4000;
/** Days of asking a rider; futures that the oracle draws at each. */
const ORIGINS = 3;
const FUTURES = 200;

/** A rider's days of asking. @param knowing whether the oracle is asked too (dear; of riders that only calibrate it is not) */
export function originsOf(population: Population, seed: number, knowing: boolean): Origin[] {
  const rider = riderOf(population, seed);
  const truth = truthOf(rider, chance(seed * 17 + 3));
  const readings = readingsOf(rider, truth.ridden, DIAL);
  const c = chance(seed * 13 + 5);
  const origins: Origin[] = [];
  for (let n = 0; n < ORIGINS; n++) {
    const earliest = population === "new owner" ? rider.begins + 20 : 250;
    const latest = population === "new owner" ? Math.min(READ_DAYS - 1, rider.begins + 150) : READ_DAYS - 1;
    const at = Math.floor(c.between(earliest, latest));
    const points = kept(readings, at, rider);
    const last = points.at(-1);
    if (last === undefined || points.length < 2) continue;
    const actual = outcomes(truth.ridden.subarray(last.day + 1, last.day + 1 + FUTURE));
    const oracle = knowing
      ? knows(actual, (f) => outcomes(futureOf(rider, truth, last.day, chance(seed * 7919 + n * 100_003 + f + 1))))
      : actual.map(() => ({ low: 0, likely: 0, high: 0, below: 0, on: 0 }));
    origins.push({ rider, points, track: trackOf(rider, points), day: last.day, actual, oracle });
  }
  return origins;
}

/** What came of each question, from the miles of the days that follow. Written for speed: the oracle asks millions of times. */
function outcomes(ridden: Float64Array): number[] {
  const found: number[] = QUESTIONS.map(() => Number.POSITIVE_INFINITY);
  let [total, asked, reached] = [0, 0, FIRST_IN_MILES];
  for (let day = 1; day <= ridden.length; day++) {
    total += ridden[day - 1] ?? 0;
    if (asked < FIRST_IN_MILES && day === QUESTIONS[asked]?.horizon) found[asked++] = total;
    while (reached < QUESTIONS.length && total >= (QUESTIONS[reached]?.horizon ?? 0)) found[reached++] = day;
  }
  return found;
}

/** The oracle knows the rider and what was truly ridden, not what is to come. */
function knows(actual: readonly number[], draw: (future: number) => readonly number[]): Oracle[] {
  const futures = Array.from({ length: FUTURES }, (_, f) => draw(f));
  return actual.map((came, k) => {
    const sorted = Float64Array.from(futures, (future) => future[k] ?? 0).sort();
    const share = (holds: (each: number) => boolean) => sorted.reduce((n, each) => n + (holds(each) ? 1 : 0), 0) / FUTURES;
    const [below, on] = [share((each) => each < came), share((each) => each === came)];
    return { low: quantile(sorted, 0.1), likely: quantile(sorted, 0.5), high: quantile(sorted, 0.9), below, on };
  });
}

const bought = (rider: Rider): Epoch => ({
  ...{ id: "e", from: addDays(START, rider.begins), lastOfOld: null, firstOfNew: dialOf(DIAL, "mi"), unit: "mi", cause: "as bought" },
});
export const trackOf = (rider: Rider, points: readonly Point[]): Track =>
  buildTrack(
    [bought(rider)],
    points.map(({ day, miles }, n): OdometerReading => ({ id: `r${n}`, on: addDays(START, day), order: n, dial: dialOf(miles, "mi") })),
  );

/** What the product would have kept until a day: a reading that cannot be believed is held. Where one contradicts a slip before it, its rider is asked, and takes the slip back. */
function kept(readings: readonly Typed[], until: number, rider: Rider): Point[] {
  const taken: (Typed & { readonly miles: number })[] = [];
  for (const reading of readings) {
    if (reading.day > until) break;
    const judged = () => judgeReading(trackOf(rider, taken.slice(-3)), dialOf(reading.figure, "mi"), addDays(START, reading.day), []).is;
    while (!reading.slipped && taken.at(-1)?.slipped === true && judged() === "runs backwards") taken.pop();
    if (judged() === "fine") taken.push({ ...reading, miles: reading.figure });
  }
  return taken.map(({ day, miles }) => ({ day, miles }));
}
