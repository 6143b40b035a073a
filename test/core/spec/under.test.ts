// Conditions as manuals print them beside a value: what is taken off is only what says how it holds.

import { describe, expect, test } from "vitest";
import { saysConditions, type UnderKind, underIn, withoutConditions } from "../../../src/core/spec/under.ts";

const ALL: readonly UnderKind[] = ["engine", "rpm", "degrees", "threads", "throttle"];

describe("what a value is printed under", () => {
  test.each([
    ["0.10-0.20 mm cold", "0.10-0.20 mm", "cold", null],
    ["0.10-0.20 mm (engine cold)", "0.10-0.20 mm", "cold", null],
    ["cold: 0.1 mm", "0.1 mm", "cold", null],
    ["14.0-14.8 V at 5000 rpm", "14.0-14.8 V", null, 5000],
    ["14 V bei 5.000 U/min", "14 V", null, 5000],
    ["at least 13.5 V @ 4,000 r/min, engine warm", "at least 13.5 V", "warm", 4000],
    ["25 Nm (threads lightly oiled)", "25 Nm", null, null],
    ["98 Nm, threads lightly oiled", "98 Nm", null, null],
    ["0.10 mm at 20 °C", "0.10 mm", null, null],
    ["36 psi (2.5 bar) cold", "36 psi (2.5 bar)", "cold", null],
    ["1200 kPa warm, throttle wide open", "1200 kPa", "warm", null],
  ] as const)("“%s” is “%s”", (typed, figure, engine, rpm) => {
    expect(withoutConditions(typed, ALL)).toEqual({ figure, stated: true });
    expect(underIn(typed)).toEqual({ engine, rpm });
    expect(saysConditions(typed)).toBe(true);
  });

  test.each(["25-35 mm", "36 psi", "25 Nm + 90°", "98 Nm with a new nut", "cold"])("“%s” is left as it is", (typed) => {
    expect(withoutConditions(typed, ALL)).toEqual({ figure: typed, stated: false });
  });

  test("only what its key may be printed under is taken off", () => {
    expect(withoutConditions("36 psi hot", ["cold"]).figure).toBe("36 psi hot");
    expect(withoutConditions("36 psi cold", ["cold"]).figure).toBe("36 psi");
  });
});
