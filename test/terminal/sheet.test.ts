// A service sheet from the first look to the note for next time: over evenings, over restarts, by a shop, and taken back.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const fill = (shown: Shown, label: string, fields: Readonly<Record<string, string>>) => t.one({ ...dm, fill: button(shown, label), fields });
const pickItem = (shown: Shown, name: string) => {
  const list = shown.actions.find((action) => action.label.startsWith("Tick off"));
  const option = list?.options?.find((each) => each.label === name);
  if (list === undefined || option === undefined) throw new Error(`no ${name}`);
  return t.one({ ...dm, pick: list.id, values: [option.value] });
};
type Lines = readonly { readonly name: string; readonly ticked: unknown }[];
const ticked = (shown: Shown): string[] =>
  ((shown.data.job?.lines ?? shown.data.lines) as Lines).filter((line) => line.ticked !== null).map((line) => line.name);

type Step = { readonly item?: string; readonly why?: string };
const stepsOf = (shown: Shown): Step[] => (shown.data.evenings as { steps: Step[] }[]).flatMap(({ steps }) => steps);

const begun = async (file?: string): Promise<void> => {
  t = await talk("2026-11-26T09:00:00Z", file);
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
  await run("/work did:oil and filter at:12,050 mi on:March 2026");
};

test("the sheet: the service and what it adds, its evenings in order, what to look up, and a table to print", async () => {
  await begun();
  const sheet = await run("/plan sheet");
  expect(sheet.text).toMatch(/^Heron, the 16,000 mi service: \d+ items, about \d+ h/u);
  expect(sheet.text).toContain("By the plan 16,000 mi is the 4,000 mi list plus valve clearance,");
  expect(sheet.text).toContain("engine warm from a ride");
  expect(sheet.text).toMatch(/1\. Engine oil and filter \(45 min, upright\)/u);
  expect(sheet.text).toContain("Then let it stand overnight: the next evening wants the engine cold.");
  expect(sheet.text).toContain("To have ready:");
  expect(sheet.files).toMatchObject([{ name: "service-sheet.csv", type: "text/csv" }]);
  // Looked at, not begun.
  expect((await run("/plan job")).data.refused).toEqual({ why: "no job" });
  const names = sheet.data.evenings.flatMap(({ steps }: { steps: { step: string; item?: string }[] }) => steps.flatMap((step) => step.item ?? []));
  expect(names.indexOf("valve-clearance.adjust")).toBeLessThan(names.indexOf("throttle-balance.adjust"));
  const second = await press(sheet, "Evening 2");
  expect(second.text).toContain("engine cold, after a night's standing");
  expect((await run("/plan sheet at:next")).data.mark).toBe(sheet.data.mark);
  expect((await run("/plan sheet at:16,000 mi")).data.mark).toBe(sheet.data.mark);
  expect((await run("/plan sheet at:banana")).data.refused).toMatchObject({ why: "not a distance" });
});

test("killed and started again after every step, nothing that was ticked is lost and nothing is ticked twice", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const restart = async (): Promise<void> => {
    await t.close();
    t = await talk("2026-11-26T09:00:00Z", file);
  };
  await begun(file);
  const sheet = await run("/plan sheet");
  await restart();
  const job = await press(sheet, "Begin this job");
  await restart();
  const oil = await run("/plan job done:oil and filter at:15,800 mi found:low left:full");
  expect(oil.text).toContain("- Engine oil and filter: replaced, found low; left full, today at 15,800 mi");
  await restart();
  // The same press again, after the restart: the job that is open, not another.
  expect((await press(sheet, "Begin this job")).data.job).toBe(job.data.job);
  const card = await pickItem(await run("/plan job"), "Front brake pads");
  await restart();
  await press(card, "Done");
  await restart();
  const values = await pickItem(await run("/plan job"), "Clutch free play");
  await fill(values, "Note found", { found: "20 mm", left: "12 mm", outcome: "adjusted", at: "15,810 mi" });
  await restart();
  const shown = await run("/plan job");
  expect(ticked(shown)).toEqual(["Engine oil and filter", "Clutch free play", "Front brake pads"]);
  expect(shown.text).toContain("- Clutch free play: adjusted, found 20 mm, left 12 mm, today at 15,810 mi");
  const over = await fill(shown, "Finish", { note: "left cover gasket is worn" });
  await restart();
  expect(over.text).toContain("which stay due as before");
  expect((await run("/plan sheet")).text).toContain("Noted last time: “left cover gasket is worn”");
  const due = (await run("/due")).data.bikes[0].dues as { item: string; legs: { by: string; dueAt: number }[] }[];
  // Each at its own odometer: the oil counts for the 16,000 mi service.
  expect(due.find(({ item }) => item === "engine-oil.replace")?.legs.find(({ by }) => by === "distance")?.dueAt).toBe(20_000 * 16_093_440);
  expect(due.find(({ item }) => item === "valve-clearance.adjust")?.legs.find(({ by }) => by === "distance")?.dueAt).toBe(16_000 * 16_093_440);
  await rm(folder, { recursive: true });
});

