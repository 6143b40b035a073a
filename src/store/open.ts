// Opening the database: pragmas, a verified copy before migrating, migrations, and the one-writer rule.

import { existsSync } from "node:fs";
import fs from "node:fs/promises";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import SQLite from "better-sqlite3";
import { Kysely, type LogEvent, type Migration, type MigrationProvider, Migrator, SqliteAdapter, type SqliteDatabase, SqliteDialect } from "kysely";
import { type Columns, columnsFor } from "./columns.ts";
import type { Tables } from "./tables.ts";

export type Db = Kysely<Tables>;
/** An open database and how to let go of it. */
export type Opened = { readonly db: Db; readonly file: string; readonly close: () => Promise<void> };
/** Why a database cannot be opened, as one fact each; worded by whoever starts the process. */
export class StoreRefusal extends Error {
  readonly reason: "newer schema" | "damaged" | "migration failed" | "cannot open" | "other face";
  constructor(reason: StoreRefusal["reason"], message: string, options?: ErrorOptions) {
    super(message, options);
    this.reason = reason;
  }
}

type MigrationFile = { readonly up: (db: Kysely<unknown>, columns: Columns) => Promise<void> };
const MIGRATIONS = fileURLToPath(new URL("../../migrations", import.meta.url));

export type OpenOptions = {
  /** Told of every statement, for tests that count them. */
  readonly onQuery?: ((event: LogEvent) => void) | undefined;
  /** The folder of migrations, when not the release's own. */
  readonly migrations?: string;
  /** The last migration to take, for opening a file as an older release did. */
  readonly upTo?: string;
};

/**
 * Opens (and makes, and brings up to date) the SQLite database in `file`; ":memory:" for one that is never kept.
 * @throws StoreRefusal with the way forward in its message
 */
export async function openSqlite(file: string, { onQuery, migrations = MIGRATIONS, upTo = "9" }: OpenOptions = {}): Promise<Opened> {
  const existed = file !== ":memory:" && existsSync(file);
  const raw = connect(file);
  const db: Db = new Kysely<Tables>({ dialect: new Dialect({ database: remembering(raw) }), ...(onQuery === undefined ? {} : { log: onQuery }) });
  try {
    await migrate(db, provider(migrations, upTo, columnsFor("sqlite")), existed ? () => copyBeside(raw, file) : null);
  } catch (error) {
    await db.destroy();
    throw isDamage(error) ? damaged(file, error) : error;
  }
  return { db, file, close: () => db.destroy() };
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

async function migrate(db: Db, steps: MigrationProvider, copy: (() => Promise<void>) | null): Promise<void> {
  const migrator = new Migrator({ db, provider: steps });
  const known = new Set(Object.keys(await steps.getMigrations()));
  const present = await recorded(db);
  const newer = present.filter((name) => !known.has(name));
  if (newer.length > 0)
    throw new StoreRefusal("newer schema", "This database was written by a newer Tappet. Start that version, or restore a backup made before the update.");
  if (present.length === known.size) return;
  if (copy !== null && present.length > 0) await copy();
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined)
    throw new StoreRefusal("migration failed", "The database could not be brought up to date. It stands as it was; a copy from before is beside it.", {
      cause: error,
    });
}

async function recorded(db: Db): Promise<string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === "kysely_migration")) return [];
  const rows = await (db as unknown as Kysely<{ kysely_migration: { name: string } }>).selectFrom("kysely_migration").select("name").execute();
  return rows.map((row) => row.name);
}

/** Reads the files of a folder of migrations and gives each the column helpers of this database. */
function provider(folder: string, upTo: string, columns: Columns): MigrationProvider {
  return {
    async getMigrations() {
      const found: Record<string, Migration> = {};
      for (const file of (await fs.readdir(folder)).filter((name) => /^\d{12}-[a-z-]+\.(ts|js)$/.test(name) && name.replace(/\.(ts|js)$/, "") <= upTo)) {
        const step = (await import(/* @vite-ignore */ pathToFileURL(path.join(folder, file)).href)) as MigrationFile;
        found[file.replace(/\.(ts|js)$/, "")] = { up: (db) => step.up(db as Kysely<unknown>, columns) };
      }
      return found;
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
