// The letters of a service chart in English: the ones we print, and what people's manuals may mean by theirs.

import type { WorkAction } from "../../core/plan/plan.ts";
import type { ChartWords } from "../../core/reading/chart-words.ts";

/** Our own legend, printed with every chart: one letter for each action. */
export const CHART_LETTERS = {
  inspect: "I",
  measure: "M",
  adjust: "A",
  clean: "C",
  lubricate: "L",
  "top up": "U",
  bleed: "B",
  test: "T",
  "check tightness": "K",
  replace: "R",
} as const satisfies Record<WorkAction, string>;

/** Heads of the first and the last column of a table. */
export const CHART_HEADS = { corner: (unit: string): string => `service at (${unit})`, last: "besides" } as const;
export const FROM_LAST_TIME = "from the last time";

/**
 * How a pasted chart is read. Where a letter is used for more than one kind of work, the commoner comes first, and the member is asked.
 * Common practice, from memory: service tables differ in their letters, and their own legend rules.
 */
export const ENGLISH_CHART: ChartWords = {
  letters: {
    I: ["inspect", "adjust", "clean"],
    R: ["replace"],
    A: ["adjust"],
    C: ["clean", "inspect"],
    L: ["lubricate"],
    T: ["check tightness", "test"],
    M: ["measure"],
    K: ["check tightness", "inspect"],
    B: ["bleed"],
    U: ["top up"],
    G: ["lubricate"],
    E: ["replace", "inspect"],
    X: ["as the item"],
    "•": ["as the item"],
    "●": ["as the item"],
    "○": ["as the item"],
    "*": ["as the item"],
    "✓": ["as the item"],
  },
  actions: {
    ...{ replace: "replace", renew: "replace", change: "replace", exchange: "replace" },
    ...{ inspect: "inspect", check: "inspect", examine: "inspect", look: "inspect" },
    ...{ measure: "measure", adjust: "adjust", set: "adjust", clean: "clean" },
    ...{ lubricate: "lubricate", lube: "lubricate", grease: "lubricate", oil: "lubricate" },
    ...{ "top up": "top up", fill: "top up", bleed: "bleed", test: "test" },
    ...{ tighten: "check tightness", torque: "check tightness", "check tightness": "check tightness", "check torque": "check tightness" },
  },
  nothing: ["", "-", "–", "—", "."],
  thousands: ["thousand", "thousands", "1000", "1,000", "1.000", "1 000"],
  fromLast: [FROM_LAST_TIME, "after the last time", "from last done", "since the last time", "from the last one"],
  or: ["or", "also", "at least"],
  along: ["with", "at"],
};
