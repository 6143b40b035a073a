// Jobs: a service sheet being worked through, over as many evenings as it takes. What was done of it is in the work records, and nowhere else.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, text, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("jobs")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("state", text, (c) => c.notNull())
      // The service, in ridden distance; null where the sheet is of a day.
      .addColumn("mark", whole)
      .addColumn("begun_on", text, (c) => c.notNull())
      .addColumn("begun_at", text, (c) => c.notNull())
      .addColumn("ended_at", text)
      .addColumn("note", text)
      .addColumn("by", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("jobs_of_bike").on("jobs").columns(["bike", "state"]).execute();
  await strict(
    db.schema
      .createTable("job_items")
      .addColumn("job", text, (c) => c.notNull().references("jobs.id"))
      .addColumn("ordinal", whole, (c) => c.notNull())
      .addColumn("item", text, (c) => c.notNull())
      .addColumn("called", text, (c) => c.notNull())
      .addColumn("evening", whole, (c) => c.notNull())
      .addPrimaryKeyConstraint("job_items_key", ["job", "ordinal"]),
  ).execute();
}
