// The words by which what was found at an item of a job is told from a note, as data. Each language supplies its own.

/** How work puts a thing right: "loose" by setting it, "dry" by cleaning and greasing, "worn out" by a new one, "low" by filling it up. */
export type PutsRight = "set" | "cleaned" | "renewed" | "filled";

export type FoundWords = {
  /** Signs that something is wrong, whatever it is at: "cracked", "has play". */
  readonly wrong: readonly string[];
  /** All is well: "fine", "no play". */
  readonly fine: readonly string[];
  /** What is well where nothing may move or leak, and a fault elsewhere: "tight", "dry". */
  readonly tight: readonly string[];
  /** What says nothing of how it is, and may stand beside what does: "both", "looks". */
  readonly beside: readonly string[];
  /** Before a sign these deny it, and before praise they turn it round: "no", "not". */
  readonly none: readonly string[];
  /** Before a sign these say that it was looked for: "checked for cracks". */
  readonly sought: readonly string[];
  /** What is a sign of nothing by itself, and well where it is denied: "no wear". */
  readonly blemish: readonly string[];
  /** What each kind of work is done for: found so, the work has put it right. */
  readonly setRight: Readonly<Record<PutsRight, readonly string[]>>;
  /** How it is left, by the work that was done: "greased". */
  readonly made: readonly string[];
};
