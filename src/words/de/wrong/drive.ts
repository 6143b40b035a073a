// What people type when something is wrong with the drive, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { DONE_FOR, ended, has } from "./things.ts";

/** Of these "fertig" alone may say that the work on them is done. */
const IS_DONE_FOR = [
  ...DONE_FOR.filter((sign) => sign !== "fertig" && sign !== "runter" && sign !== "durch"),
  ...["ist", "sind"].flatMap((verb) =>
    ["", "jetzt ", "wohl ", "leider ", "langsam ", "total ", "komplett ", "völlig ", "echt "].map((much) => `${verb} ${much}fertig`),
  ),
  ...["ist durch", "sind durch", "ist runter", "sind runter"],
];
const CHAIN = ["kette", "antriebskette"];

export const GERMAN_DRIVE_WRONG = {
  "slipping clutch": [
    {
      things: ["kupplung"],
      signs: [
        ...["rutscht", "rutscht durch", "schleift durch", "greift nicht", "packt nicht", "kommt spät", "kommt ganz spät", "kommt sehr spät"],
        ...["kommt erst spät", "verbrannt", "verraucht"],
        ...IS_DONE_FOR,
      ],
    },
    { things: ["kupplungsscheiben", "kupplungslamellen", "lamellen"], signs: [...IS_DONE_FOR, "verbrannt"] },
  ],
  "soft clutch": [
    {
      things: ["kupplung", "kupplungshebel"],
      signs: [...ended("weich", "schwammig", "teigig"), "kein druck", "keinen druck", "hat keinen druck", "bis zum griff", "bis zum lenker", "fällt durch"],
    },
  ],
  "no clutch play": [
    { things: ["kupplung", "kupplungshebel", "kupplungszug"], signs: ["kein spiel", "hat kein spiel", "ohne spiel", "kein leerweg", "hat keinen leerweg"] },
  ],
  "dragging clutch": [
    { things: ["kupplung"], signs: ["trennt nicht", "trennt nicht richtig", "trennt nicht sauber", "trennt schlecht", "rupft", "klebt", "schleift"] },
  ],
  gearbox: [
    {
      things: [
        ...["getriebe", "gang", "gänge", "schaltung", "erster gang", "zweiter gang", "dritter gang", "vierter gang", "fünfter gang", "sechster gang"],
        ...["zweite gang", "dritte gang"],
      ],
      signs: [
        ...["springt raus", "springt heraus", "springen raus", "hakt", "kracht", "krachen", "geht nicht rein", "gehen nicht rein", "gehen schwer rein"],
        ...["heult", "mahlt", "lässt sich nicht schalten", "lässt sich schlecht schalten"],
      ],
    },
  ],
  "chain at its end": [
    {
      things: ["kettenspanner", "spanner", "kettenversteller", "ketteneinsteller", "einsteller", "versteller"],
      signs: [
        "am ende",
        "am anschlag",
        "ganz hinten",
        "ausgereizt",
        "auf anschlag",
        "am ende der skala",
        "am ende der markierung",
        "im roten bereich",
        "am ende des verstellwegs",
        "am letzten strich",
      ],
    },
    {
      things: [...CHAIN, "kettensatz", "kettenkit"],
      signs: ["verschlissen", "gelängt", "ausgelängt", "ausgeleiert", "lässt sich nicht mehr spannen", ...IS_DONE_FOR],
    },
  ],
  chain: [
    {
      things: CHAIN,
      signs: [
        ...ended("gerissen", "abgesprungen", "geknickt"),
        ...["springt", "springt über", "rutscht über", "steifes glied", "steife glieder", "hat steife glieder", "hat ein steifes glied"],
        ...["hat feste glieder", "klackert", "rasselt", "ungleiche spannung", "hat ungleiche spannung", "schlägt", "abgefallen", "runtergesprungen"],
        ...["hat feste stellen", "hat eine feste stelle", "feste stelle", "feste stellen", "ungleich gelängt", "hat verschiedene spannung", "verliert rollen"],
        ...["hat einen riss", "hat ein gebrochenes glied", "gebrochen", "clip fehlt"],
      ],
    },
    {
      things: [
        ...[
          "kettenschloss",
          "kettenschlossfeder",
          "kettenglied",
          "kettenglieder",
          "kettenclip",
          "kettenlasche",
          "kettenlaschen",
          "kettenrolle",
          "kettenrollen",
        ],
        ...["federclip", "schlossclip", "clip vom kettenschloss", "nietschloss", "clipschloss", "kettenschloss-clip"],
      ],
      signs: ["fehlt", "fehlen", "offen", "locker", "verloren", "gebrochen", "gerissen", "lose", "hat einen riss", "weg", "abgefallen", "steif", "verbogen"],
    },
  ],
  "chain tension": [
    {
      things: CHAIN,
      signs: [
        ...ended("locker"),
        ...["zu locker", "viel zu locker", "zu stramm", "viel zu stramm", "zu straff", "lockere", "hängt durch", "hängt", "lose"],
        ...["kein durchhang", "ohne durchhang", "hat keinen durchhang", "hat gar keinen durchhang", "hat kein spiel", "hat gar kein spiel"],
      ],
    },
  ],
  "rusty chain": [{ things: CHAIN, signs: [...ended("rostig", "verrostet", "angerostet"), "hat rost", "rost"] }],
  "worn sprockets": [
    {
      things: ["ritzel", "kettenrad", "kettenblatt", "kettenräder", "ritzelzähne", "ritzelmutter"],
      signs: [
        ...[...DONE_FOR.filter((sign) => sign !== "runter" && sign !== "fertig"), "ist fertig", "sind fertig", "spitz", "spitze zähne", "hat haifischzähne"],
        ...["haifischzähne", "haizähne", "locker", "lose", "wackelt", "zähne fehlen", "zahn fehlt", "abgebrochen", "hat spiel", "fehlt"],
      ],
    },
  ],
  "drive belt": [
    {
      things: ["riemen", "antriebsriemen", "zahnriemen"],
      signs: [
        ...ended("rissig", "ausgefranst", "gerissen", "porös"),
        ...["rutscht", "springt", "franst aus", "zahn fehlt", "zähne fehlen"],
        ...has("risse", "riss"),
      ],
    },
  ],
  "slack chain": [],
  "tight chain": [],
  "slack belt": [],
  "worn chain": [],
  "attacked clutch seals": [],
  "mixed clutch fluid": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
