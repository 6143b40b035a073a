// Intervals as people type them.

import { expect, test } from "vitest";
import { readEvery } from "../../src/message/read-every.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const known = { numbers: { decimal: ".", group: "," }, vocabulary: ENGLISH_VOCABULARY } as const;

test.each([
  ["4,000 mi or 12 months", 4000, null, 12],
  ["every 4000 miles or 1 year, whichever comes first", 4000, null, 12],
  ["4,000 mi / 6,000 km", 4000, 6000, null],
  ["4,000 mi, 6,000 km or 24 months", 4000, 6000, 24],
  ["6k km", null, 6000, null],
  ["6 000 km and every 2 years", null, 6000, 24],
  ["Every year", null, null, 12],
  ["month", null, null, 1],
  ["18-month", null, null, 18],
  ["yearly", null, null, 12],
])("%s", (typed, miles, km, months) => {
  expect(readEvery(typed, known)).toEqual({ miles, km, months, hours: null });
});

test.each([
  "",
  "4000",
  "4,000 mi or 5,000 mi",
  "12 months or 2 years",
  "0 months",
  "30 years",
  "20 mi",
  "4,000.5 mi",
  "300,000 mi",
  "36 psi",
  "often",
  "4,000 mi or often",
  "-4000 mi",
])("“%s” is none, or not one that can be meant", (typed) => {
  expect(readEvery(typed, known)).toBeNull();
});
