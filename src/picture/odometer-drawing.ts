// The odometer's track: readings joined, lay-ups as bands, and ahead the likely line within the range that holds it eight times in ten.

import { area, line as lineOf } from "d3-shape";
import type { LocalDate } from "../core/calendar/dates.ts";
import { legend } from "./lanes.ts";
import { INK, SMALL } from "./look.ts";
import { gap, page, words } from "./page.ts";
import { filled, OVER, plot, RIGHT, read, trace, upward } from "./plot.ts";
import { line, n } from "./svg.ts";
import { timeAxis, underDays } from "./time-axis.ts";

/** Figures are in the unit of the dial. */
export type OdometerDrawing = {
  readonly title: string;
  readonly name: string;
  readonly today: LocalDate;
  readonly todayText: string;
  readonly until: LocalDate;
  readonly points: readonly { readonly on: LocalDate; readonly at: number }[];
  readonly ahead: readonly { readonly on: LocalDate; readonly low: number; readonly likely: number; readonly high: number }[];
  readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate }[];
  readonly month: (first: LocalDate) => string;
  readonly day: (on: LocalDate) => string;
  readonly figure: (value: number) => string;
  readonly meaning: Readonly<Record<"read" | "likely" | "range" | "rest", string>>;
  readonly notes: readonly string[];
};

const HIGH = 430;

/** The drawing as SVG; a page of words alone when nothing was read. */
export function drawOdometer(drawing: OdometerDrawing): string {
  const { points, ahead, layUps, meaning } = drawing;
  const first = points[0];
  if (first === undefined) return page(drawing.title, [], drawing.notes);
  const up = upward([...points.map(({ at }) => at), ...ahead.flatMap(({ low, high }) => [low, high])], drawing.figure);
  // A bike that rests has a line ahead and no range about it.
  const ranged = ahead.some(({ low, high }) => high > low);
  const time = timeAxis(first.on, drawing.until, [up.left + 12, RIGHT], drawing.month);
  const today = time.at(drawing.today);
  const plotted = plot(
    {
      name: drawing.name,
      high: HIGH,
      up,
      left: up.left,
      under: underDays(time, drawing.month, drawing.day),
      underName: null,
      over: true,
    },
    (frame) => {
      const joined = lineOf<{ on: LocalDate; at: number }>(
        ({ on }) => time.at(on),
        ({ at }) => frame.y(at),
      );
      const likely = lineOf<OdometerDrawing["ahead"][number]>(
        ({ on }) => time.at(on),
        ({ likely: at }) => frame.y(at),
      );
      const range = area<OdometerDrawing["ahead"][number]>(
        ({ on }) => time.at(on),
        ({ low }) => frame.y(low),
        ({ high }) => frame.y(high),
      );
      const edges = [(day: OdometerDrawing["ahead"][number]) => day.low, (day: OdometerDrawing["ahead"][number]) => day.high].map((value) =>
        lineOf<OdometerDrawing["ahead"][number]>(
          ({ on }) => time.at(on),
          (day) => frame.y(value(day)),
        ),
      );
      return [
        ...layUps.map(
          ({ from, to }) =>
            `<rect x="${n(time.at(from))}" y="${n(frame.top)}" width="${n(time.at(to) - time.at(from))}" height="${n(frame.bottom - frame.top)}" fill="${INK.rest}" stroke="${INK.quiet}" stroke-width="1"/>`,
        ),
        ...(!ranged ? [] : [filled(range([...ahead]), INK.firstArea), ...edges.map((edge) => trace(edge([...ahead]), INK.first, 2.5))]),
        line({ x: today, y: frame.top }, { x: today, y: frame.bottom }, INK.quiet, 2, "4 7"),
        words(drawing.todayText, today, frame.top - OVER, SMALL, INK.quiet, today > RIGHT - 60 ? "end" : today < frame.left + 60 ? "start" : "middle"),
        ...(ahead.length === 0 ? [] : [trace(likely([...ahead]), INK.first, 4, "10 8")]),
        trace(joined([...points]), INK.first, 4),
        ...points.map(({ on, at }) => read({ x: time.at(on), y: frame.y(at) })),
      ].join("");
    },
  );
  return page(
    drawing.title,
    [
      plotted,
      gap(8),
      legend([
        { mark: (x, y) => read({ x: x + 17, y }), text: meaning.read },
        ...(ahead.length === 0
          ? []
          : [
              { mark: (x: number, y: number) => line({ x, y }, { x: x + 34, y }, INK.first, 4, "10 8"), text: meaning.likely },
              ...(ranged ? [{ mark: (x: number, y: number) => swatch(x, y, INK.firstArea, INK.first, 2.5), text: meaning.range }] : []),
            ]),
        ...(layUps.length === 0 ? [] : [{ mark: (x: number, y: number) => swatch(x, y, INK.rest), text: meaning.rest }]),
      ]),
    ],
    drawing.notes,
  );
}

/** A piece of an area, with an edge so that it is seen by itself. */
const swatch = (x: number, y: number, color: string, edge: string = INK.quiet, wide = 1): string =>
  `<rect x="${n(x)}" y="${n(y - 9)}" width="34" height="18" fill="${color}" stroke="${edge}" stroke-width="${wide}"/>`;
