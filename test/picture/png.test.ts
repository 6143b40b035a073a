// The files that the drawing thread writes, read back by a PNG reader that is not ours: the drawing library's own, which refuses a file whose checks fail.

import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { Resvg } from "@resvg/resvg-js";
import { expect, test } from "vitest";
import { render } from "../../src/picture/render.ts";
import { outliner } from "./outlined.ts";

const require = createRequire(import.meta.url);
const font = require.resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf");
const outlines = outliner(font);
const drawn = (svg: string) =>
  new Resvg(outlines(svg).svg, { background: "white", font: { loadSystemFonts: false, fontFiles: [font], defaultFontFamily: "DejaVu Sans" } }).render();
const svgOf = (wide: number, high: number, inside: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}">${inside}</svg>`;
const colorsIn = (pixels: Uint8Array): number => new Set(new Uint32Array(pixels.slice().buffer)).size;

/** How far any channel of any pixel is from what was drawn, and how large the file is. */
async function written(svg: string): Promise<{ readonly colors: number; readonly off: number; readonly bytes: number }> {
  const { pixels, width, height } = drawn(svg);
  const png = await render(svg, width, "");
  const image = `<image width="${width}" height="${height}" image-rendering="optimizeSpeed" href="data:image/png;base64,${Buffer.from(png).toString("base64")}"/>`;
  const back = drawn(svgOf(width, height, image)).pixels;
  return { colors: colorsIn(pixels), off: pixels.reduce((most, value, at) => Math.max(most, Math.abs(value - (back[at] ?? 999))), 0), bytes: png.length };
}

test("few colours come back as they were, pixel by pixel", async () => {
  const text = `<text x="9" y="50" font-size="30" text-anchor="start" fill="#1a1a1a">Rear tread 3.4 mm</text>`;
  const { colors, off } = await written(svgOf(301, 77, `<rect width="301" height="77" fill="#faf8f4"/>${text}`));
  expect(colors).toBeGreaterThan(20);
  expect(off).toBe(0);
});

test("more colours than a palette holds come back close to what they were", async () => {
  const stop = (at: number, color: string) => `<stop offset="${at}" stop-color="${color}"/>`;
  const ramp = (id: string, to: string, more: string) => `<linearGradient id="${id}" ${more}>${stop(0, to)}${stop(1, "#faf8f4")}</linearGradient>`;
  const ramps = `<defs>${ramp("a", "#0072b2", "")}${ramp("b", "#d55e00", "")}</defs>`;
  const { colors, off } = await written(
    svgOf(600, 40, `${ramps}<rect width="600" height="20" fill="url(#a)"/><rect y="20" width="600" height="20" fill="url(#b)"/>`),
  );
  expect(colors).toBeGreaterThan(256);
  expect(off).toBeGreaterThan(0);
  expect(off).toBeLessThan(8);
});

test("the house's own drawings lose no more than the last two bits of a channel, and stay small", async () => {
  const folder = path.join(import.meta.dirname, "__snapshots__");
  const svgs = readdirSync(folder).flatMap((name) => readFileSync(path.join(folder, name), "utf8").match(/<svg [\s\S]*?<\/svg>/gu) ?? []);
  expect(svgs.length).toBeGreaterThan(3);
  for (const svg of svgs) {
    const { off, bytes } = await written(svg);
    expect(off).toBeLessThanOrEqual(3);
    expect(bytes).toBeLessThan(100_000);
  }
});
