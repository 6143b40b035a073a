// Answers at the wrench, end to end: command line in, answer out, on a database with the member's wrenches in it; with a drawing, and the drawing alone.

import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import { parseCommandLine } from "../../src/chat/command-line.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { EventId, MemberId } from "../../src/core/ids.ts";
import { openRoom } from "../../src/open-room.ts";
import { drawAdapter } from "../../src/picture/adapter-drawing.ts";
import { render } from "../../src/picture/render.ts";
import { type Bench, rowOf } from "./harness.ts";

const TEXTS = { set: "set 59.7 N·m", wanted: "T = 65 N·m", lever: "L = 400 mm", adapter: "E = 50 mm", angle: "α = 45°", grip: "pull here" };
const WRENCHES = ["Small one range:5-25 Nm step:0.5", "Middle range:20-100 Nm step:1", "Big one range:60-300 Nm step:2"];

export const torque: Bench = {
  name: "torque",
  async rows() {
    const open = await openRoom({
      database: path.join(mkdtempSync(path.join(tmpdir(), "tappet-bench-")), "bench.sqlite"),
      frozen: instant("2026-11-25T10:00:00Z"),
      log: { error: (facts) => void process.stderr.write(`${JSON.stringify(facts)}\n`), info: () => undefined },
      supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp },
    });
    let n = 0;
    const from = () => ({
      ...{ member: "m1" as MemberId, name: null, where: { group: null, channel: "dm", id: "dm" } as const },
      ...{ event: `bench-${n++}` as EventId, admin: false, language: null },
    });
    const run = (line: string) => open.room.hear({ ...from(), kind: "run", ...parseCommandLine(line, COMMANDS) });
    const say = (text: string) => open.room.hear({ ...from(), kind: "say", message: `bench-message-${n}`, text, addressed: true, answers: null });
    for (const wrench of WRENCHES) await run(`/torque wrench-add name:${wrench}`);
    const started = performance.now();
    await run("/torque set target:65 Nm adapter:50 mm lever:400 mm angle:45");
    const first = performance.now() - started;
    const rows = [
      rowOf("answer at the wrench", "/torque set, three wrenches", "ms", await sampled(2000, () => run("/torque set target:60-80 in-lb"))),
      rowOf("answer at the wrench", "/convert, with the member's step", "ms", await sampled(2000, () => run("/convert 60-80 in-lb"))),
      rowOf("answer at the wrench", "mention: 60-80 in-lb in Nm?", "ms", await sampled(2000, () => say("60-80 in-lb in Nm?"))),
      rowOf("answer at the wrench", "/torque set with a drawing, the first", "ms", [first]),
      rowOf(
        "answer at the wrench",
        "/torque set with a drawing",
        "ms",
        await sampled(200, () => run("/torque set target:65 Nm adapter:50 mm lever:400 mm angle:45")),
      ),
      rowOf(
        "answer at the wrench",
        "the drawing alone",
        "ms",
        await sampled(200, () => render(drawAdapter({ lever: 400, adapter: 50, angle: 45, texts: TEXTS }), 900, "")),
      ),
    ];
    await open.close();
    return rows;
  },
};

/** One after another, after some to warm up; in milliseconds. */
async function sampled(times: number, work: () => Promise<unknown>): Promise<number[]> {
  for (let n = 0; n < 20; n++) await work();
  const samples: number[] = [];
  for (let n = 0; n < times; n++) {
    const start = performance.now();
    await work();
    samples.push(performance.now() - start);
  }
  return samples;
}
