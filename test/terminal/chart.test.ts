// The plan as a service chart, and a manual's chart pasted: letters confirmed, changes seen, saved, taken back.

import { readFile } from "node:fs/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { KINDS } from "../../src/trade/kinds.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
});
afterEach(() => t.close());
const run = (line: string, as = "Ines") => t.one({ as, run: line });
const press = (shown: Shown, label: string, as = "Ines") => t.one({ as, press: button(shown, label) });
const pick = (shown: Shown, label: string, value: string) => t.one({ as: "Ines", pick: button(shown, label), values: [value] });
const paste = async (chart: string) => t.one({ as: "Ines", fill: button(await run("/plan read-chart"), "Paste"), fields: { chart } });
const line = async (name: string) => (await run("/plan list")).text?.split("\n").find((each) => each.startsWith(`- ${name}`));
const CHART =
  "item;600 mi;4,000;8,000;12,000;\nR = replace\nEngine oil and filter;R;R;R;R;12 months\nValve clearance;;;;I;\nFlux hose;;;I;;\nChain;;I;I;I;\nHorn grease;see note;;;;";

describe("/plan chart", () => {
  test("says each service in a line, and what comes at all of them once", async () => {
    const shown = await run("/plan chart");
    expect(shown.text?.split("\n")[0]).toBe("Heron's service chart to 24,000 mi, from the plan “Chain-drive twin, common practice”.");
    expect(shown.text).toContain("At every service: engine oil and filter R, clutch free play A,");
    expect(shown.text).toContain("- 4,000 mi: nothing else\n");
    expect(shown.text).toContain("- 12,000 mi: new air filter R\n");
    expect(shown.text).toContain("- Brake fluid R: every 2 years from the last time");
    // Every 4,000, 8,000 and 12,000: all of it has come round at 24,000.
    expect(shown.data.marks).toEqual([600, 4000, 8000, 12_000, 16_000, 20_000, 24_000]);
  });
  test("brings a drawing wide enough for a phone, and a table", async () => {
    const { files } = await run("/plan chart");
    const [table, drawing] = [files.find((file) => file.type === "text/csv"), files.find((file) => file.type === "image/png")];
    expect((await readFile(table?.path ?? "", "utf8")).split("\r\n").slice(0, 3)).toEqual([
      "service at (mi),600,4000,8000,12000,16000,20000,24000,besides",
      "Engine oil and filter,R,R,R,R,R,R,R,every 12 months",
      "Valve clearance,A,,A,,A,,A,",
    ]);
    expect((await readFile(drawing?.path ?? "")).readUInt32BE(16)).toBeGreaterThanOrEqual(900);
    expect(drawing?.alt).toContain("A table of 22 items against 7 services");
    expect(drawing?.alt).toContain("19 more items and how often they come round");
  });
  test("goes as far as asked, is shared when asked, and counts the bike's use in", async () => {
    expect((await run("/plan chart until:36,000 mi")).data.marks.at(-1)).toBe(36_000);
    expect((await run("/plan chart share:yes")).visibility).toBe("shared");
    await run("/bike change bike:Heron used:dust");
    expect((await run("/plan chart")).text).toContain("Your use is counted in: dust.");
    expect((await run("/plan chart until:soon")).data.refused).toMatchObject({ why: "not a distance" });
  });
  test("its own table, pasted, changes nothing", async () => {
    const table = (await run("/plan chart")).files.find((file) => file.type === "text/csv");
    const letters = await paste(await readFile(table?.path ?? "", "utf8"));
    expect(letters.data.letters.every(({ from }: { from: string }) => from === "the chart")).toBe(true);
    const preview = await press(letters, "The letters are right");
    expect(preview.data.lines.map(({ is }: { is: string }) => is)).toEqual(Array.from({ length: 41 }, () => "same"));
    expect(preview.actions.map(({ label }) => label)).not.toContain("Save");
  });
});

