// What people type as found at an item of a job, in German.

import type { FoundWords } from "../../core/reading/found-words.ts";

export const GERMAN_FOUND_WORDS: FoundWords = {
  wrong: [
    ...["gerissen", "rissig", "riss", "risse", "porös", "geknickt", "gequollen", "aufgequollen", "undicht", "leckt", "tropft", "sifft", "nass", "feucht"],
    ...["spiel", "locker", "lose", "wackelt", "rau", "rastet", "fest", "festgegangen", "klemmt", "hängt", "schleift", "schwergängig", "verbogen", "delle"],
    ...["verzogen", "gebrochen", "abgerissen", "fehlt", "beschädigt", "verschmort", "korrodiert", "verölt", "ölig", "verglast", "riefig", "ausgeschlagen"],
    ...["ausgerissen", "überdreht", "abgegangen", "schwere stelle", "rastpunkt", "zu stramm", "zu fest", "unbrauchbar"],
    ...["verschlissen", "durch", "hinüber", "kaputt", "defekt", "tot", "geht nicht", "funktioniert nicht", "unter der grenze", "unter minimum"],
  ],
  fine: [
    ...["ok", "okay", "gut", "in ordnung", "i.o.", "io", "bestens", "alles gut", "sauber", "leichtgängig", "wie neu", "neu", "einwandfrei", "frei", "klar"],
    ...["nichts", "nichts gefunden", "im rahmen", "innerhalb", "unauffällig", "super", "prima", "perfekt", "funktioniert", "geht"],
    ...["schnappt zurück", "springt zurück", "unterbricht", "stellt ab", "spielfrei", "rissfrei"],
  ],
  tight: ["dicht", "trocken", "stramm", "fest", "alles fest", "sitzt fest"],
  beside: [
    ...["alle", "alles", "beide", "beides", "der", "die", "das", "den", "ist", "sind", "war", "waren", "sieht", "sehen", "aus", "noch", "sehr", "und", "ganz"],
    ...[
      "soweit",
      "auch",
      "vorne",
      "vorn",
      "hinten",
      "links",
      "rechts",
      "gefunden",
      "geprüft",
      "keinerlei",
      "anzeichen",
      "von",
      "sichtbare",
      "sichtbar",
      "oder",
    ],
  ],
  none: ["kein", "keine", "keinen", "keinerlei", "nicht", "nichts", "ohne", "nie"],
  sought: ["frei von", "auf", "ob"],
  blemish: ["verschleiß", "rost", "rostig", "schaden", "schäden", "mängel", "mangel", "problem", "probleme", "bewegung", "geräusch", "geräusche", "schlecht"],
  setRight: {
    set: ["locker", "lose", "spiel", "zu locker", "zu stramm", "zu fest", "verstellt"],
    cleaned: ["schwergängig", "ölig", "schmutzig", "dreckig", "verdreckt", "staubig", "trocken", "verstopft"],
    renewed: ["verschlissen", "durch", "hinüber", "tot", "schwarz", "dunkel", "braun", "verrußt", "alt", "verbraucht"],
    filled: ["niedrig", "leer"],
  },
  made: ["gefettet", "geschmiert", "gereinigt", "nachgezogen", "festgezogen", "angezogen", "eingestellt", "erneuert", "ersetzt", "entlüftet", "voll"],
};
