// What people type when something is wrong, in English.

import type { DefectWords } from "../../core/reading/defect-words.ts";
import type { ReadingKind } from "../../core/reading/kinds.ts";
import type { DefectKind } from "../../trade/defects.ts";
import { ENGLISH_GONE_WHOLE, ENGLISH_PARTS_GONE } from "./defect-phrases-gone.ts";

const OUT = [
  ...["flickers", "flickering", "out", "dead", "gone", "blown", "broken", "smashed", "cracked", "not working", "doesn't work", "does not work", "won't work"],
  ...["isn't working", "intermittent", "stopped working", "packed up", "packed in", "given up", "failed"],
];
const LEAK = ["leaking", "leaks", "leak", "weeping", "weeps", "weep", "dripping", "drips", "seeping", "seeps", "pouring out", "coming out", "everywhere"];
const LOOSE = ["loose", "has play", "wobbly", "wobbles", "rattling", "rattles", "coming loose", "came loose", "has come loose"];
const BROKEN = ["broken", "cracked", "bent", "snapped", "split", "torn", "missing", "fell off", "fallen off", "came off", "dented", "buckled", "damaged"];
const HOSE = [
  ...["cracked", "cracks", "has cracks", "split", "perished", "bulging", "bulge", "swollen", "chafed", "chafing", "kinked", "frayed", "rubbed through"],
  ...["cracking", "has a crack", "rubbing"],
];
const BRAKE = [
  ...["brake", "brakes", "front brake", "rear brake", "front brakes", "rear brakes", "brake lever", "brake pedal", "front brake lever", "rear brake pedal"],
];
const WORN_BELT = [
  ...["cracked", "cracks", "crack", "has a crack", "has cracks", "crack in it", "cracks in it", "frayed", "fraying", "missing teeth", "missing a tooth"],
  ...[
    "torn",
    "slipping",
    "snapped",
    "missing tooth",
    "has a missing tooth",
    "has missing teeth",
    "missing one tooth",
    "missing two teeth",
    "missing some teeth",
  ],
  ...["missing three teeth", "missing several teeth", "lost a tooth", "lost teeth", "lost some teeth", "lost two teeth", "broken tooth", "broken teeth"],
  ...["tooth missing", "teeth missing", "shredded", "shredding", "split", "damaged", "delaminating", "holed", "hole in it", "jumping", "skipping", "jumps"],
];
const BELT_TEETH = [
  ...["belt tooth", "belt teeth", "drive belt tooth", "drive belt teeth", "tooth of the belt", "tooth on the belt", "teeth of the belt", "teeth on the belt"],
];
const CHAIN = ["chain", "drive chain"];
const LOST = ["missing", "gone", "lost", "fell off", "fallen off", "came off", "fell out", "dropped off", "flew off"];
/** What holds a chain together. */
const LINK = [
  ...["chain master link clip", "master link clip", "chain master link", "master link", "chain clip", "chain link clip", "split link", "chain split link"],
  ...["connecting link", "link clip", "spring clip", "chain spring clip", "spring link", "chain joining link", "joining link", "soft link", "rivet link"],
  ...["chain rivet link", "chain link", "chain links", "chain plate", "chain plates", "chain side plate", "side plate", "link plate", "chain link plate"],
  ...["chain roller", "chain rollers", "chain pin", "chain pins", "chain rivet", "chain rivets", "clip on the chain", "clip of the chain", "chain clips"],
];
const SIDEWALL = ["sidewall", "front sidewall", "rear sidewall", "tyre sidewall", "tire sidewall", "rear tyre sidewall", "front tyre sidewall"];
const BRAKE_HOSE = ["brake line", "brake lines", "brake hose", "brake hoses", "front brake hose", "rear brake hose", "front brake line", "rear brake line"];
const FUEL_HOSE = ["fuel hose", "fuel hoses", "fuel line", "fuel lines", "petrol hose", "petrol pipe", "fuel pipe"];
const LEAKS_FLUID = ["leaks fluid", "leaking fluid", "losing fluid", "loses fluid", "weeping fluid", "dripping fluid"];
const DISC = [
  ...["disc", "front disc", "rear disc", "brake disc", "front brake disc", "rear brake disc", "rotor", "front rotor", "rear rotor", "discs", "brake discs"],
];
/** What ruins a lining or a disc that it gets on. */
const GREASE = ["oil", "engine oil", "fork oil", "chain oil", "chain lube", "grease", "brake fluid", "hydraulic fluid", "fuel", "wax", "lube", "silicone"];
const GREASE_ON = GREASE.flatMap((what) => ["on", "all over", "over", "got on"].flatMap((on) => [`${what} ${on}`, `${what} ${on} the`, `${what} ${on} my`]));
const HAS_GREASE_ON = GREASE.flatMap((what) => [`${what} on it`, `${what} on them`, `covered in ${what}`, `full of ${what}`]);
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
const CRACK_IN = ["crack in the", "cracks in the", "crack in", "cracks in"];
const NO_PLAY = [
  "no free play at the",
  "no free play in the",
  "no free play on the",
  "no freeplay at the",
  "no play at the",
  "no free play at",
  "no play in the",
];
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
const CUPPED = ["cupped", "cupping", "scalloped", "scalloping", "feathered", "feathering", "worn unevenly", "wearing unevenly", "unevenly worn", "uneven wear"];
/** "Goes almost to the bar". */
const TO_THE_BAR = ["bar", "bars", "grip", "handlebar"].flatMap((end) =>
  ["goes", "comes", "pulls", "travels", "moves"].flatMap((verb) =>
    ["almost", "nearly", "right", "all the way", "almost all the way", "straight"].map((how) => `${verb} ${how} to the ${end}`),
  ),
);
const HITS_THE_GRIP = ["grip", "bar", "bars", "handlebar", "throttle grip"].flatMap((end) =>
  ["hits", "touches", "reaches", "against", "meets", "almost hits", "nearly hits", "almost touches", "nearly touches", "bottoms out on"].flatMap((verb) => [
    `${verb} the ${end}`,
    `${verb} ${end}`,
  ]),
);
/** Said of what is worn to its end, whatever it is. */
const DONE_FOR = [
  ...["worn", "worn out", "worn down", "worn through", "worn away", "toast", "had it", "finished", "done for", "shot", "knackered", "past it"],
  ...["past its best", "past their best", "wrecked", "ruined", "cooked", "buggered", "on its last legs", "on their last legs", "on the way out"],
  ...["on its way out", "on their way out", "at its end", "at their end", "at the end of its life", "at the end of their life", "end of life", "at the limit"],
  ...["below the limit", "under the limit", "past the limit", "beyond the limit", "at minimum", "below minimum", "under minimum", "seen better days"],
];
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
const FEELS = ["feel", "feels", "feeling"].flatMap((verb) =>
  ["", "a bit ", "a little ", "really ", "very ", "kind of ", "kinda ", "slightly ", "quite ", "so "].map((much) => `${verb} ${much}`),
);
const ODD = ["weird", "strange", "odd", "funny", "wrong", "different", "off", "iffy", "dodgy", "not right", "not quite right", "not normal"];
const FEELS_ODD = [
  ...FEELS.flatMap((feels) => ODD.map((odd) => `${feels}${odd}`)),
  ...["acting up", "acting weird", "acting strange", "acting funny", "playing up"],
];
const VALVE = [
  ...["front valve", "rear valve", "tyre valve", "tire valve", "valve stem", "front tyre valve", "rear tyre valve", "front tire valve", "rear tire valve"],
];
const LOW_TREAD = [
  ...["no tread", "no tread left", "no rubber left", "out of tread", "hardly any tread", "hardly any tread left", "barely any tread", "barely any tread left"],
];
const TYRE = ["tyre", "tire", "tyres", "tires", "front tyre", "rear tyre", "back tyre", "front tire", "rear tire", "back tire"];
const LAMP = [
  ...["tail light", "taillight", "rear light", "indicator", "indicators", "blinker", "turn signal", "side light", "number plate light", "plate light"],
  ...["tail light bulb", "indicator bulb", "running light"],
];

