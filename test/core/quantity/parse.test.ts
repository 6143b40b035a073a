import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type NumberStyle, parseNumber } from "../../../src/core/quantity/number.ts";
import { parseAmount } from "../../../src/core/quantity/parse.ts";
import { figureRounded, honestDecimals, roundTo, windowInward } from "../../../src/core/quantity/print.ts";
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
    ["5'3\"", 5.25, "ft"],
    ["5' 3\"", 5.25, "ft"],
    ["6'0\"", 6, "ft"],
    ["5'", 5, "ft"],
    ["12'", 12, "ft"],
    ["3''", 3, "in"],
    ["1'200'000 km", 1_200_000, "km"],
    ["1.2 m-kg", 1.2, "kgf·m"],
    ["18 ft/lb", 18, "ft-lb"],
    ["60 in/lbs", 60, "in-lb"],
    ["6 64ths of an inch", 6, "1/64 in"],
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
    ["80-60 in-lb", 60, 80, null],
    ["25 +0/-3 ft-lb", 22, 25, 25],
  ])("%s is a window", (text, from, to, nominal) => {
    expect(amount(text)).toMatchObject({ is: "amount", from, to, nominal });
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
    expect(amount("9 N/mm")).toEqual({ is: "refused", why: "unknown unit", word: "N/mm" });
    expect(amount("5 L per min")).toEqual({ is: "refused", why: "unknown unit", word: "L per min" });
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

test("a window gives up no more than a fortieth of its width at either end", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 1e4, noNaN: true }),
      fc.double({ min: 1e-2, max: 1e3, noNaN: true }),
      fc.integer({ min: 0, max: 3 }),
      (from, width, decimals) => {
        const window = windowInward(from, from + width, decimals);
        expect(Math.max(window.from - from, from + width - window.to)).toBeLessThanOrEqual(width * 0.025 + 1e-9);
      },
    ),
  );
  // 79.657 to 97.358 in-lb is 17.7 wide: 80 to 97 takes 1.9 % and 2.0 % off.
  expect(windowInward(79.657, 97.358, 0)).toEqual({ from: 80, to: 97, decimals: 0 });
  expect(windowInward(29.828, 33.895, 0)).toEqual({ from: 29.9, to: 33.8, decimals: 1 });
});

test("a figure has two significant digits at least, rounding moves it by a fiftieth at most, and no more digits than it deserves", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), fc.constantFrom(1, 0.1, 100), (value, step) => {
      const { value: rounded } = figureRounded(value, step, "N·m");
      expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.02 * value + 1e-12);
      expect(figureRounded(value, step, "N·m", "down").value).toBeLessThanOrEqual(value * (1 + 1e-14));
      expect(figureRounded(value, step, "N·m", "up").value).toBeGreaterThanOrEqual(value * (1 - 1e-14));
    }),
  );
  expect(figureRounded(9.80665, 9.8, "N·m")).toEqual({ value: 9.8, decimals: 1 });
  // 10.4 would be printed as 10, four hundredths off.
  expect(figureRounded(10.4, 1, "N·m")).toEqual({ value: 10.4, decimals: 1 });
  expect(figureRounded(23_850.478, 1.6, "km")).toEqual({ value: 23_850, decimals: 0 });
  expect(figureRounded(1, 1, "h")).toEqual({ value: 1, decimals: 0 });
  expect(figureRounded(0, 1, "N·m")).toEqual({ value: 0, decimals: 0 });
  expect(figureRounded(-17.78, 0.6, "°C")).toEqual({ value: -17.8, decimals: 1 });
});

test("a figure typed finer than any scale shows is printed one decimal finer than the scale, no more", () => {
  // A bar gauge shows hundredths, a ruler in millimetres tenths.
  expect([honestDecimals(1e-6, "bar"), honestDecimals(1e-6, "mm"), honestDecimals(0.07, "bar"), honestDecimals(100, "km")]).toEqual([3, 2, 2, 0]);
});

test("halves round away from zero as typed, not as doubles have them", () => {
  expect([roundTo(2.675, 2), roundTo(1.005, 2), roundTo(-2.5, 0), roundTo(0.5, 0)]).toEqual([2.68, 1.01, -3, 1]);
});

test("any text is answered in time that grows with its length only", () => {
  fc.assert(fc.property(fc.string({ maxLength: 400 }), (text) => ["amount", "refused", "ambiguous"].includes(amount(text).is)));
});
