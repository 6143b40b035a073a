// The name of a thing to tell: kind, subject, cycle, stage, repeat. The same thing has the same name, so it is told once.

import { addDays } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId } from "../core/ids.ts";
import type { Anchor, Due, Leg } from "../core/schedule/facts.ts";

/** Statuses that are told of; "no record" and "good" never are. */
export type Stage = "soon" | "due" | "overdue";

export const stageOf = (due: Due): Stage | null => (due.habit || due.status === "good" || due.status === "no record" ? null : due.status);

/**
 * The cycle names the points and the record they are counted from: undoing a job returns to the old key, which is told already, and moving a mark makes a new one.
 * @param again the day until which it was last put off; it is told anew from then
 */
export function noticeKey(bike: BikeId, due: Due, stage: Stage, again: LocalDate | null): string {
  return `item:${bike}/${due.item}:${cycleOf(due)}:${stage}:${again ?? "0"}`;
}

const cycleOf = (due: Due): string =>
  due.legs
    .filter(({ by, state }) => by !== "wear" || state === "soon" || state === "due")
    .map(pointOf)
    .join(",");

function pointOf(leg: Leg): string {
  switch (leg.by) {
    case "distance":
      return `${pointFrom(leg)}@${anchorOf(leg.anchor)}`;
    case "date":
      // A lay-up moves the day on while it lasts; that is the same cycle.
      return `${addDays(leg.dueOn, -leg.pausedDays)}@${anchorOf(leg.anchor)}`;
    case "hours":
      return `${leg.dueAt}h@${anchorOf(leg.anchor)}`;
    case "times":
      return `x${leg.nth}@${anchorOf(leg.anchor)}`;
    case "verdict":
      return `v${leg.verdict.reading}`;
    case "wear":
      // Each reading moves the line a little: one life of the part is one cycle.
      return `w${leg.wearing.since}`;
    case "recheck":
      return `r${leg.recheck.id}`;
  }
}

/** Counted from a job at a figure that nobody noted, the point is an estimate that readings go on to move a little: that is the same cycle. */
const pointFrom = ({ anchor, dueAt, interval }: Extract<Leg, { by: "distance" }>): string =>
  anchor.from === "job" && (anchor.about || anchor.ridden === null) ? `~${interval}` : `${dueAt}`;

const anchorOf = (anchor: Anchor): string => (anchor.from === "job" ? anchor.job : anchor.from.replace(" ", "-"));
