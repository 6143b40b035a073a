// The walk forward: on days of each rider's three years, what would have been said, and what came.

import { type Method, oracle, rules, tappet } from "./methods.ts";
import { type Origin, originsOf, QUESTIONS } from "./origins.ts";
import { type Row, score } from "./score.ts";
import { POPULATIONS, type Population } from "./simulate.ts";

export const POOLED = "all together";

/** First seeds: of riders on whom the constants of the forecast were tuned, of those on whom rules are calibrated, and of those reported. */
export const TUNED = 1;
const CALIBRATED = 100_000;
export const REPORTED = 500_000;

export const ridersFrom = (first: number, riders: number, knowing: boolean): Map<Population, Origin[]> =>
  new Map(POPULATIONS.map((population) => [population, Array.from({ length: riders }, (_, n) => originsOf(population, first + n, knowing)).flat()]));

/** All rows: every population and all together, on every question, by every method. Rules are calibrated on other riders than those reported. */
export function backtest(riders: number, from = REPORTED, more: (others: readonly Origin[]) => readonly [string, Method][] = () => []): readonly Row[] {
  const others = [...ridersFrom(CALIBRATED, riders, false).values()].flat();
  const reported = ridersFrom(from, riders, true);
  const methods: [string, Method][] = [["tappet", tappet()], ...rules(others), ...more(others), ["oracle", oracle]];
  const rows: Row[] = [];
  for (const [name, says] of methods) {
    const answers = [...reported].map(([population, origins]) => ({ population: population as string, origins, said: origins.map(says) }));
    const pooled = { population: POOLED, origins: answers.flatMap(({ origins }) => origins), said: answers.flatMap(({ said }) => said) };
    for (const { population, origins, said } of [...answers, pooled])
      QUESTIONS.forEach((question, k) => void rows.push(score(origins, said, question, k, name, population)));
  }
  const populations = [...POPULATIONS, POOLED] as readonly string[];
  const order = (row: Row) => populations.indexOf(row.population) * 100 + QUESTIONS.findIndex((q) => q.unit === row.unit && q.horizon === row.horizon);
  return rows.toSorted((a, b) => order(a) - order(b));
}
