// What a tyre's age is counted from, and what it calls for: the one rule that the plan, a reply and a look at the tyres go by.

import { addMonths } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { TyreDate } from "./date-code.ts";

/** The line of the plan that holds the age of each end's tyre. */
export const TYRE_AGE_ITEMS = { front: "front-tyre.replace", rear: "rear-tyre.replace", sidecar: "sidecar-tyre.replace" } as const;
/** Where a tyre is. */
export type TyreEnd = keyof typeof TYRE_AGE_ITEMS;

/** Is a line of the plan a tyre's age, which a date code tells better than the day it was fitted? */
export const isTyreAge = (item: string): boolean => Object.values(TYRE_AGE_ITEMS).some((key) => key === item);

/** Ages in months. `look`: from then on it is looked at once a year. `replace`: then it is replaced at the latest, whatever its tread and whatever a plan says. `notice`: so long before that it comes up. */
export type AgeRule = { readonly look: number; readonly replace: number; readonly notice: number; readonly source: string };

/** What an age calls for. */
export const AGE_WORDS = ["within", "look yearly", "replace"] as const;
export type AgeWord = (typeof AGE_WORDS)[number];

/** Months at which a tyre is replaced. @param plan those of the bike's plan, which may be its maker's; null where it has none */
export const replacedAt = (plan: number | null, rule: AgeRule): number => Math.min(plan ?? rule.replace, rule.replace);

/** What an age in months calls for. @param at months at which it is replaced, as `replacedAt` has it */
export const ageWord = (months: number, at: number, rule: AgeRule): AgeWord => (months >= at ? "replace" : months >= rule.look ? "look yearly" : "within");

/** The code of a tyre that is on. `by`: the record that says it, a reading or the work that fitted the tyre. `on`: the first day of its week; of three digits, which leave the decade open, the latest that it can be. `year`: null for these. `lookFrom`: the day from which on it is looked at once a year. */
export type TyreMade = { readonly by: string; readonly on: LocalDate; readonly week: number; readonly year: number | null; readonly lookFrom: LocalDate };

/** What a tyre's age is counted from by its date code. */
export function tyreMade(date: Exclude<TyreDate, { is: "refused" }>, by: string, rule: AgeRule): TyreMade {
  const [on, year] = date.is === "made" ? [date.from, date.year] : [date.latest, null];
  return { by, on, week: date.week, year, lookFrom: addMonths(on, rule.look) };
}

/** Whole months by the calendar from a day to a later one. */
export function monthsBetween(from: LocalDate, to: LocalDate): number {
  const [a, b] = [from, to].map((day) => Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7))) as [number, number];
  return addMonths(from, b - a) > to ? b - a - 1 : b - a;
}

/** The age of a tyre in whole months; of three digits the least that it can be. */
export const monthsOld = (date: Exclude<TyreDate, { is: "refused" }>, today: LocalDate): number =>
  Math.max(0, monthsBetween(date.is === "made" ? date.from : date.latest, today));
