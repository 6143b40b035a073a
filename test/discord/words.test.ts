// What members say to the bot on the server: replies reach their question, edits and deletes what they are about.

import { afterEach, describe, expect, test } from "vitest";
import { HERON, INES, type On, type OnStandIn, part, saidBy, settled, started } from "./server.ts";

let on: OnStandIn;
const start = async (how: On = {}): Promise<void> => {
  on = await started(how);
};
afterEach(async () => {
  await on.close();
  expect([on.platform.wrong, on.faults]).toEqual([[], []]);
});

const TOMASZ = "200000000000000002";
const MENTION = "<@100000000000000001>";
const garage = (member = INES, manages = false) => ({ member, channel: on.platform.garage, manages });
const direct = () => ({ member: INES, channel: on.platform.directChannel(INES) });
const add = async (name: string) => on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name }));
const said = () => saidBy(on);
const named = (text: string) => on.platform.say(garage(), `${MENTION} ${text}`, { mentions: true });
const nth = (n: number) => on.until(`message ${n}`, () => said()[n]);
const readings = async () => (await on.answerTo(on.platform.run(garage(), "reading"))).content;

describe("a reply", () => {
  test("to a question answers that one, not the last", async () => {
    await start();
    await add("Heron");
    await add("Wren");
    named("33 psi on Heron");
    const first = await nth(0);
    named("36 psi on Wren");
    await nth(1);
    on.platform.say(garage(), `${MENTION} front`, { mentions: true, reply: first });
    await settled();
    const listed = await readings();
    expect(listed).toMatch(/Heron, latest readings\n- Front cold tyre pressure 33 psi.*\n- Odometer /u);
    expect(listed).toContain("One question is unanswered:\n- “36 psi on Wren”");
  });

  test("to one's own message answers what was asked about it", async () => {
    await start();
    await add("Heron");
    await add("Wren");
    const message = named("33 psi on Heron");
    await nth(0);
    named("36 psi on Wren");
    await nth(1);
    on.platform.say(garage(), `${MENTION} front`, { mentions: true, reply: message });
    await settled();
    expect(await readings()).toContain("One question is unanswered:\n- “36 psi on Wren”");
  });

  test("by itself, where two questions wait for such an answer, is asked about and not guessed", async () => {
    await start();
    await add("Heron");
    on.platform.say(direct(), "33 psi on Heron");
    await nth(0);
    on.platform.say(direct(), "34 psi on Heron");
    await nth(1);
    on.platform.say(direct(), "front");
    expect((await nth(2)).content).toContain("34 psi");
    expect(await readings()).toContain("2 questions are unanswered");
  });

  test("to the bot without its ping is heard where messages can be read", async () => {
    await start();
    await add("Heron");
    named("33 psi on Heron");
    on.platform.say(garage(), "front", { reply: await nth(0) });
    await on.until("a mark", () => on.platform.calls.filter((call) => call.path.includes("/reactions/")).length === 2);
    expect(await readings()).toContain("Front cold tyre pressure 33 psi");
  });
});

describe("an edit", () => {
  test("of a message that was asked about closes the question, whatever it says now", async () => {
    await start();
    await add("Heron");
    for (const [n, text] of ["14,820 mi on Heron", "see you on Sunday"].entries()) {
      const message = on.platform.say(direct(), "1,420 mi on Heron");
      await nth(2 * n);
      expect(await readings()).toContain("One question is unanswered");
      on.platform.edit(message, text);
      await nth(2 * n + 1);
      expect(await readings()).not.toContain("unanswered");
    }
  });

  test("that takes the figures out says what still stands, with its undo", async () => {
    await start();
    await add("Heron");
    const message = on.platform.say(direct(), "14,820 mi on Heron");
    await nth(0);
    on.platform.edit(message, "see you on Sunday");
    const answer = await nth(1);
    expect(answer.content).toContain("What the message logged before still stands:\nHeron: odometer 14,820 mi");
    expect((await on.answerTo(on.platform.press(direct(), answer, part(answer, "Undo")))).content).toContain("Undone for Heron");
  });

  test("that the platform tells of twice, or makes itself, is answered once or not at all", async () => {
    await start();
    await add("Heron");
    const message = on.platform.say(direct(), "14,820 mi on Heron");
    await nth(0);
    on.platform.edit(message, "14,830 mi on Heron");
    await nth(1);
    on.platform.edit(message, "14,830 mi on Heron", true);
    on.platform.embed(message);
    await settled();
    expect(said()).toHaveLength(2);
  });

  test("where it was not heard is heard by the message menu", async () => {
    await start();
    await add("Heron");
    const message = on.platform.say({ ...garage(), channel: on.platform.chatter }, "14,820 mi on Heron");
    await on.answerTo(on.platform.menu(garage(), message));
    const after = await on.answerTo(on.platform.menu(garage(), { ...message, content: "14,830 mi on Heron", edited_timestamp: "2026-11-25T10:05:00.000Z" }));
    expect(after.content).toContain("14,830 mi");
    expect(await readings()).not.toContain("14,820 mi");
  });
});

