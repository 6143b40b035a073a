// The main job on the group's server: real discord.js against the stand-in.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { isPrivate, type On, type OnStandIn, onStandIn, part } from "./server.ts";
import type { Json } from "./wire.ts";

const INES = "200000000000000001";
const TOMASZ = "200000000000000002";

let on: OnStandIn;
const start = async (how: On = {}): Promise<OnStandIn> => {
  on = await onStandIn(how);
  return on;
};
afterEach(async () => {
  await on.close();
  expect(on.platform.wrong).toEqual([]);
  expect(on.faults).toEqual([]);
});

const garage = (member = INES, manages = false) => ({ member, channel: on.platform.garage, manages });
const direct = (member = INES) => ({ member, channel: on.platform.directChannel(member) });
const HERON = { name: "Heron", kind: "chain-drive twin", odometer: "14,210 mi" };
const addHeron = async () => on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
const reactions = () => on.platform.calls.filter((call) => call.path.includes("/reactions/")).map((call) => call.path.split("/").at(-2));
/** What the bot said of its own accord, the set-up message aside. */
const said = () => on.platform.messages.filter((message) => message["$interaction"] !== true && !message.content.startsWith("**Setting up"));

describe("the whole story", () => {
  test("commands are registered once, with their options, and again only when they changed", async () => {
    await start();
    const names = on.platform.registered().map((command) => `${command["type"]} ${command["name"]}`);
    expect(names).toEqual([
      "1 bike",
      "1 reading",
      "1 work",
      "1 records",
      "1 due",
      "1 check",
      "1 trip",
      "1 plan",
      "1 spec",
      "1 tyre",
      "1 convert",
      "1 torque",
      "1 remind",
      "1 group",
      "1 help",
      "3 Log this message",
    ]);
    const puts = () => on.platform.calls.filter((call) => call.method === "PUT" && call.path.endsWith("/commands")).length;
    expect(puts()).toBe(1);
  });

  test("a bike is added, its form opens from a button, and what is filled in is recorded", async () => {
    await start();
    const added = await addHeron();
    expect(isPrivate(added)).toBe(true);
    expect(added.content).toContain("Heron is here at 14,210 mi");
    const pressed = on.platform.press(garage(), added, part(added, "Fill in"));
    const modal = await on.until("a form", () => on.platform.answers.get(pressed));
    const fields = (modal["components"] as { label: string; component: { custom_id: string } }[]).map((label) => label.component.custom_id);
    expect(fields).toHaveLength(5);
    const filled = await on.answerTo(
      on.platform.fill(garage(), String(modal["custom_id"]), {
        "brake-fluid.replace": "spring 2023",
        "engine-oil.replace": "",
        "coolant.replace": "don't know",
      }),
    );
    expect(filled.content).toContain("Recorded: Brake fluid (spring 2023).");
    const due = await on.answerTo(on.platform.run(garage(), "due"));
    expect(due.content).toContain("Brake fluid: was due spring 2025, last done spring 2023");
    expect(isPrivate(due)).toBe(true);
    const shared = await on.answerTo(on.platform.run(garage(), "due", null, { share: true }));
    expect(isPrivate(shared)).toBe(false);
  });

  test("plain messages are read in the reading channel alone, marked, and answered privately where a question is needed", async () => {
    await start();
    await addHeron();
    on.platform.say(garage(), "14,800 mi on Heron");
    const set = await on.answerTo(on.platform.run(garage(INES, true), "group", null, { reading: "here" }));
    expect(set.content).toContain("Plain messages in this channel are read.");
    on.platform.say(garage(), "14,820 mi on Heron");
    await on.until("a mark", () => reactions().length === 1);
    expect(reactions()).toEqual(["✅"]);
    on.platform.say({ ...garage(), channel: on.platform.chatter }, "14,900 mi on Heron");
    on.platform.say(garage(), "see you all on Sunday");
    on.platform.say(garage(), "1,420 mi on Heron");
    const asked = await on.until("a question", () => said().at(-1));
    expect(asked.content).toBe("I have a question about that, and nothing is saved until you answer it.");
    const shown = await on.answerTo(on.platform.press(garage(), asked, part(asked, "Show the question")));
    expect(isPrivate(shown)).toBe(true);
    expect(shown.content).toContain("is below what the dial showed before");
    const others = await on.answerTo(on.platform.press(garage(TOMASZ), asked, part(asked, "Show the question")));
    expect(others.content).toBe("Only the bike's owner can do that.");
    // The answer takes the place of the question that only its member sees.
    await on.answerTo(on.platform.press(garage(), { ...shown, flags: 64 }, part(shown, "Let it go")));
    expect([...on.platform.acknowledged.values()].at(-1)?.type).toBe(7);
    const readings = await on.answerTo(on.platform.run(garage(), "reading"));
    expect(readings.content).toContain("14,820 mi");
    expect(readings.content).not.toContain("14,800 mi");
  });

  test("mentions and direct messages are always answered; the message menu logs what was said", async () => {
    await start();
    await addHeron();
    on.platform.say({ ...garage(), channel: on.platform.chatter }, "<@100000000000000001> 14,820 mi on Heron", { mentions: true });
    await on.until("a mark", () => reactions().length === 1);
    on.platform.say(direct(), "33 psi front 36 rear");
    const logged = await on.until("a direct answer", () => said().find((message) => message.channel_id === on.platform.directChannel(INES)));
    expect(logged.content).toContain("front cold tyre pressure 33 psi and rear cold tyre pressure 36 psi, today. Logged.");
    const message = on.platform.say({ ...garage(), channel: on.platform.chatter }, "did the oil at 14,820");
    const menu = await on.answerTo(on.platform.menu({ ...garage(), channel: on.platform.chatter }, message));
    expect([isPrivate(menu), menu.content]).toEqual([true, "Heron: Engine oil and filter, done today at 14,820 mi. Recorded."]);
    const undone = await on.answerTo(on.platform.press(garage(), menu, part(menu, "Undo")));
    expect(undone.content).toContain("Undone for Heron: Engine oil and filter.");
  });

  test("an edit amends, a delete is asked about in a direct message", async () => {
    await start();
    await addHeron();
    const message = on.platform.say(direct(), "14,802 mi on Heron");
    await on.until("an answer", () => said().length === 1);
    on.platform.edit(message, "14,820 mi on Heron");
    const amended = await on.until("the amended one", () => said()[1]);
    expect(amended.content).toContain("14,820 mi");
    on.platform.edit(message, "14,830 mi on Heron");
    const again = await on.until("the one amended again", () => said()[2]);
    expect(again.content).toContain("14,830 mi");
    on.platform.remove(message);
    const asked = await on.until("a question", () => said()[3]);
    expect(asked.content).toContain("was deleted. The record stands unless you withdraw it");
    const withdrawn = await on.answerTo(on.platform.press(direct(), asked, part(asked, "Withdraw")));
    expect(withdrawn.content).toContain("Undone for Heron");
  });

  test("options are suggested while they are typed", async () => {
    await start();
    await addHeron();
    const typing = on.platform.type(garage(), "due", "bike", "he");
    expect(await on.until("suggestions", () => on.platform.answers.get(typing))).toEqual({ choices: [{ name: "Heron", value: "Heron" }] });
  });

  test("a reminder comes by direct message, its buttons work after a restart, and it comes once", async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
    const file = path.join(folder, "tappet.sqlite");
    await start({ file });
    const added = await addHeron();
    await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    on.advance("P4D");
    await on.open.bot.reminders.tick(on.open.bot.now());
    const reminder = await on.until("a reminder", () => said()[0]);
    expect(reminder.channel_id).toBe(on.platform.directChannel(INES));
    expect(reminder.content).toContain("Brake fluid: was due spring 2025");
    expect(reminder.content).toContain("> Brake fluid harms paint and eyes");
    const { platform } = on;
    await on.open.close();
    on = await onStandIn({ file, use: platform });
    on.advance("P4D");
    await on.open.bot.reminders.tick(on.open.bot.now());
    expect(said()).toHaveLength(1);
    const put = await on.answerTo(platform.pick(direct(), reminder, part(reminder, "Put off"), ["a month"]));
    expect(put.content).toContain("Heron: Brake fluid put off until 29 December");
    const opened = platform.press(direct(), reminder, part(reminder, "Done"));
    const form = await on.until("a form", () => platform.answers.get(opened));
    const done = await on.answerTo(platform.fill(direct(), String(form["custom_id"]), { on: "", at: "14,300 mi" }));
    expect(done.content).toContain("Heron: Brake fluid, done today at 14,300 mi. Recorded.");
    expect(platform.calls.filter((call) => call.method === "PUT" && call.path.endsWith("/commands"))).toHaveLength(1);
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

  test("a reminder by channel names and pings its member alone", async () => {
    await start();
    await on.answerTo(on.platform.run(garage(INES, true), "group", null, { reading: "here" }));
    await on.answerTo(on.platform.run(garage(), "remind", null, { by: "channel" }));
    const added = await addHeron();
    await on.answerTo(on.platform.fill(garage(), part(added, "Fill in"), { "brake-fluid.replace": "spring 2023" }));
    on.advance("P4D");
    await on.open.bot.reminders.tick(on.open.bot.now());
    const reminder = await on.until("a reminder", () => said()[0]);
    expect(reminder.channel_id).toBe(on.platform.garage);
    expect(reminder.content).toMatch(/^<@200000000000000001>\n\*\*For Rider 001's Heron\*\*/u);
    expect(reminder["allowed_mentions"]).toEqual({ parse: [], users: [INES] });
  });
});

describe("the first hour", () => {
  test("the admin of a new server gets one message that leads through set-up, once", async () => {
    await start();
    const setUp = await on.until("the set-up message", () => on.platform.messages.find((message) => message.content.startsWith("**Setting up")));
    expect(setUp.channel_id).toBe(on.platform.directChannel(INES));
    const zone = on.platform.press(direct(), setUp, part(setUp, "Set the time zone"));
    const form = await on.until("a form", () => on.platform.answers.get(zone));
    const saved = await on.answerTo(on.platform.fill(direct(), String(form["custom_id"]), { zone: "Australia/Hobart" }));
    expect(saved.content).toContain("Time zone: Australia/Hobart. Spring is in September.");
    const law = await on.answerTo(on.platform.pick(direct(), setUp, part(setUp, "Whose tread law"), ["Germany"]));
    expect(law.content).toContain("Tread law, Germany: at least 1.6 mm");
    const others = await on.answerTo(on.platform.pick(direct(TOMASZ), setUp, part(setUp, "Whose tread law"), ["Austria"]));
    expect(others.content).toContain("Only members who may manage the server");
  });

  test("a member's first message leads to their first bike", async () => {
    await start();
    on.platform.say(garage(), "<@100000000000000001> 14,820 mi on Heron", { mentions: true });
    const answer = await on.until("an answer", () => said().find((message) => message.channel_id === on.platform.garage));
    expect(answer.content).toContain("you have no bike with me yet");
    const pressed = on.platform.press(garage(), answer, part(answer, "Add your first bike"));
    const form = await on.until("a form", () => on.platform.answers.get(pressed));
    // What was said already need not be typed again; a slip is said, and the form is there again.
    expect(filledIn(form)).toEqual({ name: "Heron", odometer: "14,820 mi" });
    const fill = (odometer: string) =>
      on.answerTo(on.platform.fill(garage(), String(form["custom_id"]), { name: "Heron", odometer }, { kind: "chain-drive twin" }));
    const slip = await fill("14,210");
    expect(slip.content).toContain("mi or km");
    const again = await on.until("the form again", () => on.platform.answers.get(on.platform.press(garage(), slip, part(slip, "Add your first bike"))) ?? true);
    expect(again).toBeTruthy();
    expect((await fill("14,210 mi")).content).toContain("From now on, mention me with it, or write it to me directly: 14,820 mi on Heron.");
  });
});

describe("what is typed cannot ping, link or format", () => {
  test("a nickname of marks is shown as it is", async () => {
    await start();
    const added = await on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name: "**[Rex](x)** `~|" }));
    expect(added.content).toContain("\\*\\*\\[Rex\\](x)\\*\\* \\`\\~\\| is here at 14,210 mi");
    on.platform.say(direct(), "hello https://example.org and @everyone");
    const answer = await on.until("an answer", () => said().at(-1));
    expect(answer["allowed_mentions"]).toEqual({ parse: [], replied_user: false });
    expect(JSON.stringify(answer)).not.toContain("@everyone");
  });

  test("other bots and the bot itself are not listened to", async () => {
    await start();
    await addHeron();
    on.platform.say(direct(), "14,900 mi on Heron", { bot: true });
    const readings = await on.answerTo(on.platform.run(garage(), "reading"));
    expect(readings.content).not.toContain("14,900");
  });
});

