// How far ahead, as people say it.

import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Known } from "../../src/core/reading/vocabulary.ts";
import { readUntil } from "../../src/message/read-until.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const on: Known = {
  ...{ today: localDate("2026-11-25"), south: false, bikes: [], numbers: { decimal: ".", group: "," } },
  ...{ pressureUnit: null, depthUnit: null, vocabulary: ENGLISH_VOCABULARY },
};

test.each([
  ["1 June", "2027-06-01"],
  ["1st of June", "2027-06-01"],
  ["June 1", "2027-06-01"],
  ["15 March 2028", "2028-03-15"],
  ["2027-06-01", "2027-06-01"],
  ["1.6.2027", "2027-06-01"],
  ["june", "2027-06-01"],
  ["November", "2027-11-01"],
  ["December", "2026-12-01"],
  ["june 2028", "2028-06-01"],
  ["midsummer", "2027-06-21"],
  ["Midsummer's Day", "2027-06-21"],
  ["spring", "2027-03-01"],
  ["winter", "2026-12-01"],
  ["spring 2028", "2028-03-01"],
  ["tomorrow", "2026-11-26"],
  ["in 6 weeks", "2027-01-06"],
  ["in six weeks", "2027-01-06"],
  ["6 weeks", "2027-01-06"],
  ["in 3 months", "2027-02-25"],
  ["in a year", "2027-11-25"],
  ["next Saturday", "2026-12-05"],
  ["29 February 2028", "2028-02-29"],
])("%s is a day: %s", (typed, day) => {
  expect(readUntil(typed, on, "mi")).toEqual({ is: "day", on: day });
});

test.each([
  ["spring", "2027-09-01"],
  ["midsummer", "2026-12-21"],
])("%s in the south: %s", (typed, day) => {
  expect(readUntil(typed, { ...on, south: true }, "km")).toEqual({ is: "day", on: day });
});

test.each([
  ["18,000 mi", 18_000, "mi", false],
  ["18 000 km", 18_000, "km", false],
  ["18000", 18_000, "mi", false],
  ["18k", 18_000, "mi", false],
  ["+1,500 mi", 1500, "mi", true],
  ["+1500", 1500, "mi", true],
  ["1,500 mi more", 1500, "mi", true],
  ["another 800 km", 800, "km", true],
])("%s is a distance", (typed, value, unit, more) => {
  expect(readUntil(typed, on, "mi")).toEqual({ is: "distance", value, unit, more });
});

test.each(["", "banana", "2027", "3/4/2027", "31 February 2027", "soon", "36 psi", "at 12", "1 June or 1 July", "1 June 18,000 mi"])(
  "%s is neither, or could be two things",
  (typed) => {
    expect(readUntil(typed, on, "mi")).toBeNull();
  },
);
