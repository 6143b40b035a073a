// What members and groups switched off in reminders, put off until a distance, and what was told of a bike found by the bike.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text, whole }: Columns): Promise<void> {
  await db.schema.alterTable("members").addColumn("topics", text).execute();
  await db.schema.alterTable("groups").addColumn("topics", text).execute();
  await db.schema.alterTable("put_offs").addColumn("until_dial", whole).execute();
  await db.schema.createIndex("notices_told_of_bike").on("notices").columns(["bike", "state", "kind"]).execute();
}