test("the menu on a message that is asked about shows its question, and makes no second", async () => {
  await start();
  await add("Heron");
  const message = on.platform.say(garage(), "33 psi on Heron");
  for (let n = 0; n < 3; n++) expect((await on.answerTo(on.platform.menu(garage(), message))).content).toContain("33 psi");
  expect(await readings()).toContain("One question is unanswered");
});

test("a question about a bike sold since is closed, without a fault", async () => {
  await start();
  await add("Heron");
  on.platform.say(direct(), "33 psi on Heron");
  const asked = await nth(0);
  await on.answerTo(on.platform.run(garage(), "bike", "change", { bike: "Heron", state: "sold" }));
  const answer = await on.answerTo(on.platform.press(direct(), asked, part(asked, "front")));
  expect(answer.content).not.toContain("Something went wrong");
});

test("messages deleted together are asked about one by one, also when they were only just said", async () => {
  await start();
  await add("Heron");
  const all = [named("14,820 mi on Heron"), named("14,830 mi on Heron")];
  on.platform.removeAll(all);
  await on.until("two questions", () => said().filter(({ content }) => content.includes("was deleted. The record stands")).length === 2);
});

test("webhooks, other bots and the platform's own messages are not members", async () => {
  await start();
  await on.answerTo(on.platform.run(garage(INES, true), "group", null, { reading: "here" }));
  await add("Heron");
  on.platform.say(garage(), "14,820 mi on Heron", { bot: true });
  on.platform.say(garage(), "14,821 mi on Heron", { more: { webhook_id: "300000000000000001" } });
  on.platform.say(garage(), "14,822 mi on Heron", { more: { type: 6 } });
  await settled();
  expect(await readings()).not.toContain("14,82");
});

describe("a reminder of many bikes", () => {
  test("has one list to choose a bike from, beyond 25 in two, and each bike comes with its own buttons", async () => {
    await start();
    const names = Array.from({ length: 26 }, (_, n) => `Bike ${String.fromCharCode(97 + n)}`);
    for (const name of names) {
      const added = await add(name);
      await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    }
    on.advance("P7D");
    await on.open.bot.reminders.tick(on.open.bot.now());
    const reminder = await on.until("its last page", () => said().find((message) => JSON.stringify(message["components"]).includes("Which bike")));
    const lists = (reminder["components"] as { components: { type: number; custom_id: string; options?: { value: string; label: string }[] }[] }[])
      .flatMap(({ components }) => components)
      .filter(({ type }) => type === 3);
    expect(lists.flatMap(({ options }) => options ?? []).map(({ label }) => label)).toEqual(names);
    const second = lists[1];
    const one = await on.answerTo(on.platform.pick(direct(), reminder, second?.custom_id ?? "", [second?.options?.[0]?.value ?? ""]));
    expect(one.content).toContain("Bike z at 14,210 mi");
    const last = await on.until("its buttons", () =>
      on.platform.messages.findLast((message) => JSON.stringify(message["components"]).includes("Done on Bike z")),
    );
    const done = on.platform.press(direct(), last, part(last, "Done on Bike z"));
    const form = await on.until("a form", () => on.platform.answers.get(done));
    expect((await on.answerTo(on.platform.fill(direct(), String(form["custom_id"]), { at: "14,300 mi" }))).content).toContain("Bike z: Brake fluid, done");
  }, 20_000);
});

describe("a server", () => {
  const welcomes = () => on.platform.messages.filter(({ content }) => content.startsWith("**Setting up")).length;
  test("that is joined is led through set-up; sent away and invited again, it is anew; hidden by an outage, it is not", async () => {
    await start();
    const second = "910000000000000002";
    on.platform.join(second);
    await on.until("its set-up message", () => welcomes() === 2);
    on.platform.hide(second);
    on.platform.show(second);
    await settled();
    expect(welcomes()).toBe(2);
    on.platform.forgetNonces();
    on.platform.leave(second);
    await settled();
    on.platform.show(second);
    await on.until("a set-up message again", () => welcomes() === 3);
  });
});

test("commands are there in servers and in direct messages", async () => {
  await start();
  expect(on.platform.registered().map((command) => command["contexts"])).toEqual(on.platform.registered().map(() => [0, 1]));
});

test("who may no longer manage the server may not set it up from an old message", async () => {
  await start();
  const welcome = on.platform.messages.find(({ content }) => content.startsWith("**Setting up"));
  if (welcome === undefined) throw new Error("no set-up message");
  const pick = (member: string) =>
    on.answerTo(on.platform.pick({ member, channel: on.platform.directChannel(member) }, welcome, part(welcome, "Unit for distances"), ["km"]));
  expect((await pick(TOMASZ)).content).toContain("manage");
  on.platform.promote(TOMASZ, true);
  expect((await pick(TOMASZ)).content).toContain("distance km");
  on.platform.promote(TOMASZ, false);
  expect((await pick(TOMASZ)).content).toContain("manage");
});
