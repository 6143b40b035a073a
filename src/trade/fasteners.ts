// The trade's tables of threads, strengths, friction and hex widths.

import type { Friction, Grade } from "../core/torque/estimate.ts";
import type { HexSize } from "../core/torque/hex.ts";
import type { ThreadTable } from "../core/torque/thread.ts";

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

/** Least proof stress. Sources: ISO 898-1 table 3 (metric, up to M16), SAE J429 table 1 (inch, up to 3/4 in). */
export const GRADES = {
  "8.8": { proof: 580 },
  "10.9": { proof: 830 },
  "12.9": { proof: 970 },
  "grade 2": { proof: 55 * KSI },
  "grade 5": { proof: 85 * KSI },
  "grade 8": { proof: 120 * KSI },
} as const satisfies Record<string, Grade>;
export type GradeName = keyof typeof GRADES;

/** Nut factors. Likely: Shigley, Mechanical Engineering Design, table 8-15; ranges: fastener makers' engineering data. They differ by a third: friction is why an estimate is one. */
export const FRICTION = {
  dry: { likely: 0.2, from: 0.18, to: 0.27 },
  oiled: { likely: 0.18, from: 0.1, to: 0.26 },
  "zinc plated": { likely: 0.2, from: 0.17, to: 0.35 },
  "anti-seize": { likely: 0.12, from: 0.09, to: 0.16 },
  threadlock: { likely: 0.2, from: 0.15, to: 0.27 },
} as const satisfies Record<string, Friction>;
export type FrictionName = keyof typeof FRICTION;

const mm = (width: number): HexSize => ({ name: `${width} mm`, width });
const inch = (above: number, below: number): HexSize => ({ name: `${above}/${below} in`, width: (above / below) * 25.4 });

/** Widths across flats that spanners are sold in. Sources: ISO 272 (with the older 17, 19 and 22 mm), ASME B18.2.1. */
export const METRIC_SPANNERS: readonly HexSize[] = [7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 21, 22, 24, 27, 30, 32].map(mm);
export const INCH_SPANNERS: readonly HexSize[] = [
  ...[inch(1, 4), inch(5, 16), inch(11, 32), inch(3, 8), inch(7, 16), inch(1, 2), inch(9, 16), inch(5, 8), inch(11, 16), inch(3, 4), inch(13, 16)],
  ...[inch(7, 8), inch(15, 16), { name: "1 in", width: 25.4 }, { name: "1 1/16 in", width: (17 / 16) * 25.4 }, { name: "1 1/4 in", width: (5 / 4) * 25.4 }],
];

/**
 * Joints for which no figure is estimated, with the words people type for them: what holds the rider, the wheels and the brakes, and what people strip.
 * Common practice: the maker's value or none.
 */
export const NEVER_ESTIMATED = {
  "brakes and brake discs": ["brake", "brakes", "caliper", "disc", "discs", "rotor", "banjo", "master cylinder", "lever"],
  "axles and wheels": ["axle", "axles", "spindle", "wheel", "wheels", "pinch bolt"],
  "steering and fork": ["steering", "head", "stem", "yoke", "triple clamp", "fork", "clamp", "clip-on"],
  "handlebars and controls": ["bar", "bars", "handlebar", "handlebars", "riser"],
  "sprockets and final drive": ["sprocket", "sprockets", "front sprocket", "rear sprocket", "drive nut"],
  "footrests and stands": ["footrest", "footpeg", "peg", "pegs", "stand", "side stand", "centre stand"],
  suspension: ["shock", "linkage", "swingarm", "suspension"],
  "spark plugs": ["spark plug", "plug", "plugs"],
  "drain plugs and covers in aluminium": ["drain", "drain plug", "sump plug", "sump", "cover", "cover screw", "case", "casing", "filler"],
  "engine internals": ["cylinder head", "conrod", "con rod", "big end", "camshaft", "cam cap", "clutch nut", "flywheel", "rotor nut"],
} as const satisfies Record<string, readonly string[]>;
