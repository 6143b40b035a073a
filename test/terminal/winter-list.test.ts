// The winter's list of a bike of which nothing says how far it is ridden: it says so, and takes the next service in where that is near.

import { afterEach, expect, test } from "vitest";
import { type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const begun = async (odometer: string): Promise<void> => {
  t = await talk("2026-11-26T09:00:00Z");
  await run(`/bike add name:Heron kind:chain-drive twin odometer:${odometer}`);
};
const itemsOf = (shown: Shown): string[] =>
  (shown.data.evenings as { steps: { item?: string }[] }[]).flatMap(({ steps }) => steps.flatMap(({ item }) => (item === undefined ? [] : [item]))).sort();
const MILE = 16_093_440;

test("a service 500 mi away is in, marked as such, and the list has what it has with a rate", async () => {
  await begun("23,500 mi");
  const blind = await run("/plan sheet until:midsummer");
  expect(blind.text).toContain(
    "By date alone: nothing says yet how far it will have gone by then. Near enough to be done with it, and counted in: the 24,000 mi service, 500 mi away.",
  );
  expect(blind.text).toContain("/bike change yearly:3,000 mi");
  expect(blind.text).toContain("Engine oil and filter (45 min, upright, of the next service)");
  expect(blind.data.blind).toEqual({ until: "day", next: { mark: 24_000 * MILE, away: 500 * MILE, counted: true } });
  const bought = await run("/plan shopping until:midsummer");
  expect(bought.text).toContain("Heron: by date alone: nothing says yet how far it will have gone by then.");
  expect(bought.text).toMatch(/of the next service, near enough to do together: [^\n]*valve clearance/u);
  expect((bought.data.wanted as { what: string }[]).map(({ what }) => what)).toEqual(expect.arrayContaining(["air filter", "spark plug", "oil filter"]));
  // What the list begins is what it showed.
  const job = await t.one({ ...dm, press: blind.actions.find(({ label }) => label.startsWith("Begin"))?.id ?? "" });
  expect((job.data.lines as { item: string }[]).map(({ item }) => item).sort()).toEqual(itemsOf(blind));
  await run("/bike change yearly:4,000 mi");
  const known = await run("/plan sheet until:midsummer");
  expect(known.data.blind).toBeNull();
  expect(known.text).not.toContain("By date alone");
  expect(itemsOf(known)).toEqual(itemsOf(blind));
  expect((await run("/plan shopping until:midsummer")).data.blind).toEqual([]);
});

test("a service farther off is named and left out: neither list looks complete", async () => {
  await begun("22,900 mi");
  const blind = await run("/plan sheet until:midsummer");
  expect(blind.text).toContain("so what falls due by distance is left out, first of all the 24,000 mi service, 1,100 mi away.");
  expect(itemsOf(blind)).not.toContain("valve-clearance.adjust");
  const bought = await run("/plan shopping until:midsummer");
  expect(bought.text).toContain("Heron: by date alone: nothing says yet how far it will have gone by then, so what falls due by distance is left out");
  expect(bought.text).not.toContain("of the next service");
});

test("until a figure on the dial it is the dates that nobody can place", async () => {
  await begun("23,500 mi");
  expect((await run("/plan sheet until:24,500 mi")).text).toContain("Nothing says when that comes, so what falls due by date is left out");
  expect((await run("/plan shopping until:+500 mi")).text).toContain("Heron: nothing says when that comes");
});
