// /plan read-chart: a manual's chart pasted or sent as a file, and the plan changed by it when its owner says so.

import { given } from "../src/usecases/given.ts";
import { beginChart, type ChartReading } from "../src/usecases/read-chart.ts";
import { define, shapeOf } from "./define.ts";
import { chartReading } from "./replies/chart-shapes.ts";
import { sayReading } from "./replies/read-chart.ts";

export const planReadChart = define({
  name: "plan",
  sub: "read-chart",
  options: { bike: { takes: "text", required: false, complete: "bike" }, chart: { takes: "text", required: false }, file: { takes: "file", required: false } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<ChartReading>(chartReading),
  run: (ctx, { bike, chart, file }) => beginChart(ctx, given({ bike, chart: file ?? chart })),
  say: sayReading,
});
