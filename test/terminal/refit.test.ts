// Parts that come off and go on again, as a member tells of them.

import { afterEach, expect, test } from "vitest";
import { button, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });
const say = (text: string) => t.one({ as: "Ines", in: "dm", say: text });

test("tyres that are kept as sets go back on as sets: whoever names one here is told where", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  const both = await run("/bike refit part:tyres at:10,000 mi");
  expect(both.data.refused).toMatchObject({ why: "tyres" });
  expect(both.text).toContain("/bike tyres set:off-road off:road at:15,200 mi");
  expect((await run("/bike refit part:front tire at:10,000 mi")).text).toContain("No other front tyre is on record for Heron");
  await run("/bike tyres set:off-road off:road at:10,100 mi");
  for (const part of ["rear tyre", "back tyre", "front tire"])
    expect((await run(`/bike refit part:${part} at:10,200 mi`)).data.refused, part).toMatchObject({ why: "tyres" });
  expect((await say("put the old rear tyre back at 10,200")).react).toBe("asked");
});

test("a single tyre put back keeps its distance, its depth and its age, and the axle is looked at again", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,000 mi");
  await say("rear tread 3.0 mm");
  await t.send({ advance: "P30D", asleep: true });
  await say("new rear tyre 3725 at 14,500");
  await t.send({ advance: "P10D", asleep: true });
  await say("rear tread 7.5 mm at 14,700");
  await t.send({ advance: "PT1H", asleep: true });
  const back = await say("put the old rear tyre back at 14,820");
  expect(back.react).toBe("logged");
  expect(back.text).toContain("Rear tyre put back on: the one it came with");
  const parts = await run("/bike parts");
  expect(parts.text).toMatch(/- Rear tyre \(the one it came with\): back on since .*, 500 mi on it in all while it was yours/u);
  expect(parts.text).toContain("Lies by: the one made 3725, 320 mi on it.");
  // What was read of it before counts again, and of that day what was read an hour before was of the other. The week and year are those of the other.
  const shown = (await run("/tyre show")).text;
  expect(shown).toContain("Rear tread depth 3 mm: within");
  expect(shown).not.toContain("7.5 mm");
  expect(shown).not.toContain("week 37");
  const due = (await run("/due")).text;
  expect(due).toContain("Rear axle nut: look again at 14,870 mi");
  expect((await t.one({ as: "Ines", in: "dm", press: button(back, "Undo") })).text).toContain("Undone for Heron");
  expect((await run("/tyre show")).text).toContain("week 37 of 2025");
  // One that came off and one word for it: nothing to ask.
  expect((await run("/bike refit part:rear tyre at:14,830 mi")).text).toContain("Rear tyre put back on: the one it came with");
  expect((await say("refitted the 3725 rear tyre at 14,900")).text).toContain("Rear tyre put back on: the one made 3725");
  expect((await run("/tyre show")).text).toContain("week 37 of 2025");
});

test.each([
  ["refitted the old rear tyre at 14,820", "Rear tyre put back on"],
  ["re-fitted the old rear tyre at 14,820", "Rear tyre put back on"],
  ["old rear tyre back on at 14,820", "Rear tyre put back on"],
  // Of that end nothing else ever came off.
  ["old rear back on at 14,820", "Rear tyre put back on"],
  ["put the old front back on at 14,820", "Front brake pads put back on"],
  // Only the rear one ever came off.
  ["put the old tyre back at 14,820", "Rear tyre put back on"],
  ["took the rear tyre off and put the old one back at 14,820", "Rear tyre put back on"],
  ["old front pads back in at 14,820", "Front brake pads put back on"],
  ["remounted the old pads at 14,820", "Front brake pads put back on"],
  ["refitted the old chain at 14,820", "Chain and sprockets put back on"],
])("“%s” is done, and said so", async (text, told) => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,000 mi");
  await t.send({ advance: "P30D", asleep: true });
  await say("new rear tyre and new chain and sprockets at 14,500");
  await say("new front pads at 14,500");
  const back = await say(text);
  expect([back.react, back.text]).toEqual(["logged", expect.stringContaining(told)]);
  expect(button(back, "Undo")).toBeDefined();
});

test.each(["took the rear tyre off, new one on at 14,900, 4425", "rear tyre off, new one on at 14,900, 4425"])(
  "“%s”: the four digits are the new tyre's week and year",
  async (text) => {
    t = await talk("2026-05-27T10:00:00Z");
    await run("/bike add name:Heron kind:chain-drive twin odometer:14,000 mi");
    const said = await say(text);
    expect(said.text).toContain("New rear tyre, done today at 14,900 mi, with rear tyre made in week 44 of 2025.");
    expect(said.data.readings.map(({ typed }: { typed: string }) => typed)).toEqual(["14,900"]);
    expect((await run("/tyre show")).text).toContain("week 44 of 2025");
  },
);

