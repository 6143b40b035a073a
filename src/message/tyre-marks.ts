// What is moulded on a tyre and typed with it: its size, and behind it its load and speed. None of its figures is a reading or an odometer.

import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import type { Token } from "./scan.ts";

/** A marking at tokens `from` to `to` (both included), as typed. */
export type TyreMark = { readonly from: number; readonly to: number; readonly typed: string };

/** "180/55ZR17", "120/70-17", "3.25-19", "MT90B16", with "M/C", load and speed behind it. Source: 49 CFR 571.119 S6.5 names what is moulded; the order of a size is that of its trade. */
const MARK =
  /(?<![\p{L}\p{N}.,/])(?:(?:[5-9]\d|[1-3]\d{2})\/\d{2,3} ?-?(?:ZR|Z?[RB]|-)-?\d{2}|[1-9]\.\d{2} ?[SHV]?-\d{2}|M[A-Z]\d{2} ?[RB-]-?\d{2})(?![\d.,]\d|[\p{L}\d])(?: ?M\/C)?(?: ?(?:\(\d{2,3}[A-Z]\)|\d{2,3}[H-Z](?![\p{L}\p{N}])))?(?: ?T[LT](?![\p{L}\p{N}]))?/giu;

/** Markings in a message that speaks of a tyre. */
export function tyreMarksIn(text: string, tokens: readonly Token[], { vocabulary }: Known): readonly TyreMark[] {
  if (!tokens.some((token) => token.is === "word" && among(vocabulary.measuring.tyre, token.folded))) return [];
  return [...text.matchAll(MARK)].flatMap((match): readonly TyreMark[] => {
    const [typed] = match;
    const end = match.index + typed.length;
    const from = tokens.findIndex((token) => token.end > match.index);
    const to = tokens.findLastIndex((token) => token.start < end);
    return from < 0 || to < from ? [] : [{ from, to, typed }];
  });
}
