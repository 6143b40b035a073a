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
    ...["drill", "bit", "head", "size", "unit", "units"],
  ],
  exactly: ["exactly", "exact", "precisely", "precise"],
  difference: ["difference", "diff", "delta", "warmer", "hotter", "colder", "cooler", "rise", "drop"],
  atMost: ["at most", "max", "maximum", "no more than", "not more than", "up to", "not over", "not above", "≤", "<="],
  atLeast: ["at least", "min", "minimum", "no less than", "not less than", "not under", "not below", "≥", ">="],
  plus: ["+", "plus", "and", "&", ","],
  turns: [
    ["three quarter turn", "3/4 turn"],
    ["three quarters of turn", "3/4 turn"],
    ["quarter turn", "1/4 turn"],
    ["quarter of turn", "1/4 turn"],
    ["half turn", "1/2 turn"],
    ["half of turn", "1/2 turn"],
    ["full turn", "1 turn"],
  ],
  metric: ["metric", "si", "metric units"],
  imperial: ["imperial", "inch", "inches", "imperial units", "us", "us units", "american"],
  torque: ["torque", "torques", "torqued", "tight", "tighten", "tightened"],
  pressure: ["pressure", "pressures", "tyre", "tyres", "tire", "tires"],
  fastener: ["bolt", "bolts", "nut", "nuts", "screw", "screws", "stud", "studs", "thread", "fastener"],
  spanner: ["spanner", "spanners", "wrench", "wrenches", "socket", "sockets", "hex"],
  fit: ["fit", "fits", "fitting"],
  which: ["which"],
};
