// The distance leg of an item: where it falls due, and how it stands by the last reading.
// Only a reading makes an item due or overdue; a forecast makes it "coming up" at most.

import { addDays } from "../calendar/arithmetic.ts";
import type { Condition, PlanItem } from "../plan/plan.ts";
import { ahead, between, type DistanceUnit, type Ridden, type Stretch } from "../quantity/distance.ts";
import type { Anchor, Facts, Leg, LegState, Moment } from "./facts.ts";
import type { PlacedJob } from "./history.ts";
import { distanceWindow, printed, runningInWindow } from "./intervals.ts";
import { type Marks, markAfter, marksUnder, markUpTo, nextAfterJob, nextByTheBook } from "./marks.ts";

export type DistanceLeg = Extract<Leg, { by: "distance" }>;
/** The leg, and what its reason needs to know. */
export type WorkedOut = { readonly leg: DistanceLeg; readonly shortened: Condition | null; readonly runningIn: boolean; readonly passedAt: Ridden | null };

type Target = {
  readonly dueAt: Ridden;
  readonly interval: Stretch;
  readonly anchor: Anchor;
  readonly window: Stretch;
  readonly late: Stretch;
  readonly passedAt: Ridden | null;
  readonly noRecord: boolean;
};

/** The column that a leg is printed in. */
type Printing = Pick<Marks, "unit" | "converted">;

const ZERO = 0 as Ridden;

/** Null when the item has no distance leg, or its list of marks has ended. */
export function distanceLeg(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts, at: Moment): WorkedOut | null {
  const running = runningInTarget(item, jobs, facts);
  if (running !== null) return { leg: stand(running.target, running.printing, item, at), shortened: null, runningIn: true, passedAt: null };
  const { marks, shortened } = marksUnder(item, facts.conditions, facts.column);
  if (marks === null) return null;
  const last = jobs.at(-1);
  if (last !== undefined && last.ridden === null) return unplaced(item, marks, last, facts, at);
  const target = item.anchor === "marks" ? markTarget(item, marks, jobs, facts) : lastDoneTarget(item, marks, jobs, facts);
  return target === null ? null : { leg: stand(target, marks, item, at), shortened, runningIn: false, passedAt: target.passedAt };
}

/** Last done at an odometer that nobody knows: it cannot tell, until the latest point at which it can fall due is reached. */
function unplaced(item: PlanItem, marks: Marks, last: PlacedJob, facts: Facts, at: Moment): WorkedOut | null {
  const done = last.atMost ?? facts.knownFrom.ridden;
  const next =
    item.anchor === "marks" ? nextAfterJob(marks, done) : marks.thenEvery === null ? null : { dueAt: ahead(done, marks.thenEvery), interval: marks.thenEvery };
  if (next === null) return null;
  const leg = stand(targetOf(item, marks.unit, next.dueAt, next.interval, anchorOf(last, null)), marks, item, at);
  const reached = leg.state === "due" || leg.state === "overdue";
  return { leg: reached ? leg : { ...leg, state: "cannot tell", likely: null }, shortened: null, runningIn: false, passedAt: null };
}

/** Running-in, while it is still to be done: it has a window of its own, and a job inside it counts for nothing else. */
function runningInTarget(item: PlanItem, jobs: readonly PlacedJob[], facts: Facts): { target: Target; printing: Printing } | null {
  const first = item.first === null ? null : printed(item.first, facts.column);
  if (first === null) return null;
  const window = runningInWindow(first.unit);
  const dueAt = first.stretch as number as Ridden;
  // A bike that came to us beyond its running-in is not asked about it.
  if (!facts.knownFrom.wholeSinceNew && facts.knownFrom.ridden > dueAt + window) return null;
  if (jobs.some((job) => job.ridden !== null && job.ridden >= dueAt - window)) return null;
  return {
    target: {
      dueAt,
      interval: first.stretch,
      anchor: { from: "new" },
      window,
      late: item.noLateWindow ? (0 as Stretch) : window,
      passedAt: null,
      noRecord: false,
    },
    printing: first,
  };
}

function isRunningIn(item: PlanItem, ridden: Ridden, facts: Facts): boolean {
  const first = item.first === null ? null : printed(item.first, facts.column);
  return first !== null && Math.abs(ridden - first.stretch) <= runningInWindow(first.unit);
}

