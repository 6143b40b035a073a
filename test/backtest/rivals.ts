// Methods that were tried and lost (npm run backtest -- --rivals). Those without a range of their own get one from other riders, as the rules of thumb do.

import { calibrated, type LikelyBy, type Method } from "./methods.ts";
import { type Origin, type Point, QUESTIONS, type Said } from "./origins.ts";
import { chance } from "./random.ts";
import { quantile } from "./score.ts";
import { FUTURE } from "./simulate.ts";

const span = (points: readonly Point[]): Point => {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  return { day: Math.max(1, last.day - first.day), miles: last.miles - first.miles };
};
const stintsOf = (points: readonly Point[]): Point[] => points.slice(1).map((point, n) => span([points[n] as Point, point]));
const sorted = (values: readonly number[]): Float64Array => Float64Array.from(values).sort();
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The bike's own rate shrunk to those of other riders: gamma prior by its moments, sixty days' weight of a ride of 50 miles. */
function empiricalBayes(others: readonly Origin[]): LikelyBy {
  const rates = others
    .map(({ points }) => span(points))
    .filter(({ day }) => day >= 200)
    .map(({ miles, day }) => miles / day / 50);
  const [usual, variance] = [mean(rates), mean(rates.map((rate) => (rate - mean(rates)) ** 2))];
  return ({ points }) => {
    const { day, miles } = span(points);
    const rate = (50 * (usual ** 2 / variance + miles / 50)) / (usual / variance + day);
    return (days) => rate * days;
  };
}

/** Median of the slopes between readings of the last 400 days (Theil and Sen). */
const robustSlope: LikelyBy = ({ points, day }) => {
  const late = points.filter((point) => point.day >= day - 400);
  const slopes = late.flatMap((b, n) =>
    late
      .slice(0, n)
      .filter((a) => b.day - a.day >= 14)
      .map((a) => (b.miles - a.miles) / (b.day - a.day)),
  );
  const { day: days, miles } = span(points);
  const slope = slopes.length === 0 ? miles / days : quantile(sorted(slopes), 0.5);
  return (ahead) => slope * ahead;
};

/** A pace for each month of the year, shrunk to the bike's own by a fortnight: what the forecast was before. Months as twelfths of a year. */
const monthlyPace: LikelyBy = ({ points, day }) => {
  const month = (on: number): number => Math.floor((on % 365.25) / 30.4375) % 12;
  const [seen, ridden] = [new Float64Array(12), new Float64Array(12)];
  stintsOf(points).forEach((stint, n) => {
    const from = points[n]?.day ?? 0;
    for (let on = from; on < from + stint.day; on++) {
      seen[month(on)] = (seen[month(on)] ?? 0) + 1;
      ridden[month(on)] = (ridden[month(on)] ?? 0) + stint.miles / stint.day;
    }
  });
  const usual = span(points).miles / span(points).day;
  const by = new Float64Array(FUTURE + 1);
  for (let n = 1; n <= FUTURE; n++) by[n] = (by[n - 1] ?? 0) + ((ridden[month(day + n)] ?? 0) + 15 * usual) / ((seen[month(day + n)] ?? 0) + 15);
  return (days) => by[days] ?? 0;
};

/** The track's own stints between readings, drawn again and laid end to end. */
const bootstrap: Method = ({ points, rider }) => {
  const stints = stintsOf(points).filter(({ day }) => day > 0);
  const c = chance(rider.seed + 11);
  const futures = Array.from({ length: 60 }, () => {
    const ways: Point[] = [{ day: 0, miles: 0 }];
    for (let at = ways[0] as Point; at.day < FUTURE; ways.push(at)) {
      const next = stints[Math.floor(c.u() * stints.length)] ?? { day: FUTURE, miles: 0 };
      at = { day: at.day + next.day, miles: at.miles + next.miles };
    }
    return ways;
  });
  return QUESTIONS.map(({ unit, horizon }): Said => {
    const came = sorted(
      futures.map((ways) => {
        const after = ways.findIndex(({ day, miles }) => (unit === "days" ? day : miles) >= horizon);
        if (after < 1) return Number.POSITIVE_INFINITY;
        const [a, b] = [ways[after - 1] as Point, ways[after] as Point];
        return unit === "days"
          ? a.miles + ((b.miles - a.miles) * (horizon - a.day)) / (b.day - a.day)
          : a.day + ((b.day - a.day) * (horizon - a.miles)) / (b.miles - a.miles);
      }),
    );
    return { low: quantile(came, 0.1), likely: quantile(came, 0.5), high: quantile(came, 0.9) };
  });
};

/** The lifetime average, its range from how far the same average was off before on this very track (conformal: the smallest and largest rank that hold 80 %). */
const conformal: Method = ({ points, day }) => {
  const first = points[0] as Point;
  const rate = span(points).miles / span(points).day;
  const at = (on: number): number => {
    const after = Math.max(
      1,
      points.findIndex((point) => point.day >= on),
    );
    const [a, b] = [points[after - 1] as Point, points[after] as Point];
    return a.miles + ((b.miles - a.miles) * (on - a.day)) / Math.max(1, b.day - a.day);
  };
  return QUESTIONS.map(({ unit, horizon }): Said => {
    const days = unit === "days" ? horizon : Math.min(FUTURE, horizon / Math.max(rate, 0.01));
    const likely = unit === "days" ? rate * days : days;
    const off: number[] = [];
    for (const point of points) {
      if (point.day - first.day < 30 || point.day + days > day) continue;
      const said = ((point.miles - first.miles) / (point.day - first.day)) * days;
      off.push((at(point.day + days) - point.miles + 50) / (said + 50));
    }
    const ratios = sorted(off);
    // Too few to hold 80 %: as wide as a fifth and five times.
    const [low, high] = off.length < 10 ? [0.2, 5] : [quantile(ratios, 0.1), quantile(ratios, 0.9)];
    if (unit === "days") return { low: Math.max(0, (likely + 50) * low - 50), likely, high: (likely + 50) * high - 50 };
    return { low: likely / Math.max(high, 0.01), likely, high: likely / Math.max(low, 0.01) };
  });
};

export const rivals = (others: readonly Origin[]): [string, Method][] => [
  ["empirical-Bayes rate", calibrated(empiricalBayes(others), others)],
  ["robust slope", calibrated(robustSlope, others)],
  ["monthly pace", calibrated(monthlyPace, others)],
  ["stints drawn again", bootstrap],
  ["own past, conformal", conformal],
];
