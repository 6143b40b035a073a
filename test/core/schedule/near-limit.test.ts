// When what was read near its limit is looked at again: by its wear line, else soon, and never by all that the plan leaves.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { riddenOf } from "../../../src/core/quantity/distance.ts";
import type { Facts, Leg, SoonAgain, Verdict } from "../../../src/core/schedule/facts.ts";
import { lookAgainAt } from "../../../src/core/schedule/look-again.ts";
import { soonAgain } from "../../../src/trade/near-limit.ts";
import { aJob, anItem, every, facts, moment, only } from "./builders.ts";

const KEY = "front-pads.measure";
const near = (again: SoonAgain, on = "2026-11-01"): Verdict => ({ item: KEY as ItemKey, on: localDate(on), is: "near limit", reading: "r1", again });
const SOON = soonAgain("pad thickness");

/** Measured every 6,000 mi, last on 1 November at 14,000 mi. */
const bike = (again: SoonAgain, over: Partial<Facts> = {}): Facts =>
  facts([anItem({ key: KEY, action: "measure", parked: "pauses", anchor: "last done", repeat: { by: "interval", every: every(6000, 24) } })], {
    jobs: [aJob(KEY, "2026-11-01", 14_000)],
    verdicts: [near(again)],
    odometer: { points: [{ on: localDate("2026-11-01"), ridden: riddenOf(14_000, "mi") }], epochs: [] } as unknown as Facts["odometer"],
    ...over,
  });

function standing(f: Facts, today: string, at: number) {
  const due = only(f, moment(today, at), KEY);
  const leg = due.legs.find((each): each is Extract<Leg, { by: "verdict" }> => each.by === "verdict");
  return { status: due.status, again: leg?.again ?? null };
}

describe("without a wear line", () => {
  // Common practice: every tank or two, and each month.
  test("after 500 mi or 30 days, whichever comes first: 14,500 mi or 1 December", () => {
    const again = { at: riddenOf(14_500, "mi"), on: "2026-12-01", by: "practice" };
    expect(standing(bike(SOON), "2026-11-30", 14_499)).toMatchObject({ status: "soon", again: { ...again, come: false } });
    expect(standing(bike(SOON), "2026-11-30", 14_500)).toMatchObject({ status: "due", again: { ...again, come: true } });
    expect(standing(bike(SOON), "2026-12-01", 14_100)).toMatchObject({ status: "due", again: { ...again, come: true } });
  });
  test("what moves slowly after half of what the plan asks: 3,000 mi or a year", () => {
    expect(standing(bike(soonAgain("valve clearance")), "2026-11-30", 14_100)).toMatchObject({
      status: "soon",
      again: { at: riddenOf(17_000, "mi"), on: "2027-11-01", by: "plan" },
    });
  });
  test("a battery by the day alone", () => {
    expect(standing(bike(soonAgain("battery voltage")), "2026-11-02", 14_100).again).toMatchObject({ at: null, on: "2026-11-15" });
  });
  test("the day moves on while the bike is laid up, and is looked forward to else", () => {
    const laidUp = bike(SOON, { layUps: [{ from: localDate("2026-11-11"), to: localDate("2026-12-11") }] });
    expect(standing(laidUp, "2026-12-20", 14_000).again?.on).toBe("2026-12-31");
    expect(lookAgainAt(bike(SOON), moment("2026-11-10", 14_000))).toBe("2026-12-01");
  });
  test("a new chain is not due because the old one is to be measured again", () => {
    const item = anItem({ key: KEY, action: "replace", anchor: "last done", repeat: { by: "interval", every: every(18_000, null) } });
    expect(standing(facts([item], { verdicts: [near(SOON)], odometer: bike(SOON).odometer }), "2026-12-20", 14_000)).toMatchObject({
      status: "soon",
      again: { come: true },
    });
  });
});

describe("by its wear line", () => {
  const worn = (low: number, likely: number): Facts =>
    bike(SOON, {
      wearing: [
        {
          ...{ item: KEY as ItemKey, since: "first", on: localDate("2026-11-01") },
          reaches: { low: riddenOf(low, "mi"), likely: riddenOf(likely, "mi"), high: null },
        },
      ],
    });
  test("where nine times in ten it has not reached its limit yet, and not as soon as it was read", () => {
    expect(standing(worn(15_100, 16_000), "2026-11-30", 14_100).again).toMatchObject({ at: riddenOf(15_100, "mi"), on: null, by: "wear" });
    expect(standing(worn(13_900, 16_000), "2026-11-30", 14_000).again?.at).toBe(riddenOf(14_125, "mi"));
    expect(standing(worn(13_900, 14_050), "2026-11-30", 14_000).again?.at).toBe(riddenOf(14_050, "mi"));
  });
  test("never later than where it likely reaches the limit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 14_001, max: 20_000 }), fc.integer({ min: 0, max: 6000 }), (likely, before) => {
        const at = standing(worn(likely - before, likely), "2026-11-30", 14_000).again?.at ?? Number.POSITIVE_INFINITY;
        return at > riddenOf(14_000, "mi") && at <= riddenOf(likely, "mi");
      }),
    );
  });
});
