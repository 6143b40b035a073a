// What drives a torque wrench, and what kind it is: so that it can be told from another, and cared for as its kind asks.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("wrenches").addColumn("drive", text).execute();
  await db.schema.alterTable("wrenches").addColumn("kind", text).execute();
}
