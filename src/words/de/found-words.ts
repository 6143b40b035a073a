// What people type as found at an item of a job, in German.

import type { FoundWords } from "../../core/reading/found-words.ts";

export const GERMAN_FOUND_WORDS: FoundWords = {
  wrong: [
    ...["gerissen", "rissig", "riss", "risse", "porös", "geknickt", "gequollen", "aufgequollen", "undicht", "leckt", "tropft", "sifft", "nass", "feucht"],
    ...["spiel", "locker", "lose", "wackelt", "rau", "rastet", "fest", "festgegangen", "klemmt", "hängt", "schleift", "schwergängig", "verbogen", "delle"],
    ...["verzogen", "gebrochen", "abgerissen", "fehlt", "beschädigt", "verschmort", "korrodiert", "verölt", "ölig", "verglast", "riefig", "ausgeschlagen"],
    ...["verschlissen", "durch", "hinüber", "kaputt", "defekt", "tot", "geht nicht", "funktioniert nicht", "unter der grenze", "unter minimum"],
  ],
  fine: [
    ...["ok", "okay", "gut", "in ordnung", "i.o.", "io", "bestens", "alles gut", "dicht", "trocken", "sauber", "stramm", "leichtgängig", "wie neu"],
    ...["kein spiel", "keine risse", "nichts", "nichts gefunden", "im rahmen", "innerhalb", "unauffällig"],
  ],
  none: ["kein", "keine", "keinen", "nicht", "ohne", "nie", "auf", "ob"],
  setRight: ["locker", "lose", "spiel", "schwergängig", "ölig", "verschlissen", "durch", "hinüber", "tot"],
};
