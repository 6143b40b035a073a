// Wear lines: what was measured against the odometer, the line through it, and where that line likely reaches the limit.

import { scaleLinear } from "d3-scale";
import { legend, shape } from "./lanes.ts";
import { widthOf } from "./letters.ts";
import { INK, SMALL } from "./look.ts";
import { type Band, gap, page, words } from "./page.ts";
import { type Frame, level, OVER, plot, RIGHT, read, upward } from "./plot.ts";
import { dot, head, line, type Point } from "./svg.ts";

/** One part at one place. `x` are figures of the dial, values in one unit of the caller's. */
export type WearPanel = {
  readonly name: string;
  readonly points: readonly { readonly x: number; readonly value: number }[];
  /** The line through them, from the first reading's place on, and where it reaches the limit: likely, and with the range that holds it eight times in ten. Null: too few readings. */
  readonly line: { readonly from: number; readonly start: number; readonly likely: number; readonly low: number; readonly high: number | null } | null;
  readonly limit: { readonly value: number; readonly text: string } | null;
  /** The line has reached the limit before where the bike stands. */
  readonly behind: boolean;
};
export type WearDrawing = {
  readonly title: string;
  /** Where the dial stands, and how that is written; null where it stands at the last reading. */
  readonly now: { readonly x: number; readonly text: string } | null;
  readonly panels: readonly WearPanel[];
  readonly odometerName: string;
  readonly figure: (value: number) => string;
  readonly depth: (value: number) => string;
  readonly meaning: Readonly<Record<"read" | "line" | "range" | "onward" | "behind", string>>;
  readonly notes: readonly string[];
};

const HIGH = 260;
/** One reading alone has so much road behind it, that the figures under it differ. */
const ROAD = 100;
/** A range that runs on is drawn so far beyond the likely place. */
const BEYOND = 0.25;

