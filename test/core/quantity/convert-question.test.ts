// Questions about units as riders ask them; each with what must come of it.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { askConvert } from "../../../src/core/quantity/convert-question.ts";
import { exactly } from "../../../src/core/quantity/exact.ts";
import { convert, dimensionOf, fromCanonical, toCanonical, UNIT_IDS } from "../../../src/core/quantity/units.ts";
import { ENGLISH_VOCABULARY } from "../../../src/words/en/vocabulary.ts";

const ask = (text: string, to: string | null = null) => askConvert(text, to, ENGLISH_VOCABULARY, { decimal: ".", group: "," });
const answers = (text: string, to: string | null = null) => {
  const asked = ask(text, to);
  if (asked.is === "refused") return [asked.why, ...asked.candidates].join(": ");
  return asked.answers.map((a) => (a.from === a.to ? `${a.from} ${a.unit}` : `${a.from}-${a.to} ${a.unit}`));
};

describe("questions about units", () => {
  test.each<[string, string | null, string[] | string]>([
    // 60 in-lb is 6.779 N·m and 80 in-lb is 9.039: rounded inward to the tenth that one inch-pound supports.
    ["60-80 in-lb in Nm?", null, ["6.8-9 N·m"]],
    ["what's 7/16 in metric", null, ["11.11 mm"]],
    ["2.5 bar psi", null, ["36 psi"]],
    ["36 psi", null, ["2.48 bar", "248 kPa"]],
    ["89 in-lb", "Nm", ["10.1 N·m"]],
    ["10 ± 1 Nm", "in-lb", ["80-97 in-lb"]],
    ["98 F", null, ["36.7 °C"]],
    ["3/32 in", null, ["2.38 mm"]],
    ["14,820 mi", null, ["23850 km"]],
    ["40 mpg us", null, ["5.9 L/100 km"]],
    ["1/2", "mm", ["12.7 mm"]],
    ["2 imp gal", "L", ["9 L"]],
    ["-300 C", null, "below absolute zero"],
    ["5 lb", "Nm", "unknown unit: ft-lb: in-lb"],
    ["5 lb", "mm", "other dimension"],
    ["14.820 km", "mi", "ambiguous number: 14820: 14.82"],
    ["2 gal", "L", "unknown unit: US gal: imp gal"],
    ["lots of torque", null, "not a quantity"],
    ["12", "mm", "unit missing"],
    ["12", null, "unit missing"],
    ["7 furlongs", "mm", "unknown unit"],
    ["0 mpg us", "L/100 km", "out of range"],
  ])("%s (to %s)", (text, to, expected) => {
    expect(answers(text, to)).toEqual(expected);
  });

  test.each<[string, string[] | string]>([
    // The unit wanted, named in every place people put it.
    ["36 psi in bar", ["2.48 bar"]],
    ["36psi→bar", ["2.48 bar"]],
    ["36 psi = ? bar", ["2.48 bar"]],
    ["how many Nm is 18 ft-lbs?", ["24 N·m"]],
    ["Nm for 18 ft lb?", ["24 N·m"]],
    ["what is 25 Nm in foot pounds please", ["18.4 ft-lb"]],
    ["convert 1.5 kgf-m to nm", ["14.7 N·m"]],
    ["can you convert 60 to 80 inch pounds into newton metres", ["6.8-9 N·m"]],
    ["Could you tell me what 2.3 bar is in psi?", ["33 psi"]],
    ["2.3 bar is how many psi", ["33 psi"]],
    ["how many psi in 2.3 bar", ["33 psi"]],
    ["how many km are 14,820 miles", ["23850 km"]],
    ["how far is 14,820 mi in km", ["23850 km"]],
    ["80 mph in kph", ["129 km/h"]],
    ["200F in C", ["93.3 °C"]],
    ["25 Nm in ft-lb and in-lb", ["18.4 ft-lb", "221 in-lb"]],
    ["3 m of hose in feet", ["10 ft"]],
    ["torque 24 ft lbs newton meters", ["33 N·m"]],
    ["0.10–0.15 mm in thou", ["4-5.9 thou"]],
    ["what's 0.004\" in mm?", ["0.1 mm"]],
    // Fractions are made sizes.
    ["7/16 to mm", ["11.11 mm"]],
    ["7/16 spanner in mm", ["11.11 mm"]],
    ['whats 1/2" in mm', ["12.7 mm"]],
    ["1 1/2 in in mm", ["38.1 mm"]],
    ["3/32 in 64ths", ["6 1/64 in"]],
    // Windows, tolerances, two units for one quantity: as fine as they were typed.
    ["between 60 and 80 in-lb in N·m", ["6.8-9 N·m"]],
    ["10 Nm ± 10 % in in-lb", ["80-97 in-lb"]],
    ["10 Nm ± 1 in in-lb", ["80-97 in-lb"]],
    ["20 +2/-1 Nm in ft-lb", ["14.1-16.2 ft-lb"]],
    ["5 ft 3 in in cm", ["160 cm"]],
    ["6 lb 2 oz in kg", ["2.78 kg"]],
    // Words that could be two things are named; where only one of them can be meant it is taken.
    ["24 lb in Nm", "unknown unit: ft-lb: in-lb"],
    ["24 lbs of torque", "unknown unit: ft-lb: in-lb"],
    ["3 kg of torque in Nm", "unknown unit: kgf·m: kgf·cm"],
    ["24 lb-in in Nm", ["2.7 N·m"]],
    ["36 lb in bar", ["2.48 bar"]],
    ["36 pounds tyre pressure in bar", ["2.48 bar"]],
    ["2 kg tyre pressure in psi", ["28 psi"]],
    ["45 mpg in l/100km", "unknown unit: mpg US: mpg imp"],
    ["16 oz in ml", "unknown unit: US fl oz: imp fl oz"],
    // Wanted by such a word, it is answered in each.
    ["25 Nm in pounds", ["18.4 ft-lb", "221 in-lb"]],
    ["5 l/100km in mpg", ["47 mpg US", "56 mpg imp"]],
    ["2 L in pints", ["4 US pt", "4 imp pt"]],
    // A difference of temperature is no temperature.
    ["10 C difference in F", ["18 Δ°F"]],
    ["a rise of 10 °C in °F", ["18 Δ°F"]],
    ["10 C in F", ["50 °F"]],
    ["20 degrees warmer", "unknown unit: Δ°C: Δ°F"],
    // A fraction of anything but an inch is as fine as it says.
    ["18 1/2 ft-lb in Nm", ["25.1 N·m"]],
    ["30 inHg", ["102 kPa", "762 mmHg"]],
    ["1 hour", ["1 h"]],
    // Nonsense.
    ["12 in Nm", "unit missing"],
    ["5 Nm in psi", "other dimension"],
    ["5 Nm in bananas", "unknown unit"],
    ["-5 Nm in ft-lb", "below zero"],
    ["10 ± 20 Nm in ft-lb", "below zero"],
    ["-5 psi in bar", ["-0.34 bar"]],
    ["what's M8 in inches", "not a quantity"],
    ["5w40", "unknown unit"],
  ])("%s", (text, expected) => {
    expect(answers(text)).toEqual(expected);
  });

  test.each<[string, boolean]>([
    ["36 psi in bar", true],
    ["how many bar is 36 psi", true],
    ["2.5 bar psi", true],
    ["36 psi", false],
    ["60-80 in-lb?", false],
  ])("%s names a unit wanted: %s", (text, named) => {
    expect(ask(text)).toMatchObject({ is: "converted", named });
  });
  test.each([
    "33 psi front 36 rear",
    "14,820 mi on Heron",
    "33 psi front",
    "12.6V yesterday",
    "4.5mm front, 3/32 rear",
    "did the oil at 14,820 mi",
    "14,820 mi 33 psi",
  ])("%s asks for no conversion", (text) => {
    const asked = ask(text);
    expect(asked.is === "converted" && asked.named).toBe(false);
  });
  test("what was typed is kept: fractions, two units, every decimal", () => {
    expect(ask("7/16")).toMatchObject({ said: "7/16", taken: "in", fraction: 16 });
    expect(ask("5 ft 3 in in cm")).toMatchObject({ said: "5 ft 3 in", taken: null });
    expect(ask("2.00 bar in psi")).toMatchObject({ said: null, from: 2, decimals: 2 });
    expect(ask("2.2 ± 0.1 bar in psi")).toMatchObject({ from: 2.1, to: 2.3, middle: 2.2 });
  });
  test.each(["60-80 in-lb", "10-12 Nm", "32.5-36 psi", "1.5-2 kgf·m", "4-5 mm", "40-50 mpg us"])(
    "every end printed for %s lies inside the window typed",
    (text) => {
      const asked = ask(text);
      if (asked.is === "refused") throw new Error(asked.why);
      for (const a of asked.answers) {
        expect(fromCanonical(toCanonical(a.from, a.unit), asked.unit)).toBeGreaterThanOrEqual(asked.from);
        expect(fromCanonical(toCanonical(a.to, a.unit), asked.unit)).toBeLessThanOrEqual(asked.to);
      }
    },
  );

  test("the exact value is there beside the rounded one", () => {
    const asked = ask("80 ft-lb", "Nm");
    expect(asked.is === "converted" && asked.answers[0]?.exact[0]).toBeCloseTo(108.465435867, 9);
  });
  test("a unit that can be two is answered with both names", () => {
    expect(ask("2 gal", "L")).toMatchObject({ candidates: ["US gal", "imp gal"] });
  });
});

