// Runs in a thread of its own: an SVG comes in, a PNG goes out. Plain JavaScript, so that the thread starts without a loader, from the sources as from dist.
// The font is handed over, since a bare machine may have none and text would be missing.

import { parentPort, workerData } from "node:worker_threads";
import { Resvg } from "@resvg/resvg-js";
import { outliner } from "./outlines.js";
import { pngOf } from "./png.js";

/** @type {import("./render.ts").WorkerStart} */
const { font, family } = workerData;
const outlines = outliner(font);

/**
 * A drawing made higher at its foot.
 * @param {string} svg
 * @param {{ readonly high: number, readonly svg: string }} foot
 */
const withFoot = (svg, foot) =>
  svg
    .replace(/viewBox="(\S+) (\S+) (\S+) (\S+)"/u, (_, x, y, wide, high) => `viewBox="${x} ${y} ${wide} ${Number(high) + foot.high}"`)
    .replace(/<\/svg>$/u, () => {
      const [, x, y, high] = /viewBox="(\S+) (\S+) \S+ (\S+)"/u.exec(svg) ?? [];
      return `<g transform="translate(${x} ${Number(y) + Number(high)})">${foot.svg}</g></svg>`;
    });

parentPort?.on("message", (/** @type {import("./render.ts").Asked} */ { id, svg, foot, width }) => {
  try {
    const drawing = outlines(svg);
    const image = new Resvg(drawing.lacking ? withFoot(drawing.svg, { ...foot, svg: outlines(foot.svg).svg }) : drawing.svg, {
      fitTo: { mode: "width", value: width },
      background: "white",
      font: { loadSystemFonts: false, fontFiles: [font], defaultFontFamily: family },
    });
    const drawn = image.render();
    parentPort?.postMessage({ id, png: pngOf(drawn.pixels, drawn.width, drawn.height) });
  } catch (error) {
    parentPort?.postMessage({ id, fault: error instanceof Error ? error.message : String(error) });
  }
});
