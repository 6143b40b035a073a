// Trips ridden together: the ride that a trip belongs to, and the group that may see who rides along. And which trip one gave way to.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("bike_events").addColumn("ride", text).execute();
  await db.schema.alterTable("bike_events").addColumn("ride_group", text).execute();
  await db.schema.alterTable("bike_events").addColumn("gave_way_to", text).execute();
  await db.schema.createIndex("bike_events_ride").on("bike_events").column("ride").execute();
}
