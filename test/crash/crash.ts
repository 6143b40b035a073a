// The real process, killed at a step of sending, started again, and judged by what the stand-in of the platform holds.

import { type ChildProcess, spawn } from "node:child_process";
import { copyFile, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { realClock } from "../../src/clock.ts";
import { addDuration } from "../../src/core/calendar/zones.ts";
import { backupFolder, backupsOf } from "../../src/store/backup.ts";
import type { Opened } from "../../src/store/db.ts";
import { openDatabase } from "../../src/store/open.ts";
import { whatIsWrong } from "../../src/store/restore.ts";
import { HERON, INES, onStandIn, part } from "../discord/server.ts";
import { type StandIn, standIn } from "../discord/standin.ts";
import type { Json, Moment } from "../discord/wire.ts";
import { addressOf, asAdmin, ON_POSTGRES } from "../support/database.ts";

const HOUSE = path.join(import.meta.dirname, "..", "..");

/** Steps of the process's own, named for die-at.mjs; `of` is how many times a run comes by. */
export const OWN_STEPS = [
  ["claim, before the commit", 1],
  ["claim, after the commit", 1],
  ["gather, before the commit", 3],
  ["gather, after the commit", 3],
  ["begun, before the commit", 3],
  ["begun, after the commit", 3],
  ["final, before the commit", 3],
  ["final, after the commit", 3],
] as const;
/** Moments of a request, seen from the platform. `lost`: it never got there whole. */
export const FAR_STEPS = ["arrived and lost", "arrived and stored", "stored, unanswered", "half answered", "answered"] as const;
/** Messages of one run: three members by themselves, one of them in three parts, and one in the group's channel. */
const SENDS = 6;

/** How often each step was hit, and what came of it. */
export type Judged = { readonly step: string; readonly killed: boolean; readonly expected: number; readonly lost: number; readonly doubled: number };

export type Template = { readonly make: () => Promise<Place>; readonly drop: () => Promise<void> };
type Place = { readonly address: string; readonly drop: () => Promise<void> };

/** Four members with something to tell, eight days ago; nothing told yet. */
export async function template(): Promise<Template> {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-crash-"));
  const file = path.join(folder, "template.sqlite");
  const name = `tappet_crash_${process.pid}`;
  if (ON_POSTGRES) {
    await asAdmin(`drop database if exists ${name} with (force)`);
    await asAdmin(`create database ${name}`);
  }
  await fill(ON_POSTGRES ? addressOf(name) : file);
  let made = 0;
  return {
    async make() {
      made++;
      if (ON_POSTGRES) {
        const copy = `${name}_${made}`;
        await asAdmin(`create database ${copy} template ${name}`);
        return { address: addressOf(copy), drop: () => asAdmin(`drop database if exists ${copy} with (force)`) };
      }
      const copy = path.join(folder, `tappet-${made}.sqlite`);
      await copyFile(file, copy);
      return { address: copy, drop: () => rm(copy) };
    },
    async drop() {
      await rm(folder, { recursive: true });
      if (ON_POSTGRES) await asAdmin(`drop database if exists ${name} with (force)`);
    },
  };
}

const OTHERS = ["200000000000000002", "200000000000000003"] as const;

async function fill(address: string): Promise<void> {
  const now = realClock.now();
  const on = await onStandIn({ file: address, now: addDuration(now, "-P8D") });
  await on.until("the set-up message", () => on.platform.messages.length > 0);
  const at = (member: string) => ({ member, channel: on.platform.garage, manages: true });
  const quiet = { "quiet-from": addDuration(now, "PT2H").slice(11, 16), "quiet-to": addDuration(now, "PT3H").slice(11, 16) };
  const add = async (member: string, name: string, more: Readonly<Record<string, string>> = {}): Promise<void> => {
    const added = await on.answerTo(on.platform.run(at(member), "bike", "add", { ...HERON, name }));
    await on.answerTo(on.platform.fill(at(member), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023", ...more }));
  };
  await on.answerTo(on.platform.run(at(INES), "group", null, { reading: "here" }));
  await add(INES, "Heron");
  for (let n = 0; n < 14; n++)
    await add(OTHERS[0], `${"Longtailed-heron-".repeat(2)}${n}`.slice(-32), { "coolant.replace": "spring 2020", "tyre.front": "2015", "tyre.rear": "2015" });
  await add(OTHERS[1], "Wren");
  await on.answerTo(on.platform.run(at(OTHERS[1]), "remind", null, { by: "channel", ...quiet }));
  for (const member of [INES, OTHERS[0]]) await on.answerTo(on.platform.run(at(member), "remind", null, quiet));
  await on.close();
}

let base = 2_000_000_000_000_000_000n;

/** One run: started, killed at the step, started again until all is settled. @param two the other of two processes takes over, not the same one started again @param readBack false: what is in doubt is not looked for, so that the run shows that this matters */
export async function crashAt(
  step: string,
  nth: number,
  from: Template,
  { readBack = true, two = false }: { readBack?: boolean; two?: boolean } = {},
): Promise<Judged> {
  base += 1_000_000_000n;
  const platform = await standIn({ from: base });
  const place = await from.make();
  const far = (FAR_STEPS as readonly string[]).includes(step);
  let first: Running | null = null;
  let seen = 0;
  if (far)
    platform.watch((moment) => {
      if (moment !== MOMENTS[step as keyof typeof MOMENTS] || ++seen !== nth) return "go on";
      process.kill(first?.child.pid ?? 0, "SIGKILL");
      return step === "arrived and lost" ? "lose" : "go on";
    });
  const opened = await openDatabase(place.address);
  try {
    first = start(place.address, platform, far || step === "at random" ? null : `${step}#${nth}`, two ? "1/2" : null);
    if (step === "at random") setTimeout(() => first?.child.kill("SIGKILL"), 700 + nth);
    // A process that its step never comes to ends when all is settled.
    await Promise.race([first.ended, settled(opened, platform)]);
    // The last step may be the one that settles it; its signal is on the way.
    await Promise.race([first.ended, new Promise((resolve) => setTimeout(resolve, 100))]);
    const killed = first.child.signalCode === "SIGKILL";
    platform.watch(null);
    platform.forgetNonces();
    if (!readBack) await opened.db.updateTable("deliveries").set({ trace_channel: null, trace_after: null }).execute();
    // What the other process waits for is the end of the lease, and here is no time to wait.
    if (ON_POSTGRES) await opened.db.updateTable("deliveries").set({ lease_until: "2020-01-01T00:00:00.000Z" }).where("state", "=", "sending").execute();
    const again = start(place.address, platform, null, two ? "2/2" : null);
    await settled(opened, platform);
    for (const running of [first, again]) {
      running.child.kill("SIGTERM");
      await running.ended;
    }
    return await judge(step, killed, opened, platform);
  } finally {
    first?.child.kill("SIGKILL");
    await opened.close();
    await platform.close();
    await place.drop();
  }
}

const MOMENTS = {
  "arrived and lost": "arrived",
  "arrived and stored": "arrived",
  "stored, unanswered": "stored",
  "half answered": "half answered",
  answered: "answered",
} as const satisfies Record<(typeof FAR_STEPS)[number], Moment>;

export type Running = { readonly child: ChildProcess; readonly said: () => string; readonly ended: Promise<unknown> };

/** Starts the process that a host runs. @param dieAt a step of die-at.mjs */
export function start(address: string, platform: StandIn, dieAt: string | null, share: string | null): Running {
  const child = spawn(process.execPath, [...(dieAt === null ? [] : ["--import", path.join(import.meta.dirname, "die-at.mjs")]), "dist/src/main.js"], {
    cwd: HOUSE,
    env: {
      ...process.env,
      ...{ DISCORD_TOKEN: "good-token", DISCORD_API_URL: platform.api, TAPPET_DATABASE: address, TAPPET_READ_CHANNELS: "yes" },
      ...(dieAt === null ? {} : { TAPPET_DIE_AT: dieAt }),
      ...(share === null ? {} : { TAPPET_PART: share }),
    },
  });
  let text = "";
  child.stderr.on("data", (chunk) => {
    text += String(chunk);
  });
  return { child, said: () => text, ended: new Promise((resolve) => child.on("close", resolve)) };
}

/** All that there is to tell is told, and every delivery has come to its end. */
async function settled(opened: Opened, platform: StandIn): Promise<void> {
  for (let n = 0; n < 1500; n++) {
    const open = await opened.db.selectFrom("deliveries").select("state").where("state", "in", ["queued", "sending"]).execute();
    const ended = await opened.db.selectFrom("deliveries").select("state").where("state", "in", ["sent", "empty", "failed", "unconfirmed"]).execute();
    if (open.length === 0 && ended.length >= 3) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  const rows = await opened.db.selectFrom("deliveries").selectAll().execute();
  throw new Error(`it did not settle: ${JSON.stringify(rows)} ${platform.calls.slice(-5).map(({ method, path: at, status }) => `${method} ${at} ${status}`)}`);
}

/** Counts each message that should be there, by the ids of its buttons, which name its delivery and its part. */
async function judge(step: string, killed: boolean, opened: Opened, platform: StandIn): Promise<Judged> {
  const told = await opened.db.selectFrom("notices").select(["delivery", "state"]).execute();
  if (told.some(({ state }) => state !== "told")) throw new Error(`a notice that was not told: ${JSON.stringify(told)}`);
  const deliveries = [...new Set(told.map(({ delivery }) => delivery ?? ""))];
  let [lost, doubled] = [0, 0];
  for (const delivery of deliveries) {
    const parts = platform.messages.map((message) => partIn(message, delivery)).filter((found) => found !== null);
    const of = parts.find((found) => found.of > 1)?.of ?? 1;
    for (let n = 0; n < of; n++) {
      const count = parts.filter((found) => found.n === n).length;
      if (count === 0) lost++;
      if (count > 1) doubled += count - 1;
    }
  }
  if (platform.wrong.length > 0) throw new Error(platform.wrong.join("; "));
  return { step, killed, expected: SENDS, lost: lost + Math.max(0, 3 - deliveries.length), doubled };
}

function partIn(message: Json, delivery: string): { readonly n: number; readonly of: number } | null {
  const text = JSON.stringify(message["components"]);
  if (!text.includes(delivery)) return null;
  const [, n, of] = new RegExp(`page\\.(\\d+)\\.(\\d+)\\.${delivery}`, "u").exec(text) ?? [];
  return n === undefined ? { n: 0, of: 1 } : { n: Number(n), of: Number(of) };
}

/** A message whose logging is cut off, and which the platform tells again after the restart: how many readings came of it. */
export async function crashWhileLogging(
  step: "before the commit" | "after the commit",
  from: Template,
): Promise<{ readonly killed: boolean; readonly readings: number }> {
  base += 1_000_000_000n;
  const platform = await standIn({ from: base });
  const place = await from.make();
  const opened = await openDatabase(place.address);
  try {
    const first = start(place.address, platform, `message, ${step}#1`, null);
    await settled(opened, platform);
    const direct = { member: INES, channel: platform.directChannel(INES) };
    const message = platform.say(direct, "14,820 mi on Heron");
    await first.ended;
    const again = start(place.address, platform, null, null);
    await until(() => platform.identifies() === 2 && again.said().includes("Tappet is running"));
    for (let n = 0; n < 3; n++) platform.sayAgain(message);
    const readings = () => opened.db.selectFrom("readings").select("id").where("message", "=", String(message["id"])).execute();
    for (let n = 0; n < 200 && (await readings()).length === 0; n++) await new Promise((resolve) => setTimeout(resolve, 10));
    await new Promise((resolve) => setTimeout(resolve, 100));
    again.child.kill("SIGTERM");
    await again.ended;
    return { killed: first.child.signalCode === "SIGKILL", readings: (await readings()).length };
  } finally {
    await opened.close();
    await platform.close();
    await place.drop();
  }
}

async function until(look: () => boolean | Promise<boolean>): Promise<void> {
  for (let n = 0; n < 1000 && !(await look()); n++) await new Promise((resolve) => setTimeout(resolve, 10));
  if (!(await look())) throw new Error("it did not come");
}

/** An update cut off at its nth change: what stands after the next start. */
export async function crashWhileUpdating(nth: number): Promise<{ readonly killed: boolean; readonly kept: boolean; readonly whole: boolean }> {
  const platform = await standIn();
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-crash-"));
  const name = `tappet_crash_update_${process.pid}_${nth}`;
  if (ON_POSTGRES) await asAdmin(`create database ${name}`);
  const address = ON_POSTGRES ? addressOf(name) : path.join(folder, "tappet.sqlite");
  const group = { id: "g1", zone: "Europe/Lisbon", language: "en", distance: "mi", pressure: null, reads: 1 } as const;
  try {
    const old = await openDatabase(address, { upTo: "202611251400-first" });
    await old.db.insertInto("groups").values(group).execute();
    await old.close();
    const first = start(address, platform, `migration, midway#${nth}`, null);
    await Promise.race([first.ended, until(() => first.said().includes("Tappet is running"))]);
    const killed = first.child.signalCode === "SIGKILL";
    const again = start(address, platform, null, null);
    await until(() => again.said().includes("Tappet is running"));
    for (const { child, ended } of [first, again]) {
      child.kill("SIGTERM");
      await ended;
    }
    const now = await openDatabase(address);
    const kept = await now.db.selectFrom("groups").selectAll().execute();
    const { rows } = await sql<{ name: string }>`select name from kysely_migration`.execute(now.db);
    await now.close();
    return { killed, kept: kept[0]?.zone === group.zone, whole: rows.length === (await readdir(path.join(HOUSE, "migrations"))).length };
  } finally {
    await platform.close();
    await rm(folder, { recursive: true });
    if (ON_POSTGRES) await asAdmin(`drop database if exists ${name} with (force)`);
  }
}

/** A backup cut off at its nth page: what is in its folder after the next start. */
export async function crashWhileBackingUp(
  nth: number,
  from: Template,
): Promise<{ readonly killed: boolean; readonly left: readonly string[]; readonly whole: boolean }> {
  base += 1_000_000_000n;
  const platform = await standIn({ from: base });
  const place = await from.make();
  const folder = backupFolder(place.address);
  try {
    // What another crash beside it left there would be today's backup.
    await rm(folder, { recursive: true, force: true });
    const first = start(place.address, platform, `backup, midway#${nth}`, null);
    await Promise.race([first.ended, until(async () => (await backupsOf(place.address)).length > 0)]);
    const killed = first.child.signalCode === "SIGKILL";
    const again = start(place.address, platform, null, null);
    await until(async () => (await backupsOf(place.address)).length > 0);
    for (const { child, ended } of [first, again]) {
      child.kill("SIGTERM");
      await ended;
    }
    const left = await readdir(folder);
    return { killed, left: left.map((name) => name.replace(/\d.*Z/u, "DATE")), whole: whatIsWrong(path.join(folder, left[0] ?? ""), null) === null };
  } finally {
    await platform.close();
    await rm(folder, { recursive: true, force: true });
    await place.drop();
  }
}
