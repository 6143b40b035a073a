// The specs a bike can have: each figure is held to what a manual can ask for, and what is typical lies within that.

import { expect, test } from "vitest";
import { dimensionOf, toCanonical } from "../../src/core/quantity/units.ts";
import { isSpecKey, SPEC_KEY_NAMES, SPEC_KEYS } from "../../src/trade/spec-keys.ts";

test.each(SPEC_KEY_NAMES)("%s", (key) => {
  const { holds, plausible, typical, unit, beside } = SPEC_KEYS[key];
  expect(plausible === null).toBe(holds === "words");
  if (plausible !== null) expect(plausible[0]).toBeLessThan(plausible[1]);
  if (unit !== null) expect(dimensionOf(unit)).toBe(holds);
  if (typical !== undefined && unit !== null && plausible !== null) {
    const [from, to] = typical.map((each) => toCanonical(each, unit)) as [number, number];
    expect(from).toBeLessThan(to);
    expect([from >= plausible[0], to <= plausible[1]]).toEqual([true, true]);
  }
  if (beside !== undefined) expect(isSpecKey(beside) && SPEC_KEYS[beside].holds).toBe("words");
});
