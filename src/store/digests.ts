// When each group's digest of the week comes, and what a group logged since the last.

import type { Group } from "../core/bike.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { GroupId } from "../core/ids.ts";
import type { Db } from "./db.ts";

/** What was logged of the bikes shown in a group, and by how many members; no name is known of it. */
export type Logged = { readonly readings: number; readonly jobs: number; readonly bikes: number; readonly members: number };

/** Who a digest goes to, as a delivery names it. */
export const digestRecipient = (group: GroupId): string => `digest/${group}`;

export function digestsRepo(db: Db) {
  return {
    /** Groups whose moment has come, soonest first. */
    async due(now: Instant, limit: number): Promise<{ readonly group: GroupId; readonly at: Instant }[]> {
      const rows = await db.selectFrom("groups").select(["id", "digest_at"]).where("digest_at", "<=", now).orderBy("digest_at").limit(limit).execute();
      return rows.map((row) => ({ group: row.id as GroupId, at: (row.digest_at ?? now) as Instant }));
    },
    /** Sets the next moment; null: none. A moment that is none of the group's hours has it planned anew. */
    async plan(group: GroupId, at: Instant | null): Promise<void> {
      await db.updateTable("groups").set({ digest_at: at }).where("id", "=", group).execute();
    },
    /** A group's choice changed, so that the tick plans it anew; one without a channel, or that wants none, gets none. */
    async replan(group: Group, now: Instant): Promise<void> {
      await this.plan(group.id, group.readingChannel === null || group.digest === "off" ? null : now);
    },
    /** What was planned for after a moment is planned anew: the clock was ahead. */
    async replanAfter(moment: Instant, now: Instant): Promise<void> {
      await db.updateTable("groups").set({ digest_at: now }).where("digest_at", ">", moment).execute();
    },
    async next(): Promise<Instant | null> {
      const row = await db.selectFrom("groups").select("digest_at").where("digest_at", "is not", null).orderBy("digest_at").limit(1).executeTakeFirst();
      return (row?.digest_at ?? null) as Instant | null;
    },
    /** The window of the last digest that was posted, or is about to be. */
    async lastOf(group: GroupId): Promise<Instant | null> {
      const row = await db
        .selectFrom("deliveries")
        .select("window")
        .where("recipient", "=", digestRecipient(group))
        .where("state", "in", ["queued", "sending", "sent", "unconfirmed"])
        .orderBy("window", "desc")
        .limit(1)
        .executeTakeFirst();
      return (row?.window ?? null) as Instant | null;
    },
    async loggedSince(group: GroupId, since: Instant): Promise<Logged> {
      const readings = await db
        .selectFrom("bike_groups as g")
        .innerJoin("readings as t", "t.bike", "g.bike")
        .select(["t.bike", "t.by"])
        .where("g.group_id", "=", group)
        .where((w) => w.and([w("t.current", "=", 1), w("t.state", "=", "live"), w("t.logged_at", ">=", since)]))
        .execute();
      const jobs = await db
        .selectFrom("bike_groups as g")
        .innerJoin("work as t", "t.bike", "g.bike")
        .select(["t.bike", "t.by"])
        .where("g.group_id", "=", group)
        .where((w) => w.and([w("t.current", "=", 1), w("t.state", "=", "live"), w("t.logged_at", ">=", since)]))
        .execute();
      const all = [...readings, ...jobs];
      return {
        ...{ readings: readings.length, jobs: jobs.length },
        ...{ bikes: new Set(all.map(({ bike }) => bike)).size, members: new Set(all.map(({ by }) => by)).size },
      };
    },
  };
}
