// Notices (one thing to tell, once) and deliveries (one message that gathers them).

import { sql } from "kysely";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, ItemKey, MemberId } from "../core/ids.ts";
import type { Dial } from "../core/quantity/distance.ts";
import type { NoticeKind } from "../core/reminding.ts";
import type { Db } from "./db.ts";
import type { Tables } from "./tables.ts";

/** One thing to tell. `key` is unique: the same thing is never told twice. */
export type Notice = {
  readonly id: string;
  readonly key: string;
  readonly member: MemberId;
  readonly bike: BikeId;
  readonly kind: NoticeKind;
  readonly item: ItemKey | null;
  readonly notBefore: Instant;
  readonly state: "waiting" | "told" | "dropped";
  readonly delivery: string | null;
  readonly why: string | null;
  readonly at: Instant;
};

/** One message; unique per recipient and window, so that a window is never served twice. */
export type Delivery = {
  readonly id: string;
  readonly recipient: string;
  readonly window: string;
  readonly member: MemberId | null;
  readonly group: GroupId | null;
  readonly notBefore: Instant;
  readonly state: "queued" | "sending" | Ended;
  readonly attempt: number;
  readonly sentFrom: Instant | null;
  readonly leaseUntil: Instant | null;
  readonly messageId: string | null;
  readonly why: string | null;
  /** Where it was begun; null until then. */
  readonly trace: Trace | null;
  /** What it says, where that takes several messages and one may be there already; as whoever began it wrote it. */
  readonly drawn: string | null;
};
/** One try at a delivery: what another process has claimed since is not touched by it. */
export type Claimed = Pick<Delivery, "id" | "attempt">;
/** `unconfirmed`: it may be there, and it cannot be looked for; it is not sent again. */
export type Ended = "sent" | "empty" | "failed" | "unconfirmed";
/** Where a message was to be put, and the newest message there before. */
export type Trace = { readonly channel: string; readonly after: string | null };

/** `dial`: sooner, once the dial shows it; null when only the day counts. `at`: when that was said. */
export type PutOff = { readonly bike: BikeId; readonly item: ItemKey; readonly until: LocalDate; readonly dial: Dial | null; readonly at: Instant };

/** Rows in one statement: a database bounds the figures that one may hold, and a hundred bikes may have thousands of things to tell. */
const ROWS = 1000;

