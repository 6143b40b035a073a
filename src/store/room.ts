// The practice room's own channel, kept so that edits, the message menu and delivered reminders outlive a restart.

import type { Instant } from "../core/calendar/dates.ts";
import type { Db } from "./db.ts";
import { StoreRefusal } from "./refusal.ts";

export type RoomMessage = { readonly id: string; readonly author: string; readonly place: string; readonly text: string };
/** A reminder delivered into the room; `reply` is the reply as JSON. */
export type RoomDelivery = { readonly delivery: string; readonly place: string; readonly member: string | null; readonly reply: string; readonly at: Instant };

export function roomRepo(db: Db) {
  return {
    async remember(message: RoomMessage, at: Instant): Promise<void> {
      const row = { ...message, at };
      await db
        .insertInto("room_messages")
        .values(row)
        .onConflict((c) => c.column("id").doUpdateSet({ text: message.text }))
        .execute();
    },
    async message(id: string): Promise<RoomMessage | null> {
      const row = await db.selectFrom("room_messages").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : { id: row.id, author: row.author, place: row.place, text: row.text };
    },
    /** Puts a delivery into the room, once however often it is tried. */
    async deliver(delivery: RoomDelivery): Promise<void> {
      await db
        .insertInto("room_deliveries")
        .values(delivery)
        .onConflict((c) => c.column("delivery").doNothing())
        .execute();
    },
    /** Deliveries put into the room from a moment on, oldest first. */
    async deliveredSince(from: Instant): Promise<RoomDelivery[]> {
      const rows = await db.selectFrom("room_deliveries").selectAll().where("at", ">=", from).orderBy("at").orderBy("delivery").execute();
      return rows.map((row) => ({ ...row, at: row.at as Instant }));
    },
    /** A database belongs to the face that first opened it. @throws StoreRefusal when it is another's */
    async claimFace(face: "terminal" | "discord"): Promise<void> {
      await db
        .insertInto("meta")
        .values({ key: "face", value: face })
        .onConflict((c) => c.column("key").doNothing())
        .execute();
      const row = await db.selectFrom("meta").select("value").where("key", "=", "face").executeTakeFirstOrThrow();
      if (row.value !== face) throw new StoreRefusal("other face", `This database belongs to the ${row.value} face. Name another file in TAPPET_DATABASE.`);
    },
    async meta(key: string): Promise<string | null> {
      const row = await db.selectFrom("meta").select("value").where("key", "=", key).executeTakeFirst();
      return row?.value ?? null;
    },
    async dropMeta(key: string): Promise<void> {
      await db.deleteFrom("meta").where("key", "=", key).execute();
    },
    async setMeta(key: string, value: string): Promise<void> {
      await db
        .insertInto("meta")
        .values({ key, value })
        .onConflict((c) => c.column("key").doUpdateSet({ value }))
        .execute();
    },
  };
}
