// The words by which a defect is found in a message, as data. Each language supplies its own.

import type { ReadingKind } from "./kinds.ts";

/** A thing and what can be wrong with it: any of `things` beside any of `signs`, in either order, says it. */
export type DefectRule = {
  readonly things: readonly string[];
  readonly signs: readonly string[];
  /** Said of the thing before it only: "brakes feel odd" is, "odd brake pads" is not. */
  readonly signLast?: true;
};

/** What a later word makes of a defect: a nail that was plugged is a plugged tyre. */
export type DefectTurn = { readonly from: readonly string[]; readonly to: string; readonly said: readonly string[] };

export type DefectWords = {
  /** By kind of defect, as trade/defects.ts names them. */
  readonly kinds: Readonly<Record<string, readonly DefectRule[]>>;
  /** Phrases that say a kind by themselves: "oil leak", "flat tyre". */
  readonly whole: Readonly<Record<string, readonly string[]>>;
  /** Signs that something unknown is wrong, on a bike that is named: "broken". The member is asked. */
  readonly stray: readonly string[];
  /** What may stand between a thing and its sign: "is", "feels a bit". */
  readonly between: readonly string[];
  /** Between them, these say that it was so once, so the member is asked: "was". */
  readonly past: readonly string[];
  /** What may stand between a sign and its thing: "leaking from the". */
  readonly joins: readonly string[];
  /** What may stand before a thing without making it another: "left". */
  readonly before: readonly string[];
  /** Before a defect these deny it: "no oil leak". */
  readonly none: readonly string[];
  /** Whose it is when it is not the speaker's: "your". */
  readonly others: readonly string[];
  /** The bike itself among the things, as its name is too: "it". */
  readonly itself: readonly string[];
  /** Behind a defect these make it something else: "flat battery charger". */
  readonly notBefore: readonly string[];
  /** Verbs that mend: "fixed". */
  readonly mended: readonly string[];
  /** Verbs that mend some kinds only: bleeding stops no leak. */
  readonly mendsOnly: Readonly<Record<string, readonly string[]>>;
  /** With one of these a verb that mends says that it did not help: "spongy after I bled it". */
  readonly inVain: readonly string[];
  /** What is said of a defect behind it and makes another of it: "plugged it". */
  readonly turns: readonly DefectTurn[];
  /** Kinds that have one for each end, where the end is said beside them: "pads worn at the rear". */
  /** Kinds of defect that a sign beside a reading of a kind is of, where nothing else is named; `not`: signs that only say how the value is, such as a loose chain; `where`: those that beside a figure say where it was read; `alone`: signs that say so beside what the dial shows too. */
  readonly beside: {
    readonly kinds: Readonly<Partial<Record<ReadingKind, readonly string[]>>>;
    readonly not: readonly string[];
    readonly where: readonly string[];
    readonly alone: readonly string[];
    /** What belongs to the thing that was read, under a name that elsewhere means something else: the valve of a tyre. */
    readonly parts: Readonly<Partial<Record<ReadingKind, readonly string[]>>>;
  };
  /** Kinds that are not noted by words where the clause has a reading of one of these: the figure is judged instead. */
  readonly unlessRead: Readonly<Record<string, readonly ReadingKind[]>>;
  /** What linings are called, and the kinds of defect that new ones mend only where they were found on the linings: no pad frees a seized piston. */
  readonly linings: { readonly things: readonly string[]; readonly ofThem: readonly string[] };
  readonly byEnd: Readonly<Record<string, { readonly front: string; readonly rear: string; readonly sidecar: string }>>;
};
