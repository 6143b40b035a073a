// What members call their bikes beside the nicknames: "the big one", as they said when asked.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("by_names")
      .addColumn("owner", text, (c) => c.notNull())
      .addColumn("name_key", text, (c) => c.notNull())
      .addColumn("name", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id").onDelete("cascade"))
      .addColumn("at", text, (c) => c.notNull())
      .addPrimaryKeyConstraint("by_names_once", ["owner", "name_key"]),
  ).execute();
  await db.schema.createIndex("by_names_of_bike").on("by_names").column("bike").execute();
}
