// What falls due until a day or an odometer ahead, without touching the facts; and what of it can be done in one evening.

import { addDays, daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import { type DistanceUnit, type Ridden, stretchOf } from "../quantity/distance.ts";
import type { Forecast } from "../usage/forecast.ts";
import type { DayRange } from "../wear/days.ts";
import type { Due, Facts, Leg, Moment } from "./facts.ts";
import { dueList } from "./status.ts";

/** How far ahead is looked. `ridden` is null where nothing says how far the bike will have gone. */
export type Horizon = { readonly on: LocalDate; readonly ridden: { readonly low: Ridden; readonly likely: Ridden; readonly high: Ridden } | null };

/** An item that falls due until then. */
export type Falling = {
  readonly item: ItemKey;
  /** As it stands today. */
  readonly now: Due;
  /** False: only if the bike is ridden more than is likely. */
  readonly likely: boolean;
  /** The day on which it is likely to fall due, today for what is due already; null when nothing says. */
  readonly on: LocalDate | null;
  /** The odometer at which it falls due; null when it falls due by date. */
  readonly at: Ridden | null;
  /** By the plan, or by its wear line where that comes first. */
  readonly by: "plan" | "wear";
};

/**
 * Every item that is due, or falls due until the horizon, in the order in which they do. Habits are left out: they are done between rides.
 * The odometer of the horizon is taken as if it had been read.
 */
export function outlook(facts: Facts, at: Moment, horizon: Horizon): readonly Falling[] {
  const { on, ridden } = horizon;
  const then = (distance: Ridden | null): ReadonlyMap<ItemKey, Due> =>
    new Map(dueList(facts, { today: on, ridden: distance, hours: at.hours, forecast: BLIND }).map((due) => [due.item, due]));
  const usual = then(ridden?.likely ?? at.ridden);
  const furthest = ridden === null ? usual : then(ridden.high);
  return dueList(facts, at)
    .flatMap((now): Falling[] => {
      const [first, last] = [usual.get(now.item), furthest.get(now.item)];
      // What wears down to its limit until then is no habit by then.
      if (now.habit && first?.habit !== false && last?.habit !== false) return [];
      const due = [now, first, last].find((each) => each !== undefined && isDue(each));
      if (due === undefined) return [];
      const likely = isDue(now) || (first !== undefined && isDue(first));
      return [{ item: now.item, now, likely, ...(due === now ? { on: at.today, at: null, by: governedBy(now) } : reachedBy(due, at, horizon)) }];
    })
    .sort((a, b) => order(a, b, horizon));
}

/** The days between which an item likely falls due by distance: by wear both how far it goes and how fast the road goes by are in doubt. Null by date, and without a forecast. */
export function rangeOf({ at: point, by, now }: Pick<Falling, "at" | "by" | "now">, { forecast }: Moment): DayRange | null {
  const wear = now.legs.find((leg) => leg.by === "wear");
  if (by === "wear") return wear?.by === "wear" && point !== null ? wear.likely : null;
  return point === null ? null : forecast.dateOf(point);
}

/** The future is not forecast from the future. */
const BLIND: Forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => null };

const isDue = ({ status }: Due): boolean => status === "due" || status === "overdue";

/** The leg that falls due first: by date where its day comes before the likely day of the distance; of two distances, by plan and by wear, the nearer. */
function reachedBy(due: Due, at: Moment, horizon: Horizon): Reached {
  const legs = due.legs.filter((leg) => "state" in leg && (leg.state === "due" || leg.state === "overdue"));
  const reached = legs.map((leg): Reached => ({ ...dayOf(leg, at, horizon), by: leg.by === "wear" ? "wear" : "plan" }));
  const [first = { on: null, at: null, by: "plan" }, ...rest] = reached;
  return rest.reduce((a, b) => (isBefore(b, a) ? b : a), first);
}

const governedBy = ({ governs, legs }: Due): Falling["by"] => (governs !== null && legs[governs]?.by === "wear" ? "wear" : "plan");

type Reached = Pick<Falling, "on" | "at" | "by">;
const isBefore = (a: Reached, b: Reached): boolean => (a.at !== null && b.at !== null ? a.at < b.at : (a.on ?? "9999") < (b.on ?? "9999"));

function dayOf(leg: Leg, at: Moment, horizon: Horizon): Pick<Falling, "on" | "at"> {
  const within = (day: LocalDate): LocalDate => (day < at.today ? at.today : day > horizon.on ? horizon.on : day);
  const byRoad = (point: Ridden): Pick<Falling, "on" | "at"> => {
    const likely = at.forecast.dateOf(point)?.on ?? null;
    return { on: likely === null ? null : within(likely), at: point };
  };
  switch (leg.by) {
    case "distance":
    case "wear":
      return byRoad(leg.dueAt);
    case "recheck":
      return byRoad(leg.recheck.dueAt);
    case "date":
      return { on: within(leg.dueOn), at: null };
    case "verdict": {
      const { at: point = null, on = null } = leg.again ?? {};
      const road = point === null ? null : byRoad(point);
      // Whichever comes first; without a forecast, the day.
      if (on !== null && (road?.on == null || on <= road.on)) return { on: within(on), at: null };
      return road ?? { on: at.today, at: null };
    }
    default:
      return { on: at.today, at: null };
  }
}

const order = (a: Falling, b: Falling, horizon: Horizon): number =>
  daysBetween(b.on ?? horizon.on, a.on ?? horizon.on) || (a.at ?? 0) - (b.at ?? 0) || (a.item < b.item ? -1 : 1);

/** Items this near to the first of them can be done together. Common practice. */
export const NEAR_DAYS = 28;
export const NEAR = { mi: 500, km: 800 } as const;

/** What lies within four weeks, or 500 mi / 800 km, of the first of a group, in the order given. */
export function evenings(falling: readonly Falling[], column: DistanceUnit): readonly (readonly Falling[])[] {
  const groups: Falling[][] = [];
  for (const each of falling) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (group !== undefined && first !== undefined && isNear(first, each, column)) group.push(each);
    else groups.push([each]);
  }
  return groups;
}

function isNear(first: Falling, each: Falling, column: DistanceUnit): boolean {
  if (first.on !== null && each.on !== null && each.on <= addDays(first.on, NEAR_DAYS)) return true;
  return first.at !== null && each.at !== null && Math.abs(each.at - first.at) <= stretchOf(NEAR[column], column);
}
