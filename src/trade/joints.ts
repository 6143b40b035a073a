// What fasteners hold: the few joints for which a torque may be estimated, and the many for which it may not. Common practice throughout.

import type { Joints } from "../core/torque/joint.ts";

/**
 * `harmless`: nothing that keeps the rider on, the wheels straight or the oil in hangs on them. Anything that is not named here gets the maker's value or none.
 * `dangerous`: what holds the rider, the wheels and the brakes, and what people strip; only for saying why. Misspellings are those people make.
 * "Front" is no word that changes nothing: a mudguard before the front wheel can stop it. Left out on purpose: mirrors (they screw into a lever's clamp),
 * seats and grab rails (they hold people), workshop stands (someone reaches under the bike).
 */
export const JOINTS: Joints = {
  harmless: {
    "luggage racks": ["rack", "luggage rack", "luggage carrier", "carrier rack", "tail rack", "parcel rack"],
    "top box and pannier brackets": [
      ...["top box", "top case", "pannier", "pannier rack", "pannier frame", "saddlebag bracket", "side case", "side case rack", "luggage bracket"],
    ],
    "mudguards (not the front one)": ["mudguard", "mud guard", "fender", "splash guard"],
    "fairing and bodywork brackets": [
      ...["fairing", "front fairing", "fairing bracket", "bodywork", "body panel", "side panel", "belly pan", "tail fairing", "tail unit", "cowl", "cowling"],
    ],
    windscreens: ["windscreen", "wind screen", "windshield", "wind shield", "fly screen"],
    "number plates": [
      ...["number plate", "front number plate", "licence plate", "license plate", "plate holder", "plate bracket", "registration plate", "tail tidy"],
    ],
    "crash bars and engine guards": [
      ...[
        "crash bar",
        "front crash bar",
        "crash guard",
        "engine guard",
        "engine bar",
        "engine crash bar",
        "highway bar",
        "bash plate",
        "skid plate",
        "sump guard",
      ],
    ],
    "chain guards": ["chain guard", "chainguard"],
    "lamp and horn brackets": [
      ...["lamp bracket", "light bracket", "headlamp", "headlight", "head lamp", "head light", "fog lamp", "fog light", "spot lamp", "spotlight"],
      ...["tail lamp bracket", "tail light bracket", "brake light bracket", "brake lamp bracket", "indicator bracket", "turn signal bracket", "horn"],
    ],
    "tool trays": ["tool tray", "tool box", "tool roll holder"],
    workbenches: ["workbench", "work bench", "bench", "bench vice", "shelf"],
  },
  dangerous: {
    "front mudguards, which stop the wheel when they come off": {
      words: ["front mudguard", "front mud guard", "front fender", "front splash guard", "fender brace"],
      within: [],
    },
    "brakes and brake discs": {
      words: [
        ...["break", "disc", "disk", "rotor", "banjo", "banjo bolt", "master cylinder", "pad pin", "abs", "abs ring", "drum", "bleed nipple", "bleed screw"],
        ...["torque arm", "torque rod", "torque link", "torque stay", "reaction arm", "reaction rod", "reaction link", "anchor arm"],
      ],
      within: ["brake", "caliper", "calliper", "calipper", "callipper", "discbolt", "diskbolt", "reactionarm", "torquearm"],
    },
    "axles and wheels": {
      words: ["rim", "hub", "spoke", "valve stem", "wheel bearing"],
      within: ["axle", "axel", "spindle", "spindel", "wheel", "wheal"],
    },
    "steering and fork": {
      words: [
        ...[
          "head nut",
          "head bearing",
          "steering head",
          "stem",
          "stem nut",
          "yoke",
          "top yoke",
          "triple",
          "top bridge",
          "top clamp",
          "bottom bridge",
          "damper",
        ],
        ...["crown nut", "stanchion"],
      ],
      within: ["steering", "stearing", "headstock", "tripleclamp", "tripletree", "fork"],
    },
    "clamps and pinch bolts": { words: ["clamp", "clamp bolt", "pinch", "pinch bolt"], within: ["pinchbolt"] },
    "handlebars and controls": {
      words: [
        ...[
          "bar",
          "bar end",
          "bar clamp",
          "handle bar",
          "clip on",
          "clip ons",
          "clipon",
          "riser",
          "perch",
          "clutch perch",
          "clutch lever",
          "lever",
          "pedal",
          "grip",
        ],
        ...["gear lever", "gear pedal", "shift lever", "shifter", "gear shift lever", "twist grip", "switch gear", "master clamp"],
      ],
      within: ["handlebar", "handelbar", "throttle", "throtle"],
    },
    mirrors: { words: ["mirror", "mirror stem", "mirror clamp"], within: ["mirror"] },
    "seats and grab rails": {
      words: ["seat", "pillion seat", "saddle", "grab rail", "grab handle", "grab bar", "backrest", "back rest", "sissy bar"],
      within: ["grabrail"],
    },
    "sprockets and final drive": {
      words: [
        ...[
          "drive nut",
          "chain",
          "chain adjuster",
          "pulley",
          "belt pulley",
          "belt",
          "final drive",
          "shaft drive",
          "drive shaft",
          "cush drive",
          "bevel",
          "bevel drive",
        ],
        ...["prop shaft", "cardan", "drive flange"],
      ],
      within: ["sprocket", "sproket", "driveshaft"],
    },
    "footrests and stands": {
      words: [
        ...["foot rest", "foot peg", "peg", "pillion peg", "rear set", "foot board", "floor board", "heel plate"],
        ...["stand", "side stand", "kick stand", "centre stand", "center stand", "main stand", "prop stand", "paddock stand", "workshop stand", "stand pivot"],
      ],
      within: ["footrest", "footpeg", "rearset", "floorboard", "footboard", "sidestand", "kickstand", "centrestand", "centerstand"],
    },
    "suspension and pivots": {
      words: ["shock", "linkage", "dog bone", "swing arm", "trailing arm", "control arm", "strut", "spring", "preload", "pivot", "pivot bolt", "mono shock"],
      within: ["suspension", "suspention", "swingarm", "monoshock", "shockabsorber", "pivotbolt"],
    },
    "frame and engine mounts": {
      words: [
        ...["sub frame", "engine mount", "engine mounting", "engine bolt", "engine hanger", "engine bracket", "engine plate", "motor mount", "motor mounting"],
        ...["side car", "downtube", "cradle"],
      ],
      within: ["frame", "sidecar", "enginemount", "motormount"],
    },
    "towing and lifting points": { words: ["tow bar", "tow hook", "tow hitch", "tie down", "lifting eye", "hoist"], within: ["towbar"] },
    "plugs of any kind": { words: ["plug"], within: [] },
    "spark plugs": { words: ["spark", "spark plug"], within: ["sparkplug"] },
    "drain plugs and covers, which people strip": {
      words: [
        ...["drain", "drain plug", "drain bolt", "sump", "sump plug", "sump bolt", "filler", "filler plug", "level plug", "oil pan", "oil filter cover"],
        ...["dipstick", "cover", "cover screw", "case", "casing", "rocker cover", "valve cover", "cam cover", "rocker box", "clutch cover"],
      ],
      within: ["drainplug", "drainbolt", "sumpplug", "oilpan", "crankcase", "clutchcover"],
    },
    "the oil and cooling system": {
      words: ["oil", "oil filter", "oil line", "oil cooler", "oil pump", "water pump", "coolant", "radiator", "hose"],
      within: ["thermostat"],
    },
    "exhausts, whose studs shear and strip": {
      words: ["header", "header nut", "down pipe", "tail pipe", "manifold", "collector", "end can", "exhaust clamp", "exhaust stud", "exhaust flange"],
      within: ["exhaust", "exaust", "silencer", "muffler", "downpipe"],
    },
    "the engine, clutch and gearbox": {
      words: [
        ...["engine", "motor", "head", "head bolt", "cylinder", "cylinder head", "barrel", "con rod", "big end", "cam", "cam cap", "cam sprocket", "cam chain"],
        ...["clutch", "clutch nut", "clutch disc", "rotor nut", "alternator", "stator", "crank", "rocker arm", "valve", "gear", "piston"],
        ...["primary", "primary drive", "starter", "timing"],
      ],
      within: ["camshaft", "conrod", "crankshaft", "flywheel", "gearbox", "rockerarm", "cylinderhead", "clutchnut"],
    },
    "the fuel tank and fuel system": {
      words: ["fuel", "petrol", "tank", "fuel tank", "petrol tank", "fuel tap", "petrol tap", "carb", "injector"],
      within: ["carburet", "fueltank"],
    },
  },
  beside: [
    ...["bolt", "screw", "nut", "washer", "fastener", "stud", "bracket", "mount", "mounting", "stay", "support", "holder", "fixing", "tab", "plate"],
    ...["a", "an", "the", "my", "its", "of", "for", "on", "to", "at", "in", "and", "both", "all", "two", "three", "four", "six", "small", "big", "new"],
    ...["rear", "back", "left", "right", "top", "bottom", "upper", "lower", "side", "inner", "outer", "middle", "hex", "steel"],
  ],
};
