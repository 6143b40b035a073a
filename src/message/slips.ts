// Slips of the finger in the trade's words, put right before a message is read: "chian slak". What was typed stays as typed.

import type { Known, Vocabulary } from "../core/reading/vocabulary.ts";
import { wordsOf } from "./language.ts";
import { foldWord, type Token } from "./scan.ts";

/** In shorter words two letters that change places too often make another word. */
const SHORTEST = 5;
const tables = new WeakMap<Vocabulary, ReadonlyMap<string, string>>();

/** The slips of a language: those that it lists, and two neighbouring letters of a long word for a reading, a place or an item that changed places. */
function slipsOf(vocabulary: Vocabulary): ReadonlyMap<string, string> {
  const ready = tables.get(vocabulary);
  if (ready !== undefined) return ready;
  const known = wordsOf(vocabulary);
  const { kinds, places, items } = vocabulary;
  const meant = new Map<string, string | null>();
  const words = new Set(
    [kinds, places, items].flatMap((table) => Object.values(table).flatMap((list) => list.flatMap((phrase) => foldWord(phrase).split(" ")))),
  );
  for (const word of words)
    for (let n = 0; word.length >= SHORTEST && n < word.length - 1; n++) {
      const turned = `${word.slice(0, n)}${word[n + 1]}${word[n]}${word.slice(n + 2)}`;
      // Two words that one slip could be are none.
      if (!known.has(turned)) meant.set(turned, meant.has(turned) && meant.get(turned) !== word ? null : word);
    }
  const table = new Map([...meant, ...Object.entries(vocabulary.slips)].filter((pair): pair is [string, string] => pair[1] !== null));
  tables.set(vocabulary, table);
  return table;
}

/** Tokens with their slips put right; a word of a bike's name is none. */
export function withoutSlips(tokens: readonly Token[], { vocabulary, bikes }: Known): readonly Token[] {
  const slips = slipsOf(vocabulary);
  const isSlip = (token: Token): boolean => token.is === "word" && slips.has(token.folded);
  if (!tokens.some(isSlip)) return tokens;
  const names = new Set(
    bikes.flatMap(({ nickname, model = null, byNames = [] }) => [nickname, model ?? "", ...byNames].flatMap((name) => foldWord(name).split(/\s+/u))),
  );
  return tokens.map((token) =>
    token.is === "word" && isSlip(token) && !names.has(token.folded) ? { ...token, folded: slips.get(token.folded) ?? token.folded } : token,
  );
}
