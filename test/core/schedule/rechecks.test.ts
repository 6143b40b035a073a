// Looks again after work: each rule of the table, at its edges, with the owner's own distance, and gone once looked at.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import type { PlanEdit } from "../../../src/core/plan/plan.ts";
import { riddenOf } from "../../../src/core/quantity/distance.ts";
import type { Outcome } from "../../../src/core/schedule/facts.ts";
import { ownRules, type RecheckRule, rechecksOf } from "../../../src/core/schedule/rechecks.ts";
import { buildTrack } from "../../../src/core/usage/track.ts";
import { RECHECK_RULES } from "../../../src/trade/rechecks.ts";
import { STANDARD_ITEMS } from "../../../src/trade/standard-items.ts";
import { ENGLISH_RECHECKS } from "../../../src/words/en/rechecks.ts";
import { aJob, every } from "./builders.ts";

const track = buildTrack([], []);
const open = (jobs: Parameters<typeof rechecksOf>[1], upTo: number, edits: readonly PlanEdit[] = []) =>
  rechecksOf(ownRules(RECHECK_RULES, edits), jobs, track, "mi", riddenOf(upTo, "mi"));
/** Of the new chain's slack alone: its axle is looked at again too. */
const ofChain = (...asked: Parameters<typeof open>) => open(...asked).filter(({ item }) => item === "new-chain.look-again");
const chain = (at: number | null, on = "2026-05-01") => aJob("chain.replace", on, at, { outcome: "replaced" });
const look = (at: number | null, on: string, outcome: Outcome = "adjusted") => aJob("new-chain.look-again", on, at, { outcome });

describe.each(RECHECK_RULES.map((rule): [string, RecheckRule] => [rule.item.key, rule]))("%s", (key, rule) => {
  test("follows work that the catalogue knows, in both columns, and says why", () => {
    expect(Object.keys(ENGLISH_RECHECKS)).toContain(key);
    for (const { item } of rule.after) expect(Object.keys(STANDARD_ITEMS)).toContain(item);
    const { miles, km } = rule.distance;
    expect((km ?? 0) / (miles ?? 1)).toBeGreaterThanOrEqual(1.45);
    expect((km ?? 0) / (miles ?? 1)).toBeLessThanOrEqual(1.75);
  });
  test.each(rule.after.flatMap(({ item, outcomes }) => outcomes.map((outcome) => ({ item, outcome }))))("after $item, $outcome", ({ item, outcome }) => {
    const those = open([aJob(item, "2026-05-01", 10_000, { outcome })], 10_000).filter((recheck) => recheck.item === key);
    expect(those.map(({ dueAt }) => dueAt)).toEqual([riddenOf(10_000 + (rule.distance.miles ?? 0), "mi")]);
  });
});

test("what was only inspected, and what could not be done, asks for nothing", () => {
  for (const item of ["chain.replace", "front-pads.measure", "spokes.check", "throttle-cable.adjust"])
    for (const outcome of ["inspected, within limits", "could not do"] as const)
      expect(open([aJob(item, "2026-05-01", 10_000, { outcome })], 10_000)).toEqual([]);
  // A cable adjusted is not a new one.
  expect(open([aJob("throttle-cable.adjust", "2026-05-01", 10_000, { outcome: "adjusted" })], 10_000)).toEqual([]);
});

test("a look on a later day or further on closes it; one that could not be done does not; a new chain asks anew", () => {
  expect(ofChain([chain(10_000), look(10_310, "2026-05-20")], 10_400)).toEqual([]);
  expect(ofChain([chain(10_000), look(null, "2026-05-01")], 10_000)).toEqual([]);
  expect(ofChain([chain(10_000), look(10_000, "2026-05-01")], 10_000)).toHaveLength(1);
  expect(ofChain([chain(10_000), look(10_310, "2026-05-20", "could not do")], 10_400)).toHaveLength(1);
  expect(ofChain([chain(10_000), look(10_310, "2026-05-20"), chain(30_000, "2028-05-01")], 30_000)).toMatchObject([{ dueAt: riddenOf(30_300, "mi") }]);
});

// Common practice: the axle is loosened to set a chain or a belt, and moves until it has been ridden.
test("a new chain and a new belt ask for the rear axle as a new tyre does, once", () => {
  for (const item of ["chain.replace", "drive-belt.replace", "rear-tyre.replace"]) {
    const done = aJob(item, "2026-05-01", 10_000, { outcome: "replaced" });
    expect(open([done], 10_000).find((recheck) => recheck.item === "rear-axle.look-again")?.dueAt).toBe(riddenOf(10_050, "mi"));
  }
  const both = open([chain(10_000), aJob("rear-tyre.replace", "2026-05-01", 10_000, { outcome: "replaced" })], 10_000);
  expect(both.map(({ item }) => item).toSorted()).toEqual(["new-chain.look-again", "rear-axle.look-again"]);
});

