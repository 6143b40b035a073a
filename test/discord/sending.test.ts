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
