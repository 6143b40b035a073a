// Headings of what falls due together: each says when, as far as anything tells.

import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { type Ridden, riddenOf } from "../../src/core/quantity/distance.ts";
import { outlookWords } from "../../src/words/en/outlook.ts";
import { makePrinter } from "../../src/words/printer.ts";

const today = localDate("2026-11-26");
const on = { unit: "mi", offset: 0, today, perWeek: null, basis: { from: "nothing" }, odometer: null } as const;
const words = outlookWords(makePrinter({ locale: "en-GB", distance: "km" }));
const at = riddenOf(16_000, "mi") as Ridden;

test.each([
  [{ on: today, at: null, by: "plan" }, 1, null, "Now:"],
  [{ on: localDate("2027-04-12"), at, by: "plan" }, 2, 80, "About 12 April, at 16,000 mi (together about 1 h 20 min):"],
  [{ on: null, at, by: "plan" }, 1, null, "At 16,000 mi:"],
  [{ on: null, at, by: "wear" }, 1, null, "At about 16,000 mi:"],
  // Of a bike that stands, with nothing that dates it: no heading without a name.
  [{ on: null, at: null, by: "plan" }, 2, 20, "Until then (together about 20 min):"],
] as const)("%o", (when, items, minutes, heading) => {
  expect(words.evening(when, items, minutes, on)).toBe(heading);
});
