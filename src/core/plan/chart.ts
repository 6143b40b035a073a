// The service chart of a plan: which item falls due at which service, as a manual would print it.
// The marks are those of schedule/marks; nothing of their rules is repeated here.

import type { ItemKey } from "../ids.ts";
import { type DistanceUnit, figureIn, type Ridden, riddenOf } from "../quantity/distance.ts";
import { isHabit, printed, shortenedBy } from "../schedule/intervals.ts";
import { type Marks, markAfter, marksUnder, markUpTo } from "../schedule/marks.ts";
import type { Condition, PlanItem, Repeat, WorkAction } from "./plan.ts";

/** What stands beside the marks of a line, or in place of marks: a calendar leg, or how often counted from the last time. */
export type Beside = { readonly anchor: PlanItem["anchor"]; readonly repeat: Repeat };

/** One item of a chart. `at`: the services at which it falls due, whole figures in the chart's unit; empty where it goes by no service shown. */
export type ChartRow = {
  readonly item: ItemKey;
  readonly action: WorkAction;
  readonly at: readonly number[];
  readonly beside: Beside | null;
  readonly habit: boolean;
  /** Its marks come from the other printed column. */
  readonly converted: boolean;
};

/** The table services × items. `marks`: the services, rising; `cut`: there are more of them than fit before they come round. */
export type Chart = {
  readonly unit: DistanceUnit;
  readonly marks: readonly number[];
  readonly rows: readonly ChartRow[];
  /** Items that fall due at no service shown. */
  readonly below: readonly ChartRow[];
  readonly cut: boolean;
};

/** How far a chart goes by itself, and how many services it shows. */
const FARTHEST = { mi: 48_000, km: 72_000 } as const;
const USUAL_SERVICES = 12;
export const MOST_SERVICES = 24;

/**
 * The chart of plan items as they stand for one bike.
 * @param conditions uses of the bike, which shorten intervals @param end the last distance shown, in whole units of the column; null: one whole cycle, until every service has come round, within reason
 */
export function chartOf(items: readonly PlanItem[], column: DistanceUnit, conditions: readonly Condition[], end: number | null): Chart {
  const lines = items.map((item) => lineOf(item, column, conditions));
  const upTo = (limit: number) => {
    const placed = lines.map((line) => ({ ...line, at: marksUpTo(line, limit, column) }));
    return { limit, placed, all: [...new Set(placed.flatMap(({ at }) => at))].sort((a, b) => a - b) };
  };
  const cycle = end ?? wholeCycle(lines, column);
  const whole = end !== null || cycle <= FARTHEST[column] ? upTo(cycle) : null;
  // A cycle too long to show is begun, so that every line is in it.
  const begun = (): ReturnType<typeof upTo> => upTo(Math.min(FARTHEST[column], Math.max(0, ...lines.map((line) => cycleOf(line, column)))));
  const { limit, placed, all } = whole !== null && (end !== null || whole.all.length <= USUAL_SERVICES) ? whole : begun();
  const marks = all.slice(0, end === null ? USUAL_SERVICES : MOST_SERVICES);
  const last = marks.at(-1) ?? 0;
  const rows = placed.map((line) =>
    rowOf(
      line,
      line.at.filter((mark) => mark <= last),
    ),
  );
  return {
    unit: column,
    marks,
    rows: rows.filter((row) => row.at.length > 0),
    below: rows.filter((row) => row.at.length === 0),
    cut: all.length > marks.length || cycle > limit,
  };
}

/** The column of a running-in service: the first, where it lies less than half as far as the second. Null when there is none. */
export function runningInOf(marks: readonly number[]): number | null {
  const [first, second] = marks;
  return first !== undefined && second !== undefined && first * 2 < second ? first : null;
}

/** The service printed at a figure or, where there is none, the nearest before it and the nearest after it; however far the bike has gone. */
export function servicesAround(items: readonly PlanItem[], column: DistanceUnit, conditions: readonly Condition[], figure: number): readonly number[] {
  const all = items.flatMap((item) => marksAround(lineOf(item, column, conditions), column, figure));
  if (all.includes(figure)) return [figure];
  const [below, above] = [all.filter((mark) => mark < figure), all.filter((mark) => mark > figure)];
  return [...(below.length === 0 ? [] : [Math.max(...below)]), ...(above.length === 0 ? [] : [Math.min(...above)])];
}

