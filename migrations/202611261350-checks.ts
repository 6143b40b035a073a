// Checks: a list walked through on one bike, with an answer a point.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, text, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("checks")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("owner", text, (c) => c.notNull())
      // Null for a bike that is looked at before it is bought.
      .addColumn("bike", text)
      .addColumn("called", text, (c) => c.notNull())
      .addColumn("list", text, (c) => c.notNull())
      .addColumn("sections", text, (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("at_point", text)
      .addColumn("begun_on", text, (c) => c.notNull())
      .addColumn("begun_at", text, (c) => c.notNull())
      .addColumn("finished_on", text)
      .addColumn("source", text)
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("checks_of_owner").on("checks").columns(["owner", "at"]).execute();
  await db.schema.createIndex("checks_of_bike").on("checks").columns(["bike", "at"]).execute();
  await strict(
    db.schema
      .createTable("check_answers")
      .addColumn("check_id", text, (c) => c.notNull())
      .addColumn("point", text, (c) => c.notNull())
      .addColumn("answer", text)
      .addColumn("grade", text)
      .addColumn("note", text)
      .addColumn("link", text)
      // What was read at it, as typed, where there is no bike to log it for.
      .addColumn("figures", text)
      .addColumn("defect", text)
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addPrimaryKeyConstraint("check_answers_once", ["check_id", "point"]),
  ).execute();
}
