// Lanes across a page: a name, words beside it, and under them a line with marks on it.

import { cut, widthOf, wrapped } from "./letters.ts";
import { EDGE, INK, SMALL, TEXT, WIDE } from "./look.ts";
import { type Band, words } from "./page.ts";
import { dot, head, line, n, outline } from "./svg.ts";

/** How near a mark is; each has a shape of its own. */
export type Nearness = "now" | "soon" | "later";
/** A mark at a place across the page, with the places between which it likely lies; `goesOn`: farther to the right than the page. */
export type LaneMark = { readonly x: number; readonly from: number; readonly to: number; readonly goesOn: boolean; readonly is: Nearness };
/** `rest`: where nothing happens, as while a bike is laid up. */
export type Lane = {
  readonly names: readonly string[];
  /** What stands for names that find no room. */
  readonly andMore: (n: number) => string;
  readonly beside: string;
  readonly marks: readonly LaneMark[];
  readonly rest: readonly { readonly from: number; readonly to: number }[];
};

const RIGHT = WIDE - EDGE;
/** From a lane's line to whatever is written over and under it. */
const OVER = 26;
const UNDER = 30;
const RADIUS = 11;

/** A lane as a band. @param ticks where months, or figures, begin */
export function lane({ names: all, andMore, beside, marks, rest }: Lane, ticks: readonly number[]): Band {
  const room = RIGHT - EDGE;
  const names = fitted(all, andMore, room);
  const inOneLine = names.length === 1 && widthOf(names[0] ?? "", TEXT) + widthOf(beside, SMALL) + 24 <= room;
  const said = inOneLine ? [] : wrapped(beside, SMALL, room);
  const text = names.length * TEXT * 1.2 + said.length * SMALL * 1.25;
  return {
    high: text + OVER + UNDER,
    draw: (top) => {
      const y = top + text + OVER;
      return [
        ...names.map((each, at) => words(each, EDGE, top + TEXT * (1.2 * at + 0.9))),
        ...(inOneLine ? [words(beside, RIGHT, top + TEXT * 0.9, SMALL, INK.quiet, "end")] : []),
        ...said.map((each, at) => words(each, EDGE, top + names.length * TEXT * 1.2 + SMALL * (1.25 * at + 0.9), SMALL, INK.quiet)),
        ...rest.map(
          ({ from, to }) =>
            `<rect x="${n(from)}" y="${n(y - 9)}" width="${n(Math.max(0, to - from))}" height="18" fill="${INK.rest}" stroke="${INK.quiet}" stroke-width="1"/>`,
        ),
        line({ x: EDGE, y }, { x: RIGHT, y }, INK.faint, 2),
        ...ticks.map((x) => line({ x, y: y - 9 }, { x, y: y + 9 }, INK.faint, 2)),
        // Ranges lie under the marks of the whole lane, so that none hides another's mark.
        ...marks.filter(({ from, to }) => to > from).map(({ from, to }) => line({ x: from, y }, { x: to, y }, INK.first, 5)),
        ...marks.filter(({ goesOn }) => goesOn).map(() => head({ x: RIGHT, y }, { x: 1, y: 0 }, INK.first)),
        ...marks.map((mark) => shape(mark.is, mark.x, y)),
      ].join("");
    },
  };
}

/** More lines than these push the next lane off a phone's screen; what is left out is said beside the picture. */
const MOST_LINES = 4;

/** Names in lines, as many of them as find room; the first at least, cut if need be. */
function fitted(names: readonly string[], andMore: Lane["andMore"], room: number): readonly string[] {
  for (let n = names.length; n > 0; n--) {
    const lines = wrapped([...names.slice(0, n), ...(n < names.length ? [andMore(names.length - n)] : [])].join(", "), TEXT, room);
    if (lines.length <= MOST_LINES) return lines;
  }
  return [cut(names[0] ?? "", TEXT, room)];
}