test("what leaves open what went back is asked: a sprocket of a kit, a tyre of which none came off, one of several", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,000 mi");
  await t.send({ advance: "P30D", asleep: true });
  expect((await say("old front tyre back on at 14,100")).actions[0]?.label).toBe("New front tyre");
  const end = await say("old rear back on at 14,100");
  expect(end.actions.slice(0, 3).map(({ label }) => label)).toEqual(["New rear tyre", "Rear brake pads", "Rear brake disc"]);
  expect((await say("old front pads back in at 14,100")).actions[0]?.label).toBe("Front brake pads, replaced");
  await say("new chain and sprockets at 14,500");
  const sprockets = await say("refitted the old sprockets at 14,820");
  expect([sprockets.react, sprockets.actions[0]?.label]).toEqual(["asked", "Chain and sprockets put back on: the one it came with"]);
  await say("new rear tyre 3725 at 14,830");
  await say("new rear tyre 0126 at 14,900");
  const tyre = await say("put the old rear tyre back at 15,000");
  expect(tyre.actions.map(({ label }: { label: string }) => label)).toEqual(
    expect.arrayContaining(["Rear tyre put back on: the one it came with", "Rear tyre put back on: the one made 3725"]),
  );
  expect((await run("/bike parts")).text).not.toContain("back on since");
});

test("a tyre known from before the bike came is the one that it came with", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,000 mi");
  await run("/work did:rear tyre outcome:replaced on:3 May 2024 at:9,000 mi");
  await t.send({ advance: "P30D", asleep: true });
  await say("new rear tyre at 14,500");
  await t.send({ advance: "P3D", asleep: true });
  expect((await say("put the old rear tyre back at 14,820")).text).toContain("put back on: the one first fitted on 3 May 2024");
  // From 9,000 to 14,500.
  expect((await run("/bike parts")).text).toContain("5,500 mi on it in all");
});

test("an outcome of two halves is typed by either", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  for (const outcome of ["within limits", "inspected, within limits", "In limits"])
    expect((await run(`/work did:steering head outcome:${outcome}`)).data.refused, outcome).toBeUndefined();
});

test("a chain and a battery put back keep what they had, in words and in what is due", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  await t.send({ advance: "P30D", asleep: true });
  expect((await say("took the old chain off at 12,000, new one on")).text).toContain("Heron: New chain and sprockets, done today at 12,000 mi.");
  await say("new battery at 12,100");
  await t.send({ advance: "P30D", asleep: true });
  const back = await say("put the old battery back at 14,500");
  expect(back.text).toContain("Battery put back on: the one it came with");
  await t.send({ advance: "P10D", asleep: true });
  const both = await say("took the chain off and put the old one back at 15,000 and lubed the chain");
  expect(both.text).toContain("Chain and sprockets put back on: the one it came with");
  expect(both.text).toContain("Chain lubrication");
  await say("15,300");
  const parts = await run("/bike parts");
  // On from 10,000 to 12,000 and since 15,000; the other from 12,000 to 15,000.
  expect(parts.text).toMatch(/- Chain and sprockets \(the one it came with\): back on since .*, 2,300 mi on it in all while it was yours/u);
  expect(parts.text).toContain("Lies by: the one first fitted on 26 June 2026, 3,000 mi on it.");
  expect(parts.text).toMatch(/- Battery \(the one it came with\): .*, 2,900 mi on it in all/u);
  // Its 18,000 mi run from 10,000, and 3,000 of the road since were on the other.
  expect((await run("/due")).text).toContain("new chain and sprockets at 31,000 mi");
  expect((await t.one({ as: "Ines", in: "dm", press: button(back, "Undo") })).text).toContain("Undone for Heron");
  expect((await run("/bike parts")).text).toMatch(/- Battery: since 26 June, 3,200 mi on it/u);
});

test("where it is not clear which one went on, it is asked, and nothing is saved before", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  expect((await run("/bike refit part:battery at:10,100 mi")).text).toContain("No other battery is on record for Heron");
  // By message it is asked what was done instead: a figure beside it is not taken for all of it.
  const unknown = await say("put the old chain back on at 10,050 mi");
  expect([unknown.react, unknown.actions[0]?.label]).toEqual(["asked", "New chain and sprockets"]);
  expect((await t.one({ as: "Ines", in: "dm", press: button(unknown, "Let it go") })).text).not.toContain("Recorded");
  await t.send({ advance: "P30D", asleep: true });
  await run("/work did:battery outcome:replaced at:11,000 mi with:Kestrel K12 battery");
  await t.send({ advance: "P30D", asleep: true });
  await run("/work did:battery outcome:replaced at:12,000 mi");
  const asked = await say("put the old battery back at 12,400");
  expect(asked.data.is).toBe("asked");
  const labels = asked.actions.flatMap((each: { label: string; options?: readonly { label: string }[] }) => [
    each.label,
    ...(each.options ?? []).map(({ label }) => label),
  ]);
  expect(labels.join("\n")).toContain("Battery put back on: the one it came with");
  expect((await run("/bike parts")).text).not.toContain("back on since");
  // Without "put", only an old one is meant: anything may be back in.
  expect((await say("old battery back in")).data.asked).toMatchObject([{ need: "item" }]);
  expect((await say("back in the dry, battery 12.6 V rested")).react).toBe("logged");
  expect((await say("put the kestrel k12 battery back at 12,500")).text).toContain("put back on: Kestrel K12");
  expect((await run("/bike refit part:battery at:12,600 mi piece:the original")).text).toContain("put back on: the one it came with");
});

test("pads put back are looked at after the first ride like new ones, and the back of a name is no way back", async () => {
  t = await talk("2026-05-27T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  await t.send({ advance: "P30D", asleep: true });
  await say("fitted new front pads at 11,000");
  await t.send({ advance: "P30D", asleep: true });
  expect((await say("fitted new back pads at 12,000")).text).toContain("ear brake pads");
  expect((await say("put the old front pads back at 12,000")).text).toContain("Front brake pads put back on");
  expect((await run("/due")).text).toContain("New front pads or shoes, bedded in");
});
