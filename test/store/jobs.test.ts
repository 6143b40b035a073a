// Jobs in the database: a file from before there were any, and two changes of one job that cross.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { BikeId, ItemKey, MemberId } from "../../src/core/ids.ts";
import type { Job } from "../../src/store/jobs.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";

const NOW = instant("2026-11-26T13:40:00Z");
const JOB: Job = {
  ...{ id: "j1", rev: 1, bike: "b1" as BikeId, state: "open", mark: null, begunOn: localDate("2026-11-26"), begunAt: NOW, endedAt: null, note: null },
  by: "m1" as MemberId,
  items: [
    { item: "engine-oil.replace" as ItemKey, called: "Engine oil and filter", evening: 1 },
    { item: "valve-clearance.adjust" as ItemKey, called: "Valve clearance", evening: 2 },
  ],
};

test("a file from before there were jobs, with a bike in it, holds one as it was begun; of two changes that cross one is refused", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261330-specs" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bikes (id, owner, nickname, nickname_key, kind, state, equipment, plan_column, conditions, known_date, known_ridden, whole_since_new, plan_hash, edits, facts_rev, rules_version, added_at)
    values ('b1', 'm1', 'Heron', 'heron', 'chain-drive twin', 'riding', '{}', 'mi', '[]', '2026-01-01', 0, 0, 'h', '[]', 1, 1, ${NOW})`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  await sql`pragma foreign_keys = off`.execute(now.db);
  expect(await now.db.selectFrom("bikes").select("nickname").executeTakeFirstOrThrow()).toEqual({ nickname: "Heron" });
  const store = storeOn(now);
  await store.change((q) => q.jobs.begin(JOB));
  expect(await store.read((q) => q.jobs.openOf([JOB.bike]))).toEqual([JOB]);
  const ended = { ...JOB, rev: 2, state: "finished" as const, endedAt: NOW, note: "gasket" };
  expect(await store.change((q) => q.jobs.change(ended))).toBe(true);
  expect(await store.change((q) => q.jobs.change(ended))).toBe(false);
  expect(await store.read((q) => q.jobs.openOf([JOB.bike]))).toEqual([]);
  expect(await store.read((q) => q.jobs.lastOf(JOB.bike))).toEqual(ended);
  await now.close();
  await rm(folder, { recursive: true });
});
