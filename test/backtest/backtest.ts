// The walk forward: at days of each rider's three years, what would have been said, and what came.

import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { dialOf, figureIn, type Ridden, stretchOf } from "../../src/core/quantity/distance.ts";
import { forecast } from "../../src/core/usage/forecast.ts";
import { judgeReading } from "../../src/core/usage/judge-reading.ts";
import { buildTrack, type Epoch, type OdometerReading } from "../../src/core/usage/track.ts";
import { chance } from "./random.ts";
import { ALL_DAYS, daysOf, POPULATIONS, type Population, READ_DAYS, type Rider, readingsOf, riderOf, type Typed } from "./simulate.ts";

export const POOLED = "all together";
export const HORIZONS = [14, 30, 60, 120, 240] as const;
export type Row = {
  readonly population: string;
  readonly horizon: number;
  readonly method: string;
  readonly coverage: number;
  readonly intervalScore: number;
  readonly width: number;
  readonly medianErrorDays: number | null;
  readonly medianErrorDistance: number | null;
  readonly n: number;
};

const START = localDate("2023-01-01");
const DIAL = 4000;
const ALPHA = 0.2;
/** Origins a rider; futures that the oracle draws at each. */
const ORIGINS = 3;
const FUTURES = 60;
const none = { layUps: [], trips: [] };

type Point = { readonly day: number; readonly miles: number };
/** Where a rider stands on a day: what was read until then, and what is to come. */
type Origin = {
  readonly rider: Rider;
  readonly points: readonly Point[];
  readonly day: number;
  readonly actual: readonly number[];
  readonly oracle: readonly Float64Array[];
};
type Said = { readonly low: number; readonly likely: number; readonly high: number };

const BASELINES = ["lifetime average", "last 90 days", "last two readings", "same days last year"] as const;

function originsOf(population: Population, seed: number): Origin[] {
  const rider = riderOf(population, seed);
  const ridden = daysOf(rider, chance(seed * 17 + 3));
  const total = new Float64Array(ALL_DAYS + 1);
  for (let day = 0; day < ALL_DAYS; day++) total[day + 1] = (total[day] ?? 0) + (ridden[day] ?? 0);
  const read = kept(readingsOf(rider, ridden, DIAL), rider);
  const c = chance(seed * 13 + 5);
  const origins: Origin[] = [];
  for (let n = 0; n < ORIGINS; n++) {
    const earliest = population === "new owner" ? rider.begins + 20 : 250;
    const latest = population === "new owner" ? Math.min(READ_DAYS - 1, rider.begins + 150) : READ_DAYS - 1;
    const at = Math.floor(c.between(earliest, latest));
    const points = read.filter(({ day }) => day <= at);
    const last = points.at(-1);
    if (last === undefined || points.length < 2) continue;
    const from = total[last.day + 1] ?? 0;
    const actual = HORIZONS.map((h) => (total[Math.min(ALL_DAYS, last.day + 1 + h)] ?? 0) - from);
    // The oracle knows the rider and what was truly ridden, not what is to come.
    const oracle = HORIZONS.map(() => new Float64Array(FUTURES));
    for (let f = 0; f < FUTURES; f++) {
      const future = daysOf(rider, chance(seed * 7919 + n * 131 + f + 1), last.day + 1);
      let sum = 0;
      let day = last.day + 1;
      HORIZONS.forEach((h, k) => {
        for (; day < Math.min(ALL_DAYS, last.day + 1 + h); day++) sum += future[day] ?? 0;
        (oracle[k] as Float64Array)[f] = sum;
      });
    }
    for (const futures of oracle) futures.sort();
    origins.push({ rider, points, day: last.day, actual, oracle });
  }
  return origins;
}

/** What the product would have kept: a reading that cannot be believed is held. Where one contradicts a slip before it, its rider is asked, and takes the slip back. */
function kept(readings: readonly Typed[], rider: Rider): Point[] {
  const epoch: Epoch = { id: "e", from: addDays(START, rider.begins), lastOfOld: null, firstOfNew: dialOf(DIAL, "mi"), unit: "mi", cause: "as bought" };
  const taken: Typed[] = [];
  for (const reading of readings) {
    const judged = () =>
      judgeReading(
        buildTrack(
          [epoch],
          taken.slice(-3).map((each, n): OdometerReading => ({ id: `r${n}`, on: addDays(START, each.day), order: n, dial: dialOf(each.figure, "mi") })),
        ),
        dialOf(reading.figure, "mi"),
        addDays(START, reading.day),
        [],
      ).is;
    while (!reading.slipped && taken.at(-1)?.slipped === true && judged() === "runs backwards") taken.pop();
    if (judged() === "fine") taken.push(reading);
  }
  return taken.map(({ day, figure }) => ({ day, miles: figure }));
}

/** What Tappet says. */
function tappet({ points, day, rider }: Origin): Said[] | null {
  const epoch: Epoch = { id: "e", from: addDays(START, rider.begins), lastOfOld: null, firstOfNew: dialOf(DIAL, "mi"), unit: "mi", cause: "as bought" };
  const track = buildTrack(
    [epoch],
    points.map((point, n): OdometerReading => ({ id: `r${n}`, on: addDays(START, point.day), order: n, dial: dialOf(point.miles, "mi") })),
  );
  const today = addDays(START, day);
  // A new owner says what they reckon to ride: about what riders do on average.
  const f = forecast(track, none, { perYear: stretchOf(2000, "mi") }, null, today);
  const last = track.points.at(-1);
  if (last === undefined) return null;
  const miles = (ridden: Ridden): number => figureIn((ridden - last.ridden) as Ridden, "mi");
  return HORIZONS.map((h) => {
    const said = f.riddenOn(addDays(today, h));
    return said === null ? { low: 0, likely: 0, high: 0 } : { low: miles(said.low), likely: miles(said.likely), high: miles(said.high) };
  });
}

