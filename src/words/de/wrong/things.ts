// Things and signs that riders name of more than one system, in German.

/** Words that agree with their noun, with each ending: "undicht", "undichte Gabel". */
export const ended = (...words: readonly string[]): readonly string[] =>
  words.flatMap((word) => [word, ...["e", "er", "es", "en", "em"].map((end) => word + end)]);
/** "Hat einen Riss", "hat Risse", "mit Riss". */
export const has = (...nouns: readonly string[]): readonly string[] =>
  nouns.flatMap((noun) => [
    noun,
    ...["hat", "haben", "hat ein", "hat eine", "hat einen", "haben ein", "haben einen", "mit", "zeigt"].map((verb) => `${verb} ${noun}`),
  ]);
export const LEAK = [
  ...ended("undicht", "leck", "feucht"),
  ...["nass", "nasse", "nasser", "leckt", "lecken", "tropft", "tropfen", "tröpfelt", "sifft", "siffen", "schwitzt", "schwitzen", "läuft aus", "läuft raus"],
  ...["kommt raus", "tritt aus", "verliert flüssigkeit", "rinnt", "hat ein leck", "spritzt", "am tropfen", "suppt", "sabbert"],
];
export const LOSES_OIL = [
  ...["verliert öl", "verlieren öl", "ölt", "ölen", "schwitzt öl", "tropft öl", "sifft öl", "ölverlust"],
  ...ended("ölig", "verölt", "ölfeucht", "ölnass"),
];
export const LOOSE = [
  ...ended("locker", "gelockert"),
  ...["lose", "loser", "loses", "losen", "lockere", "wackelt", "wackeln", "wackelig", "klappert", "klappern", "hat spiel", "haben spiel", "spiel", "hat luft"],
  ...["hat sich gelöst", "hat sich gelockert", "löst sich", "hat zu viel spiel", "viel spiel"],
];
export const HOSE = [
  ...ended(
    ...["rissig", "gerissen", "porös", "geknickt", "aufgequollen", "gequollen", "durchgescheuert", "aufgescheuert", "brüchig", "spröde", "beschädigt"],
    ...["alt und hart"],
  ),
  ...["bläht sich", "scheuert", ...has("beule", "beulen", "risse", "riss", "knick", "scheuerstelle")],
];
/** Said of what is worn to its end, whatever it is. */
export const DONE_FOR = [
  ...["verschlissen", "hinüber", "fertig", "am ende", "durch", "runter", "abgenutzt", "im eimer", "platt gefahren", "total fertig", "komplett fertig"],
  ...["kaputt", "ausgelutscht", "abgerockt", "auf der verschleißgrenze", "an der verschleißgrenze", "unter der verschleißgrenze", "am verschleißlimit"],
  ...["am limit", "unter dem limit", "unter mindestmaß", "am mindestmaß", "unter dem mindestmaß", "verbraucht"],
];
export const RISS_IN = [
  "riss im",
  "riss in der",
  "risse im",
  "risse in der",
  "riss am",
  "riss an der",
  "risse am",
  "risse an der",
  "haarriss im",
  "haarriss in der",
];
