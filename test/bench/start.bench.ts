// From the command to the first answer, on an empty folder and again; and memory after the story.

import { spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { createInterface } from "node:readline";
import { type Bench, rowOf } from "./harness.ts";
import { residentMegabytes } from "./memory.ts";

const STORY = [
  '{"as":"m1","run":"/bike add name:Heron kind:chain-drive twin odometer:14,210 mi"}',
  '{"as":"m1","say":"14,820 mi on Heron"}',
  '{"as":"m1","run":"/due"}',
  '{"as":"m1","run":"/work did:oil and filter at:14,820 mi"}',
  '{"advance":"P400D"}',
  '{"as":"m1","run":"/due"}',
];

export const start: Bench = {
  name: "start",
  async rows() {
    const ready: number[] = [];
    const memory: number[] = [];
    for (let n = 0; n < 9; n++) {
      const file = path.join(mkdtempSync(path.join(tmpdir(), "tappet-start-")), "start.sqlite");
      const begun = performance.now();
      const child = spawn(process.execPath, ["src/start.js", "--lines", "--db", file, "--clock", "2026-11-25T10:00:00Z"], {
        stdio: ["pipe", "pipe", "inherit"],
      });
      const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
      child.stdin.write('{"as":"m1","run":"/help"}\n');
      await lines.next();
      ready.push(performance.now() - begun);
      for (const line of STORY) child.stdin.write(`${line}\n`);
      for (let done = 0; done < STORY.length + 1; ) {
        const next = await lines.next();
        if (next.done === true) break;
        if (JSON.parse(next.value).done === true) done++;
      }
      memory.push(await residentMegabytes(child.pid ?? 0));
      child.stdin.end();
      await new Promise((resolve) => child.once("close", resolve));
    }
    return [
      rowOf("start to first answer", "empty folder, as npm start does", "ms", ready),
      rowOf("resident memory after the story", "one process", "MB", memory),
    ];
  },
};
