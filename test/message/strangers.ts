// Messages written by someone who had not seen the reader's code, on the bikes and the day of corpus.ts, in the shorthand of shorthand.ts.
// They are run once and reported apart. Whoever writes them fills both lists; the reader is not to be changed for them.

import type { Case } from "./corpus.ts";

/** Heron only. */
export const STRANGERS: readonly Case[] = [];
/** Talk, with nothing to log. */
export const STRANGERS_TALK: readonly string[] = [];
