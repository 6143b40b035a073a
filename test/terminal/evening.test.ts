// A wrench evening of a group: only bikes that were brought, what falls due on them, tools and hours, and one list of what to buy.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const ines = { as: "Ines", in: "g1" };
const odo = { as: "Odo", in: "g1" };
const run = (line: string, who: typeof ines = ines) => t.one({ ...who, run: line });

beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
  await run("/bike add name:Heron kind:belt-drive cruiser odometer:9,700 mi", odo);
  await t.send({ ...ines, say: "16,010 mi" });
  await t.send({ ...odo, say: "10,030 mi" });
});
afterEach(() => t.close());

test("nobody's bike is shown before its owner brings it, nor after it is taken out again", async () => {
  expect((await run("/plan evening")).data.bikes).toEqual([]);
  expect((await run("/plan shopping group:yes")).data.bikes).toEqual([]);
  const brought = await run("/bike change group-evening:yes");
  expect(brought.text).toContain("show Heron now: its name, yours, and what falls due on it. Nothing found wrong.");
  const seen = await run("/plan evening share:yes", odo);
  expect(seen.visibility).toBe("shared");
  expect(seen.data.bikes).toMatchObject([{ nickname: "Heron", owner: "Ines" }]);
  // Another group does not see it.
  expect((await t.one({ as: "Tess", in: "g2", run: "/plan evening" })).data.bikes).toEqual([]);
  await run("/bike change group-evening:no");
  expect((await run("/plan evening", odo)).data.bikes).toEqual([]);
});

test("what falls due on each, the hours in all, and which tools every bike wants", async () => {
  await run("/bike change group-evening:yes");
  await run("/bike change group-evening:yes", odo);
  const evening = await run("/plan evening");
  type Bike = { owner: string; minutes: number; items: { item: string; minutes: number | null }[] };
  const bikes: Bike[] = evening.data.bikes;
  expect(bikes.map(({ owner }) => owner)).toEqual(["Ines", "Odo"]);
  for (const bike of bikes) expect(bike.minutes).toBe(bike.items.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0));
  const dues: { item: string; status: string; habit: boolean }[] = (await run("/due")).data.bikes[0].dues;
  const due = dues.filter(({ status, habit }) => !habit && (status === "due" || status === "overdue")).map(({ item }) => item);
  expect(bikes[0]?.items.map(({ item }) => item)).toEqual(expect.arrayContaining(due));
  expect(evening.text).toMatch(/^A wrench evening for what falls due by 26 December: 2 bikes, \d+ items, about \d+ h/u);
  expect(evening.text).toMatch(/Tools for every bike: .*torque wrench/u);
  expect(evening.text).toMatch(/Besides: .*belt tension gauge \(Heron\)/u);
  // What was found wrong is not told.
  await t.send({ ...ines, say: "front brake feels spongy on Heron" });
  expect((await run("/plan evening", odo)).text).not.toContain("spongy");
});

test("a distance ahead is a span for the evening as a day is", async () => {
  for (const who of [ines, odo]) await run("/bike change group-evening:yes", who);
  const evening = await run("/plan evening until:+1,500 mi");
  expect(evening.text).toMatch(/^A wrench evening for what falls due until “\+1,500 mi”: 2 bikes, \d+ items/u);
});

test("one list of what to buy for all of them, each thing once, added up where it is of one kind", async () => {
  for (const who of [ines, odo]) await run("/bike change group-evening:yes", who);
  await run("/spec what:engine oil with filter value:3.2 L source:manual, p. 12");
  await run("/spec what:engine oil with filter value:4 L source:manual, p. 9", odo);
  const before = await run("/plan shopping group:yes");
  expect(before.text).toContain("- Engine oil, 7.2 L in all: Heron (Ines) 3.2 L; Heron (Odo) 4 L");
  expect(before.text).toContain("- Oil filter, 2 in all:");
  await run("/spec what:engine oil grade value:10W-40 source:manual, p. 12");
  await run("/spec what:engine oil grade value:20W-50 source:manual, p. 9", odo);
  // Two grades are two purchases.
  expect((await run("/plan shopping group:yes")).text).toContain("- Engine oil: Heron (Ines) 3.2 L 10W-40; Heron (Odo) 4 L 20W-50");
  expect((await run("/plan shopping")).data.bikes).toHaveLength(1);
});

test("it belongs to a group, and looks ahead", async () => {
  expect((await t.one({ as: "Ines", in: "dm", run: "/plan evening" })).data.bikes ?? []).toEqual([]);
  expect((await run("/plan evening until:yesterday")).data.refused).toMatchObject({ why: "not ahead" });
});
