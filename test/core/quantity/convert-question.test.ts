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
  if (asked.is === "refused") return [asked.why, ...asked.candidates].join(": ") + (/[/·^ ]/.test(asked.word ?? "") ? ` (${asked.word})` : "");
  return asked.answers.map((a) => `${a.bound === null ? "" : `${a.bound} `}${a.from === a.to ? a.from : `${a.from}-${a.to}`} ${a.unit}`);
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
    ["2 imp gal", "L", ["9.1 L"]],
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
    ["3 m of hose in feet", ["9.8 ft"]],
    ["torque 24 ft lbs newton meters", ["33 N·m"]],
    ["0.10–0.15 mm in thou", ["3.94-5.9 thou"]],
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
    ["20 +2/-1 Nm in ft-lb", ["14.02-16.22 ft-lb"]],
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
    ["2 L in pints", ["4.2 US pt", "3.5 imp pt"]],
    // A difference of temperature is no temperature.
    ["10 C difference in F", ["18 Δ°F"]],
    ["a rise of 10 °C in °F", ["18 Δ°F"]],
    ["10 C in F", ["50 °F"]],
    ["20 degrees warmer", "unknown unit: Δ°C: Δ°F"],
    // A fraction of anything but an inch is as fine as it says.
    ["18 1/2 ft-lb in Nm", ["25.1 N·m"]],
    ["30 inHg", ["102 kPa", "762 mmHg"]],
    ["1 hour", ["1 h"]],
    // Feet and inches: an apostrophe groups thousands only before three digits. 63 in is 160.02 cm, 6 ft 1.8288 m.
    ["5'3\" in cm", ["160 cm"]],
    ["5' 3\" in cm", ["160 cm"]],
    ["5’3” in cm", ["160 cm"]],
    ["5'3 in cm", ["160 cm"]],
    ["6'0\" to m", ["1.83 m"]],
    ["5' in cm", ["152 cm"]],
    ['3" in mm', ["76 mm"]],
    ["14'820 km in mi", ["9208.7 mi"]],
    // A unit with more behind it is another unit, and the word is named whole.
    ["spring rate 9 N/mm in lb/in", "unknown unit (N/mm)"],
    ["5 kg/m to lb", "unknown unit (kg/m)"],
    ["5 L/min to US gal", "unknown unit (L/min)"],
    ["5 L per min to US gal", "unknown unit (L per min)"],
    ["9 N per mm in lb", "unknown unit (N per mm)"],
    ["5 N·mm in Nm", "unknown unit (N·mm)"],
    ["5 in^2 in mm", "unknown unit (in^2)"],
    ["24 Nm in lb/in", "unknown unit (lb/in)"],
    // But a torque is never a quotient: the stroke is a slip. 60 in-lb is 6.779 N·m, 18 ft-lb 24.40, 1.2 kgf·m 11.77.
    ["60-80 in/lb in Nm", ["6.8-9 N·m"]],
    ["18 ft/lb in Nm", ["24 N·m"]],
    ["60-80 in.lbs in Nm", ["6.8-9 N·m"]],
    ["18 ft.lbs in Nm", ["24 N·m"]],
    ["1.2 m-kg in Nm", ["11.8 N·m"]],
    ["1.2 m·kg in Nm", ["11.8 N·m"]],
    ["25 Nm in ft-lb/in-lb", ["18.4 ft-lb", "221 in-lb"]],
    // A maximum is rounded down and a minimum up: 10 N·m is 7.3756 ft-lb and 88.507 in-lb, 36 psi 2.4821 bar.
    ["max 10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["max.10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["10 Nm maximum in ft-lb", ["at most 7.3 ft-lb"]],
    ["at most 10 Nm in in-lb", ["at most 88 in-lb"]],
    ["no more than 10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["up to 10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["not over 10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["≤ 10 Nm in ft-lb", ["at most 7.3 ft-lb"]],
    ["min 10 Nm in ft-lb", ["at least 7.4 ft-lb"]],
    ["minimum 36 psi in bar", ["at least 2.49 bar"]],
    ["at least 10 Nm in in-lb", ["at least 89 in-lb"]],
    // Consumption runs the other way round: 40 mpg is 5.8804 litres.
    ["at least 40 mpg us in l/100km", ["at most 5.8 L/100 km"]],
    ["at most 40 mpg us in l/100km", ["at least 5.9 L/100 km"]],
    // Two bounds are a window, from whichever end.
    ["min 60 max 80 in-lb in Nm", ["6.8-9 N·m"]],
    ["max 80 min 60 in-lb in Nm", ["6.8-9 N·m"]],
    ["60 up to 80 in-lb in Nm", ["6.8-9 N·m"]],
    ["80-60 in-lb in Nm", ["6.8-9 N·m"]],
    ["max 60-80 in-lb in Nm", ["6.8-9 N·m"]],
    // Parts of an inch: 2.4 mm is 6.047/64 and 3.024/32 in.
    ["2.4 mm in 64ths of an inch", ["6 1/64 in"]],
    ["2.4 mm in 64ths", ["6 1/64 in"]],
    ["2.4 mm in 32nds", ["3 1/32 in"]],
    ["0.10 mm in thou", ["3.9 thou"]],
    // Never fewer than two significant digits, nor rounded by more than a fiftieth.
    ["1 imperial gallon to US gallons", ["1.2 US gal"]],
    ["1 kgf.m to Nm", ["9.8 N·m"]],
    ["1 US qt to L", ["0.95 L"]],
    ["1/2 Nm in in-lb", ["4.4 in-lb"]],
    ["1 mm in in", ["0.039 in"]],
    ["3 kg in lb", ["6.6 lb"]],
    ["1 Nm in ft-lb", ["0.74 ft-lb"]],
    ["9 ± 1 in-lb to Nm", ["0.904-1.129 N·m"]],
    ["40 F in C", ["4.4 °C"]],
    ["12 in in ft", ["1 ft"]],
    ["3 h", ["3 h"]],
    // The units before the figure.
    ["psi to bar 36", ["2.48 bar"]],
    ["convert psi to bar: 36", ["2.48 bar"]],
    ["in to mm 7/16", ["11.11 mm"]],
    ["1e5 kPa", "exponent"],
    ["1.5x10^5 kPa in psi", "exponent"],
    ["33/36 psi", "pair"],
    ["33 psi/36 psi in bar", "pair"],
    ["2.3/2.5 bar in psi", "pair"],
    ["1/2 psi in kPa", ["3.4 kPa"]],
    // What another command answers.
    ["what torque for M8 8.8 bolt", "torque of a fastener"],
    ["torque for a 3/8 bolt?", "torque of a fastener"],
    ["how tight is M6", "torque of a fastener"],
    ["M8 bolt torque 24 Nm in ft-lb", ["17.7 ft-lb"]],
    ["does a 13 mm spanner fit 1/2 in", "spanner for a hex"],
    ["which spanner fits 11 mm", "spanner for a hex"],
    ["which socket for a 7/16 head", "spanner for a hex"],
    ["which drill is 7/16 in mm", ["11.11 mm"]],
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
    expect(ask("2.2 ± 0.1 bar in psi")).toMatchObject({ from: 2.1, to: 2.3, nominal: 2.2 });
  });
  // 25 ft-lb is 33.895 N·m: rounded to the nearest it would lie above the window that ends with it.
  test.each<[string, number | null, number | null]>([
    ["25 +0/-3 ft-lb to Nm", 25, null],
    ["20 +2/-1 Nm in ft-lb", 20, 14.75],
    ["10 ± 1 Nm in ft-lb", 10, 7.38],
    // 31.908 psi: rounded to the nearest, not up.
    ["2.2 ± 0.1 bar in psi", 2.2, 31.9],
    ["20 +0.1/-0.1 Nm in in-lb", 20, 177.01],
    ["60-80 in-lb in Nm", null, null],
  ])("%s: nominally %d, which is %d", (text, nominal, converted) => {
    const asked = ask(text);
    expect(asked).toMatchObject({ is: "converted", nominal });
    expect(asked.is === "converted" && asked.answers.map((a) => a.nominal)).toEqual([converted]);
  });
  test("a nominal value printed never lies outside its window", () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 500 }), fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 5 }), (value, more, less) => {
        const asked = ask(`${value} +${more}/-${less} ft-lb in Nm`);
        if (asked.is === "refused") throw new Error(asked.why);
        for (const a of asked.answers) if (a.nominal !== null) expect(a.nominal > a.from && a.nominal < a.to).toBe(true);
      }),
    );
  });
  test.each<[string, number]>([
    ["20 Nm + 90° in ft-lb", 90],
    ["20 Nm + 90 deg in ft-lb", 90],
    ["20 Nm then 90° in ft-lb", 90],
    ["20 Nm plus 1/4 turn in ft-lb", 90],
    ["20 Nm and a quarter turn in ft-lb", 90],
    ["20 Nm + half a turn to ft-lb", 180],
    ["20 Nm + three quarters of a turn to ft-lb", 270],
  ])("%s: the torque is converted and the angle kept", (text, turn) => {
    // 20 N·m is 14.7512 ft-lb.
    expect(ask(text)).toMatchObject({ is: "converted", turn, named: true, answers: [{ unit: "ft-lb", from: 14.8 }] });
  });
  test("an angle alone is one, and none stands behind anything but a torque", () => {
    expect(answers("quarter turn")).toEqual(["90 °"]);
    expect(answers("90 deg in turns")).toEqual(["0.25 turn"]);
    expect(answers("36 psi + 90°")).toBe("unknown unit (+ 90°)");
  });
  test.each(["5 furlongs in km", "24 Nm in foot pouns", "9 N/mm in lb/in", "5 Nm to bananas", "1e5 kPa"])(
    "%s is certainly a question, though it has no answer",
    (text) => {
      expect(ask(text)).toMatchObject({ is: "refused", named: true });
    },
  );
  test.each(["60-80 in-lb", "10-12 Nm", "32.5-36 psi", "1.5-2 kgf·m", "4-5 mm", "40-50 mpg us", "9 ± 1 in-lb", "25 +0/-3 ft-lb", "14,820-14,830 mi"])(
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
