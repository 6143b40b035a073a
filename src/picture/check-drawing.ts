// What a check came to: a row of marks a section, one for each point, and under them what was found.

import { legend, shape } from "./lanes.ts";
import { widthOf, wrapped } from "./letters.ts";
import { EDGE, INK, INNER, SMALL, TEXT, WIDE } from "./look.ts";
import { type Band, gap, page, paragraph, words } from "./page.ts";
import { dot, line } from "./svg.ts";

/** How a point was left: each has a shape of its own. */
export type PointMark = "looked" | "needs work" | "left";
export type CheckDrawing = {
  readonly title: string;
  /** What it came to, first of all. */
  readonly says: string;
  readonly rows: readonly { readonly name: string; readonly beside: string; readonly marks: readonly PointMark[] }[];
  readonly meaning: Readonly<Record<PointMark, string>>;
  /** What was found and measured, a text each. */
  readonly told: readonly string[];
  readonly notes: readonly string[];
};

const RIGHT = WIDE - EDGE;
/** From one mark to the next, and from one line of marks to the next. */
const STEP = 38;
const RADIUS = 11;
const IN_A_LINE = Math.floor(INNER / STEP);

/** The drawing as SVG. */
export function drawCheck({ title, says, rows, meaning, told, notes }: CheckDrawing): string {
  const used = (["looked", "needs work", "left"] as const).filter((each) => rows.some(({ marks }) => marks.includes(each)));
  return page(
    title,
    [
      paragraph(says, TEXT, INK.line),
      gap(18),
      ...rows.map(section),
      gap(6),
      legend(used.map((is) => ({ text: meaning[is], mark: (x, y) => mark(is, x + 17, y) }))),
      ...told.flatMap((each) => [gap(12), paragraph(each, SMALL, INK.line)]),
    ],
    notes,
  );
}

function section({ name, beside, marks }: CheckDrawing["rows"][number]): Band {
  const room = INNER - widthOf(beside, SMALL) - 24;
  const names = wrapped(name, TEXT, room);
  const text = names.length * TEXT * 1.2;
  const lines = Math.ceil(marks.length / IN_A_LINE);
  return {
    high: text + lines * STEP + 16,
    draw: (top) =>
      [
        ...names.map((each, at) => words(each, EDGE, top + TEXT * (1.2 * at + 0.9))),
        words(beside, RIGHT, top + TEXT * 0.9, SMALL, INK.quiet, "end"),
        ...marks.map((is, at) => mark(is, EDGE + STEP * ((at % IN_A_LINE) + 0.5), top + text + STEP * (Math.floor(at / IN_A_LINE) + 0.5))),
      ].join(""),
  };
}

/** Filled circle: looked at. Filled square on its corner: needs work. A short line: still to be looked at. */
function mark(is: PointMark, x: number, y: number): string {
  switch (is) {
    case "looked":
      return dot({ x, y }, RADIUS, INK.first);
    case "needs work":
      return shape("now", x, y);
    case "left":
      return line({ x: x - RADIUS, y }, { x: x + RADIUS, y }, INK.quiet, 4);
  }
}
