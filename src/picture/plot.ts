// A plot: values up the page against days or an odometer across it. Figures at the left, texts under it.

import { scaleLinear } from "d3-scale";
import { type AxisLabel, axis } from "./lanes.ts";
import { widthOf } from "./letters.ts";
import { EDGE, INK, SMALL, WIDE } from "./look.ts";
import { type Band, words } from "./page.ts";
import { line, n, type Point } from "./svg.ts";

/** Where things lie within a plot. */
export type Frame = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number; readonly y: (value: number) => number };

/** The right edge of every plot; marks on it stay on the page. */
export const RIGHT = WIDE - EDGE - 12;

/** The values up a plot, widened to round figures: at least two of them, and no more than are printed apart. */
export function upward(values: readonly number[], figure: (value: number) => string) {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  // One value alone has a little room either way; and so have values that lie closer than figures are printed apart.
  const some = Math.max(1, Math.abs(least) * 0.05);
  const rooms = [most > least ? 0 : some, ...Array.from({ length: 12 }, (_, n) => (some / 2) * 2 ** n)];
  const found = rooms.flatMap((room) => {
    const scale = scaleLinear([least - room, most + room], [1, 0]).nice(5);
    const ticks = [5, 4, 3, 2].map((count) => scale.ticks(count).map((value) => ({ value, text: figure(value) }))).find(isApart);
    return ticks === undefined ? [] : [{ scale, ticks }];
  });
  const { scale, ticks } = found[0] ?? { scale: scaleLinear([least - some, most + some], [1, 0]), ticks: [] };
  return { scale, ticks, left: EDGE + Math.max(0, ...ticks.map(({ text }) => widthOf(text, SMALL))) + 16 };
}

const isApart = (ticks: readonly { readonly text: string }[]): boolean => ticks.length > 1 && new Set(ticks.map(({ text }) => text)).size === ticks.length;
export type Upward = ReturnType<typeof upward>;

/** @param under texts under it, by their places across the page @param draw what is drawn within */
export function plot(
  {
    name,
    high,
    up,
    left,
    under,
    underName,
    over,
  }: {
    readonly name: string;
    readonly high: number;
    readonly up: Upward;
    readonly left: number;
    readonly under: readonly AxisLabel[];
    readonly underName: string | null;
    /** A line over the plot for what is written there. */
    readonly over?: true;
  },
  draw: (frame: Frame) => string,
): Band {
  const head = SMALL * (over === true ? 3 : 1.9);
  const foot = axis(under, { name: null, ticked: true });
  const said = underName === null ? 0 : SMALL * 1.3;
  return {
    high: head + high + foot.high + said,
    draw: (top) => {
      const frame = { left, right: RIGHT, top: top + head, bottom: top + head + high, y: (value: number) => top + head + high * up.scale(value) };
      return [
        words(name, EDGE, top + SMALL, SMALL, INK.quiet),
        ...up.ticks.map(({ value }) => line({ x: left, y: frame.y(value) }, { x: RIGHT, y: frame.y(value) }, INK.faint, 1.5)),
        ...up.ticks.map(({ value, text }) => words(text, left - 14, frame.y(value) + SMALL * 0.35, SMALL, INK.quiet, "end")),
        // Under what is drawn: a mark on it stays whole.
        line({ x: left, y: frame.bottom }, { x: RIGHT, y: frame.bottom }, INK.quiet, 2),
        foot.draw(frame.bottom - 4),
        draw(frame),
        ...(underName === null ? [] : [words(underName, RIGHT, frame.bottom + foot.high + SMALL * 0.8, SMALL, INK.quiet, "end")]),
      ].join("");
    },
  };
}

/** A path as lines and shapes of the library make it, by its points. */
export const trace = (path: string | null, color: string, wide: number, dashes = ""): string =>
  path === null
    ? ""
    : `<path d="${rounded(path)}" fill="none" stroke="${color}" stroke-width="${wide}" stroke-linejoin="round"${dashes === "" ? "" : ` stroke-dasharray="${dashes}"`}/>`;
export const filled = (path: string | null, color: string): string => (path === null ? "" : `<path d="${rounded(path)}" fill="${color}" stroke="none"/>`);
const rounded = (path: string): string => path.replace(/-?\d+(\.\d+)?(e-?\d+)?/gu, (figure) => n(Number(figure)));

/**
 * A level across a plot with its words beside it: over it or under it, at the left or the right, wherever first nothing else is drawn. Dashed, so that it is no grid line.
 * @param busy what is drawn on the level between
 * @param marks the middles of what is drawn elsewhere
 */
export function level(
  { left, right, top, bottom, y }: Frame,
  value: number,
  text: string,
  { busy = null, marks = [] }: { readonly busy?: readonly [number, number] | null; readonly marks?: readonly Point[] },
): string {
  const at = y(value);
  const wide = widthOf(text, SMALL);
  const over = { base: at - 16, fits: at - SMALL * 1.6 > top };
  const under = { base: at + SMALL * 1.2, fits: at + SMALL * 1.5 < bottom };
  const rows = over.fits ? [over, ...(under.fits ? [under] : [])] : [under];
  const places = rows.flatMap(({ base }) => [
    { base, from: left + 8 },
    { base, from: right - 8 - wide },
  ]);
  const crossed = ({ base, from }: { readonly base: number; readonly from: number }): number =>
    marks.filter((mark) => mark.x > from - MARK && mark.x < from + wide + MARK && mark.y > base - SMALL - MARK && mark.y < base + SMALL * 0.3 + MARK).length +
    (busy !== null && busy[0] < from + wide + 16 && busy[1] > from - 16 ? 1 : 0);
  const least = Math.min(...places.map(crossed));
  const place = places.find((each) => crossed(each) === least) ?? { base: over.base, from: left + 8 };
  return (
    line({ x: left, y: at }, { x: right, y: at }, INK.second, 4, "14 8") +
    // Kept apart from whatever crosses them.
    words(text, place.from, place.base, SMALL, INK.line).replace("<text ", `<text paint-order="stroke" stroke="${INK.ground}" stroke-width="7" `)
  );
}
/** From the middle of a mark to its edge. */
const MARK = 10;

/** A reading as a filled point, kept apart from lines under it. */
export const read = ({ x, y }: Point): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="10" fill="${INK.ground}"/><circle cx="${n(x)}" cy="${n(y)}" r="8" fill="${INK.first}"/>`;
/** A reading as it was, beside what it comes to: an open square. */
export const asRead = ({ x, y }: Point): string =>
  `<rect x="${n(x - 7)}" y="${n(y - 7)}" width="14" height="14" fill="${INK.ground}" stroke="${INK.line}" stroke-width="3"/>`;
