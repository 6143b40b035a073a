// Trips in the database: a file from before they could be ridden together, with one in it, and one that gave way to another and stands again.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import type { BikeId, GroupId, MemberId } from "../../src/core/ids.ts";
import { stretchOf } from "../../src/core/quantity/distance.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import type { TripRecord } from "../../src/store/trips.ts";

const NOW = instant("2026-11-26T13:40:00Z");
const [BIKE, ME, GROUP] = ["b1" as BikeId, "m1" as MemberId, "g1" as GroupId];

test("a trip planned before is a trip still, can be shared, gives way and stands again", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611270150-digests" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bike_events (id, bike, what, from_date, to_date, distance, typed, cause, source, by, at)
    values ('t1', 'b1', 'trip', '2027-06-12', '2027-06-14', ${stretchOf(500, "mi")}, '500 mi from 12 June', 'two-up', 'e1', 'm1', ${NOW})`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  await sql`pragma foreign_keys = off`.execute(now.db);
  const store = storeOn(now);
  const tripsOf = async () => (await store.read((q) => q.bikes.turns([BIKE]))).trips.get(BIKE) ?? [];
  const old = { id: "t1", typed: "500 mi from 12 June", use: "two-up", ride: null } as const;
  expect(await tripsOf()).toMatchObject([{ ...old, from: "2027-06-12", to: "2027-06-14", distance: stretchOf(500, "mi") }]);
  await store.change((q) => q.trips.share("t1", GROUP));
  expect(await store.read((q) => q.trips.onRide("t1", GROUP))).toMatchObject([{ id: "t1", bike: BIKE, ride: { id: "t1", group: GROUP } }]);
  expect(await store.read((q) => q.trips.onRide("t1", "g2" as GroupId))).toEqual([]);
  const next: TripRecord = {
    ...{ id: "t2", from: localDate("2027-06-13"), to: localDate("2027-06-13"), distance: stretchOf(100, "km"), typed: "100 km on 13 June" },
    ...{ use: "solo", source: "e2", plannedOn: localDate("2026-11-26"), ride: null },
  };
  await store.change((q) => q.trips.add(BIKE, next, ME, NOW));
  expect(await store.change((q) => q.trips.withdraw("t1", NOW, "t2"))).toBe(true);
  expect(await store.change((q) => q.trips.withdraw("t1", NOW, "t2"))).toBe(false);
  expect(await tripsOf()).toEqual([next]);
  expect(await store.change((q) => q.trips.restoreReplaced("t2"))).toMatchObject([{ id: "t1" }]);
  expect((await tripsOf()).map(({ id }) => id)).toEqual(["t1", "t2"]);
  await now.close();
  await rm(folder, { recursive: true });
});
