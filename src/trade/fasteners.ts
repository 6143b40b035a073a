// The trade's tables of threads, strengths, friction and hex widths.

import type { Friction, Grade } from "../core/torque/estimate.ts";
import type { HexSize } from "../core/torque/hex.ts";
import type { ThreadTable } from "../core/torque/thread.ts";
import type { Drive } from "../core/torque/wrench.ts";

/** Pitches in mm of ISO 261 coarse threads; turns per inch of ASME B1.1. */
export const THREADS: ThreadTable = {
  metricCoarse: { "4": 0.7, "5": 0.8, "6": 1, "7": 1, "8": 1.25, "10": 1.5, "12": 1.75, "14": 2, "16": 2 },
  unified: {
    "1/4": { UNC: 20, UNF: 28 },
    "5/16": { UNC: 18, UNF: 24 },
    "3/8": { UNC: 16, UNF: 24 },
    "7/16": { UNC: 14, UNF: 20 },
    "1/2": { UNC: 13, UNF: 20 },
  },
};

const KSI = 6.894_757_293_168_361;

/**
 * Least proof stress. Sources: ISO 898-1 table 3 (metric, up to M16), SAE J429 table 1 (inch, up to 3/4 in). The metric figures and grade 8 are from memory of the tables;
 * all agree with the standards' printed proof loads within their rounding (tests).
 */
export const GRADES = {
  "8.8": { proof: 580 },
  "10.9": { proof: 830 },
  "12.9": { proof: 970 },
  "grade 2": { proof: 55 * KSI },
  "grade 5": { proof: 85 * KSI },
  "grade 8": { proof: 120 * KSI },
} as const satisfies Record<string, Grade>;
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
 * Shear strength in MPa of the weakest aluminium that motorcycle castings are of: six tenths of the 179 MPa tensile strength of alloy 356 as cast.
 * The same alloy in temper T6 has 207 MPa. Source: published alloy data (26 ksi tensile, 30 ksi shear); the share of six tenths is common practice.
 */
export const ALUMINIUM_SHEAR = 107;

/** The sizes torque wrenches are sold in, in newton metres, the smallest first. Common practice. */
export const USUAL_WRENCHES = [
  { drive: "1/4 in", low: 1, high: 6 },
  { drive: "1/4 in", low: 5, high: 25 },
  { drive: "3/8 in", low: 20, high: 100 },
  { drive: "1/2 in", low: 40, high: 200 },
  { drive: "3/4 in", low: 100, high: 500 },
] as const satisfies readonly { readonly drive: Drive; readonly low: number; readonly high: number }[];

const mm = (width: number): HexSize => ({ name: `${width} mm`, width });
const inch = (above: number, below: number): HexSize => ({ name: `${above}/${below} in`, width: (above / below) * 25.4 });

/** Widths across flats that spanners are sold in. Sources: ISO 272 (with the older 17, 19 and 22 mm), ASME B18.2.1. */
export const METRIC_SPANNERS: readonly HexSize[] = [5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24, 27, 30, 32].map(mm);
export const INCH_SPANNERS: readonly HexSize[] = [
  ...[inch(7, 32), inch(1, 4), inch(5, 16), inch(11, 32), inch(3, 8), inch(7, 16), inch(1, 2), inch(9, 16), inch(5, 8), inch(11, 16), inch(3, 4), inch(13, 16)],
  ...[inch(7, 8), inch(15, 16), { name: "1 in", width: 25.4 }, { name: "1 1/16 in", width: (17 / 16) * 25.4 }, { name: "1 1/4 in", width: (5 / 4) * 25.4 }],
];

/**
 * Joints for which no figure is estimated, with the words people type for them: what holds the rider, the wheels and the brakes, and what people strip.
 * One word stands for its plural too, and words apart for words together ("side stand", "sidestand"). Common practice: the maker's value or none.
 */
export const NEVER_ESTIMATED = {
  "brakes and brake discs": [
    ...["brake", "break", "caliper", "calliper", "disc", "disk", "rotor", "banjo", "banjo bolt", "master cylinder", "lever", "pedal", "pad pin", "abs", "drum"],
  ],
  "axles and wheels": ["axle", "spindle", "wheel", "rim", "hub", "spoke", "pinch", "pinch bolt", "wheel nut"],
  "steering and fork": [
    "steering",
    "head nut",
    "head bearing",
    "steering head",
    "stem",
    "yoke",
    "triple",
    "triple clamp",
    "triple tree",
    "fork",
    "clamp",
    "damper",
  ],
  "handlebars and controls": ["bar", "handlebar", "handle bar", "clip on", "riser", "throttle", "clutch perch", "perch"],
  "sprockets and final drive": ["sprocket", "drive nut", "chain", "belt pulley", "pulley", "final drive", "shaft drive", "cush drive"],
  "footrests and stands": [
    ...["footrest", "foot rest", "footpeg", "foot peg", "peg", "rearset", "footboard", "foot board"],
    ...["stand", "side stand", "kick stand", "centre stand", "center stand", "main stand", "prop stand"],
  ],
  suspension: ["shock", "linkage", "dog bone", "swingarm", "swing arm", "suspension", "strut", "spring"],
  "frame and engine mounts": ["frame", "subframe", "sub frame", "engine mount", "engine bolt", "motor mount", "tow bar", "sidecar"],
  "spark plugs": ["spark plug", "plug", "sparkplug"],
  "drain plugs and covers in aluminium": [
    ...["drain", "drain plug", "drain bolt", "sump plug", "sump", "sump bolt", "filler", "oil filter", "oil filter cover", "level plug", "dipstick"],
    ...["cover", "cover screw", "case", "casing", "crankcase", "rocker cover", "cam cover", "clutch cover", "water pump", "thermostat"],
  ],
  "engine internals": [
    ...["head", "cylinder head", "cylinder", "barrel", "conrod", "con rod", "big end", "camshaft", "cam", "cam cap", "cam sprocket", "tensioner"],
    ...["clutch", "clutch nut", "flywheel", "rotor nut", "alternator", "stator", "crank", "crankshaft", "exhaust stud", "exhaust flange"],
  ],
} as const satisfies Record<string, readonly string[]>;
