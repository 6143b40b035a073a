import fc from "fast-check";
import Qty from "js-quantities";
import { create, all as everything } from "mathjs";
import { describe, expect, test } from "vitest";
import { convert, dimensionOf, fromCanonical, toCanonical, UNIT_IDS, UNITS, type UnitId } from "../../../src/core/quantity/units.ts";

const math = create(everything ?? {});
const to = (value: number, from: UnitId, into: UnitId): number => {
  const converted = convert(value, from, into);
  if (converted.is === "refused") throw new Error(converted.why);
  return converted.value;
};
const close = (ours: number, theirs: number, relative = 1e-12) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(relative * Math.max(1e-9, Math.abs(theirs)));

describe("factors", () => {
  // NIST SP 811 (2008), App. B.8, and exact definitions (international yard and pound 1959, standard gravity), to the last published digit.
  test.each<[UnitId, UnitId, number]>([
    ["lbf", "N", 4.4482216152605],
    ["kgf", "N", 9.80665],
    ["in-lb", "N·m", 0.1129848290276167],
    ["ft-lb", "N·m", 1.3558179483314],
    ["kgf·m", "N·m", 9.80665],
    ["kgf·cm", "N·m", 0.0980665],
    ["ft-lb", "in-lb", 12],
    ["kgf·m", "ft-lb", 7.23301385120989],
    ["N·m", "ft-lb", 0.737562149277265],
    ["N·m", "in-lb", 8.85074579132718],
    ["psi", "kPa", 6.89475729316836],
    ["bar", "kPa", 100],
    ["kgf/cm²", "kPa", 98.0665],
    ["psi", "bar", 0.0689475729316836],
    ["bar", "psi", 14.5037737730209],
    ["kPa", "psi", 0.145037737730209],
    ["kgf/cm²", "psi", 14.2233433071196],
    ["inHg", "kPa", 3.386388640341],
    ["mmHg", "kPa", 0.133322387415],
    ["in", "mm", 25.4],
    ["1/32 in", "mm", 0.79375],
    ["ft", "mm", 304.8],
    ["mi", "km", 1.609344],
    ["km", "mi", 0.621371192237334],
    ["mph", "km/h", 1.609344],
    ["US gal", "L", 3.785411784],
    ["US qt", "L", 0.946352946],
    ["US pt", "L", 0.473176473],
    ["US fl oz", "mL", 29.5735295625],
    ["imp gal", "L", 4.54609],
    ["imp qt", "L", 1.1365225],
    ["imp pt", "L", 0.56826125],
    ["imp fl oz", "mL", 28.4130625],
    ["oz", "g", 28.349523125],
    ["lb", "kg", 0.45359237],
    ["hp", "kW", 0.74569987158227],
    ["PS", "kW", 0.73549875],
    ["mpg US", "L/100 km", 235.214583333333],
    ["mpg imp", "L/100 km", 282.480936331822],
  ])("1 %s in %s", (from, into, value) => close(to(1, from, into), value));

  // Worked conversions printed by GNU Units 2.22 to twelve digits.
  test.each<[number, UnitId, UnitId, number]>([
    [89, "in-lb", "N·m", 10.0556497835],
    [10, "N·m", "in-lb", 88.5074579133],
    [10, "N·m", "kgf·m", 1.01971621298],
    [108, "N·m", "ft-lb", 79.6567121219],
    [80, "ft-lb", "N·m", 108.465435867],
    [250, "kgf·cm", "N·m", 24.516625],
    [36, "psi", "kPa", 248.211262554],
    [2.25, "kgf/cm²", "psi", 32.002522441],
    [12_000, "mi", "km", 19312.128],
    [6000, "km", "mi", 3728.22715342],
    [5, "US gal", "L", 18.92705892],
    [1, "imp pt", "US fl oz", 19.2151988081],
    [100, "PS", "hp", 98.632007062],
    [68, "°F", "°C", 20],
    [-40, "°F", "°C", -40],
    [25, "°C", "°F", 77],
    [98.6, "°F", "°C", 37],
    [230, "°C", "°F", 446],
    [40, "mpg US", "L/100 km", 5.880364583],
    [50, "mpg imp", "L/100 km", 5.649618727],
    [20, "km/L", "L/100 km", 5],
  ])("%d %s in %s", (value, from, into, expected) => close(to(value, from, into), expected, 1e-9));
});

