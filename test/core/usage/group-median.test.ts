// The median year of a group's bikes.

import { expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import { figureIn, stretchOf } from "../../../src/core/quantity/distance.ts";
import { medianYear } from "../../../src/core/usage/group-median.ts";

/** Ridden so many miles in so many days. */
const START = localDate("2024-01-01");
const ridden = (miles: number, days: number) => ({ from: START, to: addDays(START, days), distance: stretchOf(miles, "mi") });
const median = (...tracks: ReturnType<typeof ridden>[]) => {
  const found = medianYear(tracks);
  return found === null ? null : Math.round(figureIn(found, "mi"));
};

test("is that of a year, of the middle bike or between the two in the middle", () => {
  // 730.5 days are two years.
  expect(median(ridden(2000, 731), ridden(9000, 731), ridden(500, 731))).toBe(999);
  expect(median(ridden(2000, 731), ridden(9000, 731), ridden(500, 731), ridden(4000, 731))).toBe(1499);
});

test("is told by three bikes at least, each read over most of a year", () => {
  expect(median(ridden(2000, 731), ridden(9000, 731))).toBeNull();
  expect(median(ridden(2000, 731), ridden(9000, 731), ridden(500, 299))).toBeNull();
  expect(median(ridden(2000, 731), ridden(9000, 731), ridden(500, 300))).not.toBeNull();
});
