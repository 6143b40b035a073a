// Backups and the way back: made while the bot runs, checked, rotated; what was there is moved aside, never deleted.

import { existsSync } from "node:fs";
import { cp, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import SQLite from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { addDays } from "../../src/core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../../src/core/calendar/dates.ts";
import { backUpDaily, backupsOf, noLongerOfUse } from "../../src/store/backup.ts";
import type { Opened } from "../../src/store/db.ts";
import { restore, whatIsWrong } from "../../src/store/restore.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { type Talk, talk } from "../support/talk.ts";

let folder: string;
let file: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  file = path.join(folder, "tappet.sqlite");
});
afterEach(() => rm(folder, { recursive: true }));

const NOW = "2026-11-26T04:15:30.000Z" as Instant;
const noting = async (note: string): Promise<void> => {
  const opened = await openSqlite(file);
  await storeOn(opened).change((q) => q.room.setMeta("note", note));
  await opened.close();
};
const note = async (of = file): Promise<string | null> => {
  const opened = await openSqlite(of);
  const found = await storeOn(opened).read((q) => q.room.meta("note"));
  await opened.close();
  return found;
};
const copying = ({ copyTo }: Opened) => copyTo ?? (() => Promise.reject(new Error("no copies")));

describe("a backup", () => {
  test("is made once a day while the database is written, and can be read by itself", async () => {
    const opened = await openSqlite(file);
    const store = storeOn(opened);
    let writes = 0;
    const writing = (async () => {
      for (; writes < 200; writes++) await store.change((q) => q.room.setMeta("note", String(writes)));
    })();
    const { made } = await backUpDaily(copying(opened), file, NOW);
    await writing;
    expect(made).toBe("tappet-2026-11-26T0415Z.sqlite");
    const copy = path.join(folder, "backups", made ?? "");
    expect(whatIsWrong(copy, null)).toBe(null);
    expect(Number(await note(copy))).toBeLessThan(200);
    expect((await backUpDaily(copying(opened), file, "2026-11-26T23:59:00.000Z" as Instant)).made).toBe(null);
    expect((await backUpDaily(copying(opened), file, "2026-11-27T00:00:00.000Z" as Instant)).made).toBe("tappet-2026-11-27T0000Z.sqlite");
    expect(writes).toBe(200);
    await opened.close();
  });

  test("that fails leaves nothing behind that could be taken for one", async () => {
    const opened = await openSqlite(file);
    await writeFile(path.join(folder, "backups"), "a file in the way");
    await expect(backUpDaily(copying(opened), file, NOW)).rejects.toThrow();
    await rm(path.join(folder, "backups"));
    await expect(copying(opened)(path.join(folder, "nowhere", "x.sqlite"))).rejects.toThrow();
    await opened.close();
    expect((await readdir(folder)).filter((name) => name.includes("part") || name.includes("backups"))).toEqual([]);
  });

  test("is kept for a week by days and for eight by weeks, and nothing else in the folder is touched", () => {
    const days = Array.from({ length: 100 }, (_, n) => addDays("2026-08-01" as LocalDate, n));
    let names: string[] = [];
    for (const day of days) {
      names.push(`tappet-${day}T0400Z.sqlite`);
      names = names.filter((name) => !noLongerOfUse(names).includes(name));
    }
    const kept = names.map((name) => name.slice(7, 17));
    // The last seven days, and the Sunday that ended each of the weeks before.
    expect(kept.slice(-7)).toEqual(days.slice(-7));
    expect(kept.slice(0, -7).every((day) => new Date(`${day}T00:00:00Z`).getUTCDay() === 0)).toBe(true);
    expect(kept.length).toBeLessThanOrEqual(7 + 8);
    expect(kept.length).toBeGreaterThanOrEqual(7 + 6);
  });

  test("dated after now, by a clock that was wrong, stands for nothing and is left alone", async () => {
    const opened = await openSqlite(file);
    const far = (await backUpDaily(copying(opened), file, "2040-01-01T04:00:00.000Z" as Instant)).made;
    for (let n = 0; n < 12; n++) {
      const { made, ahead } = await backUpDaily(copying(opened), file, `${addDays("2026-11-26" as LocalDate, n)}T04:00:00.000Z` as Instant);
      expect([made !== null, ahead]).toEqual([true, [far]]);
    }
    expect((await backupsOf(file)).at(-1)).toBe(far);
    await opened.close();
  });

  test("is its own database's: another one in the same folder has its own, and neither counts for the other", async () => {
    const mine = await openSqlite(file);
    const other = await openSqlite(path.join(folder, "tappet-friends.sqlite"));
    for (const day of ["2026-11-26", "2026-11-27"]) {
      const at = `${day}T04:00:00.000Z` as Instant;
      expect((await backUpDaily(copying(mine), mine.name, at)).made).toBe(`tappet-${day}T0400Z.sqlite`);
      expect((await backUpDaily(copying(other), other.name, at)).made).toBe(`tappet-friends-${day}T0400Z.sqlite`);
    }
    for (const each of [mine, other]) await each.close();
    expect(await backupsOf(file)).toEqual(["tappet-2026-11-26T0400Z.sqlite", "tappet-2026-11-27T0400Z.sqlite"]);
  });

  test("clears away what a copy that was cut off has left, and nothing else", async () => {
    const opened = await openSqlite(file);
    await mkdir(path.join(folder, "backups"));
    const left = ["tappet-2026-11-20T0400Z.sqlite.part", "tappet-2026-11-20T0400Z.sqlite.part-journal", "tappet-2026-11-26.sqlite", "notes.txt"];
    for (const name of left) await writeFile(path.join(folder, "backups", name), "");
    expect(await backupsOf(file)).toEqual([]);
    const { made } = await backUpDaily(copying(opened), file, NOW);
    expect((await readdir(path.join(folder, "backups"))).sort()).toEqual(["notes.txt", "tappet-2026-11-26.sqlite", made].sort());
    await opened.close();
  });

  test("of a database that is damaged is not made, and the copy is not kept", async () => {
    await noting("before");
    const raw = new SQLite(file);
    // Nothing that a start reads: an index of its own in pages of their own, spoiled.
    raw.exec("create table ballast (x text); create index ballast_x on ballast (x)");
    // More than is kept in memory, so that the copy is made from the file.
    const insert = raw.prepare("insert into ballast values (?)");
    raw.transaction(() => {
      for (let n = 0; n < 30_000; n++) insert.run(`${n}`.padStart(300, "x"));
    })();
    raw.pragma("wal_checkpoint(TRUNCATE)");
    raw.close();
    const opened = await openSqlite(file);
    const bytes = await readFile(file);
    await writeFile(file, bytes.fill(0xa5, 1000 * 4096, 1010 * 4096));
    await expect(backUpDaily(copying(opened), file, NOW)).rejects.toThrow("cannot be read whole");
    await opened.close();
    expect(await readdir(path.join(folder, "backups"))).toEqual([]);
    await expect(openSqlite(file)).rejects.toThrow(/it is damaged, or no database\. Nothing was changed/);
  });
});

