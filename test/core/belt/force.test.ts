// The force behind a belt's deflection, in whatever unit it is written.

import { expect, test } from "vitest";
import { forceIn, sameForce } from "../../../src/core/belt/force.ts";

// 1 lbf is 4.448 222 N, 1 kgf 9.806 65 N: NIST SP 811, appendix B.8.
test.each([
  ["10-13 mm at 45 N", "45 N", 45],
  ["6.5 mm (4.5 kg)", "4.5 kg", 44.129_925],
  ["3/8 in with 10 lbf", "10 lbf", 44.482_22],
  ["at 10lb.", "10lb", 44.482_22],
  ["bei 4,5 kp", "4,5 kp", 44.129_925],
])("%s: %s", (text, typed, newtons) => expect(forceIn(text)).toEqual({ typed, newtons: expect.closeTo(newtons, 4) }));

test.each(["10-13 mm", "98 Nm", "98 N·m", "12 mm midway"])("%s names none", (text) => expect(forceIn(text)).toBeNull());

test("10 lbf and the 45 N that manuals print for it are one, 20 N is another", () => {
  expect(sameForce(44.48, 45)).toBe(true);
  expect(sameForce(44.13, 45)).toBe(true);
  expect(sameForce(45, 20)).toBe(false);
  expect(sameForce(45, 49)).toBe(false);
});