describe("every digit, on request", () => {
  // NIST SP 811 (2008), App. B.8, from exact definitions; the decimals of a finite factor in full.
  test.each([
    [1, "in-lb", "N·m", "0.1129848290276167"],
    [1, "ft-lb", "N·m", "1.3558179483314004"],
    [1, "lbf", "N", "4.4482216152605"],
    [1, "in", "mm", "25.4"],
    [1, "inHg", "kPa", "3.386388640341"],
    [1, "mmHg", "kPa", "0.133322387415"],
    [1, "US fl oz", "mL", "29.5735295625"],
    [1, "imp gal", "L", "4.54609"],
    [1, "hp", "kW", "0.74569987158227022"],
    [60, "in-lb", "N·m", "6.779089741657002"],
    [12_000, "mi", "km", "19312.128"],
    [98.6, "°F", "°C", "37"],
    [-40, "°C", "°F", "-40"],
    [20, "km/L", "L/100 km", "5"],
  ] as const)("%d %s in %s is %s and no more", (value, from, to, digits) => {
    expect(exactly(value, null, from, to)).toEqual({ digits, whole: true });
  });
  // NIST SP 811: 1 psi is 8 896 443 230 521 / 1 290 320 000 Pa, which never ends.
  test("what never ends is cut, not rounded, and said to go on", () => {
    expect(exactly(1, null, "psi", "kPa")).toEqual({ digits: "6.89475729316836", whole: false });
    expect(exactly(1 / 3, 3, "in", "mm")).toEqual({ digits: "8.46666666666666", whole: false });
    expect(exactly(1, null, "mm", "in")).toEqual({ digits: "0.0393700787401574", whole: false });
  });
  test("is the double's value as far as fifteen figures go, for every unit", () => {
    const pairs = UNIT_IDS.flatMap((a) => UNIT_IDS.filter((b) => dimensionOf(a) === dimensionOf(b)).map((b) => [a, b] as const));
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 4 }), ([a, b], n, places) => {
        const value = Number(`${n}e-${places}`);
        const converted = convert(value, a, b);
        if (converted.is === "refused") return;
        // Temperatures are judged beside 300 degrees: what an offset takes away is gone in a double.
        const beside = dimensionOf(a) === "temperature" ? 300 : 0;
        expect(Math.abs(Number(exactly(value, null, a, b).digits) - converted.value)).toBeLessThanOrEqual(
          1.2e-14 * Math.max(Math.abs(converted.value), beside),
        );
      }),
      { numRuns: 2000 },
    );
  });
});
