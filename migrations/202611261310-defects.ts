// What was found wrong with a bike, as revisions like readings and work.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, text, flag, strict }: Columns): Promise<void> {
  await strict(
    db.schema
      .createTable("defects")
      .addColumn("id", text, (c) => c.notNull())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("current", flag("current"), (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("kind", text)
      .addColumn("words", text, (c) => c.notNull())
      .addColumn("grade", text)
      .addColumn("on_date", text, (c) => c.notNull())
      .addColumn("dial", whole)
      .addColumn("found_by", text, (c) => c.notNull())
      .addColumn("closed_by", text)
      .addColumn("closed_because", text)
      .addColumn("message", text)
      .addColumn("ordinal", whole, (c) => c.notNull())
      .addColumn("logged_at", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addColumn("why", text)
      .addPrimaryKeyConstraint("defects_pk", ["id", "rev"]),
  ).execute();
  await db.schema.createIndex("defects_of_bike").on("defects").columns(["bike", "current", "state"]).execute();
  await db.schema.createIndex("defects_closed_by").on("defects").column("closed_by").execute();
  await db.schema.createIndex("defects_once").on("defects").columns(["message", "ordinal", "rev"]).unique().execute();
}
