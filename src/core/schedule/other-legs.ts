// Legs that are neither road nor calendar: engine hours, completions of another item, a verdict on a measurement, a recheck after work.

import type { ItemKey } from "../ids.ts";
import { graver } from "../judgement/verdict.ts";
import type { PlanItem } from "../plan/plan.ts";
import { between } from "../quantity/distance.ts";
import type { Anchor, Facts, Leg, Moment, Verdict } from "./facts.ts";
import type { PlacedJob } from "./history.ts";

/** Engine hours since the last job; cannot tell while no hours are read. */
export function hoursLeg(item: PlanItem, jobs: readonly PlacedJob[], at: Moment): Leg | null {
  const interval = item.repeat.by === "interval" ? item.repeat.every.hours : null;
  if (interval === null) return null;
  const last = jobs.findLast((job) => job.job.hours !== null);
  const anchor = anchorOf(last);
  const dueAt = (last?.job.hours ?? 0) + interval;
  if (at.hours === null) return { by: "hours", state: "cannot tell", anchor, dueAt, toGo: null, interval };
  const toGo = dueAt - at.hours;
  const window = Math.floor(interval / 10);
  const state = toGo <= 0 ? (-toGo > (item.noLateWindow ? 0 : window) ? "overdue" : "due") : toGo <= window ? "soon" : "ahead";
  return { by: "hours", state, anchor, dueAt, toGo, interval };
}

/** "Every second oil change": completions of another item counted since this one was last done. */
export function timesLeg(item: PlanItem, jobs: readonly PlacedJob[], all: ReadonlyMap<ItemKey, readonly PlacedJob[]>): Leg | null {
  if (item.repeat.by !== "nth time") return null;
  const { of, nth } = item.repeat;
  const last = jobs.at(-1);
  const since = (all.get(of) ?? []).filter((job) => last === undefined || isAfter(job, last));
  return { by: "times", state: since.length >= nth ? "due" : "ahead", anchor: anchorOf(last), of, done: since.length, nth };
}

/** The latest verdict on each thing measured since the last job, and of these the gravest: at or beyond a limit is due now, near it is coming up. */
export function verdictLeg(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts): Leg | null {
  if (facts.verdicts.length === 0) return null;
  const last = jobs.at(-1);
  const latest = new Map<string, Verdict>();
  for (const each of facts.verdicts) {
    if (each.item !== item.key || (last !== undefined && last.job.on.from > each.on)) continue;
    const subject = `${each.measured?.kind ?? ""}|${each.measured?.place ?? ""}`;
    const before = latest.get(subject);
    if (before === undefined || each.on >= before.on) latest.set(subject, each);
  }
  const [first, ...rest] = latest.values();
  if (first === undefined) return null;
  const verdict = rest.reduce(graver, first);
  if (verdict.is === "at limit" || verdict.is === "beyond limit") return { by: "verdict", state: "due", verdict };
  return verdict.is === "near limit" ? { by: "verdict", state: "soon", verdict } : null;
}

/** A one-off look after work: coming up from the day of the work, since it is soon reached and asked for only once. */
export function recheckLegs(item: PlanItem, facts: Facts, at: Moment): Leg[] {
  return facts.rechecks
    .filter((recheck) => recheck.item === item.key)
    .map((recheck) => {
      const toGo = at.ridden === null ? null : between(at.ridden, recheck.dueAt);
      return { by: "recheck", state: toGo === null ? "cannot tell" : toGo <= 0 ? "due" : "soon", recheck, toGo };
    });
}

function anchorOf(last: PlacedJob | undefined): Anchor {
  return last === undefined
    ? { from: "new" }
    : { from: "job", job: last.job.id, on: last.job.on, ridden: last.ridden, about: last.about, countsFor: null, off: last.off };
}

const isAfter = (job: PlacedJob, than: PlacedJob): boolean =>
  job.job.on.from > than.job.on.from || (job.job.on.from === than.job.on.from && (job.ridden ?? 0) > (than.ridden ?? 0));
