// What a script finds under `data` in the answer to a plain message.

import { expect, test } from "vitest";
import { messageData } from "../../commands/replies/message-data.ts";
import { button, talk } from "../support/talk.ts";

const HEARD = { as: "Ines", in: "g1" };

test("a message's answer carries what was logged, the work and what is asked, in the channel and alone", async () => {
  const t = await talk();
  const added = await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const bike: string = added.data.bike.id ?? added.data.bike;
  const logged = await t.one({ ...HEARD, say: "14,820.4 mi on Heron, rear 2,1 bar, did the oil" });
  expect(messageData.parse(logged.data)).toMatchObject({ is: "logged" });
  expect(logged.data.logged).toEqual([
    {
      ...{ id: logged.data.readings[0].id, bike, nickname: "Heron", kind: "odometer", place: null, value: 14_820.4, unit: "mi", typed: "14,820.4 mi" },
      ...{ on: "2026-11-25", odometer: { value: 14_820.4, unit: "mi" } },
    },
    {
      ...{ id: logged.data.readings[1].id, bike, nickname: "Heron", kind: "cold pressure", place: "rear", value: 2.1, unit: "bar", typed: "2,1 bar" },
      ...{ on: "2026-11-25", odometer: { value: 14_820.4, unit: "mi" } },
    },
  ]);
  expect(logged.data.work).toMatchObject([{ items: [{ item: "engine-oil.replace", outcome: "done" }] }]);
  expect(logged.data.asked).toEqual([]);

  const asked = await t.one({ ...HEARD, in: "dm", say: "33 psi yesterday" });
  expect(messageData.parse(asked.data)).toMatchObject({ is: "asked" });
  expect([asked.data.logged, asked.data.work]).toEqual([[], []]);
  expect(asked.data.asked).toMatchObject([{ bike, about: "cold pressure", need: "place", options: ["front", "rear"], typed: "33 psi yesterday", rev: 1 }]);
  expect(asked.data.asked[0].draft).toBe(asked.data.question.draft);
  const answered = await t.one({ ...HEARD, in: "dm", press: button(asked, "front") });
  expect(answered.data.readings).toMatchObject([{ place: "front", on: "2026-11-24" }]);

  const none = await t.one({ ...HEARD, mention: true, say: "good morning" });
  expect(messageData.parse(none.data)).toMatchObject({ is: "not understood", logged: [], work: [], asked: [] });
  expect(await t.send({ ...HEARD, say: "lovely ride today" })).toEqual([]);
  await t.close();
});
