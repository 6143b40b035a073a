// What each spec is called, and what people type for it. Where several share a phrase ("oil"), each has it, and all of them answer.

import type { SpecWords } from "../../core/spec/find.ts";
import type { SpecKey } from "../../trade/spec-keys.ts";
import type { TreadLawPlace } from "../../trade/tread-law.ts";

type Row = { readonly name: string; readonly synonyms: readonly string[] };
const PRESSURE = ["tyre pressure", "tyre pressures", "pressure", "pressures", "tyres"];
const AXLES = ["axle", "axles", "axle torque", "axle nut", "axle nuts", "wheel nut", "wheel nuts", "wheel axle", "wheel axles"];
const RUNOUT_LIMIT = ["disc runout", "disc runout limit", "rotor runout", "runout", "runout limit", "maximum runout"];
const DISC_LIMIT = [
  ...["disc limit", "discs", "disc", "rotor", "disc thickness", "disc minimum thickness", "minimum disc thickness", "disc minimum", "minimum disc"],
  ...["rotor thickness", "rotor limit"],
];
const DRUM_LIMIT = ["drum limit", "drum", "brake drum", "drum diameter", "drum maximum", "maximum drum diameter"];
const OIL = ["oil", "engine oil", "oil change"];
const AMOUNT = ["oil amount", "oil capacity", "how much oil", "oil fill"];

