// How a tyre is built, typed beside it or in its place: "new rear tyre, radial", "fitted a new rear, crossply".

import type { DetailWords } from "../core/reading/detail-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Construction } from "../core/tyre/marking.ts";
import { among } from "./among.ts";
import { foldWord, type Token } from "./scan.ts";

type Words = DetailWords["constructions"];

/** A construction at letters `from` to `to` of a text (`to` not included), as typed. */
export type ConstructionSaid = { readonly is: Construction; readonly typed: string; readonly from: number; readonly to: number };

/** The constructions that a text names, in order, each by its longest name. */
export function constructionsIn(text: string, words: Words): readonly ConstructionSaid[] {
  const folded = ` ${text.toLowerCase().replace(/[^\p{L}\p{N}-]/gu, " ")} `;
  const all = (Object.entries(words) as [Construction, readonly string[]][]).flatMap(([is, names]) => names.map((name) => ({ is, name })));
  const found: ConstructionSaid[] = [];
  for (const { is, name } of all.toSorted((a, b) => b.name.length - a.name.length))
    for (let at = folded.indexOf(` ${name} `); at >= 0; at = folded.indexOf(` ${name} `, at + 1))
      if (!found.some(({ from, to }) => at < to && from < at + name.length))
        found.push({ is, typed: text.slice(at, at + name.length), from: at, to: at + name.length });
  return found.toSorted((a, b) => a.from - b.from);
}

const single = new WeakMap<Words, readonly string[]>();
/** Is a word one of those by which a construction is named? */
export function isOfConstruction(words: Words, word: string | null): boolean {
  let list = single.get(words);
  if (list === undefined) {
    list = [...new Set(Object.values(words).flatMap((names) => names.flatMap((name) => foldWord(name).split(" "))))];
    single.set(words, list);
  }
  return among(list, word);
}

/** "A new rear, crossply", "new crossply rear": a new end of the bike that has a construction is its tyre. Null where it is none. */
export function endOfTyre(tokens: readonly Token[], at: number, { vocabulary }: Known): "front" | "rear" | null {
  const word = (n: number): string | null => {
    const token = tokens[n];
    return token?.is === "word" ? token.folded : null;
  };
  const end = (["front", "rear"] as const).find((each) => among(vocabulary.places[each], word(at)));
  if (end === undefined) return null;
  const built = (n: number): boolean => isOfConstruction(vocabulary.details.constructions, word(n));
  const behind = tokens[at + 1]?.is === "break" ? at + 2 : at + 1;
  const isNew = [1, 2, 3].some((back) => among(vocabulary.renewed, word(at - back)) && [...Array(back - 1).keys()].every((n) => built(at - 1 - n)));
  return isNew && (built(at - 1) || built(behind)) ? end : null;
}
