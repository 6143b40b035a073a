// What was found at an item of a job, in words: a fault, all well, or neither for certain. Beside an item a sign alone is enough: "cracked" is said of what was looked at.
// Only words that say nothing but good are praise: one word more that is not known, and it is asked.

import type { WorkAction } from "../core/plan/plan.ts";
import type { FoundWords, PutsRight } from "../core/reading/found-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { read } from "./read.ts";
import { foldWord } from "./scan.ts";

export type FoundSaid =
  /** `kind`: of the defect that the words name; null where the sign alone is said. */
  | { readonly is: "fault"; readonly kind: string | null }
  | { readonly is: "fine" }
  /** What the work is done for: found so, it is right again by it. */
  | { readonly is: "put right" }
  | { readonly is: "unclear" };

/** What the words are said of. */
export type FoundAt = {
  /** What the item is called: the words are read as said of it. */
  readonly names: readonly string[];
  /** What is done at the item: what that is done for is no fault once it is done. */
  readonly action: WorkAction;
  /** Nothing of it may move or leak: "tight" and "dry" are praise there. */
  readonly tight: boolean;
  /** The words say how it was left. */
  readonly left?: boolean;
};

/** @param text what was typed as found, or as left */
export function foundSaid(text: string, at: FoundAt, known: Known): FoundSaid {
  const lists = [known.vocabulary, ...(known.also ?? []).map(({ vocabulary }) => vocabulary)].map(({ found }) => found);
  // One list of all languages: "nicht ok" is half of each.
  const words = together(lists);
  const plain = at.names.filter((name) => !heardIn(name, words, { ...at, action: "inspect" }).wrong);
  const heard = heardIn(text, words, at);
  if (heard.wrong) {
    const named = heardAs(text, plain, known);
    return named.is === "fault" ? named : { is: "fault", kind: null };
  }
  if (heard.fine) return { is: "fine" };
  // Found loose and tightened, found dirty and cleaned.
  if (heard.setRight) return { is: "put right" };
  return heard.hasSetRight ? { is: "unclear" } : heardAs(text, plain, known);
}

/** The kind of defect that a message would say which names the thing and what was found; the words by themselves first. */
function heardAs(text: string, names: readonly string[], known: Known): FoundSaid {
  for (const said of [text, ...names.map((name) => `${name} ${text}`)])
    for (const intent of read(said, known).intents)
      if (intent.do === "note defect" && intent.kind !== null && !intent.gaps.some(({ need }) => need === "defect")) return { is: "fault", kind: intent.kind };
  return { is: "unclear" };
}

/** What each action puts right by itself. */
const PUTS_RIGHT: Readonly<Record<WorkAction, readonly PutsRight[]>> = {
  inspect: [],
  measure: [],
  test: [],
  adjust: ["set"],
  "check tightness": ["set"],
  clean: ["cleaned"],
  lubricate: ["cleaned"],
  bleed: [],
  "top up": ["filled"],
  replace: ["set", "cleaned", "renewed"],
};

type Phrases = readonly (readonly string[])[];
type Table = Readonly<Record<Exclude<keyof FoundWords, "setRight"> | PutsRight, Phrases>>;

const TABLES = new WeakMap<FoundWords, Table>();

/** The lists of every language as one, in phrases of words. */
function together(lists: readonly FoundWords[]): Table {
  const tables = lists.map((list) => {
    const there = TABLES.get(list);
    if (there !== undefined) return there;
    const table = tableOf((key) => (key === "set" || key === "cleaned" || key === "renewed" || key === "filled" ? list.setRight[key] : list[key]).map(wordsOf));
    TABLES.set(list, table);
    return table;
  });
  return tableOf((key) => tables.flatMap((table) => table[key]));
}

const tableOf = (phrases: (key: keyof Table) => Phrases): Table => ({
  ...{ wrong: phrases("wrong"), fine: phrases("fine"), tight: phrases("tight"), beside: phrases("beside"), none: phrases("none"), sought: phrases("sought") },
  ...{ blemish: phrases("blemish"), made: phrases("made"), set: phrases("set"), cleaned: phrases("cleaned"), renewed: phrases("renewed") },
  filled: phrases("filled"),
});

const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/’/gu, "'")
    .split(/[\s,;.!&+/]+/u)
    .map(foldWord)
    .filter((word) => word !== "");

/** Words between a denial and what it denies: "no sign of a crack". */
const FAR = 4;

type Heard = { readonly wrong: boolean; readonly fine: boolean; readonly setRight: boolean; readonly hasSetRight: boolean };

function heardIn(text: string, table: Table, at: FoundAt): Heard {
  const known = at.tight ? table.tight : [];
  const mends = PUTS_RIGHT[at.action].flatMap((how) => table[how]);
  const good = [...table.fine, ...known, ...(at.left === true ? table.made : [])];
  const pieces = text
    .split(/[,;.:!]\s|[;!]|\bbut\b|\baber\b/u)
    .map(wordsOf)
    .filter((piece) => piece.length > 0);
  let wrong = false;
  let [praise, right, rest] = [0, 0, 0];
  for (const piece of pieces) {
    // Where a denial stands, what it may still turn round, and whether all since then was heard.
    let denied = { at: -FAR - 1, turns: false, whole: true };
    for (let n = 0; n < piece.length; ) {
      const [none, sought, sign, blemish, well, mend, beside] = [table.none, table.sought, table.wrong, table.blemish, good, mends, table.beside].map((list) =>
        longest(piece, n, list),
      ) as [number, number, number, number, number, number, number];
      const isDenied = n - denied.at <= FAR;
      const most = Math.max(none, sought, sign, blemish, well, mend, beside);
      if (most === 0) {
        rest++;
        denied = { ...denied, whole: false };
      } else if (well === most) {
        // "Not good" is no praise.
        if (isDenied && denied.turns) wrong = true;
        else praise++;
        // "Nothing loose": praise by itself, and a denial of what follows.
        if (none === most) denied = { at: n + none - 1, turns: true, whole: true };
      } else if (none === most || sought === most) denied = { at: n + most - 1, turns: none === most, whole: true };
      else if (Math.max(sign, mend, blemish) === most) {
        if (isDenied && denied.whole) {
          praise++;
          denied = { ...denied, turns: false };
        } else if (isDenied) rest++;
        else if (mend === most) right++;
        else if (sign === most) wrong = true;
        else rest++;
      }
      n += Math.max(1, most);
    }
  }
  const whole = rest === 0;
  return { wrong, fine: whole && praise > 0 && right === 0, setRight: whole && right > 0, hasSetRight: right > 0 };
}

/** Words of the longest phrase that begins here. */
const longest = (words: readonly string[], at: number, list: readonly (readonly string[])[]): number =>
  list.reduce((most, phrase) => (phrase.length > most && phrase.every((word, n) => words[at + n] === word) ? phrase.length : most), 0);