export const ENGLISH_SPECS = {
  "front tyre pressure": { name: "Front tyre pressure", synonyms: [...PRESSURE, "front pressure", "front tyre", "front psi", "front bar"] },
  "rear tyre pressure": {
    name: "Rear tyre pressure",
    synonyms: [...PRESSURE, "rear pressure", "rear tyre", "back tyre", "back tyre pressure", "rear psi", "rear bar"],
  },
  "sidecar tyre pressure": { name: "Sidecar tyre pressure", synonyms: [...PRESSURE, "sidecar pressure", "sidecar tyre"] },
  "front tyre size": { name: "Front tyre size", synonyms: ["tyre size", "tyre sizes", "front tyre"] },
  "rear tyre size": { name: "Rear tyre size", synonyms: ["tyre size", "tyre sizes", "rear tyre", "back tyre"] },
  "sidecar tyre size": { name: "Sidecar tyre size", synonyms: ["tyre size", "tyre sizes", "sidecar tyre", "sidecar size"] },
  "front tread limit": { name: "Front tread limit", synonyms: ["tread limit", "tread", "front tread", "least tread", "tread depth"] },
  "rear tread limit": { name: "Rear tread limit", synonyms: ["tread limit", "tread", "rear tread", "least tread", "tread depth"] },
  "sidecar tread limit": { name: "Sidecar tread limit", synonyms: ["tread limit", "sidecar tread", "least tread"] },
  "axle sockets": { name: "Axle sockets", synonyms: ["axle socket", "axle spanner", "axle wrench size", "wheel sockets", "wheel nut size", "axle nut size"] },
  "front axle torque": { name: "Front axle", synonyms: [...AXLES, "front axle nut", "front wheel nut", "front wheel axle", "front wheel"] },
  "front axle pinch bolt torque": { name: "Front axle pinch bolts", synonyms: ["front axle", "pinch bolts", "axle pinch bolts", "front pinch bolts"] },
  "rear axle torque": {
    name: "Rear axle",
    synonyms: [...AXLES, "rear axle nut", "rear wheel nut", "rear wheel axle", "rear wheel"],
  },
  "rear axle pinch bolt torque": { name: "Rear axle pinch bolts", synonyms: ["rear pinch bolts", "axle pinch bolts", "pinch bolts"] },
  "engine oil with filter": { name: "Engine oil with filter", synonyms: [...OIL, ...AMOUNT, "oil with filter", "oil and filter"] },
  "engine oil without filter": { name: "Engine oil without filter", synonyms: [...OIL, ...AMOUNT, "oil without filter", "oil only"] },
  "engine oil dry": { name: "Engine oil, dry engine", synonyms: [...OIL, ...AMOUNT, "oil dry", "dry engine", "dry fill", "after overhaul"] },
  "engine oil grade": { name: "Engine oil grade", synonyms: [...OIL, "oil grade", "which oil", "oil viscosity", "oil type", "what oil"] },
  "oil filter": { name: "Oil filter", synonyms: ["filter", "oil filter part number", "oil filter number"] },
  "oil drain plug torque": { name: "Oil drain plug", synonyms: ["drain plug", "sump plug", "drain bolt", "oil plug"] },
  "oil filter torque": { name: "Oil filter tightening", synonyms: ["oil filter", "filter torque", "oil filter cover"] },
  "intake valve clearance": {
    name: "Intake valve clearance",
    synonyms: ["valves", "valve", "valve clearance", "valve clearances", "intake valves", "inlet valves", "inlet", "intake", "tappets"],
  },
  "exhaust valve clearance": {
    name: "Exhaust valve clearance",
    synonyms: ["valves", "valve", "valve clearance", "valve clearances", "exhaust valves", "tappets"],
  },
  compression: { name: "Compression", synonyms: ["compression pressure", "cylinder compression"] },
  "exhaust nut torque": { name: "Exhaust nuts", synonyms: ["exhaust bolts", "header nuts", "exhaust"] },
  "valve cover bolt torque": { name: "Valve cover bolts", synonyms: ["rocker cover bolts", "cam cover bolts", "valve cover"] },
  "idle speed": { name: "Idle speed", synonyms: ["idle", "tickover", "idle rpm"] },
  "throttle free play": { name: "Throttle free play", synonyms: ["throttle", "throttle cable", "throttle play"] },
  "fuel grade": { name: "Fuel grade", synonyms: ["fuel", "petrol", "gas", "octane", "which fuel"] },
  "fuel tank": { name: "Fuel tank", synonyms: ["fuel", "tank", "tank size", "fuel capacity", "tank capacity"] },
  "fuel reserve": { name: "Fuel reserve", synonyms: ["fuel", "reserve"] },
  "air filter": { name: "Air filter", synonyms: ["filter", "air cleaner", "air filter number"] },
  "spark plug": { name: "Spark plug", synonyms: ["plug", "plugs", "spark plugs", "which plug"] },
  "spark plug gap": { name: "Spark plug gap", synonyms: ["plug", "plugs", "spark plugs", "plug gap", "gap"] },
  "spark plug torque": { name: "Spark plug tightening", synonyms: ["plug", "plugs", "spark plugs", "plug torque"] },
  "points gap": { name: "Points gap", synonyms: ["points", "contact breaker", "contact breaker gap", "gap"] },
  "ignition timing": { name: "Ignition timing", synonyms: ["timing"] },
  battery: { name: "Battery", synonyms: ["battery type", "battery size", "which battery"] },
  "battery charging voltage": { name: "Charging voltage", synonyms: ["charging", "charge voltage", "alternator voltage", "battery"] },
  fuses: { name: "Fuses", synonyms: ["fuse", "main fuse", "fuse size", "fuse sizes"] },
  "headlamp bulb": { name: "Headlamp bulb", synonyms: ["bulb", "bulbs", "headlight", "headlight bulb", "headlamp"] },
  "tail and brake bulb": { name: "Tail and brake bulb", synonyms: ["bulb", "bulbs", "tail light", "brake light", "rear light", "tail bulb", "stop lamp"] },
  "indicator bulb": { name: "Indicator bulb", synonyms: ["bulb", "bulbs", "indicator", "turn signal", "turn signal bulb", "indicators"] },
  "coolant amount": { name: "Coolant amount", synonyms: ["coolant", "antifreeze", "coolant capacity", "how much coolant"] },
  "coolant strength": { name: "Coolant strength", synonyms: ["coolant", "antifreeze", "frost protection", "coolant frost protection", "antifreeze strength"] },
  "coolant kind": { name: "Coolant kind", synonyms: ["coolant", "antifreeze", "coolant type", "which coolant"] },
  "clutch free play": { name: "Clutch free play", synonyms: ["clutch", "clutch lever", "clutch play", "clutch cable"] },
  "clutch fluid": { name: "Clutch fluid", synonyms: ["clutch", "clutch fluid type"] },
  "gearbox oil": { name: "Gearbox oil", synonyms: ["gearbox", "gear oil", "transmission oil"] },
  "gearbox oil grade": { name: "Gearbox oil grade", synonyms: ["gearbox", "gearbox oil", "gear oil", "gear oil grade", "transmission oil"] },
  "chain slack": { name: "Chain slack", synonyms: ["chain", "slack", "chain tension", "chain play", "chain adjustment"] },
  "chain size": { name: "Chain size", synonyms: ["chain", "chain pitch", "chain links", "which chain"] },
  "chain length limit": { name: "Chain length limit", synonyms: ["chain wear", "chain wear limit", "chain stretch", "chain"] },
  sprockets: { name: "Sprockets", synonyms: ["sprocket", "teeth", "gearing", "sprocket sizes"] },
  "front sprocket torque": { name: "Front sprocket", synonyms: ["sprocket torque", "front sprocket nut", "gearbox sprocket"] },
  "rear sprocket torque": { name: "Rear sprocket nuts", synonyms: ["sprocket torque", "rear sprocket", "sprocket nuts"] },
  "belt deflection": { name: "Belt deflection", synonyms: ["belt", "belt tension", "drive belt"] },
  "shaft drive oil": { name: "Shaft drive oil", synonyms: ["shaft oil", "final drive oil", "final drive", "bevel drive oil"] },
  "shaft drive oil grade": { name: "Shaft drive oil grade", synonyms: ["shaft oil", "final drive oil", "final drive", "shaft oil grade"] },
  "shaft drain plug torque": { name: "Shaft drive drain plug", synonyms: ["final drive plug", "shaft plug", "final drive"] },
  "brake fluid": { name: "Brake fluid", synonyms: ["brake fluid type", "dot", "which brake fluid"] },
  "front pad limit": { name: "Front pad limit", synonyms: ["pads", "pad limit", "front pads", "brake pads", "pad thickness", "front brake"] },
  "rear pad limit": { name: "Rear pad limit", synonyms: ["pads", "pad limit", "rear pads", "brake pads", "pad thickness", "rear brake"] },
  "front disc limit": {
    name: "Front disc limit",
    synonyms: [...DISC_LIMIT, ...DISC_LIMIT.map((name) => `front ${name}`), "front brake"],
  },
  "rear disc limit": { name: "Rear disc limit", synonyms: [...DISC_LIMIT, ...DISC_LIMIT.map((name) => `rear ${name}`), "rear brake"] },
  "front disc runout limit": { name: "Front disc runout limit", synonyms: [...RUNOUT_LIMIT, ...RUNOUT_LIMIT.map((name) => `front ${name}`)] },
  "rear disc runout limit": { name: "Rear disc runout limit", synonyms: [...RUNOUT_LIMIT, ...RUNOUT_LIMIT.map((name) => `rear ${name}`)] },
  "front shoe limit": { name: "Front shoe limit", synonyms: ["shoes", "brake shoes", "front shoes", "front brake"] },
  "rear shoe limit": { name: "Rear shoe limit", synonyms: ["shoes", "brake shoes", "rear shoes", "rear brake"] },
  "front drum limit": { name: "Front drum limit", synonyms: [...DRUM_LIMIT, ...DRUM_LIMIT.map((name) => `front ${name}`)] },
  "rear drum limit": { name: "Rear drum limit", synonyms: [...DRUM_LIMIT, ...DRUM_LIMIT.map((name) => `rear ${name}`)] },
  "front brake free play": { name: "Front brake free play", synonyms: ["brake lever", "brake free play", "front brake lever", "front brake"] },
  "rear brake free play": { name: "Rear brake free play", synonyms: ["brake pedal", "brake free play", "rear brake"] },
  "brake pedal height": { name: "Brake pedal height", synonyms: ["brake pedal", "pedal height"] },
  "front caliper bolt torque": { name: "Front caliper bolts", synonyms: ["caliper", "calipers", "caliper bolts", "front caliper"] },
  "rear caliper bolt torque": { name: "Rear caliper bolts", synonyms: ["caliper", "calipers", "caliper bolts", "rear caliper"] },
  "brake pad pin torque": { name: "Brake pad pins", synonyms: ["pad pin", "pad pins", "caliper pin"] },
  "brake disc bolt torque": { name: "Brake disc bolts", synonyms: ["disc bolts", "rotor bolts"] },
  "brake hose bolt torque": { name: "Brake hose bolts", synonyms: ["banjo bolt", "banjo bolts", "brake hose", "brake line bolts"] },
  "bleed screw torque": { name: "Bleed screws", synonyms: ["bleed nipple", "bleed nipples", "bleeder"] },
  "steering stem torque": { name: "Steering stem nut", synonyms: ["steering head", "head bearing", "steering nut", "stem nut"] },
  "triple clamp pinch bolt torque": { name: "Fork clamp bolts", synonyms: ["triple clamp", "yoke bolts", "fork clamps", "triple clamp bolts"] },
  "handlebar clamp torque": { name: "Handlebar clamps", synonyms: ["handlebar", "handlebars", "bar clamps", "risers"] },
  "fork oil": { name: "Fork oil per leg", synonyms: ["fork", "forks", "fork oil amount"] },
  "fork oil grade": { name: "Fork oil grade", synonyms: ["fork", "forks", "fork oil", "fork oil weight"] },
  "fork oil height": { name: "Fork oil height", synonyms: ["fork", "forks", "fork oil", "fork oil level", "air gap"] },
  "front static sag": { name: "Front static sag", synonyms: ["sag", "front sag", "static sag"] },
  "rear static sag": { name: "Rear static sag", synonyms: ["sag", "rear sag", "static sag"] },
  "front rider sag": { name: "Front rider sag", synonyms: ["sag", "front sag", "rider sag"] },
  "rear rider sag": { name: "Rear rider sag", synonyms: ["sag", "rear sag", "rider sag"] },
  "rear spring preload": { name: "Rear spring preload", synonyms: ["preload", "shock preload", "spring preload"] },
  "swingarm pivot torque": { name: "Swingarm pivot", synonyms: ["swingarm", "swing arm", "pivot bolt"] },
  "shock bolt torque": { name: "Shock bolts", synonyms: ["shock", "shock absorber"] },
  "linkage bolt torque": { name: "Linkage bolts", synonyms: ["linkage", "suspension linkage"] },
  "most load": { name: "Most load", synonyms: ["load", "payload", "max load", "carrying capacity"] },
} as const satisfies Record<SpecKey, Row>;

