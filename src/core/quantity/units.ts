// Units as rows: symbol, what they measure, and the exact factor from their definition.
// Factors are written as the decimal or quotient of the definition; the number is worked out once.

/** What a quantity measures. Torque and energy share their SI units and are still two things; a wrench must not mix them. */
export type Dimension =
  | "distance"
  | "length"
  | "pressure"
  | "torque"
  | "temperature"
  | "temperature difference"
  | "volume"
  | "mass"
  | "speed"
  | "power"
  | "consumption"
  | "voltage"
  | "engine hours"
  | "angle"
  | "force";

type UnitRow = {
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Canonical units in one of this unit: a product and quotient of exact figures, [numerators, denominators]. */
  readonly factor: readonly [readonly number[], readonly number[]];
  /** Canonical value of zero in this unit (temperatures). */
  readonly offset?: readonly [number, number];
  /** Reciprocal: canonical = factor / value (miles per gallon against litres per 100 km). */
  readonly reciprocal?: true;
  /** Steps that tools and scales of this unit show, as decimals. */
  readonly decimals: number;
  readonly source: string;
};

const SI = "SI definition";
const YARD = "international yard and pound, 1959: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg";
const G = "standard gravity 9.806 65 m/s2 with the 1959 pound (NIST SP 811, App. B.8)";
const LB = 0.45359237;
const GRAVITY = 9.80665;

