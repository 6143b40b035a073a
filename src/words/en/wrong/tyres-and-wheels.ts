// What people type when something is wrong with the tyres and wheels, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { CRACK_IN, DONE_FOR, LEAK } from "./things.ts";

const SIDEWALL = ["sidewall", "front sidewall", "rear sidewall", "tyre sidewall", "tire sidewall", "rear tyre sidewall", "front tyre sidewall"];
const TYRE_AT = {
  front: ["front tyre", "front tire"],
  rear: ["rear tyre", "back tyre", "rear tire", "back tire"],
} as const;
const LOW_ON_AIR = [
  "low",
  "low on air",
  "lowish",
  "soft",
  "squishy",
  "squashy",
  "squashed",
  "needs air",
  "needs pumping up",
  "underinflated",
  "under inflated",
];
const DRY_ROT = ["dry rot", "dry rotted", "dry-rot", "dry-rotted", "has dry rot", "weather checked", "weather cracked", "perishing", "weather checking"];
const CHUNKS = ["chunk", "chunks", "lump", "lumps", "piece", "pieces", "knobs", "knob"];
const CHUNKS_OUT = CHUNKS.flatMap((what) =>
  ["missing from", "missing out of", "out of", "torn out of", "torn off", "coming off", "gone from", "missing on"].flatMap((out) => [
    `${what} ${out}`,
    `${what} ${out} the`,
    `${what} ${out} my`,
  ]),
);
const CORDS = [
  "worn to the cords",
  "cords showing",
  "showing cords",
  "showing the cords",
  "down to the cords",
  "on the cords",
  "cord showing",
  "cord visible",
  "cords visible",
  "showing cord",
  "cord through",
  "cords through",
  "cord",
];
const BARS = [
  ...["at the wear indicator", "on the wear indicator", "down to the wear indicator", "level with the wear indicator"],
  ...[
    "at wear bars",
    "on wear bars",
    "down to wear bars",
    "level with wear bars",
    "at the bars",
    "on the wear indicators",
    "at the wear bar",
    "on the wear bar",
  ],
  ...["down to the wear bars", "down to the bars", "at the wear bars", "on the wear bars", "down to the wear indicators", "worn to the bars"],
  ...["at the wear indicators", "level with the wear bars", "level with the bars", "worn to the wear bars", "worn to the wear indicators"],
  ...["at", "on", "to", "down to", "worn to", "worn down to", "level with"].flatMap((how) => [`${how} the twi`, `${how} twi`]),
];
const CUPPED = ["cupped", "cupping", "scalloped", "scalloping", "feathered", "feathering", "worn unevenly", "wearing unevenly", "unevenly worn", "uneven wear"];
const VALVE = [
  ...["front valve", "rear valve", "tyre valve", "tire valve", "valve stem", "front tyre valve", "rear tyre valve", "front tire valve", "rear tire valve"],
];
const VALVE_CAP = ["valve cap", "valve caps", "dust cap", "dust caps"].flatMap((cap) => [
  ...[cap, `front ${cap}`, `rear ${cap}`, `front tyre ${cap}`, `rear tyre ${cap}`, `front tire ${cap}`, `rear tire ${cap}`, `tyre ${cap}`, `tire ${cap}`],
]);
const LOW_TREAD = [
  ...["no tread", "no tread left", "no rubber left", "out of tread", "hardly any tread", "hardly any tread left", "barely any tread", "barely any tread left"],
];
const TYRE = ["tyre", "tire", "tyres", "tires", "front tyre", "rear tyre", "back tyre", "front tire", "rear tire", "back tire"];

