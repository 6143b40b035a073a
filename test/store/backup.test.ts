// Backups and the way back: made while the bot runs, checked, rotated; what was there is moved aside, never deleted.

import { existsSync } from "node:fs";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import SQLite from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { addDays } from "../../src/core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../../src/core/calendar/dates.ts";
import { backUpDaily, backupFolder, backupsIn, noLongerOfUse, restore, whatIsWrong } from "../../src/store/backup.ts";
import type { Opened } from "../../src/store/db.ts";
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
    const made = await backUpDaily(copying(opened), backupFolder(file), NOW);
    await writing;
    expect(made).toBe("tappet-2026-11-26T0415Z.sqlite");
    const copy = path.join(folder, "backups", made ?? "");
    expect(whatIsWrong(copy, null)).toBe(null);
    expect(Number(await note(copy))).toBeLessThan(200);
    expect(await backUpDaily(copying(opened), backupFolder(file), "2026-11-26T23:59:00.000Z" as Instant)).toBe(null);
    expect(await backUpDaily(copying(opened), backupFolder(file), "2026-11-25T23:59:00.000Z" as Instant)).toBe(null);
    expect(await backUpDaily(copying(opened), backupFolder(file), "2026-11-27T00:00:00.000Z" as Instant)).toBe("tappet-2026-11-27T0000Z.sqlite");
    expect(writes).toBe(200);
    await opened.close();
  });

  test("that fails leaves nothing behind that could be taken for one", async () => {
    const opened = await openSqlite(file);
    await writeFile(path.join(folder, "backups"), "a file in the way");
    await expect(backUpDaily(copying(opened), backupFolder(file), NOW)).rejects.toThrow();
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

  test("of another name is not counted as one", async () => {
    await writeFile(path.join(folder, "tappet-2026-11-26.sqlite"), "");
    expect(await backupsIn(folder)).toEqual([]);
  });
});

describe("going back", () => {
  async function backedUp(): Promise<string> {
    await noting("before");
    const opened = await openSqlite(file);
    const made = await backUpDaily(copying(opened), backupFolder(file), NOW);
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
