// Checks, seasons and papers' days in the database: a file from before is brought up to date; a run is read back whole, and two writers cannot both move it.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { afterEach, beforeEach, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { BikeId, GroupId, MemberId } from "../../src/core/ids.ts";
import type { CheckRun, PointAnswer } from "../../src/store/checks.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { talk } from "../support/talk.ts";

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
});
afterEach(() => rm(folder, { recursive: true }));

const INES = "Ines" as MemberId;
const NOW = instant("2026-11-26T09:00:00Z");
const run: CheckRun = {
  ...{ id: "c1", owner: INES, bike: null, called: "Red one", list: "buying used", state: "open", atPoint: "leaks", rev: 1, source: null },
  ...{ begunOn: localDate("2026-11-26"), begunAt: NOW, finishedOn: null, at: NOW },
  sections: [{ key: "brakes", points: [{ key: "leaks", item: null, status: null, before: null }] }],
};
const answer: PointAnswer = {
  ...{ point: "leaks", answer: "needs work", grade: "watch", note: "“weeps”; a drop a day", link: "https://example.org/1", figures: null, defect: null },
  ...{ by: INES, at: NOW },
};

test("a file from before checks, with a group in it, is brought up to date as it stands", async () => {
  const file = path.join(folder, "a.sqlite");
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`insert into groups (id, zone, language, distance, pressure, reads) values ('g1', 'Europe/Lisbon', 'en', 'mi', null, 1)`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  expect((await store.read((q) => q.members.groupsByIds(["g1" as GroupId]))).get("g1" as GroupId)).toMatchObject({ zone: "Europe/Lisbon", riding: null });
  await store.change(async (q) => {
    await q.checks.add(run);
    await q.checks.put("c1", answer);
  });
  expect(await store.read((q) => q.checks.openOf(INES))).toEqual([run]);
  await now.close();
});

test("a file from before trips, with a lay-up in it, is brought up to date as it stands", async () => {
  const file = path.join(folder, "a.sqlite");
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bike_events (id, bike, what, from_date, to_date, by, at) values ('l1', 'b1', 'lay-up', '2026-10-12', null, 'Ines', ${NOW})`.execute(
    before.db,
  );
  await before.close();
  const now = await openSqlite(file);
  const bike = "b1" as BikeId;
  const turns = await storeOn(now).read((q) => q.bikes.turns([bike]));
  expect(turns.layUps.get(bike)).toEqual([{ id: "l1", from: "2026-10-12", to: null }]);
  expect(turns.trips.get(bike)).toBeUndefined();
  await now.close();
});

test("a run is read back as it was written; an answer given anew takes the place of the first; of two who move a run one is told", async () => {
  const t = await talk();
  const { store } = t.open;
  await store.change(async (q) => {
    await q.checks.add(run);
    await q.checks.put("c1", answer);
    await q.checks.put("c1", { ...answer, answer: "good", grade: null });
  });
  expect(await store.read((q) => q.checks.answersOf("c1"))).toEqual([{ ...answer, answer: "good", grade: null }]);
  const next = { ...run, rev: 2, state: "finished", finishedOn: localDate("2026-11-27"), source: "e1" } as const;
  expect(await store.change((q) => q.checks.change(next))).toBe(true);
  expect(await store.change((q) => q.checks.change({ ...next, atPoint: null }))).toBe(false);
  expect(await store.read((q) => q.checks.finishedOf(INES, 5))).toEqual([next]);
  await t.close();
});

test("a paper's day of the same name is moved, not doubled", async () => {
  const t = await talk();
  const added = await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const bike = added.data.bike as BikeId;
  await t.open.store.change(async (q) => {
    await q.dates.put({ bike, what: "Insurance", on: localDate("2027-03-31") }, INES, NOW);
    await q.dates.put({ bike, what: "insurance ", on: localDate("2027-04-30") }, INES, NOW);
  });
  expect(await t.open.store.read((q) => q.dates.ofBikes([bike]))).toEqual([{ bike, what: "insurance ", on: "2027-04-30" }]);
  await t.close();
});
