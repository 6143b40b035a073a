// Work of the past whose day nobody knows: its figure is kept, nothing is counted from a day that was never said, and all of it is told back.

import { readFile } from "node:fs/promises";
import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const say = (text: string) => t.one({ ...dm, say: text });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const MILE = 16_093_440;
type Due = { readonly item: string; readonly status: string; readonly because: { readonly why: string } };
const due = async (item: string): Promise<Due | undefined> => ((await run("/due bike:Heron")).data.bikes[0].dues as Due[]).find((each) => each.item === item);
const lineOf = async (name: string): Promise<string> =>
  ((await run("/due bike:Heron")).text ?? "").split("\n").find((line: string) => line.includes(name)) ?? "";

let form: Shown["actions"][number] | undefined;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  const added = await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  form = added.actions.find(({ label }) => label === "Fill in what you know");
});
afterEach(() => t.close());

test("an answer that has only a figure keeps it; by date it cannot tell, and says the latest day", async () => {
  const filled = await t.one({
    ...dm,
    fill: form?.id,
    fields: { "engine-oil.replace": "at 12,000", "brake-fluid.replace": "before I bought it", "coolant.replace": "at 15,000" },
  });
  expect(filled.text).toContain("Recorded: Engine oil and filter (some day up to 25 November 2026) and Brake fluid (some day up to 25 November 2026).");
  // Beyond the dial as it stands.
  expect(filled.text).toContain("I could not read “at 15,000” for Coolant.");
  const [oil] = (await run("/records bike:Heron item:oil and filter")).data.bikes[0].work;
  expect(oil).toMatchObject({ dial: 12_000 * MILE, on: { to: "2026-11-25" } });
  expect(await due("engine-oil.replace")).toMatchObject({ status: "good" });
  expect(await lineOf("Engine oil and filter")).toContain(
    "last done at 12,000 mi; 1,790 mi to go; by date it cannot tell, since the day then is not known: 25 November 2027 at the latest",
  );
  expect(await due("brake-fluid.replace")).toMatchObject({ status: "no record", because: { why: "undated" } });
  expect((await run("/due bike:Heron")).text).toContain(
    "Last done some day up to 25 November; due on 25 November 2028 at the latest, or record it with its day",
  );
  // The table has no day where none is known.
  const [file] = (await run("/records bike:Heron")).files;
  expect(await readFile(file?.path ?? "", "utf8")).toMatch(/^Heron,,2026-11-25,12.?000,mi,Engine oil and filter,/mu);
});

test("at the latest day on which it can fall due, it is due", async () => {
  await t.one({ ...dm, fill: form?.id, fields: { "brake-fluid.replace": "before I bought it" } });
  await t.send({ advance: "P731D", asleep: true });
  expect((await due("brake-fluid.replace"))?.status).toMatch(/due/u);
});

test("work at a figure that lies behind is asked about, and one press keeps the figure", async () => {
  const asked = await say("new chain on Heron at 9,000 mi");
  expect(asked.text).toContain("is below what the dial showed before");
  const kept = await press(asked, "It was done back then, at that figure");
  expect(kept.text).toContain("done some day up to 25 November 2026 at 9,000 mi. Recorded.");
  expect(kept.data.readings).toEqual([]);
  // A day that was said is not thrown away for it.
  const dated = await say("new battery at 9,000 mi yesterday");
  expect(dated.actions.map(({ label }) => label)).not.toContain("It was done back then, at that figure");
});

test("between two readings the day is what they leave open", async () => {
  await t.send({ advance: "P30D", asleep: true });
  await say("14,900 mi");
  const kept = await press(await say("new air filter at 14,500 mi"), "It was done back then, at that figure");
  expect(kept.data.work).toMatchObject([{ on: { from: "2026-11-25", to: "2026-12-25" }, dial: 14_500 * MILE }]);
});

test("what was done before it was theirs is no work of today; a figure beyond the dial is asked about on a vague day too", async () => {
  expect((await say("new battery before I bought it")).data.work).toMatchObject([{ on: { from: "0001-01-01" }, dial: null }]);
  expect((await say("oil changed at 15,000, last spring")).text).toContain("is above what the dial showed later");
});

test("how far a part has run is no work on it, and the brakes are their fluid or their pads", async () => {
  await say("front tyre has done 2,000 mi");
  expect((await run("/records bike:Heron")).data.bikes[0].work).toEqual([]);
  const asked = await say("did the brakes last year");
  expect(asked.actions.map(({ label }) => label)).toEqual(expect.arrayContaining(["Brake fluid", "Front brake pads", "Rear brake pads"]));
  expect((await say("bled the brakes on Sunday")).data.work).toMatchObject([{ items: [{ item: "brake-fluid.replace" }] }]);
});
