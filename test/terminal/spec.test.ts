// Specs at the bike: looked up by the words people have, entered with their source, shared by model in a group, and never settled by anything but a page where it can hurt.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi model:Ostler Tarn 650");
});
afterEach(() => t.close());
const run = (line: string, as = "Ines", where = "g1") => t.one({ as, run: line, in: where });
const press = (shown: Shown, label: string, as = "Ines") => t.one({ as, press: button(shown, label) });
const AXLE = "/spec what:rear axle value:98 Nm source:workshop manual, 2019 edition, p. 142";

test("a torque is entered in one go and answered in one line, with what follows, its source and who entered it", async () => {
  await run(AXLE);
  const shown = await run("/spec what:rear axel");
  expect(shown.text?.split("\n")[0]).toBe(
    "Rear axle: 98 N·m. Chain slack checked again after tightening. Workshop manual, 2019 edition, p. 142, entered by you 26 November.",
  );
  expect(shown.visibility).toBe("private");
  expect((await run("/spec what:rear axle share:yes")).visibility).toBe("shared");
});

test("oil has its fills and its grade; a value that could be several lands in none", async () => {
  expect((await run("/spec what:oil value:3.2 L")).data.refused).toMatchObject({ why: "which spec" });
  await run("/spec what:oil with filter value:3.2 L source:owner's manual p. 88");
  await run("/spec what:oil grade value:10W-40");
  const { text } = await run("/spec what:oil");
  expect(text).toContain("Engine oil with filter: 3.2 L. Owner's manual, p. 88");
  expect(text).toContain("Engine oil grade: 10W-40. No source named");
  expect(text).toContain("Nothing entered: engine oil without filter and engine oil, dry engine.");
});

test("a fill and its grade typed in one are two specs, in either order; each is taken back by itself", async () => {
  const saved = await run("/spec what:oil with filter value:3.9 L 10W-40 source:owner's manual p. 88");
  expect(saved.text).toContain("Engine oil with filter: 3.9 L. Owner's manual, p. 88");
  expect(saved.text).toContain("Engine oil grade: 10W-40. Owner's manual, p. 88");
  await press(saved, "Undo: Engine oil grade");
  expect((await run("/spec what:oil")).text).toContain("Nothing entered: engine oil without filter, engine oil, dry engine and engine oil grade.");
  expect((await run("/spec what:oil without filter value:10W-40, 3.6 L")).text).toContain("Engine oil without filter: 3.6 L.");
  expect((await run("/spec what:oil grade")).text).toContain("Engine oil grade: 10W-40.");
});

test.each(["oil", "oil grade"])("which fill it is, is asked, and nothing of “3.9 L 10W-40” lands as the grade: what:%s", async (what) => {
  const asked = await run(`/spec what:${what} value:3.9 L 10W-40`);
  expect(asked.data.refused).toMatchObject({ why: "which spec", keys: ["engine oil with filter", "engine oil without filter", "engine oil dry"] });
  expect(asked.text).toContain("/spec what:engine oil with filter value:3.9 L 10W-40");
  expect((await run("/spec what:oil")).text).not.toContain("10W-40");
});

test.each([
  ["rear tyre pressure", "360 psi", ["36 psi", "360 kPa"]],
  ["front tyre", "360 psi", ["36 psi"]],
  ["rear tyre pressure", "34 bar", ["34 psi", "3.4 bar"]],
  ["oil with filter", "39 L", ["3.9 L"]],
  ["oil", "39 L", ["3.9 L"]],
  ["intake valves", "15 mm", []],
  ["rear axle", "980 Nm", ["98 N·m", "980 in-lb"]],
])("a %s of %s is asked about and not saved", async (what, value, meant) => {
  const asked = await run(`/spec what:${what} value:${value}`);
  expect(asked.data.refused).toMatchObject({ why: "spec out of range", typed: value });
  for (const each of meant) expect(asked.text).toContain(each);
  expect((await run("/spec")).text).toContain("Nothing is entered for Heron yet.");
});

test("what is missing is asked for, with the typical range as typical, and entered by a form", async () => {
  const asked = await run("/spec what:chain slack");
  expect(asked.text).toContain("Chain slack: nothing is entered for Heron. What does your manual say?");
  expect(asked.text).toContain("Typical is 25 to 40 mm (common practice, road bikes): typical, not yours.");
  const saved = await t.one({ as: "Ines", fill: button(asked, "Enter it"), fields: { value: "20-30 mm", manual: "Owner's manual", edition: "", page: "61" } });
  expect(saved.text).toContain("Chain slack: 20 to 30 mm. Owner's manual, p. 61, entered by you 26 November.");
  expect((await t.one({ as: "Odo", fill: button(asked, "Enter it"), fields: { value: "5 mm" } })).data.refused).toMatchObject({ why: expect.any(String) });
});

