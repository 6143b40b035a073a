// Cold pressures over time: as read, and what the same air would show at one temperature, so that what is lost is seen apart from the weather.
// Each load has a mark and a dash of its own: what is wanted two-up is another pressure, and colours alone would not tell them apart.

import { line as lineOf } from "d3-shape";
import type { LocalDate } from "../core/calendar/dates.ts";
import { SPEC_USES, type SpecUse } from "../core/spec/spec.ts";
import { legend, type Meaning } from "./lanes.ts";
import { INK } from "./look.ts";
import { gap, page } from "./page.ts";
import { LEVEL_DASHES, level, plot, RIGHT, trace, upward } from "./plot.ts";
import { line, n, type Point } from "./svg.ts";
import { timeAxis, underDays } from "./time-axis.ts";

/** One tyre. Pressures in one unit of the caller's. */
export type PressurePanel = {
  readonly name: string;
  /** `levelled`: at the one temperature; null where none was noted. */
  readonly points: readonly { readonly on: LocalDate; readonly read: number; readonly levelled: number | null; readonly load: SpecUse }[];
  /** A line each; `load`: whose dashes it has. */
  readonly wanted: readonly { readonly load: SpecUse; readonly value: number; readonly text: string }[];
};
export type PressureDrawing = {
  readonly title: string;
  readonly panels: readonly PressurePanel[];
  readonly month: (first: LocalDate) => string;
  readonly day: (on: LocalDate) => string;
  readonly figure: (value: number) => string;
  readonly meaning: Readonly<Record<"read" | "levelled" | "open" | "filled" | SpecUse, string>>;
  readonly notes: readonly string[];
};

const HIGH = 240;
/** Room over a level at the top, as a share of what lies under it. */
const ROOM = 0.15;
/** Room under the lowest mark, as a share of the whole, so that it stays off the axis. */
const FOOT = 0.08;

/** Dashes of what is wanted. */
const DASHES = { solo: LEVEL_DASHES, "two-up": "2 11", loaded: "24 9 2 9" } as const satisfies Record<SpecUse, string>;

/** A reading: a circle solo, a triangle two-up, a square loaded; open as it was, filled at the one temperature. */
export function pressureMark(load: SpecUse, { x, y }: Point, filled: boolean): string {
  const ink = filled ? `fill="${INK.first}" stroke="${INK.ground}" stroke-width="2"` : `fill="${INK.ground}" stroke="${INK.line}" stroke-width="3"`;
  switch (load) {
    case "solo":
      return `<circle cx="${n(x)}" cy="${n(y)}" r="${filled ? 9 : 8}" ${ink}/>`;
    case "two-up":
      return `<polygon points="${n(x)},${n(y - 11)} ${n(x + 10)},${n(y + 7)} ${n(x - 10)},${n(y + 7)}" stroke-linejoin="round" ${ink}/>`;
    case "loaded":
      return `<rect x="${n(x - 8)}" y="${n(y - 8)}" width="16" height="16" ${ink}/>`;
  }
}

/** The drawing as SVG; a page of words alone when nothing was read. */
export function drawPressure(drawing: PressureDrawing): string {
  const panels = drawing.panels.filter(({ points }) => points.length > 0);
  const days = panels.flatMap(({ points }) => points.map(({ on }) => on)).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return page(drawing.title, [], drawing.notes);
  const ups = panels.map(({ points, wanted }) => {
    const values = points.flatMap((point) => [point.read, point.levelled ?? point.read]);
    const all = [...values, ...wanted.map(({ value }) => value)];
    // What alone is wanted is written beside its line: it needs room over it where all lies below.
    const [only] = wanted.length === 1 ? wanted : [];
    const room = only !== undefined && only.value >= Math.max(...values) ? [only.value + ROOM * (only.value - Math.min(...values))] : [];
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return upward([...all, ...room, Math.max(0, least - FOOT * (most - least))], drawing.figure);
  });
  const left = Math.max(...ups.map((up) => up.left));
  const time = timeAxis(first, last, [left + 14, RIGHT], drawing.month);
  const under = underDays(time, drawing.month, drawing.day);
  const bands = panels.map((panel, at) => {
    const [only, ...others] = panel.wanted;
    const beside = others.length === 0 ? (only ?? null) : null;
    // Of several lines, which lie near each other, the words stand over the plot, where no mark is.
    const keys = others.length === 0 ? [] : panel.wanted.map(({ load, text }): Meaning => ({ mark: (x, y) => dashed(x, x + 34, y, load), text }));
    return plot({ name: panel.name, high: HIGH, up: ups[at] ?? upward([0, 1], drawing.figure), left, under, underName: null, keys }, (frame) => {
      const marks = panel.points.flatMap(({ on, read, levelled, load }) => [
        ...[{ x: time.at(on), y: frame.y(read), load, filled: false }],
        ...(levelled === null ? [] : [{ x: time.at(on), y: frame.y(levelled), load, filled: true }]),
      ]);
      // A line joins what was read at one load: another load has another pressure on purpose.
      const runs = SPEC_USES.map((use) => marks.filter(({ filled, load }) => filled && load === use)).filter(({ length }) => length > 1);
      const joined = lineOf<Point>(
        ({ x }) => x,
        ({ y }) => y,
      );
      return [
        ...(beside === null ? [] : [level(frame, beside.value, beside.text, { marks, paths: runs, dashes: DASHES[beside.load] })]),
        ...(keys.length === 0 ? [] : panel.wanted.map(({ load, value }) => dashed(frame.left, frame.right, frame.y(value), load))),
        ...runs.map((run) => trace(joined([...run]), INK.first, 4)),
        ...[false, true].flatMap((state) => marks.filter(({ filled }) => filled === state).map((mark) => pressureMark(mark.load, mark, mark.filled))),
      ].join("");
    });
  });
  return page(
    drawing.title,
    [...bands.flatMap((band, at) => (at === 0 ? [band] : [gap(12), band])), gap(8), legend(meanings(panels, drawing.meaning))],
    drawing.notes,
  );
}

const dashed = (from: number, to: number, y: number, load: SpecUse): string => line({ x: from, y }, { x: to, y }, INK.second, 4, DASHES[load]);

/** What the marks mean: open and filled, and where there is more than riding solo, which shape is which. */
function meanings(panels: readonly PressurePanel[], meaning: PressureDrawing["meaning"]): readonly Meaning[] {
  const points = panels.flatMap((panel) => panel.points);
  const loads = SPEC_USES.filter((use) => points.some(({ load }) => load === use));
  const of = loads[0] ?? "solo";
  const isLevelled = points.some(({ levelled }) => levelled !== null);
  const open: Meaning["mark"] = (x, y) => pressureMark(of, { x: x + 17, y }, false);
  const filled: Meaning["mark"] = (x, y) => pressureMark(of, { x: x + 17, y }, true);
  if (loads.length === 1 && of === "solo") return [{ mark: open, text: meaning.read }, ...(isLevelled ? [{ mark: filled, text: meaning.levelled }] : [])];
  const both = (load: SpecUse): Meaning["mark"] =>
    isLevelled
      ? (x, y) => pressureMark(load, { x: x + 6, y }, false) + pressureMark(load, { x: x + 30, y }, true)
      : (x, y) => pressureMark(load, { x: x + 17, y }, false);
  return [
    ...loads.map((load): Meaning => ({ mark: both(load), text: meaning[load] })),
    ...(isLevelled
      ? [
          { mark: open, text: meaning.open },
          { mark: filled, text: meaning.filled },
        ]
      : loads.length === 1
        ? [{ mark: open, text: meaning.read }]
        : []),
  ];
}
