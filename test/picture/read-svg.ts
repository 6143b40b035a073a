// What stands in a drawing and where, read back from its SVG.

import { expect } from "vitest";
import { widthOf } from "../../src/picture/letters.ts";
import { INK } from "../../src/picture/look.ts";

export type Box = { readonly text: string; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const number = (tag: string, name: string): number => Number(new RegExp(`\\b${name}="([-\\d.]+)"`, "u").exec(tag)?.[1] ?? Number.NaN);
const text = (tag: string, name: string): string => new RegExp(`\\b${name}="([^"]*)"`, "u").exec(tag)?.[1] ?? "";
const tags = (svg: string, name: string): readonly string[] => svg.match(new RegExp(`<${name} [^>]*>`, "gu")) ?? [];

/** The room that each text takes; a letter's foot reaches a quarter of its size under its line. */
export const textsOf = (svg: string): readonly Box[] =>
  [...svg.matchAll(/(<text [^>]*>)([^<]*)</gu)].map(([, tag = "", said = ""]) => {
    const plain = said.replace(/&#(\d+);/gu, (_, code) => String.fromCodePoint(Number(code)));
    const [size, anchor] = [number(tag, "font-size"), text(tag, "text-anchor")];
    const wide = widthOf(plain, size);
    const left = number(tag, "x") - (anchor === "start" ? 0 : anchor === "end" ? wide : wide / 2);
    return { text: plain.replaceAll("\u00a0", " "), left, right: left + wide, top: number(tag, "y") - size * 0.78, bottom: number(tag, "y") + size * 0.22 };
  });

export const circlesOf = (svg: string) =>
  tags(svg, "circle").map((tag) => ({ x: number(tag, "cx"), y: number(tag, "cy"), r: number(tag, "r"), color: text(tag, "fill") }));
export const linesOf = (svg: string) =>
  tags(svg, "line").map((tag) => ({
    ...{ x1: number(tag, "x1"), y1: number(tag, "y1"), x2: number(tag, "x2"), y2: number(tag, "y2") },
    ...{ color: text(tag, "stroke"), width: number(tag, "stroke-width"), dashes: text(tag, "stroke-dasharray") },
  }));
export const polygonsOf = (svg: string) =>
  tags(svg, "polygon").map((tag) => ({
    points: text(tag, "points")
      .split(" ")
      .map((point) => point.split(",").map(Number) as [number, number]),
    color: text(tag, "fill"),
  }));
export const pathsOf = (svg: string) => tags(svg, "path").map((tag) => ({ d: text(tag, "d"), fill: text(tag, "fill"), stroke: text(tag, "stroke") }));
export const boxOf = (svg: string): readonly [number, number, number, number] => (/viewBox="([^"]*)"/u.exec(svg)?.[1]?.split(" ").map(Number) ?? []) as never;

/** Holds for every picture: nothing out of it, no text over another, no mark over a text, nothing but the house's inks, text only in those that can be read, no figure that is none. */
export function soundly(svg: string): void {
  const [x, y, wide, high] = boxOf(svg);
  const faults: string[] = [];
  const held = (what: string, ok: boolean): void => void (ok || faults.push(what));
  held("a figure that is none", Number.isFinite(wide) && Number.isFinite(high) && !/NaN|undefined|Infinity/u.test(svg.replace(/<text.*?<\/text>/gu, "")));
  const inside = (what: string, left: number, right: number, top: number, bottom: number): void =>
    held(`${what} out of the picture`, left >= x && right <= x + wide && top >= y && bottom <= y + high);
  const texts = textsOf(svg);
  for (const [n, a] of texts.entries()) {
    inside(a.text, a.left, a.right, a.top, a.bottom);
    for (const b of texts.slice(n + 1)) held(`“${a.text}” over “${b.text}”`, !(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom));
  }
  const marks = [
    ...circlesOf(svg).map(({ x: cx, y: cy, r }) => ({ cx, cy, r })),
    ...tags(svg, "rect")
      .filter((tag) => number(tag, "width") < 30 && number(tag, "height") < 30)
      .map((tag) => ({ cx: number(tag, "x") + number(tag, "width") / 2, cy: number(tag, "y") + number(tag, "height") / 2, r: number(tag, "width") / 2 })),
  ];
  for (const { cx, cy, r } of marks)
    for (const { text: said, left, right, top, bottom } of texts)
      held(`a mark over “${said}”`, !(cx + r > left && cx - r < right && cy + r > top && cy - r < bottom));
  for (const { x: cx, y: cy, r } of circlesOf(svg)) inside("a circle", cx - r, cx + r, cy - r, cy + r);
  for (const { x1, x2, y1, y2 } of linesOf(svg)) inside("a line", Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2));
  for (const { points } of polygonsOf(svg)) for (const [px, py] of points) inside("a corner", px, px, py, py);
  for (const { d } of pathsOf(svg))
    for (const [, px, py] of d.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/gu)) inside("a path", Number(px), Number(px), Number(py), Number(py));
  const inks: readonly string[] = Object.values(INK);
  for (const color of svg.match(/#[0-9a-f]{6}/gu) ?? []) held(`${color} is no ink`, inks.includes(color));
  for (const [, ink] of svg.matchAll(/<text [^>]*fill="([^"]*)"/gu)) held(`text in ${ink}`, ink === INK.line || ink === INK.quiet);
  expect(faults).toEqual([]);
}
