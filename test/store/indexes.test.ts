// What is asked every day is found by an index: no statement reads a whole table that grows with the riders, or with the years.

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import SQLite from "better-sqlite3";
import { expect, test } from "vitest";
import { button, type Shown, talk } from "../support/talk.ts";

/** Done once in a blue moon, or on tables that stay small. */
const MAY_READ_ALL: readonly RegExp[] = [
  // The practice room alone says these.
  /"room_(messages|deliveries)"/u,
  // At the start of a process: what one that is gone had claimed.
  /^update "deliveries" set "state" = \?, "lease_until" = \? where "state" = \? returning "id"$/u,
];

/** The tables that SQLite would read from end to end. Its planner says SCAN for that; through an index in order with a limit it says so too, and stops early. */
function tablesReadWhole(db: SQLite.Database, sql: string): string[] {
  const tables = db.prepare("select name from sqlite_master where type = 'table'").pluck().all();
  const plan = db.prepare(`explain query plan ${sql}`).all(...Array.from(sql.matchAll(/\?/gu), () => null)) as { detail: string }[];
  return plan.flatMap(({ detail }) => {
    const [, table] = /^SCAN (\w+)/u.exec(detail) ?? [];
    const stopsEarly = detail.includes("INDEX") && / limit \?/u.test(sql);
    return table === undefined || !tables.includes(table) || stopsEarly ? [] : [table];
  });
}

test("a story of bikes, readings, work, questions, corrections and reminders", async () => {
  const folder = mkdtempSync(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const t = await talk("2026-11-25T10:00:00Z", file);
  const seen = new Set<string>();
  const send = async (input: Readonly<Record<string, unknown>>): Promise<readonly Shown[]> => {
    const shown = await t.send(input);
    for (const sql of t.statements()) seen.add(sql);
    expect(shown.flatMap(({ error }) => error ?? [])).toEqual([]);
    return shown;
  };
  const ines = { as: "Ines" };
  const dm = { ...ines, in: "dm" };
  const [added] = await send({ ...ines, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await send({ ...ines, fill: button(added as Shown, "Fill in"), fields: { "brake-fluid.replace": "spring 2023" } });
  await send({ ...ines, run: "/bike add name:Wren kind:belt-drive cruiser odometer:9,000 km" });
  await send({ ...ines, say: "14,820 mi on Heron, front 36 psi" });
  await send({ ...ines, say: "14,900" });
  await send({ ...dm, say: "replaced the brake fluid on Heron yesterday at 14,850 mi" });
  const [logged] = await send({ ...dm, say: "14,950 mi on Heron", id: "m1" });
  await send({ ...dm, press: button(logged as Shown, "Undo") });
  await send({ ...dm, edit: "m1", say: "14,960 mi on Heron" });
  await send({ ...dm, delete: "m1" });
  for (const run of [
    "/due",
    "/bike list",
    "/reading",
    "/remind",
    "/group",
    "/work did:chain slack at:14,900 mi bike:Heron",
    "/torque set to:60 Nm",
    "/convert 36 psi",
  ])
    await send({ ...ines, run });
  await send({ ...ines, admin: true, run: "/group reading:here riding:15 January to 31 October" });
  await send({ ...ines, run: "/bike change bike:Heron group-picture:yes" });
  await send({ ...ines, run: "/bike change bike:Heron group-evening:yes" });
  await send({ ...ines, run: "/plan evening" });
  await send({ advance: "P60D" });
  await send({ advance: "P90D" });
  await t.close();

  const db = new SQLite(file);
  const whole = [...seen]
    .filter((sql) => /^(select|update|delete|insert)/u.test(sql) && !MAY_READ_ALL.some((allowed) => allowed.test(sql)))
    .flatMap((sql) => tablesReadWhole(db, sql).map((table) => `${table}: ${sql}`));
  db.close();
  rmSync(folder, { recursive: true });
  expect(seen.size).toBeGreaterThan(40);
  expect(whole).toEqual([]);
});
