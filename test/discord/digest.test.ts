// A group's digest on the platform: posted once into its channel, pinging nobody, also on bad days.

import { afterEach, expect, test } from "vitest";
import { HERON, INES, isPrivate, type OnStandIn, part, SEND, saidBy, settled, started } from "./server.ts";

let on: OnStandIn;
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
});
const garage = (manages = false) => ({ member: INES, channel: on.platform.garage, manages });
const tick = () => on.open.bot.reminders.tick(on.open.bot.now());
const digests = () => saidBy(on).filter(({ content }) => content.includes("This week in the group"));

/** A bike that its owner lets the group see, and a digest a minute from now. */
async function digestDue(): Promise<void> {
  on = await started({});
  const added = await on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name: "Heron*" }));
  await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
  await on.answerTo(on.platform.run(garage(), "bike", "change", { "group-picture": true }));
  await on.answerTo(on.platform.run(garage(), "remind", null, { by: "off" }));
  await on.answerTo(on.platform.run(garage(true), "group", null, { reading: "here" }));
  await tick();
  const at = await on.open.store.read((q) => q.digests.next());
  const ahead = Date.parse(at ?? "") - Date.parse(on.open.bot.now());
  on.advance(`PT${Math.round(ahead / 60_000) + 1}M`);
}

test("it stands in the channel, names what its owner lets be seen, and pings nobody; anyone there may ask why", async () => {
  await digestDue();
  expect((await tick()).sent).toBe(1);
  const [digest] = digests();
  expect(digest?.channel_id).toBe(on.platform.garage);
  expect(digest?.content).toContain("Heron\\*");
  expect(digest?.content).not.toContain("<@");
  if (digest === undefined) throw new Error("no digest");
  const why = await on.answerTo(on.platform.press({ member: "200000000000000002", channel: on.platform.garage }, digest, part(digest, "Why")));
  expect([isPrivate(why), why.content]).toEqual([true, expect.stringContaining("once a week")]);
});

test("an answer lost for so long that the platform has forgotten the nonce: it is found, and not posted again", async () => {
  await digestDue();
  on.platform.fault(SEND, "500", "after", 5);
  expect((await tick()).sent).toBe(0);
  on.platform.forgetNonces();
  on.advance("PT3M");
  expect((await tick()).sent).toBe(1);
  on.advance("P1D");
  await tick();
  expect(digests()).toHaveLength(1);
});

test("its channel is gone: the operator is told once, and no more is tried until another is named", async () => {
  await digestDue();
  on.platform.removeChannel(on.platform.garage);
  await settled();
  expect((await tick()).sent).toBe(0);
  expect(on.faults).toEqual([expect.objectContaining({ why: "channel gone" })]);
  expect(await on.open.store.read((q) => q.digests.next())).toBeNull();
  await on.answerTo(on.platform.run({ ...garage(true), channel: on.platform.chatter }, "group", null, { reading: "here" }));
  await tick();
  expect(await on.open.store.read((q) => q.digests.next())).not.toBeNull();
});
