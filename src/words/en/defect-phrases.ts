// What people type when something is wrong, in English.

import type { DefectWords } from "../../core/reading/defect-words.ts";
import type { ReadingKind } from "../../core/reading/kinds.ts";
import type { DefectKind } from "../../trade/defects.ts";
import { ENGLISH_BRAKES_WRONG } from "./wrong/brakes.ts";
import { ENGLISH_CHASSIS_WRONG } from "./wrong/chassis.ts";
import { ENGLISH_DRIVE_WRONG } from "./wrong/drive.ts";
import { ENGLISH_ELECTRICS_WRONG } from "./wrong/electrics.ts";
import { ENGLISH_ENGINE_WRONG } from "./wrong/engine.ts";
import { ENGLISH_GONE_WHOLE, ENGLISH_PARTS_GONE } from "./wrong/parts-gone.ts";
import { ENGLISH_TYRES_AND_WHEELS_WRONG } from "./wrong/tyres-and-wheels.ts";

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
/** What new linings mend only where it was they that were bad; the same in every language. */
export const OF_LININGS_ALONE = ["damaged brake", "dragging brake", "soft brake", "odd brake"] as const satisfies readonly DefectKind[];
const OF_BATTERY = ["damaged battery", "flat battery", "not charging", "overcharging"] as const;
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
  "clutch free play": ["slipping clutch", "dragging clutch", "cable"],
  "throttle free play": ["sticking throttle", "cable"],
  "brake free play": ["soft brake", "dragging brake"],
  "coolant level": ["dirty coolant", "coolant leak"],
  "coolant strength": ["dirty coolant", "coolant leak"],
  "oil level": ["oil leak"],
} as const satisfies Partial<Record<ReadingKind, readonly DefectKind[]>>;

const WORDS: DefectWords & { readonly kinds: Readonly<Record<DefectKind, DefectWords["kinds"][string]>> } = {
  kinds: {
    ...ENGLISH_BRAKES_WRONG,
    ...ENGLISH_ELECTRICS_WRONG,
    ...ENGLISH_ENGINE_WRONG,
    ...ENGLISH_DRIVE_WRONG,
    ...ENGLISH_TYRES_AND_WHEELS_WRONG,
    ...ENGLISH_CHASSIS_WRONG,
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
  linings: { things: ["pad", "pads", "shoe", "shoes", "lining", "linings"], ofThem: OF_LININGS_ALONE },
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
