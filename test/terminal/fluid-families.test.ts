// What never meets in one circuit is said wherever a class of fluid is looked up or entered. Source: 49 CFR 571.116 names the bases; that they never mix is common practice.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const CAUTION = "Brake fluid harms paint and eyes";

test("a class that is looked up says what it never mixes with", async () => {
  const t = await talk();
  const told = async (input: object) => (await t.one({ as: "Ines", in: "dm", ...input })).text ?? "";
  const silicone = await told({ run: "/spec what:DOT 5" });
  expect(silicone).toContain("DOT 5 is silicone: never mix it with DOT 3, DOT 4 and DOT 5.1 (glycol) or mineral oil. Seals swell and the brake can go.");
  expect(silicone).toContain(CAUTION);
  const glycol = "DOT 5.1 is glycol: never mix it with DOT 5 (silicone) or mineral oil.";
  expect(await told({ run: "/spec what:DOT 5.1" })).toContain(glycol);
  expect(await told({ run: "/spec what:mineral oil" })).toContain(
    "Mineral oil is a family of its own: never mix it with DOT 3, DOT 4 and DOT 5.1 (glycol) or DOT 5 (silicone).",
  );
  expect(await told({ run: "/spec what:brake fluids" })).toContain(CAUTION);
  await t.close();
});

test("a class that is entered as the manual's says what it never mixes with, and that the bike is entered otherwise", async () => {
  const t = await talk();
  const run = async (line: string) => (await t.one({ as: "Ines", in: "dm", run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  const saved = await run("/spec what:brake fluid value:DOT 5");
  expect(saved).toContain("DOT 5 is silicone: never mix it with");
  expect(saved).toContain("By /bike fitted it has DOT 4: look at the cap");
  expect(await run("/spec what:brake fluid")).toContain("By /bike fitted it has DOT 4");
  const same = await run("/spec what:brake fluid value:DOT 5.1");
  expect(same).toContain("never mix it with DOT 5 (silicone)");
  expect(same).not.toContain("By /bike fitted");
  await t.close();
});

test("a class that is entered says so too, and that an entry empties no line", async () => {
  const t = await talk();
  const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  const silicone = await run("/bike fitted part:brake fluid choice:DOT 5");
  expect(silicone.text).toContain("DOT 5 is silicone: never mix it with");
  expect(silicone.text).toContain("If DOT 4 is still in there, do not add to it");
  expect(silicone.text).toContain(CAUTION);
  expect(silicone.data.fluid).toEqual({ of: "brakes", now: "DOT 5", before: "DOT 4", never: ["DOT 3", "DOT 4", "DOT 5.1", "mineral oil"] });
  await run("/bike fitted part:brake fluid choice:DOT 4");
  const same = await run("/bike fitted part:brake fluid choice:DOT 5.1");
  expect(same.text).toContain("never mix it with DOT 5 (silicone)");
  expect(same.text).not.toContain("still in there");
  expect((await run("/bike fitted part:clutch choice:hydraulic mineral oil")).text).toContain("Clutch on mineral oil: never put brake fluid in.");
  expect((await run("/bike fitted part:clutch choice:hydraulic brake fluid")).text).toContain("If mineral oil is still in there");
  const wheels = await run("/bike fitted part:wheels choice:wire-spoked");
  expect(wheels.text).not.toContain("never");
  expect(wheels.data.fluid).toBeUndefined();
  await t.close();
});