test("it lapses 1,000 mi beyond its point, to the mile", () => {
  expect(ofChain([chain(10_000)], 11_299.9)).toHaveLength(1);
  expect(ofChain([chain(10_000)], 11_300)).toEqual([]);
});

test("the owner's distance, dropped and taken back", () => {
  const item = "new-chain.look-again" as ItemKey;
  const edit: PlanEdit = { change: "interval", item, repeat: { by: "interval", every: every(100, null, 160) } };
  expect(ofChain([chain(10_000)], 10_000, [edit])).toMatchObject([{ dueAt: riddenOf(10_100, "mi") }]);
  expect(ofChain([chain(10_000)], 10_000, [edit, { change: "drop", item }])).toEqual([]);
  expect(
    ofChain([chain(10_000)], 10_000, [
      { change: "drop", item },
      { change: "restore", item },
    ]),
  ).toHaveLength(1);
});

test("work without a figure takes the least that the bike can have ridden that day, and nothing where nothing says", () => {
  const read = buildTrack(
    [{ id: "e", from: localDate("2026-01-01"), lastOfOld: null, firstOfNew: 0 as never, unit: "mi", cause: "as bought" }],
    [
      { id: "a", on: localDate("2026-04-01"), order: 1, dial: riddenOf(9800, "mi") as number as never },
      { id: "b", on: localDate("2026-06-01"), order: 2, dial: riddenOf(10_400, "mi") as number as never },
    ],
  );
  const rules = ownRules(RECHECK_RULES, []).filter(({ rule }) => rule.item.key === "new-chain.look-again");
  expect(rechecksOf(rules, [chain(null)], read, "mi", riddenOf(10_000, "mi"))).toMatchObject([{ dueAt: riddenOf(10_100, "mi") }]);
  expect(rechecksOf(rules, [chain(null)], track, "mi", null)).toEqual([]);
});

test("whatever the work and however often it was looked at, one look a rule at most, always ahead of its work and never past its lapse", () => {
  const items = RECHECK_RULES.flatMap(({ after, item }) => [...after.map((each) => each.item), item.key]);
  const job = fc
    .record({
      item: fc.constantFrom(...items),
      at: fc.integer({ min: 0, max: 40_000 }),
      outcome: fc.constantFrom<Outcome>("replaced", "adjusted", "done", "could not do"),
    })
    .map(({ item, at, outcome }) => aJob(item, localDate(`20${20 + Math.floor(at / 4000)}-05-01`), at, { outcome }));
  fc.assert(
    fc.property(fc.array(job, { maxLength: 20 }), fc.integer({ min: 0, max: 50_000 }), (jobs, upTo) => {
      const found = open(jobs, upTo);
      expect(new Set(found.map((recheck) => recheck.item)).size).toBe(found.length);
      for (const recheck of found) {
        expect(recheck.dueAt).toBeGreaterThan(recheck.after);
        expect(riddenOf(upTo, "mi")).toBeLessThan(recheck.dueAt + riddenOf(1000, "mi"));
      }
    }),
    { numRuns: 200 },
  );
});

test("work that looks at the same by the way closes it from half the distance on: the slack of the new chain set, the cable's play, the spokes gone over", () => {
  const slack = (at: number | null, on: string, outcome: Outcome = "adjusted") => aJob("chain.adjust", on, at, { outcome });
  expect(ofChain([chain(10_000), slack(10_150, "2026-05-20")], 10_160)).toEqual([]);
  // Set while the chain went on, or a few miles after: it has not settled yet.
  expect(ofChain([chain(10_000), slack(10_000, "2026-05-01")], 10_160)).toHaveLength(1);
  expect(ofChain([chain(10_000), slack(10_149, "2026-05-20")], 10_160)).toHaveLength(1);
  expect(ofChain([chain(10_000), slack(null, "2026-05-01")], 10_000)).toHaveLength(1);
  expect(ofChain([chain(10_000), slack(10_200, "2026-05-20", "could not do")], 10_260)).toHaveLength(1);
  const trued = aJob("spokes.check", "2026-05-01", 10_000, { outcome: "adjusted" });
  expect(open([trued, aJob("spokes.check", "2026-05-20", 10_100, { outcome: "inspected, within limits" })], 10_110)).toEqual([]);
  // Trued once more is looked at once more.
  expect(open([trued, aJob("spokes.check", "2026-05-20", 10_100, { outcome: "adjusted" })], 10_110)).toMatchObject([{ dueAt: riddenOf(10_250, "mi") }]);
  const cable = aJob("clutch-free-play.adjust", "2026-05-01", 10_000, { outcome: "replaced" });
  expect(open([cable, aJob("clutch-free-play.adjust", "2026-05-20", 10_300, { outcome: "adjusted" })], 10_310)).toEqual([]);
  // Looking at new pads is no bedding in, and an axle has no other look.
  expect(
    open([aJob("front-pads.measure", "2026-05-01", 10_000, { outcome: "replaced" }), aJob("front-pads.measure", "2026-05-20", 10_300)], 10_310),
  ).toHaveLength(1);
});
