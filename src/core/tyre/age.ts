// What a tyre's age is counted from: the day it was made, where its date code is known.

import type { LocalDate } from "../calendar/dates.ts";
import type { TyreDate } from "./date-code.ts";

/** The line of the plan that holds the age of each end's tyre. */
export const TYRE_AGE_ITEMS = { front: "front-tyre.replace", rear: "rear-tyre.replace" } as const;

/** Is a line of the plan a tyre's age, which a date code tells better than the day it was fitted? */
export const isTyreAge = (item: string): boolean => Object.values(TYRE_AGE_ITEMS).some((key) => key === item);

/** The code of a tyre that is on. `by`: the record that says it, a reading or the work that fitted the tyre. `on`: the first day of its week; of three digits, which leave the decade open, the latest that it can be. `year`: null for these. */
export type TyreMade = { readonly by: string; readonly on: LocalDate; readonly week: number; readonly year: number | null };

/** What a tyre's age is counted from by its date code. */
export const tyreMade = (date: Exclude<TyreDate, { is: "refused" }>, by: string): TyreMade =>
  date.is === "made" ? { by, on: date.from, week: date.week, year: date.year } : { by, on: date.latest, week: date.week, year: null };