/** Names of ours in two independent libraries. js-quantities has no ft-lb as torque and builds pressure and torque from products. */
const THEIRS: readonly (readonly [UnitId, string, string])[] = [
  ["mm", "mm", "mm"],
  ["cm", "cm", "cm"],
  ["in", "inch", "in"],
  ["ft", "foot", "ft"],
  ["mi", "mile", "mi"],
  ["km", "km", "km"],
  ["psi", "psi", "psi"],
  ["bar", "bar", "bar"],
  ["kPa", "kPa", "kPa"],
  ["N·m", "N m", "N*m"],
  ["ft-lb", "lbf foot", "lbf*ft"],
  ["in-lb", "lbf inch", "lbf*in"],
  ["kg", "kg", "kg"],
  ["g", "g", "g"],
  ["lb", "lb", "lb"],
  ["oz", "oz", "oz"],
  ["km/h", "km/h", "km/h"],
  ["mph", "mi/h", "mi/h"],
  ["L", "l", "l"],
  ["mL", "ml", "ml"],
  ["US gal", "gallon", "gal"],
  ["US qt", "quart", "qt"],
  ["N", "N", "N"],
  ["lbf", "lbf", "lbf"],
];

test("random conversions agree with mathjs and with js-quantities as far as each holds its factors", () => {
  const pairs = THEIRS.flatMap((a) => THEIRS.filter((b) => a !== b && dimensionOf(a[0]) === dimensionOf(b[0])).map((b) => [a, b] as const));
  fc.assert(
    fc.property(fc.constantFrom(...pairs), fc.double({ min: 1e-3, max: 1e6, noNaN: true }), ([a, b], value) => {
      const ours = to(value, a[0], b[0]);
      // mathjs holds psi to twelve digits.
      close(ours, math.unit(value, a[1]).toNumber(b[1]), /psi/.test(a[1] + b[1]) ? 1e-9 : 1e-12);
      // js-quantities holds pound-force, psi, ounces and gallons rounded to about seven digits, so units built on them agree to that only.
      const rounded = /psi|lbf|oz|lb|gal|qt/.test(a[2] + b[2]);
      close(ours, Qty(value, a[2]).to(b[2]).scalar, rounded ? 5e-7 : 2e-12);
    }),
    { numRuns: 2000 },
  );
});

test("there and back returns the figure", () => {
  fc.assert(
    fc.property(fc.constantFrom(...UNIT_IDS), fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (unit, value) => {
      // A temperature loses what the offset adds: judged beside 300 degrees, not beside itself.
      expect(Math.abs(fromCanonical(toCanonical(value, unit), unit) - value)).toBeLessThanOrEqual(1e-12 * Math.max(300, value));
    }),
  );
});

test("torque is not energy's namesake, and pressure is not length: other dimensions are refused", () => {
  expect(convert(1, "N·m", "psi")).toEqual({ is: "refused", why: "other dimension" });
  expect(convert(-300, "°C", "°F")).toEqual({ is: "refused", why: "below absolute zero" });
  expect(convert(0, "mpg US", "L/100 km")).toEqual({ is: "refused", why: "out of range" });
});

test("every unit has a symbol of its own in its dimension and a source", () => {
  for (const unit of UNIT_IDS) {
    expect(UNITS[unit].source.length).toBeGreaterThan(5);
    expect(UNIT_IDS.filter((other) => UNITS[other].symbol === UNITS[unit].symbol && dimensionOf(other) === dimensionOf(unit))).toEqual([unit]);
  }
});
