// What people type of parts that came off, broke, bent, jammed or touch what they must not, in English: beside the words of the other files here.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";

const OFF = [
  ...["missing", "gone", "lost", "fell off", "fallen off", "came off", "fell out", "fallen out", "dropped off", "dropped out", "flew off", "came undone"],
  ...["snapped", "broken", "broke", "broke off", "broken off", "sheared", "sheared off", "cracked", "has a crack", "has cracks"],
];
const SLACK = [
  "loose",
  "came loose",
  "coming loose",
  "has come loose",
  "working loose",
  "hanging",
  "hanging off",
  "hanging loose",
  "has play",
  "wobbly",
  "not tight",
];
const BENT = ["bent", "twisted", "bowed"];
const TYRES = ["tyre", "tire", "front tyre", "rear tyre", "back tyre", "front tire", "rear tire", "back tire"];
const WHEELS = ["wheel", "front wheel", "rear wheel", "back wheel"];
const DISCS = [
  "brake disc",
  "front brake disc",
  "rear brake disc",
  "disc",
  "front disc",
  "rear disc",
  "rotor",
  "front rotor",
  "rear rotor",
  "brake discs",
  "discs",
];
const PADS = ["pads", "brake pads", "front pads", "rear pads", "front brake pads", "rear brake pads", "brake shoes", "brake drum"];
const CALIPERS = ["caliper", "front caliper", "rear caliper", "brake caliper", "front brake caliper", "rear brake caliper"];
const SMEARED = ["oil", "engine oil", "fork oil", "grease", "chain lube", "chain oil", "brake fluid", "wd-40"].flatMap((what) =>
  ["on the", "on my", "on", "all over the", "all over my", "got on the", "over the"].map((where) => `${what} ${where}`),
);
const MENDS_NOTHING = [
  "about to snap",
  "about to break",
  "nearly snapped",
  "almost snapped",
  "hanging by a thread",
  "down to a few strands",
  "unravelling",
  "unraveling",
];
const CLAMPED = [
  "handlebar",
  "bar",
  "fork",
  "steering",
  "triple clamp",
  "yoke",
  "engine mount",
  "linkage",
  "suspension linkage",
  "shock",
  "swingarm",
  "disc",
  "brake disc",
];
const BOLTS = [
  ...CLAMPED.flatMap((what) => [`${what} bolt`, `${what} bolts`, `${what} clamp bolt`, `${what} clamp bolts`, `${what} pinch bolt`]),
  ...[
    "pinch bolt",
    "pinch bolts",
    "pivot bolt",
    "swingarm nut",
    "stem nut",
    "top nut",
    "axle",
    "front axle",
    "rear axle",
    "axle nut",
    "front axle nut",
    "rear axle nut",
  ],
  ...[
    "wheel nut",
    "wheel spindle",
    "spindle nut",
    "footpeg",
    "footpegs",
    "foot peg",
    "foot pegs",
    "footrest",
    "axle clip",
    "r-clip",
    "cotter pin",
    "split pin",
  ],
];
const HARDWARE = [
  ...["brake lever", "front brake lever", "brake pedal", "rear brake pedal", "brake rod", "rear brake rod", "brake arm", "torque arm", "brake torque arm"],
  ...[
    "drum brake torque arm",
    "brake drum",
    "front drum",
    "rear drum",
    "caliper bracket",
    "caliper pin",
    "caliper pins",
    "pad pin",
    "pad pins",
    "brake pad pin",
  ],
  ...["brake pad", "brake shoe", "master cylinder", "pad retaining pin", "slide pin", "slide pins"],
];

