// Bringing a database up to date, step by step, each whole or not at all.

import fs from "node:fs/promises";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { type Kysely, type Migration, type MigrationProvider, Migrator } from "kysely";
import { type Columns, columnsFor, type DatabaseKind } from "./columns.ts";
import type { Db, OpenOptions } from "./db.ts";
import { StoreRefusal } from "./refusal.ts";
import { isOutOfRoom } from "./trouble.ts";

type MigrationFile = { readonly up: (db: Kysely<unknown>, columns: Columns) => Promise<void> };
const MIGRATIONS = fileURLToPath(new URL("../../migrations", import.meta.url));

/** Brings a database up to date. True when nothing was in it before. @param copy makes a copy of a file that has rows, before the first change; null where there is no file */
export async function migrate(
  db: Db,
  kind: DatabaseKind,
  { migrations = MIGRATIONS, upTo = "9" }: OpenOptions,
  copy: (() => Promise<void>) | null,
): Promise<boolean> {
  const steps = provider(migrations, upTo, columnsFor(kind));
  const migrator = new Migrator({ db, provider: steps });
  const known = new Set(Object.keys(await steps.getMigrations()));
  const present = await recorded(db);
  const newer = present.filter((name) => !known.has(name));
  if (newer.length > 0)
    throw new StoreRefusal("newer schema", "This database was written by a newer Tappet. Start that version, or restore a backup made before the update.");
  if (present.length === known.size) return false;
  if (copy !== null && present.length > 0) await copy();
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined)
    throw new StoreRefusal(
      "migration failed",
      `The database could not be brought up to date${isOutOfRoom(error) ? ", since its disk is full" : ""}. It stands as it was${copy === null ? "." : "; a copy from before is beside it."}`,
      { cause: error },
    );
  return present.length === 0;
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

/** The steps that this release knows. */
export const migrationNames = async (): Promise<readonly string[]> => Object.keys(await provider(MIGRATIONS, "9", columnsFor("sqlite")).getMigrations());