/** The kinds of each end, for those that are so called where no end is said; the same in every language. */
export const BY_END = {
  "worn tyre": { front: "worn front tyre", rear: "worn rear tyre", sidecar: "worn sidecar tyre" },
  "worn pads": { front: "worn front pads", rear: "worn rear pads", sidecar: "worn sidecar brake" },
  "worn shoes": { front: "worn front shoes", rear: "worn rear shoes", sidecar: "worn sidecar brake" },
} as const satisfies Partial<Record<DefectKind, { readonly front: DefectKind; readonly rear: DefectKind; readonly sidecar: DefectKind }>>;

/** What a figure beside the words judges better than they do; the same in every language. */
export const UNLESS_READ = {
  // "Getting low, 2 mm" is of the tread.
  "wrong front pressure": ["cold pressure", "tread"],
  "wrong rear pressure": ["cold pressure", "tread"],
} as const satisfies Partial<Record<DefectKind, readonly ReadingKind[]>>;

const OF_TYRES = ["squared-off tyre", "cupped tyre", "cracked tyre", "damaged tyre", "plugged tyre", "worn tyre", "puncture"] as const;
const OF_LININGS = ["damaged brake", "soft brake", "brake noise", "dragging brake"] as const;
const OF_BATTERY = ["damaged battery", "flat battery", "not charging"] as const;
/** What goes with the old fluid and the air in it; the same in every language. */
export const BY_BLEEDING = [...["soft brake", "odd brake", "old brake fluid", "dragging clutch", "slipping clutch"]] as const satisfies readonly DefectKind[];
/** What only setting, tightening, cleaning, grease, freeing or a charge can put right; nothing broken, cracked, lost or worn is. The same in every language. */
export const BY_SETTING = [
  ...["chain tension", "slack chain", "slipping clutch", "dragging clutch", "no clutch play", "soft clutch", "soft brake", "odd brake", "dragging brake"],
  ...["no throttle play", "tight valve"],
] as const satisfies readonly DefectKind[];
export const BY_TIGHTENING = [
  ...["chain tension", "slack chain", "fastener", "mirror", "exhaust", "oil leak", "coolant leak", "side stand"],
] as const satisfies readonly DefectKind[];
export const BY_CLEANING = [
  ...["dragging brake", "sticking throttle", "running rough", "not charging", "light", "brake light", "headlight", "horn", "side stand"],
] as const satisfies readonly DefectKind[];
export const BY_GREASE = ["sticking throttle", "side stand", "dragging brake", "horn", "light"] as const satisfies readonly DefectKind[];
export const BY_FREEING = ["dragging brake", "sticking throttle", "side stand", "dragging clutch"] as const satisfies readonly DefectKind[];
export const BY_CHARGING = ["flat battery"] as const satisfies readonly DefectKind[];
/** What a sign is of that stands beside a reading and names no thing; the same in every language. */
export const BESIDE = {
  "cold pressure": OF_TYRES,
  tread: OF_TYRES,
  "tyre date code": OF_TYRES,
  odometer: OF_TYRES,
  "pad thickness": [...OF_LININGS, "worn pads"],
  "shoe thickness": [...OF_LININGS, "worn shoes"],
  "disc thickness": ["damaged brake", "pulsing brake", "soft brake"],
  "brake fluid level": ["old brake fluid", "brake fluid leak", "soft brake"],
  "chain slack": ["chain", "rusty chain", "chain tension"],
  "chain length": ["chain", "rusty chain"],
  "chain elongation": ["chain", "rusty chain"],
  "belt deflection": ["drive belt"],
  "battery voltage": OF_BATTERY,
  "charging voltage": OF_BATTERY,
  "clutch free play": ["slipping clutch", "dragging clutch"],
} as const satisfies Partial<Record<ReadingKind, readonly DefectKind[]>>;

