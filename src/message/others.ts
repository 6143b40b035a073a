// What is said of somebody else's bike: "Tess's front tyre was at 18 psi", "Mara has 4 mm left on her rear pads". None of it is the speaker's.

import { among, under } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { firstsOf, isNameWord } from "./names.ts";

/** Does a clause speak of a bike that is not the speaker's? One that names a bike of theirs does not. */
export function isOthers(layout: Layout, clause: Clause): boolean {
  const { named, tokens } = layout;
  if (named.some(({ from, to, bikes }) => bikes.length > 0 && from >= clause.from && to <= clause.to)) return false;
  if (isHelp(layout, clause) || isDoneByOther(layout, clause) || isOfVehicle(layout, clause) || isTried(layout, clause)) return true;
  // "His is 34 front".
  const { others, maybe } = layout.known.vocabulary;
  if (among(others.whose, wordAt(tokens, clause.from)) && among(maybe.is, wordAt(tokens, clause.from + 1))) return true;
  for (let at = clause.from; at <= clause.to; at++) {
    const token = tokens[at];
    if (token?.is === "word" && (ownsNext(layout, at) || (at === clause.from && has(layout, at + 1) && isName(layout, at)))) return true;
  }
  return false;
}

/** "The car had 34 all round", "oil in the mower changed"; with the car's pump it is still a motorcycle that is pumped up. */
function isOfVehicle({ tokens, known: { vocabulary } }: Layout, { from, to }: Clause): boolean {
  for (let at = from; at <= to; at++) {
    if (!among(vocabulary.others.vehicles, (wordAt(tokens, at) ?? "").replace(/'s$/u, ""))) continue;
    const before = [at - 1, at - 2].map((n) => wordAt(tokens, n));
    if (!before.some((word) => among(vocabulary.others.beside, word))) return true;
  }
  return false;
}

/** "Test rode the new 900, brakes felt spongy": a bike that is tried; "test rode the bike" is of one's own. */
function isTried({ tokens, known: { vocabulary } }: Layout, { from, to }: Clause): boolean {
  const { articles, others } = vocabulary;
  for (let at = from; at <= to; at++) {
    const tries = others.tries.map((phrase) => phrase.split(" ")).find((words) => words.every((word, n) => wordAt(tokens, at + n) === word));
    if (tries === undefined) continue;
    const whose = at + tries.length;
    const what = tokens[whose + 1];
    const isOwn = among(vocabulary.measuring.definite, wordAt(tokens, whose)) && what?.is === "word" && among(others.own, what.folded);
    if (whose < to && what !== undefined && among(articles, wordAt(tokens, whose)) && wordAt(tokens, whose) !== "my" && !isOwn) return true;
  }
  return false;
}

/** "Helped Anna: oil changed", "I helped my mate change his pads": at its beginning, and of somebody. */
function isHelp({ tokens, known: { vocabulary } }: Layout, { from, to }: Clause): boolean {
  const { helping, whose } = vocabulary.others;
  const at = among(helping, wordAt(tokens, from)) ? from : among(helping, wordAt(tokens, from + 1)) ? from + 1 : to;
  const whom = tokens[at + 1];
  return at < to && whom?.is === "word" && (/^\p{Lu}/u.test(whom.text) || among(whose, whom.folded) || among(vocabulary.measuring.definite, whom.folded));
}

/** "She pumped the front up to 34", "er hat das Öl gewechselt": somebody else at work, at the beginning of a clause. */
function isDoneByOther({ tokens, known: { vocabulary } }: Layout, { from, to }: Clause): boolean {
  const does = (at: number): boolean => {
    const word = wordAt(tokens, at);
    return word !== null && (under(vocabulary.workDone, word) !== undefined || among(vocabulary.others.pumps, word));
  };
  const begun = firstsOf(vocabulary).doers.get(wordAt(tokens, from) ?? "") ?? [];
  return begun.some((words) => {
    if (!words.every((word, n) => wordAt(tokens, from + n) === word)) return false;
    // In German the word of work ends the clause.
    return words.length === 1 ? does(from + 1) : Array.from({ length: Math.max(0, to - from - 1) }, (_, n) => from + 2 + n).some(does);
  });
}

/** "her pads", "Tess's front tyre": whose it is, right before what it is of. */
function ownsNext(layout: Layout, at: number): boolean {
  const { vocabulary } = layout.known;
  const token = layout.tokens[at];
  if (token?.is !== "word") return false;
  const owns =
    among(vocabulary.others.whose, token.folded) ||
    (token.folded.endsWith("s") && /^\p{Lu}\p{Ll}+['’]s$/u.test(token.text) && !among(vocabulary.dateWords, bare(token.folded)));
  return owns && isThing(layout, at + 1);
}

/** Something of a bike: a place, a kind of reading, a part that is worked at. */
function isThing({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const word = wordAt(tokens, at);
  // "At Miller's on 20 November": a phrase may begin with "on" as well.
  return word !== null && firstsOf(vocabulary).ofBikes.has(word) && !among(vocabulary.onBike, word);
}

const isName = ({ tokens, known: { vocabulary } }: Layout, at: number): boolean => isNameWord(tokens[at], vocabulary);

const has = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.others.has, wordAt(layout.tokens, at));
const bare = (word: string): string => word.replace(/['’]s$/u, "");
