// What people type when something is wrong with the brakes, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { CRACK_IN, DONE_FOR, FEELS_ODD, HOSE, LEAK, TO_THE_BAR } from "./things.ts";

const BRAKE = [
  ...["brake", "brakes", "front brake", "rear brake", "front brakes", "rear brakes", "brake lever", "brake pedal", "front brake lever", "rear brake pedal"],
];
const BRAKE_HOSE = ["brake line", "brake lines", "brake hose", "brake hoses", "front brake hose", "rear brake hose", "front brake line", "rear brake line"];
const LEAKS_FLUID = ["leaks fluid", "leaking fluid", "losing fluid", "loses fluid", "weeping fluid", "dripping fluid"];
const DISC = [
  ...["disc", "front disc", "rear disc", "brake disc", "front brake disc", "rear brake disc", "rotor", "front rotor", "rear rotor", "discs", "brake discs"],
];
/** What ruins a lining or a disc that it gets on. */
const GREASE = ["oil", "engine oil", "fork oil", "chain oil", "chain lube", "grease", "brake fluid", "hydraulic fluid", "fuel", "wax", "lube", "silicone"];
const GREASE_ON = GREASE.flatMap((what) => ["on", "all over", "over", "got on"].flatMap((on) => [`${what} ${on}`, `${what} ${on} the`, `${what} ${on} my`]));
const HAS_GREASE_ON = GREASE.flatMap((what) => [`${what} on it`, `${what} on them`, `covered in ${what}`, `full of ${what}`]);
/** The pointer of a drum brake stands with the lever on: past its mark the linings are at their end. Common practice. */
const POINTER = [
  ...["wear pointer", "brake wear pointer", "brake wear indicator", "wear indicator arrow", "wear arrow", "brake wear arrow", "drum wear indicator"],
  ...["brake arm", "brake cam arm", "brake cam lever", "cam arm", "cam lever", "brake pointer", "brake arrow", "shoe wear indicator", "brake lining indicator"],
];
const POINTERS = [...POINTER, ...["front", "rear", "back"].flatMap((end) => POINTER.map((thing) => `${end} ${thing}`))];
const MARK = [
  ...["the mark", "its mark", "the wear mark", "the line", "the wear line", "the limit", "its limit", "the wear limit", "the limit mark", "the range"],
  ...["the end of the range", "the scale"],
];
const PAST_MARK = [
  ...["past", "beyond", "over", "at", "on", "outside", "has passed", "passed", "has reached", "reached", "gone past", "has gone past"].flatMap((where) =>
    MARK.map((what) => `${where} ${what}`),
  ),
  "in the red",
];
const HITS_THE_GRIP = ["grip", "bar", "bars", "handlebar", "throttle grip"].flatMap((end) =>
  ["hits", "touches", "reaches", "against", "meets", "almost hits", "nearly hits", "almost touches", "nearly touches", "bottoms out on"].flatMap((verb) => [
    `${verb} the ${end}`,
    `${verb} ${end}`,
  ]),
);
const WORN_PADS = [
  ...[...DONE_FOR, "gone", "down to the backing", "down to the backing plate", "no lining left", "no lining", "nothing left", "no meat left", "no pad left"],
  ...["down to nothing", "look thin", "looks thin", "are thin", "very thin", "too thin", "paper thin", "wafer thin", "down to the rivets"],
  ...["down to the wear line", "at the wear line", "on the wear line", "at the wear mark", "down to the wear mark", "at the wear groove"],
  ...["at the wear indicator", "at the wear indicators", "on the wear indicator", "on the wear indicators", "down to the wear indicator"],
  ...["down to the wear indicators", "at the indicator", "at the indicators", "down to the indicators", "down to the groove", "down to the grooves"],
];
const PADS = ["pads", "brake pads", "brake pad", "pad", "pad linings", "pads front", "pads rear", "front pads", "rear pads", "back pads"];
const SHOES = ["shoes", "brake shoes", "shoe linings", "front shoes", "rear shoes", "front brake shoes", "rear brake shoes", "brake linings"];
/** What takes up a drum's wear: with no way left to turn, its shoes are worn. */
const DRUM_ADJUSTER = [
  ...[
    "brake adjuster",
    "brake adjusters",
    "brake rod adjuster",
    "brake cable adjuster",
    "brake rod nut",
    "brake adjuster nut",
    "drum adjuster",
    "drum brake adjuster",
  ],
  ...["brake cam adjuster", "brake rod"],
].flatMap((thing) => ["", "front ", "rear "].map((end) => `${end}${thing}`));
const DRUM = ["drum brake", "drum brakes", "brake drum", "drum"].flatMap((thing) => ["", "front ", "rear "].map((end) => `${end}${thing}`));
const ADJUSTER_OUT = [
  ...[
    "at its end",
    "at the end",
    "at their end",
    "at the limit",
    "at its limit",
    "run out",
    "ran out",
    "has run out",
    "maxed out",
    "all the way in",
    "right in",
  ],
  ...["fully in", "wound right in", "screwed right in", "screwed all the way in", "out of adjustment", "no adjustment left", "no thread left", "out of thread"],
  ...[
    "run out of adjustment",
    "ran out of adjustment",
    "has run out of adjustment",
    "no more adjustment",
    "used up",
    "at its stop",
    "at the stop",
    "bottomed out",
  ],
];

