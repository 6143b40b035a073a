// What a message tells that only a command takes: a bike put away, a size of the chain, a number to call. Heard only where nothing else was read in it.

import { foldWord } from "./scan.ts";

/** What the message is about. */
export type ForCommand = "laid up" | "riding again" | "chain size" | "recovery number" | "roadside card";

const LONGEST = 160;

/** Signs of each, in both languages that are read; the first that fits. Sizes of chains are pitch and width by their usual numbers (ISO 606 gives both in inches). */
const SIGNS: readonly (readonly [ForCommand, RegExp])[] = [
  ["recovery number", /\b(?:recovery|breakdown|roadside) (?:number|phone|line|tel)\b|\bpannen(?:dienst|hilfe)? ?(?:nummer|telefon)\b/u],
  ["roadside card", /\b(?:roadside|breakdown) card\b|\bpannenkarte\b/u],
  [
    "riding again",
    /\b(?:out of|aus dem) (?:winter )?(?:storage|hibernation|winterschlaf|winterlager)\b|\bback on the road\b|\bno longer laid up\b|\bwieder angemeldet\b/u,
  ],
  [
    "laid up",
    /\b(?:laid|lay|laying) (?:(?:it|him|her) )?up\b|\b(?:put|tucked|stored|parked) [^,.]{0,30}\b(?:away|for (?:the )?winter)\b|\b(?:into|in) (?:winter )?storage\b|\b(?:eingewintert|eingemottet|stillgelegt)\b/u,
  ],
  ["chain size", /\b(?:chain|kette)\b[^,.]{0,30}\b(?:4[1-3][05-8]|520|525|530|532|630)\b/u],
];

/** What of a message that came to nothing a command takes; null where it tells no such thing, or asks. */
export function forCommand(text: string): ForCommand | null {
  if (text.length > LONGEST || text.includes("?")) return null;
  const said = foldWord(text).replace(/\s+/gu, " ");
  return SIGNS.find(([, sign]) => sign.test(said))?.[0] ?? null;
}
