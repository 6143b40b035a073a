// Backups of a SQLite file: made while it is open, checked, and kept for as long as they are of use.

import { existsSync } from "node:fs";
import fs from "node:fs/promises";
import path from "node:path";
import SQLite from "better-sqlite3";
import { addDays, weekdayOf } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";

/** Days of which one backup each is kept, and weeks. */
const DAYS = 7;
const WEEKS = 8;
const WHEN = /^-(\d{4}-\d{2}-\d{2}T\d{4})Z\.sqlite$/u;

/** The folder beside a database in which its backups are: databases of one folder share it, and a backup's name begins with its database's. */
export const backupFolder = (file: string): string => path.join(path.dirname(file), "backups");
const stemOf = (file: string): string => path.basename(file).replace(/\.(?:sqlite|sqlite3|db)$/u, "");
const momentOf = (at: Instant): string => `${at.slice(0, 13)}${at.slice(14, 16)}`;
/** The moment of a backup, as its name says; null when it is none of this database's. */
const whenOf = (name: string, stem: string): string | null => (name.startsWith(stem) ? (WHEN.exec(name.slice(stem.length))?.[1] ?? null) : null);
const dayOf = (name: string): LocalDate => (/(\d{4}-\d{2}-\d{2})T\d{4}Z\.sqlite$/u.exec(name)?.[1] ?? "") as LocalDate;

/** The names of the backups of a database, oldest first. */
export async function backupsOf(file: string): Promise<string[]> {
  const folder = backupFolder(file);
  return existsSync(folder) ? (await fs.readdir(folder)).filter((name) => whenOf(name, stemOf(file)) !== null).sort() : [];
}

/** A copy that cannot be read whole; what it was copied from most likely cannot either. */
export class NotWhole extends Error {
  constructor() {
    super("the copy cannot be read whole");
  }
}

/** Is it the database that cannot be read? */
export const isDamage = (error: unknown): boolean =>
  error instanceof NotWhole || (error instanceof SQLite.SqliteError && (error.code === "SQLITE_NOTADB" || error.code.startsWith("SQLITE_CORRUPT")));

/** What is written is on the disk. A folder is synced so that names in it stay. */
export async function synced(name: string, flags: "r" | "r+"): Promise<void> {
  const handle = await fs.open(name, flags);
  await handle.sync();
  await handle.close();
}

/** The newest backup of a database, to go back to; null when there is none. */
export async function newestBackup(file: string): Promise<string | null> {
  const newest = (await backupsOf(file)).at(-1);
  return newest === undefined ? null : path.join(backupFolder(file), newest);
}

/** Copies an open database into a file, by way of another name, so that a copy cut off is never taken for one. @throws when the copy cannot be read whole */
export async function copyOpen(raw: SQLite.Database, target: string): Promise<void> {
  const part = `${target}.part`;
  try {
    await raw.backup(part);
    if (!isWhole(part)) throw new NotWhole();
    await synced(part, "r+");
    await fs.rename(part, target);
  } catch (error) {
    await fs.rm(part, { force: true });
    throw error;
  }
}

/** What a day's backup came to. `ahead`: backups dated after now, which a wrong clock made: they are left alone and stand for nothing. */
export type BackedUp = { readonly made: string | null; readonly ahead: readonly string[] };

/** Makes the backup of a day (by UTC) that has none, and drops those that are no longer of use. */
export async function backUpDaily(copyTo: (target: string) => Promise<void>, file: string, now: Instant): Promise<BackedUp> {
  const [folder, stem] = [backupFolder(file), stemOf(file)];
  const moment = momentOf(now);
  const all = await backupsOf(file);
  const there = all.filter((name) => (whenOf(name, stem) ?? "") <= moment);
  const ahead = all.filter((name) => !there.includes(name));
  const newest = there.at(-1);
  if (newest !== undefined && dayOf(newest) >= now.slice(0, 10)) return { made: null, ahead };
  await fs.mkdir(folder, { recursive: true });
  // What a copy that was cut off has left.
  for (const name of await fs.readdir(folder))
    if (/\.part(?:-wal|-shm|-journal)?$/u.test(name) && name.startsWith(`${stem}-`)) await fs.rm(path.join(folder, name), { force: true });
  const made = `${stem}-${moment}Z.sqlite`;
  await copyTo(path.join(folder, made));
  for (const name of noLongerOfUse([...there, made])) await fs.rm(path.join(folder, name), { force: true });
  return { made, ahead };
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
export function isWhole(file: string): boolean {
  const raw = new SQLite(file, { fileMustExist: true });
  try {
    raw.pragma("journal_mode = DELETE");
    return raw.pragma("integrity_check", { simple: true }) === "ok";
  } finally {
    raw.close();
  }
}
