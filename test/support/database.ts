// The database that a test runs on: a SQLite file in memory, or one of its own on the PostgreSQL server that TAPPET_TEST_POSTGRES names.

import { randomUUID } from "node:crypto";
import { copyFile, rm } from "node:fs/promises";
import path from "node:path";
import pg from "pg";
import { inject } from "vitest";

/** Set by the run's project; see .config/vitest.ts. */
export const ON_POSTGRES = process.env["TAPPET_TEST_ON"] === "postgres";
const SERVER = process.env["TAPPET_TEST_POSTGRES"] ?? "";
export const HAS_SERVER = SERVER !== "";
/** Brought up to date once a run, and copied for each test: far quicker than migrating each time. */
export const TEMPLATE = "tappet_test_template";

export type TestDatabase = { readonly address: string; readonly drop: () => Promise<void> };

/** A new database with nothing in it. */
export async function aDatabase(): Promise<TestDatabase> {
  return ON_POSTGRES ? onPostgres() : onSqlite();
}

/** A copy of the file that the run's setup brought up to date: far quicker than migrating each time. */
async function onSqlite(): Promise<TestDatabase> {
  const template = inject("template");
  if (template === undefined) return { address: ":memory:", drop: async () => undefined };
  const address = path.join(path.dirname(template), `${randomUUID()}.sqlite`);
  await copyFile(template, address);
  return { address, drop: async () => void (await Promise.all(["", "-wal", "-shm", ".lock"].map((end) => rm(`${address}${end}`, { force: true })))) };
}

/** A new database on the server. */
export async function onPostgres(): Promise<TestDatabase> {
  const name = `tappet_test_${randomUUID().replace(/-/gu, "")}`;
  await asAdmin(`create database ${name} template ${TEMPLATE}`);
  return { address: addressOf(name), drop: () => asAdmin(`drop database if exists ${name} with (force)`) };
}

/** The address of a database on the test server. */
export function addressOf(name: string): string {
  const url = new URL(SERVER);
  url.pathname = `/${name}`;
  return url.toString();
}

/** Runs one statement on the server itself. */
export async function asAdmin(statement: string): Promise<void> {
  const client = new pg.Client(SERVER);
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}
