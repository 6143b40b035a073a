// The words that stand around a question about units. Each language supplies its own; the question knows none by heart.

/** Words by what they do in a question: single words in lower case, and signs. */
export type AskingWords = {
  /** Before the unit wanted: "in", "to", "into". */
  readonly into: readonly string[];
  /** Before anything: "what's", "convert", "how", "many". */
  readonly opening: readonly string[];
  /** Between the unit wanted and the figure: "is", "are", "for". */
  readonly equals: readonly string[];
  /** "between 60 and 80". */
  readonly between: readonly [string, string];
  /** Between two units wanted: "and", "or". */
  readonly joins: readonly string[];
  /** May stand anywhere and change nothing: "please", "about", "spanner". */
  readonly idle: readonly string[];
  /** Asks for every digit: "exactly". */
  readonly exactly: readonly string[];
  /** Says that a difference of temperature is meant: "difference", "warmer". */
  readonly difference: readonly string[];
  readonly metric: readonly string[];
  readonly imperial: readonly string[];
  /** Words that name what is measured, where the unit does not: "torque", "pressure". */
  readonly torque: readonly string[];
  readonly pressure: readonly string[];
};
