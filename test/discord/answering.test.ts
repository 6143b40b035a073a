// Answers on the platform's bad days: the member gets each, once, where only those who may see it do.

import { afterEach, describe, expect, test } from "vitest";
import { CALLBACK, FOLLOW, HERON, INES, isPrivate, type On, type OnStandIn, part, SEND, saidBy, settled, started } from "./server.ts";

let on: OnStandIn;
const start = async (how: On = {}): Promise<void> => {
  on = await started(how);
};
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
});

const garage = (manages = false) => ({ member: INES, channel: on.platform.garage, manages });
const addHeron = async () => on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
const said = () => saidBy(on);
const ORIGINAL = /^PATCH \/webhooks\//u;
const MENTION = "<@100000000000000001>";

describe("an interaction", () => {
  test("work slower than the platform waits for is announced, then answered, as private as it was promised", async () => {
    await start({ slow: 1800, announceAfter: null });
    await addHeron();
    const due = on.platform.run(garage(), "due");
    await on.until("an announcement", () => on.platform.acknowledged.get(due));
    expect(on.platform.acknowledged.get(due)?.type).toBe(5);
    const answer = await on.answerTo(due);
    expect([isPrivate(answer), answer.content.includes("Heron at 14,210 mi")]).toEqual([true, true]);
  });

  test("an answer announced to all that comes to a refusal is the member's alone", async () => {
    await start({ slow: 300 });
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

  test("an answer is announced to whoever shall see it", async () => {
    await start({ slow: 300 });
    await addHeron();
    const [alone, shared] = [on.platform.run(garage(), "due"), on.platform.run(garage(), "due", null, { share: true })];
    await on.until("both", () => on.platform.acknowledged.get(alone) && on.platform.acknowledged.get(shared));
    expect([alone, shared].map((each) => on.platform.acknowledged.get(each)?.flags)).toEqual([64, 0]);
    expect([isPrivate(await on.answerTo(alone)), isPrivate(await on.answerTo(shared))]).toEqual([true, false]);
  });

  test("announced to all and come to something private: the announcement goes, and the member alone is answered", async () => {
    await start({ slow: 300 });
    await addHeron();
    const shared = on.platform.run(garage(), "due", null, { share: true, bike: "Nobody" });
    const answer = await on.until("the refusal", () => on.platform.messages.find((each) => each["$token"] === `token-${shared}` && each["$original"] !== true));
    expect(isPrivate(answer)).toBe(true);
    await on.until("the end of the announcement", () => on.platform.messages.some((each) => each["$token"] === `token-${shared}` && each.deleted === true));
    expect(on.faults).toEqual([]);
  });

  test("a button that settles a private message changes it, slow or not; any other leaves it as it is", async () => {
    await start({ slow: 300 });
    const added = await addHeron();
    await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    on.advance("P7D");
    await on.open.bot.reminders.tick(on.open.bot.now());
    const reminder = await on.until("a reminder", () => said()[0]);
    const shown = on.platform.press(garage(), { ...reminder, flags: 64 }, part(reminder, "What is due"));
    expect((await on.answerTo(shown)).content).toContain("Heron at 14,210 mi");
    const worked = await on.answerTo(on.platform.run(garage(), "work", null, { did: "oil", at: "14,300 mi" }));
    const undo = () => on.platform.press(garage(), { ...worked, flags: 64 }, part(worked, "Undo"));
    const undone = undo();
    expect((await on.answerTo(undone)).content).toContain("Undone for Heron");
    // A second press changes nothing, and leaves the answer to the first where it is.
    const again = undo();
    expect((await on.answerTo(again)).content).toContain("already");
    expect([shown, undone, again].map((each) => on.platform.acknowledged.get(each)?.type)).toEqual([5, 6, 6]);
    expect(isPrivate(await on.answerTo(again))).toBe(true);
  });

  test("an announcement whose acknowledgement was lost: the answer still takes its place", async () => {
    await start({ slow: 300 });
    await addHeron();
    on.platform.fault(CALLBACK, "500", "after");
    expect((await on.answerTo(on.platform.run(garage(), "due"))).content).toContain("Heron at 14,210 mi");
    expect([said(), on.faults]).toEqual([[], []]);
  });

  test.each([
    ["the interaction is over", CALLBACK, "404 unknown interaction"],
    ["the platform stays away", CALLBACK, "500"],
    ["the token has run out while it worked", ORIGINAL, "401 expired"],
    ["the announcement is gone", ORIGINAL, "404 webhook"],
  ] as const)("%s: the answer comes by direct message", async (_, route, how) => {
    await start({ slow: route === ORIGINAL ? 300 : 0 });
    await addHeron();
    on.platform.fault(route, how, "before", 3);
    on.platform.run(garage(), "due");
    const answer = await on.until("a direct message", () => said()[0]);
    expect([answer.channel_id, answer.content.includes("Heron at 14,210 mi")]).toEqual([on.platform.directChannel(INES), true]);
    expect(on.faults).toEqual([]);
  });

  test("a further page that may not be there is not tried twice: the whole answer comes by direct message", async () => {
    await start();
    for (let n = 0; n < 25; n++) await on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name: `${"W".repeat(30)}${n}` }));
    on.platform.fault(FOLLOW, "500");
    const listed = on.platform.run(garage(), "due");
    await on.answerTo(listed);
    await on.until("a direct message", () => said().at(-1)?.content.includes("W24"));
    expect(on.platform.messages.filter((each) => each["$token"] === `token-${listed}`)).toHaveLength(1);
    for (let n = 0; n < 25; n++) expect(said().some(({ content }) => content.includes(`W${n} `))).toBe(true);
  });

  test("a form that could not be opened in time is said so", async () => {
    await start();
    const added = await addHeron();
    on.platform.fault(CALLBACK, "404 unknown interaction");
    on.platform.press(garage(), added, part(added, "Fill in"));
    expect((await on.until("a word", () => said()[0])).content).toBe("That form could not be opened in time. Press the button again.");
  });

  test("a direct channel that could not be opened at once is opened at the next try", async () => {
    await start();
    await addHeron();
    on.platform.fault(CALLBACK, "404 unknown interaction");
    on.platform.fault(/^POST \/users/u, "500");
    on.platform.run(garage(), "convert", null, { what: "24 Nm" });
    expect((await on.until("a direct message", () => said()[0])).content).toContain("24 N·m = ");
  });
});

