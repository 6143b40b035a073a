// On the stand-in: from the gateway's event to the answer's request, at 1, 10 and 100 events a second; and the memory of a process with 1 and 1,000 groups.

import { spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { onStandIn } from "../discord/server.ts";
import { standIn } from "../discord/standin.ts";
import { type Bench, type Row, rowOf } from "./harness.ts";
import { residentMegabytes } from "./memory.ts";

const SECONDS = 4;

export const discord: Bench = {
  name: "discord",
  async rows() {
    const rows: Row[] = [];
    for (const rate of [1, 10, 100]) rows.push(rowOf("gateway event to answer", `/due, ${rate} a second`, "ms", await latencies(rate)));
    for (const guilds of [1, 1000]) rows.push(rowOf("resident memory on the server", `${guilds} groups`, "MB", [await memory(guilds)]));
    return rows;
  },
};

async function latencies(rate: number): Promise<number[]> {
  const on = await onStandIn({ file: path.join(mkdtempSync(path.join(tmpdir(), "tappet-bench-")), "bench.sqlite") });
  const place = (n: number) => ({ member: `20000000000000${String(1000 + (n % 50)).padStart(4, "0")}`, channel: on.platform.garage });
  for (let n = 0; n < 50; n++) await on.answerTo(on.platform.run(place(n), "bike", "add", { name: "Heron", kind: "chain-drive twin", odometer: "14,210 mi" }));
  const asked: string[] = [];
  for (let n = 0; n < Math.max(rate * SECONDS, 10); n++) {
    asked.push(on.platform.run(place(n), "due"));
    await new Promise((resolve) => setTimeout(resolve, 1000 / rate));
  }
  await on.until("all answers", () => asked.every((interaction) => on.platform.acknowledged.has(interaction)));
  const found = asked.map((interaction) => on.platform.acknowledged.get(interaction)?.at ?? Number.NaN);
  await on.close();
  return found;
}

async function memory(guilds: number): Promise<number> {
  const platform = await standIn({ guilds });
  const child = spawn(process.execPath, ["src/start.js"], {
    env: {
      ...process.env,
      DISCORD_TOKEN: "good-token",
      DISCORD_API_URL: platform.api,
      TAPPET_DATABASE: path.join(mkdtempSync(path.join(tmpdir(), "tappet-bench-")), "bench.sqlite"),
    },
    stdio: ["ignore", "ignore", "pipe"],
  });
  await new Promise<void>((resolve) => {
    child.stderr?.on("data", (chunk) => {
      if (String(chunk).includes("is running")) resolve();
    });
  });
  await new Promise((resolve) => setTimeout(resolve, 3000));
  const found = await residentMegabytes(child.pid ?? 0);
  child.kill("SIGTERM");
  await new Promise((resolve) => child.once("close", resolve));
  await platform.close();
  return found;
}
