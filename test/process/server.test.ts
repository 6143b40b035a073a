// The process itself on the group's server, as a host runs it.

import { type ChildProcess, spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { type StandIn, standIn } from "../discord/standin.ts";

// A process of its own takes its time to start where other tests share two cores with it.
vi.setConfig({ testTimeout: 90_000 });

const HOUSE = path.join(import.meta.dirname, "..", "..");
let platform: StandIn;
let folder: string;
beforeEach(async () => {
  platform = await standIn({ granted: false });
  folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
});
afterEach(async () => {
  await platform.close();
  await rm(folder, { recursive: true });
});

function start(env: Readonly<Record<string, string>>): { readonly child: ChildProcess; readonly said: () => string; readonly ended: Promise<number | null> } {
  const { DISCORD_TOKEN: _token, TAPPET_DATABASE: _database, ...inherited } = process.env;
  // Started as a host's supervisor does, without npm between the signal and the bot.
  const child = spawn(process.execPath, ["src/start.js"], {
    cwd: HOUSE,
    env: { ...inherited, TAPPET_DATABASE: path.join(folder, "tappet.sqlite"), DISCORD_API_URL: platform.api, ...env },
  });
  let text = "";
  child.stderr.on("data", (chunk) => {
    text += String(chunk);
  });
  return { child, said: () => text, ended: new Promise((resolve) => child.on("close", resolve)) };
}
async function until(look: () => boolean, what: string): Promise<void> {
  for (let n = 0; n < 7500 && !look(); n++) await new Promise((resolve) => setTimeout(resolve, 10));
  if (!look()) throw new Error(what);
}

test("it signs in, registers, says so, and ends within five seconds when told to", async () => {
  const { child, said, ended } = start({ DISCORD_TOKEN: "good-token", TAPPET_READ_CHANNELS: "yes" });
  await until(() => said().includes("Tappet is running as"), said());
  expect(said()).toContain("in 1 server.");
  expect(said()).toContain("has not granted the message content privilege");
  await until(() => platform.registered().length === 16, "the commands");
  // A second one on the same file would take what the first has under way for what a dead one left.
  const second = start({ DISCORD_TOKEN: "good-token" });
  expect(await second.ended).toBe(1);
  expect(second.said()).toBe("tappet.sqlite is in use by another Tappet. Stop that one first, or give each a database of its own.\n");
  const from = performance.now();
  child.kill("SIGTERM");
  expect(await ended).toBe(0);
  expect(performance.now() - from).toBeLessThan(5000);
  expect(said()).toMatch(/Stopping\.\n$/u);
  expect(platform.wrong).toEqual([]);
});

test("told to stop before the platform has answered, it ends at once", async () => {
  platform.fault(/gateway/u, "hang");
  const { child, said, ended } = start({ DISCORD_TOKEN: "good-token" });
  await until(() => platform.asked(/gateway/u) > 0, "signing in");
  const from = performance.now();
  child.kill("SIGTERM");
  expect(await ended).toBe(0);
  expect(performance.now() - from).toBeLessThan(1000);
  expect(said()).toBe("Stopping.\n");
});

test("a token that is not accepted is said in one sentence, and it ends with 1", async () => {
  const { said, ended } = start({ DISCORD_TOKEN: "wrong" });
  expect(await ended).toBe(1);
  expect(said()).toBe("The platform does not accept DISCORD_TOKEN. Copy the bot's token again from the platform's developer pages, set it, and start again.\n");
});

test("a database of the practice room is not opened by the server's face", async () => {
  const practice = start({ DISCORD_TOKEN: "" });
  practice.child.stdin?.end();
  expect(await practice.ended).toBe(0);
  const { said, ended } = start({ DISCORD_TOKEN: "good-token" });
  expect(await ended).toBe(1);
  expect(said()).toBe("This database belongs to the terminal face. Name another file in TAPPET_DATABASE.\n");
});

test("while it runs the token is taken away: one sentence, and it ends with 1 for its host to see", async () => {
  const { said, ended } = start({ DISCORD_TOKEN: "good-token" });
  await until(() => said().includes("Tappet is running as"), said());
  platform.end(4004);
  expect(await ended).toBe(1);
  expect(said()).toContain("The platform does not accept DISCORD_TOKEN.");
});

test("a platform that hangs does not hold it up: it ends within five seconds", async () => {
  const { child, said, ended } = start({ DISCORD_TOKEN: "good-token" });
  await until(() => platform.messages.length > 0, said());
  platform.fault(/^POST \/channels/u, "hang");
  platform.say({ member: "200000000000000001", channel: platform.directChannel("200000000000000001") }, "hello");
  await until(() => platform.asked(/^POST \/channels/u) > 1, "an answer");
  const from = performance.now();
  child.kill("SIGTERM");
  expect(await ended).toBe(0);
  expect(performance.now() - from).toBeLessThan(5000);
});
