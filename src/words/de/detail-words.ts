// What people type of the details of a job, in German.

import type { DetailWords } from "../../core/reading/detail-words.ts";

export const GERMAN_DETAIL_WORDS: DetailWords = {
  currencies: { "€": "EUR", eur: "EUR", euro: "EUR", euros: "EUR", chf: "CHF", franken: "CHF", $: "$", "£": "GBP" },
  shops: ["werkstatt", "händler", "schrauber", "mechaniker"],
  service: ["inspektion", "service", "durchsicht", "kundendienst", "km-inspektion", "km-service"],
  old: ["alt", "alte", "alten", "alter"],
  forCost: ["für"],
  without: ["ohne", "außer", "vergessen", "nicht"],
  fresh: ["neu", "neue", "neuen", "neuer", "frisch", "frische"],
  within: [],
  byWhom: ["der", "die", "beim", "in", "vom", "bei", "meiner", "meinem"],
};
