// Going back to a backup: it is checked, copied with all that belongs to it, and put in the place of the database. What was there is moved aside, never deleted.

import { existsSync } from "node:fs";
import fs from "node:fs/promises";
import path from "node:path";
import SQLite from "better-sqlite3";
import type { Instant } from "../core/calendar/dates.ts";
import { copyOpen, isDamage, synced } from "./backup.ts";
import { migrationNames } from "./migrate.ts";
import { type WriteTrouble, writeTrouble } from "./trouble.ts";

/** What keeps a file from being used as the bot's database; null: nothing. @param known the migrations of this release, when a newer database is to be told */
export function whatIsWrong(file: string, known: readonly string[] | null): "damaged" | "none of Tappet's" | "of a newer Tappet" | null {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(file, { readonly: true, fileMustExist: true });
    if (raw.pragma("integrity_check", { simple: true }) !== "ok") return "damaged";
    const tables = raw.prepare("select name from sqlite_master where name in ('kysely_migration', 'meta')").all();
    if (tables.length < 2) return "none of Tappet's";
    const taken = raw.prepare("select name from kysely_migration").all() as { name: string }[];
    return known !== null && taken.some(({ name }) => !known.includes(name)) ? "of a newer Tappet" : null;
  } catch {
    return "damaged";
  } finally {
    raw?.close();
  }
}

export type Restored =
  | { readonly is: "restored"; readonly aside: string | null }
  | {
      readonly is: "refused";
      readonly why: "not there" | "in use" | "of the other face" | "no such folder" | NonNullable<ReturnType<typeof whatIsWrong>> | WriteTrouble;
    };

/** Files in which SQLite keeps what is not in the database file yet. */
const TAILS = ["-wal", "-shm", "-journal"] as const;

/** Puts a backup in the place of a database. @param now names what is moved aside */
export async function restore(backup: string, file: string, now: Instant): Promise<Restored> {
  if (!existsSync(backup)) return { is: "refused", why: "not there" };
  const wrong = whatIsWrong(backup, await migrationNames());
  if (wrong !== null) return { is: "refused", why: wrong };
  if (!existsSync(path.dirname(path.resolve(file)))) return { is: "refused", why: "no such folder" };
  if (existsSync(file) && isInUse(file)) return { is: "refused", why: "in use" };
  const [mine, its] = [faceOf(file), faceOf(backup)];
  if (mine !== null && its !== null && mine !== its) return { is: "refused", why: "of the other face" };
  try {
    return { is: "restored", aside: await replace(backup, file, now) };
  } catch (error) {
    const why = writeTrouble(error) ?? (isDamage(error) ? "damaged" : cannotBeMade(error) ? "read only" : null);
    if (why === null) throw error;
    return { is: "refused", why };
  }
}

async function replace(backup: string, file: string, now: Instant): Promise<string | null> {
  const fresh = `${file}.restored`;
  // Copied by way of the database itself: a file that was taken from a bot that died has its newest records in the log beside it.
  const raw = new SQLite(backup, { readonly: true, fileMustExist: true });
  try {
    await copyOpen(raw, fresh);
  } finally {
    raw.close();
  }
  const there = ["", ...TAILS].filter((tail) => existsSync(file + tail));
  const aside = there.length === 0 ? null : `${file}.replaced-${now.slice(0, 19).replace(/:/gu, "")}`;
  // The logs first, and whether or not the file itself is there: a log left behind would be played into the backup.
  for (const tail of there.toReversed()) await fs.rename(file + tail, aside + tail);
  await fs.rename(fresh, file);
  await synced(path.dirname(path.resolve(file)), "r");
  return aside;
}

/** SQLite's word for a file that it may not make. */
const cannotBeMade = (error: unknown): boolean => error instanceof SQLite.SqliteError && error.code === "SQLITE_CANTOPEN";

/** Whose database it is, as it says itself; null when it does not say or cannot be read. */
function faceOf(file: string): string | null {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(file, { readonly: true, fileMustExist: true });
    return (raw.prepare("select value from meta where key = 'face'").get() as { value: string } | undefined)?.value ?? null;
  } catch {
    return null;
  } finally {
    raw?.close();
  }
}

/** Has another process the database open? One that is damaged cannot be. */
function isInUse(file: string): boolean {
  let raw: SQLite.Database | null = null;
  try {
    raw = new SQLite(file, { timeout: 300, fileMustExist: true });
    raw.pragma("locking_mode = EXCLUSIVE");
    raw.exec("begin exclusive");
    raw.exec("rollback");
    return false;
  } catch (error) {
    return error instanceof SQLite.SqliteError && error.code.startsWith("SQLITE_BUSY");
  } finally {
    raw?.close();
  }
}
