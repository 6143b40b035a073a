// Scores of one method on one question.

import type { Oracle, Origin, Question, Said } from "./origins.ts";
import { chance } from "./random.ts";
import { FUTURE } from "./simulate.ts";

export type Row = {
  readonly population: string;
  /** So many days ahead (scored in miles), or so many miles on (scored in days): see `unit`. */
  readonly horizon: number;
  readonly unit: Question["unit"];
  readonly method: string;
  readonly coverage: number;
  /** Half the width of the coverage's 95 % interval, riders being the units drawn. */
  readonly coverageWithin: number;
  /** Mean over what was reached; miles or days. */
  readonly intervalScore: number;
  readonly width: number;
  readonly medianErrorDays: number | null;
  readonly medianErrorDistance: number | null;
  readonly n: number;
  /** How many were not reached within the simulated future: they count in `coverage` and `n`, not in the scores. */
  readonly censored: number;
};

const ALPHA = 0.2;
/** A range's end this near to what came lies on it. */
const NEAR = 0.5;

export const quantile = (sorted: Float64Array, q: number): number => sorted[Math.min(sorted.length - 1, Math.max(0, Math.round(q * (sorted.length - 1))))] ?? 0;

/**
 * Does the range hold what came? An infinite outcome (unreached) is held by a range open to the right or ending beyond the simulated future.
 * Where the oracle itself gives one value a tenth or more (a parked bike rides exactly 0), a range whose end lies on that value cannot leave a tenth outside: chance then
 * decides which part of the value lies beyond that end, so that honest certainty is not punished. Randomised PIT: Brockwell (2007), "Universal residuals", Statistics and Probability Letters 77 (from memory).
 * @param u uniform in [0, 1)
 */
export function holds({ low, high }: Said, came: number, { below, on }: Pick<Oracle, "below" | "on">, u: number): boolean {
  if (came === Number.POSITIVE_INFINITY) return high >= FUTURE;
  if (came < low - NEAR || came > high + NEAR) return false;
  if (on < ALPHA / 2) return true;
  const pit = below + u * on;
  return (Math.abs(came - low) > NEAR || pit >= ALPHA / 2) && (Math.abs(came - high) > NEAR || pit <= 1 - ALPHA / 2);
}

/** Width plus 2/alpha times the miss: Gneiting and Raftery (2007). */
export const intervalScore = ({ low, high }: Said, came: number): number => high - low + (2 / ALPHA) * (Math.max(0, low - came) + Math.max(0, came - high));

/** A share's standard error when each rider was asked several times: riders, not answers, are independent. @param riders answers held and given, of each rider */
export function clusteredError(riders: readonly { readonly held: number; readonly n: number }[]): number {
  const n = riders.reduce((sum, rider) => sum + rider.n, 0);
  const share = riders.reduce((sum, rider) => sum + rider.held, 0) / n;
  const squares = riders.reduce((sum, rider) => sum + (rider.held - share * rider.n) ** 2, 0);
  return (Math.sqrt(squares) / n) * Math.sqrt(riders.length / Math.max(1, riders.length - 1));
}

/** A range of days is cut at the end of the simulated future: nobody can miss beyond it. */
const cut = (said: Said): Said => ({ low: Math.min(FUTURE, said.low), likely: Math.min(FUTURE, said.likely), high: Math.min(FUTURE, said.high) });

export function score(
  origins: readonly Origin[],
  said: readonly (readonly Said[])[],
  { unit, horizon }: Question,
  k: number,
  method: string,
  population: string,
): Row {
  const c = chance(k * 101 + method.length);
  const riders = new Map<object, { held: number; n: number }>();
  let [held, total, width] = [0, 0, 0];
  const errors: number[] = [];
  origins.forEach((origin, n) => {
    const answer = said[n]?.[k] ?? { low: 0, likely: 0, high: 0 };
    const came = origin.actual[k] ?? 0;
    const inside = holds(answer, came, origin.oracle[k] ?? { below: 0, on: 0 }, c.u()) ? 1 : 0;
    held += inside;
    const rider = riders.get(origin.rider) ?? { held: 0, n: 0 };
    riders.set(origin.rider, { held: rider.held + inside, n: rider.n + 1 });
    if (came === Number.POSITIVE_INFINITY) return;
    const scored = unit === "days" ? answer : cut(answer);
    total += intervalScore(scored, came);
    width += scored.high - scored.low;
    errors.push(Math.abs(came - scored.likely));
  });
  const n = origins.length;
  const scored = Math.max(1, errors.length);
  const off = quantile(Float64Array.from(errors).sort(), 0.5);
  return {
    ...{ population, horizon, unit, method, coverage: held / n, coverageWithin: 1.96 * clusteredError([...riders.values()]) },
    ...{ intervalScore: total / scored, width: width / scored, n, censored: n - errors.length },
    ...{ medianErrorDays: unit === "miles" ? off : null, medianErrorDistance: unit === "days" ? off : null },
  };
}
