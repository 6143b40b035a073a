import { expect, test } from "vitest";
import { standIn, standsOtherwise } from "../../../src/core/chain/stand.ts";

// Ways in which manuals print it: common practice, from memory.
test.each([
  ["25-35 mm on the side stand", "on the side stand"],
  ["30-40 mm on its sidestand", "on the side stand"],
  ["25-35 mm auf dem Seitenständer", "on the side stand"],
  ["25-35 mm on the centre stand", "upright"],
  ["20-30 mm, rear wheel off the ground", "upright"],
  ["1.0-1.4 in (upright)", "upright"],
  ["15-25 mm, bike upright with rider seated", "under load"],
  ["25-35 mm", null],
  ["25-35 mm at the tightest spot", null],
])("%s", (typed, stand) => expect(standIn(typed)).toBe(stand));

test("a rider on it counts before all; saying nothing is not otherwise", () => {
  expect(standsOtherwise("upright", [])).toBe(false);
  expect(standsOtherwise("upright", ["upright"])).toBe(false);
  expect(standsOtherwise("upright", ["cold"])).toBe(false);
  expect(standsOtherwise("upright", ["on the side stand"])).toBe(true);
  expect(standsOtherwise("upright", ["upright", "under load"])).toBe(true);
  expect(standsOtherwise("on the side stand", ["upright"])).toBe(true);
  expect(standsOtherwise("under load", ["upright"])).toBe(true);
  expect(standsOtherwise("under load", ["upright", "under load"])).toBe(false);
});
