// Runs in a thread of its own: an SVG comes in, a PNG goes out. Plain JavaScript, so that the thread starts without a loader, from the sources as from dist.
// The fonts are handed over, since a bare machine may have none and text would be missing.

import { parentPort, workerData } from "node:worker_threads";
import { Resvg } from "@resvg/resvg-js";
import { pngOf } from "./png.js";

/** @type {import("./render.ts").WorkerStart} */
const { fonts, family } = workerData;

parentPort?.on("message", (/** @type {import("./render.ts").Asked} */ { id, svg, width }) => {
  try {
    const image = new Resvg(svg, {
      fitTo: { mode: "width", value: width },
      background: "white",
      font: { loadSystemFonts: false, fontFiles: [...fonts], defaultFontFamily: family },
    });
    const drawn = image.render();
    parentPort?.postMessage({ id, png: pngOf(drawn.pixels, drawn.width, drawn.height) });
  } catch (error) {
    parentPort?.postMessage({ id, fault: error instanceof Error ? error.message : String(error) });
  }
});
