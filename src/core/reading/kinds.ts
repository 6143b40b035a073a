// The kinds of reading: one row each. Names and "how to measure" are one line per language in words/.
// Limits are not here: they belong to a spec and a place, not to the kind.

import type { Dimension, UnitId } from "../quantity/units.ts";
import type { Place } from "./places.ts";
import { CALIPERS, CYLINDERS, ENDS, LININGS, TYRES, VALVES } from "./places.ts";

export type { Place } from "./places.ts";

/** What a level in a sight glass or a reservoir can be said to be, from empty upward. The number of a level is its place in this list. */
export const LEVELS = ["empty", "below", "low mark", "between", "full", "above"] as const;
export type Level = (typeof LEVELS)[number];

/** A unit of a reading: a unit of quantity, the steps of a level, hundredths of a whole, or the digits of a tyre's date code, which count nothing. */
export type ReadingUnit = UnitId | "level" | "%" | "date code";

export type KindRow = {
  /** What it measures, in the words of core/quantity; a level is one of a few words, a share is in per cent. */
  readonly dimension: Dimension | "level" | "share" | "date code";
  /** Where on the bike it can be taken; empty when there is one place only. */
  readonly places: readonly Place[];
  /** The places to ask about when none was said; empty where none need be. */
  readonly ask: readonly Place[];
  /** Values that a bike can show, in the canonical unit of the dimension: outside it the member is asked. */
  readonly plausible: readonly [number, number];
  /** Units people read it in; the first is taken when a bare number can mean nothing else. */
  readonly units: readonly ReadingUnit[];
  /** What a bare figure can be in each unit. A unit without a range is never meant by a bare figure. */
  readonly usual: Partial<Record<ReadingUnit, readonly [number, number]>>;
  /** Decimals that its tools show where they show more than the unit's scales do, always printed: feeler gauges and micrometers read to 0.01 mm. */
  readonly decimals?: Partial<Record<ReadingUnit, number>>;
};

const LEVEL = { dimension: "level", plausible: [0, LEVELS.length - 1], units: ["level"], usual: {} } as const;
const HUNDREDTHS = { mm: 2 } as const;
const CLEARANCE = { mm: [0.02, 1], in: [0.001, 0.04], thou: [1, 40] } as const;

/**
 * Plausible ranges leave room for error to be a member's, not ours; they judge nothing.
 * Common practice unless a row says otherwise: what the instruments of a workshop show on a motorcycle, widened.
 */
