// What is known of a reading beside its value: conditions, points across, inner or outer pad, what a fill cost.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("readings").addColumn("detail", text).execute();
}
