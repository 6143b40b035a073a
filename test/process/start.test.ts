// The process itself, as a newcomer or a script starts it.

import { spawn } from "node:child_process";
import { appendFile, cp, mkdir, mkdtemp, readdir, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { text } from "node:stream/consumers";
import { afterEach, beforeEach, expect, test, vi } from "vitest";

// A process of its own takes its time to start where other tests share two cores with it.
vi.setConfig({ testTimeout: 90_000 });

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
});
afterEach(() => rm(folder, { recursive: true }));

const HOUSE = path.join(import.meta.dirname, "..", "..");

/** Starts it by npm, types the lines, and answers what came out when the input ended. */
async function start(lines: readonly string[], args: readonly string[], env: Readonly<Record<string, string>> = {}, house = HOUSE) {
  const { DISCORD_TOKEN: _token, TAPPET_DATABASE: _database, TAPPET_LOG: _log, ...inherited } = process.env;
  const child = spawn("npm", ["start", "--silent", "--", ...args], { cwd: house, env: { ...inherited, ...env } });
  child.stdin.on("error", () => undefined).end(lines.map((line) => `${line}\n`).join(""));
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), new Promise((ended) => child.on("close", ended))]);
  return { out, err, code };
}

test("JSON lines: only answers on stdout, a bad line is named and the next one taken", async () => {
  const { out, err, code } = await start(
    [
      '{"as":"m1","run":"/bike add name:Heron kind:chain-drive twin odometer:14,210 mi"}',
      "torque, please",
      '{"as":"m1","shout":"hey"}',
      "",
      '{"as":"m1","say":"14820 mi on Heron"}',
    ],
    ["--lines", "--db", path.join(folder, "a.sqlite"), "--clock", "2027-03-01T09:00:00Z"],
  );
  const answers = out
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
  expect(answers.map(({ line, done, error, data }) => [line, done ?? error?.slice(0, 9) ?? data.is ?? data.nickname])).toEqual([
    [1, "Heron"],
    [1, true],
    [2, "not a JSO"],
    [2, true],
    [3, "not an in"],
    [3, true],
    [4, true],
    [5, "logged"],
    [5, true],
  ]);
  expect([err, code]).toEqual(["", 0]);
});

test("the practice room opens on an empty folder with one file, and keeps it", async () => {
  const database = path.join(folder, "practice.sqlite");
  const first = await start(["/bike add name:Heron kind:chain-drive twin odometer:14,210 mi", ":quit"], [], { TAPPET_DATABASE: database });
  expect(first.out).toContain("Heron is here at 14,210 mi");
  expect(await readdir(folder)).toEqual(["practice.sqlite"]);
  const second = await start(["/bike list"], [], { TAPPET_DATABASE: database });
  expect(second.out).toContain("Heron");
  expect([first.err, first.code, second.err, second.code]).toEqual(["", 0, "", 0]);
});

test("what is set wrongly is said in a sentence, and it ends with 1", async () => {
  const wrong = await start([], ["--clock", "soon"], { TAPPET_LOG: "loud" });
  expect(wrong).toEqual({
    out: "",
    err: "--clock is not a moment: soon. Write it as 2027-03-01T09:00:00Z.\nTAPPET_LOG is one of silent, error, warn, info, debug; it is loud.\n",
    code: 1,
  });
});

test("what was changed is what runs next, and where nothing can be built it runs as it is", async () => {
  const house = path.join(folder, "house");
  for (const part of ["src", "commands", "migrations", "package.json", "package-lock.json"])
    await cp(path.join(HOUSE, part), path.join(house, part), { recursive: true });
  const packages = path.join(HOUSE, "node_modules");
  await mkdir(path.join(house, "node_modules"));
  for (const name of (await readdir(packages)).filter((each) => !each.startsWith(".")))
    await symlink(path.join(packages, name), path.join(house, "node_modules", name));
  const shelf = path.join(house, "node_modules", ".cache");
  const from = async () => start([], ["--clock", "soon"], {}, house);
  expect((await from()).out).toBe("");
  expect(await readdir(path.join(shelf, "tappet"))).toHaveLength(1);
  await appendFile(path.join(house, "src", "main.ts"), '\nprocess.stdout.write("changed");\n');
  expect((await from()).out).toBe("changed");
  await rm(shelf, { recursive: true });
  await writeFile(shelf, "no folder can be made here");
  expect(await from()).toMatchObject({ out: "changed", err: expect.stringContaining("--clock is not a moment") });
});
