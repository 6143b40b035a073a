// The trade's tables of threads, strengths, friction and hex widths.

import { toCanonical } from "../core/quantity/units.ts";
import type { Friction, Grade } from "../core/torque/estimate.ts";
import type { HexSize } from "../core/torque/hex.ts";
import type { ThreadTable } from "../core/torque/thread.ts";
import type { Drive } from "../core/torque/wrench.ts";

/**
 * Pitches in mm of ISO 261, the coarse one first, as far as ISO 898-1 lists proof loads for them (tables 4 to 7); turns per inch of ASME B1.1, as far as SAE J429
 * has one proof stress a grade (1/4 to 3/4 in). Larger ones have other strengths, and hold what no estimate is for.
 */
export const THREADS: ThreadTable = {
  metric: {
    ...{ "4": [0.7], "5": [0.8], "6": [1], "7": [1], "8": [1.25, 1], "10": [1.5, 1.25, 1], "12": [1.75, 1.5, 1.25], "14": [2, 1.5], "16": [2, 1.5] },
    "18": [2.5, 1.5],
  },
  unified: {
    "1/4": { UNC: 20, UNF: 28 },
    "5/16": { UNC: 18, UNF: 24 },
    "3/8": { UNC: 16, UNF: 24 },
    "7/16": { UNC: 14, UNF: 20 },
    "1/2": { UNC: 13, UNF: 20 },
    "9/16": { UNC: 12, UNF: 18 },
    "5/8": { UNC: 11, UNF: 18 },
    "3/4": { UNC: 10, UNF: 16 },
  },
};

/** MPa. */
const KSI = toCanonical(1, "psi");

/** More thread than this many diameters adds no strength: the first turns carry the load. Common practice. */
export const MOST_ENGAGED = 2.5;

/**
 * Least proof stress, and whose heads are marked so. Sources: ISO 898-1 table 3 (metric), SAE J429 table 1 (inch, up to 3/4 in). The metric figures and grade 8 are from memory of the tables;
 * all agree with the standards' printed proof loads within their rounding (tests).
 */
export const GRADES = {
  "8.8": { system: "metric", proof: 580, thicker: { over: 16, proof: 600 } },
  "10.9": { system: "metric", proof: 830 },
  "12.9": { system: "metric", proof: 970 },
  "grade 2": { system: "inch", proof: 55 * KSI },
  "grade 5": { system: "inch", proof: 85 * KSI },
  "grade 8": { system: "inch", proof: 120 * KSI },
} as const satisfies Record<string, Grade & { readonly system: "metric" | "inch" }>;
export type GradeName = keyof typeof GRADES;

/**
 * Nut factors. Likely: Shigley, Mechanical Engineering Design, 9th ed., table 8-15 (zinc plated 0.20, lubricated 0.18, with anti-seize 0.12); dry and threadlock 0.20, common practice.
 * Ranges: fastener makers' engineering data (dry steel 0.18 to 0.27, oil 0.10 to 0.26, zinc 0.17 to 0.35); anti-seize and threadlock common practice.
 * They differ by a third: friction is why an estimate is one.
 */
export const FRICTION = {
  dry: { likely: 0.2, from: 0.18, to: 0.27 },
  oiled: { likely: 0.18, from: 0.1, to: 0.26 },
  "zinc plated": { likely: 0.2, from: 0.17, to: 0.35 },
  "anti-seize": { likely: 0.12, from: 0.09, to: 0.16 },
  threadlock: { likely: 0.2, from: 0.15, to: 0.27 },
} as const satisfies Record<string, Friction>;
export type FrictionName = keyof typeof FRICTION;

/**
 * Shear strength in MPa of the weakest aluminium that motorcycle castings are of: six tenths of the 131 MPa (19 ksi) that alloy 356 has at least in tension, sand cast and not hardened.
 * Hardened (T6) it has 207 MPa at least. Source: ASTM B26, minimum properties of sand castings, as engineering tables print them; the share of six tenths is common practice.
 */
export const ALUMINIUM_SHEAR = 79;

/** The sizes torque wrenches are sold in, in newton metres, the smallest first. Common practice. */
export const USUAL_WRENCHES = [
  { drive: "1/4 in", low: 1, high: 6 },
  { drive: "1/4 in", low: 5, high: 25 },
  { drive: "3/8 in", low: 20, high: 100 },
  { drive: "1/2 in", low: 40, high: 200 },
  { drive: "3/4 in", low: 100, high: 500 },
] as const satisfies readonly { readonly drive: Drive; readonly low: number; readonly high: number }[];

/** Widths across flats in mm of hex heads by metric thread: the present series and the one before it. Sources: ISO 272; DIN 931/933 before the change. */
export const HEX_WIDTHS = {
  "5": { now: 8, before: 8 },
  "6": { now: 10, before: 10 },
  "8": { now: 13, before: 13 },
  "10": { now: 16, before: 17 },
  "12": { now: 18, before: 19 },
  "14": { now: 21, before: 22 },
} as const;

const mm = (width: number): HexSize => ({ name: `${width} mm`, width });
/** "13/16", "1 1/16". */
const inch = (name: string): HexSize => {
  const [fraction = "", whole = "0"] = name.split(" ").reverse();
  const [above = 0, below = 1] = fraction.split("/").map(Number);
  return { name: `${name} in`, width: toCanonical(Number(whole) + above / below, "in") };
};

/** Widths across flats that spanners are sold in. Sources: ISO 272 (with the older 17, 19, 22 and 32 mm), ASME B18.2.1; the sizes between are sold too. Common practice. */
export const METRIC_SPANNERS: readonly HexSize[] = [
  ...[5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 32, 34, 36, 41, 46],
].map(mm);
export const INCH_SPANNERS: readonly HexSize[] = [
  ...["7/32", "1/4", "5/16", "11/32", "3/8", "13/32", "7/16", "1/2", "17/32", "9/16", "19/32", "5/8", "11/16", "3/4", "13/16", "7/8", "15/16", "1"],
  ...["1 1/16", "1 1/8", "1 3/16", "1 1/4", "1 5/16", "1 3/8", "1 7/16", "1 1/2"],
].map(inch);
