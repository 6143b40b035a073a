// Pictures end to end: a command in, its words and its picture out, on a bike with three years of readings and a long plan; and how large each picture is.

import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import { parseCommandLine } from "../../src/chat/command-line.ts";
import { addDays } from "../../src/core/calendar/arithmetic.ts";
import type { LocalDate } from "../../src/core/calendar/dates.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { EventId, GroupId, MemberId } from "../../src/core/ids.ts";
import { riddenOf } from "../../src/core/quantity/distance.ts";
import { openRoom } from "../../src/open-room.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { type Bench, rowOf } from "./harness.ts";

/** Every command that draws, each with its most to draw. */
const ASKED = [
  "/due bike:Heron picture:yes",
  "/plan chart bike:Heron until:48,000 mi",
  "/reading bike:Heron picture:odometer",
  "/reading bike:Heron picture:tread",
  "/reading bike:Heron picture:pads",
  "/reading bike:Heron picture:chain",
  "/reading bike:Heron picture:pressure",
  "/bike card bike:Heron recovery:0800 555 0142",
  "/group picture:yes",
  "/torque set target:65 Nm adapter:50 mm lever:400 mm angle:45",
];
const TODAY = "2026-11-26" as LocalDate;
const READINGS = 150;

export const pictures: Bench = {
  name: "pictures",
  async rows() {
    const database = path.join(mkdtempSync(path.join(tmpdir(), "tappet-bench-")), "bench.sqlite");
    const opened = () =>
      openRoom({
        ...{ database, frozen: instant("2026-11-26T10:00:00Z") },
        log: { error: (facts) => void process.stderr.write(`${JSON.stringify(facts)}\n`), info: () => undefined },
        supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp },
      });
    let open = await opened();
    let n = 0;
    const run = async (line: string) => {
      const from = { member: "m1" as MemberId, name: null, where: { group: "g1" as GroupId, channel: "reading", id: "g1" } as const };
      const [answer] = await open.room.hear({
        ...from,
        event: `bench-${n++}` as EventId,
        admin: false,
        language: null,
        kind: "run",
        ...parseCommandLine(line, COMMANDS),
      });
      return answer?.reply?.files.find(({ type }) => type === "image/png")?.bytes.length ?? 0;
    };
    await run("/bike add name:Heron kind:chain-drive twin odometer:31,000 mi");
    await run("/bike change bike:Heron group-picture:yes");
    await run("/work did:brake fluid on:2025-03-05");
    await open.close();
    await fill(database);
    open = await opened();
    const rows = [];
    for (const line of ASKED) {
      let bytes = 0;
      const samples: number[] = [];
      for (let at = 0; at < 35; at++) {
        const started = performance.now();
        bytes = await run(line);
        // The first few warm up.
        if (at >= 5) samples.push(performance.now() - started);
      }
      rows.push(rowOf("picture, command to file", line, "ms", samples), rowOf("picture, size", line, "kB", [bytes / 1000]));
    }
    await open.close();
    return rows;
  },
};

/** A reading of everything that is drawn, every week for three years. */
async function fill(database: string): Promise<void> {
  const opened = await openSqlite(database);
  await storeOn(opened).change(async (q) => {
    const [bike] = await q.bikes.ofOwner("m1" as MemberId);
    if (bike === undefined) throw new Error("no bike was added");
    for (let n = 0; n < READINGS; n++) {
      const on = addDays(TODAY, -7 * (READINGS - n));
      const row = {
        rev: 1,
        state: "live",
        bike: bike.id,
        on,
        message: `w${n}`,
        loggedAt: `${on}T10:00:00.000Z`,
        by: "m1",
        at: `${on}T10:00:00.000Z`,
        why: null,
        detail: null,
      };
      const read = (kind: string, ordinal: number, place: string | null, value: number, unit: string, detail: object | null = null) => ({
        ...row,
        detail,
        id: `${kind}-${n}-${ordinal}`,
        kind,
        place,
        dial: null,
        value,
        typed: String(value),
        unit,
        ordinal,
      });
      await q.readings.log([
        {
          ...row,
          id: `o-${n}`,
          kind: "odometer",
          place: null,
          dial: riddenOf(4000 + n * 170, "mi"),
          value: null,
          typed: String(4000 + n * 170),
          unit: "mi",
          ordinal: 0,
        },
        read("tread", 1, "front", 5 - n * 0.01, "mm"),
        read("tread", 2, "rear", 7 - n * 0.03, "mm"),
        read("cold pressure", 3, "front", 240 + 10 * Math.sin(n / 8), "psi"),
        read("cold pressure", 4, "rear", 270 + 10 * Math.sin(n / 8), "psi"),
        read("pad thickness", 6, "front", 5 - n * 0.02, "mm"),
        read("pad thickness", 7, "rear", 5 - n * 0.015, "mm"),
        // Over 20 pitches of 15.875 mm.
        read("chain length", 8, null, 317.5 + n * 0.015, "mm", { pitches: 20 }),
        read("ambient temperature", 5, null, 12 + 12 * Math.sin(n / 8), "°C"),
      ] as never);
    }
    await q.bikes.touched([bike.id], instant("2026-11-26T10:00:00Z"));
  });
  await opened.close();
}
