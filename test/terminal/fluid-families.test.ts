// What never meets in one circuit is said wherever a class of fluid is looked up or entered. Source: 49 CFR 571.116 names the bases; that they never mix is common practice.

import { expect, test } from "vitest";
import { fluidsNamed } from "../../src/message/fluids-named.ts";
import { GERMAN_DETAIL_WORDS } from "../../src/words/de/detail-words.ts";
import { ENGLISH_DETAIL_WORDS } from "../../src/words/en/detail-words.ts";
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

const bike = async (clutch: string) => {
  const t = await talk();
  const dm = { as: "Ines", in: "dm" };
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  if (clutch !== "cable") await t.one({ ...dm, run: `/bike fitted part:clutch choice:${clutch}` });
  return { t, send: (line: string) => t.one({ ...dm, [line.startsWith("/") ? "run" : "say"]: line }) };
};

test.each([
  // A clutch on mineral oil takes no brake fluid, whatever its class.
  ["hydraulic mineral oil", "did the clutch fluid with DOT 4", "clutch", "mineral oil", "DOT 4"],
  ["hydraulic mineral oil", "/work did:clutch fluid with:DOT 5.1", "clutch", "mineral oil", "DOT 5.1"],
  ["hydraulic mineral oil", "topped up the clutch with DOT 4", "clutch", "mineral oil", "DOT 4"],
  ["hydraulic mineral oil", "topped up the clutch fluid with brake fluid", "clutch", "mineral oil", "brake fluid"],
  ["hydraulic mineral oil", "put DOT 5 in the clutch reservoir", "clutch", "mineral oil", "DOT 5"],
  ["hydraulic brake fluid", "did the clutch fluid with mineral oil", "clutch", "DOT 4", "mineral oil"],
  // Brakes on DOT 4.
  ["cable", "/work did:brake fluid with:DOT 5 silicone", "brakes", "DOT 4", "DOT 5"],
  ["cable", "/work did:brake fluid with:silicone", "brakes", "DOT 4", "DOT 5"],
  ["cable", "/work did:brake fluid with:100 ml DOT 5 silicone", "brakes", "DOT 4", "DOT 5"],
  ["cable", "/work did:brake hoses with:DOT 5", "brakes", "DOT 4", "DOT 5"],
  ["cable", "topped up the front brake with DOT 5 silicone", "brakes", "DOT 4", "DOT 5"],
  ["cable", "filled brake fluid DOT 5", "brakes", "DOT 4", "DOT 5"],
  ["cable", "put mineral oil in the rear brake", "brakes", "DOT 4", "mineral oil"],
  ["cable", "bled the brakes with silicone fluid", "brakes", "DOT 4", "DOT 5"],
  ["cable", "changed the brake fluid, mineral oil", "brakes", "DOT 4", "mineral oil"],
  ["cable", "Bremsflüssigkeit gewechselt mit Silikon", "brakes", "DOT 4", "DOT 5"],
] as const)("clutch %s: “%s” stops the ride", async (clutch, said, of, inside, added) => {
  const { t, send } = await bike(clutch);
  const told = await send(said);
  expect(told.data).toMatchObject({
    work: [{}],
    fluids: [{ of, inside, added, worth: null }],
    // Oil and brake fluid spoil each other's rubber; silicone and glycol share it. Common practice.
    defects: [
      { kind: of === "clutch" ? "attacked clutch seals" : added === "mineral oil" ? "attacked brake seals" : "mixed brake fluid", grade: "do not ride" },
    ],
  });
  expect(told.data.unread).toBeUndefined();
  expect(told.text).toContain("the two never mix");
  expect((await send("/due")).text).toContain(`Do not ride: “${added} with ${inside}”`);
  await t.close();
});

test.each([
  ["hydraulic mineral oil", "did the clutch fluid with mineral oil"],
  ["hydraulic brake fluid", "did the clutch fluid with DOT 5.1"],
  ["hydraulic mineral oil", "changed the brake fluid and the clutch fluid with DOT 4, mineral oil"],
  ["cable", "/work did:brake fluid with:DOT 4, silicone grease"],
  ["cable", "/work did:brake fluid with:DOT 4, not DOT 5"],
  ["cable", "topped up the rear brake"],
  ["cable", "topped up the front brake fluid with DOT 4"],
] as const)("clutch %s: “%s” is recorded and stops nothing", async (clutch, said) => {
  const { t, send } = await bike(clutch);
  expect((await send(said)).data).toMatchObject({ is: "logged", work: [{}], fluids: [], defects: [] });
  await t.close();
});

test("fluid for a clutch that the bike has not is not taken for the brakes'", async () => {
  const { t, send } = await bike("cable");
  expect((await send("topped up the clutch with DOT 4")).data).not.toMatchObject({ is: "logged" });
  await t.close();
});

test("a mix stands until it is flushed with what belongs there, whatever is poured over it", async () => {
  const { t, send } = await bike("hydraulic mineral oil");
  await send("topped up the brake fluid with DOT 5");
  for (const wrong of ["did the brake fluid with mineral oil", "changed brake fluid with silicone fluid", "/work did:brake fluid with:DOT 5 silicone fluid"])
    expect((await send(wrong)).data).toMatchObject({ closed: [], mayClose: [], fluids: [{ worth: null }] });
  expect((await send("changed the brake fluid with DOT 4")).data.closed).toMatchObject([{ kind: "mixed brake fluid" }]);
  await send("did the clutch fluid with DOT 4");
  expect((await send("did the clutch fluid with DOT 4")).data).toMatchObject({ closed: [], mayClose: [] });
  // New fluid leaves the seals in that the wrong one has reached: whether they were renewed is asked.
  expect((await send("did the clutch fluid with mineral oil")).data).toMatchObject({ closed: [], mayClose: [{ defect: { kind: "attacked clutch seals" } }] });
  await t.close();
});

test.each([
  ["DOT 5 silicone", ["DOT 5", "DOT 5"]],
  ["dot5.1 and DOT-4", ["DOT 5.1", "DOT 4"]],
  ["silicone grease, mineral oil", ["mineral oil"]],
  ["not DOT 5 but DOT 4", ["DOT 4"]],
  ["mit Mineralöl statt DOT 4", ["mineral oil"]],
  ["1 l of DOT 3", ["DOT 3"]],
  ["DOT 55, dotty", []],
] as const)("“%s” names %j", (text, names) => {
  expect(fluidsNamed(text, [ENGLISH_DETAIL_WORDS, GERMAN_DETAIL_WORDS]).map(({ name }) => name)).toEqual(names);
});

test("a note that names the wrong class mends no mix by itself: it is asked; one that names the right one does", async () => {
  const t = await talk();
  const run = async (line: string) => t.one({ as: "Ines", in: "dm", run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/bike fitted part:brake fluid choice:DOT 5");
  await t.one({ as: "Ines", in: "dm", say: "topped up the brake fluid with DOT 4" });
  const asked = await run("/work did:brake fluid note:DOT 4");
  expect(asked.text).toContain("Does this close: “DOT 4 with DOT 5”?");
  expect((await run("/due")).text).toContain("Do not ride: “DOT 4 with DOT 5”");
  expect((await run("/work did:brake fluid note:flushed, DOT 5 in")).text).toContain("“DOT 4 with DOT 5” is closed by that work.");
  await t.close();
});
