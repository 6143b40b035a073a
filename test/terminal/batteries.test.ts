// A battery by its kind: what is said of a swollen one, and what may be judged of a new one whose kind was only said.

import { afterEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

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
