// Fluid of the clutch in messages: what was put in or bled is of the clutch, whatever the fluid is called; where a cable works it, that is said.
// Which families never mix: 49 CFR 571.116 S5 names silicone base as DOT 5 (SBBF) apart from the others; mineral oil: common practice of the trade.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

async function withClutch(choice: string) {
  const t = await talk();
  await t.one({ ...DM, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...DM, run: `/bike fitted part:clutch choice:${choice}` });
  return t;
}

const SAYS_BRAKE_FLUID = [
  "put brake fluid in the clutch",
  "topped the clutch up with brake fluid",
  "added a bit of brake fluid to the clutch",
  "poured DOT 4 in the clutch",
  "used DOT 4 in the clutch",
  "the clutch got DOT 4",
  "DOT 4 into the clutch reservoir",
  "clutch bled with DOT 4",
  "flushed the clutch with DOT 4",
  "bled the brakes and the clutch with DOT 4",
  "DOT 4 in die Kupplung gekippt",
  "Kupplung entlüftet, DOT 4",
];

test.each(SAYS_BRAKE_FLUID)("brake fluid in a clutch that runs on mineral oil: %s", async (say) => {
  const t = await withClutch("hydraulic mineral oil");
  const wrong = await t.one({ ...DM, say });
  expect(wrong.data.work[0].items).toMatchObject(say.includes("brakes") ? [{}, {}] : [{ item: "clutch-fluid.replace" }]);
  expect(wrong.data.fluids).toMatchObject([{ of: "clutch", inside: "mineral oil", worth: null }]);
  expect(wrong.data.defects).toMatchObject([{ kind: "attacked clutch seals", grade: "do not ride" }]);
  expect(wrong.text).toContain("never mix: seals swell and the clutch can go");
  await t.close();
});

test("the same words are right where brake fluid works the clutch, and a cable has none to bleed", async () => {
  const t = await withClutch("hydraulic brake fluid");
  for (const say of SAYS_BRAKE_FLUID) {
    const right = await t.one({ ...DM, say });
    expect([say, right.data.is, right.data.fluids, right.data.defects]).toEqual([say, "logged", [], []]);
  }
  await t.one({ ...DM, run: "/bike fitted part:clutch choice:cable" });
  for (const say of ["bled the clutch", "put brake fluid in the clutch", "clutch hydraulics bled"]) {
    const none = await t.one({ ...DM, say });
    expect([say, none.text]).toEqual([say, expect.stringContaining("Clutch fluid: by my record Heron has none of that (clutch: cable), so nothing is saved.")]);
  }
  // The oil is not recorded past what was not understood.
  const both = await t.one({ ...DM, say: "oil changed and clutch bled" });
  expect(both.data.is).toBe("asked");
  await t.close();
});

test("a top-up closes no mix and asks for no closing; a flush is asked whether the seals were renewed too", async () => {
  const t = await withClutch("hydraulic brake fluid");
  await t.one({ ...DM, say: "bled the clutch with mineral oil" });
  const topped = await t.one({ ...DM, say: "topped up the clutch with DOT 4" });
  expect(topped.data).toMatchObject({ closed: [], mayClose: [] });
  expect(topped.text).toContain("A clutch's fluid rises as the plates wear: if it has sunk, look for a leak");
  const flushed = await t.one({ ...DM, say: "flushed the clutch with DOT 4" });
  expect(flushed.data).toMatchObject({ closed: [], mayClose: [{ defect: { kind: "attacked clutch seals" } }] });
  expect(flushed.text).toContain("Only if the seals were renewed too");
  await t.close();
});

test.each([
  "never put brake fluid in the clutch",
  "can I put DOT 5.1 in the clutch?",
  "DOT 4 goes in the clutch",
  "need to bleed the clutch",
  "should I bleed the clutch",
])("what is no work is none: %s", async (say) => {
  const t = await withClutch("hydraulic mineral oil");
  const said = await t.one({ ...DM, say });
  expect(said.data?.is).not.toBe("logged");
  await t.close();
});
