// When a bike wants to be looked at again: the next day on which a status can change by itself.
// It says when to look, never what will be seen.

import { addDays } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { Due, Facts, Leg, Moment } from "./facts.ts";
import { dayNotice } from "./intervals.ts";
import { hoursUnreadOn } from "./other-legs.ts";
import { dueList } from "./status.ts";
import { wearEdges } from "./wear-leg.ts";

/** The first day after today on which some leg crosses an edge; null when nothing can change without a new fact. */
export const lookAgainAt = (facts: Facts, at: Moment): LocalDate | null => nextEdge(dueList(facts, at), facts, at);

/** The same, for a due list already worked out. */
export function nextEdge(dues: readonly Due[], facts: Facts, at: Moment): LocalDate | null {
  const parked = facts.layUps.some((layUp) => layUp.to === null && layUp.from <= at.today);
  let next: LocalDate | null = null;
  for (const due of dues) {
    const pauses = parked && facts.plan.items.some((item) => item.key === due.item && item.parked === "pauses");
    for (const leg of due.legs) {
      for (const edge of edges(leg, pauses, facts, at)) if (edge > at.today && (next === null || edge < next)) next = edge;
    }
  }
  return next;
}

function edges(leg: Leg, paused: boolean, facts: Facts, at: Moment): LocalDate[] {
  if (leg.by === "distance") {
    // A forecast date does not move until the odometer is read again; it can only bring "coming up".
    return leg.likely === null ? [] : [addDays(leg.likely.on, -30), leg.likely.on];
  }
  if (leg.by === "wear") return wearEdges(leg, at);
  // Hours that nobody reads stop telling.
  if (leg.by === "hours") return leg.toGo === null ? [] : [hoursUnreadOn(facts, at) ?? at.today];
  // While it stands laid up its day moves on with it.
  if (leg.by === "verdict") return leg.again?.on == null || paused ? [] : [leg.again.on];
  if (leg.by !== "date") return [];
  // While a leg pauses its date moves on day by day, and is not reached; one that was reached before stays, and an anniversary of the registration never moves.
  if (paused && leg.daysToGo > 0 && leg.anchor.from !== "first registration") return [];
  const notice = dayNotice(leg.legDays);
  return [addDays(leg.dueOn, -notice), leg.dueOn, addDays(leg.dueOn, leg.windowDays + 1)];
}
