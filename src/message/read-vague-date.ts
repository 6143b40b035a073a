// A date as vague as it is known: "spring 2023", "May 2023", "last May", "2023", "yesterday", "don't know".

import { addDays, addMonths, localDate, vagueDate } from "../core/calendar/arithmetic.ts";
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
  const figures = monthInFigures(folded, typed) ?? yearsInFigures(folded, typed);
  if (figures !== null) return figures;
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

/** "5/2025", "05.2025": a month of a year. */
function monthInFigures(folded: string, typed: string): VagueDate | null {
  const [, month, year] = /^(0?[1-9]|1[0-2])[/.]((?:19|20)\d{2})$/u.exec(folded) ?? [];
  if (month === undefined || year === undefined) return null;
  const first = localDate(`${year}-${month.padStart(2, "0")}-01`);
  return vagueDate(first, addDays(addMonths(first, 1), -1), typed);
}

/** "2022/23": one of two years, or the winter between them. */
function yearsInFigures(folded: string, typed: string): VagueDate | null {
  const [, year, next] = /^((?:19|20)\d{2})\/(\d{2})$/u.exec(folded) ?? [];
  if (year === undefined || Number(next) !== (Number(year) + 1) % 100) return null;
  return vagueDate(localDate(`${year}-01-01`), localDate(`${Number(year) + 1}-12-31`), typed);
}
