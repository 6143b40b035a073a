// A whole service told in one message: which one the plan has there, marked by one press, and what was not on the bill taken out again.

import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const say = (text: string) => t.one({ ...dm, say: text });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const labels = (shown: Shown): string[] => shown.actions.map(({ label }) => label);
const records = async (): Promise<{ items: { item: string }[]; words: string }[]> =>
  (await run("/records bike:Heron")).data.bikes.flatMap((bike: { work: { state: string }[] }) => bike.work.filter(({ state }) => state === "live"));
type Due = { readonly item: string; readonly status: string; readonly legs: readonly { readonly by: string; readonly dueAt: number }[] };
const due = async (item: string): Promise<Due | undefined> => ((await run("/due bike:Heron")).data.bikes[0].dues as Due[]).find((each) => each.item === item);
const MILE = 16_093_440;
/** Items of the service itself: what is on the sheet only because nothing is on record of it is not. */
const ofService = (sheet: Shown): number =>
  (sheet.data.evenings as { steps: { item?: string; why?: string }[] }[]).flatMap(({ steps }) =>
    steps.filter(({ item, why }) => item !== undefined && why !== "unknown"),
  ).length;

beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
});
afterEach(() => t.close());

test("one press marks the whole sheet, by the shop, at what it cost; what was not on the bill is taken out, and put back", async () => {
  const asked = await say("16,000 service at the shop, 380");
  expect(asked.text).toMatch(/^“16,000 service at the shop, 380” on Heron: \d+ items belong to the 16,000 mi service\. Mark them all as done\?/u);
  const sheet = ofService(await run("/plan sheet at:16,000 mi"));
  const marked = await press(asked, `Mark all ${sheet}`);
  expect(marked.data.work).toMatchObject([{ note: "not itemised", detail: { by: "shop", cost: { minor: 38_000 } }, dial: null }]);
  expect(marked.data.work[0].items).toHaveLength(sheet);
  // The figure that names the service is no reading of the odometer.
  expect(marked.data.readings).toEqual([]);
  expect(await due("valve-clearance.adjust")).toMatchObject({ status: "good" });
  const list = marked.actions.find(({ label }) => label === "Not on the bill");
  const less = await t.one({ ...dm, pick: list?.id, values: ["valve-clearance.adjust", "throttle-balance.adjust"] });
  expect(less.text).toBe(`Heron: Throttle balance and Valve clearance taken out; they stand as before. ${sheet - 2} items stay recorded.`);
  expect((await due("valve-clearance.adjust"))?.legs.find(({ by }) => by === "distance")?.dueAt).toBe(16_000 * MILE);
  // The list as it was shown is of the record before that.
  expect((await t.one({ ...dm, pick: list?.id, values: ["engine-oil.replace"] })).data.refused).toEqual({ why: "changed meanwhile" });
  const back = await press(less, "Put it back");
  expect(back.data.changed).toEqual(["Throttle balance", "Valve clearance"]);
  expect(await due("valve-clearance.adjust")).toMatchObject({ status: "good" });
  await press(marked, "Undo");
  expect(await records()).toEqual([]);
});

