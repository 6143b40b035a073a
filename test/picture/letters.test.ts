// What the house knows of its font's letters, against the font's own table as a general library reads it.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import opentype from "opentype.js";
import { describe, expect, test } from "vitest";
import { cut, widthOf, wrapped } from "../../src/picture/letters.ts";

const file = readFileSync(createRequire(import.meta.url).resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf"));
const font = opentype.parse(file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength));
const advance = (letter: string): number => ((font.charToGlyph(letter).advanceWidth ?? 0) * 100) / font.unitsPerEm;

describe("the room of a text", () => {
  test("every letter of English and its neighbours, and every sign in use, is as wide as the font says", () => {
    const letters = [...Array.from({ length: 0x7e - 0x20 + 1 }, (_, n) => String.fromCodePoint(0x20 + n)), ..."äöüßéèàñøåłžç°·×µμ–—…“”‘’≥≤→½¼¾"];
    for (const letter of letters) expect([letter, widthOf(letter, 100)]).toEqual([letter, advance(letter)]);
  });
  test("a letter that is not listed is never taken for narrower than it stands", () => {
    for (const letter of "ЖшΩ漢🏍") expect(widthOf(letter, 100)).toBeGreaterThanOrEqual(advance(letter));
  });
  test("lines are no wider than asked for and lose no word, nor a letter of a word that is too wide alone", () => {
    const text = "Coolant hoses and radiator, Donaudampfschifffahrtsgesellschaftskapitän, tap";
    const lines = wrapped(text, 30, 200);
    for (const line of lines) expect(widthOf(line, 30)).toBeLessThanOrEqual(200);
    expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
    expect(wrapped("front pads", 30, 900)).toEqual(["front pads"]);
  });
  test("a figure and its unit stay on one line", () => {
    const text = "Say the air's temperature with a reading (33 psi front, outside 12 °C) and the weather is taken out, 34 N·m, 12 L/100 km.";
    for (let wide = 120; wide < 900; wide += 7)
      for (const line of wrapped(text, 25, wide)) {
        expect(line).not.toMatch(/\d$/u);
        expect(line).not.toMatch(/^(?:psi|°C|N·m|L\/100)/u);
      }
    expect(wrapped(text, 25, 400).join(" ").replaceAll("\u00a0", " ")).toBe(text);
  });
  test("what is cut says so and fits; what fits is not cut", () => {
    expect(cut("Engine oil", 30, widthOf("Engine oil", 30))).toBe("Engine oil");
    const short = cut("Engine oil and filter", 30, 150);
    expect(short.endsWith("…")).toBe(true);
    expect(widthOf(short, 30)).toBeLessThanOrEqual(150);
  });
});