test("a pressure for two is never answered by the one for riding solo; it is shown in the member's unit, as printed behind it", async () => {
  await run("/spec what:front tyre pressure solo value:33 psi source:plate, p. 1");
  const asked = await run("/spec what:front tyre pressure two-up");
  expect(asked.text).toContain("Front tyre pressure two-up: nothing is entered");
  expect(asked.text).toContain("Riding solo it is 33 psi; that is not taken for another load.");
  expect(asked.text).toContain("To enter it: /spec what:front tyre pressure two-up value:");
  await run("/spec what:rear tyre pressure value:36 psi");
  expect((await run("/spec what:rear tyre pressure two-up")).text).toContain("With no load named it is 36 psi; that is not taken for another load.");
  expect((await run("/spec what:rear tyre pressure solo")).text).toContain("Rear tyre pressure: 36 psi.");
  const entered = await t.one({ as: "Ines", fill: button(await run("/spec what:rear tyre pressure two-up"), "Enter it"), fields: { value: "42 psi" } });
  expect(entered.text).toContain("Rear tyre pressure two-up: 42 psi.");
  await run("/spec what:front tyre pressure value:36 psi (2.5 bar) for:two-up source:plate, p. 1");
  await run("/remind pressure:bar");
  expect((await run("/spec what:front tire pressure pillion")).text).toContain("Front tyre pressure two-up: 2.48 bar (36 psi (2.5 bar)).");
});

describe("shared by make and model", () => {
  beforeEach(async () => {
    await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 km model:OSTLER tarn-650", "Odo");
  });
  test("the other owner in the group has it at once; a group apart has not", async () => {
    await run(AXLE);
    expect((await run("/spec what:rear axle", "Odo")).text).toContain("98 N·m");
    await run("/bike add name:Merle kind:chain-drive twin odometer:9,000 km model:Ostler Tarn 650", "Pia", "g2");
    expect((await run("/spec what:rear axle", "Pia", "g2")).text).toContain("nothing is entered for Merle");
    expect((await run("/spec what:rear axle bike:Wren", "Odo", "g2")).text).toContain("nothing is entered for Wren");
  });
  test("members who differ on an axle are both shown until one names the page, admin or not", async () => {
    await run("/spec what:rear axle value:98 Nm source:workshop manual");
    const differ = await t.one({ as: "Odo", admin: true, run: "/spec what:rear axle value:110 Nm" });
    expect(differ.text).toContain("members differ, so I give none of these as the value. Only a named page of the manual settles it.");
    expect(differ.text).toContain("- 98 N·m: Workshop manual, entered by Ines");
    expect(differ.text).toContain("- 110 N·m: No source named, entered by you");
    await run(AXLE);
    const settled = await run("/spec what:rear axle", "Odo");
    expect(settled.text?.split("\n").slice(0, 3)).toEqual([
      expect.stringContaining("Rear axle: 98 N·m."),
      "Otherwise said:",
      expect.stringContaining("- 110 N·m"),
    ]);
  });
});

test("taken back, what stood before stands again; nobody else can", async () => {
  await run(AXLE);
  const second = await run("/spec what:rear axle value:105 Nm source:workshop manual, p. 143");
  expect(second.text).toContain("saved; the value before stays on record");
  expect((await press(second, "Undo", "Odo")).data.refused).toMatchObject({ why: expect.any(String) });
  expect((await press(second, "Undo")).text).toContain("98 N·m");
  expect((await press(second, "Undo")).data.refused).toEqual({ why: "already done" });
});

test.each([
  ["what:rear axle value:98 psi", { why: "not a spec", because: "other dimension" }],
  ["what:front tyre pressure value:36", { why: "not a spec", because: "unit missing" }],
  ["what:front tyre pressure value:36 psi (3.5 bar)", { why: "not a spec", because: "two figures" }],
  ["what:rear axle value:tight", { why: "not a spec", because: "not read" }],
  ["what:belt deflection", { why: "not fitted" }],
  ["what:banana", { why: "no such spec" }],
  ["what:rear axle source:p. 3", { why: "option", option: "value" }],
])("/spec %s is refused with a way on", async (options, why) => {
  expect((await run(`/spec ${options}`)).data.refused).toMatchObject(why);
});