describe("more than a page", () => {
  test("25 bikes of the longest names are listed whole, over as many messages as it takes", async () => {
    await start();
    for (let n = 0; n < 25; n++)
      await on.answerTo(on.platform.run(garage(), "bike", "add", { ...HERON, name: `${"W".repeat(30)}${String(n).padStart(2, "0")}` }));
    const first = await on.answerTo(on.platform.run(garage(), "due"));
    const all = () => on.platform.messages.filter((message) => message["$token"] === first["$token"]);
    await on.until("all of it", () =>
      all()
        .map((message) => message.content)
        .join("\n")
        .includes(`${"W".repeat(30)}24`),
    );
    expect(all().length).toBeGreaterThan(3);
    for (const message of all()) expect([message.content.length <= 2000, isPrivate(message)]).toEqual([true, true]);
    const text = all()
      .map((message) => message.content)
      .join("\n");
    for (let n = 0; n < 25; n++) expect(text).toContain(`${"W".repeat(30)}${String(n).padStart(2, "0")} at 14,210 mi`);
    on.platform.say(direct(), "14,820");
    const asked = await on.until("a question", () => said().at(-1));
    const lists = (asked["components"] as { components: Json[] }[]).flatMap((row) => row.components).filter((each) => each["type"] === 3);
    expect(lists.map((list) => (list["options"] as Json[]).length)).toEqual([25]);
  }, 30_000);
});

/** The values that a form begins with. */
const filledIn = (form: Json): unknown =>
  Object.fromEntries(
    (form["components"] as { component: { custom_id: string; value?: string } }[]).flatMap(({ component: { custom_id, value } }) =>
      value === undefined ? [] : [[custom_id, value]],
    ),
  );
