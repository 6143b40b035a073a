// Planned trips, among the turns of a bike's life: how far, what was typed, and how the bike is loaded.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, text }: Columns): Promise<void> {
  await db.schema.alterTable("bike_events").addColumn("distance", whole).execute();
  await db.schema.alterTable("bike_events").addColumn("typed", text).execute();
}
