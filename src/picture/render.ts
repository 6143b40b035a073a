// SVG to PNG in a worker thread, which is started by the first picture and holds up nobody's exit.

import { createRequire } from "node:module";
import { Worker } from "node:worker_threads";
import { EDGE, INK, SMALL } from "./look.ts";
import { words } from "./page.ts";

/** What the thread is started with: where the font lies, and what it is called. */
export type WorkerStart = { readonly font: string; readonly family: string };
/** What it is asked. `foot`: drawn under it where a sign stands for letters that the font lacks. */
export type Asked = { readonly id: number; readonly svg: string; readonly foot: { readonly high: number; readonly svg: string }; readonly width: number };
type Drawn = { readonly id: number } & ({ readonly png: Uint8Array } | { readonly fault: string });

/** A picture that takes longer has gone wrong; the words are answered without it. */
const PATIENCE = 4000;

type Waiting = { readonly done: (png: Uint8Array) => void; readonly failed: (error: Error) => void; readonly timer: NodeJS.Timeout };
type Thread = { readonly worker: Worker; readonly waiting: Map<number, Waiting> };

let thread: Thread | null = null;
let last = 0;

/**
 * Draws an SVG as a PNG.
 * @param width of the PNG in pixels; the height follows
 * @param lacking what is written at its foot where a sign stands for letters that the font lacks
 * @throws Error when the SVG cannot be drawn, or not in time
 */
export function render(svg: string, width: number, lacking: string): Promise<Uint8Array> {
  thread ??= started();
  const { worker, waiting } = thread;
  const id = ++last;
  return new Promise((done, failed) => {
    const timer = setTimeout(() => end(worker, new Error(`a picture was not drawn in ${PATIENCE} ms`)), PATIENCE);
    waiting.set(id, { done, failed, timer });
    // Held only while something is asked of it.
    worker.ref();
    worker.postMessage({ id, svg, foot: footOf(lacking), width } satisfies Asked);
  });
}

/** A line under a drawing, on the same ground however wide that is. */
const footOf = (text: string): Asked["foot"] => ({
  high: SMALL + EDGE,
  svg: `<rect width="9999" height="${SMALL + EDGE}" fill="${INK.ground}"/>${words(text, EDGE, SMALL, SMALL, INK.quiet)}`,
});

function started(): Thread {
  const require = createRequire(import.meta.url);
  const worker = new Worker(new URL("./worker.js", import.meta.url), {
    // The house's own loader and flags are not needed there, and cost a start.
    execArgv: [],
    workerData: {
      font: require.resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf"),
      family: "DejaVu Sans",
    } satisfies WorkerStart,
  });
  worker.unref();
  const made: Thread = { worker, waiting: new Map() };
  worker.on("message", (drawn: Drawn) => {
    const asked = made.waiting.get(drawn.id);
    if (asked === undefined) return;
    made.waiting.delete(drawn.id);
    clearTimeout(asked.timer);
    if (made.waiting.size === 0) worker.unref();
    if ("png" in drawn) asked.done(drawn.png);
    else asked.failed(new Error(drawn.fault));
  });
  worker.on("error", (error) => end(worker, error));
  worker.on("exit", () => end(worker, new Error("the drawing thread ended")));
  return made;
}

/** Whatever waits for a thread that is lost has failed; the next picture starts a fresh one. */
function end(worker: Worker, error: Error): void {
  if (thread?.worker !== worker) return;
  const { waiting } = thread;
  thread = null;
  for (const { failed, timer } of waiting.values()) {
    clearTimeout(timer);
    failed(error);
  }
  waiting.clear();
  void worker.terminate();
}
