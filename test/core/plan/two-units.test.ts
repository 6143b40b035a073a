// One distance in two units: what manuals print beside one another is one, and every row of the trade's is.

import { expect, test } from "vitest";
import { columnsIn, isTornApart } from "../../../src/core/plan/two-units.ts";
import { STARTER_PLANS } from "../../../src/trade/starter-plans.ts";

// Printed so in service charts. Common practice.
test.each([
  [600, 1000],
  [4000, 6000],
  [4000, 6400],
  [7500, 12_000],
  [26_600, 42_800],
  [500, 800],
  [null, 6000],
  [4000, null],
])("%s mi and %s km go together", (miles, km) => {
  expect(isTornApart({ miles, km })).toBe(false);
});

test.each([
  [26_600, 500],
  [16_000, 100],
  [4000, 4000],
  [600, 6000],
  [6000, 4000],
])("%s mi and %s km do not", (miles, km) => {
  expect(isTornApart({ miles, km })).toBe(true);
});

test.each(Object.entries(STARTER_PLANS))("%s: both columns of every item are one distance", (_kind, plan) => {
  for (const item of plan.items) for (const columns of columnsIn(item)) expect(isTornApart(columns), `${item.key} ${JSON.stringify(columns)}`).toBe(false);
});
