// A trip held against the plan and against wear: worked cases, and laws.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import { type Stretch, stretchOf } from "../../../src/core/quantity/distance.ts";
import { lasts } from "../../../src/core/trip/trip.ts";
import { readTrip } from "../../../src/message/read-trip.ts";
import { ENGLISH_VOCABULARY } from "../../../src/words/en/vocabulary.ts";

const mi = (figure: number): Stretch => stretchOf(figure, "mi");

describe("does it last the way, by the low end", () => {
  const left = { low: mi(2000), likely: mi(2400), high: mi(2900) };
  // Worked by hand: 2,000 to 2,900 mi left at the last reading.
  test.each([
    [2800, 0, 1, "not enough"],
    [2400, 0, 1, "not enough"],
    [2001, 0, 1, "not enough"],
    [2000, 0, 1, "enough"],
    [2000, 1, 1, "not enough"],
    // 2,000 mi alone are 1,666 mi when it wears a fifth faster.
    [1666, 0, 1.2, "enough"],
    [1667, 0, 1.2, "not enough"],
    [2001, 0, 1.2, "not enough"],
  ] as const)("%d mi, %d mi ridden since, %d times faster: %s", (distance, gone, faster, is) => {
    expect(lasts(left, mi(gone), mi(distance), faster).is).toBe(is);
  });
  test("a longer trip, more load or more road before it never makes it better", () => {
    const rank = { enough: 0, "not enough": 1 };
    const figures = fc.integer({ min: 0, max: 6000 });
    fc.assert(
      fc.property(figures, figures, figures, fc.constantFrom(1, 1.2), (distance, gone, more, faster) => {
        const now = rank[lasts(left, mi(gone), mi(distance), faster).is];
        expect(rank[lasts(left, mi(gone), mi(distance + more), faster).is]).toBeGreaterThanOrEqual(now);
        expect(rank[lasts(left, mi(gone + more), mi(distance), faster).is]).toBeGreaterThanOrEqual(now);
        expect(rank[lasts(left, mi(gone), mi(distance), faster * 1.2).is]).toBeGreaterThanOrEqual(now);
      }),
    );
  });
});

describe("a trip as it is written", () => {
  const known = {
    ...{ today: localDate("2027-03-26"), south: false, bikes: [], numbers: { decimal: ".", group: "," } as const },
    ...{ pressureUnit: null, depthUnit: null, vocabulary: ENGLISH_VOCABULARY },
  };
  test.each([
    ["2,800 mi from 12 June to 30 June", 2800, "mi", "2027-06-12", "2027-06-30"],
    ["900 km from 1 July for ten days", 900, "km", "2027-07-01", "2027-07-10"],
    ["900 km from 1 July for 2 weeks", 900, "km", "2027-07-01", "2027-07-14"],
    ["300 mi on 4 April", 300, "mi", "2027-04-04", "2027-04-04"],
    ["1500 from 2027-12-28 until 4 January", 1500, "mi", "2027-12-28", "2028-01-04"],
    // Without a year over the new one; the wrong way round, which the caller refuses; and a long trip that names its year.
    ["1500 mi from 1 October to 20 March", 1500, "mi", "2027-10-01", "2028-03-20"],
    ["300 mi from 30 June to 12 June", 300, "mi", "2027-06-30", "2027-06-12"],
    ["9,000 mi from 30 June to 12 June 2028", 9000, "mi", "2027-06-30", "2028-06-12"],
  ])("%s", (text, value, unit, from, to) => {
    expect(readTrip(text, known, "mi")).toEqual({ value, unit, from, to });
  });
  test.each([
    "soon",
    "2,800 mi",
    "from 12 June to 30 June",
    "2,800 mi from then to later",
    "2,800 psi from 12 June to 30 June",
    "900 km from 1 July for some days",
  ])("%s is none", (text) => {
    expect(readTrip(text, known, "mi")).toBeNull();
  });
});