export function noticesRepo(db: Db) {
  return {
    /**
     * Adds the notices whose key is new, takes up again those dropped before they were told, and moves those that wait for a moment to come, since whoever gets them
     * may wish another by now; one told stays told. Answers the keys that wait so, for which there is to be a delivery.
     */
    async addNew(notices: readonly Notice[], now: Instant): Promise<string[]> {
      const waiting: string[] = [];
      for (let n = 0; n < notices.length; n += ROWS) {
        const rows = await db
          .insertInto("notices")
          .values(notices.slice(n, n + ROWS).map(noticeRow))
          .onConflict((c) =>
            c
              .column("key")
              .doUpdateSet((e) => ({ state: "waiting", why: null, not_before: e.ref("excluded.not_before"), at: e.ref("excluded.at") }))
              .where((w) => w.or([w("notices.state", "=", "dropped"), w.and([w("notices.state", "=", "waiting"), w("notices.not_before", ">", now)])])),
          )
          .returning("key")
          .execute();
        waiting.push(...rows.map((row) => row.key));
      }
      return waiting;
    },
    async ofDelivery(delivery: string): Promise<Notice[]> {
      return (await db.selectFrom("notices").selectAll().where("delivery", "=", delivery).orderBy("at").orderBy("id").execute()).map(noticeOf);
    },
    async delivery(id: string): Promise<Delivery | null> {
      const row = await db.selectFrom("deliveries").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : deliveryOf(row);
    },
    /** What of these kinds was told of each bike, and when it went out. */
    async toldOf(bikes: readonly BikeId[], kinds: readonly NoticeKind[]): Promise<(Pick<Notice, "key" | "bike"> & { readonly sent: Instant })[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("notices as n")
        .leftJoin("deliveries as d", (j) => j.onRef("d.id", "=", "n.delivery"))
        .select((e) => ["n.key", "n.bike", e.fn.coalesce("d.sent_from", "n.not_before").as("sent")])
        .where("n.bike", "in", [...bikes])
        .where("n.state", "=", "told")
        .where("n.kind", "in", [...kinds])
        .execute();
      return rows.map((row) => ({
        key: row.key,
        bike: row.bike as BikeId,
        sent: row.sent as Instant,
      }));
    },
    /** When the last message that got out to a recipient was sent, of those that told of one of these kinds. */
    async lastSent(recipient: string, kinds: readonly NoticeKind[], but: string): Promise<Instant | null> {
      const row = await db
        .selectFrom("deliveries as d")
        .innerJoin("notices as n", (j) => j.onRef("n.delivery", "=", "d.id"))
        .select("d.sent_from")
        .where("d.recipient", "=", recipient)
        .where("d.state", "in", ["sent", "unconfirmed"])
        .where("d.id", "!=", but)
        .where("n.kind", "in", [...kinds])
        .orderBy("d.window", "desc")
        .limit(1)
        .executeTakeFirst();
      return (row?.sent_from ?? null) as Instant | null;
    },
    async waitingOfMember(member: MemberId, now: Instant): Promise<Notice[]> {
      const rows = await db
        .selectFrom("notices")
        .selectAll()
        .where("member", "=", member)
        .where("state", "=", "waiting")
        .where("not_before", "<=", now)
        .orderBy("at")
        .orderBy("id")
        .execute();
      return rows.map(noticeOf);
    },
    /** Marks notices as told by a delivery. */
    async tell(ids: readonly string[], delivery: string): Promise<void> {
      if (ids.length === 0) return;
      await db
        .updateTable("notices")
        .set({ state: "told", delivery, why: null })
        .where("id", "in", [...ids])
        .where("state", "=", "waiting")
        .execute();
    },
    /** Drops notices that are no longer true: waiting ones, and those marked by a delivery that did not get out. */
    async drop(ids: readonly string[], delivery: string, why: string): Promise<void> {
      if (ids.length === 0) return;
      await db
        .updateTable("notices")
        .set({ state: "dropped", delivery: null, why })
        .where("id", "in", [...ids])
        .where((w) => w.or([w("state", "=", "waiting"), w("delivery", "=", delivery)]))
        .execute();
    },

    /** Makes the deliveries of windows that have none yet; one that found nothing to tell is taken up again. */
    async queue(deliveries: readonly Delivery[]): Promise<void> {
      if (deliveries.length === 0) return;
      await db
        .insertInto("deliveries")
        .values(deliveries.map(deliveryRow))
        .onConflict((c) =>
          c
            .columns(["recipient", "window"])
            .doUpdateSet((e) => ({ state: "queued", why: null, not_before: e.ref("excluded.not_before") }))
            .where("deliveries.state", "=", "empty"),
        )
        .execute();
    },
    /** Gives a claimed delivery back until a later moment; one that was not tried has not used up a try. */
    async postpone({ id, attempt }: Claimed, until: Instant, tried: boolean): Promise<void> {
      await db
        .updateTable("deliveries")
        .set((e) => ({ state: "queued", not_before: until, lease_until: null, attempt: e("attempt", "-", tried ? 0 : 1) }))
        .where("id", "=", id)
        .where("state", "=", "sending")
        .where("attempt", "=", attempt)
        .execute();
    },
    /** Gives claimed deliveries back untried, to be taken at the next tick. */
    async giveBack(all: readonly Claimed[]): Promise<void> {
      if (all.length === 0) return;
      await db
        .updateTable("deliveries")
        .set((e) => ({ state: "queued", lease_until: null, attempt: e("attempt", "-", 1) }))
        .where((w) => w.or(all.map(({ id, attempt }) => w.and([w("id", "=", id), w("attempt", "=", attempt)]))))
        .where("state", "=", "sending")
        .execute();
    },
    /** What a process that is gone had claimed, when it is certain that no other process is there. Answers how many. */
    async release(): Promise<number> {
      const rows = await db.updateTable("deliveries").set({ state: "queued", lease_until: null }).where("state", "=", "sending").returning("id").execute();
      return rows.length;
    },
    /** Keeps where a delivery is begun, and what it says where that takes several messages. False: it has been claimed anew by another process, or is done. */
    async begun({ id, attempt }: Claimed, trace: Trace, drawn: string | null): Promise<boolean> {
      const rows = await db
        .updateTable("deliveries")
        .set({ trace_channel: trace.channel, trace_after: trace.after, drawn })
        .where("id", "=", id)
        .where("state", "=", "sending")
        .where("attempt", "=", attempt)
        .returning("id")
        .execute();
      return rows.length === 1;
    },
    /**
     * The clock was ahead and has been set right: what was noted in the time that has not come is taken back, unless it was told already;
     * what was put off from then, or claimed then, is taken up now. @param until the end of a lease taken now
     */
    async replanned(now: Instant, until: Instant): Promise<void> {
      await db.updateTable("notices").set({ state: "dropped", why: "the clock was set back" }).where("state", "=", "waiting").where("at", ">", now).execute();
      await db
        .updateTable("deliveries")
        .set({ not_before: now })
        .where("state", "=", "queued")
        .where("sent_from", "is not", null)
        .where("not_before", ">", until)
        .execute();
      await db.updateTable("deliveries").set({ lease_until: now }).where("state", "=", "sending").where("lease_until", ">", until).execute();
      // A window that is still to come was served too early; it is free again.
      await db
        .updateTable("deliveries")
        .set({ window: sql<string>`${sql.ref("window")} || '~' || ${sql.ref("id")}` })
        .where("window", ">", now)
        .where("state", "in", ["sent", "empty", "failed", "unconfirmed"])
        .execute();
    },
    /** Is an earlier delivery to the same recipient still to be settled? What comes after it waits, and may go with it. */
    async isBehind(delivery: Delivery): Promise<boolean> {
      const row = await db
        .selectFrom("deliveries")
        .select("id")
        .where("recipient", "=", delivery.recipient)
        .where("state", "in", ["queued", "sending"])
        .where("window", "<", delivery.window)
        .limit(1)
        .executeTakeFirst();
      return row !== undefined;
    },
    /** A member's deliveries that did not arrive, or may not have, newest first. */
    async troubles(member: MemberId, since: Instant): Promise<Delivery[]> {
      const rows = await db
        .selectFrom("deliveries")
        .selectAll()
        .where("member", "=", member)
        .where("state", "in", ["failed", "unconfirmed"])
        .where("not_before", ">=", since)
        .orderBy("not_before", "desc")
        .execute();
      return rows.map(deliveryOf);
    },
    /** Takes up to `limit` deliveries whose moment has come, by lease: no other process can take them until it ends. */
    async claim(now: Instant, leaseUntil: Instant, limit: number): Promise<Delivery[]> {
      const rows = await db
        .updateTable("deliveries")
        // What was given back untried has not gone out yet: repeats are counted from the first try that was one.
        .set((e) => ({
          ...{ state: "sending", attempt: e("attempt", "+", 1), lease_until: leaseUntil },
          sent_from: e
            .case()
            .when("attempt", "=", 0)
            .then(e.val(now))
            .else(e.fn.coalesce("sent_from", e.val(now)))
            .end(),
        }))
        .where("id", "in", (e) =>
          e
            .selectFrom("deliveries")
            .select("id")
            .where((w) =>
              w.or([w.and([w("state", "=", "queued"), w("not_before", "<=", now)]), w.and([w("state", "=", "sending"), w("lease_until", "<", now)])]),
            )
            .orderBy("not_before")
            .limit(limit),
        )
        .returningAll()
        .execute();
      return rows.map(deliveryOf);
    },
    /** Settles a delivery that is still this try's. */
    async finish({ id, attempt }: Claimed, state: Ended, messageId: string | null, why: string | null): Promise<void> {
      await db
        .updateTable("deliveries")
        .set({ state, message_id: messageId, why, lease_until: null, drawn: null })
        .where("id", "=", id)
        .where("state", "=", "sending")
        .where("attempt", "=", attempt)
        .execute();
    },
    async nextDelivery(): Promise<Instant | null> {
      const row = await db.selectFrom("deliveries").select("not_before").where("state", "=", "queued").orderBy("not_before").limit(1).executeTakeFirst();
      return (row?.not_before ?? null) as Instant | null;
    },

    async putOffsOf(bikes: readonly BikeId[]): Promise<PutOff[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("put_offs")
        .selectAll()
        .where("bike", "in", [...bikes])
        .execute();
      return rows.map((row) => ({
        bike: row.bike as BikeId,
        item: row.item as ItemKey,
        until: row.until_date as LocalDate,
        dial: row.until_dial as Dial | null,
        at: row.at as Instant,
      }));
    },
    async putOff(put: PutOff, by: MemberId): Promise<void> {
      const row = { bike: put.bike, item: put.item, until_date: put.until, until_dial: put.dial, by, at: put.at };
      await db
        .insertInto("put_offs")
        .values(row)
        .onConflict((c) => c.columns(["bike", "item"]).doUpdateSet(row))
        .execute();
    },
    /** Takes back what was put off at one moment. Answers the items. */
    async takeBack(bike: BikeId, at: Instant): Promise<ItemKey[]> {
      const rows = await db.deleteFrom("put_offs").where("bike", "=", bike).where("at", "=", at).returning("item").execute();
      return rows.map(({ item }) => item as ItemKey);
    },
  };
}

