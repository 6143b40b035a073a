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
];
const read = (kind: "tread" | "cold pressure", place: Place, on: string) => ({ kind, place, on: on as LocalDate });
const days = (...measured: Parameters<typeof measuredJobs>[1]) => measuredJobs(PLAN, measured).map(({ item, on }) => [item, on.from]);

test("a tread depth logged is that tyre's tread measured, on each day it was", () => {
  expect(days(read("tread", "front", "2027-03-01"), read("tread", "front", "2027-01-01"))).toEqual([
    ["front-tread.measure", "2027-01-01"],
    ["front-tread.measure", "2027-03-01"],
  ]);
  expect(days(read("tread", "rear", "2027-03-01"))).toEqual([["rear-tread.measure", "2027-03-01"]]);
});

test("pressures are checked when both were, as of the one read longest ago", () => {
  expect(days(read("cold pressure", "front", "2027-05-01"))).toEqual([]);
  expect(days(read("cold pressure", "front", "2027-05-01"), read("cold pressure", "rear", "2027-03-01"))).toEqual([["tyre-pressure.measure", "2027-03-01"]]);
});

test("the same readings give the same record, so that a reminder told is not told again", () => {
  const both = [read("tread", "rear", "2027-03-01"), read("tread", "front", "2027-03-02")];
  expect(measuredJobs(PLAN, both)).toEqual(measuredJobs(PLAN, both.toReversed()));
});
