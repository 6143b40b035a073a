// Plans that members share with their group for a make and model: the latest for a model is the group's.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("group_plans")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("group_id", text, (c) => c.notNull())
      .addColumn("model_key", text, (c) => c.notNull())
      .addColumn("model", text, (c) => c.notNull())
      .addColumn("hash", text, (c) => c.notNull())
      .addColumn("manual", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("group_plans_of_model").on("group_plans").columns(["group_id", "model_key", "at"]).execute();
}
