// The database file: what is written is read back, and a file that cannot be used is refused with the way forward, untouched.

import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import SQLite from "better-sqlite3";
import { sql } from "kysely";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { instant } from "../../src/core/calendar/zones.ts";
import type { GroupId, MemberId } from "../../src/core/ids.ts";
import { StoreRefusal } from "../../src/store/refusal.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";

let folder: string;
let file: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  file = path.join(folder, "practice.sqlite");
});
afterEach(() => rm(folder, { recursive: true }));

const refusal = async (open: Promise<unknown>): Promise<StoreRefusal> => {
  const error = await open.then(
    () => null,
    (reason: unknown) => reason,
  );
  if (!(error instanceof StoreRefusal)) throw new Error("it was not refused", { cause: error });
  return error;
};

/** A folder of two releases' migrations: the second adds a column, or fails half-way. */
async function releases(second: "works" | "fails"): Promise<{ readonly old: string; readonly new: string }> {
  const [old, next] = [path.join(folder, "old"), path.join(folder, "new")];
  await mkdir(old);
  await writeFile(
    path.join(old, "203001010000-bolts.js"),
    `export const up = async (db, { text, strict }) => { await strict(db.schema.createTable("bolts").addColumn("thread", text)).execute(); };`,
  );
  await cp(old, next, { recursive: true });
  await writeFile(
    path.join(next, "203002010000-pitch.js"),
    `export const up = async (db, { whole }) => {
      await db.schema.alterTable("bolts").addColumn("pitch", whole).execute();
      ${second === "fails" ? `throw new Error("half-way");` : ""}
    };`,
  );
  await writeFile(path.join(folder, "package.json"), `{"type":"module"}`);
  return { old, new: next };
}

describe("columns", () => {
  test("200,000 miles in tenths of a millimetre and 0.1 + 0.2 are read back as they were written", async () => {
    const dial = 200_000 * 16_093_440;
    const row = {
      ...{ id: "r1", rev: 1, current: 1 as const, state: "live", bike: "b1", kind: "tread", place: "front", dial, value: 0.1 + 0.2, typed: "0.3", unit: "mm" },
      ...{
        on_date: "2027-03-01",
        message: null,
        ordinal: 0,
        logged_at: "2027-03-01T09:00:00.000Z",
        by: "m1",
        at: "2027-03-01T09:00:00.000Z",
        why: null,
        detail: null,
      },
    };
    const opened = await openSqlite(file);
    await expect(opened.db.insertInto("readings").values(row).execute()).rejects.toThrow(/FOREIGN KEY/);
    await sql`pragma foreign_keys = off`.execute(opened.db);
    await opened.db.insertInto("readings").values(row).execute();
    await opened.close();
    const again = await openSqlite(file);
    expect(await again.db.selectFrom("readings").select(["dial", "value"]).executeTakeFirstOrThrow()).toEqual({ dial, value: 0.1 + 0.2 });
    await again.close();
  });

  test("a value of the wrong type, or a flag that is neither 0 nor 1, is not let in", async () => {
    const opened = await openSqlite(file);
    const group = { id: "g1", zone: "UTC", language: "en", distance: null, pressure: null, reads: 1 as const };
    await expect(
      opened.db
        .insertInto("groups")
        .values({ ...group, reads: 2 as 1 })
        .execute(),
    ).rejects.toThrow(/CHECK/);
    await expect(
      opened.db
        .insertInto("room_messages")
        .values({ id: "1", author: "m1", place: "dm", text: Buffer.from("x") as unknown as string, at: "x" })
        .execute(),
    ).rejects.toThrow(/TEXT/);
    await opened.close();
  });

  test("it is written through to the disk, and read while it is written", async () => {
    const opened = await openSqlite(file);
    const pragma = async (name: string) => Object.values((await sql<object>`pragma ${sql.raw(name)}`.execute(opened.db)).rows[0] ?? {})[0];
    expect([await pragma("journal_mode"), await pragma("synchronous"), await pragma("foreign_keys")]).toEqual(["wal", 2, 1]);
    await opened.close();
  });
});

describe("a release with a new migration", () => {
  test("keeps the rows, and leaves a copy that can be read from before", async () => {
    const { old, new: next } = await releases("works");
    const before = await openSqlite(file, { migrations: old });
    await before.db
      .insertInto("bolts" as never)
      .values({ thread: "M8" } as never)
      .execute();
    await before.close();
    const after = await openSqlite(file, { migrations: next });
    expect(
      await after.db
        .selectFrom("bolts" as never)
        .selectAll()
        .execute(),
    ).toEqual([{ thread: "M8", pitch: null }]);
    await after.close();
    const copy = new SQLite(`${file}.before-update`, { readonly: true });
    expect(copy.prepare("select * from bolts").all()).toEqual([{ thread: "M8" }]);
    copy.close();
  });

  test("that fails leaves everything as it was", async () => {
    const { old, new: next } = await releases("fails");
    const before = await openSqlite(file, { migrations: old });
    await before.db
      .insertInto("bolts" as never)
      .values({ thread: "M8" } as never)
      .execute();
    await before.close();
    const refused = await refusal(openSqlite(file, { migrations: next }));
    expect([refused.reason, refused.message]).toEqual([
      "migration failed",
      "The database could not be brought up to date. It stands as it was; a copy from before is beside it.",
    ]);
    const again = await openSqlite(file, { migrations: old });
    expect(
      await again.db
        .selectFrom("bolts" as never)
        .selectAll()
        .execute(),
    ).toEqual([{ thread: "M8" }]);
    await again.close();
  });

  test("is refused by the release before it, in one sentence", async () => {
    const { old, new: next } = await releases("works");
    await (await openSqlite(file, { migrations: next })).close();
    const refused = await refusal(openSqlite(file, { migrations: old }));
    expect(refused.message).toBe("This database was written by a newer Tappet. Start that version, or restore a backup made before the update.");
  });

  test("makes no copy of a new file, nor when there is nothing to do", async () => {
    await (await openSqlite(file)).close();
    await (await openSqlite(file)).close();
    expect((await readdir(folder)).filter((name) => name.includes("before"))).toEqual([]);
  });
});

