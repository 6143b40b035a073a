import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type NumberStyle, parseNumber } from "../../../src/core/quantity/number.ts";
import { parseAmount } from "../../../src/core/quantity/parse.ts";
import { roundTo, windowInward } from "../../../src/core/quantity/print.ts";
import { ENGLISH_UNIT_NAMES as NAMES } from "../../../src/words/en/unit-names.ts";

const POINT: NumberStyle = { decimal: ".", group: "," };
const COMMA: NumberStyle = { decimal: ",", group: "." };
const amount = (text: string, style = POINT) => parseAmount(text, NAMES, style);

describe("amounts as riders type them", () => {
  test.each<[string, number, string | null]>([
    ["14,820 mi", 14_820, "mi"],
    ["14 820", 14_820, null],
    ["14\u202f820 km", 14_820, "km"],
    ["14\u00a0820 km", 14_820, "km"],
    ["14'820 km", 14_820, "km"],
    ["14820mi", 14_820, "mi"],
    ["23.9k km", 23_900, "km"],
    ["1,234.5 km", 1234.5, "km"],
    ["1.234,5 km", 1234.5, "km"],
    ["33 psi", 33, "psi"],
    ["33psi", 33, "psi"],
    ["33 PSI", 33, "psi"],
    ["2,1 bar", 2.1, "bar"],
    ["2.1bar", 2.1, "bar"],
    ["3/32", 3 / 32, null],
    ["3/32 in", 3 / 32, "in"],
    ["1 1/2 in", 1.5, "in"],
    ["1-1/2 in", 1.5, "in"],
    ["½ in", 0.5, "in"],
    ["1½ in", 1.5, "in"],
    ["4.5mm", 4.5, "mm"],
    [".5 mm", 0.5, "mm"],
    ["12.6V", 12.6, "V"],
    ["-10 °C", -10, "°C"],
    ["−10 C", -10, "°C"],
    ["10Nm", 10, "N·m"],
    ["10 N.m", 10, "N·m"],
    ["10 N·m", 10, "N·m"],
    ["10 newton metres", 10, "N·m"],
    ["60 in-lb", 60, "in-lb"],
    ["60 inch pounds", 60, "in-lb"],
    ["80 lb-ft", 80, "ft-lb"],
    ["80 ft lbs", 80, "ft-lb"],
    ["80 foot-pounds", 80, "ft-lb"],
    ["5 ft 3 in", 5.25, "ft"],
    ["6 lb 2 oz", 6.125, "lb"],
    ["29.9 inHg", 29.9, "inHg"],
    ["300 mmHg", 300, "mmHg"],
    ["35 thou", 35, "thou"],
    ["3.2 L", 3.2, "L"],
    ["0.5 L/100 km", 0.5, "L/100 km"],
    ["60 mph", 60, "mph"],
    ["100 km/h", 100, "km/h"],
    ["1 200 000 km", 1_200_000, "km"],
    ['7/16"', 7 / 16, "in"],
  ])("%s", (text, value, unit) => {
    expect(amount(text)).toMatchObject({ is: "amount", from: value, to: value, unit });
  });

  test.each<[string, number, number, number | null]>([
    ["60-80 in-lb", 60, 80, null],
    ["60–80 in-lb", 60, 80, null],
    ["60 to 80 in-lb", 60, 80, null],
    ["60 in-lb - 80 in-lb", 60, 80, null],
    ["10 ± 1 Nm", 9, 11, 10],
    ["10 +/- 1 Nm", 9, 11, 10],
    ["2.2-2.5 bar", 2.2, 2.5, null],
  ])("%s is a window", (text, from, to, middle) => {
    expect(amount(text)).toMatchObject({ is: "amount", from, to, middle });
  });

  test("three digits behind the other mark can be read two ways, and both are named", () => {
    expect(amount("14.820 km")).toMatchObject({ from: 14_820, other: 14.82 });
    expect(amount("-1.250 °C")).toMatchObject({ from: -1250, other: -1.25 });
    expect(amount("14.820 km", COMMA)).toMatchObject({ from: 14_820, other: null });
    expect(amount("14,820 km", COMMA)).toMatchObject({ from: 14_820, other: 14.82 });
    expect(amount("14,82 km")).toMatchObject({ from: 14.82, other: null });
  });

  test("units that mean two things are named, not chosen", () => {
    expect(amount("2 gal")).toEqual({ is: "ambiguous", why: "unit", candidates: ["US gal", "imp gal"] });
    expect(amount("1 pint")).toEqual({ is: "ambiguous", why: "unit", candidates: ["US pt", "imp pt"] });
  });

  test.each(["", "hello", "mi 14", "   ", "\u202e123", "🏍️", "x".repeat(4000), `${"9".repeat(300)} mi`])("%j is no quantity", (text) => {
    expect(amount(text).is).toBe("refused");
  });
  test("an unknown unit is said back", () => {
    expect(amount("7 furlongs")).toEqual({ is: "refused", why: "unknown unit", word: "furlongs" });
  });
});

test("a number printed in a style is read back in that style", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 9_999_999 }), fc.constantFrom<[string, NumberStyle]>(["en-GB", POINT], ["de-DE", COMMA]), (n, [locale, style]) => {
      expect(parseNumber(new Intl.NumberFormat(locale).format(n), 0, style)?.value).toBe(n);
    }),
  );
});

test("a window is rounded inward and never turned over", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
      fc.integer({ min: 0, max: 3 }),
      (from, width, decimals) => {
        const window = windowInward(from, from + width, decimals);
        expect(window.from).toBeGreaterThanOrEqual(from - 1e-8);
        expect(window.to).toBeLessThanOrEqual(from + width + 1e-8);
        expect(window.from).toBeLessThanOrEqual(window.to);
      },
    ),
  );
});

test("halves round away from zero as typed, not as doubles have them", () => {
  expect([roundTo(2.675, 2), roundTo(1.005, 2), roundTo(-2.5, 0), roundTo(0.5, 0)]).toEqual([2.68, 1.01, -3, 1]);
});

test("any text is answered in time that grows with its length only", () => {
  fc.assert(fc.property(fc.string({ maxLength: 400 }), (text) => ["amount", "refused", "ambiguous"].includes(amount(text).is)));
});
