// Days of a bike's papers: insurance, inspection and the like, by the member's own word. A plain date; no law is known of it.

import { nicknameKey } from "../core/bike.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import type { Db } from "./db.ts";

export type BikeDate = { readonly bike: BikeId; readonly what: string; readonly on: LocalDate };

export function bikeDatesRepo(db: Db) {
  return {
    /** Of some bikes, soonest first. */
    async ofBikes(bikes: readonly BikeId[]): Promise<BikeDate[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("bike_dates")
        .selectAll()
        .where("bike", "in", [...bikes])
        .orderBy("on_date")
        .orderBy("what_key")
        .execute();
      return rows.map((row) => ({ bike: row.bike as BikeId, what: row.what, on: row.on_date as LocalDate }));
    },
    /** Notes a day, or moves the one of that name. */
    async put({ bike, what, on }: BikeDate, by: MemberId, at: Instant): Promise<void> {
      const row = { bike, what_key: nicknameKey(what), what, on_date: on, by, at };
      await db
        .insertInto("bike_dates")
        .values(row)
        .onConflict((c) => c.columns(["bike", "what_key"]).doUpdateSet(row))
        .execute();
    },
    /** False when there was none of that name. */
    async remove(bike: BikeId, what: string): Promise<boolean> {
      const done = await db.deleteFrom("bike_dates").where("bike", "=", bike).where("what_key", "=", nicknameKey(what)).executeTakeFirst();
      return done.numDeletedRows > 0n;
    },
  };
}
