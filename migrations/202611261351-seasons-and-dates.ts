// A group's riding season, and days that a bike's papers run out.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text, strict }: Columns): Promise<void> {
  await db.schema.alterTable("groups").addColumn("riding", text).execute();
  await strict(
    db.schema
      .createTable("bike_dates")
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("what_key", text, (c) => c.notNull())
      .addColumn("what", text, (c) => c.notNull())
      .addColumn("on_date", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addPrimaryKeyConstraint("bike_dates_once", ["bike", "what_key"]),
  ).execute();
}
