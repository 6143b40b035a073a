// A reading does the item that asks for it.

import { expect, test } from "vitest";
import type { LocalDate } from "../../../src/core/calendar/dates.ts";
import type { Place } from "../../../src/core/reading/kinds.ts";
import { measuredJobs } from "../../../src/core/schedule/measured.ts";
import { planItem } from "../../../src/trade/standard-items.ts";

const TREAD = planItem("tread.measure", null);
const read = (place: Place, on: string, kind: "tread" | "cold pressure" = "tread") => ({ kind, place, on: on as LocalDate });
const days = (...measured: Parameters<typeof measuredJobs>[1]) => measuredJobs([TREAD], measured).map(({ item, on }) => [item, on.from]);

test("both tyres read is the tread measured, as of the one read longest ago", () => {
  expect(days(read("front", "2027-03-01"), read("rear", "2027-03-01"))).toEqual([["tread.measure", "2027-03-01"]]);
  expect(days(read("front", "2027-05-01"), read("rear", "2027-03-01"), read("front", "2027-01-01"))).toEqual([["tread.measure", "2027-03-01"]]);
});

test("one tyre alone, or another kind of reading, does not do it", () => {
  expect(days(read("front", "2027-03-01"))).toEqual([]);
  expect(days(read("front", "2027-03-01", "cold pressure"), read("rear", "2027-03-01", "cold pressure"))).toEqual([]);
  expect(measuredJobs([planItem("tyres.replace", null)], [read("front", "2027-03-01"), read("rear", "2027-03-01")])).toEqual([]);
});

test("the same readings give the same record, so that a reminder told is not told again", () => {
  const both = [read("rear", "2027-03-01"), read("front", "2027-03-02")];
  expect(measuredJobs([TREAD], both)).toEqual(measuredJobs([TREAD], both.toReversed()));
});
