// What went into a job beside its items: quantities, parts, cost, as JSON that the store checks.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("work").addColumn("detail", text).execute();
}
