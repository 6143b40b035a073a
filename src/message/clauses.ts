// The message in clauses and parts: where one thought ends, what is a question, and what is planned or denied rather than done.

import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { indexOf, longest } from "./defect-index.ts";
import { cutAtLimit } from "./limits-beside.ts";
import { cutAtWork } from "./readings-beside-work.ts";
import type { Token } from "./scan.ts";

/** Tokens `from` to `to` (both included) that say one thing. */
export type Part = { readonly from: number; readonly to: number };
/** Parts between two full stops or line ends; `parts` holds only those that say something was read or done. */
export type Clause = { readonly from: number; readonly to: number; readonly parts: readonly Part[] };

const ENDS = ["\n", ".", ";", "!", "?"];

export const wordAt = (tokens: readonly Token[], at: number): string | null => {
  const token = tokens[at];
  return token?.is === "word" ? token.folded : null;
};

/**
 * Clauses that are no questions, with the parts of each that are not planned, wished or denied.
 * @param inDate tokens of a date: the stops of "3.5.2026" end nothing
 * @param taken tokens of a date or a bike's name: a bike called "Oil Can" denies nothing
 */
export function clausesOf(tokens: readonly Token[], known: Known, inDate: ReadonlySet<number>, taken: ReadonlySet<number>): readonly Clause[] {
  const clauses: Clause[] = [];
  let from = 0;
  let below = false;
  for (let at = 0; at <= tokens.length; at++) {
    const token = tokens[at];
    if (token !== undefined && (inDate.has(at) || !(token.is === "break" && ENDS.includes(token.mark)) || isShort(tokens, at, known))) continue;
    const mark = token?.is === "break" ? token.mark : "";
    // "To do list: oil change, new rear tyre": none of it is done, and neither are the lines below.
    if (at > from && isPhraseOf(tokens, from, known.vocabulary.toDo)) below = isColon(tokens[at - 1]) && mark === "\n";
    else if (below && at > from && mark === "\n") below = true;
    else if (at > from && !below && !isQuestion(tokens, from, mark, known))
      clauses.push({ from, to: at - 1, parts: partsOf(tokens, from, at - 1, known, taken) });
    else below = below && at > from && token !== undefined;
    from = at + 1;
  }
  return clauses;
}

/** "Order no. 14820", "min. th. 4.5": the point of a short form ends nothing. */
const isShort = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean => {
  const { shortForms, shortLimits } = vocabulary;
  if (!isPoint(tokens[at])) return false;
  const isLimit = (n: number): boolean => among(shortLimits, wordAt(tokens, n));
  // "Stood 30 min. 12.6 V".
  const isOwn = among(shortForms, wordAt(tokens, at - 1)) || (isLimit(at - 1) && !isBareNumber(tokens[at - 2]));
  return isOwn && (tokens[at + 1]?.is === "number" || (isLimit(at + 1) && isLimit(at - 1)));
};
const isBareNumber = (token: Token | undefined): boolean => token?.is === "number" && token.units.length === 0;
const isPoint = (token: Token | undefined): boolean => token?.is === "break" && token.mark === ".";

function isQuestion(tokens: readonly Token[], from: number, mark: string, known: Known): boolean {
  const first = wordAt(tokens, from);
  // "Did I change the oil yesterday".
  const asksOneself = among(known.vocabulary.askedOf, first) && among(known.vocabulary.askers, wordAt(tokens, from + 1));
  return mark === "?" || asksOneself || among(known.vocabulary.questions, first);
}

/** Parts stand between commas; "and", "but" and their like begin a new part when what follows is not done. */
function partsOf(tokens: readonly Token[], from: number, to: number, known: Known, taken: ReadonlySet<number>): readonly Part[] {
  const parts: Part[] = [];
  let start = from;
  for (let at = from; at <= to + 1; at++) {
    const token = tokens[at];
    // "Oct 3rd, 2025".
    const comma = token?.is === "break" && ((token.mark === "," && !taken.has(at)) || isAside(tokens, at, known));
    // "Front flat rear 36": what is wrong with one end is none of what the other shows.
    if (at > start && at <= to && isOtherEnd(tokens, at, known)) {
      parts.push(...partsOf(tokens, start, at - 1, known, taken));
      start = at;
    }
    if (at <= to && !comma) continue;
    // A single word or figure is whole.
    if (at === start + 1 && at <= to + 1 && wordAt(tokens, start) === null) parts.push({ from: start, to: start });
    else if (at > start)
      parts.push(
        ...doneOf(tokens, start, at - 1, known, taken)
          .flatMap((part) => cutAtLimit(tokens, part, known.vocabulary))
          .flatMap((part) => cutAtWork(tokens, part, known, taken)),
      );
    start = at + 1;
  }
  return parts;
}

/** An end with a figure behind it, right behind another one that was said to be flat. */
export function isOtherEnd(tokens: readonly Token[], at: number, { vocabulary }: Known): boolean {
  const { places, measuring } = vocabulary;
  const isEnd = (word: string | null): boolean => among(places.front, word) || among(places.rear, word);
  if (!isEnd(wordAt(tokens, at)) || tokens[at + 1]?.is !== "number") return false;
  const behind = among(vocabulary.and, wordAt(tokens, at - 1)) ? at - 2 : at - 1;
  return among(measuring.flat, wordAt(tokens, behind)) && [behind - 1, behind - 2].some((n) => isEnd(wordAt(tokens, n)));
}

