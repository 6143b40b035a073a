// Bad days of the line to the platform: what the member and the operator see.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { connect } from "../../src/discord/connect.ts";
import { HERON, INES, type On, type OnStandIn, onStandIn, SEND, saidBy, settled, started } from "./server.ts";
import { standIn } from "./standin.ts";

let on: OnStandIn;
const start = async (how: On = {}): Promise<void> => {
  on = await started(how);
};
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
});

const garage = (manages = false) => ({ member: INES, channel: on.platform.garage, manages });
const direct = () => ({ member: INES, channel: on.platform.directChannel(INES) });
const addHeron = async () => on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
const said = () => saidBy(on);

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
    expect(on.platform.identifies()).toBe(1);
    // On a busy machine the library may take the line up a second time.
    expect(on.platform.resumes()).toBeGreaterThanOrEqual(1);
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

test.each([
  ["did not get through comes at the next start, and only then", "before"],
  ["got through, though that was not known, is not sent again", "after"],
] as const)("a set-up message that %s", async (_, when) => {
  const platform = await standIn();
  platform.fault(SEND, "500", when, 5);
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "tappet.sqlite");
  on = await onStandIn({ file, use: platform });
  await on.until("five tries", () => platform.calls.filter((call) => call.status === 500).length === 5);
  await settled();
  platform.forgetNonces();
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

test("the owner's direct messages are closed: a line where the server greets newcomers says how to set up, and the operator is told", async () => {
  const platform = await standIn();
  platform.fault(SEND, "403 closed");
  on = await onStandIn({ use: platform });
  const line = await on.until("a line", () => platform.messages[0]);
  expect([line.channel_id, line.content]).toEqual([platform.chatter, expect.stringContaining("sets me up with /group")]);
  expect(on.faults).toEqual([expect.objectContaining({ what: "the set-up message did not get through", why: "direct messages closed" })]);
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
    expect(await connect({ token: "good-token", api: platform.api, readChannels: false, part: null }, [10])).toMatchObject({ is: "refused", why: "token" });
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

  test.each([
    ["the token is no longer good", 4004, "does not accept DISCORD_TOKEN"],
    ["the privilege was taken back", 4014, "has taken back the message content privilege"],
    ["the platform wants something that is not there", 4011, "has ended the connection for good (4011)"],
  ])("%s while it runs: it ends with one sentence, for its host to start it again", async (_, code, sentence) => {
    await start();
    on.platform.end(code);
    await on.until("the end", () => on.fatal[0]);
    expect(on.fatal).toEqual([expect.stringContaining(sentence)]);
  });

  test("commands that could not be registered: it answers all the same, and the next start registers them", async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
    const file = path.join(folder, "tappet.sqlite");
    const platform = await standIn();
    platform.fault(/^PUT \/applications/u, "500", "before", 5);
    on = await onStandIn({ file, use: platform });
    expect([platform.registered(), on.faults]).toEqual([[], [expect.objectContaining({ what: expect.stringContaining("could not be registered") })]]);
    expect((await addHeron()).content).toContain("Heron");
    await on.open.close();
    on = { ...(await onStandIn({ file, use: platform })) };
    expect(platform.registered()).toHaveLength(16);
    await on.close();
    await rm(folder, { recursive: true });
    on = { ...on, close: () => platform.close() };
  });

  test("a platform that is not there is said so", async () => {
    await start();
    expect(await connect({ token: "good-token", api: "http://127.0.0.1:9/api", readChannels: false, part: null }, [10])).toMatchObject({
      is: "refused",
      why: "unreachable",
    });
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
