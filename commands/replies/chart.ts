// A service chart: as lines, as a drawing of the grid, and as a table to open elsewhere.

import type { Attached, Said } from "../../src/chat/reply.ts";
import { drawChart } from "../../src/picture/chart-drawing.ts";
import type { ChartShown } from "../../src/usecases/chart.ts";
import { csvOf } from "../../src/words/csv.ts";
import type { Words } from "../../src/words/en/english.ts";
import { drawn } from "./drawn.ts";
import { said } from "./said.ts";

export function sayChart(shown: ChartShown, { chart, help }: Words): Said {
  return said([...chart.lines(shown), "", help.caution], { files: [tableOf(shown, chart)] });
}

/** Nothing without a service to draw. */
export async function drawPlanChart(shown: ChartShown, words: Words): Promise<readonly Attached[]> {
  if (shown.marks.length === 0) return [];
  const { alt, ...texts } = words.chart.drawing(shown);
  const { svg, width } = drawChart(texts);
  return [await drawn("service-chart", svg, alt, words, Math.ceil(width))];
}

const tableOf = (shown: ChartShown, chart: Words["chart"]): Attached => ({
  ...{ name: "service-chart.csv", type: "text/csv", alt: chart.tableAlt(shown.nickname) },
  bytes: new TextEncoder().encode(csvOf(chart.table(shown))),
});
