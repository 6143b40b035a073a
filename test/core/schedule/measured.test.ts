// A reading does the item that asks for it.

import { expect, test } from "vitest";
import type { LocalDate } from "../../../src/core/calendar/dates.ts";
import type { Place } from "../../../src/core/reading/kinds.ts";
import { measuredJobs } from "../../../src/core/schedule/measured.ts";
import { planItem } from "../../../src/trade/standard-items.ts";

const PLAN = [
  planItem("front-tread.measure", null),
  planItem("rear-tread.measure", null),
  planItem("tyre-pressure.measure", null),
  planItem("front-tyre.replace", null),
  ...(["front-pads.measure", "rear-pads.measure", "front-shoes.measure", "rear-discs.measure", "chain.measure"] as const).map((key) => planItem(key, null)),
];
const read = (kind: Parameters<typeof measuredJobs>[1][number]["kind"], place: Place, on: string) => ({ kind, place, on: on as LocalDate });
const days = (...measured: Parameters<typeof measuredJobs>[1]) => measuredJobs(PLAN, measured).map(({ item, on }) => [item, on.from]);

test("a tread depth logged is that tyre's tread measured, on each day it was", () => {
  expect(days(read("tread", "front", "2027-03-01"), read("tread", "front", "2027-01-01"))).toEqual([
    ["front-tread.measure", "2027-01-01"],
    ["front-tread.measure", "2027-03-01"],
  ]);
  expect(days(read("tread", "rear", "2027-03-01"))).toEqual([["rear-tread.measure", "2027-03-01"]]);
});

test("so are pads, shoes and discs by their thickness, at that end alone; a chain's line asks for its sprockets too", () => {
  expect(days(read("pad thickness", "front", "2027-03-01"))).toEqual([["front-pads.measure", "2027-03-01"]]);
  expect(days(read("shoe thickness", "front", "2027-03-02"))).toEqual([["front-shoes.measure", "2027-03-02"]]);
  expect(days(read("disc thickness", "rear", "2027-03-03"))).toEqual([["rear-discs.measure", "2027-03-03"]]);
  expect(days({ kind: "chain length", place: null, on: "2027-03-04" as LocalDate })).toEqual([]);
});

test("of two callipers both are read, as of the one read longest ago", () => {
  const left = read("pad thickness", "front left", "2027-03-01");
  expect(days(left)).toEqual([]);
  expect(days(left, read("pad thickness", "front right", "2027-03-05"))).toEqual([["front-pads.measure", "2027-03-01"]]);
});

test("pressures are checked when both were, as of the one read longest ago", () => {
  expect(days(read("cold pressure", "front", "2027-05-01"))).toEqual([]);
  expect(days(read("cold pressure", "front", "2027-05-01"), read("cold pressure", "rear", "2027-03-01"))).toEqual([["tyre-pressure.measure", "2027-03-01"]]);
});

test("the same readings give the same record, so that a reminder told is not told again", () => {
  const both = [read("tread", "rear", "2027-03-01"), read("tread", "front", "2027-03-02")];
  expect(measuredJobs(PLAN, both)).toEqual(measuredJobs(PLAN, both.toReversed()));
});
