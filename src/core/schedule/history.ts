// The jobs of each item, in order: its own, and those that cover it.

import { addDays, daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { Ridden, Stretch } from "../quantity/distance.ts";
import { riddenOnDay } from "../usage/track.ts";
import type { Facts, Job, Outcome } from "./facts.ts";
import { isLeft } from "./mending.ts";

/**
 * A job placed on the odometer. `about` when its figure was not noted and is taken at the low end of what it can have been.
 * `ridden` is null when there is no low end, from before the first reading; `atMost` is then the most it can have been.
 * `off`: what was ridden since and does not count, on another set of tyres or another piece.
 */
export type PlacedJob = { readonly job: Job; readonly ridden: Ridden | null; readonly atMost: Ridden | null; readonly about: boolean; readonly off: Stretch };

/** Jobs by item, oldest first. Work that could not be done, and a look that found a fault, leave the item undone. */
export function jobsByItem(facts: Facts, items: readonly PlanItem[]): ReadonlyMap<ItemKey, readonly PlacedJob[]> {
  const coveredBy = new Map<ItemKey, readonly ItemKey[]>(items.map((item) => [item.key, item.covers]));
  const found = new Map<ItemKey, PlacedJob[]>();
  for (const job of facts.jobs) {
    if (isLeft(job.outcome)) continue;
    if (KEEPS_THE_OLD.includes(job.outcome) && items.find((item) => item.key === job.item)?.action === "replace") continue;
    const placed = place(facts, job);
    for (const key of [job.item, ...(coveredBy.get(job.item) ?? [])]) {
      const list = found.get(key);
      if (list === undefined) found.set(key, [placed]);
      else list.push(placed);
    }
  }
  for (const list of found.values()) if (list.length > 1) list.sort(byTime);
  return found;
}

/** What was filled up, or set ("a plug gapped anew"), is the old one still. */
const KEEPS_THE_OLD: readonly Outcome[] = ["topped up", "adjusted"];

const NONE = 0 as Stretch;

function place(facts: Facts, job: Job): PlacedJob {
  if (job.ridden !== null) return { job, ridden: job.ridden, atMost: job.ridden, about: false, off: NONE };
  const [first] = facts.odometer.points;
  const on = riddenOnDay(facts.odometer, job.on.from);
  if (first === undefined || on === null) return { job, ridden: null, atMost: null, about: true, off: NONE };
  const bounded = job.on.from >= first.on || facts.knownFrom.wholeSinceNew;
  const about = !facts.odometer.points.some((point) => point.on === job.on.from);
  return { job, ridden: bounded ? on.low : null, atMost: on.high, about, off: NONE };
}

function byTime(a: PlacedJob, b: PlacedJob): number {
  return compare(a.job.on.from, b.job.on.from) || (a.ridden ?? -1) - (b.ridden ?? -1) || compare(a.job.id, b.job.id);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Days laid up between two days, each counted once. */
export const parkedDays = (facts: Facts, from: LocalDate, to: LocalDate): number =>
  layUpsWithin(facts, from, to).reduce((days, layUp) => days + daysBetween(layUp.from, layUp.to), 0);

/** Days by which a day moves on when time laid up since `from` does not count. What begins once the day is reached moves nothing: it was due by then. */
export function pausedDays(facts: Facts, from: LocalDate, until: LocalDate, today: LocalDate): number {
  let days = 0;
  for (const layUp of layUpsWithin(facts, from, today)) if (layUp.from < addDays(until, days)) days += daysBetween(layUp.from, layUp.to);
  return days;
}

/** Lay-ups in order, cut to what lies between two days and to what no earlier one covers. */
function layUpsWithin(facts: Facts, from: LocalDate, to: LocalDate): { readonly from: LocalDate; readonly to: LocalDate }[] {
  if (facts.layUps.length === 0) return [];
  let free = from;
  return facts.layUps
    .toSorted((a, b) => compare(a.from, b.from))
    .flatMap((layUp) => {
      const start = layUp.from > free ? layUp.from : free;
      const end = layUp.to !== null && layUp.to < to ? layUp.to : to;
      if (start >= end) return [];
      free = end;
      return [{ from: start, to: end }];
    });
}