test("an item ticked a second time: it says so, shows both, and either is taken back", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  const first = await run("/plan job done:valve clearance found:0.09 mm intake, 0.18 exhaust left:0.15 mm intake, 0.2 exhaust at:15,800 mi");
  expect(first.data.again).toEqual([]);
  const second = await run("/plan job done:valve clearance found:0.15 mm intake, 0.21 mm exhaust at:15,800 mi");
  expect(second.text).toContain("Valve clearance was ticked before, so it stands on record twice now.");
  expect(second.text).toMatch(
    /- Valve clearance: [^\n]*found 0\.15 mm intake and 0\.21 mm exhaust, today[^\n]*\n {2}Before that: adjusted, found 0\.09 mm intake and 0\.18 mm exhaust/u,
  );
  const records = async (): Promise<number> => ((await run("/records")).text ?? "").split("Valve clearance (").length - 1;
  expect(await records()).toBe(2);
  await press(second, "Take the first back");
  const left = await run("/plan job");
  expect(left.text).toContain("found 0.15 mm intake and 0.21 mm exhaust");
  expect(left.text).not.toContain("Before that");
  expect(await records()).toBe(2);
  expect((await run("/records")).text).toContain("Taken back");
  // The other way round: the second is undone, and the first is what stands.
  const third = await run("/plan job done:valve clearance found:0.3 mm intake at:15,800 mi");
  await press(third, "Undo");
  expect((await run("/plan job")).text).not.toContain("0.3 mm");
});

test("one undo each: a tick, the end, the beginning", async () => {
  await begun();
  const job = await press(await run("/plan sheet"), "Begin this job");
  const oil = await run("/plan job done:oil and filter at:15,800 mi");
  expect(ticked(oil)).toEqual(["Engine oil and filter"]);
  await press(oil, "Undo");
  expect(ticked(await run("/plan job"))).toEqual([]);
  const over = await fill(job, "Finish", {});
  expect((await run("/plan job")).data.refused).toEqual({ why: "no job" });
  expect((await run("/plan job done:oil and filter")).data.refused).toEqual({ why: "no job" });
  const again = await press(over, "Open it again");
  expect(again.data.state).toBe("open");
  const away = await press(again, "Put the sheet away");
  expect(away.text).toContain("put away");
  expect((await press(away, "Open it again")).data.state).toBe("open");
});

test("work said in a plain message ticks it too; a job done warm today bars what wants the engine cold", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  await t.one({ ...dm, say: "did the oil and filter on Heron at 15,800" });
  let shown = await run("/plan job");
  expect(ticked(shown)).toEqual(["Engine oil and filter"]);
  const first = shown.data.lines.filter((line: { evening: number; name: string }) => line.evening === 1 && line.name !== "Engine oil and filter");
  for (const line of first) await run(`/plan job done:${line.item}`);
  shown = await run("/plan job");
  expect(shown.data.standOvernight).toBe(true);
  expect(shown.text).toContain("let it stand overnight before the next item");
  await t.send({ advance: "P1D" });
  expect((await run("/plan job")).data.standOvernight).toBe(false);
});

