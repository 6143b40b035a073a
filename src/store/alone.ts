// One bot at a time on a SQLite file. The lock is SQLite's own on an empty file beside it: the system lets go of it however the process ends.

import path from "node:path";
import SQLite from "better-sqlite3";
import { StoreRefusal } from "./refusal.ts";

/** Holds a database file for this process alone. Answers how to let go. @throws StoreRefusal when another process holds it */
export function holdAlone(file: string): () => void {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(`${file}.lock`, { timeout: 0 });
    raw.exec("begin exclusive");
  } catch (cause) {
    raw?.close();
    if (cause instanceof SQLite.SqliteError && cause.code.startsWith("SQLITE_BUSY"))
      throw new StoreRefusal("in use", `${path.basename(file)} is in use by another Tappet. Stop that one first, or give each a database of its own.`, {
        cause,
      });
    // Where no lock can be kept, the database itself says what is wrong with the place.
    return () => undefined;
  }
  const held = raw;
  return () => held.close();
}
