// The plan, and an interval of one's own: seen beside the one in force, saved when said so, taken back.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/work did:oil and filter at:12,000 mi on:1 May 2026 bike:Heron");
});
afterEach(() => t.close());
const run = (line: string, as = "Ines") => t.one({ as, run: line });
const press = (shown: Shown, label: string, as = "Ines") => t.one({ as, press: button(shown, label) });
const CHANGE = "/plan change item:oil and filter every:2,500 mi or 6 months";
const oil = async () => {
  const line = (await run("/due")).data.bikes[0].dues.find(({ item }: { item: string }) => item === "engine-oil.replace");
  return [line.status, line.mark / 16_093_440];
};

test("a plan is listed by system, in the bike's own column, habits and all", async () => {
  const shown = await run("/plan list");
  expect(shown.data.lines).toHaveLength(41);
  expect(shown.text).toContain("Engine\n- Engine oil and filter: every 4,000 mi or 12 months; first at 600 mi.");
  expect(shown.text).toContain("- Chain lubrication: every 300 mi; from the last time.");
  expect(shown.text).toContain("- Lights and horn: every month; from the last time.");
  await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 km", "Odo");
  expect((await run("/plan list", "Odo")).text).toContain("- Engine oil and filter: every 6,000 km or 12 months; first at 1,000 km.");
});

