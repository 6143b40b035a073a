// What people type when something is wrong with the electrics, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { ended, has } from "./things.ts";

const OUT = [
  ...ended("kaputt", "defekt", "ausgefallen", "durchgebrannt", "tot"),
  ...["ist durch", "sind durch"],
  ...["geht nicht", "gehen nicht", "geht nicht mehr", "gehen nicht mehr", "geht nimmer", "funktioniert nicht", "funktioniert nicht mehr"],
  ...["funktionieren nicht", "leuchtet nicht", "leuchtet nicht mehr", "brennt nicht", "brennt nicht mehr", "aus", "flackert", "flackern", "ohne funktion"],
  ...["hinüber", "spinnt", "hat einen wackelkontakt", "wackelkontakt", "blinkt nicht", "blinken nicht", "geht manchmal nicht", "tut nicht", "tut nicht mehr"],
  ...["streikt"],
];
const BATTERY = ["batterie", "akku", "starterbatterie"];

export const GERMAN_ELECTRICS_WRONG = {
  "brake light": [{ things: ["bremslicht", "bremsleuchte", "bremslichtschalter"], signs: [...OUT, "leuchtet dauernd", "brennt dauernd", "leuchtet ständig"] }],
  headlight: [{ things: ["scheinwerfer", "abblendlicht", "fernlicht", "frontlicht", "frontscheinwerfer", "hauptscheinwerfer", "fahrlicht"], signs: OUT }],
  light: [
    {
      things: [
        ...["rücklicht", "schlusslicht", "blinker", "blinker links", "blinker rechts", "kennzeichenbeleuchtung", "kennzeichenleuchte", "standlicht"],
        ...["tagfahrlicht", "nummernschildbeleuchtung", "blinkrelais", "rücklichtbirne", "blinkerbirne", "birne vom rücklicht", "birne vom blinker"],
        ...["warnblinker"],
      ],
      signs: OUT,
    },
    {
      things: ["birne", "glühbirne", "rücklichtbirne", "blinkerbirne", "birne vom rücklicht", "birne vom blinker", "birne vom bremslicht"],
      signs: ["durch", "kaputt", "defekt"],
    },
  ],
  horn: [{ things: ["hupe"], signs: [...OUT, "stumm", "leise", "krächzt", "hupt nicht"] }],
  "flat battery": [
    {
      things: BATTERY,
      signs: [
        ...ended("leer", "tot", "tiefentladen", "schwach", "platt"),
        ...["hält keine ladung", "hält die ladung nicht", "hält nicht", "nimmt keine ladung an", "entlädt sich", "hinüber", "am ende", "im eimer", "kaputt"],
        ...["defekt", "ist fertig", "ist wohl fertig", "ist völlig fertig", "ist komplett fertig", "leere", "macht schlapp", "pfeift aus dem letzten loch"],
      ],
    },
  ],
  "damaged battery": [
    {
      things: [...BATTERY, "batteriegehäuse"],
      signs: [
        ...ended("eingefroren", "gefroren", "aufgebläht", "geplatzt", "gerissen", "undicht", "aufgequollen"),
        ...["ausgelaufen", "läuft aus", "leckt", "gast", "heiß", "durchgefroren", ...has("riss", "risse", "beule")],
      ],
    },
    { things: ["batteriesäure", "säure"], signs: ["läuft aus", "tropft", "ausgelaufen", "tritt aus"] },
  ],
  "not charging": [
    {
      things: ["lichtmaschine", "lima", "regler", "laderegler", "gleichrichter", "stator", ...BATTERY],
      signs: ["lädt nicht", "lädt nicht mehr", "wird nicht geladen", "wird nicht mehr geladen", ...ended("durchgebrannt", "verschmort"), "lädt kaum"],
    },
    { things: ["lichtmaschine", "lima", "regler", "laderegler", "gleichrichter", "stator"], signs: [...ended("defekt", "kaputt"), "hinüber", "tot"] },
  ],
  overcharging: [
    {
      things: ["lichtmaschine", "lima", "regler", "laderegler", "gleichrichter", ...BATTERY],
      signs: ["überlädt", "überladen", "wird überladen", "lädt zu hoch", "lädt zu viel", "kocht", "gekocht", "kocht über"],
    },
  ],
  "warning light": [
    {
      things: [
        ...["abs-leuchte", "abs leuchte", "abs-lampe", "abs lampe", "abs", "öldruckleuchte", "öldrucklampe", "öllampe", "ölkontrollleuchte"],
        ...["ölwarnleuchte", "motorkontrollleuchte", "mkl", "warnleuchte", "warnlampe", "kontrollleuchte", "temperaturleuchte", "temperaturwarnleuchte"],
      ],
      signs: ["an", "leuchtet", "leuchtet auf", "brennt", "blinkt", "geht nicht aus", "bleibt an", "geht an", "flackert"],
    },
  ],
  // By what the bike is fitted with.
  "damaged lithium battery": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