test("a file of the first release, with a group in it, is brought up to date as it stands", async () => {
  const first = await openSqlite(file, { upTo: "202611251400-first" });
  await sql`insert into groups (id, zone, language, distance, pressure, reads) values ('g1', 'Europe/Lisbon', 'en', 'mi', null, 1)`.execute(first.db);
  await first.close();
  const now = await openSqlite(file);
  const group = (await storeOn(now).read((q) => q.members.groupsByIds(["g1" as GroupId]))).get("g1" as GroupId);
  expect(group).toEqual({
    ...{ id: "g1", zone: "Europe/Lisbon", language: "en", distance: "mi", pressure: null, reads: true },
    ...{ readingChannel: null, place: null, season: null, riding: null },
  });
  await now.close();
});

test("a file from before wrenches had a drive and a kind, with one in it, is brought up to date as it stands", async () => {
  const before = await openSqlite(file, { upTo: "202611252300-wrenches" });
  await sql`insert into wrenches (id, owner, name, name_key, low, high, step, unit, accuracy, at)
    values ('w1', 'm1', 'Small one', 'small one', 5, 25, 0.5, 'N·m', 0.04, '2026-11-25T10:00:00.000Z')`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const store = storeOn(now);
  const small = { id: "w1", name: "Small one", low: 5, high: 25, step: 0.5, unit: "N·m", accuracy: 0.04, drive: null, kind: null } as const;
  expect(await store.read((q) => q.wrenches.ofOwner("m1" as MemberId))).toEqual([small]);
  await store.change((q) => q.wrenches.put("m1" as MemberId, { ...small, drive: "1/4 in", kind: "click" }, instant("2026-11-25T11:00:00Z")));
  expect(await store.read((q) => q.wrenches.ofOwner("m1" as MemberId))).toEqual([{ ...small, drive: "1/4 in", kind: "click" }]);
  await now.close();
});

test("a file from before readings had a detail, with one in it, is brought up to date as it stands", async () => {
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into readings (id, rev, current, state, bike, kind, place, dial, value, typed, unit, on_date, message, ordinal, logged_at, by, at, why)
    values ('r1', 1, 1, 'live', 'b1', 'tread', 'front', null, 4.5, '4.5', 'mm', '2026-11-25', null, 0, '2026-11-25T10:00:00.000Z', 'm1', '2026-11-25T10:00:00.000Z', null)`.execute(
    before.db,
  );
  await before.close();
  const now = await openSqlite(file);
  await sql`pragma foreign_keys = off`.execute(now.db);
  const store = storeOn(now);
  const old = await store.read((q) => q.readings.byId("r1"));
  expect(old).toMatchObject({ kind: "tread", place: "front", value: 4.5, unit: "mm", detail: null });
  if (old === null) throw new Error("it is gone");
  const detail = { conditions: ["cold"], points: [4.5, 4.8, 5] } as const;
  await store.change((q) => q.readings.log([{ ...old, id: "r2", detail }]));
  expect((await store.read((q) => q.readings.byId("r2")))?.detail).toEqual(detail);
  await now.close();
});

describe("a file that cannot be used", () => {
  test("that is no database is refused and left as it is", async () => {
    await writeFile(file, "torque 24 Nm\n".repeat(1000));
    const before = await readFile(file);
    const refused = await refusal(openSqlite(file));
    expect(refused.reason).toBe("damaged");
    expect(refused.message).toBe(
      `${file} cannot be read whole: it is damaged, or no database. Nothing was changed: put a backup in its place, or move it away to start empty.`,
    );
    expect(await readFile(file)).toEqual(before);
  });

  test("whose inside is damaged is refused too", async () => {
    const opened = await openSqlite(file);
    await opened.close();
    const bytes = await readFile(file);
    // The root page of the schema stays; the pages behind it are overwritten.
    bytes.fill(0xa5, 100, 4096);
    await writeFile(file, bytes);
    expect((await refusal(openSqlite(file))).reason).toBe("damaged");
    expect(await readFile(file)).toEqual(bytes);
  });

  test("in a folder that is not there is refused by name", async () => {
    const there = path.join(folder, "nowhere", "practice.sqlite");
    expect((await refusal(openSqlite(there))).message).toBe(`${there} cannot be opened. Check that the folder exists and can be written to.`);
  });

  test("of the other face is refused", async () => {
    const opened = await openSqlite(file);
    const store = storeOn(opened);
    await store.change((q) => q.room.claimFace("discord"));
    expect((await refusal(store.change((q) => q.room.claimFace("terminal")))).message).toBe(
      "This database belongs to the discord face. Name another file in TAPPET_DATABASE.",
    );
    await store.change((q) => q.room.claimFace("discord"));
    await opened.close();
  });
});
