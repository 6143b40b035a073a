// Brake fluids against FMVSS 116.

import { describe, expect, test } from "vitest";
import { mixing } from "../../../src/core/fluid/mixing.ts";
import { FLUID_CLASSES, type FluidClassName } from "../../../src/trade/fluids.ts";

// 49 CFR 571.116 S5.1.1 (dry) and S5.1.2 (wet), °C. 5.1 is a label for a fluid that meets the limits of DOT 5: not 270/190, which is one product's figure.
test.each([
  ["DOT 3", 205, 140],
  ["DOT 4", 230, 155],
  ["DOT 5", 260, 180],
  ["DOT 5.1", 260, 180],
] as const)("%s boils at %d °C dry and %d °C wet at the least", (name, dry, wet) => expect(FLUID_CLASSES[name]).toMatchObject({ dry, wet }));

describe("mixing", () => {
  const mix = (inside: FluidClassName, added: FluidClassName) => mixing(FLUID_CLASSES[inside], FLUID_CLASSES[added]);
  test("glycol fluids mix, and the mix is worth the lower class", () => {
    expect(mix("DOT 4", "DOT 5.1")).toEqual({ may: true, worth: 0, same: false });
    expect(mix("DOT 4", "DOT 3")).toEqual({ may: true, worth: 1, same: false });
    expect(mix("DOT 4", "DOT 4")).toEqual({ may: true, worth: 0, same: true });
  });
  test("silicone never meets glycol, although one is called 5 and the other 5.1", () => {
    expect(mix("DOT 5.1", "DOT 5")).toEqual({ may: false, bases: ["glycol", "silicone"] });
    expect(mix("DOT 5", "DOT 4").may).toBe(false);
  });
  test("mineral oil never meets brake fluid", () => {
    for (const name of ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1"] as const) {
      expect(mix("mineral oil", name).may).toBe(false);
      expect(mix(name, "mineral oil").may).toBe(false);
    }
  });
});
