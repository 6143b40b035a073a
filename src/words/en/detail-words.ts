// What people type of the details of a job, in English.

import type { DetailWords } from "../../core/reading/detail-words.ts";

export const ENGLISH_DETAIL_WORDS: DetailWords = {
  currencies: {
    ...{ "£": "GBP", gbp: "GBP", quid: "GBP", pounds: "GBP", "€": "EUR", eur: "EUR", euro: "EUR", euros: "EUR" },
    ...{
      $: "$",
      dollars: "$",
      dollar: "$",
      bucks: "$",
      usd: "USD",
      aud: "AUD",
      cad: "CAD",
      nzd: "NZD",
      chf: "CHF",
      sek: "SEK",
      nok: "NOK",
      dkk: "DKK",
      pln: "PLN",
    },
  },
  shops: ["shop", "dealer", "dealership", "garage", "workshop", "mechanic"],
  service: ["service", "servicing"],
  fresh: ["new", "fresh"],
  forCost: ["for"],
  without: ["without", "except", "forgot", "minus", "not", "no"],
  old: ["old", "worn", "previous"],
  within: ["in"],
  byWhom: ["at", "by", "the", "my", "a", "local"],
};