/** Canonical: distance 0.1 mm, length mm, pressure kPa, torque N·m, temperature °C, volume L, mass kg, speed km/h, power kW, consumption L/100 km, angle °, force N. */
export const UNITS = {
  mi: { symbol: "mi", dimension: "distance", factor: [[16_093_440], [1]], decimals: 0, source: YARD },
  km: { symbol: "km", dimension: "distance", factor: [[10_000_000], [1]], decimals: 0, source: SI },

  mm: { symbol: "mm", dimension: "length", factor: [[1], [1]], decimals: 1, source: SI },
  cm: { symbol: "cm", dimension: "length", factor: [[10], [1]], decimals: 1, source: SI },
  m: { symbol: "m", dimension: "length", factor: [[1000], [1]], decimals: 2, source: SI },
  in: { symbol: "in", dimension: "length", factor: [[25.4], [1]], decimals: 3, source: YARD },
  ft: { symbol: "ft", dimension: "length", factor: [[304.8], [1]], decimals: 2, source: YARD },
  thou: { symbol: "thou", dimension: "length", factor: [[254], [10_000]], decimals: 1, source: YARD },
  "1/32 in": { symbol: "/32 in", dimension: "length", factor: [[254], [320]], decimals: 1, source: YARD },
  "1/64 in": { symbol: "/64 in", dimension: "length", factor: [[254], [640]], decimals: 1, source: YARD },

  kPa: { symbol: "kPa", dimension: "pressure", factor: [[1], [1]], decimals: 0, source: SI },
  bar: { symbol: "bar", dimension: "pressure", factor: [[100], [1]], decimals: 2, source: "1 bar = 100 kPa (NIST SP 811)" },
  psi: {
    symbol: "psi",
    dimension: "pressure",
    factor: [
      [LB, GRAVITY],
      [0.0254, 0.0254, 1000],
    ],
    decimals: 0,
    source: G,
  },
  "kgf/cm²": { symbol: "kgf/cm²", dimension: "pressure", factor: [[98.0665], [1]], decimals: 2, source: G },
  inHg: {
    symbol: "inHg",
    dimension: "pressure",
    factor: [[13_595.1, GRAVITY, 0.0254], [1000]],
    decimals: 1,
    source: "conventional mercury 13 595.1 kg/m3 (NIST SP 811, App. B.8)",
  },
  mmHg: {
    symbol: "mmHg",
    dimension: "pressure",
    factor: [[13_595.1, GRAVITY, 0.001], [1000]],
    decimals: 0,
    source: "conventional mercury 13 595.1 kg/m3 (NIST SP 811, App. B.8)",
  },

  N·m: { symbol: "N·m", dimension: "torque", factor: [[1], [1]], decimals: 1, source: SI },
  "ft-lb": { symbol: "ft-lb", dimension: "torque", factor: [[LB, GRAVITY, 0.3048], [1]], decimals: 1, source: G },
  "in-lb": { symbol: "in-lb", dimension: "torque", factor: [[LB, GRAVITY, 0.0254], [1]], decimals: 0, source: G },
  kgf·m: { symbol: "kgf·m", dimension: "torque", factor: [[GRAVITY], [1]], decimals: 2, source: G },
  kgf·cm: { symbol: "kgf·cm", dimension: "torque", factor: [[GRAVITY], [100]], decimals: 0, source: G },

  "°C": { symbol: "°C", dimension: "temperature", factor: [[1], [1]], decimals: 0, source: SI },
  "°F": {
    symbol: "°F",
    dimension: "temperature",
    factor: [[5], [9]],
    offset: [-160, 9],
    decimals: 0,
    source: "t/°C = (t/°F - 32)/1.8 (NIST SP 811, App. B.8)",
  },
  K: { symbol: "K", dimension: "temperature", factor: [[1], [1]], offset: [-273.15, 1], decimals: 0, source: SI },
  "Δ°C": { symbol: "°C difference", dimension: "temperature difference", factor: [[1], [1]], decimals: 0, source: SI },
  "Δ°F": { symbol: "°F difference", dimension: "temperature difference", factor: [[5], [9]], decimals: 0, source: "NIST SP 811, App. B.8" },

  L: { symbol: "L", dimension: "volume", factor: [[1], [1]], decimals: 2, source: SI },
  mL: { symbol: "mL", dimension: "volume", factor: [[1], [1000]], decimals: 0, source: SI },
  "US gal": { symbol: "US gal", dimension: "volume", factor: [[231, 2.54, 2.54, 2.54], [1000]], decimals: 2, source: "231 in3 (NIST Handbook 44)" },
  "US qt": { symbol: "US qt", dimension: "volume", factor: [[231, 2.54, 2.54, 2.54], [4000]], decimals: 2, source: "quarter of 231 in3" },
  "US pt": { symbol: "US pt", dimension: "volume", factor: [[231, 2.54, 2.54, 2.54], [8000]], decimals: 2, source: "eighth of 231 in3" },
  "US fl oz": { symbol: "US fl oz", dimension: "volume", factor: [[231, 2.54, 2.54, 2.54], [128_000]], decimals: 1, source: "1/128 of 231 in3" },
  "imp gal": { symbol: "imp gal", dimension: "volume", factor: [[4.54609], [1]], decimals: 2, source: "UK Units of Measurement Regulations 1995: 4.546 09 L" },
  "imp qt": { symbol: "imp qt", dimension: "volume", factor: [[4.54609], [4]], decimals: 2, source: "quarter of 4.546 09 L" },
  "imp pt": { symbol: "imp pt", dimension: "volume", factor: [[4.54609], [8]], decimals: 2, source: "eighth of 4.546 09 L" },
  "imp fl oz": { symbol: "imp fl oz", dimension: "volume", factor: [[4.54609], [160]], decimals: 1, source: "1/160 of 4.546 09 L" },

  kg: { symbol: "kg", dimension: "mass", factor: [[1], [1]], decimals: 1, source: SI },
  g: { symbol: "g", dimension: "mass", factor: [[1], [1000]], decimals: 0, source: SI },
  lb: { symbol: "lb", dimension: "mass", factor: [[LB], [1]], decimals: 1, source: YARD },
  oz: { symbol: "oz", dimension: "mass", factor: [[LB], [16]], decimals: 1, source: YARD },

  "km/h": { symbol: "km/h", dimension: "speed", factor: [[1], [1]], decimals: 0, source: SI },
  mph: { symbol: "mph", dimension: "speed", factor: [[1.609344], [1]], decimals: 0, source: YARD },
  "m/s": { symbol: "m/s", dimension: "speed", factor: [[3.6], [1]], decimals: 1, source: SI },

  kW: { symbol: "kW", dimension: "power", factor: [[1], [1]], decimals: 1, source: SI },
  PS: { symbol: "PS", dimension: "power", factor: [[75, GRAVITY], [1000]], decimals: 0, source: "75 kgf·m/s (NIST SP 811, metric horsepower)" },
  hp: { symbol: "hp", dimension: "power", factor: [[550, LB, GRAVITY, 0.3048], [1000]], decimals: 0, source: "550 ft·lbf/s (NIST SP 811)" },

  "L/100 km": { symbol: "L/100 km", dimension: "consumption", factor: [[1], [1]], decimals: 1, source: SI },
  "km/L": { symbol: "km/L", dimension: "consumption", factor: [[100], [1]], reciprocal: true, decimals: 1, source: SI },
  "mpg US": {
    symbol: "mpg (US)",
    dimension: "consumption",
    factor: [
      [231, 2.54, 2.54, 2.54, 100],
      [1000, 1.609344],
    ],
    reciprocal: true,
    decimals: 1,
    source: "US gallon and mile by definition",
  },
  "mpg imp": {
    symbol: "mpg (imperial)",
    dimension: "consumption",
    factor: [[4.54609, 100], [1.609344]],
    reciprocal: true,
    decimals: 1,
    source: "imperial gallon and mile by definition",
  },

  V: { symbol: "V", dimension: "voltage", factor: [[1], [1]], decimals: 2, source: SI },
  mV: { symbol: "mV", dimension: "voltage", factor: [[1], [1000]], decimals: 0, source: SI },
  h: { symbol: "h", dimension: "engine hours", factor: [[1], [1]], decimals: 1, source: SI },
  "°": { symbol: "°", dimension: "angle", factor: [[1], [1]], decimals: 0, source: SI },
  turn: { symbol: "turns", dimension: "angle", factor: [[360], [1]], decimals: 2, source: "one turn = 360°" },
  N: { symbol: "N", dimension: "force", factor: [[1], [1]], decimals: 0, source: SI },
  lbf: { symbol: "lbf", dimension: "force", factor: [[LB, GRAVITY], [1]], decimals: 0, source: G },
  kgf: { symbol: "kgf", dimension: "force", factor: [[GRAVITY], [1]], decimals: 1, source: G },
} as const satisfies Record<string, UnitRow>;

