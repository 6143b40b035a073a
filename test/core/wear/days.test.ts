// The day on which a part is at its limit: two doubts, one range.

import { expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import { dayRange } from "../../../src/core/wear/days.ts";

const day = localDate;
const likely = { on: day("2026-06-30"), from: day("2026-06-10"), to: day("2026-08-09") };

test("independent doubts add as roots of squares: JCGM 100:2008, 5.1.2", () => {
  // 20 and 15 days early make 25; 40 and 30 late make 50.
  expect(dayRange(likely, day("2026-06-15"), day("2026-07-30"))).toEqual({ on: likely.on, from: day("2026-06-05"), to: day("2026-08-19") });
});

test("where one is not in doubt the other's range stands", () => {
  expect(dayRange(likely, likely.on, likely.on)).toEqual(likely);
  expect(dayRange({ on: likely.on, from: likely.on, to: likely.on }, likely.from, likely.to)).toEqual(likely);
});

test("where either may have no end, nor has the day", () => {
  expect(dayRange(likely, day("2026-06-15"), null)).toMatchObject({ from: day("2026-06-05"), to: null });
  expect(dayRange({ ...likely, to: null }, day("2026-06-15"), day("2026-07-30")).to).toBeNull();
});