describe("changing an interval", () => {
  test("shows old and new side by side, with the first five marks and what falls due, and saves nothing by it", async () => {
    const shown = await run(CHANGE);
    expect(shown.text?.split("\n").slice(2, 6)).toEqual([
      "Now: every 4,000 mi or 12 months, at 4,000 mi, 8,000 mi, 12,000 mi, 16,000 mi, 20,000 mi and so on; first at 600 mi.",
      "- Engine oil and filter: due on 1 May, last done 1 May 2026; in 5 months; by distance at 16,000 mi, 1,790 mi to go. Good.",
      "Then: every 2,500 mi or 6 months, at 2,500 mi, 5,000 mi, 7,500 mi, 10,000 mi, 12,500 mi and so on; first at 600 mi.",
      expect.stringContaining("Overdue."),
    ]);
    expect(shown.text).toContain("Nothing is saved yet.");
    expect(await oil()).toEqual(["good", 16_000]);
  });

  test("saved, it rules from then on, is named in the plan, and can be taken back; both changes stay on record", async () => {
    const saved = await press(await run(CHANGE), "Save");
    expect(saved.data).toMatchObject({ saved: true, rev: 1 });
    expect(await oil()).toEqual(["overdue", 14_500]);
    expect((await run("/plan list")).text).toContain(
      "- Engine oil and filter: every 2,500 mi or 6 months; first at 600 mi; the plan it came with says every 4,000 mi or 12 months.",
    );
    await press(saved, "Undo");
    expect(await oil()).toEqual(["good", 16_000]);
    const [bike] = await t.open.store.read((q) => q.bikes.ofOwner("Ines" as never));
    expect(bike?.edits.map(({ by, edit }) => [by, edit.change])).toEqual([
      ["Ines", "interval"],
      ["Ines", "interval"],
    ]);
    expect((await run("/plan list")).text).not.toContain("the plan it came with says");
  });

  test("a list of services says what comes after it and from where, and why it was changed is kept", async () => {
    const list = "/plan change item:valve clearance marks:600, 8,000 and 20,000 mi";
    expect((await run(`${list} every:12,000 mi`)).data.refused).toMatchObject({ because: "counted from" });
    const shown = await run(`${list} every:12,000 mi counted:the last one listed why:manual p. 88`);
    expect(shown.text).toContain(
      "Then: at 600 mi, 8,000 mi and 20,000 mi, then every 12,000 mi, counted from the last of these, at 600 mi, 8,000 mi, 20,000 mi, 32,000 mi, 44,000 mi and so on.",
    );
    expect((await run("/plan history")).data.edits).toEqual([]);
    const saved = await press(shown, "Save");
    expect(saved.text).toContain("Why: manual p. 88");
    expect((await run("/plan history")).text).toContain(
      "Valve clearance changed to at 600 mi, 8,000 mi and 20,000 mi, then every 12,000 mi, counted from the last of these. Why: manual p. 88",
    );
    const valves = (await run("/due")).data.bikes[0].dues.find(({ item }: { item: string }) => item === "valve-clearance.adjust");
    expect(valves.legs.find(({ by }: { by: string }) => by === "distance").dueAt).toBe(20_000 * 16_093_440);
    await press(saved, "Undo");
    expect((await run("/plan list")).text).toMatch(/- Valve clearance: every 8,000 mi[;.]/u);
    // Counted from zero, the next after 20,000 is 24,000.
    expect((await run(`${list} every:12,000 mi counted:zero`)).text).toContain("at 600 mi, 8,000 mi, 20,000 mi, 24,000 mi, 36,000 mi and so on");
    for (const typed of ["8,000, 600 mi", "banana", "600 mi / 1,000 km, 4,000 mi"]) {
      expect((await run(`/plan change item:valve clearance marks:${typed}`)).data.refused).toMatchObject({ because: "no marks" });
    }
    expect((await run("/plan change item:valve clearance")).data.refused).toMatchObject({ because: "nothing said" });
  });

  test("how often is typed as a rider says it: running-in first, every third service, every second oil change, from the last time", async () => {
    const text = async (item: string, every: string) => (await run(`/plan change item:${item} every:${every}`)).text;
    const first = await run("/plan change item:oil and filter every:first 500 mi, then every 3,000 mi or 12 months");
    expect(first.text).toContain("Then: every 3,000 mi or 12 months, at 3,000 mi, 6,000 mi, 9,000 mi, 12,000 mi, 15,000 mi and so on; first at 500 mi.");
    await press(first, "Save");
    expect((await run("/plan list")).text).toContain("- Engine oil and filter: every 3,000 mi or 12 months; first at 500 mi;");
    expect(await text("new air filter", "every third 4,000 mi or 36 months")).toContain(
      "Then: every third 4,000 mi service or 3 years, at 12,000 mi, 24,000 mi",
    );
    const second = await run("/plan change item:spark plugs every:every second oil change or 24 months");
    expect(second.text).toContain("Then: with every second engine oil and filter or 2 years.");
    await press(second, "Save");
    // The oil was done once since; the second time it is due.
    const plugs = async () => (await run("/due")).data.bikes[0].dues.find(({ item }: { item: string }) => item === "spark-plugs.replace").legs;
    expect(await plugs()).toContainEqual(expect.objectContaining({ by: "times", of: "engine-oil.replace", nth: 2 }));
    expect(await text("valve clearance", "12,000 mi from the last time, no running-in")).toMatch(/Then: every 12,000 mi; from the last time\.\n/u);
    expect(await text("valve clearance", "12,000 mi counted:the last time")).toMatch(/Then: every 12,000 mi; first at 600 mi; from the last time\.\n/u);
    const refused = async (said: string) => (await run(`/plan change item:${said}`)).data.refused;
    expect(await refused("oil and filter every:every second oil change")).toMatchObject({ because: "itself" });
    expect(await refused("spark plugs every:every second sprocket whistle")).toMatchObject({ why: "no such item" });
    expect(await refused("spark plugs every:every third 4,000 mi counted:the last time")).toMatchObject({ because: "marks from last" });
    expect(await refused("spark plugs every:4,000 mi counted:the last one listed")).toMatchObject({ because: "no list" });
    expect(await refused("oil and filter when:dust every:every second 4,000 mi")).toMatchObject({ why: "not an interval" });
    expect(await refused("oil and filter marks:600, 4,000 mi every:4,000 mi counted:the last time")).toMatchObject({ because: "counted from" });
  });

  test("what a use shortens is changed, taken away and taken back", async () => {
    await run("/bike change used:dust");
    const shorter = await run("/plan change item:oil and filter when:dust every:1,500 mi why:sand all summer");
    expect(shorter.text).toContain("With dust every 1,500 mi");
    const saved = await press(shorter, "Save");
    // In dust, last done 1 May: sooner than the 4,000 mi of the table.
    const [, dueAt] = await oil();
    await press(await run("/plan change item:oil and filter when:dust every:never"), "Save");
    const [, without] = await oil();
    expect(Number(dueAt)).toBeLessThan(Number(without));
    expect((await run("/plan history")).text).toContain("Engine oil and filter, what uses shorten changed to with dust every 1,500 mi");
    expect((await t.one({ as: "Ines", press: button(saved, "Undo") })).data.refused).toMatchObject({ why: "changed meanwhile" });
    await run("/plan change item:valve clearance marks:600, 8,000 mi").then((shown) => press(shown, "Save"));
    expect((await run("/plan change item:valve clearance when:dust every:1,500 mi")).data.refused).toMatchObject({ because: "no interval" });
  });

  test("a reminder follows it", async () => {
    expect(await t.send({ advance: "P14D" })).toEqual([]);
    await press(await run(CHANGE), "Save");
    const told = await t.send({ advance: "P14D" });
    // Once when it is told of first, and once more after a week, since it is overdue.
    expect(told.map(({ text }) => text?.includes("Engine oil and filter"))).toEqual([true, true]);
  });

  test("left, nothing changes; on a plan that has changed since, it is to be looked at again", async () => {
    const [first, second] = [await run(CHANGE), await run("/plan change item:oil and filter every:3,000 mi")];
    expect((await press(second, "Leave it")).text).toBe("Left as it was.");
    expect(await oil()).toEqual(["good", 16_000]);
    await press(second, "Save");
    expect((await press(first, "Save")).data.refused).toEqual({ why: "changed meanwhile" });
    expect((await press(second, "Save")).data.refused).toEqual({ why: "changed meanwhile" });
  });

  test("nobody else can save or take it back", async () => {
    const shown = await run(CHANGE);
    expect((await press(shown, "Save", "Odo")).data.refused).toEqual({ why: "not yours" });
    const saved = await press(shown, "Save");
    expect((await press(saved, "Undo", "Odo")).data.refused).toEqual({ why: "not yours" });
  });

  test.each([
    ["item:oil and filter every:4000", "not an interval"],
    ["item:oil and filter every:often", "not an interval"],
    ["item:chain every:400 mi", "which item"],
    ["item:banana every:400 mi", "no such item"],
    ["item:oil and filter every:4,000 mi or 12 months bike:Nobody", "unknown bike"],
  ])("%s is refused with a way on", async (options, why) => {
    expect((await run(`/plan change ${options}`)).data.refused).toMatchObject({ why });
  });

  test("a bike that counts kilometres is told that a plan in miles is converted", async () => {
    await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 km", "Odo");
    expect((await run("/plan change item:oil and filter every:3,000 mi", "Odo")).text).toContain(
      "This bike goes by the km column; with none given, mi are converted.",
    );
  });
});