test("what was ticked off in the job that is open stays the member's own, and the bill says the rest", async () => {
  const sheet = await run("/plan sheet at:16,000 mi bike:Heron");
  await press(sheet, "Begin this job");
  await run("/plan job done:spark plugs outcome:replaced");
  await run("/plan job done:brake hoses outcome:inspected, within limits");
  await run("/plan job done:valve clearance outcome:could not do");
  await t.send({ advance: "P20D", asleep: true });
  // So far past it, the whole of what the plan prints there is named.
  await say("16,650 mi");
  const asked = await say("16,000 service at the shop, 380 on 10 December");
  const [, all, rest] =
    /: (\d+) items belong to the 16,000 mi service; the 2 that you ticked off yourself stay yours\. Mark the other (\d+) as done\?/u.exec(asked.text ?? "") ??
    [];
  expect(Number(all) - Number(rest)).toBe(2);
  const marked = await press(asked, `Mark the other ${rest}`);
  const items = marked.data.work[0].items.map(({ item }: { item: string }) => item);
  expect(items).toHaveLength(Number(rest));
  expect(items).not.toContain("spark-plugs.replace");
  expect(items).not.toContain("brake-hoses.inspect");
  // Could not be done at home: the shop may well have.
  expect(items).toContain("valve-clearance.adjust");
  expect(marked.data.work[0].detail).toMatchObject({ by: "shop", cost: { minor: 38_000 } });
  const job = await run("/plan job");
  expect(job.text).toContain("- Spark plugs: replaced");
  expect(job.text).toMatch(/- By shop \(not itemised; 380\), 10 December: (?!.*spark plugs)/u);
  await run("/plan job done:battery outcome:could not do");
  const end = await t.one({ ...dm, fill: button(job, "Finish the job"), fields: { note: "" } });
  // Each outcome is counted, and what could not be done is not called done.
  expect(end.text).toMatch(
    /: finished\. Of 24 items: 1 looked at, within limits; 1 replaced; 19 done; 1 could not be done\. What could not be done stays due as before\. 2 items left/u,
  );
});

test("all taken out, it was not done; and that is put back too", async () => {
  const marked = await press(await say("did the 16,000 mi service at 15,950"), "Mark all");
  expect(marked.data.work).toMatchObject([{ note: null, dial: 15_950 * MILE }]);
  const list = marked.actions.find(({ label }) => label === "Take out what was not done");
  const none = await t.one({ ...dm, pick: list?.id, values: list?.options?.map(({ value }) => value) });
  expect(none.text).toContain("Nothing is left of that record.");
  expect(await records()).toEqual([]);
  expect((await press(none, "Put it back")).data.items).toHaveLength(list?.options?.length ?? -1);
  expect(await records()).toHaveLength(1);
});

test("where the plan prints none, the nearest are offered; of one long ago it is asked when it was, and it is what the plan prints there", async () => {
  const none = await say("13,500 service at the shop, 380 on 4 May 2025");
  expect(none.text).toContain("its plan prints none at 13,500. Which one was it?");
  expect(labels(none).slice(0, 2)).toEqual([expect.stringMatching(/^The 12,000 mi service \(\d+\)$/u), expect.stringMatching(/^The 16,000 mi service/u)]);
  const asked = await say("12,000 service at the shop, 380");
  expect(asked.text).toContain("“12,000 service” on Heron: when was that?");
  const field = asked.actions.find(({ kind }) => kind === "form");
  const again = await t.one({ ...dm, fill: field?.id, fields: { text: "12,000 service at the shop, 380, spring 2025" } });
  const marked = await press(again, "Mark all");
  const items = (marked.data.work[0].items as { item: string }[]).map(({ item }) => item);
  expect(items).toContain("engine-oil.replace");
  // An item of every second service: printed at 8,000 and 16,000.
  expect(items).not.toContain("valve-clearance.adjust");
  expect(marked.data.work[0].on).toMatchObject({ from: "2025-03-01" });
});

test("which bike is asked first, and its own plan is looked into; /work takes it as well", async () => {
  await run("/bike add name:Otter kind:belt-drive cruiser odometer:9,700 mi");
  const asked = await say("10,000 service at the dealer, 420 EUR");
  expect(labels(asked).slice(0, 2)).toEqual(["Heron", "Otter"]);
  expect((await press(asked, "Otter")).text).toContain("on Otter: ");
  const typed = await run("/work did:16,000 mi service bike:Heron by:Corner garage cost:380");
  expect((await press(typed, "Mark all")).data.work).toMatchObject([{ detail: { by: "Corner garage", cost: { minor: 38_000 } }, note: "not itemised" }]);
});