test("a shop did it: one press, not itemised, at what it cost; what was not on the bill stays due, and can be put back", async () => {
  await begun();
  const sheet = await run("/plan sheet");
  const job = await press(sheet, "Begin this job");
  const all = job.data.lines.length;
  // What is on the sheet only because nothing is on record of it is on no bill by itself.
  const unknown = stepsOf(sheet).flatMap(({ item, why }) => (why === "unknown" && item !== undefined ? [item] : []));
  expect(unknown).toEqual(expect.arrayContaining(["brake-fluid.replace", "battery.test"]));
  const service = all - unknown.length;
  const shop = await fill(job, "A shop", { at: "15,950 mi", cost: "380", shop: "Corner garage" });
  expect(shop.text).toContain("- By Corner garage (not itemised; 380), today at 15,950 mi: ");
  expect(ticked(shop)).toHaveLength(service);
  const list = shop.actions.find((action) => action.label === "Not on the bill");
  const less = await t.one({ ...dm, pick: list?.id, values: ["valve-clearance.adjust", "throttle-balance.adjust"] });
  expect(less.text).toContain(`: ${2 + unknown.length} of ${all} items to go.`);
  // The list as it was shown is of the record before it was amended.
  expect((await t.one({ ...dm, pick: list?.id, values: ["engine-oil.replace"] })).data.refused).toEqual({ why: "changed meanwhile" });
  expect(ticked(await press(less, "Put it back"))).toHaveLength(service);
  await press(shop, "Undo");
  expect(ticked(await run("/plan job"))).toEqual([]);
});

test("all that falls due by a day is one sheet, and one job: the work of a winter, done while it stands", async () => {
  await begun();
  await run("/work did:brake fluid on:May 2025");
  const winter = await run("/plan sheet until:midsummer");
  expect(winter.data).toMatchObject({ mark: null, until: "2027-06-21" });
  expect(winter.text).toMatch(/^Heron, all that falls due by 21 June, done now: \d+ items, about/u);
  const items = (shown: Shown): string[] => stepsOf(shown).flatMap(({ item }) => item ?? []);
  expect(items(winter)).toContain("brake-fluid.replace");
  // With nothing on record it cannot wait for a mark that may be years away; a tyre or a chain is looked at before it is renewed.
  const unknown = stepsOf(winter).flatMap(({ item, why }) => (why === "unknown" ? (item ?? []) : []));
  expect(unknown).toEqual(["coolant.replace"]);
  // The next service is 300 mi away and nothing says how far it is ridden: it is done together, as test/terminal/winter-list.test.ts has it.
  const next = stepsOf(winter).flatMap(({ item, why }) => (why === "next" ? (item ?? []) : []));
  expect(next).toContain("steering-head.inspect");
  expect(winter.text).toContain("Nothing is on record of front tyre age, rear tyre age and new chain and sprockets: look whether they are wanted");
  expect(items(await run("/plan sheet until:in 5 weeks"))).not.toContain("brake-fluid.replace");
  const outlook = (await run("/due until:midsummer")).data.bikes[0].evenings.flatMap((each: { items: { due: { item: string } }[] }) =>
    each.items.map(({ due }) => due.item),
  );
  expect(outlook).toEqual(expect.arrayContaining(items(winter).filter((item) => !unknown.includes(item) && !next.includes(item))));
  expect((await run("/due until:midsummer")).text).toMatch(/With nothing on record, do these first: .*coolant/u);
  const job = await press(winter, "Begin this job");
  expect(job.data.lines.map(({ item }: { item: string }) => item).toSorted()).toEqual(items(winter).toSorted());
  expect((await run("/plan sheet until:yesterday")).data.refused).toMatchObject({ why: "not ahead" });
});

type Dues = readonly { readonly item: string; readonly status: string; readonly legs: readonly { readonly by: string }[] }[];
const dueOf = async (item: string) => ((await run("/due")).data.bikes[0].dues as Dues).find((each) => each.item === item);