export type UnitId = keyof typeof UNITS;
export const UNIT_IDS = Object.keys(UNITS) as UnitId[];

const rowOf = (unit: UnitId): UnitRow => UNITS[unit];
const product = (figures: readonly number[]): number => figures.reduce((total, figure) => total * figure, 1);
const FACTORS = new Map<UnitId, number>(UNIT_IDS.map((unit) => [unit, product(rowOf(unit).factor[0]) / product(rowOf(unit).factor[1])]));

export const dimensionOf = (unit: UnitId): Dimension => rowOf(unit).dimension;
export const symbolOf = (unit: UnitId): string => rowOf(unit).symbol;
/** Decimals that a tool or scale of this unit shows. */
export const decimalsOf = (unit: UnitId): number => rowOf(unit).decimals;

/** The figures of a unit's definition, for arithmetic without rounding: canonical = value · above / below + offset, or above / below / value. */
export function figuresOf(unit: UnitId): {
  readonly factor: readonly [readonly number[], readonly number[]];
  readonly offset: readonly [number, number] | null;
  readonly reciprocal: boolean;
} {
  const { factor, offset = null, reciprocal = false } = rowOf(unit);
  return { factor, offset, reciprocal };
}

/** `value` of `unit` in the canonical unit of its dimension. */
export function toCanonical(value: number, unit: UnitId): number {
  const row = rowOf(unit);
  const factor = FACTORS.get(unit) ?? Number.NaN;
  if (row.reciprocal === true) return factor / value;
  return value * factor + (row.offset === undefined ? 0 : row.offset[0] / row.offset[1]);
}

/** A canonical value in `unit`. */
export function fromCanonical(value: number, unit: UnitId): number {
  const row = rowOf(unit);
  const factor = FACTORS.get(unit) ?? Number.NaN;
  if (row.reciprocal === true) return factor / value;
  return (value - (row.offset === undefined ? 0 : row.offset[0] / row.offset[1])) / factor;
}

export type Converted =
  | { readonly is: "converted"; readonly value: number }
  | { readonly is: "refused"; readonly why: "other dimension" | "out of range" | "below absolute zero" };

/** `value` of `from` in `to`; refused when they measure different things or the figure cannot be. Within one unit it comes back as it was. */
export function convert(value: number, from: UnitId, to: UnitId): Converted {
  if (dimensionOf(from) !== dimensionOf(to)) return { is: "refused", why: "other dimension" };
  if (dimensionOf(from) === "temperature" && toCanonical(value, from) < -273.15 - 1e-9) return { is: "refused", why: "below absolute zero" };
  const converted = from === to ? value : fromCanonical(toCanonical(value, from), to);
  return Number.isFinite(converted) && Math.abs(converted) < 1e15 ? { is: "converted", value: converted } : { is: "refused", why: "out of range" };
}