/** The items that the plan prints at a service. */
export const printedAt = (items: readonly PlanItem[], column: DistanceUnit, conditions: readonly Condition[], figure: number): readonly ItemKey[] =>
  items.filter((item) => marksAround(lineOf(item, column, conditions), column, figure).includes(figure)).map(({ key }) => key);

/** The running-in service of a line, and its regular ones either side of a figure or at it; in whole units. */
function marksAround({ marks, first }: Line, column: DistanceUnit, figure: number): readonly number[] {
  const here = riddenOf(figure + 0.5, column);
  const found = [first, marks === null ? null : markUpTo(marks, here), marks === null ? null : markAfter(marks, here)];
  return found.flatMap((mark) => (mark === null ? [] : [Math.round(figureIn(mark, column))]));
}

type Line = {
  readonly item: PlanItem;
  /** Null where it goes by no marks. */
  readonly marks: Marks | null;
  readonly first: Ridden | null;
  readonly repeat: Repeat;
  readonly habit: boolean;
  readonly converted: boolean;
};

function lineOf(item: PlanItem, column: DistanceUnit, conditions: readonly Condition[]): Line {
  const habit = isHabit(item, column);
  const repeat: Repeat =
    item.repeat.by === "interval" ? { by: "interval", every: shortenedBy(item, item.repeat.every, conditions, column).interval } : item.repeat;
  const marks = habit || item.anchor === "last done" ? null : marksUnder(item, conditions, column).marks;
  const running = habit || item.first === null ? null : printed(item.first, column);
  const first = running === null ? null : (running.stretch as number as Ridden);
  return { item, marks, first, repeat, habit, converted: marks?.converted === true || running?.converted === true };
}

/** How far an item's regular marks go before they come round again, in whole units. */
function cycleOf({ marks }: Line, column: DistanceUnit): number {
  if (marks === null) return 0;
  return Math.round(figureIn((marks.listed.at(-1) ?? marks.thenEvery ?? 0) as Ridden, column));
}

/** After how far all services have come round: the least that is a whole number of every interval, and no less than any list of marks. */
function wholeCycle(lines: readonly Line[], column: DistanceUnit): number {
  const cycles = lines.map((line) => ({ every: cycleOf(line, column), isListed: (line.marks?.listed.length ?? 0) > 0 })).filter(({ every }) => every > 0);
  const round = cycles.filter(({ isListed }) => !isListed).reduce((all, { every }) => (all / common(all, every)) * every, 1);
  const farthest = Math.max(0, ...cycles.map(({ every }) => every));
  return Math.ceil(farthest / round) * round;
}
/** The greatest whole number that divides both. */
const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

function marksUpTo({ marks, first }: Line, limit: number, column: DistanceUnit): readonly number[] {
  // Half a unit more, since a converted mark is printed rounded.
  const end = riddenOf(limit + 0.5, column);
  const found: Ridden[] = first !== null && first < end ? [first] : [];
  for (let at = marks === null ? null : markAfter(marks, 0 as Ridden); marks !== null && at !== null && at < end; at = markAfter(marks, at)) found.push(at);
  return [...new Set(found.map((mark) => Math.round(figureIn(mark, column))))].sort((a, b) => a - b);
}

function rowOf({ item, marks, repeat, habit, converted }: Line, at: readonly number[]): ChartRow {
  return {
    item: item.key,
    action: item.action,
    at,
    beside: marks !== null && at.length > 0 ? besideMarks(repeat) : { anchor: item.anchor, repeat },
    habit,
    converted,
  };
}

/** The calendar leg that stands beside marks. */
function besideMarks(repeat: Repeat): Beside | null {
  const months = repeat.by === "interval" ? repeat.every.months : repeat.by === "mark list" ? (repeat.thenEvery?.months ?? null) : repeat.months;
  const hours = repeat.by === "interval" ? repeat.every.hours : null;
  return months === null && hours === null ? null : { anchor: "marks", repeat: { by: "interval", every: { miles: null, km: null, months, hours } } };
}
