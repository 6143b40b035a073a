// What comes next for a bike: one lane an item, its mark on the likely day, the odometer that is likely there under them.
// Where nothing says how far it will have gone, what falls due by distance has lanes of its own along the odometer.

import { scaleLinear } from "d3-scale";
import type { LocalDate } from "../core/calendar/dates.ts";
import { axis, lane, laneLegend, type Nearness } from "./lanes.ts";
import { EDGE, WIDE } from "./look.ts";
import { type Band, gap, notice, page, paragraph } from "./page.ts";
import { timeAxis } from "./time-axis.ts";

/** Texts stand in the drawing as given; figures are in the unit of the bike's dial. */
export type NextDrawing = {
  /** What is told before all else, as that the bike is not to be ridden; none mostly. */
  readonly first: readonly string[];
  readonly title: string;
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly month: (first: LocalDate) => string;
  readonly todayText: string;
  readonly andMore: (n: number) => string;
  /** Items with a likely day, soonest first, and the days between which it likely is. */
  readonly byDay: readonly {
    readonly names: readonly string[];
    readonly beside: string;
    readonly on: LocalDate;
    readonly from: LocalDate;
    /** Null when it may not come for years. */
    readonly to: LocalDate | null;
    readonly is: Nearness;
  }[];
  /** The likely odometer on some days from today on, rising; empty where nothing says. */
  readonly likely: readonly { readonly on: LocalDate; readonly at: number }[];
  readonly odometerName: string;
  /** Items of which only the odometer is known at which they fall due. */
  readonly byDistance: readonly { readonly names: readonly string[]; readonly beside: string; readonly at: number; readonly is: Nearness }[];
  readonly distanceName: string;
  /** Where the dial stands; the lanes by distance begin here. */
  readonly now: number;
  readonly figure: (value: number) => string;
  readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate }[];
  readonly meaning: Readonly<Record<Nearness | "range" | "onward" | "rest", string>>;
  readonly notes: readonly string[];
};

/** Room for a mark at either end. */
const SIDE = 16;
const ACROSS = [EDGE + SIDE, WIDE - EDGE - SIDE] as const;

/** The drawing as SVG. */
export function drawNext(drawing: NextDrawing): string {
  const { byDay, byDistance, meaning, notes, title } = drawing;
  const used = new Set<Nearness | "range" | "onward" | "rest">([...byDay, ...byDistance].map(({ is }) => is));
  if (byDay.some(({ from, to }) => from !== to)) used.add("range");
  if (byDay.some(({ to }) => goesOn(to, drawing.until))) used.add("onward");
  if (drawing.layUps.length > 0 && byDay.length > 0) used.add("rest");
  const order = ["now", "soon", "later", "range", "onward", "rest"] as const;
  return page(
    title,
    [
      ...(byDay.length === 0 ? [] : days(drawing)),
      ...(byDistance.length === 0 ? [] : distances(drawing)),
      ...(used.size === 0 ? [] : [gap(10), laneLegend(order.filter((is) => used.has(is)).map((is) => ({ is, text: meaning[is] })))]),
    ],
    notes,
    drawing.first.map(notice),
  );
}

/** Whether a range ends beyond the picture, which an arrow says. */
const goesOn = (to: LocalDate | null, until: LocalDate): boolean => to === null || to > until;

function days(drawing: NextDrawing): readonly Band[] {
  const { today, until, month, byDay, likely, figure, andMore } = drawing;
  const time = timeAxis(today, until, ACROSS, month);
  const ticks = time.ticks.map(time.at);
  const rest = drawing.layUps.map(({ from, to }) => ({ from: time.at(from), to: time.at(to) }));
  const reached = roundFigures(likely.map(({ on, at }) => ({ x: time.at(on), value: at })));
  return [
    axis([{ x: time.at(today), text: drawing.todayText }, ...time.ticks.map((day) => ({ x: time.at(day), text: month(day) }))]),
    ...byDay.map(({ on, from, to, is, ...said }) => {
      const mark = { x: time.at(on), from: time.at(from), to: time.at(to ?? until), goesOn: goesOn(to, until), is };
      return lane({ ...said, andMore, marks: [mark], rest }, ticks);
    }),
    ...(reached.length === 0
      ? []
      : [
          axis(
            reached.map(({ x, value }) => ({ x, text: figure(value) })),
            { name: drawing.odometerName, ticked: true },
          ),
        ]),
  ];
}

function distances(drawing: NextDrawing): readonly Band[] {
  const { byDistance, now, figure, andMore } = drawing;
  const furthest = Math.max(...byDistance.map(({ at }) => at), now + 1);
  const scale = scaleLinear([now, furthest], [...ACROSS]).clamp(true);
  const ticks = scale.ticks(4);
  return [
    ...(drawing.byDay.length === 0 ? [] : [gap(10)]),
    paragraph(drawing.distanceName),
    axis([{ x: scale(now), text: figure(now) }, ...ticks.map((value) => ({ x: scale(value), text: figure(value) }))]),
    ...byDistance.map(({ at, is, ...said }) =>
      lane({ ...said, andMore, marks: [{ x: scale(at), from: scale(at), to: scale(at), goesOn: false, is }], rest: [] }, ticks.map(scale)),
    ),
  ];
}

type Reached = { readonly x: number; readonly value: number };

/** Where round figures are reached on a rising line; none where it does not rise. */
export function roundFigures(path: readonly Reached[]): readonly Reached[] {
  const [first, last] = [path[0], path.at(-1)];
  if (first === undefined || last === undefined || last.value <= first.value) return [];
  return scaleLinear([first.value, last.value], [0, 1])
    .ticks(5)
    .map((value) => {
      const after = Math.max(
        1,
        path.findIndex((point) => point.value >= value),
      );
      const [a, b] = [path[after - 1] ?? first, path[after] ?? last];
      const share = b.value === a.value ? 1 : (value - a.value) / (b.value - a.value);
      return { x: a.x + share * (b.x - a.x), value };
    });
}
