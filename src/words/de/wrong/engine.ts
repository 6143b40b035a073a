// What people type when something is wrong with the engine, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { ended, HOSE, has, LEAK, LOOSE, LOSES_OIL, RISS_IN } from "./things.ts";

const FUEL = ["benzin", "sprit", "kraftstoff"];
const FUEL_HOSE = [
  ...["benzinschlauch", "benzinschläuche", "benzinleitung", "benzinleitungen", "kraftstoffschlauch", "kraftstoffleitung", "spritschlauch", "spritleitung"],
];
const COOLANT_HOSE = ["kühlerschlauch", "kühlerschläuche", "kühlmittelschlauch", "kühlmittelschläuche", "kühlwasserschlauch", "kühlwasserschläuche"];
const WATER = ["kühlwasser", "kühlmittel", "kühlflüssigkeit", "kühler", "ausgleichsbehälter"];
const OEL_IN = ["öl im", "öl in der", "öl in", "motoröl im", "ölfilm im", "ölfilm auf dem", "öl auf dem", "ölschlieren im"];
const WASSER_IN = ["wasser im", "wasser in dem", "kühlwasser im", "kühlmittel im", "kühlflüssigkeit im"];
const SCHLEIM = [
  "mayonnaise",
  "mayo",
  "weißer schleim",
  "weisser schleim",
  "schleim",
  "weißer schaum",
  "weisser schaum",
  "schaum",
  "emulsion",
  "milchiger schaum",
];
const UNTERM = ["unterm", "unter dem", "am", "im", "auf dem", "an dem"];
const OELDECKEL = ["öldeckel", "öleinfülldeckel", "öleinfüllstutzen", "ölverschluss", "öleinfüllverschluss", "einfülldeckel", "schauglas"];

