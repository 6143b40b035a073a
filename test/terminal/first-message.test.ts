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
