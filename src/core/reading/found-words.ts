// The words by which what was found at an item of a job is told from a note, as data. Each language supplies its own.

export type FoundWords = {
  /** Signs that something is wrong, whatever it is at: "cracked", "has play". */
  readonly wrong: readonly string[];
  /** All is well: "fine", "no play". */
  readonly fine: readonly string[];
  /** Before a sign these deny it. */
  readonly none: readonly string[];
  /** Of the signs, those that adjusting, tightening or renewing is done for: found so, the work has put it right. */
  readonly setRight: readonly string[];
};