/** A simple rule's likely distance by horizon. */
function simply(rule: (typeof BASELINES)[number], { points, day }: Origin): number[] {
  const last = points.at(-1) as Point;
  const first = points[0] as Point;
  const at = (on: number): number => {
    const after = points.findIndex((point) => point.day >= on);
    if (after <= 0) return after === 0 ? first.miles : last.miles;
    const [a, b] = [points[after - 1] as Point, points[after] as Point];
    return a.miles + ((b.miles - a.miles) * (on - a.day)) / Math.max(1, b.day - a.day);
  };
  const rate = (from: number): number => Math.max(0, last.miles - at(from)) / Math.max(1, last.day - Math.max(from, first.day));
  const lifetime = rate(first.day);
  switch (rule) {
    case "lifetime average":
      return HORIZONS.map((h) => lifetime * h);
    case "last 90 days":
      return HORIZONS.map((h) => rate(day - 90) * h);
    case "last two readings":
      return HORIZONS.map((h) => rate((points.at(-2) ?? first).day) * h);
    case "same days last year":
      return HORIZONS.map((h) => (first.day > day - 365 ? lifetime * h : Math.max(0, at(Math.min(day, day - 365 + h)) - at(day - 365))));
  }
}

/** Quantiles of (came + S) / (said + S), by horizon, from other riders: the range that a rule would honestly give. */
const S = 50;
type Calibrated = readonly { readonly low: number; readonly high: number }[];
function calibrated(rule: (typeof BASELINES)[number], origins: readonly Origin[]): Calibrated {
  const all = origins.map((origin) => simply(rule, origin));
  return HORIZONS.map((_, k) => {
    const ratios = Float64Array.from(origins, (origin, n) => ((origin.actual[k] ?? 0) + S) / ((all[n]?.[k] ?? 0) + S)).sort();
    return { low: quantile(ratios, 0.1), high: quantile(ratios, 0.9) };
  });
}
const quantile = (sorted: Float64Array, q: number): number => sorted[Math.min(sorted.length - 1, Math.max(0, Math.round(q * (sorted.length - 1))))] ?? 0;

const NOTHING: Said = { low: 0, likely: 0, high: 0 };

/** Scores of one method at one horizon. */
function score(origins: readonly Origin[], said: readonly (readonly Said[])[], k: number, method: string, population: string): Row {
  const c = chance(k * 101 + method.length);
  let [covered, total, width] = [0, 0, 0];
  const errors = new Float64Array(origins.length);
  origins.forEach((origin, n) => {
    const { low, likely, high } = said[n]?.[k] ?? NOTHING;
    const came = origin.actual[k] ?? 0;
    const futures = origin.oracle[k] as Float64Array;
    const still = futures.filter((each) => each === 0).length / futures.length;
    const inside = came >= low - 0.5 && came <= high + 0.5;
    // A parked bike rides exactly nothing: where that is certain, to say so is not to cover too much. Randomised PIT.
    if (came === 0 && still >= 0.1) {
      const pit = still * c.u();
      covered += inside && pit >= ALPHA / 2 && pit <= 1 - ALPHA / 2 ? 1 : 0;
    } else covered += inside ? 1 : 0;
    total += high - low + (2 / ALPHA) * (Math.max(0, low - came) + Math.max(0, came - high));
    width += high - low;
    errors[n] = Math.abs(came - likely);
  });
  errors.sort();
  const n = origins.length;
  return {
    ...{ population, horizon: HORIZONS[k] ?? 0, method, coverage: covered / n, intervalScore: total / n, width: width / n },
    ...{ medianErrorDays: null, medianErrorDistance: quantile(errors, 0.5), n },
  };
}

/** Riders reported; those from TUNED on were used to tune the constants of the forecast. */
const REPORTED = 500_000;
export const TUNED = 1;

/** All rows: every population and all together, at every horizon, by every method. Rules are calibrated on other riders than those reported. */
export function backtest(riders: number, from = REPORTED): readonly Row[] {
  const rows: Row[] = [];
  const of = (first: number): Map<Population, Origin[]> =>
    new Map(POPULATIONS.map((population) => [population, Array.from({ length: riders }, (_, n) => originsOf(population, first + n)).flat()]));
  const [tuning, reported] = [of(100_000), of(from)];
  const everybody = [...tuning.values()].flat();
  const calibration = new Map(BASELINES.map((rule) => [rule, calibrated(rule, everybody)]));
  const methods: [string, (origin: Origin) => readonly Said[]][] = [
    ["tappet", (origin) => tappet(origin) ?? []],
    ...BASELINES.map((rule): [string, (origin: Origin) => readonly Said[]] => [
      rule,
      (origin) =>
        simply(rule, origin).map((likely, k) => {
          const by = calibration.get(rule)?.[k] ?? { low: 1, high: 1 };
          return { low: Math.max(0, (likely + S) * by.low - S), likely, high: (likely + S) * by.high - S };
        }),
    ]),
    ["oracle", ({ oracle }) => oracle.map((futures) => ({ low: quantile(futures, 0.1), likely: quantile(futures, 0.5), high: quantile(futures, 0.9) }))],
  ];
  const groups: [string, Origin[]][] = [...reported, [POOLED, [...reported.values()].flat()]];
  for (const [name, says] of methods)
    for (const [population, origins] of groups) {
      const said = origins.map(says);
      HORIZONS.forEach((_, k) => void rows.push(score(origins, said, k, name, population)));
    }
  const order = [...POPULATIONS, POOLED] as readonly string[];
  return rows.toSorted((a, b) => order.indexOf(a.population) - order.indexOf(b.population) || a.horizon - b.horizon);
}
