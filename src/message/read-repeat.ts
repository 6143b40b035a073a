// How often something comes round, as people type it beyond one interval: "first 600 mi, then every 4,000 mi or 12 months",
// "every third 4,000 mi", "every second oil change", "4,000 mi, no running-in", "6,000 mi from the last time".

import type { Interval } from "../core/plan/plan.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { readEvery } from "./read-every.ts";
import { foldWord } from "./scan.ts";

/** `first` undefined: nothing was said of running-in; null: there is none. `fromLast`: it is counted from the last time. `of`: another item, as typed. */
export type ReadRepeat = { readonly first: Interval | null | undefined; readonly fromLast: boolean } & (
  | { readonly by: "interval"; readonly every: Interval }
  | { readonly by: "nth mark"; readonly nth: number; readonly base: Interval }
  | { readonly by: "nth time"; readonly nth: number; readonly of: string; readonly months: number | null }
);

const NTH: Readonly<Record<string, number>> = {
  other: 2,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  "2nd": 2,
  "3rd": 3,
  "4th": 4,
  "5th": 5,
  "6th": 6,
};
const FIRST = /^(?:first|running[- ]in)(?: (?:at|after|once at))?:? (.+?)(?:,| and|;)? then (?:at )?(.+)$/u;
const FIRST_ONCE = /^(.+?) (?:first|once|for running[- ]in)(?:,| and|;)? then (?:at )?(.+)$/u;
const NO_FIRST = /(?:,|;)? (?:no|without|with no) running[- ]in(?: service)?$/u;
const FROM_LAST = /(?:,|;)? (?:counted )?(?:from|since|after) (?:the )?last (?:time|one|done|job)$/u;

/** Null when a part of it cannot be read. */
export function readRepeat(text: string, known: Pick<Known, "numbers" | "vocabulary">): ReadRepeat | null {
  const whole = foldWord(text).trim().replace(/\s+/gu, " ");
  // What is said at the end may come in either order.
  const unfirst = whole.replace(NO_FIRST, "");
  const unlast = unfirst.replace(FROM_LAST, "");
  const rest = unlast.replace(NO_FIRST, "");
  const none = unfirst !== whole || rest !== unlast;
  const [, before, after] = FIRST.exec(rest) ?? FIRST_ONCE.exec(rest) ?? [];
  const first = before === undefined ? (none ? null : undefined) : readEvery(before, known);
  if (before !== undefined && (first === null || none)) return null;
  const repeat = repeatOf(after ?? rest, known);
  return repeat === null ? null : { ...repeat, first, fromLast: unlast !== unfirst };
}

type Repeating = ReadRepeat extends infer R ? (R extends unknown ? Omit<R, "first" | "fromLast"> : never) : never;

function repeatOf(text: string, known: Pick<Known, "numbers" | "vocabulary">): Repeating | null {
  const [, word, what] = /^(?:every |each )?(?:(\w+) )(.+)$/u.exec(text) ?? [];
  const nth = word === undefined ? undefined : NTH[word];
  if (nth === undefined || what === undefined) {
    const every = readEvery(text, known);
    return every === null ? null : { by: "interval", every };
  }
  const base = readEvery(what, known);
  // "Every second year": an interval by the calendar alone.
  if (base !== null) return base.miles === null && base.km === null ? byCalendar(base, nth) : base.hours === null ? { by: "nth mark", nth, base } : null;
  const [of = "", beside, ...more] = what.split(/,? or /u);
  const months = beside === undefined ? null : readEvery(beside, known);
  if (more.length > 0 || (beside !== undefined && (months?.months == null || months.miles !== null || months.km !== null || months.hours !== null)))
    return null;
  return { by: "nth time", nth, of, months: months?.months ?? null };
}

const byCalendar = (base: Interval, nth: number): Repeating | null =>
  base.months === null || base.hours !== null ? null : { by: "interval", every: { ...base, months: base.months * nth } };
