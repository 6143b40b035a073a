// The first message of someone who has no bike yet, and a word that could answer several questions.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk();
});
afterEach(() => t.close());

const add = (shown: Shown, label: string, kind: string) => {
  const action = shown.actions.find((each) => each.label === label) as unknown as { id: string; fields: readonly { name: string; value: string | null }[] };
  const filled = Object.fromEntries(action.fields.map(({ name, value }) => [name, value ?? kind]));
  return t.one({ as: "Ines", in: "dm", fill: action.id, fields: filled });
};

test.each(["g1", "dm"])("two bikes told in one message are added with a press each: %s", async (where) => {
  const said = await t.one({ as: "Ines", in: where, say: "two bikes, Heron 14,820 mi, Bramble 41,950 km" });
  expect(said.text).toContain("Add each of these with a press.");
  expect(said.actions.map(({ label }) => label)).toEqual(["Add Heron", "Add Bramble"]);
  await add(said, "Add Heron", "chain-drive twin");
  await add(said, "Add Bramble", "dual-purpose single");
  const { bikes } = (await t.one({ as: "Ines", run: "/reading" })).data;
  expect(bikes.map(({ nickname, readings }: { nickname: string; readings: { typed: string }[] }) => [nickname, readings[0]?.typed])).toEqual([
    ["Heron", "14,820 mi"],
    ["Bramble", "41,950 km"],
  ]);
});

test.each([
  ["Ash, Birch", "14,000 mi, 9,000 km", ["14,000 mi", "9,000 km"]],
  ["Ash / Birch", "14,000 mi", [null, null]],
] as const)("two names in one field are two bikes, with questions of their own: %s", async (name, odometer, figures) => {
  const said = await t.one({ as: "Ines", in: "dm", run: `/bike add name:${name} kind:chain-drive twin odometer:${odometer}` });
  expect(said.text).toContain("Ash and Birch are 2 bikes, and nothing is added yet.");
  expect(said.actions.map(({ label }) => label)).toEqual(["Add Ash", "Add Birch"]);
  const fields = said.actions.map((each) => each.fields?.map(({ value }) => value));
  expect(fields).toEqual([
    ["Ash", "chain-drive twin", figures[0]],
    ["Birch", "chain-drive twin", figures[1]],
  ]);
  expect((await t.one({ as: "Ines", in: "dm", run: "/bike list" })).text).not.toContain("Ash");
  const ash = await t.one({ as: "Ines", in: "dm", fill: said.actions[0]?.id, fields: { name: "Ash", kind: "chain-drive twin", odometer: "14,000 mi" } });
  expect(ash.text).toContain("What was done last, and how do you know?");
  await t.one({ as: "Ines", in: "dm", fill: said.actions[1]?.id, fields: { name: "Birch", kind: "scooter", odometer: "9,000 km" } });
  const list = (await t.one({ as: "Ines", in: "dm", run: "/bike list" })).text;
  expect(list).toContain("Ash");
  expect(list).toContain("Birch");
});

test("a name with an and in it can be one", async () => {
  const said = await t.one({ as: "Ines", in: "dm", run: "/bike add name:Salt and Pepper kind:chain-drive twin odometer:14,000 mi" });
  expect(said.actions.map(({ label }) => label)).toEqual(["Add Salt", "Add Pepper", "One bike called Salt and Pepper"]);
  await add(said, "One bike called Salt and Pepper", "chain-drive twin");
  expect((await t.one({ as: "Ines", in: "dm", run: "/bike list" })).text).toContain("Salt and Pepper");
});

test("a town and a town are no bikes; one bike is led on as ever", async () => {
  expect(await t.send({ as: "Ines", in: "g1", say: "Berlin 300 km, Paris 900 km" })).toEqual([]);
  const said = await t.one({ as: "Ines", in: "g1", say: "14,820 mi on Heron" });
  expect(said.actions.map(({ label }) => label)).toEqual(["Add your first bike"]);
  expect(said.data.seen).toEqual([{ name: "Heron", odometer: "14,820 mi" }]);
});

test("a word that could answer several questions says so, and a reply to one of them answers it", async () => {
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ as: "Ines", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" });
  await t.one({ as: "Ines", in: "dm", say: "33 psi front" });
  await t.one({ as: "Ines", in: "dm", say: "chain lubed yesterday", id: "second" });
  const said = await t.one({ as: "Ines", in: "dm", say: "heron" });
  expect(said.text).toContain("That could answer 2 of my questions.");
  expect(said.react).toBe("asked");
  const answered = await t.one({ as: "Ines", in: "dm", say: "heron", reply: "second" });
  expect(answered.data.work).toMatchObject([{ items: [{ item: "chain.lubricate" }] }]);
  // One is left, so the word is enough.
  expect((await t.one({ as: "Ines", in: "dm", say: "heron" })).data.logged).toMatchObject([{ kind: "cold pressure", nickname: "Heron" }]);
});
