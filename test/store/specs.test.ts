// Specs in the database: read back as they were entered, revised never overwritten, shared by model within a group and no further; a file from before is brought up to date.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../../src/core/ids.ts";
import type { SpecRecord } from "../../src/store/specs.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { specFor, specsOf } from "../../src/usecases/specs.ts";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const NOW = "2026-11-26T09:00:00.000Z" as Instant;
const AXLE = { is: "figure", low: 98, high: 98, nominal: null, unit: "N·m", step: 1 } as const;
const aSpec = (bike: BikeId, more: Partial<SpecRecord> = {}): SpecRecord => ({
  ...{ id: `s-${bike}`, rev: 1, state: "live", bike, key: "rear axle torque", use: null, holds: AXLE, typed: "98 Nm" },
  ...{ source: { manual: "Workshop manual", edition: "2019", page: "142" }, by: "Ines" as MemberId, at: NOW, why: null },
  ...more,
});
const added = async (as: string, name: string, model: string | null, where = "g1"): Promise<BikeId> => {
  const shown = await t.one({ as, in: where, run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` });
  const id = shown.data.bike as BikeId;
  await t.open.store.change(async (q) => {
    const bike = await q.bikes.byId(id);
    if (bike !== null) await q.bikes.change({ ...bike, model }, NOW);
  });
  return id;
};
const known = (bike: BikeId, model: string | null, group: string | null = null) =>
  t.open.store.read((q) => specsOf(q, { id: bike, model }, group as GroupId | null)).then((specs) => specs.map(({ id }) => id));

test("figures, windows and words are read back as they were entered; a change is a new revision", async () => {
  const heron = await added("Ines", "Heron", null);
  const window = aSpec(heron, { id: "w", key: "chain slack", holds: { is: "figure", low: 0.1 + 0.2, high: null, nominal: 0.35, unit: "mm", step: 0.01 } });
  const words = aSpec(heron, { id: "p", key: "spark plug", holds: { is: "words" }, typed: "QX-8", source: null, use: "loaded" });
  await t.open.store.change(async (q) => {
    for (const each of [aSpec(heron), window, words]) await q.specs.add(each);
  });
  const all = await t.open.store.read((q) => q.specs.ofBikes([heron]));
  expect(all.map(({ id, holds, source, use }) => [id, holds, source, use])).toEqual([
    ["p", { is: "words" }, null, "loaded"],
    [`s-${heron}`, AXLE, { manual: "Workshop manual", edition: "2019", page: "142" }, null],
    ["w", window.holds, window.source, null],
  ]);
  const next = { ...window, rev: 2, state: "withdrawn" as const, why: "undone" };
  expect(await t.open.store.change((q) => q.specs.revise(next))).toBe(true);
  expect(await t.open.store.change((q) => q.specs.revise(next))).toBe(false);
  expect(await known(heron, null)).toEqual(["p", `s-${heron}`]);
  expect((await t.open.store.read((q) => q.specs.history("w"))).map(({ rev, state }) => [rev, state])).toEqual([
    [1, "live"],
    [2, "withdrawn"],
  ]);
});

test("bikes of one model share them in the group where both are shown, and in no other", async () => {
  const [heron, wren, far, other] = [
    await added("Ines", "Heron", "Ostler Tarn 650"),
    await added("Odo", "Wren", "OSTLER TARN-650"),
    await added("Pia", "Merle", "Ostler Tarn 650", "g2"),
    await added("Ria", "Other", "Ostler Fell 500"),
  ];
  await t.open.store.change((q) => q.specs.add(aSpec(heron)));
  expect(await known(wren, "Ostler Tarn 650")).toEqual([`s-${heron}`]);
  expect(await known(wren, "Ostler Tarn 650", "g2")).toEqual([]);
  expect(await known(far, "Ostler Tarn 650")).toEqual([]);
  expect(await known(other, "Ostler Fell 500")).toEqual([]);
  expect(await t.open.store.read((q) => q.specs.modelsIn("g1" as GroupId))).toEqual(["Ostler Tarn 650", "OSTLER TARN-650", "Ostler Fell 500"]);
  const settled = await t.open.store.read(async (q) =>
    specFor(await specsOf(q, { id: wren, model: "Ostler Tarn 650" }, null), { id: wren }, "rear axle torque"),
  );
  expect(settled).toMatchObject({ is: "one", spec: { typed: "98 Nm" } });
});

test("a file from before there were specs, with a bike in it, is brought up to date as it stands", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bikes (id, owner, nickname, nickname_key, kind, state, equipment, plan_column, conditions, known_date, known_ridden, whole_since_new, plan_hash, edits, facts_rev, rules_version, added_at)
    values ('b1', 'm1', 'Heron', 'heron', 'chain-drive twin', 'riding', '{}', 'mi', '[]', '2026-01-01', 0, 0, 'h', '[]', 1, 1, ${NOW})`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const row = await now.db.selectFrom("bikes").select(["nickname", "model", "model_key"]).executeTakeFirstOrThrow();
  expect(row).toEqual({ nickname: "Heron", model: null, model_key: null });
  await sql`pragma foreign_keys = off`.execute(now.db);
  await storeOn(now).change((q) => q.specs.add(aSpec("b1" as BikeId)));
  expect(await storeOn(now).read((q) => q.specs.ofBikes(["b1" as BikeId]))).toHaveLength(1);
  await now.close();
  await rm(folder, { recursive: true });
});

test("a file from before plans were shared, with a plan in it, is brought up to date; the latest shared for a model is the group's", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261330-specs" });
  await sql`insert into plan_bases (hash, json) values ('abc1', '{"name":"A plan","source":"a test","items":[]}')`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  const plan = { id: "p1", group: "g1" as GroupId, model: "Ostler Tarn 650", hash: "abc1", manual: "workshop manual", by: "Ines" as MemberId, at: NOW };
  await store.change((q) => q.groupPlans.add(plan));
  const later = { ...plan, id: "p2", manual: "second edition", at: "2026-11-27T09:00:00.000Z" as Instant };
  await store.change((q) => q.groupPlans.add(later));
  expect(await store.read((q) => q.groupPlans.latest("g1" as GroupId, "OSTLER tarn-650"))).toEqual(later);
  expect(await store.read((q) => q.groupPlans.latest("g2" as GroupId, "Ostler Tarn 650"))).toBeNull();
  expect(await store.read((q) => q.bikes.baseBeginning("abc"))).toMatchObject({ hash: "abc1", base: { name: "A plan" } });
  expect(await store.read((q) => q.bikes.baseBeginning("abd"))).toBeNull();
  await now.close();
  await rm(folder, { recursive: true });
});
