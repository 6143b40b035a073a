// A date as vague as it is known: "spring 2023", "May 2023", "last May", "2023", "yesterday", "don't know".

import { localDate, vagueDate, yearOf } from "../core/calendar/arithmetic.ts";
import type { VagueDate } from "../core/calendar/dates.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { datesIn, monthSpan, yearOfLast } from "./dates.ts";
import { foldWord, scan } from "./scan.ts";

/** Reads the whole of a text as one date; "unknown" when it says so, null when it is none or can be read two ways. */
export function readVagueDate(text: string, known: Known): VagueDate | "unknown" | null {
  const typed = text.trim();
  const folded = foldWord(typed).replace(/[.,!]+$/u, "");
  if (folded === "" || known.vocabulary.unknown.includes(folded)) return folded === "" ? null : "unknown";
  const coarse = seasonOrYear(folded, typed, known);
  if (coarse !== null) return coarse;
  const tokens = scan(typed, known.vocabulary.units, known.numbers);
  const [dated] = datesIn(typed, tokens, known);
  const [on] = dated?.options ?? [];
  if (dated === undefined || on === undefined || dated.options.length > 1) return null;
  // Anything but the date and a word before it would be passed over in silence.
  const others = tokens.filter(
    (token, n) => (n < dated.from || n > dated.to) && !(token.is === "word" && ["on", "the", "about", "around", "in"].includes(foldWord(token.text))),
  );
  return others.length > 0 ? null : vagueDate(on, on, typed);
}

function seasonOrYear(folded: string, typed: string, known: Known): VagueDate | null {
  const { months, seasons, last } = known.vocabulary;
  const words = folded.split(/[\s,]+/u).filter((word) => !["in", "of", "the", "about", "around", "early", "late", "mid", "sometime"].includes(word));
  const [first, second] = words;
  if (first === undefined || words.length > 2) return null;
  const year = /^(19|20)\d{2}$/.test(second ?? first) ? Number(second ?? first) : null;
  if (words.length === 1 && year !== null) return vagueDate(localDate(`${year}-01-01`), localDate(`${year}-12-31`), typed);
  const isLast = last.includes(first) && second !== undefined;
  if (isLast && second === "year") return vagueDate(localDate(`${yearOf(known.today) - 1}-01-01`), localDate(`${yearOf(known.today) - 1}-12-31`), typed);
  const name = isLast ? (second ?? "") : first;
  if (!isLast && second !== undefined && year === null) return null;
  const month = months[name];
  if (month !== undefined) {
    const [from, to] = monthSpan(year ?? yearOfLast(month, known.today), month);
    return vagueDate(from, to, typed);
  }
  const season = seasons[name];
  if (season === undefined) return null;
  const begins = year ?? yearOfLast(season, known.today);
  const [from] = monthSpan(begins, season);
  const [, to] = monthSpan(season + 2 > 12 ? begins + 1 : begins, ((season + 1) % 12) + 1);
  return vagueDate(from, to, typed);
}
