// A group's own reading channel, whose tread law is told, and which half of the world its seasons are of.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("groups").addColumn("reading_channel", text).execute();
  await db.schema.alterTable("groups").addColumn("place", text).execute();
  await db.schema.alterTable("groups").addColumn("season", text).execute();
}
