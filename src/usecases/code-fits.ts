// A tyre cannot have been made after it was fitted: its date code is held against the day of that.

import type { VagueDate } from "../core/calendar/dates.ts";
import type { Gap, Intent } from "../core/reading/intent.ts";
import { TYRE_AGE_ITEMS, type TyreEnd } from "../core/tyre/age.ts";
import { readTyreDate } from "../core/tyre/date-code.ts";
import { fittedAt } from "./fitted.ts";
import type { Garaged } from "./garage.ts";

/** What is asked where a code is of later than the day on which its tyre was fitted, by the same message or on record; else null. */
export function madeTooLate(intent: Intent, g: Garaged): Gap | null {
  if (intent.do === "record work") {
    const late = intent.detail?.parts.find(({ made, item }) => made !== null && item !== null && intent.items.includes(item) && isAfter(made, intent.on, g));
    return late === undefined ? null : gapOf(late.made ?? "", intent.on);
  }
  if (intent.do !== "log reading" || intent.kind !== "tyre date code" || !isEnd(intent.place)) return null;
  const of = { work: g.work, refitted: g.facts.refitted, fittings: g.facts.fittings };
  const fit = fittedAt(of, TYRE_AGE_ITEMS[intent.place]);
  if (fit === null || intent.on < fit.on.from || !isAfter(intent.typed.text, fit.on, g)) return null;
  return gapOf(intent.typed.text, fit.on);
}

const isEnd = (place: string | null): place is TyreEnd => place !== null && place in TYRE_AGE_ITEMS;

/** By its first day: a week in which it was made and fitted is none too late. */
function isAfter(code: string, { to }: Pick<VagueDate, "to">, g: Garaged): boolean {
  const date = readTyreDate(code, g.today);
  return date.is === "made" && date.from > to;
}

const gapOf = (code: string, { from, to, typed }: VagueDate): Gap => ({
  need: "sure",
  because: "code after fitting",
  made: { code, fitted: { from, to, typed } },
});
