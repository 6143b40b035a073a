// What must be the same on SQLite and on PostgreSQL: figures, order, and one effect of what arrives twice at once.

import { sql } from "kysely";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { EventId, GroupId, MemberId } from "../../src/core/ids.ts";
import type { Opened } from "../../src/store/db.ts";
import type { Delivery } from "../../src/store/notices.ts";
import { openDatabase } from "../../src/store/open.ts";
import { type Store, storeOn } from "../../src/store/store.ts";
import { aDatabase, ON_POSTGRES, type TestDatabase } from "../support/database.ts";

let database: TestDatabase;
let opened: Opened;
let store: Store;
beforeEach(async () => {
  database = await aDatabase();
  opened = await openDatabase(database.address);
  store = storeOn(opened);
});
afterEach(async () => {
  await opened.close();
  await database.drop();
});

const NOW = "2026-11-25T10:00:00.000Z" as Instant;
const LEASE = "2026-11-25T10:10:00.000Z" as Instant;
const LATER = "2026-11-25T10:20:00.000Z" as Instant;
const delivery = (n: number): Delivery => ({
  ...{ id: `d${n}`, recipient: `member/${n}`, window: NOW, member: `m${n}` as MemberId, group: null, notBefore: NOW, state: "queued", attempt: 0 },
  ...{ sentFrom: null, leaseUntil: null, messageId: null, why: null, trace: null, drawn: null },
});

test("200,000 miles in tenths of a millimetre and 0.1 + 0.2 are read back as they were written", async () => {
  const dial = 200_000 * 16_093_440;
  const { db } = opened;
  await sql`create table figures (${sql.ref("dial")} ${ON_POSTGRES ? sql`bigint` : sql`integer`}, ${sql.ref("value")} ${ON_POSTGRES ? sql`double precision` : sql`real`})`.execute(
    db,
  );
  await sql`insert into figures values (${dial}, ${0.1 + 0.2})`.execute(db);
  expect((await sql<object>`select * from figures`.execute(db)).rows).toEqual([{ dial, value: 0.1 + 0.2 }]);
  expect((await sql<{ n: number }>`select count(*) as n, sum(dial) as s from figures`.execute(db)).rows).toEqual([{ n: 1, s: dial }]);
});

test("names sort by character, capitals first, whatever the server's language", async () => {
  for (const id of ["b", "a", "Z", "ä", "_"]) await store.change((q) => q.room.setMeta(id, "x"));
  expect((await opened.db.selectFrom("meta").select("key").orderBy("key").execute()).map(({ key }) => key)).toEqual(["Z", "_", "a", "b", "ä"]);
});

describe("at once", () => {
  test("one event that arrives twenty times acts once", async () => {
    let acted = 0;
    const outcomes = await Promise.all(
      Array.from({ length: 20 }, () =>
        store.act("e-1" as EventId, NOW, async (q) => {
          await q.room.setMeta("count", String(Number((await q.room.meta("count")) ?? 0) + 1));
          acted++;
        }),
      ),
    );
    expect(outcomes.filter(({ first }) => first)).toHaveLength(1);
    expect([await store.read((q) => q.room.meta("count")), acted >= 1]).toEqual(["1", true]);
  });

  test("twenty events that read and write the same row lose nothing", async () => {
    await Promise.all(
      Array.from({ length: 20 }, (_, n) =>
        store.act(`e-${n}` as EventId, NOW, async (q) => q.room.setMeta("count", String(Number((await q.room.meta("count")) ?? 0) + 1))),
      ),
    );
    expect(await store.read((q) => q.room.meta("count"))).toBe("20");
  });

  test("a delivery is claimed by one of many, and by another only after its lease", async () => {
    await store.change((q) => q.notices.queue(Array.from({ length: 30 }, (_, n) => delivery(n))));
    const claim = (at: Instant) => store.change((q) => q.notices.claim(at, LEASE, 7));
    const claimed = (await Promise.all(Array.from({ length: 8 }, () => claim(NOW)))).flat().map(({ id }) => id);
    expect([claimed.length, new Set(claimed).size]).toEqual([30, 30]);
    expect(await claim(LEASE)).toEqual([]);
    expect((await claim(LATER)).map(({ attempt }) => attempt)).toEqual(Array(7).fill(2));
  });

  test("who was too slow may not begin what another has taken over", async () => {
    await store.change((q) => q.notices.queue([delivery(1)]));
    const [slow] = await store.change((q) => q.notices.claim(NOW, LEASE, 1));
    const [quick] = await store.change((q) => q.notices.claim(LATER, LATER, 1));
    const begun = (mine: Delivery | undefined) => store.change((q) => q.notices.begun(mine as Delivery, { channel: "c", after: null }, null));
    expect([await begun(slow), await begun(quick)]).toEqual([false, true]);
  });

  test("who was too slow does not settle, put off or give back what another has taken over", async () => {
    await store.change((q) => q.notices.queue([delivery(1)]));
    const [slow] = (await store.change((q) => q.notices.claim(NOW, LEASE, 1))) as [Delivery];
    const [quick] = (await store.change((q) => q.notices.claim(LATER, LATER, 1))) as [Delivery];
    await store.change((q) => q.notices.finish(slow, "failed", null, "went wrong"));
    await store.change((q) => q.notices.postpone(slow, LATER, true));
    await store.change((q) => q.notices.giveBack([slow]));
    const row = () => opened.db.selectFrom("deliveries").select(["state", "attempt", "why"]).executeTakeFirstOrThrow();
    expect(await row()).toEqual({ state: "sending", attempt: 2, why: null });
    await store.change((q) => q.notices.finish(quick, "sent", "m", null));
    for (const late of [slow, quick]) {
      await store.change((q) => q.notices.postpone(late, LATER, true));
      await store.change((q) => q.notices.finish(late, "failed", null, "went wrong"));
    }
    expect(await row()).toEqual({ state: "sent", attempt: 2, why: null });
  });

  test("deliveries are claimed in the order of their moments", async () => {
    const at = ["2026-11-25T09:30:00.000Z", "2026-11-25T09:10:00.000Z", "2026-11-25T09:20:00.000Z"] as Instant[];
    await store.change((q) => q.notices.queue(at.map((notBefore, n) => ({ ...delivery(n), notBefore }))));
    const ids: string[] = [];
    for (let n = 0; n < 3; n++) ids.push(...(await store.change((q) => q.notices.claim(NOW, LEASE, 1))).map(({ id }) => id));
    expect(ids).toEqual(["d1", "d2", "d0"]);
  });

  test("a read sees one moment, whatever is written meanwhile", async () => {
    await store.change((q) => q.room.setMeta("a", "1"));
    // On SQLite the write waits for the read; on PostgreSQL it is done beside it, unseen.
    const writing: Promise<unknown>[] = [];
    const seen = await store.read(async (q) => {
      const first = await q.room.meta("a");
      writing.push(store.change((w) => w.room.setMeta("a", "2")));
      await new Promise((resolve) => setTimeout(resolve, 50));
      return [first, await q.room.meta("a"), (await q.members.groupsByIds(["g" as GroupId])).size];
    });
    await Promise.all(writing);
    expect([seen, await store.read((q) => q.room.meta("a"))]).toEqual([["1", "1", 0], "2"]);
  });
});
