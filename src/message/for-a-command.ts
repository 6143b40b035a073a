// What a message tells that no plain message saves: a bike put away, a size of the chain, a number to call, air that was added, a value that is asked about. Heard only where nothing else was read in it.

import { foldWord } from "./scan.ts";

/** What the message is about. */
export type ForCommand = "laid up" | "riding again" | "chain size" | "recovery number" | "roadside card" | "air changed" | "value asked";

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

/** "Added 3 psi to the front": how much more or less, and not what it shows. */
const AIR =
  /\b(?:added|add|put|pumped|topped|let|bled|took|lost|released|dropped)\b[^.?!\d]{0,30}\b\d+(?:[.,]\d+)? ?(?:psi|bar|kpa|lbs?)\b|\b\d+(?:[.,]\d+)? ?(?:psi|bar|kpa)\b[^.?!\d]{0,30}\b(?:added|nachgefüllt|nachgepumpt|dazu|abgelassen|rausgelassen|mehr rein|draufgemacht)(?![\p{L}])/u;
/** "Is 31 psi ok for the front?": a figure, and whether it will do. */
const WILL_DO =
  /\b(?:ok|okay|enough|fine|alright|good|legal|safe|right|normal|too (?:low|high|much|little|thin|slack|tight)|in ordnung|genug|zu (?:wenig|viel|hoch|niedrig)|noch gut|normal|reicht|reichen|erlaubt)\b/u;
const FIRST_ASKS = /^(?:is|are|would|will|ist|sind|reicht|reichen|geht|gehen)\b/u;

/** What of a message that came to nothing a command takes; null where it tells no such thing, or asks. */
export function forCommand(text: string): ForCommand | null {
  if (text.length > LONGEST) return null;
  const said = foldWord(text).replace(/\s+/gu, " ").trim();
  const asks = said.includes("?");
  if ((asks || FIRST_ASKS.test(said)) && /\p{Nd}/u.test(said) && WILL_DO.test(said)) return "value asked";
  if (asks) return null;
  if (AIR.test(said)) return "air changed";
  return SIGNS.find(([, sign]) => sign.test(said))?.[0] ?? null;
}
