// A date as vague as it is known: "spring 2023", "May 2023", "last May", "2023", "yesterday", "don't know".

import { vagueDate } from "../core/calendar/arithmetic.ts";
import type { VagueDate } from "../core/calendar/dates.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { datesIn } from "./dates.ts";
import { foldWord, scan } from "./scan.ts";
import { seasonOrYear } from "./vague-span.ts";

/** Reads the whole of a text as one date; "unknown" when it says so, null when it is none or can be read two ways. */
export function readVagueDate(text: string, known: Known): VagueDate | "unknown" | null {
  const typed = text.trim();
  const folded = foldWord(typed).replace(/[.,!]+$/u, "");
  if (folded === "" || among(known.vocabulary.unknown, folded)) return folded === "" ? null : "unknown";
  const coarse = seasonOrYear(folded, typed, known);
  if (coarse !== null) return coarse;
  const tokens = scan(typed, known.vocabulary.units, known.numbers);
  const [dated] = datesIn(typed, tokens, known);
  const [on] = dated?.options ?? [];
  if (dated === undefined || (dated.span === null && (on === undefined || dated.options.length > 1))) return null;
  // Anything but the date and a word before it would be passed over in silence.
  const others = tokens.filter(
    (token, n) => (n < dated.from || n > dated.to) && !(token.is === "word" && ["on", "the", "about", "around", "in"].includes(token.folded)),
  );
  if (others.length > 0) return null;
  return dated.span ?? (on === undefined ? null : vagueDate(on, on, typed));
}