const WORDS: DefectWords & { readonly kinds: Readonly<Record<DefectKind, DefectWords["kinds"][string]>> } = {
  kinds: {
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
          ...["empty"],
        ],
      },
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
    "warning light": [
      {
        things: [
          ...["abs light", "abs lamp", "oil light", "oil pressure light", "engine light", "warning light", "check engine light", "temperature light"],
          ...["abs warning light"],
        ],
        signs: ["on", "stays on", "came on", "comes on", "lit", "flashing", "staying on", "lights up"],
      },
    ],
    "fuel leak": [
      {
        things: ["fuel", "petrol", "gas tank", "fuel tap", "petcock", "carb", "carbs", "carburettor", "fuel line", "fuel hose", "tank", "fuel tank"],
        signs: [...LEAK, "overflowing", "smell", "smells"],
      },
    ],
    "damaged fuel hose": [
      { things: FUEL_HOSE, signs: HOSE },
      { things: CRACK_IN, signs: FUEL_HOSE },
    ],
    "running rough": [
      {
        things: ["engine", "motor", "bike", "it"],
        signs: [
          ...["misfiring", "misfires", "cutting out", "cuts out", "running rough", "runs rough", "stalling", "keeps stalling", "bogging down", "hesitating"],
          ...["hunting", "coughs", "coughing", "backfires", "backfiring", "won't start", "wont start", "will not start", "doesn't start", "hard to start"],
        ],
      },
    ],
    "oil leak": [
      {
        things: [
          ...["oil", "engine", "gearbox", "sump", "rocker cover", "valve cover", "base gasket", "head gasket", "drain plug", "clutch cover", "left cover"],
          ...["right cover"],
        ],
        signs: LEAK,
      },
    ],
    "engine noise": [
      {
        things: ["engine", "motor", "bottom end", "top end", "cam chain", "big end"],
        signs: ["knocking", "knocks", "rattling", "rattles", "ticking loudly", "clattering", "seized"],
      },
    ],
    "timing belt": [
      { things: ["timing belt", "timing belts", "cam belt", "cam belts", "cambelt", "cambelts"], signs: [...WORN_BELT, "worn out", "worn"] },
      { things: CRACK_IN, signs: ["timing belt", "cam belt", "cambelt"] },
    ],
    "tight valve": [
      {
        things: [
          ...["valves", "exhaust valve", "exhaust valves", "intake valve", "intake valves", "inlet valve", "inlet valves", "valve clearance"],
          "valve clearances",
        ],
        signs: ["too tight", "way too tight"],
        signLast: true,
      },
    ],
    smoke: [{ things: ["exhaust", "engine", "bike", "it"], signs: ["smoking", "smokes", "blowing smoke", "blue smoke", "white smoke", "black smoke"] }],
    exhaust: [
      {
        things: ["exhaust", "silencer", "header", "muffler", "exhaust gasket", "downpipe"],
        signs: [...LOOSE, "blowing", "leaking", "cracked", "holed", "rusted through", "hanging off", "hanging loose"],
      },
    ],
    "coolant leak": [{ things: ["coolant", "radiator", "water pump", "coolant hose", "radiator hose", "antifreeze"], signs: LEAK }],
    "damaged coolant hose": [{ things: ["coolant hose", "coolant hoses", "radiator hose", "radiator hoses"], signs: HOSE }],
    overheating: [
      {
        things: ["engine", "bike", "it", "motor"],
        signs: ["overheating", "overheats", "runs hot", "running hot", "getting too hot", "overheated", "boiling over", "boiled over"],
      },
    ],
    "slipping clutch": [
      {
        things: ["clutch", "clutch plates"],
        signs: ["slipping", "slips", "slipped", "worn", "worn out", "burnt", "burnt out", "toast", "had it", "shot", "knackered"],
      },
    ],
    "soft clutch": [
      {
        things: ["clutch", "clutch lever", "clutch feel"],
        signs: [
          ...["spongy", "spongey", "soft", "mushy", "squishy", "no pressure", "lost pressure", "loses pressure", "pumps up", "comes to the bar", "sinks"],
          ...["comes back to the bar", "goes to the bar", "pulls to the bar", "comes to the grip", "comes back to the grip", "to the bar", "to the grip"],
          ...["goes limp", "limp", "floppy", ...TO_THE_BAR],
        ],
      },
    ],
    "no clutch play": [
      {
        things: ["clutch", "clutch lever", "clutch cable"],
        signs: ["no free play", "no freeplay", "no play", "has no free play", "has no freeplay", "has no play"],
      },
      { things: NO_PLAY, signs: ["clutch", "clutch lever", "clutch cable"] },
    ],
    "dragging clutch": [{ things: ["clutch"], signs: ["dragging", "drags", "not disengaging", "won't disengage", "sticking"] }],
    gearbox: [
      { things: ["gearbox", "transmission"], signs: ["jumping out of gear", "jumps out of gear", "crunching", "grinding", "noisy"] },
      { things: ["second", "third", "fourth", "fifth", "bike", "it", "gear"], signs: ["jumping out of gear", "jumps out of gear"] },
    ],
    "chain at its end": [
      {
        things: ["chain adjuster", "chain adjusters", "adjuster", "adjusters", "axle adjuster"],
        signs: [
          "at its end",
          "at the end",
          "at their end",
          "at the limit",
          "run out",
          "ran out",
          "maxed out",
          "all the way back",
          "out of adjustment",
          ...["at the end of its marks", "at the end of their marks", "at the end of the marks", "on the last mark", "at the last mark", "past the last mark"],
          ...["out of marks", "off the marks", "past the marks", "in the red", "in the red zone", "at the red mark", "at the end of its travel"],
          ...["at the end of the adjustment", "at the end of its range", "at the replace mark", "on the replace mark"],
        ],
      },
      { things: ["chain", "drive chain"], signs: ["worn out", "stretched", "out of adjustment", "no adjustment left"] },
      { things: ["chain", "drive chain"], signs: DONE_FOR, signLast: true },
    ],
    chain: [
      {
        things: CHAIN,
        signs: [
          ...["jumping", "jumps", "skipping", "skips", "broken", "snapped", "kinked", "kinked link", "kinked links", "stiff link", "stiff links", "tight spot"],
          ...["tight spots", "has a tight spot", "has tight spot", "has tight spots", "have a tight spot", "there's a tight spot", "rattles", "rattling"],
          ...[
            "seized links",
            "seized link",
            "came off",
            "comes off",
            "fell off",
            "derailed",
            "clip missing",
            "cracked",
            "cracks",
            "has a crack",
            "frozen links",
          ],
          ...[
            "missing a roller",
            "missing rollers",
            "missing a clip",
            "missing its clip",
            "missing a plate",
            "missing a link plate",
            "split",
            "is binding",
            "binding",
          ],
          ...["roller missing", "rollers missing", "o-rings missing", "missing o-rings", "bent link", "bent"],
        ],
      },
      {
        things: LINK,
        signs: [
          ...BROKEN,
          ...LOST,
          "cracks",
          "has a crack",
          "loose",
          "stiff",
          "seized",
          "kinked",
          "worn",
          "broke",
          "coming off",
          "open",
          "the wrong way round",
        ],
      },
      { things: [...CRACK_IN, "missing", "lost"], signs: [...LINK, "chain", "drive chain"] },
    ],
    "chain tension": [
      {
        things: CHAIN,
        signs: [
          "too tight",
          "very slack",
          "too slack",
          "all slack",
          "very loose",
          "hanging",
          "hangs low",
          "sagging badly",
          "sags badly",
          "loose",
          "flapping",
          ...["no slack", "no slack at all", "no slack left", "has no slack", "has no slack at all", "has no slack left", "zero slack", "bar tight"],
        ],
        signLast: true,
      },
      { things: ["no slack in", "no slack at all in", "no slack left in"], signs: CHAIN },
      { things: ["too tight", "very slack", "too slack", "very loose", "loose"], signs: CHAIN },
      { things: CHAIN, signs: ["is tight", "is very tight", "is way too tight", "is really tight"], signLast: true },
    ],
    "rusty chain": [{ things: CHAIN, signs: ["rusty", "rusted", "has rust", "rust", "all rust", "corroded", "gone rusty", "red with rust"] }],
    "worn sprockets": [
      {
        things: [
          "sprocket",
          "sprockets",
          "front sprocket",
          "rear sprocket",
          "back sprocket",
          "sprocket teeth",
          "sprocket nut",
          "sprocket bolts",
          "sprocket bolt",
        ],
        signs: [
          ...[
            "hooked",
            "worn",
            "worn out",
            "worn down",
            "shot",
            "toast",
            "knackered",
            "shark finned",
            "missing teeth",
            "missing a tooth",
            "sharp",
            "loose",
            "broken",
          ],
          ...["missing", "cracked", "gone", "has play", "wobbles", "teeth hooked", "teeth missing", "tooth missing", "came loose"],
        ],
      },
    ],
    "drive belt": [
      { things: ["drive belt", "belt", "final drive belt"], signs: WORN_BELT },
      { things: CRACK_IN, signs: ["drive belt", "belt"] },
      {
        things: ["drive belt", "final drive belt"],
        signs: ["too slack", "very slack", "far too slack", "way too slack", "too loose", "very loose", "hangs", "hanging"],
      },
      { things: ["drive belt", "belt", "final drive belt"], signs: ["jumps teeth", "jumped teeth", "jumping teeth", "jumped a tooth", "jumps a tooth"] },
      {
        things: BELT_TEETH,
        signs: ["missing", "gone", "sheared", "sheared off", "broken", "worn", "cracked", "damaged", "chipped", "stripped", "torn", "torn off", "broke off"],
      },
    ],
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
      { things: TYRE, signs: ["has a plug", "has a plug in it", "has a patch", "has a patch in it", "has been plugged", "has been patched"] },
      // A repair from inside is watched too: nobody sees it.
      {
        things: TYRE,
        signs: ["patch", "plug", "mushroom plug", "patch plug", "plug patch", "mushroom"]
          .flatMap((with_) => [`repaired with a ${with_}`, `fixed with a ${with_}`, `mended with a ${with_}`])
          .concat([
            "repaired from inside",
            "repaired from the inside",
            "patched from inside",
            "patched from the inside",
            "vulcanised",
            "vulcanized",
            "repaired",
          ]),
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
    "swingarm bearing": [
      {
        things: ["swingarm", "swing arm", "swingarm bearing", "swingarm bearings", "swingarm pivot", "swingarm bushes"],
        signs: ["has play", "play", "loose", "worn", "notchy", "seized", "shot"],
      },
      { things: ["play in the"], signs: ["swingarm", "swing arm", "swingarm bearings"] },
    ],
    spoke: [{ things: ["spoke", "spokes", "front spokes", "rear spokes"], signs: ["broken", "broke", "snapped", "loose", "missing", "bent"] }],
    "damaged wheel": [
      { things: ["rim", "front rim", "rear rim", "wheel", "front wheel", "rear wheel"], signs: ["cracked", "dented", "buckled", "bent", "out of true"] },
      { things: [...CRACK_IN, "dent in the", "dent in"], signs: ["rim", "front rim", "rear rim", "wheel", "front wheel", "rear wheel"] },
    ],
    steering: [
      {
        things: ["steering", "head bearings", "steering head", "headstock", "steering head bearings", "steering bearings"],
        signs: [
          ...["notchy", "loose", "clunking", "clunks", "has play", "play", "stiff", "catching", "shot", "heavy", "tight", "sticky", "binding", "vague"],
          ...["worn", "worn out", "has a notch", "notch in the middle", "had it", "toast", "knackered", "rough", "gritty", "seized"],
        ],
      },
      {
        things: ["steering", "handling"],
        signs: [...FEELS_ODD, "feels vague", "feels wobbly", "feels loose"],
        signLast: true,
      },
      { things: ["bars", "handlebars", "handlebar"], signs: ["loose", "bent", "wobbling", "shaking"] },
      {
        things: ["bike", "it"],
        signs: ["pulls to the left", "pulls to the right", "pulls left", "pulls right", "wanders", "weaves", "wobbles", "wobbling", "shakes its head"],
      },
      { things: ["wobble", "weave", "speed wobble"], signs: ["at", "under braking", "at speed"] },
    ],
    "fork leak": [
      {
        things: [
          ...["fork", "forks", "fork seal", "fork seals", "left fork", "right fork", "fork leg", "left fork seal", "right fork seal", "fork seal on the left"],
          ...["fork seal on the right", "fork oil"],
        ],
        signs: [
          ...LEAK,
          ...["blown", "gone", "wet", "oily", "misting", "had it", "toast", "shot", "knackered", "worn out", "done for", "finished", "past it", "losing oil"],
        ],
      },
    ],
    "shock leak": [
      {
        things: ["shock", "rear shock", "shocks", "damper"],
        signs: [...LEAK, "blown", "gone", "oily", "had it", "toast", "shot", "knackered", "worn out", "done for", "finished"],
      },
    ],
    "sticking throttle": [
      {
        things: ["throttle", "throttle grip"],
        signs: [
          ...[
            "sticking",
            "sticks",
            "stuck",
            "sticky",
            "not snapping back",
            "doesn't snap back",
            "does not snap back",
            "won't snap back",
            "will not snap back",
            "does not close",
            "doesn't close",
            "does not return",
            "won't return",
            "not closing",
            "won't close",
            "slow to close",
          ],
          ...["doesn't return"],
        ],
      },
    ],
    cable: [
      {
        things: ["cable", "clutch cable", "throttle cable", "brake cable", "cables"],
        signs: ["frayed", "fraying", "snapped", "broken", "broke", "kinked", "sticking"],
      },
    ],
    mirror: [{ things: ["mirror", "left mirror", "right mirror", "mirrors"], signs: [...LOOSE, ...BROKEN, "smashed", "shattered"] }],
    "side stand": [
      {
        things: ["side stand", "sidestand", "kickstand", "centre stand", "center stand", "side stand switch", "side stand spring"],
        signs: [...LOOSE, ...BROKEN, "won't stay up", "drops", "dropping down", "not working", "sticking"],
      },
    ],
    fastener: [
      {
        things: ["bolt", "nut", "screw", "axle nut", "caliper bolt", "caliper bolts", "bolts", "rack bolt", "engine bolt", "drain bolt", "split pin"],
        signs: ["loose", "missing", "came loose", "fell out", "fallen out", "gone", "sheared", "stripped", "snapped"],
      },
    ],
    frame: [
      { things: ["frame", "swingarm", "subframe", "sub frame", "engine mount", "footpeg mount"], signs: ["cracked", "bent", "crack", "broken", "twisted"] },
    ],
    // Found by measuring, or said in words where the end is named.
    "worn front tyre": [],
    "worn rear tyre": [],
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
    "worn sidecar tyre": [],
    "worn sidecar brake": [],
    "worn rear shoes": [],
    "worn front drum": [],
    "worn rear drum": [],
    "worn disc": [{ things: DISC, signs: [...DONE_FOR, "lipped", "has a lip", "thin", "too thin"], signLast: true }],
    "low brake fluid": [],
    "low front brake fluid": [],
    "low rear brake fluid": [],
    "wrong front pressure": [{ things: TYRE_AT.front, signs: LOW_ON_AIR, signLast: true }],
    "wrong rear pressure": [{ things: TYRE_AT.rear, signs: LOW_ON_AIR, signLast: true }],
    "wrong sidecar pressure": [],
    "slack chain": [],
    "tight chain": [],
    "slack belt": [],
    "worn chain": [],
    "no throttle play": [
      { things: ["throttle", "throttle cable", "throttle grip"], signs: ["no free play", "no freeplay", "no play", "has no free play", "has no freeplay"] },
      { things: NO_PLAY, signs: ["throttle", "throttle grip", "throttle cable"] },
    ],
    "low engine oil": [],
    "oily tyre": [],
    rubbing: [],
    "fitted wrong": [],
    "attacked brake seals": [],
    "attacked clutch seals": [],
    "mixed brake fluid": [],
    "mixed clutch fluid": [],
    // By what the bike is fitted with.
    "damaged lithium battery": [],
  },
  whole: {
    "flat battery": ["flat battery", "dead battery"],
    "plugged tyre": ["mushroom plug", "mushroom plugged"],
    puncture: ["puncture", "flat tyre", "flat tire", "rear puncture", "front puncture", "slow puncture"],
    "oil leak": ["oil leak", "engine oil leak"],
    "coolant leak": ["coolant leak"],
    "fuel leak": ["fuel leak", "petrol leak", "smell of fuel", "smell of petrol", "smells of fuel", "smells of petrol"],
    "brake fluid leak": ["brake fluid leak"],
    "fork leak": ["leaking fork seal", "blown fork seal", "fork seal gone"],
    "soft brake": ["no front brake", "no rear brake", "no brakes"],
    "brake light": ["no brake light", "no rear brake light"],
    headlight: ["no headlight", "no dipped beam"],
    steering: ["play in the steering", "play in the head bearings", "notch in the steering", "play in the headstock"],
    "worn rear tyre": [
      ...["no tread left on the rear", "no tread left on rear", "no tread on the rear", "no tread left at the rear", "no tread left on the back"],
      ...["no tread at the rear", "no tread left rear"],
    ],
    "worn front tyre": ["no tread left on the front", "no tread left on front", "no tread on the front", "no tread left at the front", "no tread left front"],
    "worn tyre": ["no tread left"],
    "wheel bearing": ["play in the rear wheel", "play in the front wheel"],
  },
  stray: [
    ...["cracks", "squared off", "plug", "plugged", "bulge", "perished", "worn out"],
    ...["broken", "cracked", "bent", "snapped", "leaking", "weeping", "loose", "missing", "rattling", "damaged", "torn", "frayed", "not working", "stuck"],
    ...["fell off", "came off", "corroded", "burnt", "swollen", "bulging", "frayed", "seized"],
  ],
  between: [
    ...["is", "are", "'s", "feels", "feel", "feeling", "felt", "seems", "looks", "sounds", "has", "have", "got", "gets", "getting", "gone", "went", "a"],
    ...["bit", "little", "very", "really", "quite", "rather", "slightly", "pretty", "all", "now", "again", "still", "badly", "keeps", "suddenly"],
    ...[
      "completely",
      "totally",
      "just",
      "there's",
      "some",
      "started",
      "starting",
      "an",
      "almost",
      "side",
      "it",
      "been",
      "the",
      "nearly",
      "about",
      "fine",
      "small",
      "tiny",
      "hairline",
    ],
    ...["basically", "absolutely", "properly", "so", "too", "looking", "become", "becoming", "becomes", "definitely", "seriously", "already", "front", "rear"],
    ...["back", "and"],
  ],
  past: ["was", "were", "used", "had"],
  joins: ["the", "my", "a", "an", "from", "of", "at", "in", "on", "its", "some", "out", "around", "left", "right", "front", "rear", "both"],
  before: [
    ...["two", "three", "few", "several", "couple", "left", "right", "hand", "one", "both", "upper", "lower", "inner", "outer", "noticed", "found", "looks"],
    ...["like", "got", "has", "have", "had", "with", "there's", "and", "but", "also", "that", "the", "my", "think", "seems", "slow", "small", "slight", "bad"],
    ...["there", "big", "some", "new", "old", "because", "today", "yesterday", "still", "pretty", "sure", "spotted", "saw", "i", "i've", "we"],
  ],
  none: ["no", "without", "not", "zero"],
  itself: ["bike", "it"],
  others: [
    ...["your", "yours", "his", "her", "hers", "their", "theirs", "someone's", "somebody's", "mate's", "friend's", "neighbour's", "he's", "she's", "they're"],
    ...["he", "she", "they", "wife's", "brother's", "dad's"],
  ],
  notBefore: [
    ...[
      "of",
      "stock",
      "charger",
      "kit",
      "kits",
      "tool",
      "tools",
      "sealant",
      "tester",
      "repair",
      "repairs",
      "shop",
      "season",
      "rate",
      "rates",
      "price",
      "spot",
      "track",
    ],
    ...["rider", "riders", "gel", "guard", "screen", "like", "than", "enough", "tail", "luggage", "panniers", "compound"],
    // With the word before it: "worn in", "worn to 3 mm".
    ...["worn in", "worn well", "worn evenly", "worn nicely", "worn to", "worn less", "worn more", "worn quicker", "worn faster", "finished charging"],
    ...["flat out", "flat white", "flat light", "flat calm", "flat day", "cracking day", "cracking ride", "cracking trip", "cracking run", "cracking weather"],
    ...["cut the", "cut short", "cut up", "dead calm", "dead straight", "dead quiet", "hot day", "split second"],
    ...["low profile", "soft compound", "soft sidewall", "soft enough"],
    ...["for the", "for this", "for winter", "for today", "for now"],
  ],
  mended: [
    ...["fixed", "mended", "repaired", "sorted", "cured", "replaced", "changed", "swapped", "renewed", "fitted", "bled", "adjusted", "tightened", "cleaned"],
    ...["rebuilt", "resealed", "freed", "charged", "greased", "lubed"],
  ],
  mendsOnly: {
    ...{ bled: BY_BLEEDING, adjusted: BY_SETTING, tightened: BY_TIGHTENING, cleaned: BY_CLEANING, greased: BY_GREASE, lubed: BY_GREASE, freed: BY_FREEING },
    charged: BY_CHARGING,
  },
  inVain: ["after", "since", "although", "though", "despite", "even", "still", "twice", "again", "when", "until", "yet"],
  turns: [
    {
      ...{ from: ["puncture"], to: "plugged tyre" },
      said: [
        "plugged it",
        "plugged",
        "patched it",
        "patched",
        "put a plug in",
        "put a plug in it",
        "stuck a plug in",
        "stuck a plug in it",
        "repaired",
        "repaired it",
      ],
    },
  ],
  byEnd: BY_END,
  unlessRead: UNLESS_READ,
  beside: {
    kinds: BESIDE,
    not: ["too tight", "very slack", "too slack", "all slack", "very loose", "loose", "hanging", "sagging", "sags", "hangs low"],
    where: ["tight spot"],
    parts: { "cold pressure": ["valve", "valve core", "valve stem", "valves"] },
    alone: ["nail in it", "nail", "screw in it", "losing air", "loses air", "cords showing"],
  },
};

/** With the words of what came off, broke or jams. */
export const ENGLISH_DEFECT_WORDS: typeof WORDS = {
  ...WORDS,
  kinds: Object.fromEntries(
    (Object.keys(WORDS.kinds) as DefectKind[]).map((kind) => [kind, [...WORDS.kinds[kind], ...(ENGLISH_PARTS_GONE[kind] ?? [])]]),
  ) as unknown as typeof WORDS.kinds,
  whole: {
    ...WORDS.whole,
    ...Object.fromEntries(Object.entries(ENGLISH_GONE_WHOLE).map(([kind, phrases]) => [kind, [...(WORDS.whole[kind] ?? []), ...phrases]])),
  },
};
