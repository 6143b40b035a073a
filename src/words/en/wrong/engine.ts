// What people type when something is wrong with the engine, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { CRACK_IN, HOSE, LEAK, LOOSE, WORN_BELT } from "./things.ts";

const FUEL_HOSE = ["fuel hose", "fuel hoses", "fuel line", "fuel lines", "petrol hose", "petrol pipe", "fuel pipe"];

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
  "low engine oil": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