/** Filled square on its corner: now. Filled circle: coming up. Open circle: later. */
export function shape(is: Nearness, x: number, y: number): string {
  switch (is) {
    case "now": {
      const r = RADIUS + 3;
      return outline(
        [
          { x: x - r, y },
          { x, y: y - r },
          { x: x + r, y },
          { x, y: y + r },
        ],
        INK.second,
        INK.ground,
      );
    }
    case "soon":
      return dot({ x, y }, RADIUS + 2, INK.ground) + dot({ x, y }, RADIUS, INK.first);
    case "later":
      return dot({ x, y }, RADIUS, INK.first) + dot({ x, y }, RADIUS - 5, INK.ground);
  }
}

/** What may stand under an axis: a text at a place, kept inside the page. */
export type AxisLabel = { readonly x: number; readonly text: string };

/** Texts over or under lanes, those that would touch an earlier one left out. */
export function axis(labels: readonly AxisLabel[], { name = null, ticked = false }: { readonly name?: string | null; readonly ticked?: boolean } = {}): Band {
  const kept: { readonly x: number; readonly left: number; readonly right: number; readonly text: string }[] = [];
  for (const { x, text } of labels) {
    const wide = widthOf(text, SMALL);
    const left = Math.min(Math.max(EDGE, x - wide / 2), RIGHT - wide);
    if (kept.every((other) => left + wide + 14 <= other.left || left >= other.right + 14)) kept.push({ x, left, right: left + wide, text });
  }
  const over = name === null ? 0 : SMALL * 1.25;
  const tick = ticked ? 14 : 0;
  return {
    high: SMALL * 1.15 + 12 + over + tick,
    draw: (top) =>
      [
        ...(ticked ? kept.map(({ x }) => line({ x, y: top + over + 6 }, { x, y: top + over + 18 }, INK.quiet, 2)) : []),
        ...(name === null ? [] : [words(name, EDGE, top + SMALL, SMALL, INK.quiet)]),
        ...kept.map(({ left, text }) => words(text, left, top + over + tick + SMALL, SMALL, INK.quiet)),
      ].join(""),
  };
}

/** A mark at the left of so much room, on a height, before its words. */
export type Meaning = { readonly mark: (x: number, y: number) => string; readonly text: string };

/** What the marks of lanes mean. @param entries those marks that are in the picture */
export const laneLegend = (entries: readonly { readonly is: Nearness | "range" | "onward" | "rest"; readonly text: string }[]): Band =>
  legend(
    entries.map(({ is, text }) => ({
      text,
      mark: (x, y) =>
        is === "range"
          ? line({ x, y }, { x: x + 34, y }, INK.first, 5)
          : is === "onward"
            ? line({ x, y }, { x: x + 24, y }, INK.first, 5) + head({ x: x + 36, y }, { x: 1, y: 0 }, INK.first)
            : is === "rest"
              ? `<rect x="${n(x)}" y="${n(y - 9)}" width="34" height="18" fill="${INK.rest}" stroke="${INK.quiet}" stroke-width="1"/>`
              : shape(is, x + 17, y),
    })),
  );

/** What marks mean, each before its words, in as many rows as they take. */
export function legend(entries: readonly Meaning[]): Band {
  const rows: (Meaning & { readonly x: number })[][] = [[]];
  let x = EDGE;
  for (const entry of entries) {
    const wide = widthOf(entry.text, SMALL) + 74;
    if (x > EDGE && x + wide - 22 > RIGHT) {
      rows.push([]);
      x = EDGE;
    }
    rows.at(-1)?.push({ ...entry, x });
    x += wide;
  }
  const step = SMALL * 1.5;
  return {
    high: entries.length === 0 ? 0 : rows.length * step,
    draw: (top) =>
      rows
        .flatMap((row, at) =>
          row.map((entry) => {
            const y = top + step * at + SMALL * 0.65;
            return entry.mark(entry.x, y) + words(entry.text, entry.x + 44, y + SMALL * 0.35, SMALL, INK.quiet);
          }),
        )
        .join(""),
  };
}