test.each(Object.keys(KINDS))("the chart of a %s, pasted back, is read whole and changes nothing", async (kind) => {
  await run(`/bike add name:Otter kind:${kind} odometer:9,000 mi`);
  const table = (await run("/plan chart bike:Otter")).files.find((file) => file.type === "text/csv");
  const form = button(await run("/plan read-chart bike:Otter"), "Paste");
  const letters = await t.one({ as: "Ines", fill: form, fields: { chart: await readFile(table?.path ?? "", "utf8") } });
  expect(letters.data.unread).toEqual([]);
  const preview = await press(letters, "The letters are right");
  expect(preview.data.lines.filter(({ is }: { is: string }) => is !== "same")).toEqual([]);
  expect(preview.data.untouched).toBe(0);
});

// Service charts print so. Common practice.
describe("a manual's chart as it is printed", () => {
  const PRINTED =
    "Service 600 mi 4000 8000 12000 16000\nI = inspect\nR = replace\nBrake fluid * I I I I I\nOil level I I I I I\nDrive chain L L L L L\nEngine oil R R R R R\nOil filter R - R - R\nAir filter* - - I - I\n";
  test("a level that is a habit stays one, though the chart has no place for its month", async () => {
    const preview = await press(await paste(PRINTED), "The letters are right");
    const habits = preview.data.lines.filter(({ is }: { is: string }) => is === "habit").map(({ name }: { name: string }) => name);
    expect(habits).toEqual(["Brake fluid level", "Engine oil level", "Chain lubrication"]);
  });
  test("a footnote is read for each line that bears its mark, and named where it is not plain", async () => {
    const read = await paste(`${PRINTED}* replace every 3 years`);
    expect(read.data.unread).toEqual([]);
    const preview = await press(read, "The letters are right");
    expect(preview.text).toContain("Brake fluid\n- Now: every 2 years; from the last time.\n- Then: every 3 years");
    // The footnote is no column for time: what the plan has in months stays.
    expect(preview.data.keepsMonths).toBe(true);
    for (const vague of ["* replace if dirty", "* inspect and replace every 2 years", "** replace every 2 years"]) {
      const other = await paste(`${PRINTED}${vague}`);
      expect(other.data.unread.map(({ text }: { text: string }) => text)).toEqual([vague]);
      expect((await press(other, "The letters are right")).text).not.toContain("Brake fluid\n");
    }
  });
  test("two lines for one item: which of them counts is chosen, and the other is left out", async () => {
    const preview = await press(await paste(PRINTED), "The letters are right");
    expect(preview.text).toContain("Line 8, “Oil filter” (replace) is engine oil and filter in your plan");
    const offered = preview.actions.find(({ label }) => label === "Engine oil and filter goes by");
    const filter = offered?.options?.find(({ label }) => label.includes("Oil filter"));
    expect(offered?.options?.map(({ label }) => label)).toEqual([
      "Line 7, “Engine oil” (replace), every 4,000 mi or 12 months",
      "Line 8, “Oil filter” (replace), every 8,000 mi or 12 months",
    ]);
    const settled = await pick(preview, "Engine oil and filter goes by", filter?.value ?? "");
    expect(settled.text).toContain("Line 7, “Engine oil” (replace) is left out.");
    expect(settled.data.lines.find(({ called }: { called: string }) => called === "Oil filter").is).toBe("change");
    const saved = await press(settled, "Save");
    // What was not chosen is said once more, as it was pasted.
    expect(saved.text).toContain(`- Line 7: “${PRINTED.split("\n")[6]?.trim()}”`);
    expect(saved.text).not.toContain("Line 8");
    expect(await line("Engine oil and filter")).toContain("every 8,000 mi or 12 months");
  });
});

