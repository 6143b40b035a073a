// The date moulded into a tyre: week and year of making. Source: 49 CFR 574.5, the last symbols of the tyre identification number.

import { addDays, localDate, weekdayOf } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";

export type TyreDate =
  | { readonly is: "made"; readonly week: number; readonly year: number; readonly from: LocalDate }
  /** Three digits: before 2000, and the decade is not in the code. `latest` is the last week that it can mean. */
  | { readonly is: "before 2000"; readonly week: number; readonly digit: number; readonly latest: LocalDate }
  | { readonly is: "refused"; readonly why: "no code" | "no such week" | "to come" };

/** The digits of the code in what was typed off a sidewall, or its week and year said apart, "week 7 of 2012", "07/12"; null where there are none. */
export function tyreCodeIn(typed: string): string | null {
  const apart = APART.exec(typed.trim());
  if (apart !== null) return `${(apart[1] ?? "").padStart(2, "0")}${(apart[2] ?? "").slice(-2)}`;
  return /(?:^|\D)(\d{3,4})\D*$/u.exec(typed.trim())?.[1] ?? null;
}
/** Does it hold the codes of more than one tyre? "front 1223 rear 1417". What else of four figures a sidewall bears names no week and year. @param today no tyre was made after it */
export function holdsSeveralCodes(typed: string, today: LocalDate): boolean {
  const codes = [...typed.matchAll(/(?<![\p{L}\p{N}/.,-])\d{4}(?![\p{L}\p{N}/.-])/gu)].map(([code]) => code);
  return new Set(codes.filter((code) => readTyreDate(code, today).is === "made")).size > 1;
}
/** The week by itself, a stroke or a word, and the year of this century. */
const APART = /(?:^|[^\p{L}\p{N}]|^\p{L}+)(\d{1,2})(?:\s*[/,.-]\s*|\s+(?:\p{L}{2,4}\s+)?)(20\d{2}|\d{2})$/u;

/** Reads "0712", "DOT 4B9X ABCD 0712" or "317" as typed off the sidewall. @param today a week still to come is a slip of the eye */
export function readTyreDate(typed: string, today: LocalDate): TyreDate {
  const code = tyreCodeIn(typed);
  if (code === null) return { is: "refused", why: "no code" };
  const week = Number(code.slice(0, 2));
  if (week < 1 || week > 53) return { is: "refused", why: "no such week" };
  if (code.length === 3) return { is: "before 2000", week, digit: Number(code[2]), latest: startOf(1990 + Number(code[2]), week) };
  const year = 2000 + Number(code.slice(2));
  const from = startOf(year, week);
  return from > today ? { is: "refused", why: "to come" } : { is: "made", week, year, from };
}

/** The Monday of an ISO 8601 week. The rule counts its weeks from Sunday and may differ by a week, which an age in years does not show. */
function startOf(year: number, week: number): LocalDate {
  const fourth = localDate(`${String(year).padStart(4, "0")}-01-04`);
  return addDays(fourth, 1 - weekdayOf(fourth) + (week - 1) * 7);
}
