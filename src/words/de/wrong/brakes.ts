// What people type when something is wrong with the brakes, in German.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { DONE_FOR, ended, HOSE, has, LEAK, RISS_IN } from "./things.ts";

const WORN_LINING = [
  ...DONE_FOR,
  ...["abgefahren", "abgebremst", "runtergebremst", "heruntergebremst", "runtergefahren", "abgeschliffen", "sind dünn", "zu dünn", "sehr dünn", "hauchdünn"],
  ...["auf dem träger", "bis auf den träger", "auf der trägerplatte", "bis auf die trägerplatte", "kein belag", "kein belag mehr", "kaum noch belag"],
  ...["nichts mehr drauf", "nix mehr drauf", "bis aufs metall", "weg"],
];
const BRAKE = [
  ...["bremse", "bremsen", "vorderbremse", "hinterbremse", "vorderradbremse", "hinterradbremse", "vordere bremse", "hintere bremse", "vorderen bremse"],
  ...["bremse vorne", "bremse vorn", "bremse hinten", "bremshebel", "bremspedal", "fußbremse", "handbremse", "handbremshebel", "fußbremshebel", "druckpunkt"],
];
const PADS = ["beläge", "belag", "bremsbeläge", "bremsbelag", "bremsklötze", "bremsklotz", "klötze", "bremssteine", "scheibenbremsbeläge"];
const SHOES = ["bremsbacken", "bremsbacke", "backen", "trommelbeläge", "bremsbackenbeläge"];
const DISC = ["bremsscheibe", "bremsscheiben", "scheibe", "scheiben"];
const BRAKE_HOSE = ["bremsschlauch", "bremsschläuche", "bremsleitung", "bremsleitungen", "stahlflex", "stahlflexleitung", "stahlflexleitungen"];
const FETT_AUF = ["öl", "fett", "gabelöl", "motoröl", "bremsflüssigkeit", "kettenspray", "kettenfett", "kettenöl"].flatMap((what) =>
  ["auf der", "auf den", "an der", "an den", "auf die", "auf"].map((on) => `${what} ${on}`),
);
const HAT_FETT = ["öl", "fett", "bremsflüssigkeit", "gabelöl"].flatMap((what) => [
  `hat ${what} abbekommen`,
  `haben ${what} abbekommen`,
  `voll ${what}`,
  `voller ${what}`,
]);