describe("/plan read-chart", () => {
  test("prints the letters back, names what it cannot read, and saves nothing by it", async () => {
    const shown = await paste(CHART);
    expect(shown.text).toContain("- R = replace, as the chart says\n- I = inspect; some manuals mean adjust or clean by it");
    expect(shown.text).toContain("Line 7 is not read: “Horn grease;see note;;;;”");
    expect(shown.actions.map(({ label }) => label)).toEqual(["The letters are right", "Paste it again", "Leave it", "I stands for", "Change another letter"]);
    expect(await line("Valve clearance")).toBe("- Valve clearance: every 8,000 mi; first at 600 mi.");
  });
  test("a list after which nothing comes is not said to go on", async () => {
    const preview = await press(await paste("km;1000;6000;12,000\nValve clearance;A;;"), "The letters are right");
    expect(preview.text).toContain("- Then: at 1,000 km, then no more.");
    expect(preview.text).not.toContain("no more, at");
  });
  test("a letter nobody knows must be said before it goes on", async () => {
    const shown = await paste("mi;4000;8000\nEngine oil and filter;Q;Q");
    expect(shown.actions.map(({ label }) => label)).not.toContain("The letters are right");
    const said = await pick(shown, "Q stands for", "replace");
    expect(said.text).toContain("- Q = replace, as you say");
    expect((await press(said, "The letters are right")).data.confirmed).toBe(true);
  });
  test("a letter that seemed clear can be changed, and means the new thing", async () => {
    const asked = await pick(await paste("mi;4000;8000\nChain;A;A"), "Change another letter", "0");
    const said = await pick(asked, "A stands for", "measure");
    const preview = await press(said, "The letters are right");
    expect(preview.data.lines).toMatchObject([{ is: "same", name: "Chain and sprocket wear" }]);
  });
  test("shows each interval beside the new one, saves all at once, and takes all back at once", async () => {
    const preview = await press(await paste(CHART), "The letters are right");
    expect(preview.text).toContain("Heron: 1 item would change, 1 is as your plan has it");
    expect(preview.text).toContain("- Now: every 8,000 mi, at 8,000 mi, 16,000 mi, 24,000 mi, 32,000 mi, 40,000 mi and so on; first at 600 mi.");
    expect(preview.text).toContain("- Then: every 12,000 mi, at 12,000 mi, 24,000 mi, 36,000 mi, 48,000 mi, 60,000 mi and so on.");
    expect(preview.text).toContain("- Line 5, “Flux hose” (inspect) is not in your plan and is left out.");
    const own = await pick(preview, "Make an item of my own", String(preview.data.lines.find(({ is }: { is: string }) => is === "unknown").n));
    const chosen = await pick(own, "Line 6, “Chain”", "chain.measure");
    const saved = await press(chosen, "Save");
    expect(saved.data).toMatchObject({ changed: ["Valve clearance"], added: ["Flux hose"], edits: 2 });
    expect(await line("Valve clearance")).toBe("- Valve clearance: every 12,000 mi; the plan it came with says every 8,000 mi.");
    expect(await line("Flux hose")).toContain("every 8,000 mi");
    expect((await press(chosen, "Save")).data.refused).toEqual({ why: "already done" });
    expect((await press(saved, "Undo", "Odo")).data.refused).toEqual({ why: "not yours" });
    await press(saved, "Undo");
    expect(await line("Valve clearance")).toBe("- Valve clearance: every 8,000 mi; first at 600 mi.");
    expect(await line("Flux hose")).toBeUndefined();
    expect((await press(saved, "Undo")).data.refused).toEqual({ why: "changed meanwhile" });
  });
  test("a line that names no item of the plan is given to one that there is", async () => {
    const preview = await press(await paste("item;4,000;8,000;12,000\nValves cold;;;I\nFlux hose;I;I;I"), "The letters are right");
    const unknown = preview.data.lines.filter(({ is }: { is: string }) => is === "unknown");
    expect(unknown.map(({ called }: { called: string }) => called)).toEqual(["Valves cold", "Flux hose"]);
    // Those that share a word with it come first.
    expect(unknown[0].nearest[0]).toEqual({ item: "valve-clearance.adjust", name: "Valve clearance" });
    expect(unknown[0].nearest).toHaveLength(24);
    const given = await t.one({ as: "Ines", pick: button(preview, "Line 2, “Valves cold”"), values: ["valve-clearance.adjust"] });
    expect(given.text).toContain("Valve clearance");
    const left = await t.one({ as: "Ines", pick: button(given, "Line 3, “Flux hose”"), values: ["leave"] });
    await press(left, "Save");
    expect(await line("Valve clearance")).toContain("every 12,000 mi");
    expect((await run("/plan list")).text).not.toContain("Flux hose");
  });
  test("a habit stays one, though the table has it at each service too", async () => {
    const preview = await press(await paste("mi;4000;8000\nChain lubrication;L;L"), "The letters are right");
    expect(preview.text).toContain("- Chain lubrication: stays the habit it is, which comes round sooner.");
  });
  test("two lines that disagree on an item change nothing", async () => {
    const preview = await press(await paste("mi;4000;8000\nEngine oil;R;R\nOil filter;;R"), "The letters are right");
    expect(preview.data.lines.map(({ is }: { is: string }) => is)).toEqual(["twice", "twice"]);
  });
  test("what was pasted is kept: gone on with later, pasted again as it was, or left", async () => {
    await paste(CHART);
    const asked = await run("/plan read-chart");
    expect(asked.text).toContain("A chart that you pasted on 25 November still waits for you.");
    const shown = await press(asked, "Go on with it");
    expect(shown.data).toMatchObject({ is: "chart", rows: 4 });
    const form = await t.open.store.read((q) => q.charts.byId(shown.data.draft));
    expect(form?.typed).toBe(CHART);
    expect((await press(shown, "Leave it", "Odo")).data.refused).toEqual({ why: "not yours" });
    expect((await press(shown, "Leave it")).text).toBe("Left as it was.");
    expect((await run("/plan read-chart")).data.open).toBeNull();
    expect((await press(shown, "The letters are right")).data.refused).toEqual({ why: "already done" });
  });
  test("what is no chart is kept too, and can be put right", async () => {
    const shown = await paste("my manual is lost");
    expect(shown.text).toContain("I cannot find the services in that.");
    expect((await t.one({ as: "Ines", fill: button(shown, "Paste it again"), fields: { chart: CHART } })).data.is).toBe("chart");
    expect(await t.open.store.read((q) => q.charts.openOf("Ines" as never))).toHaveLength(1);
    expect((await paste("x".repeat(20_001))).data.refused).toEqual({ why: "too long", limit: 20_000 });
  });
  test("an old press shows how it stands now, and a plan changed meanwhile is looked at again", async () => {
    const letters = await paste(CHART);
    const preview = await press(letters, "The letters are right");
    expect((await press(letters, "The letters are right")).data).toMatchObject({ confirmed: true, rev: preview.data.rev });
    const change = await run("/plan change item:oil and filter every:3,000 mi");
    await press(change, "Save");
    expect((await press(preview, "Save")).data.refused).toEqual({ why: "changed meanwhile" });
    const again = await press(await run("/plan read-chart"), "Go on with it");
    expect(again.data.lines.filter(({ is }: { is: string }) => is === "change")).toHaveLength(2);
    expect((await press(again, "Save")).data.changed).toEqual(["Engine oil and filter", "Valve clearance"]);
  });
  test("a short chart can be typed in the command itself; no question about a message is made of it", async () => {
    const shown = await run("/plan read-chart chart:item;4000 mi;8000\\nSpark plugs;;R");
    expect(shown.data).toMatchObject({ is: "chart", rows: 1, units: ["mi"] });
    expect((await run("/reading")).data.open).toEqual([]);
  });
});
