// Specs as revisions (id, rev), entered for a bike; and a bike's make and model, by which they are shared within a group.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, decimal, text, flag, strict }: Columns): Promise<void> {
  await db.schema.alterTable("bikes").addColumn("model", text).execute();
  // Folded, so that "Tarn 650" and "TARN-650" are one.
  await db.schema.alterTable("bikes").addColumn("model_key", text).execute();
  await db.schema.createIndex("bikes_of_model").on("bikes").columns(["model_key"]).execute();
  await strict(
    db.schema
      .createTable("specs")
      .addColumn("id", text, (c) => c.notNull())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("current", flag("current"), (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("key", text, (c) => c.notNull())
      .addColumn("for_use", text)
      // Canonical; all null for words.
      .addColumn("low", decimal)
      .addColumn("high", decimal)
      .addColumn("nominal", decimal)
      .addColumn("unit", text)
      .addColumn("step", decimal)
      .addColumn("typed", text, (c) => c.notNull())
      .addColumn("manual", text)
      .addColumn("edition", text)
      .addColumn("page", text)
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addColumn("why", text)
      .addPrimaryKeyConstraint("specs_key", ["id", "rev"]),
  ).execute();
  await db.schema.createIndex("specs_of_bike").on("specs").columns(["bike", "current"]).execute();
}
