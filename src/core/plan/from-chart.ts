// From a printed chart back to triggers: the services at which a line has a letter say how it comes round again.
// What a chart cannot say, what follows its last service, is answered as data, to be said before anything is saved.

import { isShort } from "../schedule/intervals.ts";
import { runningInOf } from "./chart.ts";
import type { Columns, Interval, PlanItem, Repeat } from "./plan.ts";

/** What a line of a chart prints: services by their place in the header, and what stands beside them. */
export type PrintedLine = {
  readonly at: readonly number[];
  readonly beside: PrintedBeside | null;
  /** Services at which the same line has the part replaced: that does its lesser work too, and no manual prints both. */
  readonly replacedAt?: readonly number[];
};
/** An interval in words, and whether it is counted from the last time. */
export type PrintedBeside = {
  readonly every: Interval;
  readonly fromLast: boolean;
  /** Done with every so manieth time of other work, named as printed; `every` then holds what limits it in time. */
  readonly along?: { readonly nth: number; readonly of: string };
};

/** A trigger as a chart gives it. `first` undefined: the chart has no running-in service and says nothing of one. */
export type ChartTrigger = {
  readonly anchor: PlanItem["anchor"] | null;
  readonly first: Interval | null | undefined;
  readonly repeat: Repeat;
  /**
   * What comes after the chart's last service: the same again, as nobody would doubt, or would not once the replacements of the same line are counted in;
   * the last gap again, which is taken to be so; or nothing.
   */
  readonly after: "same again" | "same again, replacements counted" | "last gap again" | "nothing";
};

/** Why a line gives no trigger. */
export type NoTrigger = "nothing printed" | "distance twice";

/**
 * The trigger of one line.
 * @param marks the services of the header in order, in the columns printed @param months of the item's present calendar leg, kept where the chart has no place for one
 */
export function triggerOf(marks: readonly Columns[], line: PrintedLine, months: number | null): ChartTrigger | NoTrigger {
  const figures = marks.map((mark) => mark.miles ?? mark.km ?? 0);
  const runningIn = runningInOf(figures) === null ? null : 0;
  const regular = line.at.filter((at) => at !== runningIn);
  const first = runningIn === null ? undefined : line.at.includes(runningIn) ? interval(marks[runningIn]) : null;
  const legs = line.beside?.every ?? null;
  const byDistance = legs !== null && (legs.miles !== null || legs.km !== null);
  if (byDistance || (line.at.every((at) => at === runningIn) && legs !== null)) {
    // The grid and the words beside it cannot both say how far.
    if (regular.length > 0) return "distance twice";
    return { anchor: line.beside?.fromLast === true ? "last done" : null, first, repeat: { by: "interval", every: legs }, after: "same again" };
  }
  if (line.at.length === 0) return "nothing printed";
  const calendar = legs === null ? months : legs.months;
  // Done at the running-in service and never again: a list of one.
  if (regular.length === 0) return { anchor: "marks", first: null, repeat: listOf(marks, line.at, null, calendar), after: "nothing" };
  const renewed = (line.replacedAt ?? []).filter((at) => at !== runningIn);
  return { anchor: "marks", first, ...repeatOf(marks, regular, renewed, calendar) };
}

function repeatOf(
  marks: readonly Columns[],
  at: readonly number[],
  replacedAt: readonly number[],
  months: number | null,
): Pick<ChartTrigger, "repeat" | "after"> {
  const withRenewed = [...new Set([...at, ...replacedAt])].sort((a, b) => a - b);
  for (const each of [at, withRenewed]) {
    const step = marks[each[0] ?? 0] ?? NONE;
    // One short service and no more is a running-in service, not one that comes round every few hundred miles.
    if (isShort(step) || !isMultiples(marks, each, step)) continue;
    const after = each.length > at.length ? "same again, replacements counted" : "same again";
    return { repeat: { by: "interval", every: { ...step, months, hours: null } }, after };
  }
  const [before, last] = at.slice(-2).map((n) => marks[n] ?? NONE);
  const gap = before === undefined || last === undefined ? null : less(last, before);
  const goesOn = gap !== null && last !== undefined && isBeyond(plus(last, gap), marks.at(-1) ?? NONE);
  return { repeat: listOf(marks, at, goesOn ? gap : null, months), after: goesOn ? "last gap again" : "nothing" };
}

/** Are the services all the multiples of a step up to the end of the chart, in each printed column? */
function isMultiples(marks: readonly Columns[], at: readonly number[], step: Columns): boolean {
  const end = marks.at(-1) ?? NONE;
  return (["miles", "km"] as const).every((column) => {
    const by = step[column];
    if (by === null) return true;
    const all = Math.floor((end[column] ?? 0) / by);
    return at.length === all && at.every((n, k) => marks[n]?.[column] === (k + 1) * by);
  });
}

const NONE: Columns = { miles: null, km: null };
const each = (a: Columns, b: Columns, work: (a: number, b: number) => number): Columns => ({
  miles: a.miles === null || b.miles === null ? null : work(a.miles, b.miles),
  km: a.km === null || b.km === null ? null : work(a.km, b.km),
});
const less = (a: Columns, b: Columns): Columns => each(a, b, (x, y) => x - y);
const plus = (a: Columns, b: Columns): Columns => each(a, b, (x, y) => x + y);
const isBeyond = (a: Columns, b: Columns): boolean => (a.miles ?? 1) > (b.miles ?? 0) && (a.km ?? 1) > (b.km ?? 0);
const interval = (columns: Columns | undefined): Interval => ({ ...(columns ?? NONE), months: null, hours: null });

function listOf(marks: readonly Columns[], at: readonly number[], gap: Columns | null, months: number | null): Repeat {
  const thenEvery = gap === null && months === null ? null : { ...(gap ?? NONE), months, hours: null };
  return { by: "mark list", at: at.map((n) => marks[n] ?? NONE), thenEvery, thenFrom: "last mark" };
}
