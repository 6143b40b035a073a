// Two processes on one PostgreSQL database: each event has one effect, each reminder is sent by one of them, wherever its group is served.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { aDatabase, type TestDatabase } from "../support/database.ts";
import { HERON, INES, type On, type OnStandIn, onStandIn, part, SEND, saidBy, settled } from "./server.ts";
import { type StandIn, standIn } from "./standin.ts";

describe("two processes", () => {
  let platform: StandIn;
  let database: TestDatabase;
  let both: OnStandIn[];
  beforeEach(async () => {
    [platform, database, both] = [await standIn(), await aDatabase(), []];
  });
  afterEach(async () => {
    for (const on of both) await on.close();
    await platform.close();
    await database.drop();
    expect(platform.wrong).toEqual([]);
  });
  const start = async (how: On = {}): Promise<OnStandIn> => {
    const on = await onStandIn({ file: database.address, use: platform, ...how });
    both.push(on);
    return on;
  };
  const garage = (manages = false) => ({ member: INES, channel: platform.garage, manages });
  async function reminderDue(one: OnStandIn): Promise<void> {
    const added = await one.answerTo(platform.run(garage(), "bike", "add", HERON));
    await one.answerTo(platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    for (const on of both) on.advance("P7D");
  }
  const tickBoth = () => Promise.all(both.map((on) => on.open.bot.reminders.tick(on.open.bot.now())));

  test("that both hear everything: a command, a message and a press have one effect and one answer", async () => {
    const one = await start();
    await start();
    const added = await one.answerTo(platform.run(garage(), "bike", "add", HERON));
    platform.say({ member: INES, channel: platform.directChannel(INES) }, "14,820 mi on Heron");
    await one.until("an answer", () => saidBy(one)[0]);
    await one.answerTo(platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    await settled();
    expect(saidBy(one)).toHaveLength(1);
    const readings = await one.answerTo(platform.run(garage(), "reading"));
    expect(readings.content.match(/14,820 mi/gu)).toHaveLength(1);
    expect(both.flatMap(({ faults }) => faults)).toEqual([]);
  });

  test("one of which is slow to answer what it did: its words are what the member reads, not that it was done already", async () => {
    const slow = await start({ slow: 400 });
    await start();
    await slow.answerTo(platform.run(garage(), "bike", "add", HERON));
    for (let miles = 14_300; miles < 14_800; miles += 100) {
      const logged = await slow.answerTo(platform.run(garage(), "reading", null, { log: `${miles} mi` }));
      const undone = platform.press(garage(), logged, part(logged, "Undo"));
      await slow.until("an answer", () => platform.acknowledged.has(undone));
      await new Promise((resolve) => setTimeout(resolve, 1200));
      expect((await slow.answerTo(undone)).content).toContain("Undone for Heron");
    }
    expect(both.flatMap(({ faults }) => faults)).toEqual([]);
  });

  test("one of which announced an answer and has none yet: the other's words take its place", async () => {
    const slow = await start({ slow: 3000, announceAfter: 100 });
    await start({ slow: 600, announceAfter: null });
    await slow.answerTo(platform.run(garage(), "bike", "add", HERON));
    const from = performance.now();
    const due = await slow.answerTo(platform.run(garage(), "due"));
    expect([due.content.includes("Heron at 14,210 mi"), performance.now() - from < 2500]).toEqual([true, true]);
    expect(both.flatMap(({ faults }) => faults)).toEqual([]);
  });

  test("that look at once: a reminder is sent by one of them", async () => {
    const one = await start();
    await start();
    await reminderDue(one);
    const ticks = await tickBoth();
    expect([ticks.reduce((sum, { sent }) => sum + sent, 0), saidBy(one).length]).toEqual([1, 1]);
  });

  test("that serve a part each: whichever looks first writes into the group's channel, and finds there what is in doubt", async () => {
    const first = await start({ process: { nth: 1, of: 2 } });
    const second = await start({ process: { nth: 2, of: 2 } });
    const counts = both.map((on) => on.open.client.guilds.cache.size);
    expect(counts.toSorted()).toEqual([0, 1]);
    const [served, other] = counts[0] === 1 ? [first, second] : [second, first];
    await served.answerTo(platform.run(garage(true), "group", null, { reading: "here" }));
    await served.answerTo(platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue(served);
    platform.fault(SEND, "500", "after", 5);
    const now = other.open.bot.now();
    expect((await other.open.bot.reminders.tick(now)).sent).toBe(0);
    platform.forgetNonces();
    for (const on of both) on.advance("PT3M");
    expect((await other.open.bot.reminders.tick(other.open.bot.now())).sent).toBe(1);
    expect(saidBy(served).map(({ channel_id }) => channel_id)).toEqual([platform.garage]);
  });
});
