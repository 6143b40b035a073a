// How often something comes round, as people type it.

import { expect, test } from "vitest";
import { readRepeat } from "../../src/message/read-repeat.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const known = { numbers: { decimal: ".", group: "," }, vocabulary: ENGLISH_VOCABULARY } as const;
const legs = (miles: number | null, months: number | null, km: number | null = null) => ({ miles, km, months, hours: null });
const said = { first: undefined, fromLast: false };

test.each([
  ["4,000 mi or 12 months", { ...said, by: "interval", every: legs(4000, 12) }],
  ["first 600 mi, then every 4,000 mi or 12 months", { ...said, first: legs(600, null), by: "interval", every: legs(4000, 12) }],
  ["First at 600 mi / 1,000 km then 4,000 mi / 6,000 km", { ...said, first: legs(600, null, 1000), by: "interval", every: legs(4000, null, 6000) }],
  ["600 mi first, then every 4,000 mi", { ...said, first: legs(600, null), by: "interval", every: legs(4000, null) }],
  ["running-in at 1,000 km or 1 month and then every 10,000 km", { ...said, first: legs(null, 1, 1000), by: "interval", every: legs(null, null, 10_000) }],
  ["4,000 mi, no running-in", { ...said, first: null, by: "interval", every: legs(4000, null) }],
  ["every 6,000 mi from the last time", { ...said, fromLast: true, by: "interval", every: legs(6000, null) }],
  ["every third 4,000 mi", { ...said, by: "nth mark", nth: 3, base: legs(4000, null) }],
  ["every 2nd 4,000 mi / 6,000 km or 24 months", { ...said, by: "nth mark", nth: 2, base: legs(4000, 24, 6000) }],
  ["first 600 mi, then every second 4,000 mi", { ...said, first: legs(600, null), by: "nth mark", nth: 2, base: legs(4000, null) }],
  ["every second year", { ...said, by: "interval", every: legs(null, 24) }],
  ["every other oil change", { ...said, by: "nth time", nth: 2, of: "oil change", months: null }],
  ["every second oil change or 24 months", { ...said, by: "nth time", nth: 2, of: "oil change", months: 24 }],
])("%s", (typed, read) => {
  expect(readRepeat(typed, known)).toEqual(read);
});

test.each([
  "",
  "often",
  "first 600 mi",
  "first soon, then every 4,000 mi",
  "first 600 mi, then often",
  "every second oil change or 4,000 mi",
  "first 600 mi, then 4,000 mi, no running-in",
])("“%s” is none", (typed) => {
  expect(readRepeat(typed, known)).toBeNull();
});