export const ENGLISH_BRAKES_WRONG = {
  "soft brake": [
    {
      things: BRAKE,
      signs: [
        ...["spongy", "spongey", "soft", "mushy", "squishy", "fading", "fades", "faded", "weak", "useless", "no pressure", "comes to the bar"],
        ...TO_THE_BAR,
        ...["comes back to the bar", "goes to the bar", "goes to the floor", "pulls to the bar", "not biting", "doesn't bite", "not braking", "failed"],
        ...["gone", "goes all the way to the bar", "pulls back to the bar", "comes to the grip", "comes back to the grip", "pulls to the grip"],
        ...["pulls to the handlebar", "to the bar", "to the grip", "no bite", "no feel", "no bite left", "lost pressure", "pumps up", "fades away"],
        ...["takes two pumps", "loses pressure", "sinks", "sinking", "hardly works", "barely works", "hardly brakes", "barely bites", "not working"],
        ...["doesn't work", "does not work", "don't work", "do not work", "won't stop", "not stopping", "dead"],
        ...["does nothing", "do nothing", "doing nothing", "has no effect", "no effect", "without effect", "doesn't stop", "doesn't slow"],
        ...HITS_THE_GRIP,
      ],
    },
    {
      things: ["lever"],
      signs: [
        "to the bar",
        "to the grip",
        "comes to the bar",
        "comes back to the bar",
        "comes back to the grip",
        "spongy",
        "mushy",
        ...TO_THE_BAR,
        ...HITS_THE_GRIP,
      ],
    },
  ],
  "brake fluid leak": [
    {
      things: ["brake fluid", "caliper", "master cylinder", "front caliper", "rear caliper", "wheel cylinder", ...BRAKE_HOSE],
      signs: [...LEAK, ...LEAKS_FLUID, "wet"],
    },
    { things: BRAKE, signs: [...LEAK, ...LEAKS_FLUID] },
  ],
  "damaged brake hose": [
    { things: BRAKE_HOSE, signs: [...HOSE, "swollen when braking"] },
    { things: CRACK_IN, signs: BRAKE_HOSE },
  ],
  "damaged brake": [
    {
      things: [...PADS, ...SHOES, "front brake pads", "rear brake pads"],
      signs: [
        "cracked",
        "contaminated",
        "contaminated with oil",
        "contaminated with fork oil",
        "contaminated with brake fluid",
        "oily",
        "soaked",
        "soaked in oil",
        "soaked in fork oil",
        "glazed",
        "scored",
        "deeply scored",
      ],
    },
    {
      things: DISC,
      signs: [
        ...["cracked", "crack", "cracks", "has a crack", "has cracks", "broken", "bent", "scored", "badly scored", "deeply scored", "grooved"],
        ...["contaminated", "oily", "glazed"],
      ],
    },
    { things: CRACK_IN, signs: DISC },
    { things: GREASE_ON, signs: [...DISC, ...PADS, ...SHOES, "front brake pads", "rear brake pads", "both discs", "linings"] },
    { things: [...DISC, ...PADS, ...SHOES], signs: HAS_GREASE_ON, signLast: true },
  ],
  "odd brake": [
    { things: BRAKE, signs: [...FEELS_ODD, "dodgy", "iffy", "sketchy", "rubbish", "crap", "terrible", "awful", "not right", "poor"], signLast: true },
  ],
  "old brake fluid": [
    {
      things: ["brake fluid", "front brake fluid", "rear brake fluid", "fluid in the brake", "fluid in the reservoir", "brake reservoir"],
      signs: [
        ...["black", "brown", "dark", "very dark", "murky", "cloudy", "dirty", "filthy", "old", "ancient", "like coffee", "the colour of coffee"],
        ...["like tea", "past it", "past its best", "discoloured", "discolored"],
      ],
      signLast: true,
    },
  ],
  "dragging brake": [
    {
      things: [...BRAKE, "caliper", "front caliper", "rear caliper", "pads", "front brake pads", "rear brake pads", "brake pads", "front pads", "rear pads"],
      signs: ["dragging", "drags", "sticking", "sticks", "binding", "binds", "seized", "won't release", "locked on", "stuck on", "stuck"],
    },
  ],
  "brake noise": [
    {
      things: [...BRAKE, "pads", "front pads", "rear pads", "brake pads", "front brake pads", "rear brake pads", "disc", "front disc", "rear disc"],
      signs: [
        ...["squeals badly", "making a grinding noise", "makes a grinding noise", "grinding", "grinds", "scraping", "scrapes", "metal on metal"],
        ...["down to the metal", "down to metal"],
      ],
    },
  ],
  "pulsing brake": [
    {
      things: [...BRAKE, "disc", "front disc", "rear disc", "rotor", "front discs"],
      signs: ["pulsing", "pulses", "juddering", "judders", "shuddering", "warped", "pulsating"],
    },
  ],
  "worn pads": [
    { things: [...PADS, "front brake pads", "rear brake pads", "rear brake pad", "front brake pad"], signs: WORN_PADS, signLast: true },
    {
      things: ["no pads left", "no pad left", "no lining left"],
      signs: ["front", "rear", "back", "on the front", "on the rear", "at the front", "at the rear", "at the back"],
    },
  ],
  "worn front pads": [],
  "worn rear pads": [],
  "worn shoes": [
    { things: SHOES, signs: WORN_PADS, signLast: true },
    { things: [...DRUM_ADJUSTER, ...DRUM], signs: ADJUSTER_OUT, signLast: true },
    { things: POINTERS, signs: PAST_MARK, signLast: true },
    {
      things: BRAKE,
      signs: ["no adjustment left", "run out of adjustment", "ran out of adjustment", "has run out of adjustment", "no more adjustment"],
      signLast: true,
    },
  ],
  "worn front shoes": [],
  "worn sidecar brake": [],
  "worn rear shoes": [],
  "worn front drum": [],
  "worn rear drum": [],
  "worn disc": [{ things: DISC, signs: [...DONE_FOR, "lipped", "has a lip", "thin", "too thin"], signLast: true }],
  "low brake fluid": [],
  "low front brake fluid": [],
  "low rear brake fluid": [],
  "attacked brake seals": [],
  "mixed brake fluid": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
