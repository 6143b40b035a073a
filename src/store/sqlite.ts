// A SQLite file: pragmas, a verified copy before migrating, and each statement prepared once.

import { existsSync } from "node:fs";
import SQLite from "better-sqlite3";
import { type DatabaseConnection, Kysely, SqliteAdapter, type SqliteDatabase, SqliteDialect, SqliteDriver } from "kysely";
import { copyOpen, isDamage, NotWhole, newestBackup } from "./backup.ts";
import type { Db, Opened, OpenOptions } from "./db.ts";
import { migrate } from "./migrate.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Tables } from "./tables.ts";
import { isOutOfRoom } from "./trouble.ts";

/** @throws StoreRefusal with the way forward in its message */
export async function openSqlite(file: string, options: OpenOptions = {}): Promise<Opened> {
  const { onQuery } = options;
  const existed = file !== ":memory:" && existsSync(file);
  const raw = await connect(file);
  const db: Db = new Kysely<Tables>({ dialect: new Dialect(raw), ...(onQuery === undefined ? {} : { log: onQuery }) });
  let fresh = false;
  try {
    fresh = await migrate(db, "sqlite", options, existed ? () => copyBeside(raw, file) : null);
  } catch (error) {
    await db.destroy();
    throw isDamage(error) ? await damaged(file, error) : error;
  }
  return { db, kind: "sqlite", name: file, fresh, copyTo: (target) => copyOpen(raw, target), close: () => db.destroy() };
}

async function connect(file: string): Promise<SQLite.Database> {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(file);
    raw.pragma("journal_mode = WAL");
    raw.pragma("synchronous = FULL");
    raw.pragma("foreign_keys = ON");
    raw.pragma("busy_timeout = 5000");
    // A page that cannot be read is found now, while the backups are still good, and not by whoever asks for it some day.
    if (raw.pragma("quick_check(1)", { simple: true }) !== "ok") throw new NotWhole();
    return raw;
  } catch (cause) {
    raw?.close();
    if (isDamage(cause)) throw await damaged(file, cause);
    if (isOutOfRoom(cause))
      throw new StoreRefusal("cannot open", `The disk that ${file} is on is full. Nothing was changed: make room and start again.`, { cause });
    throw new StoreRefusal("cannot open", `${file} cannot be opened. Check that the folder exists and can be written to.`, { cause });
  }
}

async function damaged(file: string, cause: unknown): Promise<StoreRefusal> {
  const newest = await newestBackup(file);
  const way = newest === null ? "put a backup in its place, or move it away to start empty" : `go back to the newest backup with npm run restore -- ${newest}`;
  return new StoreRefusal("damaged", `${file} cannot be read whole: it is damaged, or no database. Nothing was changed: ${way}.`, { cause });
}

/** SQLite takes back table changes with their transaction; Kysely does not count on it unless told, and a failed migration would stay half done. */
class Adapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}
/** A full disk ends the transaction by itself; taking it back once more is then an error, which would hide why. */
class Driver extends SqliteDriver {
  readonly #inTransaction: () => boolean;
  constructor(database: SqliteDatabase, inTransaction: () => boolean) {
    super({ database });
    this.#inTransaction = inTransaction;
  }
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#inTransaction()) await super.rollbackTransaction(connection);
  }
}
class Dialect extends SqliteDialect {
  readonly #raw: SQLite.Database;
  constructor(raw: SQLite.Database) {
    super({ database: remembering(raw) });
    this.#raw = raw;
  }
  override createAdapter(): SqliteAdapter {
    return new Adapter();
  }
  override createDriver(): Driver {
    return new Driver(remembering(this.#raw), () => this.#raw.inTransaction);
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

/** A copy from before the change, beside the file. @throws StoreRefusal when what there is cannot be copied whole */
async function copyBeside(raw: SQLite.Database, file: string): Promise<void> {
  await copyOpen(raw, `${file}.before-update`).catch((cause: unknown) => {
    if (isOutOfRoom(cause))
      throw new StoreRefusal("cannot open", `There is no room for a copy of ${file} before the update. Nothing was changed: make room and start again.`, {
        cause,
      });
    throw new StoreRefusal("damaged", `${file} failed its integrity check. Nothing was changed: restore a backup before updating.`, { cause });
  });
}
