// What a long delivery says, kept from the moment that it is begun: a part that is there already is followed by the rest of the same.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("deliveries").addColumn("drawn", text).execute();
}
