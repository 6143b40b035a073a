// Who a word of a message may be: names of people told from the words that the reader knows.

import type { Vocabulary } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { indexOf } from "./defect-index.ts";
import type { Token } from "./scan.ts";

/** First words of phrases, made once a language: what a word of a message may begin. */
type Firsts = {
  readonly ofThings: ReadonlySet<string>;
  readonly ofBikes: ReadonlySet<string>;
  /** Of what something can be wrong with: "Felge hat eine Delle". */
  readonly ofFaults: ReadonlySet<string>;
  /** Who else may be at work, word by word. */
  readonly doers: ReadonlyMap<string, readonly (readonly string[])[]>;
};
const made = new WeakMap<Vocabulary, Firsts>();

export function firstsOf(vocabulary: Vocabulary): Firsts {
  const ready = made.get(vocabulary);
  if (ready !== undefined) return ready;
  const { places, kinds, items, others } = vocabulary;
  const ofThings = new Set(
    [places, kinds, items].flatMap((table) => Object.values(table).flatMap((list) => list.map((phrase) => phrase.split(" ", 1)[0] ?? ""))),
  );
  const doers = new Map<string, string[][]>();
  for (const words of others.doers.map((doer) => doer.split(" "))) doers.set(words[0] ?? "", [...(doers.get(words[0] ?? "") ?? []), words]);
  const faults = Object.values(vocabulary.defects.kinds).flatMap((rules) => rules.flatMap(({ things }) => things));
  const ofFaults = new Set(faults.map((thing) => thing.split(" ", 1)[0] ?? ""));
  const firsts = { ofThings, ofFaults, ofBikes: new Set([...ofThings, ...others.bikes]), doers };
  made.set(vocabulary, firsts);
  return firsts;
}

/** A capital at the beginning of a clause is a name only where the word is none that the reader knows. */
export function isNameWord(token: Token | undefined, vocabulary: Vocabulary): boolean {
  if (token?.is !== "word" || !/^\p{Lu}\p{Ll}+$/u.test(token.text)) return false;
  const lists = [vocabulary.dateWords, vocabulary.beside, vocabulary.around, vocabulary.articles, vocabulary.at, vocabulary.joins, vocabulary.others.own];
  const word = token.folded;
  const { ofThings, ofFaults } = firstsOf(vocabulary);
  return !ofThings.has(word) && !ofFaults.has(word) && under(vocabulary.workDone, word) === undefined && !lists.some((list) => among(list, word));
}

/** "Pete, 34 front 38 rear", "Hi Pete, 34 front", "34 front, Pete": who is spoken to, in a message of his own figures or of theirs. In German every noun has a capital. */
export function isAddressed(tokens: readonly Token[], at: number, vocabulary: Vocabulary): boolean {
  const token = tokens[at];
  if (vocabulary.language === "de" || !isNameWord(token, vocabulary) || token?.is !== "word") return false;
  const { openers } = vocabulary.others;
  if (
    token.text.length < 3 ||
    among(openers, token.folded) ||
    indexOf(vocabulary.defects).firsts.has(token.folded) ||
    under(vocabulary.slips, token.folded) !== undefined
  )
    return false;
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  const isMark = (other: Token | undefined, marks: string): boolean => other?.is === "break" && marks.includes(other.mark);
  const begins = before === undefined || isMark(before, "\n") || (at === 1 && before.is === "word" && among(vocabulary.others.greetings, before.folded));
  return begins ? isMark(next, ",:") : isMark(before, ",") && next === undefined;
}
