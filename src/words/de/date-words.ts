// How people say when, in German, as data for the reader.

import type { Vocabulary } from "../../core/reading/vocabulary.ts";

const MONTHS = {
  ...{ januar: 1, jänner: 1, jan: 1, februar: 2, feb: 2, märz: 3, mär: 3, april: 4, apr: 4, mai: 5, juni: 6, jun: 6, juli: 7, jul: 7 },
  ...{ august: 8, aug: 8, september: 9, sep: 9, sept: 9, oktober: 10, okt: 10, november: 11, nov: 11, dezember: 12, dez: 12 },
} as const;
const WEEKDAYS = ["montag", "dienstag", "mittwoch", "donnerstag", "freitag", "samstag", "sonnabend", "sonntag"];
const LAST = ["letzten", "letzte", "letzter", "letztes", "letztem", "vorigen", "vorige", "voriger", "voriges", "vergangenen", "vergangene"];

export const GERMAN_DATE_WORDS = {
  tomorrow: { words: ["morgen"], notBehind: ["heute", "gestern", "guten", "am", "vorgestern", "diesen", "früh", "schönen", "moin"] },
  dateWords: [
    ...[
      "gestern",
      "vorgestern",
      "heute",
      "am",
      "vor",
      "tag",
      "tagen",
      "woche",
      "wochen",
      "monat",
      "monaten",
      "abend",
      "mittag",
      "nachmittag",
      "vormittag",
      "früh",
    ],
    ...["nacht", "zwei", "drei", "einem", "einer", "ein", "seit"],
    ...LAST,
    ...WEEKDAYS,
    ...Object.keys(MONTHS),
  ],
  weekdays: WEEKDAYS,
  dateAhead: ["für", "bis", "nächsten", "kommenden", "diesen"],
  dateJoins: ["am", "vor", "zwei", "drei", "einem", "einer", "ein", "seit", "abend", "mittag", "früh", "nacht", "nachmittag", "vormittag", ...LAST],
  dateSlips: { gesten: "gestern", getsern: "gestern" },
  ago: {
    days: { vorgestern: 2 },
    behind: [],
    before: ["vor"],
    counts: {
      ...{ einem: 1, einer: 1, einen: 1, zwei: 2, drei: 3, vier: 4, fünf: 5, sechs: 6, sieben: 7, acht: 8, neun: 9, zehn: 10, zwölf: 12 },
    },
    of: [],
    units: {
      ...{ tag: { of: "day", n: 1 }, tagen: { of: "day", n: 1 }, woche: { of: "day", n: 7 }, wochen: { of: "day", n: 7 } },
      ...{ monat: { of: "month", n: 1 }, monaten: { of: "month", n: 1 }, jahr: { of: "year", n: 1 }, jahren: { of: "year", n: 1 } },
    },
    weekend: ["wochenende"],
    atWeekend: ["am", "letztes", "letztem", "dieses"],
    ahead: ["nächstes", "nächstem", "kommendes", "kommendem", "bis", "fürs"],
    half: ["halben", "halbem", "halbes"],
    beforeLast: ["vorletzten", "vorletzte", "vorletztes", "vorletzter", "vorletztem"],
    lastTimes: ["service", "mal", "inspektion", "tüv", "kundendienst", "besitzer", "ölwechsel"],
    these: ["diese", "diesen", "dieses", "diesem", "dieser"],
    around: ["vor", "nach", "während"],
    events: ["tour", "reise", "urlaub", "treffen", "saison", "tüv", "winter", "sommer"],
    beforeMine: [
      ...["vor meiner zeit", "vor meinem kauf", "vor dem kauf", "bevor ich sie hatte", "bevor ich es hatte", "bevor ich sie gekauft habe"],
      ...["bevor ich sie gekauft hab", "bevor ich es gekauft habe", "bevor sie mir gehörte"],
    ],
    justNow: ["gerade gemacht", "eben gemacht", "frisch gemacht", "gerade gewechselt", "gerade erst gemacht"],
    seasons: { frühlingen: "frühling", sommern: "sommer", herbsten: "herbst", wintern: "winter" },
    hints: ["saisonbeginn", "saisonende", "kurzem", "neulich", "wochenende", "ostern", "weihnachten", "pfingsten"],
    notMonths: [],
  },
  dayBefore: ["am", "vom", "seit"],
  spanBefore: ["im", "in", "seit", "anfang", "ende", "mitte"],
  spanIdle: ["im", "in", "des", "der", "anfang", "ende", "mitte", "etwa", "ca", "von", "seit"],
  dateAlone: ["das", "alles", "war", "am", "vom", "die", "der"],
  months: MONTHS,
  seasons: { frühling: 3, frühjahr: 3, sommer: 6, herbst: 9, winter: 12 },
  last: LAST,
  lastSpans: { woche: "week", monat: "month", jahr: "year" },
} satisfies Partial<Vocabulary>;
