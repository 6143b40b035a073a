// Records as revisions (id, rev), the same for readings, work, defects and specs: one row is current, and the next revision takes its place.

import type { Db } from "./db.ts";

/** The tables that hold revisions; they share the columns used here. */
type Revised = "readings" | "work" | "defects" | "specs";

/** Where to go on counting the records of one source, withdrawn ones included. */
export async function nextOrdinal(db: Db, table: Exclude<Revised, "specs">, message: string): Promise<number> {
  const row = await db
    .selectFrom(table)
    .select((e) => e.fn.max("ordinal").as("last"))
    .where("message", "=", message)
    .executeTakeFirst();
  return row?.last === null || row?.last === undefined ? 0 : Number(row.last) + 1;
}

/** Makes room for the next revision: the one before it is no longer current. False when somebody else's came first. */
export async function closeRevision(db: Db, table: Revised, next: { readonly id: string; readonly rev: number }): Promise<boolean> {
  const done = await db
    .updateTable(table)
    .set({ current: 0 })
    .where("id", "=", next.id)
    .where("rev", "=", next.rev - 1)
    .where("current", "=", 1)
    .executeTakeFirst();
  return done.numUpdatedRows === 1n;
}
