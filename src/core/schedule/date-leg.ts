// The calendar leg of an item. What is known to be made on a day ages from there; all else from when it was last done. Months follow the calendar from the anchor day; a vague date runs from the start of its span, and one of which nothing says how long ago tells nothing before its latest end.

import { addDays, addMonths, daysBetween, grainOf, isUndated } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { Condition, PlanItem } from "../plan/plan.ts";
import type { Anchor, Facts, Leg, LegState, Moment } from "./facts.ts";
import { type PlacedJob, pausedDays } from "./history.ts";
import { dayNotice, dayWindow, shortenedBy } from "./intervals.ts";

export type DateLeg = Extract<Leg, { by: "date" }>;
export type DatedLeg = { readonly leg: DateLeg; readonly shortened: Condition | null };

/**
 * Null when the item has no calendar leg.
 * @param runningIn its running-in is still ahead: the first time has not come, so that nothing is known of one tells nothing
 */
export function dateLeg(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts, at: Moment, runningIn: boolean): DatedLeg | null {
  const { months, shortened } = monthsOf(item, facts);
  if (months === null) return null;
  const made = facts.made.get(item.key);
  if (made !== undefined) {
    const dueOn = addMonths(made.on, months);
    return { leg: stand(item, { from: "made", ...made }, dueOn, "day", daysBetween(made.on, dueOn), months, 0, at.today), shortened };
  }
  const latest = jobs.at(-1);
  const last = latest !== undefined && isUndated(latest.job.on) ? undefined : latest;
  if (latest !== undefined && last === undefined) return { leg: undatedLeg(item, latest, months, at), shortened };
  const registered = facts.byTheBook?.firstRegistered ?? null;
  if (registered !== null) return { leg: anniversary(item, registered, months, last ?? null, facts, at), shortened };
  const grain = last === undefined ? "day" : grainOf(last.job.on);
  const from = last?.job.on.from ?? facts.knownFrom.date;
  const anchor: Anchor =
    last === undefined
      ? { from: facts.knownFrom.wholeSinceNew ? "new" : "known from" }
      : { from: "job", job: last.job.id, on: last.job.on, ridden: last.ridden, about: last.about, countsFor: null, off: last.off };
  const unpaused = addMonths(from, months);
  const paused = item.parked === "pauses" ? pausedDays(facts, from, unpaused, at.today) : 0;
  const leg = stand(item, anchor, addDays(unpaused, paused), grain, daysBetween(from, unpaused), months, paused, at.today);
  // Nothing is known of the last time: the interval may have passed before the history began.
  const unknown = anchor.from === "known from" && !runningIn && leg.daysToGo > 0;
  return { leg: unknown ? { ...leg, state: "no record" } : leg, shortened };
}

/** Last done on a day that nobody knows: it cannot tell, until the latest day on which it can fall due has come. */
function undatedLeg(item: PlanItem, { job, ridden, about, off }: PlacedJob, months: number, at: Moment): DateLeg {
  const dueOn = addMonths(job.on.to, months);
  const anchor: Anchor = { from: "job", job: job.id, on: job.on, ridden, about, countsFor: null, off };
  const leg = stand(item, anchor, dueOn, "day", daysBetween(job.on.to, dueOn), months, 0, at.today);
  return leg.state === "due" || leg.state === "overdue" ? leg : { ...leg, state: "cannot tell" };
}

/** Months of the calendar leg of an item, as the use of the bike has them; null where it has none. */
export const planMonths = (item: PlanItem, facts: Pick<Facts, "conditions" | "column">): number | null => monthsOf(item, facts).months;

function monthsOf(item: PlanItem, facts: Pick<Facts, "conditions" | "column">): { months: number | null; shortened: Condition | null } {
  switch (item.repeat.by) {
    case "interval": {
      const { interval, monthsBy } = shortenedBy(item, item.repeat.every, facts.conditions, facts.column);
      return { months: interval.months, shortened: monthsBy };
    }
    case "mark list":
      return { months: item.repeat.thenEvery?.months ?? null, shortened: null };
    default:
      return { months: item.repeat.months, shortened: null };
  }
}

/** By the book from first registration: anniversaries never move; a job inside the window before one counts for it, a late one for all passed. */
function anniversary(item: PlanItem, registered: LocalDate, months: number, last: PlacedJob | null, facts: Facts, at: Moment): DateLeg {
  const since = last?.job.on.from ?? (facts.knownFrom.wholeSinceNew ? registered : facts.knownFrom.date);
  let n = 1;
  while (addMonths(registered, n * months) <= since) n++;
  const next = addMonths(registered, n * months);
  const legDays = daysBetween(addMonths(registered, (n - 1) * months), next);
  if (last !== null && daysBetween(since, next) <= dayWindow(legDays)) n++;
  const leg = stand(item, { from: "first registration", on: registered }, addMonths(registered, n * months), "day", legDays, months, 0, at.today);
  // An anniversary passed before the bike came, and nothing is known of it: that is not good, nor coming up.
  const unknown = last === null && !facts.knownFrom.wholeSinceNew && addMonths(registered, months) <= facts.knownFrom.date && leg.daysToGo > 0;
  return unknown ? { ...leg, state: "no record" } : leg;
}

function stand(
  item: PlanItem,
  anchor: Anchor,
  dueOn: LocalDate,
  grain: DateLeg["grain"],
  legDays: number,
  months: number,
  pausedDays: number,
  today: LocalDate,
): DateLeg {
  const daysToGo = daysBetween(today, dueOn);
  const windowDays = item.noLateWindow ? 0 : dayWindow(legDays);
  return {
    by: "date",
    state: stateOf(daysToGo, windowDays, dayNotice(legDays)),
    anchor,
    dueOn,
    grain,
    daysToGo,
    months,
    legDays,
    windowDays,
    pausedDays,
  };
}

function stateOf(daysToGo: number, late: number, notice: number): LegState {
  if (daysToGo <= 0) return -daysToGo > late ? "overdue" : "due";
  return daysToGo <= notice ? "soon" : "ahead";
}
