// What a share of antifreeze is good to, against published figures that the table was not made from.

import { describe, expect, test } from "vitest";
import { freezesAtShare, shareFor } from "../../../src/core/fluid/freezing.ts";
import { GLYCOL_FREEZES } from "../../../src/trade/coolant.ts";

const at = (share: number): number => freezesAtShare(share, GLYCOL_FREEZES);

/**
 * Freezing point of aqueous ethylene glycol by mass share in per cent, °C. Source: Å. Melinder, Properties of Secondary Working Fluids
 * for Indirect Systems (IIR 2010), the coefficients that do not go by temperature, about 30.8462 %.
 */
const melinder = (mass: number): number =>
  [-15.25, -0.808, -0.01334, -7.293e-5, 1.006e-6, 1.14e-9].reduce((sum, coefficient, n) => sum + coefficient * (mass - 30.8462) ** n, 0);
/** Shares by mass of shares by volume, both at 20 °C, the slight shrinking of the mix left out. Densities: ethylene glycol 1.113, water 0.998 g/mL. */
const byMass = (volume: number): number => (100 * volume * 1.113) / (volume * 1.113 + (100 - volume) * 0.998);

describe("where ice begins to form", () => {
  test.each([10, 15, 20, 25, 30, 35, 40, 45, 50])("%d %% never promises more than the published polynomial, nor less by more than 4 K", (share) => {
    const off = at(share) - melinder(byMass(share));
    expect(off).toBeGreaterThan(-0.5);
    expect(off).toBeLessThan(4);
  });
  // TM 5-6115-400-12, table 2-1: pints of ethylene glycol a gallon of coolant (of eight pints) for a lowest ambient temperature in °F.
  test.each([
    [-10, 3.25],
    [-20, 3.5],
    [-30, 4],
  ])("for %d °F the army asks for %d pints a gallon: the table lies within 4 K of it", (fahrenheit, pints) => {
    expect(Math.abs(at((pints / 8) * 100) - ((fahrenheit - 32) * 5) / 9)).toBeLessThan(4);
  });
  // US Army TM 5-3895-382-24, coolant recommendations: ethylene glycol by volume, of which the table is made; water freezes at 0 °C.
  test.each([
    [0, 0],
    [30, -15],
    [40, -24],
    [50, -37],
  ])("a share of %d is good to %d °C", (share, celsius) => expect(at(share)).toBe(celsius));
  test("beyond the table it is good to its end at least", () => expect(at(58)).toBe(-37));
});

test("the share that a temperature asks for is the one that is good to it", () => {
  for (const celsius of [0, -2, -5, -15, -20, -30, -37]) expect(at(shareFor(celsius, GLYCOL_FREEZES) ?? Number.NaN)).toBeCloseTo(celsius, 9);
  expect(shareFor(-38, GLYCOL_FREEZES)).toBeNull();
});
