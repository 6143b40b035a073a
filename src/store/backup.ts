// Backups of a SQLite file: made while it is open, checked, and kept for as long as they are of use.

import { existsSync } from "node:fs";
import fs from "node:fs/promises";
import path from "node:path";
import SQLite from "better-sqlite3";
import { addDays, weekdayOf } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import { migrationNames } from "./migrate.ts";

/** Days of which one backup each is kept, and weeks. */
const DAYS = 7;
const WEEKS = 8;
const NAME = /^tappet-(\d{4})-(\d{2})-(\d{2})T(\d{2})(\d{2})Z\.sqlite$/u;

/** The folder beside the database in which its backups are. */
export const backupFolder = (file: string): string => path.join(path.dirname(file), "backups");
const nameOf = (at: Instant): string => `tappet-${at.slice(0, 13)}${at.slice(14, 16)}Z.sqlite`;
const dayOf = (name: string): LocalDate => name.slice(7, 17) as LocalDate;

/** The names of the backups of a folder, oldest first. */
export async function backupsIn(folder: string): Promise<string[]> {
  return existsSync(folder) ? (await fs.readdir(folder)).filter((name) => NAME.test(name)).sort() : [];
}

/** Copies an open database into a file, by way of another name, so that a copy cut off is never taken for one. @throws when the copy cannot be read whole */
export async function copyOpen(raw: SQLite.Database, target: string): Promise<void> {
  const part = `${target}.part`;
  try {
    await raw.backup(part);
    if (!isWhole(part)) throw new Error("the copy cannot be read whole");
    const handle = await fs.open(part, "r+");
    await handle.sync();
    await handle.close();
    await fs.rename(part, target);
  } catch (error) {
    await fs.rm(part, { force: true });
    throw error;
  }
}

/** Makes the backup of a day (by UTC) that has none, and drops those that are no longer of use. Answers the name of what was made. */
export async function backUpDaily(copyTo: (target: string) => Promise<void>, folder: string, now: Instant): Promise<string | null> {
  const there = await backupsIn(folder);
  const newest = there.at(-1);
  // A clock set back leaves a backup of the future, which is new enough.
  if (newest !== undefined && dayOf(newest) >= now.slice(0, 10)) return null;
  await fs.mkdir(folder, { recursive: true });
  // What a copy that was cut off has left.
  for (const name of await fs.readdir(folder)) if (/^tappet-.*\.part/u.test(name)) await fs.rm(path.join(folder, name), { force: true });
  const made = nameOf(now);
  await copyTo(path.join(folder, made));
  for (const name of noLongerOfUse([...there, made])) await fs.rm(path.join(folder, name), { force: true });
  return made;
}

/** Of backups, oldest first, those that are neither the newest of one of the last days that have one nor of one of the last weeks. */
export function noLongerOfUse(names: readonly string[]): readonly string[] {
  const kept = new Set<string>();
  const keep = (group: (name: string) => string, most: number): void => {
    const newest = new Map(names.map((name) => [group(name), name]));
    for (const name of [...newest.values()].slice(-most)) kept.add(name);
  };
  keep(dayOf, DAYS);
  // A week begins on Monday (ISO 8601).
  keep((name) => addDays(dayOf(name), 1 - weekdayOf(dayOf(name))), WEEKS);
  return names.filter((name) => !kept.has(name));
}

/** Of a copy of our own, which is made one file by itself: without a log of writes beside it. */
function isWhole(file: string): boolean {
  const raw = new SQLite(file, { fileMustExist: true });
  try {
    raw.pragma("journal_mode = DELETE");
    return raw.pragma("integrity_check", { simple: true }) === "ok";
  } finally {
    raw.close();
  }
}

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
  | { readonly is: "refused"; readonly why: "not there" | "in use" | NonNullable<ReturnType<typeof whatIsWrong>> };

/** Puts a backup in the place of a database. What was there is moved aside, never deleted. @param now names what is moved aside */
export async function restore(backup: string, file: string, now: Instant): Promise<Restored> {
  if (!existsSync(backup)) return { is: "refused", why: "not there" };
  const wrong = whatIsWrong(backup, await migrationNames());
  if (wrong !== null) return { is: "refused", why: wrong };
  if (existsSync(file) && isInUse(file)) return { is: "refused", why: "in use" };
  const part = `${file}.part`;
  await fs.copyFile(backup, part);
  const handle = await fs.open(part, "r+");
  await handle.sync();
  await handle.close();
  if (!isWhole(part)) {
    await fs.rm(part, { force: true });
    return { is: "refused", why: "damaged" };
  }
  const aside = existsSync(file) ? `${file}.replaced-${now.slice(0, 19).replace(/:/gu, "")}` : null;
  // What stood in the log of writes belongs to what is moved aside.
  if (aside !== null) for (const tail of ["", "-wal", "-shm"]) if (existsSync(file + tail)) await fs.rename(file + tail, aside + tail);
  await fs.rename(part, file);
  return { is: "restored", aside };
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
