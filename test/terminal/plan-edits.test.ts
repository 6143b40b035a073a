// A plan made one's own: items added and dropped with their why, the record of it, another plan taken by a press, a plan as a file.

import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
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
const names = async (as = "Ines") => (await run("/plan list", as)).data.lines.map(({ name }: { name: string }) => name);

test("an item added falls due like any other; one dropped no more, and stays visible; both can be taken back", async () => {
  const added = await run("/plan add called:heated grip wiring every:12 months why:it chafed once");
  expect(await names()).toContain("heated grip wiring");
  expect((await run("/due")).text).toContain("heated grip wiring");
  const dropped = await run("/plan drop item:suspension linkage why:twin shocks");
  expect(await names()).not.toContain("Suspension linkage");
  expect((await run("/plan list")).text).toContain("Dropped: suspension linkage.");
  expect((await press(added, "Undo")).data.refused).toEqual({ why: "changed meanwhile" });
  expect((await press(dropped, "Undo", "Odo")).data.refused).toEqual({ why: "not yours" });
  await press(dropped, "Undo");
  expect(await names()).toContain("Suspension linkage");
  await run("/plan drop item:suspension linkage");
  await run("/plan drop item:suspension linkage back:yes");
  expect(await names()).toContain("Suspension linkage");
  const history = await run("/plan history");
  expect(history.data.edits.map(({ change }: { change: string }) => change)).toEqual(["restore", "drop", "restore", "drop", "add"]);
  expect(history.text).toContain("- 26 November, you: heated grip wiring added, every 12 months. Why: it chafed once");
});

test("what can end a ride is not dropped without a word", async () => {
  expect((await run("/plan drop item:front brake pads")).text).toContain("What is not in the plan is not watched");
});

test.each([
  ["/plan add called:engine oil and filter every:12 months", "already so"],
  ["/plan add called:grips every:often", "not an interval"],
  ["/plan drop item:banana", "no such item"],
  ["/plan drop item:fasteners back:yes", "no such item"],
  ["/plan compare with:group plan", "no group plan"],
])("%s is refused with a way on", async (line, why) => {
  expect((await run(line)).data.refused).toMatchObject({ why });
});

describe("the group's plan for a model", () => {
  beforeEach(async () => {
    await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 mi model:ostler tarn-650", "Odo");
    await press(await run("/plan change item:valve clearance every:12,000 mi"), "Save");
    await run("/plan share manual:workshop manual, 2019 edition");
  });
  test("is seen beside one's own with who shared it and from what, taken in one press, and taken back", async () => {
    const beside = await run("/plan compare with:group plan", "Odo");
    expect(beside.text).toContain("Wren's plan beside “Ostler Tarn 650”, shared by Ines. Source: workshop manual, 2019 edition.");
    expect(beside.data.changed.map(({ name }: { name: string }) => name)).toEqual(["Valve clearance"]);
    expect((await press(beside, "Take", "Ines")).data.refused).toEqual({ why: "not yours" });
    const taken = await press(beside, "Take", "Odo");
    expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 12,000 mi");
    await press(taken, "Undo", "Odo");
    expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 8,000 mi");
    expect((await press(beside, "Take", "Odo")).data.refused).toEqual({ why: "changed meanwhile" });
  });
  test("leaves one's own changes standing, and says where both changed the same", async () => {
    await press(await run("/plan change item:valve clearance every:6,000 mi", "Odo"), "Save", "Odo");
    const beside = await run("/plan compare with:group plan", "Odo");
    expect(beside.data).toMatchObject({ changed: [], conflicts: ["Valve clearance"] });
    await press(beside, "Take", "Odo");
    expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 6,000 mi");
  });
  test("is replaced only by a press, beside whose it is and what would differ, and brought back", async () => {
    const asked = await run("/plan share manual:A", "Odo");
    expect(asked.text).toContain(
      "For ostler tarn-650 this group has Ines's plan, from: workshop manual, 2019 edition. Wren's plan, from: A, would replace it. What would differ:\n\nValve clearance\n  the group's every 12,000 mi; first at 600 mi\n  yours every 8,000 mi; first at 600 mi",
    );
    expect(asked.text).toContain("Nothing is shared yet.");
    const source = async () => (await run("/plan compare with:group plan", "Odo")).data.source;
    expect(await source()).toBe("workshop manual, 2019 edition");
    expect((await press(asked, "Share mine instead", "Ines")).data.refused).toEqual({ why: "not yours" });
    const shared = await press(asked, "Share mine instead", "Odo");
    expect(shared.text).toContain("It replaces Ines's, from: workshop manual, 2019 edition.");
    expect(await source()).toBe("A");
    expect((await press(shared, "Undo", "Ines")).data.refused).toEqual({ why: "not yours" });
    expect((await press(shared, "Undo", "Odo")).text).toContain("For ostler tarn-650 this group has Ines's plan again, from: workshop manual, 2019 edition.");
    expect(await source()).toBe("workshop manual, 2019 edition");
    // One's own is asked about as well, and what was shown must still stand.
    const again = await run("/plan share manual:workshop manual, 2021 edition");
    expect(again.text).toContain("this group has your plan, from: workshop manual, 2019 edition");
    expect(again.text).toContain("Nothing falls due otherwise");
    await press(await run("/plan share manual:B", "Odo"), "Share mine instead", "Odo");
    expect((await press(again, "Share mine instead")).data.refused).toEqual({ why: "changed meanwhile" });
    expect(await source()).toBe("B");
  });
  test("shows beside it what the owner changed, added and dropped, as beside the starter plan", async () => {
    await press(await run("/plan change item:valve clearance every:16,000 mi", "Odo"), "Save", "Odo");
    await run("/plan add called:heated grip wiring every:12 months", "Odo");
    await run("/plan drop item:suspension linkage", "Odo");
    const beside = await run("/plan compare with:group plan", "Odo");
    expect(beside.text).not.toContain("Nothing differs");
    expect(beside.data.kept.map(({ name }: { name: string }) => name)).toEqual(["Valve clearance", "Suspension linkage", "heated grip wiring"]);
    expect(beside.text).toContain("Valve clearance, changed by you\n  now every 16,000 mi; first at 600 mi\n  there every 12,000 mi; first at 600 mi");
    expect(beside.text).toContain("Suspension linkage: dropped by you; there every");
    expect(beside.text).toContain("heated grip wiring: added by you, every 12 months");
    // It is so beside a plan that has them all as they were given, too.
    await press(await run("/plan change item:valve clearance every:8,000 mi"), "Save");
    await press(await run("/plan share manual:as given"), "Share mine instead");
    const given = await run("/plan compare with:group plan", "Odo");
    expect(given.text).toContain("Only your own changes differ");
    expect(given.data.kept).toHaveLength(3);
    expect(given.actions).toEqual([]);
  });
  test("is no other group's", async () => {
    await run("/bike add name:Merle kind:chain-drive twin odometer:9,000 mi model:Ostler Tarn 650", "Pia", "g2");
    expect((await run("/plan compare with:group plan", "Pia", "g2")).data.refused).toMatchObject({ why: "no group plan" });
  });
});

