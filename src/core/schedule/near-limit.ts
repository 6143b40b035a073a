// When to look again at what was read near its limit: the plan's own interval is for what is well within.

import { addDays } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { PlanItem } from "../plan/plan.ts";
import { ahead, type DistanceUnit, type Ridden, type Stretch, stretchOf } from "../quantity/distance.ts";
import { riddenOnDay } from "../usage/track.ts";
import type { Facts, LookAgain, Moment, Verdict, Wearing } from "./facts.ts";
import { pausedDays } from "./history.ts";

/** What the plan asks of the item: null for what it does not count by. */
export type Planned = { readonly distance: Stretch | null; readonly days: number | null };

/** By a wear line nobody looks again sooner than this after a reading. */
const LEAST = { mi: 125, km: 200 } as const satisfies Record<DistanceUnit, number>;

/**
 * The odometer or the day from which on it is to be looked at again; null where nothing says how soon.
 * Where a wear line tells, it is by the low end of its range: nine times in ten that comes before the limit.
 */
export function lookAgain(verdict: Verdict, item: PlanItem, planned: Planned, wearing: Wearing | null, facts: Facts, now: Moment): LookAgain | null {
  const found = pointOf(verdict, item, planned, wearing, facts, now.today);
  return found === null ? null : { ...found, come: hasCome(found, now) };
}

type Point = Omit<LookAgain, "come">;

function pointOf(verdict: Verdict, item: PlanItem, planned: Planned, wearing: Wearing | null, facts: Facts, today: LocalDate): Point | null {
  const { again } = verdict;
  if (again === undefined) return null;
  const read = facts.odometer.points.findLast(({ on }) => on === verdict.on)?.ridden ?? riddenOnDay(facts.odometer, verdict.on)?.likely ?? null;
  const { column } = facts;
  if (wearing !== null && read !== null) {
    const { low, likely } = wearing.reaches;
    const least = ahead(read, stretchOf(LEAST[column], column));
    return { at: Math.min(likely, Math.max(low, least)) as Ridden, on: null, by: "wear" };
  }
  const half = again === "twice as often";
  const far = half ? halved(planned.distance) : again.far === null ? null : stretchOf(again.far[column], column);
  const days = half ? halved(planned.days) : again.days;
  const on = days === null ? null : addDays(verdict.on, days);
  const paused = on === null || item.parked !== "pauses" ? 0 : pausedDays(facts, verdict.on, on, today);
  const at = far === null || read === null ? null : ahead(read, far as Stretch);
  return at === null && on === null ? null : { at, on: on === null ? null : addDays(on, paused), by: half ? "plan" : "practice" };
}

const halved = (whole: number | null): number | null => (whole === null ? null : Math.floor(whole / 2));

const hasCome = ({ at: point, on }: Point, { ridden, today }: Moment): boolean =>
  (point !== null && ridden !== null && ridden >= point) || (on !== null && on <= today);