/** Rules beside those of the same kinds. */
export const ENGLISH_PARTS_GONE: Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>> = {
  "soft brake": [
    {
      things: [
        "front brake lever",
        "brake lever",
        "brake pedal",
        "rear brake pedal",
        "front brake",
        "rear brake",
        "brakes",
        "brake",
        "front brakes",
        "rear brakes",
      ],
      signs: [
        ...["comes right back to the bar", "comes right back", "comes straight back to the bar", "comes all the way back", "does nothing", "do nothing"],
        ...[
          "has no effect",
          "no effect",
          "goes down to the floor",
          "to the floor",
          "stopped working",
          "gone soft",
          "pulls right back",
          "just sinks",
          "no resistance",
        ],
      ],
    },
  ],
  "damaged brake": [
    { things: [...CALIPERS, ...HARDWARE], signs: [...OFF, ...SLACK, ...BENT] },
    { things: [...PADS], signs: ["fell out", "fallen out", "missing", "came out", "came loose", "loose", "without the pin"] },
    {
      things: [
        "lost the pin of",
        "lost a pin of",
        "pin missing from",
        "pin missing on",
        "missing pin in",
        "lost a bolt of",
        "bolt missing from",
        "bolt missing on",
      ],
      signs: CALIPERS,
    },
    { things: SMEARED, signs: [...DISCS, ...PADS, "brake", "brakes", "front brake", "rear brake"] },
  ],
  "dragging brake": [
    {
      things: WHEELS,
      signs: [
        "locks by itself",
        "locks up by itself",
        "locks on its own",
        "won't turn",
        "does not turn",
        "doesn't turn",
        "will not turn",
        "locked solid",
        "hard to turn",
      ],
    },
  ],
  "oily tyre": [{ things: SMEARED, signs: TYRES }],
  rubbing: [
    {
      things: [
        ...TYRES,
        ...WHEELS,
        "mudguard",
        "front mudguard",
        "rear mudguard",
        "fender",
        "front fender",
        "chain guard",
        "chainguard",
        "mudflap",
        "hugger",
        "pannier",
      ],
      signs: ["rubbing", "rubs", "touches", "touching", "catching", "catches", "fouls", "fouling", "scraping", "scrapes"],
      signLast: true,
    },
  ],
  "fitted wrong": [
    {
      things: [...TYRES, ...PADS, "wheel", "front wheel", "rear wheel", "axle", "brake pad"],
      signs: [
        "the wrong way round",
        "wrong way round",
        "wrong way around",
        "backwards",
        "fitted backwards",
        "on backwards",
        "in backwards",
        "fitted the wrong way round",
      ],
      signLast: true,
    },
  ],
  "damaged tyre": [
    {
      things: TYRES,
      signs: [
        "came off the rim",
        "off the rim",
        "off its bead",
        "off the bead",
        "separating",
        "delaminating",
        "tread separating",
        "lump in it",
        "has a lump",
        "has a bulge",
      ],
    },
  ],
  "damaged wheel": [
    {
      things: [...WHEELS, "rim", "front rim", "rear rim", "hub", "rear hub", "front hub"],
      signs: [
        ...[
          "not straight",
          "out of line",
          "crooked",
          "has a crack",
          "has a dent",
          "has a flat spot",
          "misaligned",
          "not round",
          "has cracks",
          "broken",
          "out of round",
        ],
        ...["is wobbling", "is cracked", "corroded through"],
      ],
    },
    { things: ["wheel"], signs: ["wobbling", "wobbles"] },
  ],
  "wheel bearing": [
    {
      things: ["wheel bearing", "wheel bearings", "front wheel bearing", "rear wheel bearing", "front wheel bearings", "rear wheel bearings"],
      signs: ["collapsed", "failed", "broke up", "broken", "fell apart", "disintegrated", "clicks", "clicking", "squeals"],
    },
  ],
  fastener: [{ things: BOLTS, signs: [...OFF, ...SLACK] }],
  steering: [
    {
      things: ["steering", "handlebars", "bars", "handlebar", "steering damper"],
      signs: [
        ...[
          "locks to the left",
          "locks to the right",
          "jams",
          "jammed",
          "stuck",
          "sticks",
          "seized",
          "won't turn",
          "won't go straight",
          "pulls to one side",
          "crooked",
        ],
        ...["twisted", "came loose", "turned in the clamp", "hits the tank", "broken", "cracked"],
      ],
    },
  ],
  frame: [
    {
      things: [
        "fork",
        "forks",
        "fork leg",
        "fork legs",
        "fork tube",
        "fork tubes",
        "stanchion",
        "stanchions",
        "triple clamp",
        "yoke",
        "top yoke",
        "bottom yoke",
        "headstock",
      ],
      signs: [...BENT, "cracked", "has a crack", "broken"],
    },
  ],
  "fuel leak": [
    {
      things: ["fuel cap", "petrol cap", "filler cap", "tank cap", "gas cap", "fuel hose", "fuel line", "petrol hose"],
      signs: [...OFF, "loose", "does not close", "doesn't close", "won't close", "not closing", "not sealing", "does not seal", "doesn't seal", "came loose"],
    },
    {
      things: ["tank", "fuel tank", "petrol tank", "gas tank"],
      signs: ["rusted through", "holed", "has a hole", "cracked", "has a crack", "hole in it", "split"],
    },
  ],
  "side stand": [
    {
      things: ["side stand", "sidestand", "kickstand", "centre stand", "center stand", "main stand", "side stand spring", "centre stand spring"],
      signs: [
        ...["does not stay up", "doesn't stay up", "won't stay down", "does not stay down", "drops while riding", "hangs down", "hanging down", "falls down"],
        ...["flops down", "came down", "stays down", "fell off", "gone", "folds by itself", "collapsed"],
      ],
    },
  ],
  cable: [
    {
      things: ["cable", "clutch cable", "throttle cable", "brake cable", "front brake cable", "rear brake cable"],
      signs: [...MENDS_NOTHING, "came off", "split", "came out"],
    },
  ],
  "sticking throttle": [
    {
      things: ["throttle", "throttle grip", "twist grip"],
      signs: ["jams", "jammed", "stays open", "hangs open", "hangs", "stuck open", "does not snap shut", "slow to return"],
    },
  ],
  chain: [
    {
      things: ["chain", "drive chain"],
      signs: [
        "jumped off",
        "jumped off the sprocket",
        "came off the sprocket",
        "off the sprocket",
        "fell off the sprocket",
        "jumped a tooth",
        "jumps teeth",
        "jumped",
      ],
    },
  ],
  headlight: [{ things: ["headlight", "headlamp", "low beam", "dipped beam"], signs: ["goes out", "went out", "cuts out", "goes off", "keeps going out"] }],
  "brake light": [{ things: ["brake light", "brake lights"], signs: ["permanently on", "always on", "does not come on", "doesn't come on", "won't come on"] }],
};

/** Phrases that say it by themselves. */
export const ENGLISH_GONE_WHOLE: Partial<Readonly<Record<DefectKind, readonly string[]>>> = {
  "low rear brake fluid": [
    "no fluid in the rear brake",
    "no fluid in the rear brake reservoir",
    "no brake fluid in the rear",
    "no fluid in the rear reservoir",
  ],
  "low front brake fluid": [
    "no fluid in the front brake",
    "no fluid in the front brake reservoir",
    "no brake fluid in the front",
    "no fluid in the front reservoir",
  ],
  "low brake fluid": ["no brake fluid left", "no fluid in the brake reservoir", "no brake fluid in the reservoir"],
  "old brake fluid": ["water in the brake fluid", "moisture in the brake fluid"],
  "attacked brake seals": ["oil in the brake fluid", "oil in the brake reservoir", "engine oil in the brake fluid", "oil in the brake system"],
};