function noticeOf(row: Tables["notices"]): Notice {
  return {
    id: row.id,
    key: row.key,
    member: row.member as MemberId,
    bike: row.bike as BikeId,
    kind: row.kind as Notice["kind"],
    item: row.item as ItemKey | null,
    notBefore: row.not_before as Instant,
    state: row.state as Notice["state"],
    delivery: row.delivery,
    why: row.why,
    at: row.at as Instant,
  };
}

function noticeRow(n: Notice): Tables["notices"] {
  const { notBefore, ...same } = n;
  return { ...same, not_before: notBefore };
}

function deliveryOf(row: Tables["deliveries"]): Delivery {
  return {
    id: row.id,
    recipient: row.recipient,
    window: row.window,
    member: row.member as MemberId | null,
    group: row.group_id as GroupId | null,
    notBefore: row.not_before as Instant,
    state: row.state as Delivery["state"],
    attempt: row.attempt,
    sentFrom: row.sent_from as Instant | null,
    leaseUntil: row.lease_until as Instant | null,
    messageId: row.message_id,
    why: row.why,
    trace: row.trace_channel === null ? null : { channel: row.trace_channel, after: row.trace_after },
    drawn: row.drawn,
  };
}

function deliveryRow(d: Delivery): Tables["deliveries"] {
  const { group, notBefore, sentFrom, leaseUntil, messageId, trace, ...same } = d;
  return {
    ...{ ...same, group_id: group, not_before: notBefore, sent_from: sentFrom, lease_until: leaseUntil, message_id: messageId },
    ...{ trace_channel: trace?.channel ?? null, trace_after: trace?.after ?? null },
  };
}
