// A riding season as a member writes it: "north", "south", "none", or its first and last day ("1 April to 15 October").

import { isLocalDate } from "../core/calendar/arithmetic.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import { USUAL_WINDOWS } from "../core/season/season.ts";
import { under } from "./among.ts";
import { foldWord } from "./scan.ts";

/** As stored, `04-01/10-15` or "none"; null when it cannot be read. */
export function readSeason(text: string, { months }: Pick<Vocabulary, "months">): string | null {
  const typed = foldWord(text.trim());
  if (typed === "none") return "none";
  if (typed === "north" || typed === "south") return `${USUAL_WINDOWS[typed].from}/${USUAL_WINDOWS[typed].to}`;
  const ends = typed
    .replace(/\s+/gu, " ")
    .split(/ (?:to|until|till) |[-–]/u)
    .map((part) => dayIn(part, months));
  const [from, to] = ends;
  return ends.length === 2 && from != null && to != null && from !== to ? `${from}/${to}` : null;
}

function dayIn(text: string, months: Vocabulary["months"]): string | null {
  const words = text.split(/[\s,.]+/u).filter((word) => word !== "");
  const month = words.map((word) => under(months, word)).find((each) => each !== undefined);
  const day = words.map((word) => /^(\d{1,2})(?:st|nd|rd|th)?$/u.exec(word)?.[1]).find((each) => each !== undefined);
  if (month === undefined || day === undefined || words.length !== 2) return null;
  const found = `${String(month).padStart(2, "0")}-${day.padStart(2, "0")}`;
  return isLocalDate(`2027-${found}`) ? found : null;
}
