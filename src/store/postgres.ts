// A PostgreSQL server, through the same repositories. Numbers come back as numbers, checked.

import { Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import type { Db, Opened, OpenOptions } from "./db.ts";
import { migrate } from "./migrate.ts";
import { StoreRefusal } from "./refusal.ts";
import type { Tables } from "./tables.ts";

/** Connections at once; each answer needs one for some milliseconds. */
const CONNECTIONS = 8;
/** Milliseconds to wait for the server to take a connection. */
const PATIENCE = 5000;

/** @throws StoreRefusal with the way forward in its message */
export async function openPostgres(address: string, options: OpenOptions = {}): Promise<Opened> {
  const { onQuery } = options;
  const name = nameOf(address);
  const pool = new pg.Pool({ connectionString: address, max: CONNECTIONS, connectionTimeoutMillis: PATIENCE, types: { getTypeParser } });
  // An idle connection that breaks is replaced at the next statement; without a listener it would end the process.
  pool.on("error", () => undefined);
  const db: Db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }), ...(onQuery === undefined ? {} : { log: onQuery }) });
  try {
    await (await pool.connect()).release();
  } catch (cause) {
    await db.destroy();
    throw new StoreRefusal(
      "cannot open",
      `T${name.slice(1)} cannot be reached. Check that the server runs, that the database is there and that TAPPET_DATABASE names both.`,
      { cause },
    );
  }
  try {
    const fresh = await migrate(db, "postgres", options, null);
    return { db, kind: "postgres", name, fresh, copyTo: null, close: () => db.destroy() };
  } catch (error) {
    await db.destroy();
    throw error;
  }
}

/** Without the password. */
function nameOf(address: string): string {
  const url = new URL(address);
  return `the PostgreSQL database ${url.pathname.slice(1) || "of that name"} on ${url.host || "this computer"}`;
}

const { INT8, NUMERIC } = pg.types.builtins;
function getTypeParser(oid: number, format?: "text" | "binary"): unknown {
  if (oid === INT8 || oid === NUMERIC) return wholeOf;
  return pg.types.getTypeParser(oid, format as "text");
}

/** A bigint as a number. @throws RangeError beyond what a number holds exactly */
function wholeOf(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number that can be held exactly: ${text}`);
  return value;
}
