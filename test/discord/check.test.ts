// A check on the group's server: it goes to the member directly, is changed in place, and keeps within what the platform takes.

import { afterEach, describe, expect, test } from "vitest";
import { CHECKLISTS } from "../../src/core/check/checklist.ts";
import { HERON, INES, isPrivate, type OnStandIn, part, SEND, saidBy, started } from "./server.ts";
import type { Json } from "./wire.ts";

let on: OnStandIn;
afterEach(async () => {
  await on.close();
  // Every card was held against the platform's schemas and limits.
  expect(on.platform.wrong).toEqual([]);
});
const garage = () => ({ member: INES, channel: on.platform.garage, manages: false });
const direct = () => ({ member: INES, channel: on.platform.directChannel(INES) });
const begun = async (list: string): Promise<{ readonly answer: Json; readonly card: Json }> => {
  const before = saidBy(on).length;
  const answer = await on.answerTo(on.platform.run(garage(), "check", null, { list, bike: "Heron" }));
  return { answer, card: await on.until("a card", () => saidBy(on)[before]) };
};

describe("a check begun on the server", () => {
  test("is a message that stays, to its member alone; the interaction says where it went", async () => {
    on = await started();
    await on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
    const { answer, card } = await begun("out of storage");
    expect([isPrivate(answer), answer["content"]]).toEqual([true, expect.stringContaining("I have written to you directly")]);
    expect([card["channel_id"], isPrivate(card)]).toEqual([on.platform.directChannel(INES), false]);
    expect(card["content"]).toContain("Now: Mice and nests");
    // Pressed there, the card is changed in place.
    const pressed = on.platform.press(direct(), card, part(card, "Good"));
    expect((await on.answerTo(pressed)).content).toContain("- Mice and nests: good");
    expect(on.platform.acknowledged.get(pressed)?.type).toBe(7);
  });

  test("where direct messages are closed it is shown as it is, to its member alone", async () => {
    on = await started();
    await on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
    on.platform.fault(SEND, "403 closed");
    const answer = await on.answerTo(on.platform.run(garage(), "check", null, { list: "pre-ride", bike: "Heron" }));
    expect([isPrivate(answer), answer.content.includes("Heron, before a ride")]).toEqual([true, true]);
  });

  test("every list fits the platform's messages, buttons and lists", async () => {
    on = await started();
    await on.answerTo(on.platform.run(garage(), "bike", "add", HERON));
    for (const list of CHECKLISTS) {
      const { card } = await begun(list);
      expect(card["content"]).toContain("looked at.");
      expect((card["components"] as readonly Json[]).length).toBeLessThanOrEqual(5);
    }
  });
});
