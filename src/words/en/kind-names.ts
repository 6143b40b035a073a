// What people type for a kind of reading, in English. Names of several words stand whole; the reader takes the longest that fits.

import type { ReadingKind } from "../../core/reading/kinds.ts";

/** "Pumped the front up to 34": whoever pumps says at which end, since other things are pumped up too. */
const PUMPED = ["pumped", "aired", "inflated"].flatMap((verb) =>
  ["", "up "].flatMap((up) => ["", "the "].flatMap((the) => ["front", "rear", "back", "tyres", "tires", "both"].map((end) => `${verb} ${up}${the}${end}`))),
);

const BELT_SET = ["set", "adjusted", "tightened", "tensioned"].flatMap((verb) => [
  ...["belt", "drive belt"].flatMap((thing) => [`${verb} the ${thing}`, `${verb} my ${thing}`, `${verb} ${thing}`, `${thing} ${verb}`]),
]);

/** "Free play at the clutch lever". */
const playAt = (...places: readonly string[]): readonly string[] =>
  ["free play", "freeplay", "play", "slack"].flatMap((play) =>
    ["at", "at the", "on", "on the", "of the", "in the"].flatMap((at) => places.map((place) => `${play} ${at} ${place}`)),
  );
const CLUTCH_PLAY = playAt("clutch lever", "clutch", "clutch cable");
const THROTTLE_PLAY = playAt("throttle grip", "throttle", "throttle cable", "twist grip", "twistgrip");

const RUNOUT = ["disc", "disk", "rotor", "brake disc", "brake rotor"].flatMap((thing) =>
  ["runout", "run-out"].flatMap((out) => [
    `${thing} ${out}`,
    `front ${thing} ${out}`,
    `rear ${thing} ${out}`,
    ...["of the", "on the", "at the"].map((of) => `${out} ${of} ${thing}`),
  ]),
);
const BOILS = ["brake fluid", "fluid"].flatMap((fluid) =>
  ["boils", "boils at", "boiled at", "boiling at", "boiling point", "boiling point is", "bp"].map((how) => `${fluid} ${how}`),
);

