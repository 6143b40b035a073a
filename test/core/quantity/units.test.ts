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

  // Worked conversions printed by GNU Units 2.22 to twelve digits, consumption worked out from the exact gallon and mile to nine decimals. The whole sheet but for
  // spring rates, which are no unit here; the pressure of 29.92 inHg is printed in hectopascals there.
  test.each<[number, UnitId, UnitId, number]>([
    [89, "in-lb", "N·m", 10.0556497835],
    [10, "N·m", "in-lb", 88.5074579133],
    [10, "N·m", "ft-lb", 7.37562149277],
    [10, "N·m", "kgf·m", 1.01971621298],
    [1, "kgf·m", "ft-lb", 7.23301385121],
    [108, "N·m", "ft-lb", 79.6567121219],
    [80, "ft-lb", "N·m", 108.465435867],
    [250, "kgf·cm", "N·m", 24.516625],
    [12, "ft-lb", "in-lb", 144],
    [36, "psi", "kPa", 248.211262554],
    [36, "psi", "bar", 2.48211262554],
    [250, "kPa", "psi", 36.2594344326],
    [2.5, "bar", "psi", 36.2594344326],
    [2.9, "bar", "psi", 42.0609439418],
    [2.25, "kgf/cm²", "psi", 32.002522441],
    [2.25, "kgf/cm²", "kPa", 220.649625],
    [29.92, "inHg", "kPa", 101.320748119],
    [12_000, "mi", "km", 19312.128],
    [6000, "km", "mi", 3728.22715342],
    [2, "1/32 in", "mm", 1.5875],
    [5, "US gal", "L", 18.92705892],
    [5, "imp gal", "L", 22.73045],
    [3.5, "US qt", "L", 3.312235311],
    [4, "L", "US qt", 4.22675283773],
    [1, "imp pt", "US fl oz", 19.2151988081],
    [16, "US fl oz", "mL", 473.176473],
    [450, "lb", "kg", 204.1165665],
    [100, "hp", "kW", 74.5699871582],
    [100, "PS", "kW", 73.549875],
    [100, "PS", "hp", 98.632007062],
    [68, "°F", "°C", 20],
    [-40, "°F", "°C", -40],
    [25, "°C", "°F", 77],
    [98.6, "°F", "°C", 37],
    [230, "°C", "°F", 446],
    [40, "mpg US", "L/100 km", 5.880364583],
    [40, "mpg imp", "L/100 km", 7.062023408],
    [50, "mpg US", "L/100 km", 4.704291667],
    [50, "mpg imp", "L/100 km", 5.649618727],
    [60, "mpg US", "L/100 km", 3.920243056],
    [60, "mpg imp", "L/100 km", 4.708015606],
    [5, "L/100 km", "mpg US", 47.042916667],
    [5, "L/100 km", "mpg imp", 56.496187266],
    [20, "km/L", "L/100 km", 5],
  ])("%d %s in %s", (value, from, into, expected) => close(to(value, from, into), expected, 1e-9));
});

/** One of ours by its definition, in units that both libraries hold exactly: so many times that. */
type Theirs = readonly [times: number, mathjs: string, jsQuantities: string];
const G = 9.80665;
const MERCURY = 13_595.1;
const THEIRS: Readonly<Record<Exclude<UnitId, "°C" | "°F" | "K" | "L/100 km">, Theirs>> = {
  mi: [1, "mile", "mi"],
  km: [1, "km", "km"],
  mm: [1, "mm", "mm"],
  cm: [1, "cm", "cm"],
  m: [1, "m", "m"],
  in: [1, "inch", "in"],
  ft: [1, "foot", "ft"],
  thou: [0.001, "inch", "in"],
  "1/32 in": [1 / 32, "inch", "in"],
  "1/64 in": [1 / 64, "inch", "in"],
  kPa: [1, "kPa", "kPa"],
  bar: [1, "bar", "bar"],
  psi: [G, "lb m / (s^2 inch^2)", "lb*m/s2*in2"],
  "kgf/cm²": [G, "kg m / (s^2 cm^2)", "kg*m/s2*cm2"],
  inHg: [MERCURY * G, "kg inch / (m^2 s^2)", "kg*in/m2*s2"],
  mmHg: [MERCURY * G, "kg mm / (m^2 s^2)", "kg*mm/m2*s2"],
  N·m: [1, "N m", "N*m"],
  "ft-lb": [G, "lb m foot / s^2", "lb*m*ft/s2"],
  "in-lb": [G, "lb m inch / s^2", "lb*m*in/s2"],
  kgf·m: [G, "kg m^2 / s^2", "kg*m2/s2"],
  kgf·cm: [G, "kg m cm / s^2", "kg*m*cm/s2"],
  "Δ°C": [1, "K", "degC"],
  "Δ°F": [1, "degR", "degF"],
  L: [1, "l", "l"],
  mL: [1, "ml", "ml"],
  "US gal": [231, "inch^3", "in3"],
  "US qt": [231 / 4, "inch^3", "in3"],
  "US pt": [231 / 8, "inch^3", "in3"],
  "US fl oz": [231 / 128, "inch^3", "in3"],
  "imp gal": [4.54609, "l", "l"],
  "imp qt": [4.54609 / 4, "l", "l"],
  "imp pt": [4.54609 / 8, "l", "l"],
  "imp fl oz": [4.54609 / 160, "l", "l"],
  kg: [1, "kg", "kg"],
  g: [1, "g", "g"],
  lb: [1, "lb", "lb"],
  oz: [1 / 16, "lb", "lb"],
  "km/h": [1, "km/h", "km/h"],
  mph: [1, "mi/h", "mi/h"],
  "m/s": [1, "m/s", "m/s"],
  kW: [1, "kW", "kW"],
  PS: [75 * G, "kg m^2 / s^3", "kg*m2/s3"],
  hp: [550 * G, "lb foot m / s^3", "lb*ft*m/s3"],
  "km/L": [1, "km/l", "km/l"],
  "mpg US": [1 / 231, "mile / inch^3", "mi/in3"],
  "mpg imp": [1 / 4.54609, "mile / l", "mi/l"],
  V: [1, "V", "V"],
  mV: [1, "mV", "mV"],
  h: [1, "hour", "h"],
  "°": [1, "deg", "deg"],
  turn: [360, "deg", "deg"],
  N: [1, "N", "N"],
  lbf: [G, "lb m / s^2", "lb*m/s2"],
  kgf: [G, "kg m / s^2", "kg*m/s2"],
};
const figures = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const defined = Object.keys(THEIRS) as (keyof typeof THEIRS)[];

