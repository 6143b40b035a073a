// What people type when something is wrong with the engine, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { CRACK_IN, HOSE, LEAK, LOOSE, WORN_BELT } from "./things.ts";

const FUEL_HOSE = ["fuel hose", "fuel hoses", "fuel line", "fuel lines", "petrol hose", "petrol pipe", "fuel pipe"];

/** Said of what is where it must not be: "oil floating in the coolant". */
const into = (what: readonly string[]): readonly string[] =>
  what.flatMap((each) =>
    ["in the", "in", "in my", "floating in the", "floating on the", "on the", "got in the", "got into the", "getting into the"].map(
      (there) => `${each} ${there}`,
    ),
  );
const OIL_IN = [...into(["oil", "engine oil"]), "oil film on the", "oil film in the", "oil slick in the", "oily film in the", "oily film on the"];
const WATER_IN = into(["water", "coolant", "antifreeze", "radiator water"]);
const OILY = [
  "oily",
  "milky",
  "creamy",
  "looks oily",
  "looks milky",
  "looks like chocolate milk",
  "full of oil",
  "has oil in it",
  "has oil on top",
  "oil in it",
];
const MILKY = ["milky", "creamy", "milky white", "gone milky", "like mayonnaise", "like mayo", "like milk coffee", "emulsified", "has water in it"];
const MAYONNAISE = [
  ...["mayonnaise", "mayo", "white sludge", "milky sludge", "creamy sludge", "white foam", "milky foam", "foam", "white goo", "creamy goo", "white gunk"],
  ...["emulsion", "creamy gunk", "creamy stuff", "milky stuff", "white stuff"],
];
const UNDER = ["under the", "under", "on the", "on", "in the", "in", "inside the", "round the", "around the"];
const OIL_CAP = ["oil cap", "oil filler cap", "filler cap", "oil filler", "filler plug", "oil filler plug", "oil filler neck", "oil plug", "sight glass"];

export const ENGLISH_ENGINE_WRONG = {
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
  "oil and coolant mixed": [
    { things: ["coolant", "radiator", "expansion tank", "header tank", "coolant tank", "coolant bottle"], signs: OILY, signLast: true },
    { things: OIL_IN, signs: ["coolant", "radiator", "expansion tank", "header tank", "coolant tank", "coolant bottle", "antifreeze"] },
    { things: ["oil", "engine oil", "oil level glass", "oil window"], signs: MILKY, signLast: true },
    { things: ["milky", "creamy"], signs: ["oil", "engine oil"] },
    { things: WATER_IN, signs: ["oil", "engine oil", "sump", "crankcase"] },
  ],
  "foam under the oil cap": [
    { things: MAYONNAISE.flatMap((foam) => UNDER.map((under) => `${foam} ${under}`)), signs: OIL_CAP },
    { things: OIL_CAP, signs: [...MAYONNAISE, "milky", "creamy"].flatMap((foam) => [foam, `full of ${foam}`, `covered in ${foam}`, `has ${foam}`]) },
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
  "dirty coolant": [
    {
      things: ["coolant", "antifreeze", "radiator", "expansion tank"],
      signs: ["rusty", "brown", "rust coloured", "rust colored", "dirty", "murky", "sludgy", "full of sludge", "dark", "has rust in it"],
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
  "low engine oil": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
