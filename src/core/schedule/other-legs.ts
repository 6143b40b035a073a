// Legs that are neither road nor calendar: engine hours, completions of another item, a verdict on a measurement, a recheck after work.

import { addDays } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import { graver } from "../judgement/verdict.ts";
import type { PlanItem } from "../plan/plan.ts";
import { between } from "../quantity/distance.ts";
import type { Place } from "../reading/kinds.ts";
import type { Anchor, Facts, Leg, Moment, Verdict, Wearing } from "./facts.ts";
import { type PlacedJob, parkedDays } from "./history.ts";
import { mends } from "./mending.ts";
import { lookAgain, type Planned } from "./near-limit.ts";

/** An hour meter that was not read for so many days of use, a season, tells nothing of today. */
const UNREAD_DAYS = 92;

/**
 * Engine hours since the last job; cannot tell while no hours are read, while the last reading is older than a season of use, or where nobody knows at how many hours
 * the last job was done. Once reached it stays so, however old the reading.
 */
export function hoursLeg(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts, at: Moment): Leg | null {
  const interval = item.repeat.by === "interval" ? item.repeat.every.hours : null;
  if (interval === null) return null;
  const last = jobs.at(-1);
  const anchor = anchorOf(last, facts);
  const from = last === undefined ? hoursWhenItCame(facts) : hoursAtJob(last, facts);
  const dueAt = (from ?? 0) + interval;
  if (at.hours === null || from === null) return { by: "hours", state: "cannot tell", anchor, dueAt, toGo: null, interval };
  const toGo = dueAt - at.hours;
  const window = Math.floor(interval / 10);
  if (toGo <= 0) return { by: "hours", state: -toGo > (item.noLateWindow ? 0 : window) ? "overdue" : "due", anchor, dueAt, toGo, interval };
  const unread = hoursUnreadOn(facts, at);
  if (unread !== null && unread <= at.today) return { by: "hours", state: "cannot tell", anchor, dueAt, toGo: null, interval };
  // Nothing is known of the last time: the interval may have passed before the bike came.
  if (anchor.from === "known from") return { by: "hours", state: "no record", anchor, dueAt, toGo, interval };
  return { by: "hours", state: toGo <= window ? "soon" : "ahead", anchor, dueAt, toGo, interval };
}

/** The day from which the last reading of the hours tells no more; days laid up do not count. Null when no day of it is known. */
export function hoursUnreadOn(facts: Facts, at: Moment): LocalDate | null {
  const read = facts.hours.at(-1);
  return read === undefined ? null : addDays(read.on, UNREAD_DAYS + 1 + parkedDays(facts, read.on, at.today));
}

/** Hours when a bike came to its rider: none when its history is whole, else the first that were read; null when none were. */
const hoursWhenItCame = (facts: Facts): number | null => (facts.knownFrom.wholeSinceNew ? 0 : (facts.hours[0]?.hours ?? null));

/** Hours at a job: as noted, else the last read until that day, which is the least it can have been. */
function hoursAtJob({ job }: PlacedJob, facts: Facts): number | null {
  return job.hours ?? facts.hours.findLast(({ on }) => on <= job.on.from)?.hours ?? (facts.knownFrom.wholeSinceNew ? 0 : null);
}

/** "Every second oil change": completions of another item counted since this one was last done. */
export function timesLeg(item: PlanItem, jobs: readonly PlacedJob[], all: ReadonlyMap<ItemKey, readonly PlacedJob[]>, facts: Facts): Leg | null {
  if (item.repeat.by !== "nth time") return null;
  const { of, nth } = item.repeat;
  const last = jobs.at(-1);
  const since = (all.get(of) ?? []).filter((job) => last === undefined || isAfter(job, last));
  const anchor = anchorOf(last, facts);
  const state = since.length >= nth ? "due" : anchor.from === "known from" ? "no record" : "ahead";
  return { by: "times", state, anchor, of, done: since.length, nth };
}

/** The latest verdict on each thing measured since the last job that can have mended it, and of these the gravest: at or beyond a limit is due now, near it is coming up, and due to be looked at again soon. */
export function verdictLeg(item: PlanItem, jobs: readonly PlacedJob[], planned: Planned, wearing: Wearing | null, facts: Facts, at: Moment): Leg | null {
  if (!facts.verdicts.some((each) => each.item === item.key)) return null;
  const action = new Map(facts.plan.items.map(({ key, action: does }) => [key, does]));
  const mending = jobs.filter(({ job }) => mends(job.outcome, action.get(job.item) ?? null));
  const latest = new Map<string, Verdict>();
  for (const each of facts.verdicts) {
    // What could not be told takes back nothing of what was found before it.
    if (each.is === "cannot tell") continue;
    // The front reservoir filled says nothing of the rear one.
    const last = mending.findLast(({ job }) => isOfEnd(job.end, each.measured?.place ?? null));
    if (each.item !== item.key || (last !== undefined && last.job.on.from > each.on)) continue;
    const subject = `${each.seen ?? each.measured?.kind ?? ""}|${each.measured?.place ?? ""}`;
    const before = latest.get(subject);
    if (before === undefined || each.on >= before.on) latest.set(subject, each);
  }
  const [first, ...rest] = latest.values();
  if (first === undefined) return null;
  const verdict = rest.reduce(graver, first);
  if (verdict.is === "at limit" || verdict.is === "beyond limit") return { by: "verdict", state: "due", verdict, again: null };
  if (verdict.is !== "near limit") return null;
  const again = lookAgain(verdict, item, planned, wearing, facts, at);
  // A new one is not due because it is time to measure the old one.
  return { by: "verdict", state: again?.come === true && item.action !== "replace" ? "due" : "soon", verdict, again };
}

/** Is what was done at one end, or at both where none is named, done at this place? */
export const isOfEnd = (end: "front" | "rear" | undefined, place: Place | null): boolean =>
  end === undefined || place === null || !(place === "front" || place === "rear") || place === end;

/** A one-off look after work: coming up from the day of the work, since it is soon reached and asked for only once. */
export function recheckLegs(item: PlanItem, facts: Facts, at: Moment): Leg[] {
  return facts.rechecks
    .filter((recheck) => recheck.item === item.key)
    .map((recheck) => {
      const toGo = at.ridden === null ? null : between(at.ridden, recheck.dueAt);
      return { by: "recheck", state: toGo === null ? "cannot tell" : toGo <= 0 ? "due" : "soon", recheck, toGo };
    });
}

function anchorOf(last: PlacedJob | undefined, { knownFrom }: Facts): Anchor {
  return last === undefined
    ? { from: knownFrom.wholeSinceNew ? "new" : "known from" }
    : { from: "job", job: last.job.id, on: last.job.on, ridden: last.ridden, about: last.about, countsFor: null, off: last.off };
}

const isAfter = (job: PlacedJob, than: PlacedJob): boolean =>
  job.job.on.from > than.job.on.from || (job.job.on.from === than.job.on.from && (job.ridden ?? 0) > (than.ridden ?? 0));
