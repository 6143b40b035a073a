// What was found at an item of a job, in words: a fault, all well, or neither for certain. Beside an item a sign alone is enough: "cracked" is said of what was looked at.

import type { FoundWords } from "../core/reading/found-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { read } from "./read.ts";
import { foldWord } from "./scan.ts";

export type FoundSaid =
  /** `kind`: of the defect that the words name; null where the sign alone is said. */
  { readonly is: "fault"; readonly kind: string | null } | { readonly is: "fine" } | { readonly is: "unclear" };

/**
 * @param text what was typed as found
 * @param names what the item is called: the words are read as said of it
 * @param works the item is not only looked at: what it is done for is no fault once it is done
 */
export function foundSaid(text: string, names: readonly string[], works: boolean, known: Known): FoundSaid {
  const lists = [known.vocabulary, ...(known.also ?? []).map(({ vocabulary }) => vocabulary)].map(({ found }) => found);
  const signs = lists.map((list) => signsIn(text, list, works));
  const plain = names.filter((name) => !lists.some((list) => signsIn(name, list, false).wrong));
  if (!signs.some(({ wrong }) => wrong)) {
    if (signs.some(({ fine }) => fine)) return { is: "fine" };
    // Found loose and tightened, found slack and set: what the work is for.
    return works && lists.some((list) => signsIn(text, list, false).wrong) ? { is: "unclear" } : heardAs(text, plain, known);
  }
  const heard = heardAs(text, plain, known);
  return heard.is === "fault" ? heard : { is: "fault", kind: null };
}

/** The kind of defect that a message would say which names the thing and what was found; the words by themselves first. */
function heardAs(text: string, names: readonly string[], known: Known): FoundSaid {
  for (const said of [text, ...names.map((name) => `${name} ${text}`)])
    for (const intent of read(said, known).intents)
      if (intent.do === "note defect" && intent.kind !== null && !intent.gaps.some(({ need }) => need === "defect")) return { is: "fault", kind: intent.kind };
  return { is: "unclear" };
}

/** Words between a denial and what it denies: "no sign of a crack". */
const FAR = 4;

function signsIn(text: string, words: FoundWords, works: boolean): { readonly wrong: boolean; readonly fine: boolean } {
  const [wrongs, fines, nones] = [words.wrong.filter((sign) => !works || !words.setRight.includes(sign)), words.fine, words.none].map(phrases);
  const pieces = text.split(/[,;.:!]\s|[;!]|\bbut\b|\baber\b/u).map((piece) =>
    piece
      .split(/[\s,;.!]+/u)
      .map(foldWord)
      .filter((word) => word !== ""),
  );
  let [wrong, fine] = [false, false];
  for (const piece of pieces) {
    let denied = -FAR - 1;
    for (let at = 0; at < piece.length; ) {
      const [none, sign, well] = [longest(piece, at, nones ?? []), longest(piece, at, wrongs ?? []), longest(piece, at, fines ?? [])];
      if (sign > 0 && at - denied > FAR) wrong = true;
      // "Not good" and "no good" are no praise, and no sign of what it is.
      if (well > 0 && at - denied > FAR) fine = true;
      if (sign > 0 && at - denied <= FAR) fine = true;
      if (none > 0 && well === 0) denied = at + none - 1;
      at += Math.max(1, none, sign, well);
    }
  }
  return { wrong, fine };
}

const phrases = (list: readonly string[]): readonly (readonly string[])[] => list.map((phrase) => phrase.split(" ").map(foldWord));

/** Words of the longest phrase that begins here. */
const longest = (words: readonly string[], at: number, list: readonly (readonly string[])[]): number =>
  Math.max(0, ...list.filter((phrase) => phrase.every((word, n) => words[at + n] === word)).map(({ length }) => length));
