// Bad days of the platform: what the member and the operator see.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { connect } from "../../src/discord/connect.ts";
import { isPrivate, type On, type OnStandIn, onStandIn } from "./server.ts";
import { standIn } from "./standin.ts";

const INES = "200000000000000001";
let on: OnStandIn;
const start = async (how: On = {}): Promise<void> => {
  on = await onStandIn(how);
  await on.until("the set-up message", () => on.platform.messages.length > 0);
};
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
});

const garage = (manages = false) => ({ member: INES, channel: on.platform.garage, manages });
const direct = () => ({ member: INES, channel: on.platform.directChannel(INES) });
const HERON = { name: "Heron", kind: "chain-drive twin", odometer: "14,210 mi" };
const addHeron = async () => on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
/** What the bot sent of its own accord, the set-up message aside. */
const said = () => on.platform.messages.filter((message) => message["$interaction"] !== true && !message.content.startsWith("**Setting up"));
const settled = () => new Promise((resolve) => setTimeout(resolve, 300));
const SEND = /^POST \/channels\/\d+\/messages$/u;
const CALLBACK = /callback$/u;
describe("answering", () => {
  test("work slower than the platform waits for is announced, then answered, as private as it was promised", async () => {
    await start({ slow: 1800 });
    await addHeron();
    const due = on.platform.run(garage(), "due");
    await on.until("an announcement", () => on.platform.acknowledged.get(due));
    expect(on.platform.acknowledged.get(due)?.type).toBe(5);
    const answer = await on.answerTo(due);
    expect([isPrivate(answer), answer.content.includes("Heron at 14,210 mi")]).toEqual([true, true]);
  });

  test("an answer announced to all that comes to a refusal is the member's alone", async () => {
    await start({ slow: 1800 });
    const due = on.platform.run(garage(), "due", null, { share: true });
    const answer = await on.answerTo(due);
    expect([isPrivate(answer), answer.content]).toEqual([true, "You have no bike here yet. Add one with /bike add."]);
  });

  test("the platform no longer takes the answer: it comes by direct message", async () => {
    await start();
    await addHeron();
    on.platform.fault(CALLBACK, "404 unknown interaction");
    on.platform.run(garage(), "convert", null, { what: "24 Nm" });
    const answer = await on.until("a direct message", () => said()[0]);
    expect([answer.channel_id, answer.content.startsWith("24 N·m = ")]).toEqual([on.platform.directChannel(INES), true]);
  });

  test("an error after the answer was taken: answered once, and nothing is logged as wrong", async () => {
    await start();
    await addHeron();
    on.platform.fault(CALLBACK, "500", "after");
    const answer = await on.answerTo(on.platform.run(garage(), "work", null, { did: "oil", at: "14,300 mi" }));
    await settled();
    expect(answer.content).toContain("Engine oil and filter, done today at 14,300 mi.");
    expect(on.platform.messages.filter((message) => message.content.includes("Engine oil"))).toHaveLength(1);
    expect(on.faults).toEqual([]);
  });

  test("not allowed to react: the mark is a word instead", async () => {
    await start();
    await addHeron();
    on.platform.fault(/reactions/u, "403 missing");
    on.platform.say(garage(), "<@100000000000000001> 14,300 mi on Heron", { mentions: true });
    expect((await on.until("a word", () => said()[0])).content).toBe("Logged.");
  });

  test("an answer for the member alone whose direct messages are closed is said so, without a figure", async () => {
    await start();
    await addHeron();
    on.platform.fault(SEND, "403 closed");
    on.platform.say(garage(), "<@100000000000000001> hello", { mentions: true });
    expect((await on.until("a line", () => said()[0])).content).toContain("your direct messages are closed to me");
  });
});

