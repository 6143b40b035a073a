// Where dials end.

import { expect, test } from "vitest";
import { type DistanceUnit, dialOf, figureIn } from "../../../src/core/quantity/distance.ts";
import { endOfDial, mayRollOver } from "../../../src/core/usage/roll-over.ts";

const end = (figure: number, unit: DistanceUnit = "mi") => figureIn(endOfDial(dialOf(figure, unit), unit), unit);
const may = (figure: number, unit: DistanceUnit = "mi") => mayRollOver(dialOf(figure, unit), unit);

test("a dial ends at the next power of ten, of four digits at least, in miles as in kilometres", () => {
  expect([12, 9999.9, 10_000, 10_000.1, 99_900, 99_999.9, 100_000].map((figure) => end(figure))).toEqual([
    10_000, 10_000, 10_000, 100_000, 100_000, 100_000, 100_000,
  ]);
  expect([99_999.9, 123_456].map((figure) => end(figure, "km"))).toEqual([100_000, 1_000_000]);
});

test("it may have rolled over in its last tenth", () => {
  expect([89_999, 90_000, 99_999.9].map((figure) => may(figure))).toEqual([false, true, true]);
  expect([may(9500), may(8999), may(14_820), may(95_000, "km")]).toEqual([true, false, false, true]);
});
