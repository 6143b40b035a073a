// Defects as rows (id, rev), and what a work record holds beside its items.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { Defect } from "../../src/core/defect.ts";
import type { BikeId, MemberId } from "../../src/core/ids.ts";
import { NO_DETAIL } from "../../src/core/work-detail.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { talk } from "../support/talk.ts";

const AT = instant("2026-11-25T10:00:00Z");

test("a defect noted, graded and closed keeps every revision, and is open only while it is", async () => {
  const t = await talk();
  const { data } = await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const bike = data.bike as BikeId;
  const { store } = t.open;
  const noted: Defect = {
    ...{ id: "d1", rev: 1, state: "open", bike, kind: "soft brake", words: "front brake feels spongy", grade: null, on: localDate("2026-11-25"), dial: null },
    ...{ from: "message", closedBy: null, closedBecause: null, message: "m1", ordinal: 0, loggedAt: AT, by: "Ines" as MemberId, at: AT, why: null },
  };
  await store.change((q) => q.defects.note([noted]));
  expect((await store.read((q) => q.defects.openOf([bike]))).get(bike)).toEqual([noted]);
  await expect(store.change((q) => q.defects.note([{ ...noted, id: "d2" }]))).rejects.toThrow(/unique/i);
  expect(await store.change((q) => q.defects.revise({ ...noted, rev: 2, grade: "do not ride", why: "graded" }))).toBe(true);
  expect(await store.change((q) => q.defects.revise({ ...noted, rev: 2, grade: "watch", why: "graded" }))).toBe(false);
  await store.change((q) => q.defects.revise({ ...noted, rev: 3, grade: "do not ride", state: "closed", closedBy: "w1", why: "work" }));
  expect((await store.read((q) => q.defects.openOf([bike]))).get(bike)).toEqual([]);
  expect((await store.read((q) => q.defects.closedBy(["w1"]))).map(({ id }) => id)).toEqual(["d1"]);
  expect((await store.read((q) => q.defects.history("d1"))).map(({ rev, state, grade }) => [rev, state, grade])).toEqual([
    [1, "open", null],
    [2, "open", "do not ride"],
    [3, "closed", "do not ride"],
  ]);
  await t.close();
});

test("a file from before work had details and bikes had defects, with work in it, is brought up to date as it stands", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into work (id, rev, current, state, bike, items, words, from_date, to_date, date_typed, how, done_by, ordinal, logged_at, by, at)
    values ('w1', 1, 1, 'live', 'b1', '[{"item":"coolant.replace","called":"Coolant","outcome":"replaced","found":null,"left":null}]', 'coolant',
      '2026-05-03', '2026-05-03', '3 May', 'did it', 'Ines', 0, '2026-05-03T10:00:00.000Z', 'm1', '2026-05-03T10:00:00.000Z')`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  const record = await store.read((q) => q.work.byId("w1"));
  expect(record).toMatchObject({ detail: NO_DETAIL, items: [{ item: "coolant.replace", found: [], left: [] }] });
  if (record === null) throw new Error("the record is gone");
  const detail = {
    quantities: [{ value: 3.2, unit: "L", of: "20W-50", typed: "3.2 L" }],
    parts: [],
    cost: { minor: 4860, currency: null, typed: "48.60" },
    by: "shop",
  } as const;
  await sql`pragma foreign_keys = off`.execute(now.db);
  expect(await store.change((q) => q.work.revise({ ...record, rev: 2, detail }))).toBe(true);
  expect((await store.read((q) => q.work.byId("w1")))?.detail).toEqual(detail);
  expect((await store.read((q) => q.defects.openOf(["b1" as BikeId]))).get("b1" as BikeId)).toEqual([]);
  await now.close();
  await rm(folder, { recursive: true });
});
