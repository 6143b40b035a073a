// The words by which a defect is found, as tables that most words of a message are quickly not in.

import type { DefectWords } from "../core/reading/defect-words.ts";
import type { Token } from "./scan.ts";

export type Index = {
  readonly things: Table;
  readonly signs: Table;
  readonly whole: Table;
  readonly stray: Table;
  /** Words that a thing, a sign or a whole phrase begins with. */
  readonly firsts: ReadonlySet<string>;
  /** Rules whose sign stands behind the thing only. */
  readonly signLast: ReadonlySet<string>;
  /** The rules of the bike itself. */
  readonly ofBike: readonly string[];
  /** A thing and then a sign or a sign and then a thing, with the words that may stand between. */
  readonly pairs: readonly (readonly [Table, Table, readonly string[]])[];
};

/** Phrases with their rules, and the words that any of them begins with: most words of a message begin none. */
export type Table = { readonly rules: ReadonlyMap<string, readonly string[]>; readonly firsts: ReadonlySet<string> };
const tableOf = (rules: ReadonlyMap<string, readonly string[]>): Table => ({
  rules,
  firsts: new Set([...rules.keys()].map((phrase) => phrase.split(" ")[0] ?? "")),
});

const indexes = new WeakMap<DefectWords, Index>();

/** Phrases with the rules they belong to ("soft brake/0"), made once a language. */
export function indexOf(words: DefectWords): Index {
  const ready = indexes.get(words);
  if (ready !== undefined) return ready;
  const [things, signs, whole, strays] = [new Map<string, string[]>(), new Map<string, string[]>(), new Map<string, string[]>(), new Map<string, string[]>()];
  const put = (into: Map<string, string[]>, phrase: string, rule: string): void => void into.set(phrase, [...(into.get(phrase) ?? []), rule]);
  for (const [kind, rules] of Object.entries(words.kinds))
    for (const [n, rule] of rules.entries()) {
      for (const thing of rule.things) put(things, thing, `${kind}/${n}`);
      for (const sign of rule.signs) put(signs, sign, `${kind}/${n}`);
    }
  for (const [kind, phrases] of Object.entries(words.whole)) for (const phrase of phrases) put(whole, phrase, kind);
  for (const sign of words.stray) put(strays, sign, "");
  const tables = { things: tableOf(things), signs: tableOf(signs), whole: tableOf(whole), stray: tableOf(strays) };
  const firsts = new Set([tables.things, tables.signs, tables.whole].flatMap((table) => [...table.firsts]));
  const signLast = new Set(
    Object.entries(words.kinds).flatMap(([kind, rules]) => rules.flatMap((rule, n) => (rule.signLast === true ? [`${kind}/${n}`] : []))),
  );
  const made: Index = {
    ...tables,
    signLast,
    firsts,
    ofBike: words.itself.flatMap((word) => things.get(word) ?? []),
    pairs: [
      [tables.things, tables.signs, words.between],
      [tables.signs, tables.things, words.joins],
    ],
  };
  indexes.set(words, made);
  return made;
}

const LONGEST_PHRASE = 6;
export const NO_RULES: ReadonlySet<string> = new Set();

/** "The light's out": what is short for "is" belongs to no thing's name. */
export const bare = (tokens: readonly Token[], at: number): string | null => {
  const token = tokens[at];
  if (token?.is !== "word") return null;
  return token.folded.endsWith("'s") ? token.folded.slice(0, -2) : token.folded;
};

/** The longest phrase at a token that belongs to one of some rules; a longer one of no rule wanted does not hide it. */
export function longest(
  tokens: readonly Token[],
  at: number,
  to: number,
  { rules: table, firsts }: Table,
  wanted: readonly string[] | null = null,
  unwanted: ReadonlySet<string> = NO_RULES,
): { readonly to: number; readonly rules: readonly string[] } | null {
  if (!firsts.has(bare(tokens, at) ?? "")) return null;
  let phrase = "";
  let best: { readonly to: number; readonly rules: readonly string[] } | null = null;
  for (let end = at; end <= Math.min(to, at + LONGEST_PHRASE - 1); end++) {
    const word = bare(tokens, end);
    if (word === null) break;
    phrase = phrase === "" ? word : `${phrase} ${word}`;
    const rules = table.get(phrase)?.filter((rule) => (wanted === null || wanted.includes(rule)) && !unwanted.has(rule)) ?? [];
    if (rules.length > 0) best = { to: end, rules };
  }
  return best;
}
