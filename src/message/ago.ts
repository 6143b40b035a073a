// Days by how long ago they were: "2 weeks ago", "vor drei Jahren", "at the weekend", "the day before yesterday".

import { addDays, addMonths, localDate, someDayBy, vagueDate, weekdayOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import type { Token } from "./scan.ts";
import { seasonsAgo } from "./vague-span.ts";

/** A day, or a span where none was named, at tokens `from` to `to` (both included). */
export type Ago = { readonly on: LocalDate | null; readonly span: VagueDate | null; readonly from: number; readonly to: number };

/** What begins at a token; null where nothing does. */
export function agoAt(text: string, tokens: readonly Token[], at: number, known: Known): Ago | null {
  const { today, vocabulary } = known;
  const { ago } = vocabulary;
  const word = (n: number): string => {
    const token = tokens[n];
    return token?.is === "word" ? token.folded : "";
  };
  const typed = (to: number): string => text.slice(tokens[at]?.start, tokens[to]?.end);
  for (const [phrase, days] of Object.entries(ago.days)) {
    const words = phrase.split(" ");
    if (words.every((each, n) => word(at + n) === each)) return { on: addDays(today, -days), span: null, from: at, to: at + words.length - 1 };
  }
  if (among(ago.weekend, word(at)) || (among(ago.atWeekend, word(at)) && among(ago.weekend, word(at + 1)))) {
    if (among(ago.ahead, word(at - 1))) return null;
    const to = among(ago.weekend, word(at)) ? at : at + 1;
    const saturday = addDays(today, -((weekdayOf(today) + 1) % 7));
    const sunday = addDays(saturday, 1);
    return { on: null, span: vagueDate(saturday, sunday > today ? today : sunday, typed(to)), from: at, to };
  }
  const mine = ago.beforeMine.find((phrase) => phrase.split(" ").every((each, n) => word(at + n) === each));
  if (mine !== undefined) {
    const to = at + mine.split(" ").length - 1;
    return { on: null, span: someDayBy(today, typed(to)), from: at, to };
  }
  const opens = among(ago.before, word(at)) ? 1 : 0;
  const halved = halfYear(tokens, at, opens, ago);
  if (halved !== null) {
    const day = addMonths(today, -6);
    return { on: null, span: vagueDate(addDays(day, -45), addDays(day, 45), typed(halved)), from: at, to: halved };
  }
  const counted = countAt(tokens[at + opens], ago.counts);
  // "A couple of weeks".
  const idle = among(ago.of, word(at + opens + 1)) ? 1 : 0;
  const unit = counted === null ? undefined : under(ago.units, word(at + opens + 1 + idle));
  const last = at + opens + 1 + idle + (opens === 1 ? 0 : 1);
  const season = counted === null ? undefined : under(vocabulary.seasons, under(ago.seasons, word(at + opens + 1)) ?? "");
  const behind = at + opens + 1 + (opens === 1 ? 0 : 1);
  if (counted !== null && season !== undefined && (opens === 1 || among(ago.behind, word(behind)))) {
    const span = seasonsAgo(season, counted, known);
    return { on: null, span: vagueDate(span.from, span.to, typed(behind)), from: at, to: behind };
  }
  if (counted === null || unit === undefined || (opens === 0 && !among(ago.behind, word(last)))) return null;
  const { of, n } = unit;
  const count = counted * n;
  if (of === "day") return { on: addDays(today, -count), span: null, from: at, to: last };
  if (of === "year") {
    const year = yearOf(today) - count;
    return { on: null, span: vagueDate(localDate(`${year}-01-01`), localDate(`${year}-12-31`), typed(last)), from: at, to: last };
  }
  const day = addMonths(today, -count);
  return { on: null, span: vagueDate(addDays(day, -15), addDays(day, Math.min(15, count * 28 - 1)), typed(last)), from: at, to: last };
}

/** "Half a year ago", "vor einem halben Jahr": where it ends. */
function halfYear(tokens: readonly Token[], at: number, opens: number, ago: Known["vocabulary"]["ago"]): number | null {
  const word = (n: number): string => {
    const token = tokens[n];
    return token?.is === "word" ? token.folded : "";
  };
  if (opens === 0 && !among(ago.half, word(at))) return null;
  const words = [word(at + opens), word(at + opens + 1)];
  const isHalf = words.some((each) => among(ago.half, each)) && words.some((each) => each === "" || among(ago.half, each) || under(ago.counts, each) === 1);
  const unit = at + opens + 2;
  if (!isHalf || under(ago.units, word(unit))?.of !== "year") return null;
  return opens === 1 ? unit : among(ago.behind, word(unit + 1)) ? unit + 1 : null;
}

function countAt(token: Token | undefined, counts: Readonly<Record<string, number>>): number | null {
  if (token?.is === "word") return under(counts, token.folded) ?? null;
  return token?.is === "number" && token.units.length === 0 && token.decimals === 0 && token.fraction === null && token.value >= 1 && token.value <= 120
    ? token.value
    : null;
}

/**
 * Words and figures between two tokens that look like a day and were read as none: "Easter", "5/6", "13-11-2026". Null where there are none.
 * @param strokes false where what has a stroke is figures read off the bike
 */
export function unreadDay(
  text: string,
  tokens: readonly Token[],
  from: number,
  to: number,
  taken: ReadonlySet<number>,
  { vocabulary }: Known,
  strokes = true,
): string | null {
  const { ago, months, last } = vocabulary;
  for (let at = from; at <= to; at++) {
    const token = tokens[at];
    if (token === undefined || taken.has(at) || token.is === "break") continue;
    if (token.is === "word" && (among(ago.hints, token.folded) || (under(months, token.folded) !== undefined && !among(ago.notMonths, token.folded))))
      return token.text;
    // "Plugs replaced last service".
    const next = tokens[at + 1];
    if (token.is === "word" && among(last, token.folded) && next?.is === "word" && at < to && among(ago.lastTimes, next.folded))
      return `${token.text} ${next.text}`;
    if (token.is === "word" && among(ago.events, token.folded) && isAround(tokens, from, at, ago.around)) return token.text;
    if (token.is === "number" && token.units.length > 0) continue;
    const marked = DAY_LIKE.exec(text.slice(token.start, token.start + 12))?.[0];
    // "Pads 4/5" are two readings.
    if (marked !== undefined && !strokes && !marked.endsWith(".")) continue;
    // "33/36" is no day of any month.
    const [a = 0, b = 0] = (marked ?? "").split("/").map(Number);
    if (marked !== undefined && !(marked.split("/").length === 2 && (Math.min(a, b) > 12 || Math.max(a, b) > 31 || a * b === 0))) return marked;
  }
  return null;
}

/** "Before the tour": within a few words. */
function isAround(tokens: readonly Token[], from: number, at: number, around: readonly string[]): boolean {
  for (let n = at - 1; n >= Math.max(from, at - 3); n--) {
    const token = tokens[n];
    if (token?.is === "word" && among(around, token.folded)) return true;
  }
  return false;
}

/** 13-11-2026, 2026/11/13, 1.11., 5/6; a stroke over 2, 4, 8, 16, 32 or 64 is a ruler's. */
const DAY_LIKE = /^(?:\d{1,2}-\d{1,2}-\d{4}|\d{4}\/\d{1,2}\/\d{1,2}|\d{1,2}\.\d{1,2}\.|\d{1,2}\/(?!(?:2|4|8|16|32|64)(?!\d))\d{1,2})(?![\d/])/u;
