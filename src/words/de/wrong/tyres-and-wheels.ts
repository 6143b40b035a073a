// What people type when something is wrong with the tyres and wheels, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { DONE_FOR, ended, has, LOOSE, RISS_IN } from "./things.ts";

const CRACKED = [...ended("rissig", "porös", "gerissen", "spröde"), ...has("riss", "risse", "haarriss", "haarrisse")];
const BALD = [
  ...["abgefahren", "blank", "glatt", "runter", "runtergefahren", "heruntergefahren", "auf der verschleißgrenze", "am verschleißindikator", "am indikator"],
  ...["auf den verschleißmarken", "an den verschleißmarken", "auf den indikatoren", "an den indikatoren", "auf dem indikator", "auf der verschleißmarke"],
  ...["auf den stegen", "kein profil", "kein profil mehr", "hat kein profil", "hat kein profil mehr", "ohne profil", "kaum profil", "kaum noch profil"],
  ...["kein gummi mehr", "slick"],
];
const FRONT_TYRE = ["vorderreifen", "vorderradreifen"];
const REAR_TYRE = ["hinterreifen", "hinterradreifen", "heckreifen"];
const TYRE = [
  ...["reifen", "pneu", "pneus", ...FRONT_TYRE, ...REAR_TYRE, "vorderer reifen", "hinterer reifen", "vorderen reifen", "hinteren reifen", "reifen vorne"],
  ...["reifen vorn", "reifen hinten"],
];
const TYRES = TYRE.filter((thing) => ![...FRONT_TYRE, ...REAR_TYRE].includes(thing));
const FLANK = ["reifenflanke", "flanke", "seitenwand", "reifenflanken", "flanken"];
const BEARING = [
  ...["radlager", "radlager vorne", "radlager vorn", "radlager hinten", "vorderradlager", "hinterradlager", "vorderes radlager", "hinteres radlager"],
  ...["vorderrad", "hinterrad"],
];
const WHEEL = ["felge", "felgen", "rad", "vorderrad", "hinterrad", "vorderradfelge", "hinterradfelge", "vorderfelge", "hinterfelge"];
const WENIG_LUFT = [
  ...["weich", "ist weich", "schwammig", "hat wenig luft", "wenig luft", "hat zu wenig luft", "zu wenig luft", "zuwenig luft", "braucht luft"],
];
const NAIL = ["nagel", "schraube", "scherbe", "glasscherbe", "loch", "dorn", "draht"];
const VENTILKAPPE = ["ventilkappe", "ventilkappen", "staubkappe", "ventilkäppchen", "ventilkappe vorne", "ventilkappe hinten", "ventildeckelchen"];

