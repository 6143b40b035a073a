// Letters as outlines, held against the drawing library's own text; and what is drawn for letters that the font lacks.

import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { widthOf } from "../../src/picture/letters.ts";
import { INK } from "../../src/picture/look.ts";
import { words } from "../../src/picture/page.ts";
import { render } from "../../src/picture/render.ts";
import { outliner, SUBSTITUTE } from "./outlined.ts";

const font = createRequire(import.meta.url).resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf");
const outlines = outliner(font);
const [WIDE, HIGH] = [700, 80];
const svgOf = (inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${HIGH}" font-family="DejaVu Sans"><rect width="${WIDE}" height="${HIGH}" fill="${INK.ground}"/>${inside}</svg>`;
const pixels = (svg: string) => new Resvg(svg, { font: { loadSystemFonts: false, fontFiles: [font], defaultFontFamily: "DejaVu Sans" } }).render().pixels;
/** The mean difference of a channel, of what is inked at all. */
function apart(a: Uint8Array, b: Uint8Array): number {
  const plain = pixels(svgOf(""));
  const inked = [...a.keys()].filter((n) => a[n] !== plain[n] || b[n] !== plain[n]);
  return inked.reduce((sum, n) => sum + Math.abs((a[n] ?? 0) - (b[n] ?? 0)), 0) / Math.max(1, inked.length);
}

describe("letters as outlines", () => {
  test.each(["start", "middle", "end"] as const)("stand where the library puts them: %s", (anchor) => {
    // Letters without a pair that the library would move together.
    for (const text of ["hnm 0123", "äöü ß ° ½", "Жшд ΩΔ", "& < > 8"]) {
      const svg = svgOf(words(text, 350, 50, 30, INK.line, anchor));
      const made = outlines(svg);
      expect([made.lacking, made.svg.includes("<text")]).toEqual([false, false]);
      expect(apart(pixels(made.svg), pixels(svg))).toBeLessThan(6);
    }
    // The measure can fail: half a pixel aside is more.
    const [a, b] = [words("hnm 0123", 350, 50), words("hnm 0123", 350.5, 50)].map((text) => pixels(outlines(svgOf(text)).svg));
    expect(apart(a ?? new Uint8Array(), b ?? new Uint8Array())).toBeGreaterThan(10);
  });
  test("are as wide as their room was worked out, kerned pairs, too", () => {
    for (const text of ["AVAVAV To. Ty", "Front brake pads"]) {
      const [, left] = /matrix\(\S+ 0 0 \S+ (\S+) /u.exec(outlines(svgOf(words(text, 600, 50, 30, INK.line, "end"))).svg) ?? [];
      expect(Number(left)).toBeCloseTo(600 - widthOf(text, 30), 6);
    }
  });
  test("have a rim under them as wide as asked for", () => {
    const svg = svgOf(words("limit", 60, 50).replace("<text ", `<text paint-order="stroke" stroke="${INK.second}" stroke-width="7" `));
    expect(apart(pixels(outlines(svg).svg), pixels(svg))).toBeLessThan(6);
  });
  test("of scripts that join or run from the right are left to the library", () => {
    for (const text of ["\u0645\u0631\u062d\u0628\u0627", "\u05e9\u05dc\u05d5\u05dd", "e\u0301"]) {
      const made = outlines(svgOf(words(text, 20, 50)));
      expect([made.lacking, made.svg]).toEqual([false, expect.stringContaining(`>${text}</text>`)]);
    }
  });
});

describe("letters that the font lacks", () => {
  const same = (a: string, b: string): void => expect(outlines(svgOf(words(a, 20, 50))).svg).toBe(outlines(svgOf(words(b, 20, 50))).svg);
  test("have a sign each, however many code points a letter is of; the others stand", () => {
    expect(outlines(svgOf(words("日本号", 20, 50))).lacking).toBe(true);
    same("日本号", SUBSTITUTE.repeat(3));
    same("Heron 日", `Heron ${SUBSTITUTE}`);
    // A motorcycle with a variation selector, and a family of one letter that is of five code points.
    same("\u{1F3CD}\uFE0F Wren", `${SUBSTITUTE} Wren`);
    same("\u{1F468}\u200D\u{1F469}\u200D\u{1F467}", SUBSTITUTE);
    expect(outlines(svgOf(words("• Heron", 20, 50))).lacking).toBe(false);
  });
  test("are explained at the picture's foot, and only they", async () => {
    const high = async (text: string): Promise<number> => Buffer.from(await render(svgOf(words(text, 20, 50)), WIDE, "• stands for a letter")).readUInt32BE(20);
    expect(await high("Heron")).toBe(HIGH);
    expect(await high("日本号")).toBe(HIGH + 53);
    const png = Buffer.from(await render(svgOf(words("日本号", 20, 50)), WIDE, "• stands for a letter"));
    const plain = Buffer.from(await render(svgOf(words("日本号", 20, 50)), WIDE, ""));
    // The words are in it, not room alone.
    expect(png.length).toBeGreaterThan(plain.length + 300);
  });
});
