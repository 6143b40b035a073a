// Where a delivery was begun, so that one in doubt after a crash can be looked for there.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("deliveries").addColumn("trace_channel", text).execute();
  // The newest message there before it was begun; null where there was none.
  await db.schema.alterTable("deliveries").addColumn("trace_after", text).execute();
  await db.schema.createIndex("deliveries_of_recipient").on("deliveries").columns(["recipient", "state"]).execute();
}
