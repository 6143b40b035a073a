// The words that stand around a question about units. Each language supplies its own; the question knows none by heart.

import type { UnitNames } from "./parse.ts";

/** The words people type in one language: names of units, and what stands around them. */
export type Typed = { readonly units: UnitNames; readonly asking: AskingWords };

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
  /** May stand anywhere and change nothing: "please", "about", "drill". */
  readonly idle: readonly string[];
  /** Asks for every digit: "exactly". */
  readonly exactly: readonly string[];
  /** Says that a difference of temperature is meant: "difference", "warmer". */
  readonly difference: readonly string[];
  /** Before or behind a figure that must not be passed: "max", "at most", "≤". */
  readonly atMost: readonly string[];
  /** Before or behind a figure that must be reached: "min", "at least". */
  readonly atLeast: readonly string[];
  /** Between a torque and the angle turned after it: "+", "plus". */
  readonly plus: readonly string[];
  /** Parts of a turn in words, and in figures: "quarter turn", "1/4 turn". */
  readonly turns: readonly (readonly [words: string, figure: string])[];
  readonly metric: readonly string[];
  readonly imperial: readonly string[];
  /** Words that name what is measured, where the unit does not: "torque", "pressure". */
  readonly torque: readonly string[];
  readonly pressure: readonly string[];
  /** Words of what is tightened and of what it is held with: "bolt", "spanner". They change no conversion. */
  readonly fastener: readonly string[];
  readonly spanner: readonly string[];
  /** "fits", "which": with a spanner named, no conversion is asked for. */
  readonly fit: readonly string[];
  readonly which: readonly string[];
};
