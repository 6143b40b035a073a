// The level of a brake reservoir: which end it is of, what a top-up says of it, and what it leaves open.
// Common practice: fluid that sinks slowly follows worn pads, fluid that sinks fast leaks; adding fluid cures neither.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

async function bike() {
  const t = await talk();
  await t.one({ ...DM, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 km" });
  const level = async () => (await t.one({ ...DM, run: "/due" })).data.bikes[0].dues.find((due: { item: string }) => due.item === "brake-fluid.inspect").status;
  return { t, level };
}

test("a top-up at the other end leaves what was found open, and the item due", async () => {
  const { t, level } = await bike();
  const low = await t.one({ ...DM, say: "rear brake fluid below min, upright, bars straight" });
  expect(low.data.defects).toMatchObject([{ kind: "low rear brake fluid", grade: "do not ride" }]);
  const other = await t.one({ ...DM, say: "topped up the front brake fluid" });
  expect(other.data).toMatchObject({ closed: [], mayClose: [], work: [{ detail: { end: "front" } }] });
  expect(await level()).toBe("due");
  await t.close();
});

test("a top-up at the same end asks whether the cause was found, and closes nothing by itself", async () => {
  const { t, level } = await bike();
  await t.one({ ...DM, say: "rear brake fluid below min, upright, bars straight" });
  const same = await t.one({ ...DM, say: "topped up the rear brake fluid" });
  expect(same.data).toMatchObject({ closed: [], mayClose: [{ defect: { kind: "low rear brake fluid" } }] });
  expect(same.text).toContain("Fluid that has sunk is mostly worn pads, else a leak: look at both.");
  expect(await level()).not.toBe("due");
  expect((await t.one({ ...DM, run: "/due" })).text).toContain("Do not ride:");
  // A look that names no end is of both.
  const both = await t.one({ ...DM, say: "changed the brake fluid front and rear" });
  expect(both.data.closed).toMatchObject([{ kind: "low rear brake fluid" }]);
  await t.close();
});

test("each end has a defect of its own", async () => {
  const { t } = await bike();
  await t.one({ ...DM, say: "front brake fluid below min, upright, bars straight" });
  expect((await t.one({ ...DM, say: "rear brake reservoir empty" })).data.defects).toMatchObject([{ kind: "low rear brake fluid" }]);
  await t.close();
});

test("bleeding closes a soft lever, and no leak", async () => {
  const { t } = await bike();
  await t.one({ ...DM, say: "front brake fluid leaking at the caliper" });
  const bled = await t.one({ ...DM, say: "bled the front brake with DOT 4" });
  expect(bled.data.closed ?? []).toEqual([]);
  expect((await t.one({ ...DM, run: "/due" })).text).toContain("Do not ride:");
  await t.close();
});

// 49 CFR 571.116 S5.1.2: DOT 3 boils from 140 °C wet, DOT 4 from 155 °C.
test("a change for a lower class is told, one for a higher is not", async () => {
  const { t } = await bike();
  const lower = await t.one({ ...DM, say: "flushed the brakes with DOT 3" });
  expect(lower.text).toContain("DOT 3 boils sooner than DOT 4, with which Heron is entered: from 140 °C once it has drawn water (49 CFR 571.116).");
  expect(lower.data.defects).toEqual([]);
  expect((await t.one({ ...DM, say: "bled the brakes with DOT 5.1" })).data.fluids).toEqual([]);
  await t.close();
});

test("bleeding mends a soft lever", async () => {
  const { t } = await bike();
  await t.one({ ...DM, say: "front brake feels spongy" });
  const bled = await t.one({ ...DM, say: "bled the front and rear brakes" });
  expect(bled.data.closed).toMatchObject([{ kind: "soft brake" }]);
  await t.close();
});

test("a low level that makes the look at both reservoirs due names its end", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const { text } = await t.one({ as: "Ines", in: "dm", say: "front brake fluid at the low mark, upright, bars straight" });
  expect(text).toContain("Brake fluid level (front), now due.");
  await t.close();
});
