// What people type around a measured value, in German.

import type { MeasuringWords } from "../../core/reading/measuring-words.ts";

const AT = (where: readonly string[]): string[] => where.flatMap((each) => [each, `bei ${each}`, `auf ${each}`, `an ${each}`]);

export const GERMAN_MEASURING: MeasuringWords = {
  levels: {
    above: ["über max", "über maximum", "über voll", "über der max-marke", "zu voll", "überfüllt", "über der oberen marke"],
    full: ["voll", "randvoll", ...AT(["max", "maximum", "der oberen marke", "obere marke", "oberer marke", "voller marke"])],
    between: [
      "zwischen den marken",
      "zwischen min und max",
      "zwischen minimum und maximum",
      "mittig",
      "in der mitte",
      "halb",
      "mitte",
      "zwischen den strichen",
    ],
    "low mark": [...AT(["min", "minimum", "der unteren marke", "untere marke", "unterer marke"])],
    below: ["unter min", "unter minimum", "unter der unteren marke", "unter der marke"],
    empty: ["leer", "trocken"],
  },
  low: ["niedrig", "wenig", "zu wenig", "tief", "etwas niedrig", "etwas wenig"],
  conditions: {
    cold: ["kalt", "motor kalt", "kalter motor", "kalte reifen"],
    warm: ["warm", "heiß", "motor warm", "warmgefahren"],
    upright: ["aufrecht", "gerade gehalten", "auf dem hauptständer", "auf dem montageständer"],
    "on the side stand": ["auf dem seitenständer", "seitenständer"],
    rested: ["in ruhe", "über nacht", "nach der nacht", "ruhend"],
    "at force": ["mit federwaage"],
    "throttle open": ["vollgas", "gas offen", "drosselklappe offen", "drosselklappen offen", "gasgriff offen"],
  },
  sides: { inner: ["innen", "innerer", "innere"], outer: ["außen", "äußerer", "äußere"] },
  found: ["war", "waren", "vorher", "gefunden", "vorgefunden", "davor"],
  left: ["jetzt", "nachher", "eingestellt auf", "auf", "danach", "nun"],
  minus: ["minus"],
  higher: ["über der fußraste", "über der raste", "oberhalb"],
  lower: ["unter der fußraste", "unter der raste", "unterhalb"],
  ones: [],
  sags: { "static sag": ["statisch", "ohne", "leer"], "rider sag": ["fahrer", "mit", "beladen"] },
  shortIntake: ["ein"],
  across: ["mitte", "links", "rechts"],
  running: ["laufend", "bei laufendem motor", "motor läuft", "im leerlauf", "bei standgas"],
  pitches: ["glieder", "gliedern", "bolzen", "rollen"],
  pins: ["bolzen"],
  rpm: ["u/min", "u", "umdrehungen", "touren", "upm"],
  trip: ["tageskilometerzähler", "tageskilometer", "tageszähler", "trip", "trip a", "trip b"],
  sinceLast: ["seit der letzten ablesung", "seit dem letzten mal", "seit letztem mal"],
  full: ["vollgetankt", "voll getankt", "voll", "volltanken", "randvoll", "tank voll"],
  notFull: ["halb", "halb voll", "teilweise", "nicht voll", "halber tank"],
  currencies: ["€", "euro", "eur", "chf", "franken", "fr."],
  ofSpec: [
    ...["soll", "sollwert", "grenzwert", "grenze", "mindestens", "minimum", "maximal", "handbuch", "vorgeschrieben", "verschleißgrenze", "laut", "vorgabe"],
    ...["empfohlen", "normal", "normalerweise", "sollte", "aufkleber"],
  ],
  bikeWords: ["cruiser", "tourer", "roller", "enduro", "scrambler", "chopper"],
  bikeSorts: ["große", "großen", "kleine", "kleinen", "andere", "anderen", "rote", "roten", "schwarze", "schwarzen"],
  bikeOnes: ["maschine", "kiste"],
  bikePets: ["alte dame", "alten dame", "oma", "dicke", "dicken", "diva", "wintermaschine", "reisemaschine", "alten kiste", "alte kiste"],
  bikeOthers: ["andere", "anderen"],
  definite: ["der", "die", "das", "den", "dem", "meine", "meiner", "meinem", "mein", "meinen"],
};
