// "How do I measure chain slack?": which kinds of reading it asks about.

import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { inItsLanguage } from "./language.ts";
import { phrasesIn } from "./phrases.ts";
import { ownWords, scan } from "./scan.ts";

const LONGEST = 120;

/** The kinds whose measuring is asked about, as they are named; empty where none is. */
export function howAsked(text: string, of: Known): readonly ReadingKind[] {
  if (text.length > LONGEST) return [];
  const own = ownWords(text).trim();
  const known = inItsLanguage(own, of);
  const said = own.toLowerCase().replace(/\s+/gu, " ");
  if (!known.vocabulary.measuring.howTo.some((words) => said.startsWith(words))) return [];
  return kindsNamed(own, known);
}

/** The kinds of reading that a few words name; none where a figure is among them: "how do I measure it? I got 30 mm" holds a reading. */
export function kindsNamed(words: string, { vocabulary, numbers }: Known): readonly ReadingKind[] {
  const tokens = scan(words, vocabulary.units, numbers);
  if (tokens.some((token) => token.is === "number")) return [];
  return [...new Set(phrasesIn(tokens, vocabulary).kind.flatMap(({ are }) => are))];
}