describe("random conversions agree with two independent libraries to 1e-12", () => {
  test("every unit is among them", () => {
    expect([...defined, "°C", "°F", "K", "L/100 km"].sort()).toEqual([...UNIT_IDS].sort());
  });
  const pairs = defined.flatMap((a) => defined.filter((b) => a !== b && dimensionOf(a) === dimensionOf(b)).map((b) => [a, b] as const));
  test("lengths, forces, pressures and the rest, each by its definition", () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), figures, ([a, b], value) => {
        const [ours, [times, mathjs, jsq], [per, intoMathjs, intoJsq]] = [to(value, a, b), THEIRS[a], THEIRS[b]];
        close(ours, math.unit(value * times, mathjs).toNumber(intoMathjs) / per);
        close(ours, Qty(value * times, jsq).to(intoJsq).scalar / per);
      }),
      { numRuns: 5000 },
    );
  });
  test("consumption, which runs the other way round", () => {
    fc.assert(
      fc.property(fc.constantFrom("km/L", "mpg US", "mpg imp"), fc.double({ min: 0.1, max: 1000, noNaN: true }), (unit, value) => {
        const [times, mathjs, jsq] = THEIRS[unit];
        close(to(value, unit, "L/100 km"), 100 / math.unit(value * times, mathjs).toNumber("km/l"));
        close(to(value, unit, "L/100 km"), 100 / Qty(value * times, jsq).to("km/l").scalar);
      }),
    );
  });
  test("temperatures, judged beside 300 degrees, since an offset takes figures away", () => {
    const names = { "°C": ["degC", "tempC"], "°F": ["degF", "tempF"], K: ["K", "tempK"] } as const;
    const all = ["°C", "°F", "K"] as const;
    fc.assert(
      fc.property(fc.constantFrom(...all), fc.constantFrom(...all), fc.double({ min: 1, max: 1000, noNaN: true }), (a, b, value) => {
        const theirs = [math.unit(value, names[a][0]).toNumber(names[b][0]), Qty(value, names[a][1]).to(names[b][1]).scalar];
        for (const each of theirs) expect(Math.abs(to(value, a, b) - each)).toBeLessThanOrEqual(1e-12 * Math.max(300, Math.abs(each)));
      }),
    );
  });
  // By their own names both hold some factors rounded: mathjs psi, mmHg and hp, js-quantities whatever stands on pound-force, gallon and ounce.
  test.each([
    ["psi", "kPa", "psi", "kPa", 1e-9],
    ["hp", "kW", "hp", "kW", 1e-9],
    ["mmHg", "kPa", "mmHg", "kPa", 5e-6],
    ["lbf", "N", "lbf", "N", 1e-12],
    ["US gal", "L", "gallon", "l", 1e-12],
    ["US fl oz", "mL", "fluidounce", "ml", 1e-12],
    ["oz", "g", "oz", "g", 1e-12],
  ] as const)("mathjs by its own name: %s in %s", (a, b, mathjs, into, relative) => {
    close(to(36, a, b), math.unit(36, mathjs).toNumber(into), relative);
  });
  test.each([
    ["psi", "kPa", "psi", "kPa", 5e-7],
    ["lbf", "N", "lbf", "N", 5e-7],
    ["hp", "kW", "hp", "kW", 5e-7],
    ["mmHg", "kPa", "mmHg", "kPa", 5e-7],
    ["inHg", "kPa", "inHg", "kPa", 5e-7],
    ["US gal", "L", "gal", "l", 5e-7],
    ["oz", "g", "oz", "g", 5e-7],
  ] as const)("js-quantities by its own name: %s in %s", (a, b, jsq, into, relative) => {
    close(to(36, a, b), Qty(36, jsq).to(into).scalar, relative);
  });
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
