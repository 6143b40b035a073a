// Which bikes their owners let a group's picture show, and the number a member calls when stranded.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text, flag }: Columns): Promise<void> {
  // Off for every bike there is: its owner has not been asked.
  await db.schema
    .alterTable("bike_groups")
    .addColumn("pictured", flag("pictured"), (c) => c.notNull().defaultTo(0))
    .execute();
  await db.schema.alterTable("members").addColumn("recovery", text).execute();
}
