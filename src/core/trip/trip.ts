// A planned trip held against the plan: what falls due before it, on the way and at which point, or soon after;
// whether doing it before counts; and whether a thing that wears lasts the way, judged by the low end of its range.

import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import { ahead, between, type Ridden, type Stretch, stretchOf } from "../quantity/distance.ts";
import type { Due, Facts, Job, Moment } from "../schedule/facts.ts";
import { dueList } from "../schedule/status.ts";
import type { Forecast } from "../usage/forecast.ts";

/** Both days included. */
export type Trip = { readonly from: LocalDate; readonly to: LocalDate; readonly distance: Stretch };

export type OnTrip = {
  readonly item: ItemKey;
  readonly when: "before" | "during" | "after";
  /** How far into the trip it falls due; null when it does by date, or before. */
  readonly into: Stretch | null;
  /** The day, where it falls due by date on the way. */
  readonly on: LocalDate | null;
  /** Done on the day before the start, is it good until the end? */
  readonly counts: boolean;
};

/** So soon after the trip it is as well done before. */
const AFTER = { mi: 500, km: 800 } as const;

/**
 * What falls due by the plan. What wears is none of it: that is judged by `lasts`, more carefully, under the load of the trip.
 * @param start the odometer at the start; null when nobody can say, and only dates tell
 */
export function onTrip(whole: Facts, at: Moment, trip: Trip, start: Ridden | null): readonly OnTrip[] {
  const facts: Facts = { ...whole, wearing: [] };
  const end = start === null ? null : ahead(start, trip.distance);
  const soon = end === null ? null : ahead(end, stretchOf(AFTER[facts.column], facts.column));
  const states = [
    ["before", stateAt(facts, at, trip.from, start)],
    ["during", stateAt(facts, at, trip.to, end)],
    ["after", stateAt(facts, at, trip.to, soon)],
  ] as const;
  const found: Omit<OnTrip, "counts">[] = [];
  for (const item of facts.plan.items) {
    const hit = states.find(([, dues]) => isDue(dues.get(item.key)));
    if (hit === undefined) continue;
    const [when, dues] = hit;
    const due = dues.get(item.key);
    if (due === undefined || due.habit) continue;
    const reached = due.legs.filter((leg) => "state" in leg && (leg.state === "due" || leg.state === "overdue"));
    const road = reached.flatMap((leg) => (leg.by === "distance" && start !== null ? [between(start, leg.dueAt)] : []));
    const days = reached.flatMap((leg) => (leg.by === "date" ? [leg.dueOn] : []));
    found.push({
      item: item.key,
      when,
      into: when === "before" || road.length === 0 ? null : (Math.max(0, Math.min(...road)) as Stretch),
      on: when === "before" || days.length === 0 ? null : (days.sort()[0] ?? null),
    });
  }
  const again = dueAgain(
    facts,
    at,
    trip,
    start,
    end,
    found.map(({ item }) => item),
  );
  return found
    .map((each) => ({ ...each, counts: !again.has(each.item) }))
    .sort((a, b) => ORDER[a.when] - ORDER[b.when] || (a.into ?? 0) - (b.into ?? 0) || ((a.on ?? "") < (b.on ?? "") ? -1 : 1));
}

const ORDER = { before: 0, during: 1, after: 2 } as const;
const isDue = (due: Due | undefined): boolean => due?.status === "due" || due?.status === "overdue";

/** The future is not forecast from the future. */
const BLIND: Forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => null };

const stateAt = (facts: Facts, at: Moment, on: LocalDate, ridden: Ridden | null): ReadonlyMap<ItemKey, Due> =>
  new Map(
    dueList(facts, { today: on < at.today ? at.today : on, ridden: ridden ?? at.ridden, hours: at.hours, forecast: BLIND }).map((due) => [due.item, due]),
  );

/** By the interval rules themselves: the jobs are put on record at the start, and the items asked for at the end. Answers those that would be due again. */
function dueAgain(facts: Facts, at: Moment, trip: Trip, start: Ridden | null, end: Ridden | null, items: readonly ItemKey[]): ReadonlySet<ItemKey> {
  const on = trip.from < at.today ? at.today : trip.from;
  const done = { id: "before the trip", on: { from: on, to: on, typed: "" }, ridden: start, hours: null, outcome: "done", how: "did it" } as const;
  const then = stateAt({ ...facts, jobs: [...facts.jobs, ...items.map((item): Job => ({ ...done, item }))] }, at, trip.to, end);
  return new Set(items.filter((item) => isDue(then.get(item))));
}

/** What is left of a wearing part at the start, in distance, under the load of the trip. */
export type Lasting = {
  readonly is: "enough" | "not enough";
  readonly left: { readonly low: Stretch; readonly likely: Stretch; readonly high: Stretch | null };
};

/**
 * Judged by the low end: what lasts perhaps is not counted on.
 * @param left from its last reading on, likely and the 80 % range
 * @param gone ridden between that reading and the start
 * @param faster how many times faster it wears under the load of the trip; 1 alone
 */
export function lasts(left: Lasting["left"], gone: Stretch, distance: Stretch, faster: number): Lasting {
  const of = (stretch: Stretch): Stretch => Math.round(Math.max(0, stretch - gone) / faster) as Stretch;
  const now = { low: of(left.low), likely: of(left.likely), high: left.high === null ? null : of(left.high) };
  return { is: now.low >= distance ? "enough" : "not enough", left: now };
}