describe("going back", () => {
  async function backedUp(): Promise<string> {
    await noting("before");
    const opened = await openSqlite(file);
    const { made } = await backUpDaily(copying(opened), file, NOW);
    await opened.close();
    await noting("after");
    return path.join(folder, "backups", made ?? "");
  }

  test("puts the backup in its place, and keeps what was there", async () => {
    const backup = await backedUp();
    const restored = await restore(backup, file, NOW);
    expect(restored).toEqual({ is: "restored", aside: `${file}.replaced-2026-11-26T041530` });
    expect([await note(), await note(`${file}.replaced-2026-11-26T041530`), await note(backup)]).toEqual(["before", "after", "before"]);
  });

  test("is refused while the bot runs, and nothing is changed", async () => {
    const backup = await backedUp();
    const running = await openSqlite(file);
    expect(await restore(backup, file, NOW)).toEqual({ is: "refused", why: "in use" });
    await running.close();
    expect(await note()).toBe("after");
  });

  test.each([
    ["is not there", "not there", async (backup: string) => rm(backup)],
    ["is damaged", "damaged", async (backup: string) => writeFile(backup, (await readFile(backup)).fill(0xa5, 4096, 20_000))],
    ["is no database", "damaged", async (backup: string) => writeFile(backup, "torque 24 Nm")],
    ["is another program's", "none of Tappet's", async (backup: string) => another(backup)],
    ["is of a newer release", "of a newer Tappet", async (backup: string) => newer(backup)],
  ] as const)("to what %s is refused, and nothing is changed", async (_, why, spoil) => {
    const backup = await backedUp();
    await spoil(backup);
    expect(await restore(backup, file, NOW)).toEqual({ is: "refused", why });
    expect(await note()).toBe("after");
    expect((await readdir(folder)).sort()).toEqual(["backups", "tappet.sqlite"]);
  });

  test("from a damaged database: its refusal names the newest backup, and it is kept aside as it was", async () => {
    const backup = await backedUp();
    const damaged = (await readFile(file)).fill(0xa5, 100, 4096);
    await writeFile(file, damaged);
    await expect(openSqlite(file)).rejects.toThrow(`go back to the newest backup with npm run restore -- ${backup}.`);
    const restored = await restore(backup, file, NOW);
    expect(restored.is).toBe("restored");
    expect(await note()).toBe("before");
    expect(await readFile(restored.is === "restored" ? (restored.aside ?? "") : "")).toEqual(damaged);
  });

  test("where nothing was", async () => {
    const backup = await backedUp();
    await rm(file);
    expect(await restore(backup, file, NOW)).toEqual({ is: "restored", aside: null });
    expect([await note(), existsSync(`${file}-wal`)]).toEqual(["before", false]);
  });

  /** A bot that died: its newest records are in the log beside the file. */
  async function died(): Promise<string> {
    const raw = new SQLite(file);
    raw.exec("update meta set value = 'in the log' where key = 'note'");
    const copy = path.join(folder, "died.sqlite");
    for (const tail of ["", "-wal"]) await cp(file + tail, copy + tail);
    raw.close();
    return copy;
  }

  test("where only the log of what was moved away is left: the log is moved aside too, and not played into the backup", async () => {
    const backup = await backedUp();
    const copy = await died();
    await rm(file);
    await rename(`${copy}-wal`, `${file}-wal`);
    const restored = await restore(backup, file, NOW);
    expect(restored).toEqual({ is: "restored", aside: `${file}.replaced-2026-11-26T041530` });
    expect([await note(), existsSync(`${file}.replaced-2026-11-26T041530-wal`)]).toEqual(["before", true]);
  });

  test("to a file taken from a bot that died: what was in its log is there", async () => {
    await backedUp();
    expect(await restore(await died(), file, NOW)).toMatchObject({ is: "restored" });
    expect(await note()).toBe("in the log");
  });

  test("to the practice room's records is refused for the server's, and nothing is changed", async () => {
    const backup = await backedUp();
    const facing = async (of: string, face: "terminal" | "discord"): Promise<void> => {
      const opened = await openSqlite(of);
      await storeOn(opened).change((q) => q.room.claimFace(face));
      await opened.close();
    };
    await facing(backup, "terminal");
    await facing(file, "discord");
    expect(await restore(backup, file, NOW)).toEqual({ is: "refused", why: "of the other face" });
    expect(await note()).toBe("after");
  });

  test("into a folder that is not there is refused", async () => {
    const backup = await backedUp();
    expect(await restore(backup, path.join(folder, "nowhere", "tappet.sqlite"), NOW)).toEqual({ is: "refused", why: "no such folder" });
  });
});