test("values found and left at an item are readings too: what was left is judged, what was found is kept for the trend", async () => {
  await begun();
  await run("/spec what:clutch free play value:10-15 mm source:manual, p. 12");
  await press(await run("/plan sheet"), "Begin this job");
  const set = await run("/plan job done:clutch free play found:20 mm left:12 mm");
  expect(set.text).toContain("clutch free play 20 mm (as found) and clutch free play 12 mm (as left)");
  expect(set.text).toContain("Clutch free play 12 mm: within");
  expect(set.text).not.toContain("20 mm: beyond");
  expect(set.text).toContain("- Clutch free play: adjusted, found 20 mm, left 12 mm, today");
  expect(await dueOf("clutch-free-play.adjust")).toMatchObject({ status: "good" });
  expect((await run("/reading")).text).toContain("Clutch free play 20 mm (as found)");
  // One undo takes the job and its readings back.
  await press(set, "Undo");
  expect((await run("/reading")).text).not.toContain("Clutch free play");
  // Adjusted, and still out of its window: what was left tells.
  const still = await run("/work did:clutch free play found:20 mm left:18 mm");
  expect(still.text).toContain("Clutch free play 18 mm: beyond limit");
  expect(await dueOf("clutch-free-play.adjust")).toMatchObject({ status: "due" });
});

test("several values need no commas; what was logged is not kept as words too, and what is no value is", async () => {
  await begun();
  const set = await run("/work did:valve clearance found:intake 0.09 exhaust 0.18 left:intake 0.15 exhaust 0.20");
  expect(set.data.logged ?? set.data.readings).toHaveLength(4);
  const counted = await run("/work did:valve clearance found:intake 1 0.10 intake 2 0.11 on:2026-11-20");
  expect((counted.data.logged ?? counted.data.readings).map(({ place }: { place: string }) => place)).toEqual(["intake 1", "intake 2"]);
  await press(await run("/work did:valve clearance found:a little tight at 0.09 somewhere on:2026-11-10"), "Only a note");
  const { text } = await run("/records");
  expect(text).toContain("Valve clearance (adjusted; found intake 0.09 mm and exhaust 0.18 mm; left intake 0.15 mm and exhaust 0.2 mm). By Ines.");
  expect(text).toContain("“found a little tight at 0.09 somewhere”");
});

test("what was found in words is not called within limits", async () => {
  await begun();
  await run("/work did:brake hoses found:cracked, weeping");
  const { text } = await run("/records");
  expect(text).toContain("Brake hoses (found wrong). By Ines; “found cracked, weeping”");
  expect(text).not.toContain("Brake hoses (inspected, within limits");
});

test("what was found otherwise than it was left was not only looked at; one that only wears was renewed; where nothing differs, it was looked at", async () => {
  await begun();
  const outcomes = async (line: string) => ((await run(line)).data.work as { items: { outcome: string; found: object[]; left: object[] }[] }[])[0]?.items[0];
  expect(await outcomes("/work did:front brake pads found:3 mm")).toMatchObject({ outcome: "inspected, within limits", found: [{ value: 3, place: "front" }] });
  expect(await outcomes("/work did:front brake pads found:3 mm left:3 mm")).toMatchObject({ outcome: "inspected, within limits" });
  expect(await outcomes("/work did:front brake pads found:1.4 mm left:5 mm")).toMatchObject({ outcome: "replaced" });
  expect(await outcomes("/work did:front brake pads outcome:inspected, within limits found:1.4 mm left:5 mm")).toMatchObject({ outcome: "replaced" });
  expect(await outcomes("/work did:clutch free play found:12 mm left:12 mm")).toMatchObject({ outcome: "inspected, within limits" });
  expect(await outcomes("/work did:oil level found:low left:full")).toMatchObject({ outcome: "topped up" });
  // Found wanting, and nothing said of putting it right: looked at, and found wrong.
  expect(await outcomes("/work did:front brake pads found:0.6 mm")).toMatchObject({ outcome: "found wrong" });
});

