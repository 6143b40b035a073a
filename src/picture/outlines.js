// Letters as outlines: the drawing library reads the whole font file anew for each letter that it draws, which took half to two thirds of the time of drawing.
// Advances are those that `letters.ts` counts by, with no kerning: a text stands exactly as wide as its room was worked out. Plain JavaScript, as the drawing thread.

import { readFileSync } from "node:fs";
// The module as such: read as a script for modules, its names alone would take a tenth of a second to find.
import { parse } from "opentype.js/dist/opentype.min.mjs";

/** Letters that join, change their form or run from the right are left to the library, which shapes them. */
const SHAPED = /[\p{M}\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Nko}\p{Script=Lao}\p{Script=Tifinagh}\p{Cf}]/u;
/** Stands for a letter that the font lacks: no empty box, which looks like a fault. */
export const SUBSTITUTE = "\u2022";

const TEXT = /<text ([^>]*)>([^<]*)<\/text>/gu;
/** Letters with what belongs to them, as a reader counts them: one sign stands for each. */
const letters = new Intl.Segmenter("en", { granularity: "grapheme" });

/**
 * Makes drawings whose texts are outlines, but for those that need shaping, and whose letters are all in the font.
 * @param {string} file of the font
 * @returns {(svg: string) => { svg: string, lacking: boolean }} `lacking`: a substitute stands in it
 */
export function outliner(file) {
  const font = fontOf(file);
  return (svg) => {
    let lacking = false;
    const made = svg.replace(TEXT, (_, attributes, escaped) => {
      const given = unescaped(escaped);
      const text = drawable(given, font);
      lacking ||= text !== given;
      return SHAPED.test(text) ? `<text ${attributes}>${escapedAnew(text)}</text>` : outlined(attributes, text, font);
    });
    return { svg: made, lacking };
  };
}

/** @param {string} escaped */
const unescaped = (escaped) => escaped.replace(/&#(\d+);/gu, (_, code) => String.fromCodePoint(Number(code)));
/** @param {string} text */
const escapedAnew = (text) => text.replace(/[&<>"]/gu, (c) => `&#${c.codePointAt(0)};`);

/** @typedef {{ advance: number, x: number, y: number, d: string }} Letter `d`: from its first point on, each command from where the last ended */
/** @typedef {{ em: number, letterOf: (letter: string) => Letter | null }} Font `letterOf`: null where the font has none */

/** A text with a sign for each letter that the font lacks. @param {string} text @param {Font} font */
function drawable(text, { letterOf }) {
  if ([...text].every((each) => letterOf(each) !== null)) return text;
  return [...letters.segment(text)].map(({ segment }) => ([...segment].every((each) => letterOf(each) !== null) ? segment : SUBSTITUTE)).join("");
}

/** @param {string} attributes @param {string} text @param {Font} font @returns {string} */
function outlined(attributes, text, { em, letterOf }) {
  let [pen, d] = [0, ""];
  for (const each of text) {
    const letter = letterOf(each);
    if (letter === null) continue;
    if (letter.d !== "") d += `M${pen + letter.x} ${letter.y}${letter.d}`;
    pen += letter.advance;
  }
  const [x = 0, y = 0, size = 0] = ["x", "y", "font-size"].map((name) => Number(attribute(attributes, name)));
  const anchor = attribute(attributes, "text-anchor");
  const scale = size / em;
  const left = x - (anchor === "end" ? 1 : anchor === "middle" ? 0.5 : 0) * pen * scale;
  const stroke = attribute(attributes, "stroke");
  // A rim lies under its letters, as wide as it was asked for whatever their scale.
  const rim = stroke === null ? "" : ` paint-order="stroke" stroke="${stroke}" stroke-width="${Number(attribute(attributes, "stroke-width")) / scale}"`;
  return `<path transform="matrix(${scale} 0 0 ${-scale} ${left} ${y})" fill="${attribute(attributes, "fill")}"${rim} d="${d}"/>`;
}

/** @param {string} attributes @param {string} name @returns {string | null} */
const attribute = (attributes, name) => new RegExp(`(?:^|\\s)${name}="([^"]*)"`, "u").exec(attributes)?.[1] ?? null;

/** @param {string} file @returns {Font} */
function fontOf(file) {
  const bytes = readFileSync(file);
  // Each letter is read when it is first drawn.
  const font = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), { lowMemory: true });
  /** @type {Map<string, Letter | null>} */
  const known = new Map();
  return {
    em: font.unitsPerEm,
    letterOf: (letter) => {
      const ready = known.get(letter);
      if (ready !== undefined) return ready;
      const glyph = font.charToGlyph(letter);
      const made = glyph.index === 0 ? null : { advance: glyph.advanceWidth ?? 0, ...relative(glyph.path.commands) };
      known.set(letter, made);
      return made;
    },
  };
}

/** @param {readonly import("opentype.js").PathCommand[]} commands in the font's units @returns {{ x: number, y: number, d: string }} */
function relative(commands) {
  let [px, py, sx, sy, d] = [0, 0, 0, 0, ""];
  /** @type {{ x: number, y: number } | null} */
  let first = null;
  for (const c of commands) {
    if (c.type === "Z") {
      d += "z";
      [px, py] = [sx, sy];
      continue;
    }
    const step = `${c.x - px} ${c.y - py}`;
    if (c.type === "M") {
      if (first === null) first = { x: c.x, y: c.y };
      else d += `m${step}`;
      [sx, sy] = [c.x, c.y];
    } else if (c.type === "L") d += `l${step}`;
    else if (c.type === "Q") d += `q${c.x1 - px} ${c.y1 - py} ${step}`;
    else d += `c${c.x1 - px} ${c.y1 - py} ${c.x2 - px} ${c.y2 - py} ${step}`;
    [px, py] = [c.x, c.y];
  }
  return { x: first?.x ?? 0, y: first?.y ?? 0, d };
}