function markTarget(item: PlanItem, marks: Marks, jobs: readonly PlacedJob[], facts: Facts): Target | null {
  const last = jobs.findLast((job) => job.ridden !== null && !isRunningIn(item, job.ridden, facts));
  if (last?.ridden !== undefined && last.ridden !== null) {
    const next = facts.byTheBook === null ? nextAfterJob(marks, last.ridden) : nextByTheBook(marks, last.ridden);
    return next === null ? null : targetOf(item, marks.unit, next.dueAt, next.interval, anchorOf(last, next.countsFor));
  }
  const start = facts.knownFrom.wholeSinceNew ? ZERO : facts.knownFrom.ridden;
  const passedAt = start === ZERO ? null : (markUpTo(marks, start) ?? runningInPassed(item, facts));
  // After the running-in job the first regular mark is next: the job is what a rider remembers.
  const runningIn = jobs.at(-1);
  const from = Math.max(start, runningIn?.ridden ?? ZERO) as Ridden;
  const dueAt = markAfter(marks, from);
  if (dueAt === null) return null;
  const interval = between(markUpTo(marks, from) ?? ZERO, dueAt);
  if (runningIn !== undefined) return targetOf(item, marks.unit, dueAt, interval, anchorOf(runningIn, runningInOf(item, facts)));
  return targetOf(item, marks.unit, dueAt, interval, { from: start === ZERO ? "new" : "known from" }, passedAt, passedAt !== null);
}

/** Where running-in is done: what a job in its window counts for, and nothing else. */
function runningInOf(item: PlanItem, facts: Facts): Ridden | null {
  const first = item.first === null ? null : printed(item.first, facts.column);
  return first === null ? null : (first.stretch as number as Ridden);
}

/** The running-in mark, when it passed before the bike came to us and nothing is known of it. */
function runningInPassed(item: PlanItem, facts: Facts): Ridden | null {
  const first = runningInOf(item, facts);
  return first === null || first > facts.knownFrom.ridden ? null : first;
}

function lastDoneTarget(item: PlanItem, marks: Marks, jobs: readonly PlacedJob[], facts: Facts): Target | null {
  const interval = marks.thenEvery;
  if (interval === null) return null;
  const last = jobs.findLast((job) => job.ridden !== null);
  if (last?.ridden !== undefined && last.ridden !== null)
    return targetOf(item, marks.unit, ahead(last.ridden, (interval + last.off) as Stretch), interval, anchorOf(last, null));
  // Whole since new it is known from zero, or from what was ridden on other tyres.
  if (facts.knownFrom.wholeSinceNew) return targetOf(item, marks.unit, ahead(facts.knownFrom.ridden, interval), interval, { from: "new" });
  return targetOf(item, marks.unit, ahead(facts.knownFrom.ridden, interval), interval, { from: "known from" }, null, true);
}

function anchorOf(job: PlacedJob, countsFor: Ridden | null): Anchor {
  return {
    from: "job",
    job: job.job.id,
    on: job.job.on,
    ridden: job.ridden,
    about: job.about,
    countsFor: countsFor === job.ridden ? null : countsFor,
    off: job.off,
  };
}

function targetOf(
  item: PlanItem,
  unit: DistanceUnit,
  dueAt: Ridden,
  interval: Stretch,
  anchor: Anchor,
  passedAt: Ridden | null = null,
  noRecord = false,
): Target {
  const window = distanceWindow(interval, unit);
  return { dueAt, interval, anchor, window, late: item.noLateWindow ? (0 as Stretch) : window, passedAt, noRecord };
}

function stand(target: Target, { unit, converted }: Printing, item: PlanItem, at: Moment): DistanceLeg {
  const toGo = at.ridden === null ? null : between(at.ridden, target.dueAt);
  const likely = at.ridden === null || (toGo !== null && toGo <= 0) ? null : at.forecast.dateOf(target.dueAt);
  return {
    by: "distance",
    state: stateOf(target, toGo, likely, at),
    anchor: target.anchor,
    dueAt: target.dueAt,
    toGo,
    interval: target.interval,
    window: item.noLateWindow ? (0 as Stretch) : distanceWindow(target.interval, unit),
    likely,
    converted,
  };
}

function stateOf(target: Target, toGo: Stretch | null, likely: DistanceLeg["likely"], at: Moment): LegState {
  if (toGo === null) return "cannot tell";
  if (toGo <= 0) return -toGo > target.late ? "overdue" : "due";
  if (target.noRecord) return "no record";
  if (toGo <= target.window) return "soon";
  const near = toGo <= target.interval / 4 && likely !== null && likely.on <= addDays(at.today, 30);
  const passed = likely !== null && likely.on <= at.today;
  return near || passed ? "soon" : "ahead";
}
