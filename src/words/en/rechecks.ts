// Looks again after work, in English: what each is called, what people type for it, and why it is asked for.

import type { RecheckKey } from "../../trade/rechecks.ts";

export const ENGLISH_RECHECKS = {
  "front-axle.look-again": {
    name: "Front axle and pinch bolts",
    synonyms: ["front axle", "front axle bolts", "front pinch bolts", "axle bolts", "pinch bolts"],
    because: "since the wheel was out; take the new tyre gently for its first 100 mi or 160 km",
  },
  "rear-axle.look-again": {
    name: "Rear axle nut",
    synonyms: ["rear axle", "axle nut", "rear axle bolts", "axle bolts"],
    because: "since the axle was loosened for it; a new tyre is taken gently for its first 100 mi or 160 km",
  },
  "new-chain.look-again": { name: "Slack of the new chain", synonyms: ["new chain slack", "slack of the new chain"], because: "since a new chain settles" },
  "new-belt.look-again": { name: "Tension of the new drive belt", synonyms: ["new belt tension"], because: "since a new belt settles" },
  "new-throttle-cable.look-again": {
    name: "Free play of the new throttle cable",
    synonyms: ["new throttle cable", "new cable"],
    because: "since a new cable stretches",
  },
  "new-clutch-cable.look-again": {
    name: "Free play of the new clutch cable",
    synonyms: ["new clutch cable", "new cable"],
    because: "since a new cable stretches",
  },
  "trued-spokes.look-again": { name: "Spokes after truing", synonyms: ["trued spokes", "spokes again"], because: "since trued spokes settle" },
  "new-front-pads.look-again": {
    name: "New front pads or shoes, bedded in",
    synonyms: ["new front pads", "front pads bedded in"],
    because:
      "since new pads and shoes bed in: before the first ride pump a disc brake until it is firm, or set a drum's free play and try it, and brake gently for the first 200 mi or 300 km",
  },
  "new-rear-pads.look-again": {
    name: "New rear pads or shoes, bedded in",
    synonyms: ["new rear pads", "rear pads bedded in"],
    because:
      "since new pads and shoes bed in: before the first ride pump a disc brake until it is firm, or set a drum's free play and try it, and brake gently for the first 200 mi or 300 km",
  },
} as const satisfies Record<RecheckKey, { readonly name: string; readonly synonyms: readonly string[]; readonly because: string }>;

const ROWS: Readonly<Record<string, { readonly because: string }>> = ENGLISH_RECHECKS;

/** Why a look again is asked for, by the key of the look; a reason that is none of ours as it stands. */
export const recheckBecause = (because: string): string => ROWS[because]?.because ?? because;
