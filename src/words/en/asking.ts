// The words that stand around a question about units, in English.

import type { AskingWords } from "../../core/quantity/asking.ts";

export const ENGLISH_ASKING: AskingWords = {
  into: ["in", "to", "into", "as", "->", "→", "=", "=>", "equals"],
  opening: [
    ...["what", "what's", "whats", "how", "many", "much", "far", "fast", "hot", "cold", "big", "long", "is", "are", "would", "does", "do"],
    ...["convert", "can", "could", "you", "me", "i", "tell", "give", "get", "and", "so", "ok", "hey", "hi"],
  ],
  equals: ["is", "are", "in", "for", "from", "=", "make", "makes", "would", "be", "does", "of", "equals", "to"],
  between: ["between", "and"],
  joins: ["and", "or", "&", "/", ","],
  idle: [
    ...["please", "pls", "thanks", "thx", "cheers", "about", "around", "roughly", "approx", "approximately", "ish", "again", "then", "a", "an", "the"],
    ...["spanner", "spanners", "wrench", "socket", "sockets", "hex", "drill", "bit", "bolt", "nut", "head", "size", "unit", "units"],
  ],
  exactly: ["exactly", "exact", "precisely", "precise"],
  difference: ["difference", "diff", "delta", "warmer", "hotter", "colder", "cooler", "rise", "drop"],
  metric: ["metric", "si", "metric units"],
  imperial: ["imperial", "inch", "inches", "imperial units", "us", "us units", "american"],
  torque: ["torque", "torques", "torqued", "tightened"],
  pressure: ["pressure", "pressures", "tyre", "tyres", "tire", "tires"],
};
