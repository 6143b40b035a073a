// npm run backtest [-- --riders N] [-- --json] [-- --tune] [-- --rivals]: how well the odometer is foreseen, over invented riders, beside simple rules and an oracle.
// With --tune the riders on whom the constants were tuned, otherwise others; with --rivals also the methods that were tried and lost.
// Ranges are of 80 %; beside each coverage, half of its 95 % interval, riders being what is drawn. Score: Gneiting and Raftery (2007), "Strictly Proper Scoring Rules,
// Prediction, and Estimation", JASA 102: width plus 2/alpha times the miss; in miles for a horizon in days, in days for one in miles.

import { parseArgs } from "node:util";
import { backtest, POOLED, REPORTED, TUNED } from "./backtest.ts";
import { rivals } from "./rivals.ts";
import type { Row } from "./score.ts";

const { values } = parseArgs({
  options: {
    riders: { type: "string", default: "2000" },
    json: { type: "boolean", default: false },
    tune: { type: "boolean", default: false },
    rivals: { type: "boolean", default: false },
  },
});
const rows = backtest(Number(values.riders), values.tune ? TUNED : REPORTED, values.rivals ? rivals : () => []);

const line = (row: Row): string => {
  const unit = row.unit === "days" ? "mi" : "days";
  return [
    row.population.padEnd(17),
    (row.unit === "days" ? `${row.horizon} days` : `+${row.horizon} mi`).padStart(8),
    row.method.padEnd(22),
    `covers ${(row.coverage * 100).toFixed(1).padStart(5)} ± ${(row.coverageWithin * 100).toFixed(1)} %`,
    `score ${row.intervalScore.toFixed(0).padStart(5)} ${unit}`,
    `width ${row.width.toFixed(0).padStart(5)}`,
    `off by ${String((row.medianErrorDistance ?? row.medianErrorDays)?.toFixed(0)).padStart(5)} ${unit}`,
    `n ${row.n}${row.censored === 0 ? "" : `, ${row.censored} not reached`}`,
  ].join("  ");
};
if (values.json) for (const row of rows) process.stdout.write(`${JSON.stringify(row)}\n`);
else
  for (const pooled of [false, true])
    for (const row of rows.filter(({ population }) => (population === POOLED) === pooled)) process.stdout.write(`${line(row)}\n`);
