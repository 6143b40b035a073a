// Lining is measured without the plate that it is glued to (common practice): a figure with the plate is kept, and says nothing of the lining.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const heron = async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return { t, say: (text: string) => t.one({ ...dm, say: text }), run: (line: string) => t.one({ ...dm, run: line }) };
};

test.each([
  "front pads 5 mm incl. backing plate",
  "front pads 4.5 mm, plate included",
  "front pads 5 mm including the backing plate",
  "front pads 5 mm inc. the plate",
  "front pads 5 mm with its backing plate",
  "Bremsbeläge vorne 5 mm inkl. Trägerplatte",
])("“%s” is kept, never judged within, and told why", async (text) => {
  const { t, say, run } = await heron();
  const told = await say(text);
  expect(told.data).toMatchObject({
    readings: [{ kind: "pad thickness", place: "front", detail: { conditions: ["with backing plate"] } }],
    judged: [{ judgement: { is: "cannot tell", missing: ["lining alone"] } }],
  });
  expect(told.data.unread).toBeUndefined();
  expect(told.text).toContain("with its backing plate it says nothing of the lining");
  expect(told.text).not.toContain("within");
  expect((await run("/reading picture:pads")).text).not.toContain("mm,");
  // The lining alone is less, and nothing has grown or worn by it.
  expect((await say("front pads 3 mm")).data).toMatchObject({ is: "logged", judged: [{ judgement: { is: "within" } }] });
  expect((await say("front pads 7 mm with the plate")).data).toMatchObject({ is: "logged" });
  await t.close();
});

test("without the plate it is the lining; too thin with it, it is thinner without", async () => {
  const { t, say } = await heron();
  expect((await say("front pads 3 mm without the backing plate")).data).toMatchObject({
    readings: [{ detail: null }],
    judged: [{ judgement: { is: "within" } }],
  });
  expect((await say("rear pads 0.9 mm with the backing plate")).data).toMatchObject({
    judged: [{ judgement: { is: "beyond limit" }, doNotRide: true }],
    defects: [{ kind: "worn rear pads" }],
  });
  await t.close();
});