async function another(backup: string): Promise<void> {
  await rm(backup);
  const raw = new SQLite(backup);
  raw.exec("create table bolts (thread text)");
  raw.close();
}
async function newer(backup: string): Promise<void> {
  const raw = new SQLite(backup);
  raw.exec("insert into kysely_migration values ('203001010000-newer', '2030-01-01')");
  raw.close();
}

describe("a disk that takes nothing more", () => {
  const dm = { as: "Ines", in: "dm" };
  const listed = async (t: Talk): Promise<string[]> =>
    ((await t.one({ ...dm, run: "/reading" })).data.bikes[0].readings as { typed: string }[]).map(({ typed }) => typed);

  /** A bot, and the very connection that it writes by. */
  async function withConnection(): Promise<{ readonly t: Talk; readonly raw: SQLite.Database }> {
    const { pragma } = SQLite.prototype;
    const opened: SQLite.Database[] = [];
    SQLite.prototype.pragma = function (this: SQLite.Database, ...args: Parameters<typeof pragma>) {
      opened.push(this);
      return pragma.apply(this, args);
    };
    const t = await talk("2026-11-25T10:00:00Z", file, { faulty: true });
    SQLite.prototype.pragma = pragma;
    const [raw] = opened;
    if (raw === undefined) throw new Error("no connection");
    return { t, raw };
  }

  test.each([
    ["is full", "max_page_count = 1", "max_page_count = 1000000", "The disk that I keep records on is full, so nothing of that was saved."],
    ["may not be written", "query_only = on", "query_only = off", "The disk that I keep records on cannot be written, so nothing of that was saved."],
  ])("because it %s: one sentence, nothing half written, and all goes on when it is over", async (_, begin, end, sentence) => {
    const { t, raw } = await withConnection();
    await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    raw.pragma(begin);
    // Pages that have room still take some; the disk is full when none has.
    const work = (n: number) => t.one({ ...dm, run: `/work did:oil at:${14_220 + n} mi`, id: `m-${n}` });
    let n = 0;
    let answer = await work(n);
    while (answer.data.fault !== true && n < 400) answer = await work(++n);
    expect(answer.text).toContain(sentence);
    const before = await listed(t);
    raw.pragma(end);
    expect(await listed(t)).toEqual(before);
    expect((await work(n)).data.is).toBe("logged");
    expect((await listed(t))[0]).toBe(`${14_220 + n} mi`);
    await t.close();
  });
});
