// When a group's digest of the week comes, and the next moment at which it does.

import { type Kysely, sql } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { text }: Columns): Promise<void> {
  await db.schema.alterTable("groups").addColumn("digest", text).execute();
  await db.schema.alterTable("groups").addColumn("digest_at", text).execute();
  // Groups that named a channel before there were digests: a moment that is no window of theirs is planned anew by the first tick.
  await sql`update ${sql.table("groups")} set digest_at = '2026-11-27T00:00:00.001Z' where reading_channel is not null`.execute(db);
  // A group's choice changed: its bikes are found without reading everybody's.
  await db.schema.createIndex("bikes_of_home_group").on("bikes").column("home_group").execute();
  await db.schema.createIndex("groups_digest_at").on("groups").column("digest_at").execute();
}
