// Marks: fixed points on the odometer at which items fall due.
// Early work before a trip counts, late work is not followed by an absurdly early mark. By the book, marks never move.

import type { Condition, PlanItem } from "../plan/plan.ts";
import { ahead, type DistanceUnit, type Ridden, type Stretch } from "../quantity/distance.ts";
import { distanceWindow, type Printed, printed, shortenedBy, wholeUnits } from "./intervals.ts";

/** The marks of an item: the ones listed, then one every `thenEvery` counted from `from`. `unit`: of the column that they are printed in. */
export type Marks = {
  readonly listed: readonly Ridden[];
  readonly thenEvery: Stretch | null;
  readonly from: Ridden;
  readonly unit: DistanceUnit;
  readonly converted: boolean;
};

const ZERO = 0 as Ridden;

/** The marks of an item in this bike's column; null when it has no distance leg. `interval` is what conditions of use have made of it. */
function marksOf(repeat: PlanItem["repeat"], interval: Printed | null, column: DistanceUnit): Marks | null {
  switch (repeat.by) {
    case "interval":
      return interval === null ? null : { listed: [], thenEvery: interval.stretch, from: ZERO, unit: interval.unit, converted: interval.converted };
    case "nth mark": {
      const base = printed(repeat.base, column);
      return base === null ? null : { listed: [], thenEvery: (base.stretch * repeat.nth) as Stretch, from: ZERO, unit: base.unit, converted: base.converted };
    }
    case "mark list": {
      const at = repeat.at.map((columns) => printed(columns, column)).filter((mark) => mark !== null);
      const then = repeat.thenEvery === null ? null : printed(repeat.thenEvery, column);
      const listed = at.map((mark) => mark.stretch as number as Ridden).sort((a, b) => a - b);
      const last = listed.at(-1) ?? ZERO;
      return {
        listed,
        thenEvery: then?.stretch ?? null,
        from: repeat.thenFrom === "zero" ? ZERO : last,
        unit: (then ?? at[0])?.unit ?? column,
        converted: at.some((mark) => mark.converted) || (then?.converted ?? false),
      };
    }
    case "nth time":
      return null;
  }
}

/** The marks of an item as the bike's use leaves them, and the condition that shortened their distance. */
export function marksUnder(
  item: PlanItem,
  conditions: readonly Condition[],
  column: DistanceUnit,
): { readonly marks: Marks | null; readonly shortened: Condition | null } {
  const every = item.repeat.by === "interval" ? shortenedBy(item, item.repeat.every, conditions, column) : null;
  return { marks: marksOf(item.repeat, every === null ? null : printed(every.interval, column), column), shortened: every?.distanceBy ?? null };
}

/** The first mark strictly beyond a distance; null when there is none. */
export function markAfter(marks: Marks, ridden: Ridden): Ridden | null {
  const listed = marks.listed.find((mark) => mark > ridden);
  if (listed !== undefined) return listed;
  if (marks.thenEvery === null) return null;
  const beyond = Math.max(ridden, marks.listed.at(-1) ?? ZERO);
  return (marks.from + (Math.floor((beyond - marks.from) / marks.thenEvery) + 1) * marks.thenEvery) as Ridden;
}

/** The last mark at or before a distance; null when the first lies ahead. */
export function markUpTo(marks: Marks, ridden: Ridden): Ridden | null {
  const last = marks.listed.at(-1) ?? ZERO;
  if (marks.thenEvery !== null && ridden > last) {
    const mark = (marks.from + Math.floor((ridden - marks.from) / marks.thenEvery) * marks.thenEvery) as Ridden;
    if (mark > last) return mark;
  }
  return (
    marks.listed.findLast((mark) => mark <= ridden) ??
    (marks.listed.length === 0 && marks.thenEvery !== null && ridden >= marks.thenEvery
      ? ((Math.floor(ridden / marks.thenEvery) * marks.thenEvery) as Ridden)
      : null)
  );
}

/** The interval at a point: the gap between the marks either side of it. Null beyond the last mark. */
export function gapAt(marks: Marks, ridden: Ridden): Stretch | null {
  const next = markAfter(marks, ridden);
  return next === null ? null : ((next - (markUpTo(marks, ridden) ?? ZERO)) as Stretch);
}

/** The next due point after a job, and the mark that the job counted for when it was near one. */
export type NextMark = { readonly dueAt: Ridden; readonly interval: Stretch; readonly countsFor: Ridden | null };

/**
 * After a job: the first mark that lies at least half an interval and at most interval + window ahead; if there is none, the job + interval;
 * and never beyond the second mark ahead, which is where a job done at the first would lead.
 * Null when the list has ended and nothing follows it.
 */
export function nextAfterJob(marks: Marks, job: Ridden): NextMark | null {
  // A job just short of a mark that it counts for belongs to the gap beyond that mark.
  const near = nearMark(marks, job);
  const interval = gapAt(marks, near ?? job) ?? gapAt(marks, job);
  if (interval === null) return null;
  const least = ahead(job, wholeUnits(interval / 2, marks.unit));
  const most = ahead(job, (interval + distanceWindow(interval, marks.unit)) as Stretch);
  let mark = markAfter(marks, job);
  while (mark !== null && mark < least) mark = markAfter(marks, mark);
  const dueAt = mark !== null && mark <= most ? mark : ahead(job, interval);
  // Where the gaps of a list shrink: done before a mark, it is not due later than if it had been done at that mark.
  const next = markAfter(marks, job);
  const latest = next === null ? null : markAfter(marks, next);
  const capped = latest !== null && latest < dueAt ? latest : dueAt;
  return { dueAt: capped, interval, countsFor: capped === mark ? near : null };
}

/** The mark within whose window a job lies, the nearer of two. */
function nearMark(marks: Marks, job: Ridden): Ridden | null {
  const next = markAfter(marks, job);
  const before = markUpTo(marks, job);
  const within = (mark: Ridden | null): mark is Ridden =>
    mark !== null && mark > 0 && Math.abs(mark - job) <= distanceWindow(gapAt(marks, mark) ?? gapAt(marks, job) ?? (0 as Stretch), marks.unit);
  const found = [before, next].filter(within);
  return found.sort((a, b) => Math.abs(a - job) - Math.abs(b - job))[0] ?? null;
}

/** By the book: a job inside the window before a mark, or after it, counts for every mark up to there; marks never move. */
export function nextByTheBook(marks: Marks, job: Ridden): NextMark | null {
  let satisfied = markUpTo(marks, job) ?? ZERO;
  const next = markAfter(marks, satisfied);
  if (next !== null && next - job <= distanceWindow((next - satisfied) as Stretch, marks.unit)) satisfied = next;
  const dueAt = markAfter(marks, satisfied);
  return dueAt === null ? null : { dueAt, interval: (dueAt - satisfied) as Stretch, countsFor: satisfied > 0 ? satisfied : null };
}

/** The first `n` marks of a trigger, as a member checks them before saving it. */
export function firstMarks(repeat: PlanItem["repeat"], column: DistanceUnit, n = 5): readonly Ridden[] {
  const interval = repeat.by === "interval" ? printed(repeat.every, column) : null;
  const marks = marksOf(repeat, interval, column);
  const found: Ridden[] = [];
  let at: Ridden | null = marks === null ? null : markAfter(marks, ZERO);
  while (marks !== null && at !== null && found.length < n) {
    found.push(at);
    at = markAfter(marks, at);
  }
  return found;
}