/** What people type for a place of the tread-law table, in lower case without full stops. */
export const TREAD_PLACE_NAMES = {
  "United Kingdom": [
    ...["united kingdom", "the united kingdom", "uk", "the uk", "u k", "gb", "great britain", "britain", "england", "scotland", "wales"],
    ...["northern ireland", "vereinigtes königreich", "großbritannien"],
  ],
  Germany: ["germany", "de", "deutschland", "brd"],
  Austria: ["austria", "at", "österreich", "oesterreich"],
  "United States": [
    ...["united states", "the united states", "us", "the us", "u s", "usa", "the usa", "u s a", "united states of america", "america", "the states", "states"],
  ],
} as const satisfies Record<TreadLawPlace, readonly string[]>;

/** What people type for a spec, by which load, and what may stand around it. */
export const ENGLISH_SPEC_WORDS: SpecWords = {
  names: Object.fromEntries(Object.entries(ENGLISH_SPECS).map(([key, { name, synonyms }]) => [key, [name, ...synonyms]])),
  uses: {
    solo: ["solo", "alone", "one up", "rider only"],
    "two-up": [
      ...["two up", "2 up", "with passenger", "with a passenger", "passenger", "pillion", "with pillion", "with a pillion", "both of us"],
      ...["wife", "husband", "girlfriend", "boyfriend", "someone", "somebody"].flatMap((who) =>
        ["with", "with my", "with the"].flatMap((how) => [`${how} ${who} on the back`, `${how} ${who} on the pillion`]),
      ),
    ],
    loaded: [
      ...["loaded", "loaded up", "fully loaded", "full load", "with a full load", "fully laden"],
      ...["luggage", "panniers", "full panniers", "bags", "camping gear"].flatMap((what) => [
        `with ${what}`,
        `and ${what}`,
        `plus ${what}`,
        `with the ${what}`,
      ]),
      ...["luggage", "with full luggage", "panniers full", "panniers on"],
    ],
  },
  tables: {
    loads: ["load index", "load"],
    speeds: ["speed symbol", "speed rating", "speed index"],
    before: [
      ...["what is the", "what is a", "what is an", "what is", "what's the", "what's a", "what's", "whats", "what does", "what are the", "what are", "what"],
      ...["what size spanner for", "which spanner for", "what spanner for", "spanner for", "spanner size for", "hex for", "hex size for", "hex of", "thread"],
      ...["tyre mark", "tire mark", "marking", "a", "an", "the"],
    ],
    behind: ["mean", "means", "stand for", "please", "on a tyre", "on a tire", "on the tyre", "on the tire", "thread pitch"],
    tread: [
      ...["tread law", "legal tread", "legal tread depth", "legal tread limit", "tread limits", "minimum tread", "minimum tread depth"],
      ...["min tread", "min tread depth", "least tread", "legal limit tread", "tread depth legal", "legal minimum tread", "legal minimum tread depth"],
    ],
    treadOf: ["tread depth", "tread limit", "tread"],
    battery: ["battery", "batteries", "volts", "voltage", "voltages", "resting volts", "resting voltage", "rested", "at rest", "charge"],
    batteries: {
      flooded: ["flooded", "wet", "lead acid", "lead", "wet cell"],
      AGM: ["agm", "glass mat", "absorbed glass mat"],
      gel: ["gel"],
      lithium: ["lithium", "lithium iron", "lithium ion", "lithium iron phosphate", "lifepo4", "lfp", "li ion"],
    },
    volts: [
      ...[
        "battery voltages",
        "battery voltage",
        "battery volts",
        "resting volts",
        "resting voltage",
        "rest voltage",
        "state of charge",
        "battery rested",
        "rested battery",
        "battery at rest",
      ],
      ...["battery state of charge", "battery charge"],
    ],
    fluids: ["brake fluids", "brake fluid classes", "brake fluid class", "brake fluid types", "dot classes", "dot ratings", "dot"],
    oils: ["oil grades", "oil viscosities", "oil viscosity", "viscosity", "viscosity grades", "sae j300", "j300", "sae"],
    threads: ["thread", "threads", "bolt", "bolts", "screw", "nut", "pitch"],
    spanners: ["spanner", "wrench", "socket", "hex head", "hex", "hexagon", "across flats", "af"],
    threadSizes: [
      ...["thread sizes", "threads", "thread size", "metric threads", "thread pitches", "thread pitch", "hex sizes", "hex size", "hex heads", "hex"],
      ...["spanner sizes", "spanner size", "thread and hex sizes", "bolt sizes", "bolt size"],
    ],
    places: TREAD_PLACE_NAMES,
  },
  idle: ["what", "whats", "what's", "s", "is", "are", "the", "my", "for", "of", "a", "spec", "value", "please", "how", "many", "which", "on", "to"],
  asking: {
    does: ["does", "do", "should"],
    beside: ["it", "i", "take", "takes", "need", "needs", "hold", "holds", "go", "goes", "put", "use", "have", "has", "in", "into"],
  },
};

/** The name of a spec on screen. */
export const englishSpecName = (key: string): string => (ENGLISH_SPECS as Readonly<Record<string, Row>>)[key]?.name ?? key;
