// The parts table: what it names exists, and every replaceable thing on any mix of equipment stands in it once.

import { expect, test } from "vitest";
import { partsFitted } from "../../src/core/parts/fitted.ts";
import { riddenOf, type Stretch } from "../../src/core/quantity/distance.ts";
import { PART_ROWS, PARTS } from "../../src/trade/parts.ts";
import { STANDARD_ITEMS } from "../../src/trade/standard-items.ts";
import { aJob, equipment } from "../core/schedule/builders.ts";

const none = () => 0 as Stretch;
const shown = (jobs: Parameters<typeof partsFitted>[2], at: number | null = 15_000) =>
  partsFitted(PART_ROWS, equipment, jobs, at === null ? null : riddenOf(at, "mi"), none);
const one = (part: string, jobs: Parameters<typeof partsFitted>[2], at?: number | null) => shown(jobs, at).find((each) => each.part === part);

test("every row names items that exist", () => {
  for (const { items } of PART_ROWS) for (const item of items) expect(Object.keys(STANDARD_ITEMS)).toContain(item);
});

test("what a bike is not fitted with is no part of it", () => {
  const parts = shown([]).map(({ part }) => part);
  expect(parts).toContain("chain and sprockets");
  for (const absent of ["drive belt", "shaft drive oil", "timing belt", "front brake shoes"]) expect(parts).not.toContain(absent);
  expect(parts).toContain("coolant");
  expect(new Set(parts).size).toBe(parts.length);
  expect(Object.keys(PARTS)).toHaveLength(PART_ROWS.length);
});

test("a part goes from the latest time that a new one was put there; measuring pads puts none, and neither does what could not be done", () => {
  const jobs = [
    aJob("front-pads.measure", "2026-01-01", 10_000, { outcome: "replaced" }),
    aJob("front-pads.measure", "2026-05-01", 13_000, { outcome: "inspected, within limits" }),
    aJob("front-pads.measure", "2026-06-01", 14_000, { outcome: "could not do" }),
  ];
  expect(one("front brake pads", jobs)).toMatchObject({ ridden: riddenOf(5000, "mi"), job: jobs[0]?.id });
  expect(one("rear brake pads", jobs)).toMatchObject({ job: null, ridden: null, on: null });
});

test("without a figure how far it has gone is not known, and never less than nothing", () => {
  expect(one("battery", [aJob("battery.test", "2026-01-01", null, { outcome: "replaced" })])).toMatchObject({ ridden: null });
  expect(one("battery", [aJob("battery.test", "2026-01-01", 14_000, { outcome: "replaced" })], null)).toMatchObject({ ridden: null });
  expect(one("battery", [aJob("battery.test", "2026-01-01", 16_000, { outcome: "replaced" })])).toMatchObject({ ridden: 0 });
});
