// The leg of what wears: where its wear line reaches the limit, beside where the plan comes round.
// Of plan and wear the earlier one tells (`status.ts` takes the leg that comes first), and this file alone says which figure of the forecast counts:
// - the likely figure, as often too late as too early, is what is said, and what orders and places it; reached by the odometer it is due, to be measured;
// - the low end of the 80 % range says when it is coming up, so that nine times in ten it was told before the limit.
// It is never overdue: how far beyond its limit a part is, only measuring it tells. Where too few readings are on record there is no line, and the plan tells alone.

import { addDays } from "../calendar/arithmetic.ts";
import type { PlanItem } from "../plan/plan.ts";
import { between, type DistanceUnit, type Stretch, stretchOf } from "../quantity/distance.ts";
import { type DayRange, dayRange } from "../wear/days.ts";
import type { Facts, Leg, LegState, Moment, Wearing } from "./facts.ts";
import type { PlacedJob } from "./history.ts";
import { isLook } from "./mending.ts";

export type WearLeg = Extract<Leg, { by: "wear" }>;

/** So far, or so many days, before the low end of the range it is coming up: the widest windows that the plan's own legs have. */
const NOTICE = { mi: 500, km: 800 } as const satisfies Record<DistanceUnit, number>;
const NOTICE_DAYS = 30;

/** Of the parts that wear at an item the one that is first at its limit; null where no line tells, or a new one went on since it was last read. */
export function wearLeg(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts, at: Moment): WearLeg | null {
  const renewed = jobs.findLast(({ job }) => job.outcome === "replaced" || (job.outcome === "done" && !isMerelyLooked(job.item, facts)));
  const own = facts.wearing.filter((each) => each.item === item.key && (renewed === undefined || renewed.job.on.from < each.on));
  const [first, ...rest] = own;
  if (first === undefined) return null;
  const wearing = rest.reduce((a, b) => (b.reaches.likely < a.reaches.likely ? b : a), first);
  const toGo = at.ridden === null ? null : between(at.ridden, wearing.reaches.likely);
  const likely = toGo === null || toGo <= 0 ? null : wearDays(wearing.reaches, at);
  return { by: "wear", state: stateOf(wearing, toGo, likely, facts.column, at), wearing, dueAt: wearing.reaches.likely, toGo, likely };
}

const isMerelyLooked = (key: PlanItem["key"], { plan }: Facts): boolean => {
  const item = plan.items.find((each) => each.key === key);
  return item !== undefined && isLook(item.action);
};

/** The days on which the odometer is expected where the limit is reached, with their 80 % range; none of it lies before today but where all does. Null without a forecast. */
export function wearDays({ likely, low, high }: Wearing["reaches"], { today, forecast }: Pick<Moment, "today" | "forecast">): DayRange | null {
  const [on, first, last] = [forecast.dateOf(likely), forecast.dateOf(low), high === null ? null : forecast.dateOf(high)];
  if (on === null || first === null) return null;
  const range = dayRange(on, first.on, last?.on ?? null);
  return range.from < today && today <= range.on ? { ...range, from: today } : range;
}

function stateOf({ reaches }: Wearing, toGo: Stretch | null, likely: DayRange | null, column: DistanceUnit, at: Moment): LegState {
  if (toGo === null || at.ridden === null) return "cannot tell";
  if (toGo <= 0) return "due";
  if (between(at.ridden, reaches.low) <= stretchOf(NOTICE[column], column)) return "soon";
  const first = at.forecast.dateOf(reaches.low)?.on ?? null;
  return (first !== null && first <= addDays(at.today, NOTICE_DAYS)) || (likely !== null && likely.on <= at.today) ? "soon" : "ahead";
}

/** The days on which its state can change by itself: the same edges as above. */
export function wearEdges(leg: WearLeg, at: Moment) {
  const first = at.forecast.dateOf(leg.wearing.reaches.low)?.on ?? null;
  return leg.toGo === null || leg.toGo <= 0 ? [] : [...(first === null ? [] : [addDays(first, -NOTICE_DAYS)]), ...(leg.likely === null ? [] : [leg.likely.on])];
}
