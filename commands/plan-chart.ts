// /plan chart: the plan as a service chart, in lines, as a drawing and as a table.

import { type ChartShown, showChart } from "../src/usecases/chart.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { drawPlanChart, sayChart } from "./replies/chart.ts";
import { chartShown } from "./replies/chart-shapes.ts";

export const planChart = define({
  name: "plan",
  sub: "chart",
  options: {
    bike: { takes: "text", required: false, complete: "bike" },
    until: { takes: "text", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<ChartShown>(chartShown),
  run: (ctx, { bike, until }) => showChart(ctx, given({ bike, until })),
  say: sayChart,
  draw: drawPlanChart,
});
