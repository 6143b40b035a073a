// What people type of the details of a job, in German.

import type { DetailWords } from "../../core/reading/detail-words.ts";

export const GERMAN_DETAIL_WORDS: DetailWords = {
  currencies: { "€": "EUR", eur: "EUR", euro: "EUR", euros: "EUR", chf: "CHF", franken: "CHF", $: "$", "£": "GBP" },
  shops: ["werkstatt", "händler", "schrauber", "mechaniker"],
  service: ["inspektion", "service", "durchsicht", "kundendienst", "km-inspektion", "km-service"],
  serviced: ["gewartet"],
  sized: [
    ...["große", "großer", "großen", "kleine", "kleiner", "kleinen", "volle", "ganze", "ganzen", "komplette", "kompletten", "jährliche", "jährlichen"],
    ...["normale", "normalen", "erste", "ersten", "letzte", "letzten"],
  ],
  handedOver: ["lassen", "machen", "gebracht", "gegeben", "abgeholt", "bekommen", "durchgeführt"],
  notService: ["gebucht", "termin", "intervall", "heft", "angebot", "kostenvoranschlag", "ohne", "halbe", "morgen", "kostet", "fällig", "keine", "kein"],
  old: ["alt", "alte", "alten", "alter"],
  forCost: ["für"],
  without: ["ohne", "außer", "vergessen", "nicht"],
  fresh: ["neu", "neue", "neuen", "neuer", "frisch", "frische"],
  batteries: {
    flooded: ["blei-säure", "bleisäure"],
    AGM: ["agm", "agm-batterie"],
    gel: ["gel", "gel-batterie", "gelbatterie"],
    lithium: ["lithium-eisenphosphat", "lithium-ionen", "lithium-batterie", "lithiumbatterie", "lithium", "lifepo4", "li-ion"],
  },
  fluids: {
    names: {
      "DOT 5": ["silikon-bremsflüssigkeit", "silikonbremsflüssigkeit", "silikonflüssigkeit", "silikon"],
      "mineral oil": ["mineralöl", "hydrauliköl"],
      "brake fluid": ["bremsflüssigkeit"],
    },
    notBefore: ["fett", "spray", "paste", "schlauch", "schläuche", "dichtung"],
    denied: ["nicht", "kein", "keine", "ohne", "statt"],
    puts: ["aufgefüllt", "nachgefüllt", "nachgekippt", "gefüllt", "gekippt", "eingefüllt", "reingekippt"],
    into: ["in"],
    circuits: {
      "brake-fluid.inspect": [
        ...["vordere bremse", "hintere bremse", "bremse vorne", "bremse hinten", "vorderbremse", "hinterbremse", "bremse", "bremsen"],
        ...["bremsflüssigkeit", "ausgleichsbehälter", "bremsflüssigkeitsbehälter"],
      ],
      "clutch-fluid.replace": ["kupplungsflüssigkeit", "kupplung", "kupplungsbehälter"],
    },
  },
  within: [],
  byName: ["bei", "beim", "von", "vom", "durch"],
  byWhom: ["der", "die", "beim", "in", "vom", "bei", "meiner", "meinem"],
};