export const ENGLISH_KIND_NAMES: Readonly<Record<ReadingKind, readonly string[]>> = {
  odometer: ["odo", "odometer", "clock", "dial", "mileage", "milage", "mileometer", "clocked"],
  "engine hours": ["engine hours", "hour meter", "hours meter", "hourmeter", "running hours", "clock", "dial", "on the engine", "on the meter"],
  "cold pressure": ["pressure", "pressures", "tyre pressure", "tyre pressures", "tire pressure", "tire pressures", "tyres", "tires", ...PUMPED],
  tread: ["tread", "treads", "tread depth", "tread depths"],
  "tyre date code": ["date-code", "datecode"],
  "pad thickness": ["pads", "pad", "brake pads", "brake pad", "lining", "linings", "pad thickness", "friction material"],
  "shoe thickness": ["shoes", "shoe", "brake shoes", "brake shoe", "shoe lining", "shoe linings", "lining", "linings", "drum lining", "drum linings"],
  "drum diameter": ["drum", "drums", "brake drum", "brake drums", "drum diameter", "brake drum diameter", "inside of the drum", "drum inside"],
  "disc thickness": ["disc", "discs", "disk", "disks", "rotor", "rotors", "brake disc", "brake discs", "brake rotor", "disc thickness"],
  "disc runout": [...RUNOUT, "runout", "run-out"],
  "chain slack": [
    ...["chain slack", "slack", "chain sag", "chain free play", "chain play", "chain tension", "chain at", "chain is at", "chain now at"],
    ...["chain adjusted", "chain adjusted from", "adjusted the chain", "adjusted chain", "adjusted my chain", "chain tensioned", "tensioned the chain"],
    ...["chain sags", "chain sagging", "chain is sagging", "chain hangs", "chain hanging", "chain is hanging"],
  ],
  "chain length": ["chain length", "chain wear", "pitches", "links", "pins"],
  "chain elongation": ["elongation"],
  "belt deflection": ["belt deflection", "belt tension", "deflection", "belt slack", ...BELT_SET],
  "battery voltage": ["battery", "batteries", "batt", "bat", "battery voltage", "resting voltage", "at rest", "resting"],
  "charging voltage": [
    "charging",
    "charging voltage",
    "charge voltage",
    "charging system",
    "alternator",
    "stator output",
    "charges",
    "charges at",
    "charging at",
  ],
  "brake fluid level": [
    ...["brake fluid level", "brake fluid", "brake reservoir", "brake master cylinder", "fluid level", "fluid levels"],
    ...["front", "rear", "back"].flatMap((end) => [`${end} reservoir`, `${end} res`, `${end} master cylinder`, `${end} fluid`, `${end} fluid level`]),
  ],
  "brake fluid boiling point": [...BOILS, "boiling point of the brake fluid", "brake fluid tested to boil at"],
  "brake fluid water": ["brake fluid moisture"],
  "clutch fluid level": ["clutch fluid level", "clutch fluid", "clutch reservoir"],
  "oil level": ["oil level", "oil's", "oil lvl", "oil sight glass", "sight glass", "oil window", "dipstick", "oil"],
  "coolant level": ["coolant level", "coolant's", "coolant lvl", "coolant", "overflow tank", "expansion tank", "coolant reservoir", "coolant bottle"],
  "coolant strength": [
    "coolant strength",
    "antifreeze",
    "antifreeze strength",
    "frost protection",
    "freeze protection",
    "coolant protects",
    "coolant protects to",
    "coolant protected to",
    "protects to",
    "coolant good to",
    "coolant good down to",
    "coolant tested",
    "coolant tested to",
    "coolant tested good to",
    "coolant tests good to",
    "coolant checked",
    "coolant checked good to",
    "tested the coolant",
    "checked the coolant",
    "antifreeze good to",
    ...[
      "freeze point",
      "freezing point",
      "coolant freeze point",
      "coolant freezing point",
      "antifreeze freeze point",
      "coolant freezes at",
      "coolant frost point",
    ],
    "antifreeze tested good to",
  ],
  "antifreeze share": ["glycol"],
  "clutch free play": [
    "clutch free play",
    "clutch freeplay",
    "clutch play",
    "clutch lever play",
    "clutch lever free play",
    ...["freeplay clutch", "free play clutch", "clutch lever freeplay"],
    "clutch slack",
    ...["clutch cable free play", "clutch cable freeplay", "clutch cable play", "clutch cable slack"],
    ...CLUTCH_PLAY,
    "free play",
    "freeplay",
  ],
  "throttle free play": [
    "throttle free play",
    "throttle freeplay",
    "throttle play",
    "throttle slack",
    "throttle cable play",
    ...[
      "throttle grip free play",
      "throttle grip freeplay",
      "twistgrip free play",
      "twistgrip play",
      "twist grip free play",
      "twist grip play",
      "freeplay throttle",
    ],
    "free play throttle",
    ...["throttle cable free play", "throttle cable freeplay", "throttle grip play", "throttle cable slack"],
    ...THROTTLE_PLAY,
    "free play",
    "freeplay",
  ],
  "brake free play": [
    ...["brake", "brake pedal", "brake lever", "pedal", "brake rod", "brake cable", "drum brake"].flatMap((part) =>
      ["free play", "freeplay", "play"].map((play) => `${part} ${play}`),
    ),
    ...["free play at the brake pedal", "free play at the brake lever", "play at the brake pedal", "play at the brake lever", "free play", "freeplay"],
  ],
  "brake pedal height": ["brake pedal height", "pedal height", "brake pedal"],
  "static sag": ["static sag", "free sag", "bike sag", "unladen sag", "sag"],
  "rider sag": ["rider sag", "race sag", "laden sag", "sag with me on it", "sag with rider", "sag"],
  "valve clearance": ["valve clearance", "valve clearances", "valves", "valve", "clearance", "clearances", "valve gap", "valve gaps", "tappets", "lash"],
  compression: ["compression", "compression test", "comp test"],
  "plug gap": ["plug gap", "plug gaps", "spark plug gap", "sparkplug gap", "gaps", "gapped", "plugs gapped"],
  "points gap": [
    "points gap",
    "points gaps",
    "contact breaker gap",
    "contact breaker",
    "breaker gap",
    "points set to",
    "points set at",
    "points are at",
    "points at",
  ],
  fuel: ["fuel", "petrol", "filled up", "fill up", "fillup", "fuelled", "fueled", "refuelled", "refueled", "tanked", "gas", "filled"],
  "ambient temperature": [
    "ambient",
    "ambient temperature",
    "air temperature",
    "outside temperature",
    "garage temperature",
    "air temp",
    "outside",
    "in the garage",
    "in the shed",
    "in the workshop",
  ],
};
