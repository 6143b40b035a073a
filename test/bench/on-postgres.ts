// The same large house on a PostgreSQL server: every row of the SQLite file, copied.

import SQLite from "better-sqlite3";
import pg from "pg";
import { openPostgres } from "../../src/store/postgres.ts";
import { addressOf, asAdmin } from "../support/database.ts";

const BATCH = 5000;

/** Copies a seeded file into a database of that name, and answers its address. */
export async function onPostgres(file: string, name: string): Promise<string> {
  await asAdmin(`drop database if exists ${name} with (force)`);
  await asAdmin(`create database ${name}`);
  const address = addressOf(name);
  await (await openPostgres(address)).close();
  const raw = new SQLite(file, { readonly: true });
  const client = new pg.Client(address);
  await client.connect();
  // What refers to another row comes after it.
  for (const table of ["groups", "plan_bases", "members", "bikes", "bike_events", "readings", "work"]) {
    const columns = (raw.pragma(`table_info(${table})`) as { name: string; type: string }[]).map(({ name: column, type }) => ({
      column: `"${column}"`,
      type: type === "INTEGER" ? "bigint" : type === "REAL" ? "double precision" : "text",
    }));
    const names = columns.map(({ column }) => column).join(", ");
    const arrays = columns.map(({ type }, n) => `$${n + 1}::${type}[]`).join(", ");
    const insert = async (rows: readonly unknown[][]): Promise<void> => {
      await client.query(
        `insert into ${table} (${names}) select * from unnest(${arrays})`,
        columns.map((_, n) => rows.map((row) => row[n])),
      );
    };
    let rows: unknown[][] = [];
    for (const row of raw.prepare(`select ${names} from ${table}`).raw().iterate()) {
      rows.push(row as unknown[]);
      if (rows.length < BATCH) continue;
      await insert(rows);
      rows = [];
    }
    if (rows.length > 0) await insert(rows);
  }
  await client.query("analyze");
  await client.end();
  raw.close();
  return address;
}
