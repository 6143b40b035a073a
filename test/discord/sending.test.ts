// Reminders on the platform's bad days: each arrives once, by another way where the first is closed, or is listed as failed.

import { afterEach, describe, expect, test } from "vitest";
import { WAITS } from "../../src/discord/again.ts";
import { HERON, INES, isPrivate, type On, type OnStandIn, part, SEND, saidBy, settled, started } from "./server.ts";

let on: OnStandIn;
const start = async (how: On = {}): Promise<void> => {
  on = await started(how);
};
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
});

const garage = (manages = false) => ({ member: INES, channel: on.platform.garage, manages });
const said = () => saidBy(on);
const ROSA = "200000000000000002";
/** Brake fluid is overdue on a member's bike, and the week of reminders has come. */
async function reminderDue(member = INES, name = "Heron"): Promise<void> {
  const at = { member, channel: on.platform.garage };
  const added = await on.answerTo(on.platform.run(at, "bike", "add", { ...HERON, name }));
  await on.answerTo(on.platform.fill(at, part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
  on.advance("P7D");
}
const tick = () => on.open.bot.reminders.tick(on.open.bot.now());

describe("sending a reminder", () => {
  test.each([
    ["told to wait", "429", "before"],
    ["an error before it was stored", "500", "before"],
    ["an error after it was stored", "500", "after"],
    ["the line cut after it was stored", "cut", "after"],
    ["a slow answer", "slow", "before"],
  ] as const)("%s: it arrives once, and counts as sent", async (_, how, when) => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, how, when);
    expect(await tick()).toMatchObject({ sent: 1 });
    await settled();
    expect(said()).toHaveLength(1);
    expect(await tick()).toMatchObject({ sent: 0 });
    expect(on.faults).toEqual([]);
  });

  test("errors are not answered with haste: each further try waits longer", async () => {
    await start({ waits: WAITS });
    await reminderDue();
    on.platform.fault(SEND, "500", "before", 2);
    const from = on.platform.calls.length;
    await tick();
    const tries = on.platform.calls.slice(from).filter((call) => SEND.test(`${call.method} ${call.path}`));
    const waits = tries.slice(1).map((call, n) => call.at - (tries[n]?.at ?? 0));
    expect(waits.map((wait) => Math.round(wait / 400))).toEqual([1, 3]);
  });

  test("a platform that stays away: it is tried again minutes later, and told once", async () => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, "500", "before", 5);
    expect(await tick()).toMatchObject({ sent: 0 });
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said()).toHaveLength(1);
  }, 30_000);

  test.each([
    ["by direct message", false, 0],
    ["in a channel where much was said since", true, 250],
  ] as const)("an answer lost for so long that the platform has forgotten the nonce: it is found %s, and not sent again", async (_, inChannel, since) => {
    await start();
    if (inChannel) {
      await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
      await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    }
    await reminderDue();
    on.platform.talkOn(on.platform.garage, since);
    on.platform.fault(SEND, "500", "after", 5);
    expect(await tick()).toMatchObject({ sent: 0 });
    on.platform.forgetNonces();
    on.platform.talkOn(on.platform.garage, since);
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said()).toHaveLength(1);
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 0 });
  });

  const NAMES = Array.from({ length: 14 }, (_, n) => `${"Longtailed-heron-".repeat(2)}${n}`.slice(-32));
  /** A reminder that takes several messages, of which the first is there; then the platform forgets the nonces. */
  async function firstPartSent(by: "channel" | "direct message" = "direct message"): Promise<void> {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by }));
    for (const name of NAMES) {
      const added = await on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name }));
      const fields = { "brake-fluid.replace": "spring 2023", "coolant.replace": "spring 2020", "tyre.front": "2015", "tyre.rear": "2015" };
      await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), fields));
    }
    on.advance("P7D");
    on.platform.fault(SEND, "500", "before", 5, 1);
    expect((await tick()).sent).toBe(0);
    expect(said()).toHaveLength(1);
    on.platform.forgetNonces();
    on.advance("PT3M");
  }
  /** Every part once, in order, all in one place, and every bike told of. */
  function allPartsIn(channel: string): void {
    const marks = said().map((message) => /"label":"(\d+\/\d+)"/u.exec(JSON.stringify(message["components"]))?.[1]);
    expect(marks.length).toBeGreaterThan(2);
    expect(marks).toEqual(marks.map((_, n) => `${n + 1}/${marks.length}`));
    expect([...new Set(said().map((message) => message.channel_id))]).toEqual([channel]);
    for (const name of NAMES) expect(said().some((message) => message.content.includes(name.slice(-8)))).toBe(true);
  }

  test("a long reminder of which a part is there: the rest follows, and no part comes twice", async () => {
    await firstPartSent();
    expect((await tick()).sent).toBe(1);
    allPartsIn(on.platform.directChannel(INES));
  });

  test("a long reminder of which a part is there, when some of it was done meanwhile: every bike is told of all the same", async () => {
    await firstPartSent();
    for (const bike of NAMES.slice(0, 3)) await on.answerTo(on.platform.run(garage(), "work", null, { did: "brake fluid, coolant", at: "14,300 mi", bike }));
    const before = said().length;
    expect(before).toBe(1);
    expect((await tick()).sent).toBe(1);
    allPartsIn(on.platform.directChannel(INES));
  });

  test("a long reminder of which a part is in the channel, when direct messages are wished meanwhile: the rest follows in the channel", async () => {
    await firstPartSent("channel");
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "direct message" }));
    expect((await tick()).sent).toBe(1);
    allPartsIn(on.platform.garage);
  });

  test("a long reminder of which a part is there, when direct messages were closed meanwhile: the channel says that something is waiting", async () => {
    await firstPartSent();
    on.platform.fault(new RegExp(`^POST /channels/${on.platform.directChannel(INES)}/messages$`, "u"), "403 closed", "before", 2);
    expect((await tick()).sent).toBe(1);
    expect(said().map(({ channel_id }) => channel_id)).toEqual([on.platform.directChannel(INES), on.platform.garage]);
    expect(said()[1]?.content).toContain("I have a reminder for you, but your direct messages are closed to me.");
  });

  test("a long reminder of which a part is there, when reminders were switched off meanwhile: no more of it comes", async () => {
    await firstPartSent();
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "off" }));
    expect((await tick()).sent).toBe(0);
    expect(said()).toHaveLength(1);
  });

  test("a long reminder of which a part is there waits out quiet hours with the rest", async () => {
    await firstPartSent();
    const now = on.open.bot.now().slice(11, 16);
    const from = `${String((Number(now.slice(0, 2)) + 23) % 24).padStart(2, "0")}${now.slice(2)}`;
    const to = `${String((Number(now.slice(0, 2)) + 2) % 24).padStart(2, "0")}${now.slice(2)}`;
    await on.answerTo(on.platform.run(garage(), "remind", null, { zone: "UTC", "quiet-from": from, "quiet-to": to }));
    expect([(await tick()).sent, said().length]).toEqual([0, 1]);
    on.advance("PT2H1M");
    expect((await tick()).sent).toBe(1);
    allPartsIn(on.platform.directChannel(INES));
  });

  test("a platform that is away for two weeks: one reminder after, of all that is so by then", async () => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, "500", "before", 1000);
    for (let day = 0; day < 15; day++) {
      await tick();
      on.advance("P1D");
      if (day === 3) await on.answerTo(on.platform.run(garage(), "work", null, { did: "brake fluid", at: "14,300 mi", on: "1 December 2023" }));
    }
    on.platform.recover();
    for (let n = 0; n < 4; n++) {
      await tick();
      on.advance("PT1H");
    }
    expect(said().map(({ content }) => content.split("\n")[0])).toEqual([expect.stringContaining("Heron")]);
  }, 30_000);

  test("what is at home in another group is not told in this one's channel", async () => {
    await start({ platform: { guilds: 2 } });
    const [, second = ""] = on.platform.guilds;
    const there = { member: INES, channel: `${second}1`.slice(-19), manages: true };
    for (const place of [garage(true), there]) await on.answerTo(on.platform.run(place, "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    for (const [place, name] of [
      [garage(), "Heron"],
      [there, "Wren"],
    ] as const) {
      const added = await on.answerTo(on.platform.run(place, "bike", "add", { ...HERON, name }));
      await on.answerTo(on.platform.fill(place, part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    }
    on.advance("P7D");
    expect((await tick()).sent).toBe(2);
    const by = (channel: string) =>
      said()
        .filter((message) => message.channel_id === channel)
        .map(({ content }) => [content.includes("Heron"), content.includes("Wren")]);
    expect([by(on.platform.garage), by(there.channel)]).toEqual([[[true, false]], [[false, true]]]);
  });

  test("lost so, and not sent before: it is looked for, and sent", async () => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, "500", "before", 5);
    await tick();
    on.platform.forgetNonces();
    on.advance("PT3M");
    expect([(await tick()).sent, said().length, on.platform.asked(/^GET .*messages$/u)]).toEqual([1, 1, 1]);
  });

  test.each([
    ["the right to read back was withdrawn", "after", "not allowed to read back", (channel: string) => on.platform.closeHistory(channel)],
    ["the channel is gone", "after", "channel gone", (channel: string) => on.platform.removeChannel(channel)],
    ["more was said than can be looked through", "before", "too much was said since", (channel: string) => on.platform.talkOn(channel, 5001)],
  ] as const)("lost so, and %s: it is listed as unconfirmed, to the operator and the member, and not sent again", async (_, when, why, then) => {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue();
    on.platform.fault(SEND, "500", when, 5);
    await tick();
    on.platform.forgetNonces();
    then(on.platform.garage);
    await settled();
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 0 });
    on.advance("P1D");
    expect(await tick()).toMatchObject({ sent: 0 });
    expect(said()).toHaveLength(when === "after" ? 1 : 0);
    expect(on.faults).toEqual([expect.objectContaining({ what: "a reminder may or may not have arrived; it is not sent again", why })]);
    const shown = await on.answerTo(on.platform.run({ ...garage(), channel: on.platform.chatter }, "remind"));
    expect(shown.content).toContain("may not have reached you");
  });

  test("direct messages closed: a line without a figure in the group's channel, whose button answers the member alone", async () => {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await reminderDue();
    on.platform.fault(SEND, "403 closed");
    expect(await tick()).toMatchObject({ sent: 1 });
    const line = await on.until("a line", () => said()[0]);
    expect([line.channel_id, line.content]).toEqual([
      on.platform.garage,
      "<@200000000000000001>\nI have a reminder for you, but your direct messages are closed to me.",
    ]);
    const shown = await on.answerTo(on.platform.press(garage(), line, part(line, "Show it")));
    expect([isPrivate(shown), shown.content.includes("Brake fluid: was due spring 2025")]).toEqual([true, true]);
    const others = await on.answerTo(on.platform.press({ ...garage(), member: "200000000000000002" }, line, part(line, "Show it")));
    expect(others.content).toBe("Only the bike's owner can do that.");
  });

  test("direct messages closed and no channel named: listed as failed, and not tried for ever", async () => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, "403 closed");
    expect(await tick()).toMatchObject({ sent: 0 });
    on.advance("P1D");
    expect(await tick()).toMatchObject({ sent: 0 });
    expect(said()).toEqual([]);
    const shown = await on.answerTo(on.platform.run(garage(), "remind", null));
    expect(shown.content).toMatch(
      /A reminder of .+ could not reach you: your direct messages are closed to me\. See \/due; open them, or choose by:channel\./u,
    );
  });

  test.each([
    ["deleted", "404 channel"],
    ["forbidden", "403 missing"],
  ] as const)("a channel that is %s: the reminder comes by direct message", async (_, how) => {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue();
    on.platform.fault(new RegExp(`^POST /channels/${on.platform.garage}/messages$`, "u"), how);
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said().map((message) => message.channel_id)).toEqual([on.platform.directChannel(INES)]);
  });

  test.each(["channel", "direct message"])(
    "a member who left and was reminded by %s: nothing about them in the group; listed as failed, and not tried for ever",
    async (by) => {
      await start();
      await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
      await on.answerTo(on.platform.run(garage(), "remind", null, { by }));
      await reminderDue();
      on.platform.left(INES);
      expect(await tick()).toMatchObject({ sent: 0 });
      on.advance("P1D");
      expect(await tick()).toMatchObject({ sent: 0 });
      expect(said()).toEqual([]);
      expect(on.faults).toEqual([expect.objectContaining({ what: "a reminder could not be delivered", why: "member left, member left" })]);
    },
  );

  test("a member who left the group and is in another: the reminder comes by direct message", async () => {
    await start({ platform: { guilds: 2 } });
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue();
    on.platform.fault(/^GET \/guilds\/\d+\/members/u, "404 member");
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said().map((message) => message.channel_id)).toEqual([on.platform.directChannel(INES)]);
  });

  test("a platform that will not say whether a member is still there: it is tried again minutes later", async () => {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue();
    on.platform.fault(/^GET \/guilds\/\d+\/members/u, "500", "before", 5);
    expect([(await tick()).sent, said()]).toEqual([0, []]);
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said().map((message) => message.channel_id)).toEqual([on.platform.garage]);
  });

  test("wished in a channel where the group has named none: it comes by direct message, and no channel is asked for", async () => {
    await start();
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    await reminderDue();
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said().map((message) => message.channel_id)).toEqual([on.platform.directChannel(INES)]);
    expect(on.platform.calls.some((call) => call.path === `/channels/${on.platform.guild}`)).toBe(false);
  });

  test("the second way is stumbling too: it is tried again minutes later, and told once", async () => {
    await start();
    await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
    await reminderDue();
    const direct = new RegExp(`^POST /channels/${on.platform.directChannel(INES)}/messages$`, "u");
    on.platform.fault(direct, "403 closed", "before", 2);
    on.platform.fault(SEND, "500", "before", 5);
    expect(await tick()).toMatchObject({ sent: 0 });
    on.advance("PT3M");
    expect(await tick()).toMatchObject({ sent: 1 });
    expect(said().map((message) => message.channel_id)).toEqual([on.platform.garage]);
  });

  test("direct messages opened too fast: it is tried again minutes later", async () => {
    await start();
    await reminderDue(ROSA);
    on.platform.fault(/^POST \/users/u, "400 too fast");
    expect([(await tick()).sent, said()]).toEqual([0, []]);
    on.advance("PT3M");
    expect([(await tick()).sent, said().length]).toEqual([1, 1]);
  });

  test("a reminder that the platform will not take is listed as failed, the operator is told, and the next one is not held up", async () => {
    await start();
    await reminderDue();
    await reminderDue(ROSA, "Wren");
    on.platform.fault(SEND, "400 form");
    expect((await tick()).sent).toBe(1);
    expect(said()).toHaveLength(1);
    expect(on.faults).toEqual([expect.objectContaining({ what: "a reminder could not be delivered", why: "refused" })]);
  });

  test("the token is no longer good: the bot ends with one sentence, and the reminder waits", async () => {
    await start();
    await reminderDue();
    on.platform.fault(SEND, "401");
    expect((await tick()).sent).toBe(0);
    expect(on.fatal).toEqual([expect.stringContaining("does not accept DISCORD_TOKEN")]);
    // The library has forgotten the token by now; that is the same end, not another fault.
    on.advance("PT3M");
    expect((await tick()).sent).toBe(0);
    expect(new Set(on.fatal).size).toBe(1);
    expect(on.faults).toEqual([]);
  });
});
