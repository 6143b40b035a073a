// A SQLite file: pragmas, a verified copy before migrating, and each statement prepared once.

import { existsSync } from "node:fs";
import SQLite from "better-sqlite3";
import { Kysely, SqliteAdapter, type SqliteDatabase, SqliteDialect } from "kysely";
import type { Db, Opened, OpenOptions } from "./db.ts";
import { migrate } from "./migrate.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Tables } from "./tables.ts";

/** @throws StoreRefusal with the way forward in its message */
export async function openSqlite(file: string, options: OpenOptions = {}): Promise<Opened> {
  const { onQuery } = options;
  const existed = file !== ":memory:" && existsSync(file);
  const raw = connect(file);
  const db: Db = new Kysely<Tables>({ dialect: new Dialect({ database: remembering(raw) }), ...(onQuery === undefined ? {} : { log: onQuery }) });
  let fresh = false;
  try {
    fresh = await migrate(db, "sqlite", options, existed ? () => copyBeside(raw, file) : null);
  } catch (error) {
    await db.destroy();
    throw isDamage(error) ? damaged(file, error) : error;
  }
  return { db, kind: "sqlite", name: file, fresh, close: () => db.destroy() };
}

function connect(file: string): SQLite.Database {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(file);
    raw.pragma("journal_mode = WAL");
    raw.pragma("synchronous = FULL");
    raw.pragma("foreign_keys = ON");
    raw.pragma("busy_timeout = 5000");
    return raw;
  } catch (cause) {
    raw?.close();
    if (isDamage(cause)) throw damaged(file, cause);
    throw new StoreRefusal("cannot open", `${file} cannot be opened. Check that the folder exists and can be written to.`, { cause });
  }
}

const isDamage = (cause: unknown): boolean =>
  cause instanceof SQLite.SqliteError && (cause.code === "SQLITE_NOTADB" || cause.code.startsWith("SQLITE_CORRUPT"));
const damaged = (file: string, cause: unknown): StoreRefusal =>
  new StoreRefusal("damaged", `${file} is not a readable database. Nothing was changed: put a backup in its place, or move it away to start empty.`, { cause });

/** SQLite takes back table changes with their transaction; Kysely does not count on it unless told, and a failed migration would stay half done. */
class Adapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}
class Dialect extends SqliteDialect {
  override createAdapter(): SqliteAdapter {
    return new Adapter();
  }
}

/** Statements asked for most: preparing one anew costs as much as running it. */
const MOST_PREPARED = 500;

/** The same database, which prepares each statement once. */
function remembering(raw: SQLite.Database): SqliteDatabase {
  const prepared = new Map<string, SQLite.Statement>();
  return {
    close: () => void raw.close(),
    prepare(sql) {
      const ready = prepared.get(sql);
      if (ready !== undefined) return ready;
      const made = raw.prepare(sql);
      if (prepared.size < MOST_PREPARED) prepared.set(sql, made);
      return made;
    },
  };
}

/** A copy made while open and then checked: a copy that cannot be read is no copy. */
async function copyBeside(raw: SQLite.Database, file: string): Promise<void> {
  const target = `${file}.before-update`;
  await raw.backup(target);
  const check = new SQLite(target, { readonly: true });
  const verdict = check.pragma("integrity_check", { simple: true });
  check.close();
  if (verdict !== "ok") throw new StoreRefusal("damaged", `${file} failed its integrity check. Nothing was changed: restore a backup before updating.`);
}
