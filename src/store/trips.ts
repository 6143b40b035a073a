// Planned trips, among the turns of a bike's life, and the rides that several bikes are on together.

import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import type { Stretch } from "../core/quantity/distance.ts";
import { SPEC_USES, type SpecUse } from "../core/spec/spec.ts";
import type { Trip } from "../core/trip/trip.ts";
import type { Db } from "./db.ts";
import { NO_TURN, type Tables } from "./tables.ts";

/** A planned trip as stored. `ride`: it is ridden together, and who is on it is known in that group; its id is that of the trip it began with. */
export type TripRecord = Trip & {
  readonly id: string;
  readonly typed: string;
  readonly use: SpecUse;
  readonly source: string;
  readonly plannedOn: LocalDate;
  readonly ride: { readonly id: string; readonly group: GroupId } | null;
};

export function tripsRepo(db: Db) {
  const live = () => db.selectFrom("bike_events").selectAll().where("what", "=", "trip").where("withdrawn_at", "is", null);
  return {
    async add(bike: BikeId, { id, from, to, distance, typed, use, source, ride }: TripRecord, by: MemberId, at: Instant): Promise<void> {
      const row = { ...NO_TURN, id, bike, what: "trip", from_date: from, to_date: to, distance, typed, cause: use, source, by, at };
      await db
        .insertInto("bike_events")
        .values({ ...row, ride: ride?.id ?? null, ride_group: ride?.group ?? null })
        .execute();
    },
    /** False when it is gone already. @param to the trip that takes its place, if one does */
    async withdraw(id: string, at: Instant, to: string | null = null): Promise<boolean> {
      const done = await db
        .updateTable("bike_events")
        .set({ withdrawn_at: at, gave_way_to: to })
        .where("id", "=", id)
        .where("what", "=", "trip")
        .where("withdrawn_at", "is", null)
        .executeTakeFirst();
      return done.numUpdatedRows === 1n;
    },
    /** Those that gave way to a trip stand again. */
    async restoreReplaced(trip: string): Promise<readonly TripRecord[]> {
      const rows = await db.updateTable("bike_events").set({ withdrawn_at: null, gave_way_to: null }).where("gave_way_to", "=", trip).returningAll().execute();
      return rows.map(tripOf);
    },
    /** From now on others may ride along. */
    async share(id: string, group: GroupId): Promise<void> {
      await db.updateTable("bike_events").set({ ride: id, ride_group: group }).where("id", "=", id).where("what", "=", "trip").execute();
    },
    /** Who is on a ride of a group, first come first. */
    async onRide(ride: string, group: GroupId): Promise<readonly (TripRecord & { readonly bike: BikeId })[]> {
      const rows = await live().where("ride", "=", ride).where("ride_group", "=", group).orderBy("at").orderBy("id").execute();
      return rows.map((row) => ({ ...tripOf(row), bike: row.bike as BikeId }));
    },
  };
}

export function tripOf(row: Tables["bike_events"]): TripRecord {
  const [from, to] = [row.from_date as LocalDate, (row.to_date ?? row.from_date) as LocalDate];
  return {
    ...{ id: row.id, from, to, distance: (row.distance ?? 0) as Stretch, typed: row.typed ?? "" },
    use: SPEC_USES.find((each) => each === row.cause) ?? "solo",
    source: row.source ?? row.id,
    plannedOn: row.at.slice(0, 10) as LocalDate,
    ride: row.ride === null || row.ride_group === null ? null : { id: row.ride, group: row.ride_group as GroupId },
  };
}