/** The drawing as SVG; a page of words alone when nothing was measured. */
export function drawWear(drawing: WearDrawing): string {
  const panels = drawing.panels.filter(({ points }) => points.length > 0).map(fromNothing);
  if (panels.length === 0) return page(drawing.title, [], drawing.notes);
  const ups = panels.map(({ points, limit, line: worn }) =>
    upward([0, ...points.map(({ value }) => value), limit?.value ?? 0, worn?.start ?? 0], drawing.depth),
  );
  const left = Math.max(...ups.map((up) => up.left));
  const { now } = drawing;
  const xs = [
    ...panels.flatMap(({ points, line: worn }) => [...points.map(({ x }) => x), ...(worn === null ? [] : [worn.from, worn.likely])]),
    ...(now === null ? [] : [now.x]),
  ];
  const [least, likeliest] = [Math.min(...xs), Math.max(...xs)];
  const open = (likeliest - least || 1) * BEYOND;
  const ends = panels.flatMap(({ line: worn }) => (worn === null ? [] : [Math.min(worn.high ?? Number.POSITIVE_INFINITY, likeliest + open)]));
  const most = Math.max(likeliest, least + ROAD, ...ends);
  const across = scaleLinear([least, most], [left + 14, RIGHT]).clamp(true);
  const under = across.ticks(5).map((value) => ({ x: across(value), text: drawing.figure(value) }));
  const isOnward = ({ high }: NonNullable<WearPanel["line"]>): boolean => high === null || high > most;
  const bands: Band[] = panels.map((panel, at) =>
    plot(
      {
        name: panel.name,
        high: HIGH,
        up: ups[at] ?? upward([0, 1], drawing.depth),
        left,
        under,
        underName: at === panels.length - 1 ? drawing.odometerName : null,
        ...(now === null ? {} : { over: true as const }),
      },
      (frame) => {
        const { limit, line: worn } = panel;
        const marks = panel.points.map(({ x, value }) => ({ x: across(x), y: frame.y(value) }));
        const stands: readonly Point[] =
          now === null
            ? []
            : [
                { x: across(now.x), y: frame.top },
                { x: across(now.x), y: frame.bottom },
              ];
        const run =
          worn === null || limit === null
            ? null
            : ([
                { x: across(worn.from), y: frame.y(worn.start) },
                { x: across(worn.likely), y: frame.y(limit.value) },
              ] as const);
        // Under the words of the limit, which are kept apart from what they cross.
        const held = [
          ...marks,
          ...(run === null ? [] : [run[1]]),
          ...(panel.behind && limit !== null ? stands.slice(0, 1).map(({ x }) => ({ x, y: frame.y(limit.value) })) : []),
        ];
        const drawn = [
          ...(now === null ? [] : [stand(frame, across(now.x), now.text)]),
          ...(run === null ? [] : [line(run[0], run[1], INK.first, 3, "10 8")]),
          ...(limit === null
            ? []
            : [level(frame, limit.value, limit.text, { marks: held, paths: [...(run === null ? [] : [run]), ...(now === null ? [] : [stands])] })]),
        ];
        if (worn !== null && limit !== null) {
          const y = frame.y(limit.value);
          const [from, to] = [across(worn.low), across(worn.high ?? most)];
          drawn.push(
            line({ x: from, y }, { x: to, y }, INK.first, 6),
            ...(isOnward(worn) ? [head({ x: RIGHT + 10, y }, { x: 1, y: 0 }, INK.first)] : []),
            dot({ x: across(worn.likely), y }, 13, INK.ground),
            dot({ x: across(worn.likely), y }, 11, INK.first),
            dot({ x: across(worn.likely), y }, 6, INK.ground),
            ...(now !== null && panel.behind ? [shape("now", across(now.x), y)] : []),
          );
        }
        return [...drawn, ...marks.map(read)].join("");
      },
    ),
  );
  const lined = panels.some(({ line: worn }) => worn !== null);
  return page(
    drawing.title,
    [
      ...bands.flatMap((band, at) => (at === 0 ? [band] : [gap(12), band])),
      gap(8),
      legend([
        { mark: (x, y) => read({ x: x + 17, y }), text: drawing.meaning.read },
        ...(lined
          ? [
              { mark: (x: number, y: number) => line({ x, y }, { x: x + 34, y }, INK.first, 3, "10 8"), text: drawing.meaning.line },
              {
                mark: (x: number, y: number) =>
                  line({ x, y }, { x: x + 34, y }, INK.first, 6) + dot({ x: x + 17, y }, 11, INK.first) + dot({ x: x + 17, y }, 6, INK.ground),
                text: drawing.meaning.range,
              },
              ...(panels.some(({ line: worn, limit }) => worn !== null && limit !== null && isOnward(worn))
                ? [
                    {
                      mark: (x: number, y: number) => line({ x, y }, { x: x + 24, y }, INK.first, 6) + head({ x: x + 36, y }, { x: 1, y: 0 }, INK.first),
                      text: drawing.meaning.onward,
                    },
                  ]
                : []),
              ...(now !== null && panels.some(({ behind }) => behind)
                ? [{ mark: (x: number, y: number) => shape("now", x + 17, y), text: drawing.meaning.behind }]
                : []),
            ]
          : []),
      ]),
    ],
    drawing.notes,
  );
}

/** A line through first readings near nothing may begin a hair under it, where no part can be: it is drawn from where it crosses. */
function fromNothing(panel: WearPanel): WearPanel {
  const { line: worn, limit, points } = panel;
  if (worn === null || limit === null || worn.start >= 0 || limit.value <= 0 || points.some(({ value }) => value < 0)) return panel;
  const share = -worn.start / (limit.value - worn.start);
  return { ...panel, line: { ...worn, from: worn.from + share * (worn.likely - worn.from), start: 0 } };
}

/** Where the dial stands, from top to bottom, with its figure over it. */
function stand({ left, top, bottom }: Frame, x: number, text: string): string {
  const half = widthOf(text, SMALL) / 2;
  const anchor = x + half > RIGHT ? "end" : x - half < left ? "start" : "middle";
  return (
    line({ x, y: top }, { x, y: bottom }, INK.quiet, 2, "4 7") +
    words(text, anchor === "end" ? RIGHT : anchor === "start" ? left : x, top - OVER, SMALL, INK.quiet, anchor)
  );
}