export const ENGLISH_TYRES_AND_WHEELS_WRONG = {
  puncture: [
    {
      things: [...TYRE, "front", "rear", "back"],
      signs: ["punctured", "flat", "losing air", "loses air", "losing pressure", "loses pressure", "going down", "goes down", "went down", "deflated"],
    },
    {
      things: [...TYRE, "front", "rear", "back"],
      signs: ["going soft", "goes soft", "gone soft", "went soft", "getting soft", "keeps going soft", "goes flat", "going flat", "gone flat", "went flat"],
    },
    {
      things: TYRE,
      signs: [
        ...["nail in it", "screw in it", "nail", "has a nail", "nail in", "screw in", "hole in it", "glass in it", "staple in it", "thorn in it", "screw"],
        ...["glass in", "thorn in"],
      ],
    },
    {
      things: ["nail in the", "screw in the", "nail in my", "screw in my"],
      signs: [...TYRE, "rear", "front"],
    },
    { things: ["hole in the", "glass in the", "staple in the", "thorn in the"], signs: TYRE },
    { things: VALVE, signs: [...LEAK, "losing air", "loses air", "perished", "cracked", "bent", "split"] },
  ],
  "plugged tyre": [
    { things: [...TYRE, "rear", "front", "back"], signs: ["plugged", "patched"] },
    {
      things: TYRE,
      signs: [
        "got a plug",
        "got a plug in it",
        "got a patch in it",
        "has a plug",
        "has a plug in it",
        "has a patch",
        "has a patch in it",
        "has been plugged",
        "has been patched",
      ],
    },
    // A repair from inside is watched too: nobody sees it.
    {
      things: TYRE,
      signs: ["patch", "plug", "mushroom plug", "patch plug", "plug patch", "mushroom"]
        .flatMap((with_) => [`repaired with a ${with_}`, `fixed with a ${with_}`, `mended with a ${with_}`])
        .concat(["repaired from inside", "repaired from the inside", "patched from inside", "patched from the inside", "vulcanised", "vulcanized", "repaired"]),
      signLast: true,
    },
    { things: ["plug in the", "plug in", "patch in the"], signs: TYRE },
  ],
  "damaged tyre": [
    {
      things: TYRE,
      signs: ["cut", "bulging", "bulge", "split", ...CORDS],
    },
    { things: ["front", "rear", "back"], signs: CORDS },
    {
      things: TYRE,
      signs: ["chunking", "chunked", ...CHUNKS.flatMap((what) => [`${what} missing`, `missing ${what}`, `${what} out of it`, `${what} torn out`])],
    },
    { things: CHUNKS_OUT, signs: [...TYRE, "tread", "front tread", "rear tread"] },
    { things: SIDEWALL, signs: ["cut", "bulging", "bulge", "split"] },
  ],
  "cracked tyre": [
    {
      things: [...TYRE, ...SIDEWALL, "tread", "front tread", "rear tread"],
      signs: ["cracked", "cracking", "cracks", "has cracks", "has a crack", "crazed", "perished", ...DRY_ROT],
    },
    { things: DRY_ROT.flatMap((rot) => [`${rot} on`, `${rot} on the`, `${rot} in`, `${rot} in the`]), signs: [...TYRE, ...SIDEWALL] },
    { things: ["cracks in the", "crack in the", "cracks in", "crack in"], signs: [...TYRE, ...SIDEWALL] },
  ],
  "worn tyre": [
    {
      things: TYRE,
      signs: ["bald", "worn out", "illegal", "on the bars", ...BARS, ...LOW_TREAD],
    },
    { things: TYRE, signs: [...DONE_FOR, "dead"], signLast: true },
    { things: ["front", "rear", "back"], signs: ["bald", ...BARS, ...LOW_TREAD] },
    {
      things: ["tread", "front tread", "rear tread", "tyre tread", "tread depth"],
      signs: [
        ...["gone", "all gone", "worn out", "worn away", "worn off", "finished", "illegal", "below the limit", "under the limit", "at the limit"],
        ...["down to the bars", ...BARS],
      ],
    },
    {
      things: ["wear bar", "wear bars", "tyre bar", "tyre bars", "tire bar", "tire bars", "wear indicator", "wear indicators", "tread bars"],
      signs: ["reached", "showing", "visible", "flush", "level", "level with the tread"],
    },
    {
      things: ["twi", "front twi", "rear twi", "twi marks"],
      signs: ["reached", "showing", "visible", "flush", "level", "level with the tread"],
    },
  ],
  "cupped tyre": [{ things: [...TYRE, "tread", "front tread", "rear tread"], signs: CUPPED }],
  "squared-off tyre": [{ things: TYRE, signs: ["squared off", "squared off badly", "squared", "flat in the middle", "flat spotted", "has a flat spot"] }],
  "wheel bearing": [
    {
      things: [
        ...["wheel bearing", "wheel bearings", "front wheel bearing", "rear wheel bearing", "front wheel bearings", "rear wheel bearings", "front bearing"],
        ...["rear bearing", "rear wheel", "front wheel"],
      ],
      signs: [
        ...["rough", "has play", "play", "grinding", "noisy", "worn", "wobbles", "wobbling", "notchy", "shot", "had it", "toast", "knackered", "done for"],
        ...["finished", "gone", "worn out", "loose", "dry", "crunchy", "gritty", "seized", "grumbling", "grumbles", "rumbles", "rumbling", "growls"],
        ...["growling", "whines", "whining"],
      ],
    },
  ],
  spoke: [{ things: ["spoke", "spokes", "front spokes", "rear spokes"], signs: ["broken", "broke", "snapped", "loose", "missing", "bent"] }],
  "damaged wheel": [
    { things: ["rim", "front rim", "rear rim", "wheel", "front wheel", "rear wheel"], signs: ["cracked", "dented", "buckled", "bent", "out of true"] },
    { things: [...CRACK_IN, "dent in the", "dent in"], signs: ["rim", "front rim", "rear rim", "wheel", "front wheel", "rear wheel"] },
  ],
  // Found by measuring, or said in words where the end is named.
  "worn front tyre": [],
  "worn rear tyre": [],
  "worn sidecar tyre": [],
  "wrong front pressure": [{ things: TYRE_AT.front, signs: LOW_ON_AIR, signLast: true }],
  "wrong rear pressure": [{ things: TYRE_AT.rear, signs: LOW_ON_AIR, signLast: true }],
  "wrong sidecar pressure": [],
  "valve cap": [
    { things: VALVE_CAP, signs: ["missing", "lost", "gone", "fell off", "fallen off", "cracked", "broken", "split", "perished", "is missing", "are missing"] },
    { things: ["missing", "lost", "lost a", "lost the", "lost my", "missing a", "missing the", "no"], signs: VALVE_CAP },
  ],
  "oily tyre": [],
  rubbing: [],
  "fitted wrong": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
