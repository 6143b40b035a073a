// The few marks that drawings are made of. Lines and text; no shapes that stand for a state.

import { widthOf } from "./letters.ts";
import { INK } from "./look.ts";

export type Point = { readonly x: number; readonly y: number };

/** The point so far along from another. */
export const at = (from: Point, along: Point, by: number): Point => ({ x: from.x + along.x * by, y: from.y + along.y * by });
export const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

export const n = (value: number): string => String(Math.round(value * 10) / 10);
export const escaped = (text: string): string => text.replace(/[&<>"]/gu, (c) => `&#${c.codePointAt(0)};`);

export function line(a: Point, b: Point, color: string, width: number, dashes = ""): string {
  const dashed = dashes === "" ? "" : ` stroke-dasharray="${dashes}"`;
  return `<line x1="${n(a.x)}" y1="${n(a.y)}" x2="${n(b.x)}" y2="${n(b.y)}" stroke="${color}" stroke-width="${width}" stroke-linecap="round"${dashed}/>`;
}

export const dot = ({ x, y }: Point, radius: number, color: string): string => `<circle cx="${n(x)}" cy="${n(y)}" r="${radius}" fill="${color}"/>`;

/** A closed outline. */
export const outline = (corners: readonly Point[], fill: string, stroke: string): string =>
  `<polygon points="${corners.map(({ x, y }) => `${n(x)},${n(y)}`).join(" ")}" fill="${fill}" stroke="${stroke}" stroke-width="3"/>`;

/** A line with an arrowhead at each end, for a dimension; at one end only for a pull. */
export function arrow(a: Point, b: Point, color: string, ends: "both" | "last"): string {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const along = long === 0 ? { x: 1, y: 0 } : { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
  const back = { x: -along.x, y: -along.y };
  return [line(a, b, color, 2.5), head(b, along, color), ...(ends === "both" ? [head(a, back, color)] : [])].join("");
}

/** A filled arrowhead with its tip at a point. */
export function head(tip: Point, along: Point, color: string): string {
  const across = { x: -along.y, y: along.x };
  const base = at(tip, along, -15);
  const corners = [tip, at(base, across, 6), at(base, across, -6)];
  return `<polygon points="${corners.map(({ x, y }) => `${n(x)},${n(y)}`).join(" ")}" fill="${color}"/>`;
}

/** Part of a circle round a point, from one angle to another in degrees, counted as on paper: anticlockwise from the right. */
export function arc(centre: Point, radius: number, from: number, to: number, color: string): string {
  const [a, b] = [around(centre, radius, from), around(centre, radius, to)];
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  return `<path d="M ${n(a.x)} ${n(a.y)} A ${n(radius)} ${n(radius)} 0 ${large} ${to > from ? 0 : 1} ${n(b.x)} ${n(b.y)}" fill="none" stroke="${color}" stroke-width="2.5"/>`;
}

/** The point of a circle at an angle in degrees, anticlockwise from the right; y runs down. */
export const around = ({ x, y }: Point, radius: number, degrees: number): Point => ({
  x: x + radius * Math.cos((degrees * Math.PI) / 180),
  y: y - radius * Math.sin((degrees * Math.PI) / 180),
});

export type Label = {
  readonly text: string;
  readonly at: Point;
  readonly anchor: "start" | "middle" | "end";
  readonly size: number;
  readonly color: string;
};

const label = (l: Label): string =>
  `<text x="${n(l.at.x)}" y="${n(l.at.y)}" font-size="${l.size}" text-anchor="${l.anchor}" fill="${l.color}">${escaped(l.text)}</text>`;

/** The room that a label takes. */
function roomOf({ text, at: { x, y }, anchor, size }: Label): readonly [Point, Point] {
  const wide = widthOf(text, size);
  const left = anchor === "start" ? x : anchor === "end" ? x - wide : x - wide / 2;
  return [
    { x: left, y: y - size },
    { x: left + wide, y: y + size * 0.3 },
  ];
}

/** Space round a drawing. */
const EDGE = 24;

/** Marks and labels as a whole picture that just holds them. @param points what must be inside besides the labels */
export function picture(marks: readonly string[], labels: readonly Label[], points: readonly Point[]): string {
  const all = [...points, ...labels.flatMap(roomOf)];
  const [left, right] = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ x }) => x))];
  const [top, bottom] = [Math.min(...all.map(({ y }) => y)), Math.max(...all.map(({ y }) => y))];
  const [x, y, wide, high] = [left - EDGE, top - EDGE, right - left + 2 * EDGE, bottom - top + 2 * EDGE].map(n);
  const ground = `<rect x="${x}" y="${y}" width="${wide}" height="${high}" fill="${INK.ground}"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${wide} ${high}" font-family="DejaVu Sans">${ground}${marks.join("")}${labels.map(label).join("")}</svg>`;
}
