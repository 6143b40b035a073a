// Inches in words: "an inch and a half", "three quarters of an inch". As a figure they are read like any other.

import type { Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import type { NumberToken, Token } from "./scan.ts";

type Phrase = { readonly words: readonly string[]; readonly value: number };
const made = new WeakMap<Vocabulary, { readonly phrases: readonly Phrase[]; readonly all: readonly string[] }>();

/** The phrases of a language, the longest first, and every word that one begins with. */
function phrasesOf(vocabulary: Vocabulary): { readonly phrases: readonly Phrase[]; readonly all: readonly string[] } {
  const ready = made.get(vocabulary);
  if (ready !== undefined) return ready;
  const phrases = Object.entries(vocabulary.measuring.inches)
    .map(([phrase, value]) => ({ words: phrase.split(" "), value }))
    .sort((a, b) => b.words.length - a.words.length);
  const one = { phrases, all: [...new Set(phrases.map(({ words }) => words[0] ?? ""))] };
  made.set(vocabulary, one);
  return one;
}

/** The tokens with every length so said as one figure in inches. */
export function withInches(text: string, tokens: readonly Token[], vocabulary: Vocabulary): readonly Token[] {
  // Few messages speak of inches in words.
  if (!tokens.some((token) => token.is === "word" && among(vocabulary.measuring.inchWords, token.folded))) return tokens;
  const { phrases, all } = phrasesOf(vocabulary);
  const found: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined) continue;
    const phrase = token.is === "word" && among(all, token.folded) ? phrases.find((each) => stands(tokens, at, each)) : undefined;
    const last = tokens[at + (phrase?.words.length ?? 1) - 1];
    if (phrase === undefined || last === undefined) found.push(token);
    else {
      found.push(figureOf(text, phrase.value, token.start, last.end));
      at += phrase.words.length - 1;
    }
  }
  return found;
}

const stands = (tokens: readonly Token[], at: number, { words }: Phrase): boolean =>
  words.every((word, n) => {
    const token = tokens[at + n];
    return token?.is === "word" && token.folded === word;
  });

const figureOf = (text: string, value: number, start: number, end: number): NumberToken => ({
  ...{
    is: "number",
    value,
    other: null,
    decimals: 2,
    fraction: null,
    units: ["in"],
    text: text.slice(start, end),
    unitText: "inch",
    start,
    end,
    numberEnd: end,
  },
});