export const GERMAN_ENGINE_WRONG = {
  "fuel leak": [
    {
      things: [...FUEL, "benzinhahn", "vergaser", "tank", "tankdeckel", "schwimmerkammer", ...FUEL_HOSE],
      signs: [...LEAK, "läuft über", "läuft", "riecht", "stinkt", "leckage", "verliert benzin", "verliert sprit"],
    },
    { things: ["riecht nach", "stinkt nach", "geruch nach"], signs: FUEL },
  ],
  "damaged fuel hose": [
    { things: FUEL_HOSE, signs: HOSE },
    { things: RISS_IN, signs: FUEL_HOSE },
  ],
  "running rough": [
    {
      things: ["motor", "motorrad", "maschine", "moped", "karre", "kiste"],
      signs: [
        ...["läuft unrund", "läuft nicht rund", "läuft nicht richtig", "stottert", "ruckelt", "geht aus", "stirbt ab", "springt nicht an"],
        ...["springt nicht mehr an", "springt schlecht an", "patscht", "setzt aus", "hat aussetzer", "aussetzer", "nimmt kein gas an", "zieht nicht"],
        ...["säuft ab", "hat zündaussetzer", "geht immer wieder aus", "läuft nur auf einem zylinder", "läuft auf einem zylinder", "verschluckt sich"],
        ...["fehlzündungen", "hat fehlzündungen", "startet nicht", "startet schlecht"],
      ],
    },
  ],
  "oil leak": [
    {
      things: [
        ...["motor", "öl", "motoröl", "ölwanne", "ventildeckel", "ventildeckeldichtung", "ölfilter", "motordeckel", "kupplungsdeckel"],
        ...["zylinderfußdichtung", "zylinderkopfdichtung", "kopfdichtung", "fußdichtung", "ablassschraube", "ölablassschraube", "getriebe", "kardan"],
        ...["endantrieb", "limadeckel", "lichtmaschinendeckel", "ölleitung", "ölkühler"],
      ],
      signs: [...LEAK, ...LOSES_OIL],
    },
  ],
  "oil and coolant mixed": [
    { things: OEL_IN, signs: WATER },
    { things: WASSER_IN, signs: ["öl", "motoröl", "ölsumpf", "kurbelgehäuse"] },
    { things: [...WATER, "kühler", "ausgleichsbehälter"], signs: [...ended("ölig", "milchig"), ...has("öl drin"), "öl drin", "voller öl"], signLast: true },
    {
      things: ["öl", "motoröl"],
      signs: [...ended("milchig", "cremig"), "wie milchkaffee", "wie mayonnaise", "hat wasser drin", "wasser drin"],
      signLast: true,
    },
    { things: ["milchiges", "cremiges"], signs: ["öl", "motoröl"] },
  ],
  "foam under the oil cap": [
    { things: SCHLEIM.flatMap((foam) => UNTERM.map((under) => `${foam} ${under}`)), signs: OELDECKEL },
    { things: OELDECKEL, signs: [...SCHLEIM, ...SCHLEIM.map((foam) => `voller ${foam}`)] },
  ],
  "engine noise": [
    {
      things: ["motor", "steuerkette", "kurbelwelle", "pleuel", "pleuellager", "ventiltrieb", "ventile"],
      signs: [
        ...["klappert", "klappern", "klackert", "klackern", "rasselt", "klopft", "klingelt", "nagelt", "tackert", "macht geräusche"],
        ...["macht komische geräusche", "hat einen fresser", "fest", "festgegangen", "kolbenfresser", "scheppert", "mahlt"],
      ],
    },
  ],
  smoke: [
    {
      things: ["motor", "auspuff", "motorrad", "maschine"],
      signs: ["qualmt", "raucht", "rußt", "blauer rauch", "weißer rauch", "schwarzer rauch", "qualmt blau", "qualmt weiß", "raucht blau", "raucht weiß"],
    },
  ],
  exhaust: [
    {
      things: ["auspuff", "krümmer", "krümmerdichtung", "auspuffdichtung", "schalldämpfer", "endtopf", "endschalldämpfer", "krümmerschraube"],
      signs: [...LOOSE, ...ended("undicht", "gerissen", "durchgerostet", "abgerissen"), "bläst", "bläst ab", "durch", ...has("loch", "riss")],
    },
  ],
  "dirty coolant": [
    {
      things: ["kühlmittel", "kühlwasser", "kühlflüssigkeit", "frostschutz", "ausgleichsbehälter"],
      signs: [...ended("rostig", "braun", "trüb", "schmutzig"), "dreckig", "verschlammt", "voller rost"],
    },
  ],
  "coolant leak": [
    {
      things: ["kühlwasser", "kühlflüssigkeit", "kühlmittel", "kühler", "wasserpumpe", "wasserschlauch", ...COOLANT_HOSE],
      signs: [...LEAK, "verliert wasser", "verliert kühlwasser", "verliert kühlmittel", "verliert kühlflüssigkeit", "fehlt", ...has("loch")],
    },
  ],
  "damaged coolant hose": [{ things: COOLANT_HOSE, signs: HOSE }],
  overheating: [
    {
      things: ["motor", "temperatur", "kühlwasser", "motorrad", "maschine", "temperaturanzeige"],
      signs: ["überhitzt", "überhitzt sich", "wird zu heiß", "zu heiß", "kocht", "kocht über", "im roten bereich", "im roten", "zu hoch"],
    },
    {
      things: ["lüfter", "kühlerlüfter", "ventilator"],
      signs: ["läuft nicht", "läuft nicht an", "springt nicht an", "dreht nicht", "dreht sich nicht", "geht nicht", "kaputt", "defekt"],
    },
  ],
  "low engine oil": [],
  // The word for it is also that of the drive belt.
  "timing belt": [],
  "tight valve": [{ things: ["ventile", "auslassventile", "einlassventile", "ventilspiel"], signs: ["zu eng", "zu klein", "zu stramm"], signLast: true }],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
