// A plot: values up the page against days or an odometer across it. Figures at the left, texts under it.

import { scaleLinear } from "d3-scale";
import { type AxisLabel, axis, legend, type Meaning } from "./lanes.ts";
import { widthOf } from "./letters.ts";
import { EDGE, INK, SMALL, WIDE } from "./look.ts";
import { type Band, words } from "./page.ts";
import { line, n, type Point } from "./svg.ts";

/** Where things lie within a plot. `head`: the line of its name over it, and where that name ends. */
export type Frame = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly y: (value: number) => number;
  readonly head: { readonly base: number; readonly from: number };
};

/** From a plot's top to the foot of what is written over it: a mark at the top stays clear of it. */
export const OVER = 20;
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
    keys = [],
  }: {
    readonly name: string;
    readonly high: number;
    readonly up: Upward;
    readonly left: number;
    readonly under: readonly AxisLabel[];
    readonly underName: string | null;
    /** A line over the plot for what is written there. */
    readonly over?: true;
    /** What lines within mean, in rows under the name. */
    readonly keys?: readonly Meaning[];
  },
  draw: (frame: Frame) => string,
): Band {
  const named = legend(keys);
  const head = SMALL * (over === true ? 3 : 1.9) + named.high;
  const foot = axis(under, { name: null, ticked: true });
  const said = underName === null ? 0 : SMALL * 1.3;
  return {
    high: head + high + foot.high + said,
    draw: (top) => {
      const frame: Frame = {
        ...{ left, right: RIGHT, top: top + head, bottom: top + head + high, y: (value) => top + head + high * up.scale(value) },
        head: { base: top + SMALL, from: EDGE + widthOf(name, SMALL) },
      };
      return [
        words(name, EDGE, top + SMALL, SMALL, INK.quiet),
        named.draw(top + SMALL * 1.4),
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
 * A level across a plot with its words beside it: over it or under it, wherever first nothing else is drawn. Dashed, so that it is no grid line.
 * Where something runs through every such place, the words stand beside the plot's name, behind a piece of the level as a legend has it.
 * @param marks the middles of what is drawn there
 * @param paths lines that are drawn there, by their points
 */
export function level(
  { left, right, top, bottom, y, head }: Frame,
  value: number,
  text: string,
  {
    marks = [],
    paths = [],
    dashes = LEVEL_DASHES,
  }: { readonly marks?: readonly Point[]; readonly paths?: readonly (readonly Point[])[]; readonly dashes?: string },
): string {
  const at = y(value);
  const wide = widthOf(text, SMALL);
  const over = { base: at - 16, fits: at - SMALL * 1.6 > top };
  const under = { base: at + SMALL * 1.2, fits: at + SMALL * 1.5 < bottom };
  const rows = over.fits ? [over, ...(under.fits ? [under] : [])] : [under];
  const [first, last] = [left + 8, right - 8 - wide];
  const between = Array.from({ length: STEPS }, (_, n) => first + ((last - first) * (n + 1)) / (STEPS + 1));
  // At the ends first, where they are looked for.
  const places = [[first, last], between].flatMap((froms) => rows.flatMap(({ base }) => froms.map((from) => ({ base, from }))));
  const crossed = ({ base, from }: { readonly base: number; readonly from: number }): number => {
    const box = { left: from - MARK, right: from + wide + MARK, top: base - SMALL - MARK, bottom: base + SMALL * 0.3 + MARK };
    const on = marks.filter((mark) => mark.x > box.left && mark.x < box.right && mark.y > box.top && mark.y < box.bottom).length;
    return on + paths.filter((path) => path.some((to, n) => n > 0 && runsThrough(path[n - 1] ?? to, to, box))).length;
  };
  const least = Math.min(...places.map(crossed));
  const beside = right - wide;
  if (least > 0 && beside - SAMPLE - 12 >= head.from + 24) {
    const middle = head.base - SMALL * 0.35;
    return (
      line({ x: left, y: at }, { x: right, y: at }, INK.second, 4, dashes) +
      line({ x: beside - SAMPLE - 12, y: middle }, { x: beside - 12, y: middle }, INK.second, 4, dashes) +
      words(text, beside, head.base, SMALL, INK.line)
    );
  }
  const place = places.find((each) => crossed(each) === least) ?? { base: over.base, from: first };
  return (
    line({ x: left, y: at }, { x: right, y: at }, INK.second, 4, dashes) +
    // Kept apart from whatever crosses them.
    words(text, place.from, place.base, SMALL, INK.line).replace("<text ", `<text paint-order="stroke" stroke="${INK.ground}" stroke-width="7" `)
  );
}
/** Dashes of a level, where it says nothing else. */
export const LEVEL_DASHES = "14 8";
/** Two dashes of a level. */
const SAMPLE = 36;
/** From the middle of the largest mark to its edge. */
const MARK = 14;
/** Places between the ends at which words are tried. */
const STEPS = 8;

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** Does a straight line between two points touch a box? What of it lies between the box's sides must lie between its top and its bottom somewhere (Liang and Barsky, 1984). */
export function runsThrough(from: Point, to: Point, box: Box): boolean {
  let [enters, leaves] = [0, 1];
  const sides = [
    [from.x - to.x, from.x - box.left],
    [to.x - from.x, box.right - from.x],
    [from.y - to.y, from.y - box.top],
    [to.y - from.y, box.bottom - from.y],
  ] as const;
  for (const [runs, room] of sides) {
    if (runs === 0 && room < 0) return false;
    if (runs < 0) enters = Math.max(enters, room / runs);
    if (runs > 0) leaves = Math.min(leaves, room / runs);
  }
  return enters <= leaves;
}

/** A reading as a filled point, kept apart from lines under it. */
export const read = ({ x, y }: Point): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="10" fill="${INK.ground}"/><circle cx="${n(x)}" cy="${n(y)}" r="8" fill="${INK.first}"/>`;
