// A page as wide as a phone: a title, what is drawn in bands from top to bottom, and notes under it.

import { wrapped } from "./letters.ts";
import { EDGE, INK, INNER, SMALL, TEXT, WIDE } from "./look.ts";
import { escaped, n } from "./svg.ts";

/** A band of a page: what is drawn in it for a given top, and how high it is. */
export type Band = { readonly high: number; readonly draw: (top: number) => string };

type Anchor = "start" | "middle" | "end";

/** Text at a point, its foot on it. */
export const words = (text: string, x: number, y: number, size: number = TEXT, color: string = INK.line, anchor: Anchor = "start"): string =>
  `<text x="${n(x)}" y="${n(y)}" font-size="${size}" text-anchor="${anchor}" fill="${color}">${escaped(text)}</text>`;

/** A text over the page's width, in as many lines as it takes. */
export function paragraph(text: string, size: number = SMALL, color: string = INK.quiet): Band {
  const lines = wrapped(text, size, INNER);
  const step = size * 1.3;
  return { high: lines.length * step, draw: (top) => lines.map((line, at) => words(line, EDGE, top + step * at + size, size, color)).join("") };
}

/** From a notice's frame to its words. */
const FRAMED = 16;
/** A text that must not be missed: framed, in as many lines as it takes. */
export function notice(text: string): Band {
  const lines = wrapped(text, TEXT, INNER - 2 * FRAMED);
  const step = TEXT * 1.3;
  const high = lines.length * step + FRAMED;
  return {
    high: high + FRAMED,
    draw: (top) =>
      `<rect x="${n(EDGE)}" y="${n(top)}" width="${n(INNER)}" height="${n(high)}" fill="${INK.ground}" stroke="${INK.second}" stroke-width="4"/>${lines
        .map((line, at) => words(line, EDGE + FRAMED, top + FRAMED / 2 + step * at + TEXT))
        .join("")}`,
  };
}

/** Nothing drawn, so much high. */
export const gap = (high: number): Band => ({ high, draw: () => "" });

/** The page as SVG: its ground is drawn, so that it reads the same before a light and a dark screen. @param above what stands before the title */
export function page(title: string, bands: readonly Band[], notes: readonly string[], above: readonly Band[] = []): string {
  const all = [
    ...above,
    paragraph(title, TEXT, INK.line),
    gap(14),
    ...bands,
    ...(notes.length === 0 ? [] : [gap(16)]),
    ...notes.map((note) => paragraph(note)),
  ];
  let top = EDGE;
  const drawn = all.map((band) => {
    const here = band.draw(top);
    top += band.high;
    return here;
  });
  const high = Math.ceil(top + EDGE);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${high}" font-family="DejaVu Sans"><rect width="${WIDE}" height="${high}" fill="${INK.ground}"/>${drawn.join("")}</svg>`;
}
