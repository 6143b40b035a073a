// How riders tell of a part that came off and went on again, in German.

import type { RefitWords } from "../../core/reading/vocabulary.ts";

export const GERMAN_REFIT: RefitWords = {
  refit: [],
  put: ["eingebaut", "montiert", "drin", "drauf", "verbaut", "rein"],
  back: ["wieder", "zurück"],
  taken: ["ausgebaut", "abgebaut", "demontiert"],
  off: ["ausgebaut", "abgebaut", "demontiert"],
  on: [],
  one: ["neue", "neuer", "neues", "alte", "alter", "altes"],
  old: ["alte", "alten", "alter", "altes", "vorige", "vorigen", "vorherige", "vorherigen"],
  original: ["originale", "originalen", "erste", "ersten"],
  some: ["ritzel", "kettenrad", "kettenblatt"],
  kit: {
    item: "chain.replace",
    pieces: { chain: ["kette"], "front sprocket": ["ritzel"], "rear sprocket": ["kettenrad", "kettenblatt", "ritzel hinten"] },
    stayed: ["blieb", "blieben", "geblieben", "gelassen", "bleibt", "bleiben"],
  },
  parts: {
    battery: ["batterie"],
    "chain and sprockets": ["kette", "kettensatz", "kettenkit", "ritzel", "kettenrad", "kettenblatt"],
    "drive belt": ["riemen", "antriebsriemen"],
    "front tyre": ["reifen", "vorderreifen", "reifen vorne", "vordere reifen", "vorderen reifen"],
    "rear tyre": ["reifen", "hinterreifen", "reifen hinten", "hintere reifen", "hinteren reifen"],
    "front brake pads": ["vordere bremsbeläge", "vorderen bremsbeläge", "bremsbeläge vorne", "beläge vorne"],
    "rear brake pads": ["hintere bremsbeläge", "hinteren bremsbeläge", "bremsbeläge hinten", "beläge hinten"],
    "spark plugs": ["zündkerzen", "kerzen"],
    "air filter": ["luftfilter"],
  },
};
