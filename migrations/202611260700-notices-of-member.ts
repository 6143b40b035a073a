// What waits for one member, and what went wrong for one, found without reading everybody's.

import type { Kysely } from "kysely";

export async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.createIndex("notices_of_member").on("notices").columns(["member", "state", "not_before"]).execute();
  await db.schema.createIndex("deliveries_of_member").on("deliveries").columns(["member", "state", "not_before"]).execute();
}