export const GERMAN_TYRES_AND_WHEELS_WRONG = {
  puncture: [
    {
      things: [...TYRE, "vorderrad", "hinterrad", "vorne", "hinten"],
      signs: [
        ...["verliert luft", "verlieren luft", "verliert langsam luft", "verliert ständig luft", "verliert immer luft", "verliert immer wieder luft"],
        ...["verliert druck", "verliert über nacht luft", "verliert beim stehen luft", "luft raus", "keine luft", "hat keine luft", "hat keine luft mehr"],
        ...["platt", "ist platt", "luft weg", "platten", "hat einen platten", "hat platten"],
      ],
    },
    {
      things: TYRE,
      signs: [...ended("platt"), "platte", "geplatzt", "hat ein loch", "loch drin", "hält keine luft", "hält die luft nicht", "hält luft nicht"],
    },
    { things: TYRE, signs: NAIL.slice(0, 5).flatMap((nail) => [nail, `${nail} drin`, `hat einen ${nail}`, `hat eine ${nail}`, `hat ein ${nail}`]) },
    { things: NAIL.flatMap((nail) => [`${nail} im`, `${nail} in`, `${nail} steckt im`]), signs: TYRE },
    { things: ["ventil", "reifenventil"], signs: ["undicht", "leckt", "verliert luft", "porös", "rissig", "bläst ab"] },
  ],
  "plugged tyre": [
    { things: TYRE, signs: [...ended("geflickt", "gestopft"), "provisorisch geflickt", "hat einen flicken", "hat einen stopfen", "mit stopfen"] },
    {
      things: TYRE,
      signs: ["repariert", "wurde repariert", "von innen geflickt", "von innen repariert", "vulkanisiert", "mit flicken repariert"],
      signLast: true,
    },
    { things: ["flicken im", "stopfen im", "pannenstreifen im", "pannenwurst im"], signs: TYRE },
  ],
  "damaged tyre": [
    {
      things: [...TYRE, ...FLANK],
      signs: [
        ...["schnitt", "eingeschnitten", "aufgeschlitzt", "bis auf die karkasse", "karkasse sichtbar", "gewebe sichtbar", "bis aufs gewebe"],
        ...["karkasse kommt durch"],
        ...["gewebe schaut raus", "aufgerissen", ...has("beule", "schnitt", "beulen", "blase", "ausbeulung")],
      ],
    },
    { things: ["beule im", "beule in der", "beule an der", "schnitt im", "schnitt in der"], signs: [...TYRE, ...FLANK] },
  ],
  "cracked tyre": [
    { things: [...TYRE, ...FLANK], signs: CRACKED },
    { things: RISS_IN, signs: [...TYRE, ...FLANK] },
  ],
  "worn tyre": [
    { things: TYRES, signs: BALD },
    { things: ["abgefahrener", "abgefahrene", "abgefahrenen", "blanker", "blanke", "glatter"], signs: TYRES },
    { things: TYRES, signs: [...DONE_FOR, "unter 1,6", "verschleißgrenze erreicht"], signLast: true },
    {
      things: ["profil", "reifenprofil", "profiltiefe", "restprofil"],
      signs: ["weg", "runter", "abgefahren", "am ende", "am limit", "unter der grenze", "verschwunden"],
      signLast: true,
    },
    {
      things: ["verschleißmarken", "verschleißmarke", "verschleißindikator", "verschleißindikatoren", "twi"],
      signs: ["erreicht", "sichtbar", "bündig", "zu sehen"],
    },
  ],
  "cupped tyre": [{ things: TYRE, signs: ["hat sägezahn", "sägezahn", "sägezähne", "hat sägezähne", "ungleichmäßig abgefahren", "ungleich abgefahren"] }],
  "squared-off tyre": [
    {
      things: TYRE,
      signs: [...ended("eckig", "kantig"), "eckig gefahren", "mittig platt", "in der mitte platt", "in der mitte abgefahren"],
    },
  ],
  "wheel bearing": [
    {
      things: BEARING,
      signs: [
        ...ended("defekt", "rau", "ausgeschlagen", "kaputt", "verschlissen"),
        ...["hat spiel", "haben spiel", "spiel", "läuft rau", "brummt", "brummen", "mahlt", "heult", "hinüber", "fertig", "ist fertig", "sind fertig"],
        ...["durch", "wackelt", "hat luft", "knirscht", "rumpelt", "macht geräusche", "rastet", "läuft schwer", "am ende", "im eimer", "trocken", "singt"],
      ],
    },
    { things: ["spiel im", "spiel am"], signs: BEARING },
  ],
  spoke: [{ things: ["speiche", "speichen"], signs: [...LOOSE, ...ended("gebrochen", "gerissen", "verbogen", "abgerissen"), "fehlt", "fehlen"] }],
  "damaged wheel": [
    {
      things: WHEEL,
      signs: [
        ...ended("verbogen", "gerissen", "verzogen", "gebrochen", "verbeult"),
        ...["eiert", "hat höhenschlag", "hat seitenschlag", "läuft unrund", ...has("schlag", "delle", "dellen", "riss", "beule", "achter")],
      ],
    },
    { things: ["delle in der", "riss in der", "riss im", "schlag in der", "beule in der"], signs: WHEEL },
  ],
  "worn front tyre": [
    { things: FRONT_TYRE, signs: BALD },
    { things: FRONT_TYRE, signs: DONE_FOR, signLast: true },
    { things: ["abgefahrener", "abgefahrenen", "blanker", "glatter"], signs: FRONT_TYRE },
  ],
  "worn rear tyre": [
    { things: REAR_TYRE, signs: BALD },
    { things: REAR_TYRE, signs: DONE_FOR, signLast: true },
    { things: ["abgefahrener", "abgefahrenen", "blanker", "glatter"], signs: REAR_TYRE },
  ],
  "worn sidecar tyre": [],
  "wrong front pressure": [{ things: [...FRONT_TYRE, "vorderer reifen", "reifen vorne", "reifen vorn"], signs: WENIG_LUFT, signLast: true }],
  "wrong rear pressure": [{ things: [...REAR_TYRE, "hinterer reifen", "reifen hinten"], signs: WENIG_LUFT, signLast: true }],
  "wrong sidecar pressure": [],
  "valve cap": [
    { things: VENTILKAPPE, signs: [...ended("kaputt", "gerissen"), "fehlt", "fehlen", "weg", "verloren", "ist weg", "abgefallen"] },
    { things: ["fehlende", "keine", "ohne"], signs: VENTILKAPPE },
  ],
  "oily tyre": [
    {
      things: ["öl auf dem", "öl am", "motoröl auf dem", "kettenfett auf dem", "gabelöl auf dem", "bremsflüssigkeit auf dem"],
      signs: ["reifen", "hinterreifen", "vorderreifen"],
    },
    { things: ["reifen", "hinterreifen", "vorderreifen"], signs: ["ölig", "voller öl", "verölt"] },
  ],
  rubbing: [
    {
      things: ["reifen", "hinterreifen", "vorderreifen", "schutzblech", "kettenschutz", "kotflügel"],
      signs: ["schleift", "streift", "reibt", "berührt"],
      signLast: true,
    },
  ],
  "fitted wrong": [{ things: ["reifen", "hinterreifen", "vorderreifen", "beläge"], signs: ["falsch herum", "falschrum", "verkehrt herum"], signLast: true }],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
