// A group's bikes along the months ahead: one lane a bike, a mark on each likely day on which something falls due.

import type { LocalDate } from "../core/calendar/dates.ts";
import { axis, type LaneMark, lane, laneLegend, type Nearness } from "./lanes.ts";
import { EDGE, WIDE } from "./look.ts";
import { gap, page } from "./page.ts";
import { timeAxis } from "./time-axis.ts";

export type GroupDrawing = {
  readonly title: string;
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly todayText: string;
  readonly month: (first: LocalDate) => string;
  readonly rows: readonly {
    readonly name: string;
    readonly beside: string;
    readonly marks: readonly { readonly on: LocalDate; readonly is: Nearness }[];
    readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate }[];
  }[];
  readonly meaning: Readonly<Record<Nearness | "range" | "rest", string>>;
  readonly notes: readonly string[];
};

const SIDE = 16;

/** The drawing as SVG; a page of words alone when no bike is in it. */
export function drawGroup({ title, today, until, todayText, month, rows, meaning, notes }: GroupDrawing): string {
  if (rows.length === 0) return page(title, [], notes);
  const time = timeAxis(today, until, [EDGE + SIDE, WIDE - EDGE - SIDE], month);
  const ticks = time.ticks.map(time.at);
  const used = new Set<Nearness | "rest">([
    ...rows.flatMap(({ marks }) => marks.map(({ is }) => is)),
    ...(rows.some(({ layUps }) => layUps.length > 0) ? (["rest"] as const) : []),
  ]);
  return page(
    title,
    [
      axis([{ x: time.at(today), text: todayText }, ...time.ticks.map((day) => ({ x: time.at(day), text: month(day) }))]),
      ...rows.map(({ name, beside, marks, layUps }) =>
        lane(
          {
            ...{ names: [name], andMore: () => "", beside },
            marks: marks.map(({ on, is }): LaneMark => ({ x: time.at(on), from: time.at(on), to: time.at(on), goesOn: false, is })),
            rest: layUps.map(({ from, to }) => ({ from: time.at(from), to: time.at(to) })),
          },
          ticks,
        ),
      ),
      gap(10),
      laneLegend((["now", "soon", "later", "rest"] as const).filter((is) => used.has(is)).map((is) => ({ is, text: meaning[is] }))),
    ],
    notes,
  );
}
