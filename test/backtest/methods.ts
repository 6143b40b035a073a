// Who is asked: Tappet, the rules of thumb with ranges calibrated on other riders, and the oracle.

import { addDays, daysBetween } from "../../src/core/calendar/arithmetic.ts";
import { ahead, figureIn, type Ridden, stretchOf } from "../../src/core/quantity/distance.ts";
import { forecast } from "../../src/core/usage/forecast.ts";
import { type Origin, type Point, QUESTIONS, type Said, START } from "./origins.ts";
import { quantile } from "./score.ts";
import { FUTURE } from "./simulate.ts";

/** Answers to all questions. */
export type Method = (origin: Origin) => readonly Said[];
const NOTHING: Said = { low: 0, likely: 0, high: Number.POSITIVE_INFINITY };
const NEVER = Number.POSITIVE_INFINITY;

/** What riders ride in a year on average (see simulate.ts for the source): what a new owner reckons to ride. */
const RECKONED = stretchOf(2000, "mi");

/** What Tappet says. @param own the yearly figure that its riders stated, null where none did */
export const tappet =
  (own: typeof RECKONED | null = RECKONED): Method =>
  ({ track, day }) => {
    const today = addDays(START, day);
    const last = track.points.at(-1);
    if (last === undefined) return [];
    const f = forecast(track, { layUps: [], trips: [] }, { perYear: own }, null, today);
    const miles = (ridden: Ridden): number => figureIn((ridden - last.ridden) as Ridden, "mi");
    return QUESTIONS.map(({ unit, horizon }) => {
      if (unit === "days") {
        const said = f.riddenOn(addDays(today, horizon));
        return said === null ? { ...NOTHING, high: 0 } : { low: miles(said.low), likely: miles(said.likely), high: miles(said.high) };
      }
      const said = f.dateOf(ahead(last.ridden, stretchOf(horizon, "mi")));
      if (said === null) return { low: FUTURE, likely: NEVER, high: NEVER };
      const days = (date: typeof today) => daysBetween(today, date);
      return { low: days(said.from), likely: days(said.on), high: said.to === null ? NEVER : days(said.to) };
    });
  };

export const oracle: Method = (origin) => origin.oracle;

const RULES = ["lifetime average", "last 90 days", "last two readings", "same days last year"] as const;
type Rule = (typeof RULES)[number];

/** A simple rule's likely distance by days ahead. */
function likelyBy(rule: Rule, { points, day }: Origin): (days: number) => number {
  const last = points.at(-1) as Point;
  const first = points[0] as Point;
  const at = (on: number): number => {
    const after = points.findIndex((point) => point.day >= on);
    if (after <= 0) return after === 0 ? first.miles : last.miles;
    const [a, b] = [points[after - 1] as Point, points[after] as Point];
    return a.miles + ((b.miles - a.miles) * (on - a.day)) / Math.max(1, b.day - a.day);
  };
  const rate = (from: number): number => Math.max(0, last.miles - at(from)) / Math.max(1, last.day - Math.max(from, first.day));
  const steady = (perDay: number) => (days: number) => perDay * days;
  switch (rule) {
    case "lifetime average":
      return steady(rate(first.day));
    case "last 90 days":
      return steady(rate(day - 90));
    case "last two readings":
      return steady(rate((points.at(-2) ?? first).day));
    case "same days last year":
      if (first.day > day - 365) return steady(rate(first.day));
      return (days) => Math.max(0, at(Math.min(day, day - 365 + days)) - at(day - 365));
  }
}

/** What a way of reckoning says is likely, by days ahead. */
export type LikelyBy = (origin: Origin) => (days: number) => number;

/** Its likely answers: the first day on which its likely distance reaches what is asked, at most the end of the simulated future. */
function simply(likelyBy: LikelyBy, origin: Origin): number[] {
  const by = likelyBy(origin);
  return QUESTIONS.map(({ unit, horizon }) => {
    if (unit === "days") return by(horizon);
    let [before, after] = [0, FUTURE];
    while (after - before > 1) {
      const middle = (before + after) >> 1;
      if (by(middle) >= horizon) after = middle;
      else before = middle;
    }
    return after;
  });
}

/** Added to what was said and to what came, so that a small figure may be off by a few: miles, days. */
const SLACK = { days: 50, miles: 7 } as const;

/** A way of reckoning with the range that it would honestly give: tenths of (came + slack) / (said + slack) among other riders. */
export function calibrated(likelyBy: LikelyBy, others: readonly Origin[]): Method {
  const all = others.map((origin) => simply(likelyBy, origin));
  const ranges = QUESTIONS.map(({ unit }, k) => {
    const slack = SLACK[unit];
    const ratios = Float64Array.from(others, (origin, n) => ((origin.actual[k] ?? 0) + slack) / ((all[n]?.[k] ?? 0) + slack)).sort();
    return (likely: number): Said => ({
      low: Math.max(0, (likely + slack) * quantile(ratios, 0.1) - slack),
      likely,
      high: (likely + slack) * quantile(ratios, 0.9) - slack,
    });
  });
  return (origin) => simply(likelyBy, origin).map((likely, k) => ranges[k]?.(likely) ?? NOTHING);
}

export const rules = (others: readonly Origin[]): [string, Method][] => RULES.map((rule) => [rule, calibrated((origin) => likelyBy(rule, origin), others)]);
