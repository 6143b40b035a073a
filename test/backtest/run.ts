// npm run backtest [-- --riders N] [-- --json] [-- --tune]: how well the odometer is foreseen, over invented riders, beside simple rules and an oracle.
// With --tune the riders on whom the constants were tuned; otherwise others.
// Ranges are of 80 %. Score: Gneiting and Raftery (2007), "Strictly Proper Scoring Rules, Prediction, and Estimation", JASA 102: width plus 2/alpha times the miss.

import { parseArgs } from "node:util";
import { backtest, POOLED, type Row, TUNED } from "./backtest.ts";

const { values } = parseArgs({
  options: { riders: { type: "string", default: "2000" }, json: { type: "boolean", default: false }, tune: { type: "boolean", default: false } },
});
const rows = values.tune ? backtest(Number(values.riders), TUNED) : backtest(Number(values.riders));
if (values.json) for (const row of rows) process.stdout.write(`${JSON.stringify(row)}\n`);
else {
  const line = (row: Row): string =>
    [
      row.population.padEnd(17),
      String(row.horizon).padStart(5),
      row.method.padEnd(20),
      `covers ${(row.coverage * 100).toFixed(1).padStart(5)} %`,
      `score ${row.intervalScore.toFixed(0).padStart(5)}`,
      `width ${row.width.toFixed(0).padStart(5)}`,
      row.medianErrorDistance === null
        ? `off by ${String(row.medianErrorDays?.toFixed(0)).padStart(5)} days`
        : `off by ${row.medianErrorDistance.toFixed(0).padStart(5)} mi`,
      `n ${row.n}`,
    ].join("  ");
  for (const row of rows.filter(({ population }) => population !== POOLED)) process.stdout.write(`${line(row)}\n`);
  for (const row of rows.filter(({ population }) => population === POOLED)) process.stdout.write(`${line(row)}\n`);
}