test("beside the starter plan what the owner changed is what differs, and there is nothing to take", async () => {
  await press(await run("/plan change item:valve clearance every:12,000 mi"), "Save");
  const beside = await run("/plan compare with:starter plan");
  expect(beside.data).toMatchObject({ same: true, changed: [{ name: "Valve clearance" }] });
  expect(beside.actions).toEqual([]);
});

test("a plan goes out as a file and comes in again by a form: shown first, then taken; a bad file is refused by its line", async () => {
  await press(await run("/plan change item:valve clearance every:12,000 mi"), "Save");
  const out = await run("/plan export");
  expect(out.files.map(({ name, type }) => [name.endsWith(".json"), type])).toEqual([[true, "application/json"]]);
  await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 mi", "Odo");
  const form = button(await run("/plan import", "Odo"), "Paste");
  const bad = await t.one({ as: "Odo", fill: form, fields: { text: out.data.text.replace('"version": 1', '"version": 7') } });
  expect(bad.text).toContain("That plan cannot be read. Line 3: version has to be 1. Nothing was changed.");
  expect(button(bad, "Paste it again")).toBe(form);
  const shown = await t.one({ as: "Odo", fill: form, fields: { text: out.data.text } });
  expect(shown.data.changed.map(({ name }: { name: string }) => name)).toEqual(["Valve clearance"]);
  expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 8,000 mi");
  await press(shown, "Take", "Odo");
  expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 12,000 mi");
});

test("two units of one distance that are no one distance are refused with both figures, typed or in a file", async () => {
  for (const change of [
    "/plan change item:valve clearance every:26,600 mi or 500 km",
    "/plan change item:valve clearance every:first 600 mi / 5,000 km, then every 8,000 mi",
    "/plan change item:valve clearance marks:600 mi / 1,000 km, 4,000 mi / 60,000 km",
    "/plan change item:air filter when:dust every:4,000 mi / 600 km",
    "/plan add called:rack every:4,000 mi or 600 km",
  ])
    expect((await run(change)).data.refused, change).toMatchObject({ why: "two distances" });
  expect((await run("/plan change item:valve clearance every:26,600 mi or 500 km")).text).toContain(
    "26,600 mi is about 42,800 km, and 500 km stands beside it: these are two distances, not one in two units.",
  );
  for (const change of ["every:4,000 mi / 6,000 km", "every:16,000 mi / 24,000 km", "marks:600 mi / 1,000 km, 4,000 mi / 6,000 km"])
    expect((await run(`/plan change item:valve clearance ${change}`)).data.refused, change).toBeUndefined();
  const file = (every: object) =>
    JSON.stringify({
      format: "tappet-plan",
      version: 1,
      name: "A",
      source: "a note",
      items: [{ item: "valve-clearance.adjust", repeat: { by: "interval", every } }],
    });
  const form = button(await run("/plan import"), "Paste");
  const bad = await t.one({ as: "Ines", fill: form, fields: { text: file({ miles: 16000, km: 100, months: null, hours: null }) } });
  expect(bad.text).toContain("16,000 mi is about 25,700 km, and 100 km stands beside it");
  expect(
    (await t.one({ as: "Ines", fill: form, fields: { text: file({ miles: 16000, km: 24000, months: null, hours: null }) } })).data.refused,
  ).toBeUndefined();
});

