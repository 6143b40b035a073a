// What a judgement lacks is given by one press: how the reading was taken, or the figure of the manual.

import { expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const labels = (shown: Shown): readonly string[] => shown.actions.map(({ label }) => label);
async function withHeron(): Promise<Talk> {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return t;
}

test("a condition is pressed, holds for all valves of the message, is kept for the bike, and is asked no more", async () => {
  const t = await withHeron();
  await t.one({ ...dm, run: "/spec what:intake valves value:0.10-0.20 mm" });
  const read = await t.one({ ...dm, say: "intake valves 0.14 mm 0.22" });
  expect(read.text).toContain("Intake 1 valve clearance 0.14 mm: cannot tell yet; say “cold” if the engine was.");
  expect(read.text).toContain(
    "How to measure it: Engine stone cold, unless your manual's figure is for a warm one; feeler gauge with a light drag; one figure a valve.",
  );
  expect(labels(read).filter((label) => label === "Engine was cold")).toHaveLength(1);
  const told = await t.one({ ...dm, press: button(read, "Engine was cold") });
  expect(told.text).toContain("Intake 1 valve clearance 0.14 mm: within (0.10 mm to 0.20 mm by your own figure).");
  expect(told.text).toContain("Intake 2 valve clearance 0.22 mm: beyond limit, too wide");
  expect(told.actions).toEqual([]);
  const again = await t.one({ ...dm, say: "intake valves 0.15 mm 0.16" });
  expect(again.text).toContain("Intake 1 valve clearance 0.15 mm: within");
  expect(labels(again)).toEqual(["Undo"]);
  await t.close();
});

test("how the bike stood is one of two, and the later word holds", async () => {
  const t = await withHeron();
  await t.one({ ...dm, run: "/spec what:chain slack value:25-35 mm" });
  const read = await t.one({ ...dm, say: "chain slack 30 mm" });
  await t.one({ ...dm, press: button(read, "Bike stood upright") });
  const told = await t.one({ ...dm, press: button(read, "On the side stand") });
  expect(told.text).toContain("Chain slack 30 mm: within");
  expect((await t.one({ ...dm, run: "/reading" })).text).toContain("Chain slack 30 mm (on the side stand), today");
  await t.close();
});

test("an engine speed and a count of pitches are typed into a small form; what is no figure changes nothing", async () => {
  const t = await withHeron();
  const volts = await t.one({ ...dm, say: "charging 14.2 V" });
  const refused = await t.one({ ...dm, fill: button(volts, "Say the engine speed"), fields: { figure: "fast" } });
  expect(refused.text).toBe("I cannot read “fast” as an engine speed. Type revolutions a minute, such as 5000. The reading stays as it was.");
  expect((await t.one({ ...dm, fill: button(volts, "Say the engine speed"), fields: { figure: "5,000" } })).text).toContain("Charging voltage 14.2 V: within");
  const chain = await t.one({ ...dm, say: "chain length 318 mm" });
  // 20 pitches of 15.875 mm are 317.5 mm (ISO 606); 318 is 0.16 % more.
  expect((await t.one({ ...dm, fill: button(chain, "Say how many pitches"), fields: { figure: "20" } })).text).toContain("0.2 % longer than new: within");
  await t.close();
});

test("the manual's figure is entered where it lacked, for the load the bike is ridden with, and judges what was read", async () => {
  const t = await withHeron();
  const read = await t.one({ ...dm, say: "31 psi front" });
  const saved = await t.one({ ...dm, fill: button(read, "Enter front tyre pressure"), fields: { value: "34 psi", manual: "", edition: "", page: "" } });
  expect(saved.text).toContain("Front tyre pressure: 34 psi.");
  expect(saved.text).toContain("Front cold tyre pressure 31 psi: 3 psi low, add 3 psi where it stands");
  await t.one({ ...dm, run: "/bike change bike:Heron used:two-up" });
  const two = await t.one({ ...dm, say: "35 psi front" });
  expect(two.text).toContain("the figure I know is for less load");
  const entered = await t.one({ ...dm, fill: button(two, "Enter front tyre pressure two-up"), fields: { value: "36 psi" } });
  expect(entered.text).toContain("Front tyre pressure two-up: 36 psi.");
  expect(entered.text).toContain("Front cold tyre pressure 35 psi: good, 36 psi wanted");
  await t.close();
});

test("a limit that shows a part to be beyond it notes what must not be ridden on, once", async () => {
  const t = await withHeron();
  const read = await t.one({ ...dm, say: "front disc 3.9 mm" });
  expect(read.data.defects).toEqual([]);
  const saved = await t.one({
    ...dm,
    fill: button(read, "Enter front disc limit"),
    fields: { value: "4.0 mm", manual: "stamped on the disc", edition: "", page: "" },
  });
  expect(saved.text).toContain("Front disc thickness 3.90 mm: beyond limit (4.00 mm, stamped on the disc).");
  expect(saved.data.defects).toMatchObject([{ kind: "worn disc", grade: "do not ride", from: "verdict", words: "front disc thickness 3.9 mm" }]);
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Do not ride: “front disc thickness 3.9 mm”");
  expect((await t.one({ ...dm, run: "/spec what:front disc limit value:4.2 mm" })).data.defects).toEqual([]);
  await t.close();
});

test("nobody else says it for the rider, and nothing is said of a reading taken back", async () => {
  const t = await withHeron();
  const read = await t.one({ ...dm, say: "oil between the marks" });
  expect((await t.one({ as: "Odo", in: "dm", press: button(read, "Bike stood upright") })).data.refused).toMatchObject({ why: "not yours" });
  await t.one({ ...dm, press: button(read, "Undo") });
  expect((await t.one({ ...dm, press: button(read, "Bike stood upright") })).data.refused).toMatchObject({ why: "gone" });
  await t.close();
});