test("in a channel no figure is named, and nothing is saved before the answer; nobody else takes anything out", async () => {
  const shared = await t.one({ as: "Ines", in: "g1", say: "16,000 service at the shop, 380" });
  expect(shared).toMatchObject({ react: "asked", visibility: "shared" });
  expect(shared.text).not.toMatch(/\d/u);
  expect(await records()).toEqual([]);
  const marked = await press(await t.one({ as: "Ines", in: "g1", press: button(shared, "Show the question") }), "Mark all");
  const list = marked.actions.find(({ label }) => label === "Not on the bill");
  await t.one({ as: "Odo", in: "dm", run: "/bike add name:Wren kind:belt-drive cruiser odometer:9,000 mi" });
  expect((await t.one({ as: "Odo", in: "dm", pick: list?.id, values: ["engine-oil.replace"] })).data.refused).toEqual({ why: "not yours" });
});

test("what is planned, asked or only talked of is no service done", async () => {
  for (const talk of [
    "need the 16,000 service at the shop",
    "is the 16,000 service at the shop done?",
    "the shop quoted 380 for the 16,000 service",
    "16,000 service is due at the shop",
    "booked the 16,000 service at the shop",
  ]) {
    expect((await t.send({ as: "Ines", in: "g1", say: talk })).filter(({ react }) => react !== null)).toEqual([]);
  }
});

test("a bike that has just passed the figure, with nothing on record: the service is what the plan prints there, as a sheet and as one press", async () => {
  await run("/bike add name:Otter kind:classic odometer:12,010 mi");
  const sheet = ofService(await run("/plan sheet at:12,000 mi bike:Otter"));
  expect(sheet).toBeGreaterThan(20);
  const asked = await say("12,000 service on Otter at the shop, 380");
  expect(asked.text).toContain(`on Otter: ${sheet} items belong to the 12,000 mi service.`);
  const marked = await press(asked, "Mark all");
  const items = (marked.data.work[0].items as { item: string }[]).map(({ item }) => item);
  expect(items).toEqual(expect.arrayContaining(["engine-oil.replace", "valve-clearance.adjust", "wheel-bearings.inspect"]));
  // Printed at 9,000 and 18,000.
  expect(items).not.toContain("air-filter.replace");
  // Done, it is on no sheet any more, and what comes next is named.
  const after = await run("/plan sheet at:12,000 mi bike:Otter");
  expect(after.data.items).toBe(0);
  expect(after.text).toContain("The service nearest to it: 13,500 mi.");
});

test("told by where it was done, it is the service nearest to that; told by nothing, it is asked which, nearest first", async () => {
  await run("/bike add name:Pip kind:small commuter odometer:5,900 km");
  for (const told of ["had Pip serviced at 6,010 km, 210 EUR", "service done by Miller's garage at 6,010 km on Pip, 210 EUR"]) {
    const asked = await say(told);
    expect(asked.text).toMatch(/on Pip: \d+ items belong to the 6,000 km service\./u);
    const marked = await press(asked, "Mark all");
    expect(marked.data.work).toMatchObject([{ dial: 60_100_000_000, note: "not itemised", detail: { cost: { minor: 21_000, currency: "EUR" } } }]);
    expect(marked.data.readings).toMatchObject([{ kind: "odometer", dial: 60_100_000_000 }]);
    await press(marked, "Undo");
  }
  const asked = await say("big service on Pip done yesterday");
  expect(asked.text).toContain("which service of its plan was it?");
  expect(labels(asked).slice(0, 3)).toEqual([
    expect.stringMatching(/^The 6,000 km service/u),
    expect.stringMatching(/^The 3,000 km service/u),
    expect.stringMatching(/^The 9,000 km service/u),
  ]);
  expect((await press(asked, "The 6,000 km service")).data.work).toMatchObject([{ on: { from: "2026-11-25" } }]);
  // One that lies behind was not done today.
  const earlier = await press(await say("annual service on Pip at the dealer, 380 EUR"), "The 3,000 km service");
  expect(earlier.text).toContain("when was that?");
});
