// A road and an off-road set swapped back and forth keep their own distance.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { figureIn, type Ridden, riddenOf } from "../../../src/core/quantity/distance.ts";
import type { Fitting, Job } from "../../../src/core/schedule/facts.ts";
import { tyreSets } from "../../../src/core/schedule/tyre-sets.ts";
import { aJob, anItem, dueMiles, every, facts, moment, only } from "./builders.ts";

const TREAD = "rear-tread.measure";
const tread = anItem({ key: TREAD, anchor: "last done", repeat: { by: "interval", every: every(2000, null) } });
const fitting = (set: string, on: string, at: number | null): Fitting => ({ set, on: localDate(on), ridden: at === null ? null : riddenOf(at, "mi") });
/** Road tyres from the beginning, off-road from 5,000 to 6,200 mi, and so on. */
const SWAPS = [
  fitting("road", "2025-01-01", null),
  fitting("off-road", "2025-06-01", 5000),
  fitting("road", "2025-09-01", 6200),
  fitting("off-road", "2026-05-01", 8000),
  fitting("road", "2026-06-01", 8300),
];
const withJobs = (jobs: readonly Job[], fittings: readonly Fitting[] = SWAPS, items = [tread]) =>
  facts(items, { jobs, fittings, ofTyres: new Set([TREAD as ItemKey]) });
const at = moment("2026-07-01", 9000);

describe("sets of tyres", () => {
  test("each set has what was ridden on it", () => {
    const sets = tyreSets(SWAPS, riddenOf(0, "mi"), riddenOf(9000, "mi"));
    expect(sets.map(({ set, ridden, fitted }) => [set, figureIn(ridden as number as Ridden, "mi"), fitted])).toEqual([
      ["road", 5000 + 1800 + 700, true],
      ["off-road", 1200 + 300, false],
    ]);
  });

  test("what is due on the set that is on counts only what was ridden on it", () => {
    // Measured at 4,500 on the road set: 500 to the swap, 1,800 between, so 300 short of 2,000 when it comes off again; 0 of the 300 off-road count.
    const due = only(withJobs([aJob(TREAD, "2025-05-01", 4500)]), at, TREAD);
    expect(dueMiles(due)).toBe(4500 + 2000 + 1200 + 300);
    expect(due.legs[0]).toMatchObject({ anchor: { from: "job", off: riddenOf(1500, "mi") } });
  });

  test("what was done to the other set does not count for this one", () => {
    const road = aJob(TREAD, "2025-05-01", 4500);
    const both = [road, aJob(TREAD, "2026-05-10", 8100)];
    expect(dueMiles(only(withJobs(both), at, TREAD))).toBe(dueMiles(only(withJobs([road]), at, TREAD)));
    // With the off-road set on, it is the other way about.
    const onOffRoad = withJobs(both, SWAPS.slice(0, 4));
    expect(dueMiles(only(onOffRoad, moment("2026-05-20", 8200), TREAD))).toBe(8100 + 2000);
  });

  test("measured on the day of a swap, it was the set that was put on", () => {
    expect(dueMiles(only(withJobs([aJob(TREAD, "2026-06-01", 8300)]), at, TREAD))).toBe(10_300);
  });

  test("of a set on which nothing is recorded, what is known begins where it was first fitted", () => {
    const due = only(withJobs([aJob(TREAD, "2025-05-01", 4500)], SWAPS.slice(0, 4)), moment("2026-05-20", 8200), TREAD);
    // First fitted at 5,000; 1,800 on road tyres since.
    expect([due.status, dueMiles(due)]).toEqual(["no record", 5000 + 1800 + 2000]);
  });

  test("what is none of the tyres' goes by the whole distance", () => {
    const oil = anItem({ anchor: "last done", repeat: { by: "interval", every: every(4000, null) } });
    expect(dueMiles(only(withJobs([aJob("oil.replace", "2025-05-01", 4500)], SWAPS, [oil]), at))).toBe(8500);
  });

  test("the distances of all sets add up to the bike's, however they were swapped", () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ set: fc.constantFrom("road", "off-road", "winter"), gap: fc.integer({ min: 0, max: 3000 }) }), { maxLength: 12 }),
        fc.integer({ min: 0, max: 2000 }),
        (swaps, rest) => {
          let ridden = 1000;
          const fittings = [{ set: "road", gap: 0 }, ...swaps].map(({ set, gap }, n) => {
            ridden += gap;
            return fitting(set, addDays(localDate("2025-01-01"), n), n === 0 ? null : ridden);
          });
          const end = riddenOf(ridden + rest, "mi");
          const total = tyreSets(fittings, riddenOf(1000, "mi"), end).reduce((sum, each) => sum + each.ridden, 0);
          expect(total).toBe(end - riddenOf(1000, "mi"));
        },
      ),
    );
  });
});