test("a file named by its path is read, and what is the matter with one that cannot be is said", async () => {
  await press(await run("/plan change item:valve clearance every:12,000 mi"), "Save");
  const out = await run("/plan export");
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const at = async (name: string, bytes: string | Uint8Array): Promise<string> => {
    await writeFile(path.join(folder, name), bytes);
    return path.join(folder, name);
  };
  try {
    await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 mi", "Odo");
    const shown = await run(`/plan import file:${await at("heron.json", out.data.text)}`, "Odo");
    expect(shown.data.changed.map(({ name }: { name: string }) => name)).toEqual(["Valve clearance"]);
    await press(shown, "Take", "Odo");
    expect((await run("/plan list", "Odo")).text).toContain("Valve clearance: every 12,000 mi");
    // A spreadsheet's text, in UTF-16 with its mark.
    const chart = await run(`/plan read-chart file:${await at("chart.csv", Buffer.from("\ufeffitem;4000 mi;8000\r\nAir filter;;R\r\n", "utf16le"))}`, "Odo");
    expect(chart.data).toMatchObject({ is: "chart", rows: 1, unread: [] });
    const why = async (command: string): Promise<string> => (await run(command, "Odo")).data.refused.problem;
    expect(await why(`/plan import file:${path.join(folder, "none.json")}`)).toBe("file not there");
    expect(await why(`/plan import file:${folder}`)).toBe("file not there");
    expect(await why(`/plan import file:${await at("picture.png", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe]))}`)).toBe("file not text");
    expect(await why(`/plan read-chart file:${await at("long.csv", "x".repeat(200_001))}`)).toBe("file too large");
    expect((await run(`/plan read-chart file:${await at("longish.csv", "x".repeat(20_001))}`, "Odo")).data.refused).toMatchObject({ why: "too long" });
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("a plan that would leave items out says so first: how many, and those that can hurt by name; one's own plan back is no change", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const at = async (name: string, text: string): Promise<string> => {
    await writeFile(path.join(folder, name), text);
    return path.join(folder, name);
  };
  try {
    const whole = (await run("/plan list")).data.lines.length;
    const small = { format: "tappet-plan", version: 1, name: "Oil alone", source: "a note", items: [{ item: "engine-oil.replace" }] };
    const shown = await run(`/plan import file:${await at("small.json", JSON.stringify(small))}`);
    expect(shown.text).toContain(`Taking it leaves out ${whole - 1} of the ${whole} items in this plan. What is not in the plan is not watched`);
    for (const name of ["front brake pads", "brake fluid", "front tyre age", "steering head bearings", "side stand and its switch"])
      expect(shown.text?.split("\n")[2]).toContain(name);
    expect((await run("/plan list")).data.lines).toHaveLength(whole);
    // Changed, dropped and added by the owner, it comes back as what it is.
    await press(await run("/plan change item:valve clearance every:12,000 mi"), "Save");
    await run("/plan drop item:fasteners");
    await run("/plan add called:Rack bolts every:6 months system:frame and stands");
    const own = await run(`/plan import file:${await at("own.json", (await run("/plan export")).data.text)}`);
    expect(own.text).toContain("Nothing differs: all falls due as there.");
    expect(own.text).not.toContain("You changed");
    expect(own.text).not.toContain("Nothing is changed yet");
    expect(own.actions).toEqual([]);
  } finally {
    await rm(folder, { recursive: true });
  }
});

test("a plan with changes of every kind goes out as the published schema allows, is named as changed, and comes in on another bike the same", async () => {
  for (const change of [
    "item:oil and filter every:3,000 mi or 12 months",
    "item:valve clearance marks:600, 8,000, 16,000 mi",
    "item:air filter when:dust every:4,000 mi",
  ])
    await press(await run(`/plan change ${change}`), "Save");
  await run("/plan add called:heated grip wiring every:12 months action:inspect");
  await run("/plan drop item:suspension linkage why:it has none");
  const { text } = (await run("/plan export")).data;
  const schema = JSON.parse(await readFile(new URL("../../src/usecases/plan-file.schema.json", import.meta.url), "utf8"));
  const valid = new Ajv2020({ strict: false }).compile(schema);
  expect(valid(JSON.parse(text)), JSON.stringify(valid.errors)).toBe(true);
  expect(JSON.parse(text).name).toBe("Chain-drive twin, common practice (Heron)");
  await run("/bike add name:Wren kind:chain-drive twin odometer:14,210 mi", "Odo");
  await press(await t.one({ as: "Odo", fill: button(await run("/plan import", "Odo"), "Paste"), fields: { text } }), "Take", "Odo");
  const lines = async (as: string) => (await run("/plan list", as)).data.lines.map(({ before: _before, ...line }: { before: unknown }) => line);
  expect(await lines("Odo")).toEqual(await lines("Ines"));
});