test.each([
  ["5,000 mi", ["No longer every 12 months: type it too if it is to stay."]],
  ["40,000 mi or 12 months", ["That is more than three times as long as now"]],
  ["48 months", ["No longer every 4,000 mi: type it too", "That is more than three times as long as now"]],
  ["12,000 mi or 36 months", []],
])("an interval of %s says what it takes away, and what looks like a slip", async (every, said) => {
  const text = (await run(`/plan change item:oil and filter every:${every}`)).text ?? "";
  for (const each of said) expect(text).toContain(each);
  expect([text.includes("No longer"), text.includes("more than three times")]).toEqual([
    said.some((each) => each.startsWith("No longer")),
    said.some((each) => each.startsWith("That")),
  ]);
});

test("/help names every command that begins so", async () => {
  const { text } = await run("/help command:plan");
  for (const each of ["/plan list", "/plan change", "/plan chart", "/plan read-chart"]) expect(text).toContain(each);
  expect(text).not.toContain("/bike");
});

test("/help tells how a thing is measured, with the commands that speak of it; what is neither is refused", async () => {
  const tread = await run("/help command:tread");
  expect(tread.data.about).toEqual({ typed: "tread", kinds: ["tread"] });
  expect(tread.text).toMatch(/^Tread depth: In the main groove at the most worn point, not on a wear bar\.\n/u);
  expect(tread.text).toContain("/tyre show:");
  expect((await run("/help command:chain slack")).text).toBe(
    "Chain slack: Midway along the lower run at the tightest spot, with the bike standing as its manual says.",
  );
  expect((await run("/help command:frobnicate")).text).toBe("I know no /frobnicate. /help lists what I know.");
});

test("an interval in engine hours runs by the hour meter: set by message, restarted by the job, coming up, due; unread for a season of use it cannot tell", async () => {
  const say = (text: string) => t.one({ as: "Ines", say: text, in: "dm" });
  const line = async () => (await run("/due")).data.bikes[0].dues.find(({ item }: { item: string }) => item === "engine-oil.replace");
  const hours = async () => (await line()).legs.find(({ by }: { by: string }) => by === "hours");
  await press(await run("/plan change item:oil and filter every:4,000 mi or 50 engine hours"), "Save");
  expect((await hours()).state).toBe("cannot tell");
  await say("engine hours 112 on 1 May");
  expect(await hours()).toMatchObject({ state: "cannot tell", dueAt: 162 });
  await say("engine hours 158.5");
  expect(await hours()).toMatchObject({ state: "soon", dueAt: 162, toGo: 3.5 });
  await say("engine hours 162");
  expect(await line()).toMatchObject({ status: "due" });
  expect((await run("/due")).text).toContain("due at 162 engine hours");
  await run("/work did:oil and filter bike:Heron");
  expect(await hours()).toMatchObject({ dueAt: 212, toGo: 50 });
});
