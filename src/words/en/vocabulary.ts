// What people type, in English, as data for the reader.

import type { Vocabulary } from "../../core/reading/vocabulary.ts";
import { ENGLISH_ASKING } from "./asking.ts";
import { ENGLISH_CHART } from "./chart-letters.ts";
import { ENGLISH_DATE_WORDS } from "./date-words.ts";
import { ENGLISH_DEFECT_WORDS } from "./defect-phrases.ts";
import { ENGLISH_DETAIL_WORDS } from "./detail-words.ts";
import { ENGLISH_FOUND_WORDS } from "./found-words.ts";
import { ENGLISH_ITEM_SYNONYMS } from "./item-names.ts";
import { ENGLISH_KIND_NAMES } from "./kind-names.ts";
import { ENGLISH_MEASURING } from "./measuring.ts";
import { ENGLISH_SPEC_WORDS } from "./spec-names.ts";
import { ENGLISH_TALK_WORDS } from "./talk-words.ts";
import { ENGLISH_UNIT_NAMES } from "./unit-names.ts";
import { ENGLISH_WORK_WORDS } from "./work-words.ts";

export const ENGLISH_VOCABULARY: Vocabulary = {
  language: "en",
  ...ENGLISH_DATE_WORDS,
  ...ENGLISH_WORK_WORDS,
  ...ENGLISH_TALK_WORDS,
  units: ENGLISH_UNIT_NAMES,
  asking: ENGLISH_ASKING,
  kinds: ENGLISH_KIND_NAMES,
  places: {
    front: ["front", "fronts", "fr", "f", "frt", "frnt", "front caliper", "front calipers"],
    rear: ["rear", "rears", "back", "rr", "r", "rear caliper", "back caliper"],
    both: ["both", "each", "all round", "all around", "front and rear", "both tyres", "both tires", "both ends", "front and back"],
    sidecar: ["sidecar", "sidecar wheel", "side car"],
    "front left": ["front left", "left front", "fl"],
    "front right": ["front right", "right front"],
    left: ["left", "lh", "l/h"],
    right: ["right", "rh", "r/h"],
    intake: ["intake", "intakes", "inlet", "inlets", "int"],
    exhaust: ["exhaust", "exhausts", "exh", "ex"],
    cylinder: ["cylinder", "cyl", "cylinders", "cyls", "pot"],
  },
  measuring: ENGLISH_MEASURING,
  items: ENGLISH_ITEM_SYNONYMS,
  articles: ["the", "my", "a", "an", "new", "fresh"],
  and: ["and", "&", "+", "n", "n'"],
  joins: ["and", "but", "so", "then", "also"],
  warm: ["warm", "hot", "after", "straight", "ride", "rode", "riding", "ridden"],
  at: ["at", "@"],
  stands: ["is", "stands", "sits", "now", "currently", "clock", "odo", "odometer", "it's", "she's", "he's"],
  onBike: ["on", "for"],
  readOff: ["reading", "figure", "odo", "clock"],
  now: ["now", "today", "currently", "tonight"],
  either: ["or"],
  roundly: ["around", "about", "roughly", "approx", "circa", "ca"],
  shortWords: ["incl", "inc", "excl", "res"],
  shortLimits: ["min", "max", "th", "thk", "thick", "lim"],
  shortForms: ["no", "nr", "pt", "vol", "ref", "inv", "tel", "ext"],
  unlike: ["unlike"],
  counted: [
    "try",
    "attempt",
    "go",
    "time",
    "times",
    "gear",
    "ride",
    "set",
    "service",
    "oil",
    "tyre",
    "tire",
    "one",
    "bike",
    "tank",
    "valve",
    "cylinder",
    "day",
    "lap",
  ],
  rode: ["did", "done", "do", "doing", "after", "every"],
  otherWords: {
    sat: {
      notBehind: ["it", "it's", "she", "he", "i", "bike", "battery", "has", "had", "have", "been", "just", "after", "then", "where"],
      notBefore: [
        ...["on it", "on the", "on her", "on its", "for", "there", "unused", "outside", "idle", "still", "around", "over", "in", "since", "with", "overnight"],
        ...["a", "all", "two", "three", "under", "out", "indoors", "inside", "at", "too", "parked", "cold", "down", "up", "by"],
      ],
    },
    sun: {
      notBehind: [
        ...["in", "the", "full", "direct", "hot", "strong", "bright", "morning", "midday", "afternoon", "evening", "summer", "winter", "warm", "under", "no"],
        ...["hard", "low", "much", "some"],
      ],
      notBefore: ["beating", "shining", "out", "all", "is"],
    },
  },
  slips: {
    ...{ lst: "last", abt: "about", lubd: "lubed", odometr: "odometer" },
    ...{ teh: "the", hte: "the", adn: "and", nad: "and" },
    ...{ slak: "slack", slck: "slack", slakc: "slack", tred: "tread", treds: "treads", tyer: "tyre", tyers: "tyres" },
    ...{ presure: "pressure", presures: "pressures", preasure: "pressure", pressre: "pressure", pressue: "pressure", pessure: "pressure" },
    ...{ batery: "battery", baterry: "battery", battary: "battery", battry: "battery", coolent: "coolant", colant: "coolant", coolnt: "coolant" },
    ...{ reer: "rear", raer: "rear", rera: "rear", frount: "front", brke: "brake" },
    ...{ odomter: "odometer", odemeter: "odometer", odometre: "odometer", oddometer: "odometer", thikness: "thickness", thicknes: "thickness" },
    ...{ clearence: "clearance", clearences: "clearances" },
  },
  turns: {
    ...{ "quarter turn": 90, "a quarter turn": 90, "quarter of a turn": 90, "a quarter of a turn": 90, "third of a turn": 120, "a third of a turn": 120 },
    ...{ "half turn": 180, "half a turn": 180, "a half turn": 180, "three quarter turn": 270, "three quarters of a turn": 270 },
    ...{ "one turn": 360, "a turn": 360, "full turn": 360, "a full turn": 360, "whole turn": 360 },
  },
  oneEnd: [
    ...["max", "max.", "maximum", "at most", "up to", "no more than", "not more than", "less than", "under", "below", "<", "<=", "≤"],
    ...["min", "min.", "minimum", "at least", "no less than", "not less than", "more than", "over", "above", ">", ">=", "≥"],
  ],
  roughly: [
    "or so",
    "roughly",
    "ish",
    "i think",
    "i guess",
    "maybe",
    "probably",
    "more or less",
    "give or take",
    "it was",
    "that was",
    "sometime",
    "some time",
    "in the",
    "end of",
    "the end of",
    ...["beginning of", "the beginning of", "start of", "the start of", "middle of", "the middle of", "round about", "circa", "ca", "last done", "last one"],
  ],
  defects: ENGLISH_DEFECT_WORDS,
  found: ENGLISH_FOUND_WORDS,
  details: ENGLISH_DETAIL_WORDS,
  chart: ENGLISH_CHART,
  specs: ENGLISH_SPEC_WORDS,
  how: {
    "did it": ["did it", "did it myself", "myself", "me", "i did it"],
    receipt: ["receipt", "invoice", "bill"],
    "service book": ["service book", "book", "stamp", "service history"],
    "seller's word": ["seller's word", "sellers word", "seller", "seller said", "previous owner", "dealer said"],
    guess: ["guess", "a guess", "guessing", "probably", "think so"],
  },
};