describe("the line", () => {
  test("dropped and taken up again: what was said meanwhile is heard, once", async () => {
    await start();
    await addHeron();
    on.platform.drop();
    on.platform.say(direct(), "14,300 mi on Heron");
    await on.until("an answer", () => said()[0]);
    on.platform.repeatLast();
    await settled();
    expect(said()).toHaveLength(1);
    expect([on.platform.identifies(), on.platform.resumes()]).toEqual([1, 1]);
  });

  test("asked to connect anew, it does", async () => {
    await start();
    await addHeron();
    on.platform.reconnect();
    await on.until("a resume", () => on.platform.resumes() === 1);
    on.platform.say(direct(), "14,300 mi on Heron");
    await on.until("an answer", () => said()[0]);
  });

  test("a session that is no longer valid is begun anew", async () => {
    await start();
    await addHeron();
    on.platform.invalidate();
    await on.until("a new session", () => on.platform.identifies() === 2);
    await settled();
    on.platform.say(direct(), "14,300 mi on Heron");
    await on.until("an answer", () => said()[0]);
  }, 20_000);

  test("heartbeats unanswered: the dead line is let go and taken up again", async () => {
    await start();
    await addHeron();
    on.platform.mute(true);
    await on.until("a resume", () => on.platform.resumes() > 0);
    on.platform.mute(false);
    on.platform.say(direct(), "14,300 mi on Heron");
    await on.until("an answer", () => said()[0]);
  });
});

test("a set-up message that did not get through comes at the next start, and only then", async () => {
  const platform = await standIn();
  platform.fault(SEND, "500", "before", 5);
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "tappet.sqlite");
  on = await onStandIn({ file, use: platform });
  await on.until("five tries", () => platform.calls.filter((call) => call.status === 500).length === 5);
  await settled();
  for (const sent of [1, 1]) {
    await on.open.close();
    on = await onStandIn({ file, use: platform });
    await on.until("the set-up message", () => platform.messages.length > 0);
    await settled();
    expect(platform.messages).toHaveLength(sent);
  }
  await rm(folder, { recursive: true });
  const last = on;
  on = {
    ...last,
    async close() {
      await last.close();
      await platform.close();
    },
  };
});

describe("what was not granted", () => {
  test("without the privilege: the operator is told once, the group is told how to be heard, and mentions work", async () => {
    await start({ platform: { granted: false } });
    expect(on.open.notes).toEqual([expect.stringContaining("has not granted the message content privilege")]);
    await addHeron();
    const group = await on.answerTo(on.platform.run(garage(), "group"));
    expect(group.content).toContain("Plain messages in channels cannot be heard here");
    on.platform.say(garage(), "14,300 mi on Heron");
    on.platform.say(garage(), "<@100000000000000001> 14,320 mi on Heron", { mentions: true });
    await on.until("a mark", () => on.platform.calls.some((call) => call.path.includes("/reactions/")));
    const readings = await on.answerTo(on.platform.run(garage(), "reading"));
    expect(readings.content).toContain("14,320 mi");
    expect(readings.content).not.toContain("14,300 mi");
  });

  test("a wrong token is refused in one sentence's worth of reason", async () => {
    await start();
    const platform = await standIn({ token: "another" });
    expect(await connect({ token: "good-token", api: platform.api, readChannels: false })).toMatchObject({ is: "refused", why: "token" });
    await platform.close();
  });

  test("a token that is no longer good ends the bot with one sentence", async () => {
    await start();
    await addHeron();
    on.platform.fault(SEND, "401");
    on.platform.say(direct(), "14,300 mi on Heron");
    await on.until("the end", () => on.fatal[0]);
    expect(on.fatal).toEqual([expect.stringContaining("does not accept DISCORD_TOKEN")]);
  });

  test("a platform that is not there is said so", async () => {
    await start();
    expect(await connect({ token: "good-token", api: "http://127.0.0.1:9/api", readChannels: false })).toMatchObject({ is: "refused", why: "unreachable" });
  });
});

test("it ends within five seconds with work under way, and what was begun is whole", async () => {
  await start({ slow: 1200 });
  await addHeron();
  const due = on.platform.run(garage(), "due");
  await new Promise((resolve) => setTimeout(resolve, 200));
  const from = performance.now();
  await on.open.close();
  expect(performance.now() - from).toBeLessThan(5000);
  expect((await on.answerTo(due)).content).toContain("Heron at 14,210 mi");
  const last = on;
  on = { ...last, close: async () => last.platform.close() };
});
