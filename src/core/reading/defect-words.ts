// The words by which a defect is found in a message, as data. Each language supplies its own.

/** A thing and what can be wrong with it: any of `things` beside any of `signs`, in either order, says it. */
export type DefectRule = { readonly things: readonly string[]; readonly signs: readonly string[] };

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
};
