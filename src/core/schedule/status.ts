// The state of every item of a bike: a pure function of its facts and the moment.
// Whichever leg comes first governs. No status is stored; the same facts give the same answer.

import { daysBetween } from "../calendar/arithmetic.ts";
import { isFitted } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import type { Condition, PlanItem } from "../plan/plan.ts";
import { stretchOf } from "../quantity/distance.ts";
import { dateLeg } from "./date-leg.ts";
import { distanceLeg } from "./distance-leg.ts";
import type { Due, Facts, Leg, LegState, Moment, Reason, Status } from "./facts.ts";
import { jobsByItem, type PlacedJob } from "./history.ts";
import { isHabit } from "./intervals.ts";
import { hoursLeg, recheckLegs, timesLeg, verdictLeg } from "./other-legs.ts";
import { ofTheSetFitted } from "./tyre-sets.ts";
import { wearLeg } from "./wear-leg.ts";

/** Every item that the bike's equipment brings, most urgent first; within one status the nearer first, then plan order. */
export function dueList(facts: Facts, at: Moment): readonly Due[] {
  const items = facts.plan.items.filter((item) => isFitted(item.fits, facts.equipment));
  const jobs = jobsByItem(facts, items);
  return items
    .map((item, n) => {
      const due = dueOf(item, jobs.get(item.key) ?? [], jobs, facts, at);
      return { due, away: nearness(due, at), n };
    })
    .sort((a, b) => URGENCY[b.due.status] - URGENCY[a.due.status] || a.away - b.away || a.n - b.n)
    .map(({ due }) => due);
}

/** Order of a list; "no record" stands outside the order of urgency and is read after what is coming up. */
const URGENCY: Record<Status, number> = { overdue: 4, due: 3, soon: 2, "no record": 1, good: 0 };
const STATE_RANK: Record<LegState, number> = { overdue: 5, due: 4, soon: 3, "no record": 2, ahead: 1, "cannot tell": 0 };
const STATUS_OF: Record<Exclude<LegState, "cannot tell">, Status> = { overdue: "overdue", due: "due", soon: "soon", "no record": "no record", ahead: "good" };

type Working = { readonly leg: Leg; readonly shortened: Condition | null; readonly runningIn: boolean };

function dueOf(item: PlanItem, done: readonly PlacedJob[], all: ReadonlyMap<ItemKey, readonly PlacedJob[]>, whole: Facts, at: Moment): Due {
  const { jobs, facts } = ofTheSetFitted(item.key, done, whole);
  const distance = distanceLeg(item, jobs, facts, at);
  const date = dateLeg(item, jobs, facts, at, distance?.runningIn ?? false);
  const working: Working[] = [];
  if (distance !== null) working.push({ leg: distance.leg, shortened: distance.shortened, runningIn: distance.runningIn });
  if (date !== null) working.push({ leg: date.leg, shortened: date.shortened, runningIn: false });
  const wear = wearLeg(item, jobs, facts, at);
  const planned = { distance: distance?.leg.interval ?? null, days: date?.leg.legDays ?? null };
  const verdict = verdictLeg(item, jobs, planned, wear?.wearing ?? null, facts, at);
  for (const leg of [hoursLeg(item, jobs, facts, at), timesLeg(item, jobs, all, facts), verdict, wear, ...recheckLegs(item, facts, at)]) {
    if (leg !== null) working.push({ leg, shortened: null, runningIn: false });
  }
  const legs = working.map(({ leg }) => leg);
  const habit = isHabit(item, facts.column);
  // What was measured and found wanting, or wears down to its limit soon, is no habit any more, however soon the habit itself comes round.
  const wanting = (by: Leg["by"]): number => legs.findIndex((leg) => leg.by === by && leg.state !== "ahead" && leg.state !== "cannot tell");
  const found = !habit ? -1 : wanting("verdict") >= 0 ? wanting("verdict") : wanting("wear");
  const governs = found >= 0 ? found : governing(legs, at);
  const chosen = governs === null ? undefined : working[governs];
  const status = chosen === undefined || chosen.leg.state === "cannot tell" ? "no record" : STATUS_OF[chosen.leg.state];
  return {
    item: item.key,
    status,
    habit: habit && found < 0,
    governs,
    legs,
    mark: distance !== null && item.anchor === "marks" ? distance.leg.dueAt : null,
    because: reasonOf(item, status, governs, chosen, distance?.passedAt ?? null, legs, facts, at),
  };
}

