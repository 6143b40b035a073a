// A battery by its kind: what is said of a swollen one, and what may be judged of a new one whose kind was only said.

import { afterEach, expect, test } from "vitest";
import { button, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const DM = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...DM, run: line });
const say = (line: string) => t.one({ ...DM, say: line });
const bike = async (kind = "chain-drive twin") => {
  t = await talk();
  await run(`/bike add name:Heron kind:${kind} odometer:9,000 mi`);
};

test("a lithium battery that is swollen stops the ride, with the advice for lithium; one with acid keeps its own", async () => {
  await bike();
  expect((await say("battery is swollen and hot")).text).toContain("Thaw it free of frost");
  await run("/bike fitted part:battery choice:lithium");
  const lithium = await say("battery case swollen");
  expect(lithium.data.defects).toMatchObject([{ kind: "damaged lithium battery", grade: "do not ride" }]);
  expect(lithium.text).toContain("Do not ride");
  expect(lithium.text).toContain("Outdoors with it");
  expect(lithium.text).toContain("A lithium battery burns when it is shorted");
  expect(lithium.text).not.toMatch(/acid|thaw|How bad/iu);
  await t.close();
  await bike("electric");
  expect((await say("battery is swollen")).data.defects).toMatchObject([{ kind: "damaged lithium battery", grade: "do not ride" }]);
});

test("the kind said with a new battery is kept and offered in one press; until it is entered its volts get no share by the old table", async () => {
  await bike();
  for (const [line, kind] of [
    ["new battery fitted, lithium", "lithium"],
    ["replaced the battery with a gel one", "gel"],
    ["fitted a LiFePO4 battery today", "lithium"],
    ["neue Lithium-Batterie eingebaut", "lithium"],
    ["new battery lithium", "lithium"],
  ] as const) {
    const put = await say(line);
    expect(put.data.outcome?.work ?? put.data.work, line).toMatchObject([
      { items: [{ item: "battery.test", outcome: "replaced" }], detail: { parts: [{ words: kind }] } },
    ]);
    expect(put.text, line).toContain(`a ${kind} battery was fitted`);
    await t.one({ ...DM, press: button(put, "Undo") });
  }
  const put = await say("new lithium battery");
  const unsure = await say("battery 13.2 V rested 8 h");
  expect(unsure.text).toContain("say which kind of battery it has");
  expect(unsure.text).not.toMatch(/charged|within/u);
  expect((await t.one({ ...DM, press: button(put, "Enter lithium battery") })).text).toContain("lithium battery");
  // Between 12.9 and 13.3 V published charts of lithium iron phosphate disagree by 10 to 20 points, so no share is said.
  expect((await say("battery 13.2 V rested 9 h")).text).toMatch(/within \(12\.8 V/u);
  // Of the kind that it is entered with, nothing is asked.
  expect((await say("new lithium battery")).text).not.toContain("Enter the new one");
});

test("volts of a battery of 6 V are not judged, and make nothing due; the word about one of 12 V stays", async () => {
  await bike("classic");
  const read = await say("battery 6.3 V rested 12 h");
  expect(read.text).toContain("Battery voltage at rest 6.3 V: cannot tell. A battery of 12 V that shows so little is dead");
  expect(read.text).not.toMatch(/% charged|now due|beyond/u);
});