export const GERMAN_BRAKES_WRONG = {
  "soft brake": [
    {
      things: BRAKE,
      signs: [
        ...ended("weich", "schwammig", "teigig", "wirkungslos", "matschig"),
        ...["kein druck", "keinen druck", "hat keinen druck", "kein druckpunkt", "keinen druckpunkt", "druckpunkt weg", "druckpunkt wandert", "wandert"],
        ...["zieht nicht", "greift nicht", "packt nicht", "bremst nicht", "bremst nicht mehr", "bremst kaum", "bremst kaum noch", "zieht nicht mehr"],
        ...["greift nicht mehr", "fading", "packt nicht mehr", "greift kaum", "greift schlecht", "bremst schlecht", "hat luft", "luft im system"],
        ...["geht ins leere", "fällt durch", "sackt durch", "geht nicht", "geht nicht mehr", "funktioniert nicht", "funktioniert nicht mehr", "ausgefallen"],
        ...["ohne wirkung", "ohne druck", "packt erst spät", "greift erst spät", "packt spät", "greift spät", "kommt spät", "zieht ungleich"],
        ...["keine wirkung", "lässt nach", "schwach", "bis zum griff", "bis zum lenker", "bis an den griff", "bis an den lenker", "bis zum anschlag", "weg"],
        ...["tut nichts", "macht nichts", "tut nix", "macht nix", "bewirkt nichts", "berührt den griff", "berührt den lenker", "schlägt am griff an"],
      ],
    },
    { things: ["hebel"], signs: ["bis zum griff", "bis zum lenker", "bis an den griff", "bis an den lenker", "schwammig", "weich"] },
  ],
  "brake fluid leak": [
    {
      things: [
        ...["bremsflüssigkeit", "bremssattel", "bremssättel", "bremszange", "bremszylinder", "radbremszylinder", "hauptbremszylinder", "bremspumpe"],
        ...["handbremspumpe", "ausgleichsbehälter", "geberzylinder"],
        ...BRAKE_HOSE,
      ],
      signs: LEAK,
    },
    { things: BRAKE, signs: [...LEAK, "verliert bremsflüssigkeit"] },
  ],
  "damaged brake hose": [
    { things: BRAKE_HOSE, signs: HOSE },
    { things: RISS_IN, signs: BRAKE_HOSE },
  ],
  "damaged brake": [
    {
      things: [...PADS, ...SHOES],
      signs: [...ended("gerissen", "verölt", "ölig", "verglast", "verschmutzt", "gebrochen"), ...has("riss", "risse", "riefen", "öl")],
    },
    {
      things: DISC,
      signs: [...ended("gerissen", "riefig", "verölt", "ölig", "gebrochen", "blau angelaufen"), ...has("riss", "risse", "haarrisse", "riefen", "tiefe riefen")],
    },
    { things: RISS_IN, signs: DISC },
    { things: FETT_AUF, signs: [...DISC, ...PADS, ...SHOES, "bremsbelägen", "belägen"] },
    { things: [...DISC, ...PADS, ...SHOES], signs: HAT_FETT, signLast: true },
  ],
  "odd brake": [
    {
      things: BRAKE,
      signs: ["komisch", "seltsam", "merkwürdig", "anders", "eigenartig", "nicht richtig", "nicht normal", "macht zicken", "spinnt", "stimmt nicht"],
      signLast: true,
    },
  ],
  "old brake fluid": [
    {
      things: ["bremsflüssigkeit", "bremsflüssigkeit vorne", "bremsflüssigkeit hinten", "bremsbrühe"],
      signs: [
        ...ended("schwarz", "braun", "dunkel", "trüb", "dunkelbraun", "tiefschwarz", "pechschwarz", "alt", "uralt", "verfärbt"),
        ...["dunkle", "dunkles", "dunkler", "brühe", "wie kaffee", "wie cola"],
      ],
      signLast: true,
    },
  ],
  "dragging brake": [
    {
      things: [...BRAKE, "bremssattel", "bremssättel", "bremszange", "bremskolben", "kolben", ...PADS],
      signs: [
        ...["schleift", "schleifen", "klemmt", "klemmen", "fest", "löst nicht", "lösen nicht", "hängt", "hängen", "festgegangen", "sitzt fest"],
        ...["sitzen fest", "blockiert", "macht nicht auf", "geht nicht zurück", "gehen nicht zurück", "festgefressen", "wird heiß"],
      ],
    },
  ],
  "brake noise": [
    {
      things: [...BRAKE, ...PADS, ...DISC],
      signs: [
        ...["quietscht", "quietschen", "kratzt", "kratzen", "metall auf metall", "auf metall", "nur noch metall", "bis aufs blech", "schabt", "mahlt"],
        ...["knirscht", "kreischt", "macht geräusche"],
      ],
    },
  ],
  "pulsing brake": [
    {
      things: [...BRAKE, ...DISC],
      signs: [
        ...["rubbelt", "rubbeln", "pulsiert", "pulsieren", "stempelt"],
        ...ended("verzogen"),
        ...["hat schlag", "hat einen schlag", "haben schlag", "eiert", "schlägt"],
      ],
    },
  ],
  "worn pads": [
    { things: PADS, signs: WORN_LINING, signLast: true },
    { things: ["abgefahrene", "abgefahrenen", "verschlissene", "verschlissenen"], signs: PADS },
  ],
  "worn front pads": [],
  "worn rear pads": [],
  "worn shoes": [
    { things: SHOES, signs: WORN_LINING, signLast: true },
    {
      things: [
        ...["bremsnachsteller", "nachsteller", "nachstellmutter", "bremsgestänge", "bremsgestängeschraube", "bremseinsteller", "bremsseilversteller"],
        ...[
          "trommelbremse",
          "bremstrommel",
          "bremse",
          "hinterradbremse",
          "vorderradbremse",
          "hintere bremse",
          "vordere bremse",
          "bremse hinten",
          "bremse vorne",
        ],
      ],
      signs: [
        ...["am ende", "ganz am ende", "am anschlag", "auf anschlag", "ausgereizt", "lässt sich nicht mehr nachstellen", "nicht mehr nachstellbar"],
        ...["kein nachstellweg mehr", "lässt sich nicht weiter nachstellen"],
      ],
      signLast: true,
    },
    {
      things: [
        ...["verschleißanzeige der bremse", "verschleißanzeige hinten", "verschleißanzeige vorne", "verschleißanzeiger", "bremsverschleißanzeige"],
        ...["bremsbackenanzeige", "verschleißzeiger", "bremsschlüsselhebel"],
      ],
      signs: [
        ...["über der marke", "über die marke", "an der marke", "hinter der marke", "jenseits der marke", "über der markierung", "an der markierung"],
        ...["am ende", "am limit", "über dem limit", "im roten", "im roten bereich", "an der verschleißgrenze", "über der verschleißgrenze"],
      ],
      signLast: true,
    },
  ],
  "worn front shoes": [],
  "worn sidecar brake": [],
  "worn rear shoes": [],
  "worn front drum": [],
  "worn rear drum": [],
  "worn disc": [{ things: DISC, signs: [...WORN_LINING, ...has("grat")], signLast: true }],
  "low brake fluid": [],
  "low front brake fluid": [],
  "low rear brake fluid": [],
  "attacked brake seals": [],
  "mixed brake fluid": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
