// What is known of parts that wear before any of them is measured. Rates per kilometre; loose on purpose, so that three readings outweigh them: pads most of all,
// since lining, rider, hills and dirt make one set last ten times as long as another.

import type { WearHabits } from "../core/wear/wear.ts";

const TYRES = "common practice: new road tyres carry 4 to 9 mm, front tyres last some 10,000 to 25,000 km and rear ones 6,000 to 16,000 km";
const PADS = "common practice: new pads carry 3.5 to 6 mm of lining and last some 15,000 to 40,000 km, hard ridden or in dirt 5,000 km, and gently 60,000 km";

const SIDECAR =
  "common practice: a sidecar runs on a tyre of a motorcycle or a small car with 5 to 8 mm, carries no drive, and scrubs where its toe-in is off; it lasts some 10,000 to 40,000 km";
const SHOES = "common practice: new shoes carry 3 to 5 mm of lining and last some 20,000 to 60,000 km, hard ridden or in wet dirt a third of that";

const CHAIN =
  "common practice: a chain that is kept oiled has lengthened by 1 to 2 % after some 15,000 to 30,000 km; one reading over 20 pitches is off by about 0.2 mm";

/** Alike for every part read in millimetres: one better by a whole millimetre is new, and wear runs a quarter faster or slower over some thousand kilometres. */
const OF_A_PART = { another: 1, wander: { share: 0.25, over: 1000 } } as const;

export const WEAR_HABITS = {
  "front tread": {
    fresh: { mean: 4.8, sd: 0.9 },
    rate: { median: 0.00021, times: 1.7 },
    noise: 0.2,
    ...OF_A_PART,
    source: TYRES,
  },
  "rear tread": {
    fresh: { mean: 7, sd: 1.2 },
    rate: { median: 0.00046, times: 1.7 },
    noise: 0.2,
    ...OF_A_PART,
    source: TYRES,
  },
  "front pads": {
    fresh: { mean: 4.5, sd: 0.8 },
    rate: { median: 0.00025, times: 2.5 },
    noise: 0.21,
    ...OF_A_PART,
    source: PADS,
  },
  "rear pads": { fresh: { mean: 5, sd: 1 }, rate: { median: 0.00025, times: 2.5 }, noise: 0.21, ...OF_A_PART, source: PADS },
  "sidecar tread": {
    fresh: { mean: 6.5, sd: 1.5 },
    rate: { median: 0.00025, times: 2 },
    noise: 0.2,
    ...OF_A_PART,
    source: SIDECAR,
  },
  "front shoes": {
    fresh: { mean: 4, sd: 0.8 },
    rate: { median: 0.00009, times: 2.5 },
    noise: 0.21,
    ...OF_A_PART,
    source: SHOES,
  },
  "rear shoes": {
    fresh: { mean: 4, sd: 0.8 },
    rate: { median: 0.00009, times: 2.5 },
    noise: 0.21,
    ...OF_A_PART,
    source: SHOES,
  },
  // Shares of the nominal length, as what is left of them: a new one has lengthened by nothing.
  chain: {
    fresh: { mean: 0, sd: 0.001 },
    rate: { median: 6e-7, times: 1.8 },
    noise: 0.0006,
    another: 0.004,
    wander: OF_A_PART.wander,
    source: CHAIN,
  },
} as const satisfies Record<string, WearHabits>;

export type WearKind = keyof typeof WEAR_HABITS;