/** What of a part is done: all of it, or what stands before "and need to ...". */
function doneOf(tokens: readonly Token[], from: number, to: number, known: Known, taken: ReadonlySet<number>): readonly Part[] {
  const denied = firstDenied(tokens, from, to, known, taken);
  if (denied === null) return [{ from, to }];
  // "Pumped the front up to 34 and the rear to 38 before setting off": done, whatever came after.
  if (among(known.vocabulary.doneBefore, wordAt(tokens, denied))) {
    // "Pressures before we set off: 32 front": what stands behind the colon is what was done.
    let colon = denied;
    while (colon <= to && !isColon(tokens[colon])) colon++;
    return [
      { from, to: denied - 1 },
      { from: colon + 1, to },
    ].filter((part) => part.to >= part.from);
  }
  // "Air filter cleaned, not changed": what was done stands right before what was not.
  if (denied > from && isDoneVerb(tokens, denied - 1, known) && isDoneVerb(tokens, denied + 1, known)) return [{ from, to: denied - 1 }];
  for (let at = denied - 1; at > from; at--) if (among(known.vocabulary.joins, wordAt(tokens, at))) return [{ from, to: at - 1 }];
  return [];
}

const isDoneVerb = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean => under(vocabulary.workDone, wordAt(tokens, at)) !== undefined;

const isColon = (token: Token | undefined): boolean => token?.is === "break" && token.mark === ":";

function firstDenied(tokens: readonly Token[], from: number, to: number, known: Known, taken: ReadonlySet<number>): number | null {
  for (let at = from; at <= to; at++) {
    const word = wordAt(tokens, at);
    if (word !== null && !taken.has(at) && (isToCome(tokens, at, known) || isPhraseOf(tokens, at, known.vocabulary.notDonePhrases))) return at;
    const isDenied = word !== null && !taken.has(at) && among(known.vocabulary.notDone, word);
    if (
      isDenied &&
      !isAbout(tokens, at, known) &&
      !isUnused(tokens, at, { from, to }, known) &&
      !isState(tokens, at, known) &&
      !isNearlyWrong(tokens, at, to, known)
    )
      return at;
  }
  return null;
}

/** "Maybe 1 mm": a figure that is not exact is one all the same. */
const isAbout = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean =>
  tokens[at + 1]?.is === "number" && among(vocabulary.roughly, wordAt(tokens, at));

/** "Not used since 1 November": how long it stood. */
const isUnused = (tokens: readonly Token[], at: number, { from, to }: Part, { vocabulary }: Known): boolean => {
  const { stood, since } = vocabulary.measuring;
  if (!among(stood.not, wordAt(tokens, at)) || !among(stood.used, wordAt(tokens, at + 1))) return false;
  for (let n = from; n <= to; n++) if (n !== at && (among(since, wordAt(tokens, n)) || (n > at && among(stood.words, wordAt(tokens, n))))) return true;
  return false;
};

/** "12.5 before, 12.9 after", "11.9 V before charging and 12.7 V after": right behind a figure, with nothing, a charge or another figure behind it, it says when that was read. */
const isState = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean => {
  if (tokens[at - 1]?.is !== "number" || !among(vocabulary.doneBefore, wordAt(tokens, at))) return false;
  const next = wordAt(tokens, at + 1);
  if (tokens[at + 1]?.is !== "word" || among(vocabulary.kinds["charging voltage"], next)) return true;
  return among(vocabulary.and, next) && tokens[at + 2]?.is === "number";
};

/** "Rear pads nearly gone": how bad something is, and no denial. */
const isNearlyWrong = (tokens: readonly Token[], at: number, to: number, { vocabulary }: Known): boolean =>
  among(vocabulary.almost, wordAt(tokens, at)) && longest(tokens, at + 1, to, indexOf(vocabulary.defects).signs) !== null;

/** "Morgen Ölwechsel": tomorrow, but for "heute Morgen" and "guten Morgen". */
const isToCome = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean =>
  among(vocabulary.tomorrow.words, wordAt(tokens, at)) &&
  !among(vocabulary.tomorrow.notBehind, wordAt(tokens, at - 1)) &&
  !among(vocabulary.weekdays, wordAt(tokens, at - 1));

/** Does one of some phrases of several words begin here? */
const isPhraseOf = (tokens: readonly Token[], at: number, phrases: readonly string[]): boolean => {
  const first = wordAt(tokens, at);
  return first !== null && phrases.some((phrase) => phrase.startsWith(first) && phrase.split(" ").every((word, n) => wordAt(tokens, at + n) === word));
};

/** "14,350 (was 14,250 last week)": before what was. */
const isAside = (tokens: readonly Token[], at: number, { vocabulary }: Known): boolean => {
  const open = tokens[at];
  return open?.is === "break" && open.mark === "(" && among(vocabulary.measuring.found, wordAt(tokens, at + 1));
};
