// Cold pressures over time: as read, and what the same air would show at one temperature, so that what is lost is seen apart from the weather.

import { line as lineOf } from "d3-shape";
import type { LocalDate } from "../core/calendar/dates.ts";
import { legend } from "./lanes.ts";
import { INK } from "./look.ts";
import { gap, page } from "./page.ts";
import { asRead, level, plot, RIGHT, read, trace, upward } from "./plot.ts";
import { timeAxis, underDays } from "./time-axis.ts";

/** One tyre. Pressures in one unit of the caller's. */
export type PressurePanel = {
  readonly name: string;
  /** `levelled`: at the one temperature; null where none was noted. */
  readonly points: readonly { readonly on: LocalDate; readonly read: number; readonly levelled: number | null }[];
  readonly wanted: { readonly value: number; readonly text: string } | null;
};
export type PressureDrawing = {
  readonly title: string;
  readonly panels: readonly PressurePanel[];
  readonly month: (first: LocalDate) => string;
  readonly day: (on: LocalDate) => string;
  readonly figure: (value: number) => string;
  readonly meaning: Readonly<Record<"read" | "levelled", string>>;
  readonly notes: readonly string[];
};

const HIGH = 240;
/** Room over a level at the top, as a share of what lies under it. */
const ROOM = 0.15;
/** Room under the lowest mark, as a share of the whole, so that it stays off the axis. */
const FOOT = 0.08;

/** The drawing as SVG; a page of words alone when nothing was read. */
export function drawPressure(drawing: PressureDrawing): string {
  const panels = drawing.panels.filter(({ points }) => points.length > 0);
  const days = panels.flatMap(({ points }) => points.map(({ on }) => on)).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return page(drawing.title, [], drawing.notes);
  const ups = panels.map(({ points, wanted }) => {
    const values = points.flatMap((point) => [point.read, point.levelled ?? point.read]);
    const all = wanted === null ? values : [...values, wanted.value];
    // What is wanted is written beside its line: it needs room over it where all lies below.
    const room = wanted !== null && wanted.value >= Math.max(...values) ? [wanted.value + ROOM * (wanted.value - Math.min(...values))] : [];
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return upward([...all, ...room, Math.max(0, least - FOOT * (most - least))], drawing.figure);
  });
  const left = Math.max(...ups.map((up) => up.left));
  const time = timeAxis(first, last, [left + 14, RIGHT], drawing.month);
  const under = underDays(time, drawing.month, drawing.day);
  const bands = panels.map((panel, at) =>
    plot({ name: panel.name, high: HIGH, up: ups[at] ?? upward([0, 1], drawing.figure), left, under, underName: null }, (frame) => {
      const levelled = panel.points.flatMap((point) => (point.levelled === null ? [] : [{ x: time.at(point.on), y: frame.y(point.levelled) }]));
      const asTheyWere = panel.points.map((point) => ({ x: time.at(point.on), y: frame.y(point.read) }));
      const joined = lineOf<{ x: number; y: number }>(
        ({ x }) => x,
        ({ y }) => y,
      );
      const marks = [...asTheyWere, ...levelled];
      return [
        ...(panel.wanted === null ? [] : [level(frame, panel.wanted.value, panel.wanted.text, { marks, paths: [levelled] })]),
        ...(levelled.length < 2 ? [] : [trace(joined(levelled), INK.first, 4)]),
        ...asTheyWere.map(asRead),
        ...levelled.map(read),
      ].join("");
    }),
  );
  return page(
    drawing.title,
    [
      ...bands.flatMap((band, at) => (at === 0 ? [band] : [gap(12), band])),
      gap(8),
      legend([
        { mark: (x, y) => asRead({ x: x + 17, y }), text: drawing.meaning.read },
        ...(panels.some(({ points }) => points.some(({ levelled }) => levelled !== null))
          ? [{ mark: (x: number, y: number) => read({ x: x + 17, y }), text: drawing.meaning.levelled }]
          : []),
      ]),
    ],
    drawing.notes,
  );
}
