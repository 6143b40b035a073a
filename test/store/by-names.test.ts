// What bikes are called beside their nicknames, in the database.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { expect, test } from "vitest";
import { instant } from "../../src/core/calendar/zones.ts";
import type { BikeId, MemberId } from "../../src/core/ids.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { talk } from "../support/talk.ts";

const INES = "Ines" as MemberId;
const NOW = instant("2026-11-27T09:00:00Z");

test("a name is one bike's of its owner: said of another it moves, and of another owner it is another", async () => {
  const t = await talk();
  const bikes: BikeId[] = [];
  for (const name of ["Heron", "Bramble"])
    bikes.push((await t.one({ as: "Ines", in: "dm", run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` })).data.bike as BikeId);
  const [heron = "" as BikeId, bramble = "" as BikeId] = bikes;
  const of = () => t.open.store.read((q) => q.byNames.ofOwner(INES));
  await t.open.store.change(async (q) => {
    await q.byNames.put(INES, { bike: heron, name: "Big one" }, NOW);
    await q.byNames.put(INES, { bike: heron, name: "old lady" }, instant("2026-11-27T09:01:00Z"));
    await q.byNames.put("Marek" as MemberId, { bike: heron, name: "big one" }, NOW);
  });
  expect(await of()).toEqual([
    { bike: heron, name: "Big one" },
    { bike: heron, name: "old lady" },
  ]);
  await t.open.store.change((q) => q.byNames.put(INES, { bike: bramble, name: "big  one" }, instant("2026-11-27T09:02:00Z")));
  expect(await of()).toEqual([
    { bike: heron, name: "old lady" },
    { bike: bramble, name: "big  one" },
  ]);
  expect(await t.open.store.change((q) => q.byNames.remove(INES, { bike: heron, name: "big one" }))).toBe(false);
  expect(await t.open.store.change((q) => q.byNames.remove(INES, { bike: bramble, name: "BIG ONE" }))).toBe(true);
  expect(await of()).toEqual([{ bike: heron, name: "old lady" }]);
  await t.close();
});

test("a file from before bikes had such names, with a bike in it, is brought up to date; the names go with the bike", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611270241-evenings" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bikes (id, owner, nickname, nickname_key, kind, state, equipment, plan_column, conditions, known_date, known_ridden, whole_since_new, plan_hash, edits, facts_rev, rules_version, added_at)
    values ('b1', 'Ines', 'Heron', 'heron', 'chain-drive twin', 'riding', '{}', 'mi', '[]', '2026-01-01', 0, 0, 'h', '[]', 1, 1, ${NOW})`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  const named = { bike: "b1" as BikeId, name: "big one" };
  expect(await store.read((q) => q.byNames.ofOwner(INES))).toEqual([]);
  await store.change((q) => q.byNames.put(INES, named, NOW));
  expect(await store.read((q) => q.byNames.ofOwner(INES))).toEqual([named]);
  await sql`delete from bikes where id = 'b1'`.execute(now.db);
  expect(await store.read((q) => q.byNames.ofOwner(INES))).toEqual([]);
  await now.close();
  await rm(folder, { recursive: true });
});
