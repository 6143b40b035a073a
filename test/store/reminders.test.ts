// A file from before matters could be switched off, with a member, a group and something put off in it.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../../src/core/ids.ts";
import { queueDigests } from "../../src/reminders/digest.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";

test("its members and groups are told of everything, and what was put off stays so until its day", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261351-seasons-and-dates" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into members (id, remind_by, remind_weekday, remind_time, quiet_from, quiet_to) values ('m1', 'off', 2, '10:00', '22:00', '07:00')`.execute(
    before.db,
  );
  await sql`insert into groups (id, zone, language, reads) values ('g1', 'Europe/Lisbon', 'en', 1)`.execute(before.db);
  await sql`insert into put_offs (bike, item, until_date, by, at) values ('b1', 'brake-fluid.replace', '2027-01-09', 'm1', '2026-11-26T10:00:00.000Z')`.execute(
    before.db,
  );
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  const [member] = [...(await store.read((q) => q.members.byIds(["m1" as MemberId]))).values()];
  expect(member?.reminders).toEqual({ by: "off", weekday: 2, time: "10:00", quiet: { from: "22:00", to: "07:00" } });
  const [group] = [...(await store.read((q) => q.members.groupsByIds(["g1" as GroupId]))).values()];
  expect([group?.zone, group?.topics]).toEqual(["Europe/Lisbon", undefined]);
  expect(await store.read((q) => q.notices.putOffsOf(["b1" as BikeId]))).toEqual([
    { bike: "b1", item: "brake-fluid.replace", until: "2027-01-09", dial: null, at: "2026-11-26T10:00:00.000Z" },
  ]);
  if (member !== undefined) await store.change((q) => q.members.save({ ...member, reminders: { ...member.reminders, topics: { season: false } } }));
  expect((await store.read((q) => q.members.byIds(["m1" as MemberId]))).get("m1" as MemberId)?.reminders.topics).toEqual({ season: false });
  await now.close();
  await rm(folder, { recursive: true });
});

test("a group that had named a channel has its digest planned anew, for its own hour; one without a channel has none", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261410-reminders" });
  await sql`insert into groups (id, zone, language, reads, reading_channel) values ('g1', 'Europe/Lisbon', 'en', 1, 'g1'), ('g2', 'UTC', 'en', 1, null)`.execute(
    before.db,
  );
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  // A Saturday; the migration's own moment is past, and nothing is posted for it.
  const tick = "2026-11-28T03:00:00.000Z" as Instant;
  await queueDigests(store, tick, () => "one");
  expect(await store.read((q) => q.digests.due("9999" as Instant, 10))).toEqual([{ group: "g1", at: "2026-11-29T18:00:00.000Z" }]);
  expect(await store.read((q) => q.notices.nextDelivery())).toBeNull();
  await queueDigests(store, "2026-11-29T18:00:00.000Z" as Instant, () => "one");
  expect(await store.read((q) => q.notices.nextDelivery())).toBe("2026-11-29T18:00:00.000Z");
  expect((await store.read((q) => q.members.groupsByIds(["g1" as GroupId]))).get("g1" as GroupId)?.digest).toBeUndefined();
  await now.close();
  await rm(folder, { recursive: true });
});