describe("a message", () => {
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

  test.each([
    ["the platform stumbles when it is marked", /reactions/u, "500", 1, 0],
    ["the platform stays away when it is marked", /reactions/u, "500", 3, 1],
  ] as const)("%s", async (_, route, how, times, words) => {
    await start();
    await addHeron();
    on.platform.fault(route, how, "before", times);
    on.platform.say(garage(), `${MENTION} 14,300 mi on Heron`, { mentions: true });
    await on.until("a mark or a word", () => said().length > 0 || on.platform.calls.some((call) => call.path.includes("reactions") && call.status === 204));
    await settled();
    expect(said().map(({ content }) => content)).toEqual(words === 0 ? [] : ["Logged."]);
  });

  test("not allowed to point at it: the answer stands by itself", async () => {
    await start();
    on.platform.fault(SEND, "403 history");
    on.platform.say(garage(), `${MENTION} 24 Nm in ft-lb?`, { mentions: true });
    const answer = await on.until("an answer", () => said()[0]);
    expect([answer.channel_id, answer["message_reference"]]).toEqual([on.platform.garage, undefined]);
    expect(answer.content).toContain("24 N·m = 17.7 ft-lb");
  });

  test("not allowed to write where it was said: the answer comes by direct message", async () => {
    await start();
    on.platform.fault(SEND, "403 missing");
    on.platform.say(garage(), `${MENTION} 24 Nm in ft-lb?`, { mentions: true });
    expect((await on.until("an answer", () => said()[0])).channel_id).toBe(on.platform.directChannel(INES));
  });

  test("another member's message is not logged, and says who can", async () => {
    await start();
    await addHeron();
    const message = on.platform.say({ member: "200000000000000002", channel: on.platform.garage }, "14,300 mi");
    const answer = await on.answerTo(on.platform.menu(garage(), message));
    expect([isPrivate(answer), answer.content]).toEqual([true, expect.stringContaining("Only whoever wrote a message can log it.")]);
  });
});