export const READING_KINDS = {
  odometer: { dimension: "distance", places: [], ask: [], plausible: [0, 16_093_440 * 999_999], units: ["mi", "km"], usual: {} },
  "engine hours": { dimension: "engine hours", places: [], ask: [], plausible: [0, 50_000], units: ["h"], usual: { h: [0, 50_000] } },
  // kPa. Road and trail pressures lie between about 10 psi (trail) and 50 psi; a flat tyre shows next to nothing.
  "cold pressure": {
    dimension: "pressure",
    places: TYRES,
    ask: ENDS,
    plausible: [0, 552],
    units: ["psi", "bar", "kPa"],
    usual: { psi: [8, 60], bar: [0.6, 4.2], kPa: [60, 420] },
  },
  // mm. New road tyres carry 4 to 9 mm, off-road blocks up to about 18.
  tread: {
    dimension: "length",
    places: TYRES,
    ask: ENDS,
    plausible: [0, 20],
    units: ["mm", "1/32 in", "in"],
    usual: { mm: [0, 20], "1/32 in": [1, 20], in: [0.01, 0.6] },
  },
  // Week and year as moulded on the tyre, "1417"; of three digits made before 2000. What it means is core/tyre/date-code.ts.
  "tyre date code": { dimension: "date code", places: TYRES, ask: ENDS, plausible: [10, 5399], units: ["date code"], usual: {} },
  // mm of lining. New pads carry 4 to 8.
  "pad thickness": { dimension: "length", places: LININGS, ask: ENDS, plausible: [0, 15], units: ["mm", "in"], usual: { mm: [0, 15], in: [0.01, 0.4] } },
  // mm of lining on the shoes of a drum. New ones carry 3 to 5.
  "shoe thickness": { dimension: "length", places: TYRES, ask: ENDS, plausible: [0, 10], units: ["mm", "in"], usual: { mm: [0, 10], in: [0.01, 0.4] } },
  // mm across the inside of a drum. Drums are 80 to 250 wide, and cast into each is how far it may wear.
  "drum diameter": { dimension: "length", places: ENDS, ask: ENDS, plausible: [60, 330], units: ["mm", "in"], usual: { mm: [70, 330], in: [3, 13] } },
  "disc thickness": {
    dimension: "length",
    places: CALIPERS,
    ask: ENDS,
    plausible: [1, 15],
    units: ["mm", "in"],
    usual: { mm: [1, 15], in: [0.05, 0.4] },
    decimals: HUNDREDTHS,
  },
  // mm from low to high over a turn of the wheel. What is more than a few is no disc.
  "disc runout": {
    ...{ dimension: "length", places: CALIPERS, ask: ENDS, plausible: [0, 3] },
    ...{ units: ["mm", "in", "thou"], usual: { mm: [0, 3], in: [0.001, 0.02], thou: [1, 40] }, decimals: HUNDREDTHS },
  },
  "chain slack": { dimension: "length", places: [], ask: [], plausible: [0, 120], units: ["mm", "in"], usual: { mm: [4, 120], in: [0.2, 3] } },
  // mm over the pitches that were counted (detail.pitches): 20 pitches of a 5/8 in chain are 317.5.
  "chain length": { dimension: "length", places: [], ask: [], plausible: [50, 3000], units: ["mm", "in"], usual: { mm: [100, 3000], in: [4, 60] } },
  // Per cent longer than new, read off a gauge or worked out by the member. None still on is longer by a twentieth and more.
  "chain elongation": { dimension: "share", places: [], ask: [], plausible: [0, 6], units: ["%"], usual: {} },
  "belt deflection": { dimension: "length", places: [], ask: [], plausible: [0, 60], units: ["mm", "in"], usual: { mm: [2, 60], in: [0.1, 1.5] } },
  // V. Six- and twelve-volt batteries.
  "battery voltage": { dimension: "voltage", places: [], ask: [], plausible: [0, 16], units: ["V", "mV"], usual: { V: [2, 16] } },
  "charging voltage": { dimension: "voltage", places: [], ask: [], plausible: [5, 20], units: ["V", "mV"], usual: { V: [5, 20] } },
  "brake fluid level": { ...LEVEL, places: ENDS, ask: ENDS },
  // °C at which a tester boils it, and per cent of water that another shows: between a fluid that is full of it and a new one of the best class.
  "brake fluid boiling point": {
    ...{ dimension: "temperature", places: ENDS, ask: [], plausible: [90, 350] },
    ...{ units: ["°C", "°F"], usual: { "°C": [90, 340] } },
  },
  "brake fluid water": { dimension: "share", places: ENDS, ask: [], plausible: [0, 10], units: ["%"], usual: {} },
  "clutch fluid level": { ...LEVEL, places: [], ask: [] },
  "oil level": { ...LEVEL, places: [], ask: [] },
  "coolant level": { ...LEVEL, places: [], ask: [] },
  // °C down to which the coolant is good.
  "coolant strength": {
    dimension: "temperature",
    places: [],
    ask: [],
    plausible: [-80, 10],
    units: ["°C", "°F"],
    usual: { "°C": [-60, 45], "°F": [-70, 115] },
  },
  // Per cent of antifreeze in it by volume.
  "antifreeze share": { dimension: "share", places: [], ask: [], plausible: [0, 100], units: ["%"], usual: {} },
  "clutch free play": { dimension: "length", places: [], ask: [], plausible: [0, 60], units: ["mm", "in"], usual: { mm: [0, 60], in: [0.02, 0.8] } },
  "throttle free play": { dimension: "length", places: [], ask: [], plausible: [0, 30], units: ["mm", "in"], usual: { mm: [0, 30], in: [0.02, 0.8] } },
  // mm at the end of the lever or the pedal before the brake begins to come on.
  "brake free play": { dimension: "length", places: ENDS, ask: ENDS, plausible: [0, 80], units: ["mm", "in"], usual: { mm: [1, 80], in: [0.05, 3] } },
  // mm above (+) or below (-) the footrest.
  "brake pedal height": { dimension: "length", places: [], ask: [], plausible: [-100, 150], units: ["mm", "in"], usual: { mm: [3, 150] } },
  "static sag": { dimension: "length", places: ENDS, ask: ENDS, plausible: [0, 150], units: ["mm", "in"], usual: { mm: [3, 150], in: [0.1, 2.5] } },
  "rider sag": { dimension: "length", places: ENDS, ask: ENDS, plausible: [0, 200], units: ["mm", "in"], usual: { mm: [5, 200], in: [0.2, 4] } },
  "valve clearance": {
    dimension: "length",
    places: VALVES,
    ask: ["intake", "exhaust"],
    plausible: [0, 1.5],
    units: ["mm", "in", "thou"],
    usual: CLEARANCE,
    decimals: HUNDREDTHS,
  },
  // kPa on a compression gauge.
  compression: {
    dimension: "pressure",
    places: CYLINDERS,
    ask: [],
    plausible: [0, 3000],
    units: ["psi", "bar", "kPa", "kgf/cm²"],
    usual: { psi: [60, 350], bar: [4, 24], kPa: [500, 2400] },
  },
  "plug gap": {
    dimension: "length",
    places: CYLINDERS,
    ask: [],
    plausible: [0.1, 3],
    units: ["mm", "in", "thou"],
    usual: { mm: [0.3, 2], in: [0.01, 0.08], thou: [12, 80] },
    decimals: HUNDREDTHS,
  },
  "points gap": {
    ...{ dimension: "length", places: CYLINDERS, ask: [], plausible: [0.05, 1.5] },
    ...{ units: ["mm", "in", "thou"], usual: { mm: [0.1, 1.2], in: [0.004, 0.05], thou: [4, 50] }, decimals: HUNDREDTHS },
  },
  // L put in. More than any tank holds is a slip.
  fuel: { dimension: "volume", places: [], ask: [], plausible: [0.05, 80], units: ["L", "US gal", "imp gal"], usual: {} },
  "ambient temperature": {
    dimension: "temperature",
    places: [],
    ask: [],
    plausible: [-50, 60],
    units: ["°C", "°F"],
    usual: { "°C": [-60, 45], "°F": [-70, 115] },
  },
} as const satisfies Record<string, KindRow>;

export type ReadingKind = keyof typeof READING_KINDS;
export const KIND_KEYS = Object.keys(READING_KINDS) as ReadingKind[];

/** The row of a kind, as every row may be read. */
export const kindRow = (kind: ReadingKind): KindRow => READING_KINDS[kind];

/** Can each side of the front be told apart, as with two calipers? */
export const hasSides = (kind: ReadingKind): boolean => kindRow(kind).places.includes("front left");
