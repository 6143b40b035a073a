// A torque wrench with an adapter, seen from above: how long each is, at what angle, what is set and what reaches the fastener.

import { INK } from "./look.ts";
import { arc, around, arrow, at, dot, head, type Label, line, middle, outline, type Point, picture } from "./svg.ts";

/** Lengths in one unit of the caller's, the angle in degrees, 0 in line. The texts stand in the drawing as given. */
export type AdapterDrawing = {
  readonly lever: number;
  readonly adapter: number;
  readonly angle: number;
  readonly texts: {
    readonly set: string;
    readonly wanted: string;
    readonly lever: string;
    readonly adapter: string;
    readonly angle: string;
    readonly grip: string;
  };
};

const TEXT = 30;
const WIDE = 430;
/** An adapter drawn shorter could not carry its figure; one longer leaves no room for the wrench's. */
const [SHORTEST, LONGEST] = [0.24, 0.5];
/** How far dimension lines stand off; farther where the adapter is folded back over the wrench. */
const [NEAR, FAR] = [62, 104];
const FOLDED = 150;

/** The drawing as SVG. To scale, unless the adapter would be too short to see or as long as the picture. */
export function drawAdapter({ lever, adapter, angle, texts }: AdapterDrawing): string {
  const share = Math.min(LONGEST, Math.max(SHORTEST, adapter / (lever + adapter)));
  const [long, short] = [WIDE * (1 - share), WIDE * share];
  const [folded, inLine] = [angle > FOLDED, angle === 0];
  const square: Point = { x: 0, y: 0 };
  const grip: Point = { x: -long, y: 0 };
  // Folded back it would lie on the wrench: moved aside.
  const start: Point = { x: 0, y: folded ? -16 : 0 };
  const along = around({ x: 0, y: 0 }, 1, angle);
  const fastener = at(start, along, short);
  // The wrench is measured below; the adapter on its side away from the wrench.
  const below: Point = { x: 0, y: 1 };
  const beside: Point = { x: -along.y, y: along.x };
  const lengths = { lever: measured(grip, square, below, NEAR), adapter: measured(start, fastener, beside, folded ? FAR : NEAR) };
  const reach = Math.max(130, short * Math.max(0, along.x) + 50);
  const marks = [
    ...[lengths.lever.lines, lengths.adapter.lines],
    ...(inLine ? [] : [line(square, { x: reach, y: 0 }, INK.quiet, 2, "7 7"), arc(square, 50, 0, angle, INK.quiet)]),
    line(grip, square, INK.first, 14),
    ...[line(start, fastener, INK.second, 22), line(start, fastener, INK.ground, 8)],
    ...[dot(square, 11, INK.line), dot(grip, 6, INK.ground)],
    ...[hexagon(fastener, 17), turning(fastener, angle)],
    arrow(at(grip, below, -14), at(grip, below, -78), INK.line, "last"),
  ];
  const labels: Label[] = [
    // Over the wrench, or under it where the adapter leans back over.
    { text: texts.set, at: { x: -long * (folded ? 0.68 : 0.5), y: angle > 100 ? 46 : -24 }, anchor: "middle", size: TEXT, color: INK.first },
    { text: texts.lever, at: at(lengths.lever.middle, below, TEXT + 8), anchor: "middle", size: TEXT, color: INK.line },
    { text: texts.adapter, ...adapterLabel(angle, lengths.adapter.middle, lengths.adapter.from), size: TEXT, color: INK.line },
    { text: texts.grip, at: { x: grip.x - 12, y: -90 }, anchor: "start", size: TEXT - 6, color: INK.quiet },
    { text: texts.wanted, at: { x: fastener.x, y: fastener.y - (folded ? 176 : 62) }, anchor: "middle", size: TEXT, color: INK.line },
    ...(inLine ? [] : [{ text: texts.angle, at: { x: reach + 10, y: 9 }, anchor: "start", size: TEXT - 4, color: INK.quiet } as const]),
  ];
  return picture(marks, labels, [grip, square, fastener, ...lengths.lever.ends, ...lengths.adapter.ends, around(fastener, 50, 90), around(fastener, 50, 0)]);
}

type Measured = { readonly lines: string; readonly from: Point; readonly middle: Point; readonly ends: readonly Point[] };

/** A dimension line beside two points, with the lines that lead to it. */
function measured(a: Point, b: Point, side: Point, off: number): Measured {
  const [from, to] = [at(a, side, off), at(b, side, off)];
  const leads = [a, b].map((point) => line(at(point, side, 18), at(point, side, off + 12), INK.quiet, 1.5));
  return {
    lines: [...leads, arrow(from, to, INK.line, "both")].join(""),
    from,
    middle: middle(from, to),
    ends: [at(a, side, off + 12), at(b, side, off + 12)],
  };
}

/** Under its dimension line in line or nearly so, beside it where it rises, over it where it is folded back. */
function adapterLabel(angle: number, centre: Point, from: Point): Pick<Label, "at" | "anchor"> {
  if (angle > 170) return { at: { x: centre.x, y: centre.y - 20 }, anchor: "middle" };
  if (angle > FOLDED) return { at: { x: centre.x + 10, y: centre.y - 16 }, anchor: "start" };
  if (angle === 0) return { at: { x: centre.x, y: centre.y + TEXT + 8 }, anchor: "middle" };
  if (angle < 70) return { at: { x: Math.max(from.x, 14), y: NEAR + TEXT + 8 }, anchor: "start" };
  return { at: { x: centre.x + 16, y: centre.y + 8 }, anchor: "start" };
}

/** The fastener's head. */
const hexagon = (centre: Point, radius: number): string =>
  outline(
    [0, 60, 120, 180, 240, 300].map((degrees) => around(centre, radius, degrees)),
    INK.ground,
    INK.line,
  );

/** Which way it is turned: to the right, as a hand at the grip pulls it. */
function turning(centre: Point, angle: number): string {
  const [from, to] = [angle + 100, angle - 100];
  const tip = around(centre, 42, to);
  return arc(centre, 42, from, to + 12, INK.second) + head(tip, around({ x: 0, y: 0 }, 1, to - 90), INK.second);
}
