// SVG to PNG in a worker thread, which is started by the first picture and holds up nobody's exit.

import { createRequire } from "node:module";
import { Worker } from "node:worker_threads";

/** What the thread is started with: where the fonts lie, and what the one of all that is not said otherwise is called. */
export type WorkerStart = { readonly fonts: readonly string[]; readonly family: string };
/** What it is asked. */
export type Asked = { readonly id: number; readonly svg: string; readonly width: number };
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
 * @throws Error when the SVG cannot be drawn, or not in time
 */
export function render(svg: string, width: number): Promise<Uint8Array> {
  thread ??= started();
  const { worker, waiting } = thread;
  const id = ++last;
  return new Promise((done, failed) => {
    const timer = setTimeout(() => end(worker, new Error(`a picture was not drawn in ${PATIENCE} ms`)), PATIENCE);
    waiting.set(id, { done, failed, timer });
    // Held only while something is asked of it.
    worker.ref();
    worker.postMessage({ id, svg, width } satisfies Asked);
  });
}

function started(): Thread {
  const require = createRequire(import.meta.url);
  const worker = new Worker(new URL("./worker.js", import.meta.url), {
    // The house's own loader and flags are not needed there, and cost a start.
    execArgv: [],
    workerData: {
      fonts: [require.resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf"), require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf")],
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
