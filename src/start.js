// npm start: runs Tappet built. Node reads some built files in a third of the time it takes over hundreds of sources through a loader.
// What is built lies in a folder named after the state of the sources, so that a change, an update or a branch is never run stale.

import { createHash } from "node:crypto";
import { existsSync, readdirSync, statSync } from "node:fs";
import { mkdir, rename, rm, stat } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const HOUSE = fileURLToPath(new URL("..", import.meta.url));
const SHELF = path.join(HOUSE, "node_modules", ".cache", "tappet");
/** Of earlier states these many are left: a process that runs from one may load more of it. */
const LEFT = 3;

/** @param {string} folder every file of it, by its path from the house */
const filesUnder = (folder) =>
  readdirSync(path.join(HOUSE, folder), { recursive: true, encoding: "utf8" })
    .map((name) => path.join(folder, name))
    .filter((name) => statSync(path.join(HOUSE, name)).isFile())
    .sort();

/** A name for the state of the sources and of the packages they are built with. */
function state() {
  const hash = createHash("sha256").update(process.version);
  for (const file of ["package-lock.json", ...["src", "commands", "migrations"].flatMap(filesUnder)]) {
    const { size, mtimeMs } = statSync(path.join(HOUSE, file));
    hash.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return hash.digest("hex").slice(0, 16);
}

/** @param {string} built is there only when it is whole */
async function build(built) {
  const { build } = await import("esbuild");
  const making = `${built}.${process.pid}`;
  const entries = { "src/run/main": "src/main.ts", "src/run/worker": "src/picture/worker.js" };
  const steps = filesUnder("migrations").map((file) => [file.replace(/\.ts$/, ""), file]);
  await mkdir(SHELF, { recursive: true });
  await build({
    absWorkingDir: HOUSE,
    entryPoints: { ...entries, ...Object.fromEntries(steps) },
    outdir: making,
    // As deep as in the sources: what looks for its neighbours finds them.
    chunkNames: "src/run/[name]-[hash]",
    ...{ bundle: true, splitting: true, format: "esm", platform: "node", packages: "external", logLevel: "silent" },
  });
  // Another start may have been quicker.
  await rename(making, built).catch(() => rm(making, { recursive: true, force: true }));
  await clear(path.basename(built));
}

/** @param {string} kept */
async function clear(kept) {
  const earlier = await Promise.all(
    readdirSync(SHELF)
      .filter((name) => name !== kept)
      .map(async (name) => ({ folder: path.join(SHELF, name), at: (await stat(path.join(SHELF, name))).mtimeMs })),
  );
  for (const { folder } of earlier.sort((a, b) => b.at - a.at).slice(LEFT)) await rm(folder, { recursive: true, force: true });
}

const built = path.join(SHELF, state());
const main = path.join(built, "src", "run", "main.js");
if (!existsSync(main)) await build(built).catch(() => undefined);
if (existsSync(main)) await import(pathToFileURL(main).href);
else {
  // Nothing can be written there: the sources are run as they are.
  await import("tsx");
  await import("./main.ts");
}