test("a level filled up is no change of the fluid, and a gap set is no new plug; of brake fluid it is said why it sinks", async () => {
  await begun();
  const outcome = (shown: Shown) => (shown.data.work as { items: { outcome: string }[] }[])[0]?.items[0]?.outcome;
  const before = (await dueOf("coolant.replace"))?.status;
  expect(outcome(await run("/work did:coolant found:low left:full"))).toBe("topped up");
  expect((await dueOf("coolant.replace"))?.status).toBe(before);
  const fluid = await press(await run("/work did:brake fluid found:low left:max"), "front");
  expect(outcome(fluid)).toBe("topped up");
  expect(fluid.text).toContain("mostly worn pads, else a leak");
  expect(outcome(await run("/work did:brake fluid found:dark left:clear"))).toBe("replaced");
  const plugs = (await dueOf("spark-plugs.replace"))?.status;
  expect(outcome(await run("/work did:spark plugs found:0.9 mm left:0.8 mm"))).toBe("adjusted");
  expect((await dueOf("spark-plugs.replace"))?.status).toBe(plugs);
  // Changed with its filter, whatever the level was.
  expect(outcome(await run("/work did:oil and filter found:low left:full"))).toBe("replaced");
});

test("what no limit is known for is looked at, and no more; what is beyond its limit is found wrong until it is said what was left", async () => {
  await begun();
  const outcome = async (line: string) => ((await run(line)).data.work as { items: { outcome: string }[] }[])[0]?.items[0]?.outcome;
  expect(await outcome("/work did:front brake discs found:4.1 mm")).toBe("inspected");
  expect(await outcome("/work did:rims found:0.5 mm runout")).toBe("inspected");
  expect(await outcome("/work did:clutch free play found:12 mm")).toBe("inspected");
  expect((await run("/records")).text).toContain("Front brake discs (inspected; found front 4.1 mm)");
  await run("/spec what:front disc limit value:4.5 mm source:manual, p. 12");
  await run("/spec what:intake valve clearance value:0.10-0.15 mm source:manual, p. 12");
  await run("/spec what:clutch free play value:10-15 mm source:manual, p. 12");
  expect(await outcome("/work did:front brake discs found:4.1 mm")).toBe("found wrong");
  expect(await outcome("/work did:valve clearance found:intake 0.05")).toBe("found wrong");
  expect(await dueOf("valve-clearance.adjust")).toMatchObject({ status: "due" });
  expect(await outcome("/work did:valve clearance found:intake 0.12")).toBe("inspected, within limits");
  expect(await outcome("/work did:valve clearance found:intake 0.05 left:intake 0.12")).toBe("adjusted");
  expect(await outcome("/work did:clutch free play found:20 mm")).toBe("found wrong");
  expect(await outcome("/work did:clutch free play found:20 mm outcome:adjusted")).toBe("adjusted");
  expect(await outcome("/work did:clutch free play found:12 mm")).toBe("inspected, within limits");
});

test("a day still to come is refused, with last year's to be typed in full; one of the past ticks its item whenever the job was begun", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  const ahead = await run("/plan job done:rims on:30 November");
  expect(ahead.data.refused).toEqual({ why: "future date", on: "2026-11-30", before: "2025-11-30" });
  expect(ahead.text).toContain("If it was a year ago, type the year with it: 2025-11-30.");
  expect((await run("/records")).text).not.toContain("Rims");
  expect((await run("/work did:rims on:30 Nov")).data.refused).toMatchObject({ why: "future date" });
  expect(ticked(await run("/plan job done:brake hoses on:yesterday"))).toEqual(["Brake hoses"]);
  for (const on of ["25 November", "30 November 2025", "15 January", "2025-12-24"])
    expect([on, (await run(`/work did:rims on:${on}`)).data.is]).toEqual([on, "logged"]);
});

test("a tick with no figure takes the dial that was read that day; a figure far beyond it is asked about", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  const plugs = await run("/plan job done:spark plugs");
  expect(plugs.text).toContain("- Spark plugs: replaced, today at 15,700 mi");
  expect(plugs.data.outcome.readings).toEqual([]);
  expect((await run("/records")).text).toContain("26 November, 15,700 mi: Spark plugs (replaced)");
  expect((await run("/bike parts")).text).toContain("Spark plugs: since 26 November, 0 mi on it");
  // No dial was read on that day.
  expect((await run("/plan job done:fuel hoses on:yesterday")).data.outcome.work).toMatchObject([{ dial: null }]);
  const far = await run("/plan job done:rims at:16,300 mi");
  expect(far.text).toContain("Is it right?");
  expect(ticked(await run("/plan job"))).not.toContain("Rims");
  await press(far, "Yes, it is right");
  expect(ticked(await run("/plan job"))).toContain("Rims");
});

