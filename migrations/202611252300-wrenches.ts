// The torque wrenches that members list as theirs.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { decimal, text, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("wrenches")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("owner", text, (c) => c.notNull())
      .addColumn("name", text, (c) => c.notNull())
      .addColumn("name_key", text, (c) => c.notNull())
      .addColumn("low", decimal, (c) => c.notNull())
      .addColumn("high", decimal, (c) => c.notNull())
      .addColumn("step", decimal, (c) => c.notNull())
      .addColumn("unit", text, (c) => c.notNull())
      .addColumn("accuracy", decimal, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("wrenches_of_owner").on("wrenches").columns(["owner", "name_key"]).unique().execute();
}
