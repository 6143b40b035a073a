// What people type when something is wrong with the electrics, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { LEAK } from "./things.ts";

const OUT = [
  ...["flickers", "flickering", "out", "dead", "gone", "blown", "broken", "smashed", "cracked", "not working", "doesn't work", "does not work", "won't work"],
  ...["isn't working", "intermittent", "stopped working", "packed up", "packed in", "given up", "failed"],
];
const LAMP = [
  ...["tail light", "taillight", "rear light", "indicator", "indicators", "blinker", "turn signal", "side light", "number plate light", "plate light"],
  ...["tail light bulb", "indicator bulb", "running light"],
];

const CRANKS = [
  ...["won't crank", "wouldn't crank", "doesn't crank", "didn't crank", "not cranking", "barely cranks", "cranks slowly", "cranks slow", "won't turn over"],
  ...["wouldn't turn over", "doesn't turn over", "barely turns over", "turns over slowly", "only clicks", "just clicks", "just clicked"],
];

export const ENGLISH_ELECTRICS_WRONG = {
  "brake light": [{ things: ["brake light", "brake lights", "rear brake light", "stop light", "brake lamp"], signs: [...OUT, "stuck on", "stays on"] }],
  headlight: [
    {
      things: [
        ...["headlight", "headlights", "head light", "headlamp", "dipped beam", "low beam", "high beam", "main beam", "dip beam", "headlight bulb"],
        ...["headlamp bulb"],
      ],
      signs: OUT,
    },
  ],
  light: [{ things: LAMP, signs: OUT }],
  horn: [{ things: ["horn"], signs: [...OUT, "silent", "quiet"] }],
  "flat battery": [
    {
      things: ["battery"],
      signs: [
        ...["flat", "dead", "drained", "won't hold a charge", "not holding charge", "won't hold charge", "not holding a charge", "doesn't hold a charge"],
        ...["won't take a charge", "doesn't hold charge", "had it", "toast", "knackered", "shot", "finished", "done for", "past it", "on its last legs"],
        ...["empty", "died", "dying", "has died"],
        ...CRANKS,
      ],
    },
    { things: ["bike", "engine", "starter", "it"], signs: CRANKS, signLast: true },
  ],
  "damaged battery": [
    {
      things: ["battery", "battery case"],
      signs: [
        ...[
          "frozen",
          "froze",
          "swollen",
          "bulging",
          "bulging case",
          "case bulging",
          "bulged",
          "cracked",
          "split",
          "burst",
          "leaking",
          "leaks",
          "leaking acid",
          "leaks acid",
          "hot",
        ],
        ...["smells of acid"],
      ],
    },
    { things: ["acid", "battery acid"], signs: LEAK },
  ],
  "not charging": [
    {
      things: ["battery", "alternator", "generator", "charging", "rectifier", "stator"],
      signs: ["not charging", "isn't charging", "doesn't charge", "failed", "burnt", "burned out"],
    },
  ],
  overcharging: [
    {
      things: ["battery", "alternator", "generator", "charging", "rectifier", "stator", "regulator", "charging system"],
      signs: [
        "overcharging",
        "overcharges",
        "overcharged",
        "charges too much",
        "charging too much",
        "charging too high",
        "boiling",
        "boiled",
        "boils",
        "boiled dry",
      ],
    },
    { things: ["electrics", "bike"], signs: ["overcharging", "overcharges"] },
  ],
  "warning light": [
    {
      things: [
        ...["abs light", "abs lamp", "oil light", "oil pressure light", "engine light", "warning light", "check engine light", "temperature light"],
        ...["abs warning light"],
      ],
      signs: ["on", "stays on", "came on", "comes on", "lit", "flashing", "staying on", "lights up"],
    },
  ],
  // By what the bike is fitted with.
  "damaged lithium battery": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