test("both pads of a caliper are kept as typed, and the lesser is judged", async () => {
  await begun();
  const pads = await run("/work did:front brake pads found:2/3 mm");
  expect(pads.data.readings).toMatchObject([{ kind: "pad thickness", place: "front", value: 2 }]);
  expect(pads.data.work[0].items[0].found).toMatchObject([{ value: 2 }, { value: 3 }]);
  const { text } = await run("/records");
  expect(text).toContain("Front brake pads (inspected, within limits; found 2 mm and 3 mm)");
  // No rule that is in millimetres has quarters.
  expect((await run("/work did:rear brake pads found:2/4 mm")).data.readings).toMatchObject([{ value: 2 }]);
});

test("a look mends nothing: what was found wanting stays due until it is set, renewed, or read anew", async () => {
  await begun();
  await run("/work did:front brake pads found:0.6 mm");
  await t.send({ advance: "P1D" });
  for (const outcome of ["done", "inspected, within limits", "could not do"]) {
    const looked = await run(`/work did:front brake pads outcome:${outcome}`);
    expect(looked.data.closed).toEqual([]);
    expect((await dueOf("front-pads.measure"))?.legs).toContainEqual(expect.objectContaining({ by: "verdict", state: "due" }));
  }
  const renewed = await run("/work did:front brake pads outcome:replaced");
  expect(renewed.data.closed).toMatchObject([{ kind: "worn front pads" }]);
  expect((await dueOf("front-pads.measure"))?.legs.filter(({ by }) => by === "verdict")).toEqual([]);
});

test("where a value was taken is asked once for what was found and what was left", async () => {
  await begun();
  const asked = await run("/work did:valve clearance found:0.08 mm left:0.12 mm");
  expect(asked.text).toContain("intake or exhaust?");
  const logged = await press(asked, "exhaust");
  expect(logged.data.readings).toMatchObject([
    { place: "exhaust", value: 0.08, detail: { state: "found", conditions: ["cold"] } },
    { place: "exhaust", value: 0.12, detail: { state: "left" } },
  ]);
  expect(logged.data.work[0].items[0]).toMatchObject({ found: [{ place: "exhaust" }], left: [{ place: "exhaust" }] });
  // Of a day that is not known well nothing is read; the record keeps it.
  const vague = await run("/work did:clutch free play found:20 mm left:12 mm on:spring 2026");
  expect(vague.data.readings).toEqual([]);
  expect(vague.data.work[0].items[0]).toMatchObject({ found: [{ value: 20 }], left: [{ value: 12 }] });
});

test("nobody ticks, ends or looks at another's job", async () => {
  await begun();
  const job = await press(await run("/plan sheet"), "Begin this job");
  const other = { as: "Odo", in: "dm" };
  await t.one({ ...other, run: "/bike add name:Wren kind:belt-drive cruiser odometer:9,000 mi" });
  for (const action of job.actions.filter((each) => each.kind !== "press")) {
    const [shown] = await t.send(
      action.kind === "form" ? { ...other, fill: action.id, fields: { note: "x", at: "15,900 mi" } } : { ...other, pick: action.id, values: ["0"] },
    );
    expect(shown?.data.refused).toEqual({ why: "not yours" });
  }
  expect(ticked(await run("/plan job"))).toEqual([]);
});

test("a figure at which nothing falls due is answered with the services nearest to it; where brakes are opened that is said beside what is hot", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Otter kind:shaft-drive tourer odometer:35,800 km");
  expect((await run("/plan sheet at:36,000 km")).text).toContain("nothing falls due there.\nThe services nearest to it: 30,000 km and 40,000 km.");
  const sheet = await run("/plan sheet at:40,000 km");
  expect(sheet.text).toContain("Hot oil and coolant scald");
  expect(sheet.text).toContain("a disc brake pumped hard first");
});