/** The leg in the worst state; of two alike, the one expected sooner. Null when none can be judged. */
function governing(legs: readonly Leg[], at: Moment): number | null {
  let best: number | null = null;
  legs.forEach((leg, n) => {
    if (leg.state === "cannot tell") return;
    const held = best === null ? undefined : legs[best];
    if (
      held === undefined ||
      STATE_RANK[leg.state] > STATE_RANK[held.state] ||
      (STATE_RANK[leg.state] === STATE_RANK[held.state] && daysAway(leg, at) < daysAway(held, at))
    )
      best = n;
  });
  return best;
}

/** Ridden in a year by most, by common practice; only where nothing says how far this bike is. */
const A_YEAR = stretchOf(3000, "mi");

/** Days until a leg is expected to be reached; negative when it is past. */
function daysAway(leg: Leg, at: Moment): number {
  switch (leg.by) {
    case "date":
      return leg.daysToGo;
    case "wear":
      // As of a distance, without the interval that such a part has none of: by the road a year may hold.
      if (leg.likely !== null) return daysBetween(at.today, leg.likely.on);
      return leg.toGo === null ? Number.POSITIVE_INFINITY : (leg.toGo / A_YEAR) * 365;
    case "distance":
      if (leg.likely !== null) return daysBetween(at.today, leg.likely.on);
      // Without a forecast, the share of the interval left stands for time at a common pace of one interval a year.
      return leg.toGo === null ? Number.POSITIVE_INFINITY : (leg.toGo / leg.interval) * 365;
    case "hours":
      return leg.toGo === null ? Number.POSITIVE_INFINITY : (leg.toGo / leg.interval) * 365;
    case "times":
      return leg.done >= leg.nth ? 0 : 365 * (leg.nth - leg.done);
    case "verdict":
      return 0;
    case "recheck":
      return leg.toGo === null ? Number.POSITIVE_INFINITY : 7;
  }
}

function nearness(due: Due, at: Moment): number {
  const leg = due.governs === null ? undefined : due.legs[due.governs];
  return leg === undefined ? Number.POSITIVE_INFINITY : daysAway(leg, at);
}

function reasonOf(
  item: PlanItem,
  status: Status,
  governs: number | null,
  chosen: Working | undefined,
  passedAt: Due["mark"],
  legs: readonly Leg[],
  facts: Facts,
  at: Moment,
): Reason {
  if (governs === null || chosen === undefined) {
    const unplaced = legs.findIndex((leg) => leg.by === "distance" && leg.anchor.from === "job" && leg.anchor.ridden === null && leg.toGo !== null);
    if (unplaced >= 0) return { why: "unplaced", leg: unplaced };
    const undated = legs.findIndex((leg) => leg.by === "date" && leg.anchor.from === "job");
    if (undated >= 0) return { why: "undated", leg: undated };
    return { why: "no reading", needs: legs.some((leg) => leg.by === "hours") && !legs.some((leg) => leg.by === "distance") ? "hours" : "odometer" };
  }
  if (status === "no record") {
    const distance = legs.find((leg) => leg.by === "distance");
    const date = legs.find((leg) => leg.by === "date");
    return {
      why: "never recorded",
      passedAt,
      nextMark: distance?.by === "distance" && distance.anchor.from === "known from" ? distance.dueAt : null,
      nextOn: date?.by === "date" && date.anchor.from === "known from" ? date.dueOn : null,
    };
  }
  const leg = chosen.leg;
  const askOdometer = (leg.by === "distance" || leg.by === "wear") && leg.state === "soon" && leg.likely !== null && leg.likely.on <= at.today;
  return {
    why: "leg",
    leg: governs,
    shortenedBy: chosen.shortened,
    runningIn: chosen.runningIn,
    byTheBook: facts.byTheBook !== null && item.anchor === "marks",
    askOdometer,
  };
}
