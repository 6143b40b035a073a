// Which bikes their owners bring to a group's wrench evening.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { flag }: Columns): Promise<void> {
  // Off for every bike there is: its owner has not been asked.
  await db.schema
    .alterTable("bike_groups")
    .addColumn("evening", flag("evening"), (c) => c.notNull().defaultTo(0))
    .execute();
}
