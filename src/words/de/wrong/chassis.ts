// What people type when something is wrong with the chassis, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { ended, has, LEAK, LOOSE, LOSES_OIL, RISS_IN } from "./things.ts";

const BROKEN = [
  ...ended("gebrochen", "gerissen", "verbogen", "abgebrochen", "kaputt", "defekt", "beschädigt", "abgerissen", "angebrochen", "gesprungen", "verdreht"),
  ...["fehlt", "fehlen", "abgefallen", "abgegangen", "hat sprung", "hat einen sprung", "hinüber", ...has("riss", "risse")],
];

export const GERMAN_CHASSIS_WRONG = {
  "swingarm bearing": [
    {
      things: ["schwinge", "schwingenlager", "schwingenlagerung", "schwingenbuchsen", "schwingenachse"],
      signs: [...LOOSE, ...ended("ausgeschlagen", "verschlissen"), "fest", "hinüber", "fertig", "festgegangen"],
    },
    { things: ["spiel in der", "spiel im", "spiel an der"], signs: ["schwinge", "schwingenlager"] },
  ],
  steering: [
    {
      things: ["lenkung", "lenkkopflager", "lenkkopf", "steuerkopflager", "steuerkopf"],
      signs: [
        ...[...LOOSE, ...ended("ausgeschlagen", "schwergängig", "verschlissen", "rau", "schwer", "steif")],
        ...["hakt", "rastet", "rastet ein", "rastpunkt", "rastpunkte", "hat rastpunkt", "hat rastpunkte", "hat einen rastpunkt", "hat eine raststelle"],
        ...["raststelle", "mit rastpunkt", "klemmt", "klackt", "knackt", "hinüber", "fertig", "ist fertig", "geht schwer", "durch", "schwammig", "am ende"],
        ...["im eimer"],
      ],
    },
    {
      things: ["lenkung", "fahrverhalten"],
      signs: ["komisch", "seltsam", "merkwürdig", "unruhig", "nervös"],
      signLast: true,
    },
    {
      things: ["lenker", "lenkerstummel", "stummel"],
      signs: [...ended("verbogen", "verdreht"), "locker", "lose", "wackelt", "flattert", "schlägt", "vibriert stark", "steht schief", "schief"],
    },
    {
      things: ["motorrad", "maschine", "moped", "karre"],
      signs: [
        ...["zieht nach links", "zieht nach rechts", "pendelt", "schwimmt", "flattert", "schlingert", "fährt nicht geradeaus", "läuft nicht geradeaus"],
        ...["wackelt", "eiert"],
      ],
    },
    { things: ["spiel im", "spiel in der", "rastpunkt im", "rastpunkt in der"], signs: ["lenkkopflager", "lenkkopf", "lenkung", "steuerkopf"] },
  ],
  "fork leak": [
    {
      things: [
        ...["gabel", "gabeldichtring", "gabelsimmerring", "gabelsimmerringe", "simmerring", "simmerringe", "gabelholm", "gabelholme", "gabelbein"],
        ...["standrohr", "standrohre", "tauchrohr", "gabeldichtung", "gabelöl", "dichtring"],
      ],
      signs: [...LEAK, ...LOSES_OIL, ...ended("kaputt", "defekt"), "hinüber", "durch", "fertig", "ist fertig", "sind fertig"],
    },
  ],
  "shock leak": [
    {
      things: ["federbein", "federbeine", "stoßdämpfer", "dämpfer", "zentralfederbein"],
      signs: [
        ...LEAK,
        ...LOSES_OIL,
        ...ended("kaputt", "defekt"),
        ...["hinüber", "durch", "durchgeschlagen", "fertig", "ist fertig", "ohne dämpfung", "dämpft nicht"],
      ],
    },
  ],
  "sticking throttle": [
    {
      things: ["gas", "gasgriff", "gaszug", "gaszüge", "drosselklappe", "drosselklappen", "gasdrehgriff"],
      signs: [
        ...["hängt", "hängen", "klemmt", "klemmen", "dreht nicht zurück", "geht nicht zurück", "geht nicht zu", "bleibt hängen", "bleibt stehen", "hakt"],
        ...["schließt nicht"],
        ...["schnappt nicht zurück", "geht schwer", ...ended("schwergängig"), "klebt"],
      ],
    },
  ],
  cable: [
    {
      things: ["kupplungszug", "kupplungsseil", "gaszug", "gaszüge", "bowdenzug", "bowdenzüge", "bremszug", "seilzug", "chokezug"],
      signs: [...ended("ausgefranst", "gerissen", "geknickt", "schwergängig", "aufgespleißt", "angerissen"), "franst aus", "spleißt auf", "geht schwer"],
    },
  ],
  mirror: [{ things: ["spiegel", "rückspiegel", "außenspiegel", "linker spiegel", "rechter spiegel"], signs: [...LOOSE, ...BROKEN] }],
  "side stand": [
    {
      things: ["seitenständer", "seitenständerfeder", "seitenständerschalter", "ständer", "hauptständer", "ständerfeder"],
      signs: [
        ...LOOSE,
        ...BROKEN,
        ...["klappt nicht ein", "klappt runter", "bleibt nicht oben", "hängt", "hängt runter", "klemmt", "geht nicht", "funktioniert nicht"],
      ],
    },
  ],
  fastener: [
    {
      things: [
        ...["schraube am bremssattel", "schrauben am bremssattel", "schraube am rahmen", "schraube am motor", "schraube", "mutter", "schrauben", "muttern"],
        ...["achsmutter", "bremssattelschraube", "bremssattelschrauben", "steckachse", "bolzen", "splint", "motorschraube", "klemmschraube"],
        ...["ablassschraube", "ölablassschraube"],
      ],
      signs: [
        ...ended("locker", "abgerissen", "ausgerissen", "gerissen", "überdreht"),
        ...["lockere", "lose", "loser", "fehlt", "fehlen", "verloren", "rausgefallen", "weg"],
      ],
    },
    { things: ["gewinde"], signs: ["ausgerissen", "überdreht", "kaputt", "hinüber"] },
    {
      things: ["kennzeichenhalter", "verkleidung", "schutzblech", "kotflügel", "fußraste", "gepäckträger", "kofferträger", "sturzbügel", "hitzeschutz"],
      signs: [...LOOSE, "fehlt", "abgefallen", "hängt"],
    },
    { things: ["fußraste", "fußrasten"], signs: ["abgebrochen", "gebrochen"] },
  ],
  frame: [
    {
      things: ["rahmen", "heckrahmen", "hilfsrahmen", "schwinge", "rahmenheck", "motorhalter", "fußrastenhalter", "rahmenrohr"],
      signs: [...ended("gerissen", "gebrochen", "verbogen", "angerissen", "verzogen", "durchgerostet"), ...has("riss", "risse")],
    },
    { things: RISS_IN, signs: ["rahmen", "heckrahmen", "schwinge"] },
  ],
  "no throttle play": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
