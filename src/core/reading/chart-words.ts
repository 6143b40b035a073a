// The words by which a pasted service chart is read, as data. Each language supplies its own.

import { ACTIONS, type WorkAction } from "../plan/plan.ts";

/** What a letter of a chart stands for: work of one kind, whatever the item of the plan does, or nothing that matters. */
export type Meaning = WorkAction | "as the item" | "nothing";
export const MEANINGS: readonly Meaning[] = [...ACTIONS, "as the item", "nothing"];

export type ChartWords = {
  /** What a letter can mean where the chart does not say, the commonest first. */
  readonly letters: Readonly<Record<string, readonly Meaning[]>>;
  /** Words of a legend: "renew". */
  readonly actions: Readonly<Record<string, WorkAction>>;
  /** Cells that say nothing. */
  readonly nothing: readonly string[];
  /** What says that a header counts in thousands: "x 1000 mi". */
  readonly thousands: readonly string[];
  /** What says that an interval is counted from the last time. */
  readonly fromLast: readonly string[];
  /** What may lead an interval: "or 12 months". */
  readonly or: readonly string[];
  /** What leads work that goes with other work: "with every second oil change". */
  readonly along: readonly string[];
};
