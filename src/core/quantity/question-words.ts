// The words round a question about units, made ready for looking; and the question without its ornaments.

import type { AskingWords } from "./asking.ts";
import type { Bound } from "./conversion.ts";
import { plain } from "./number.ts";
import type { Dimension } from "./units.ts";

/** Words and signs that may be taken off the beginning of a text. */
export type Leading = { readonly words: ReadonlySet<string>; readonly signs: readonly string[] };
/** What a word does wherever it stands; all but "between" are taken out. */
export type Role = "idle" | "exactly" | "difference" | "torque" | "pressure" | "between" | "fastener" | "spanner" | "fit" | "which";

/** The words of a language, ready. */
export type Words = {
  readonly roles: ReadonlyMap<string, Role>;
  readonly into: Leading;
  readonly opening: Leading;
  readonly equals: Leading;
  readonly joins: Leading;
  /** All that may stand before the unit wanted. */
  readonly asks: Leading;
  readonly metric: ReadonlySet<string>;
  readonly imperial: ReadonlySet<string>;
  readonly plus: Leading;
  readonly between: RegExp;
  readonly bounds: RegExp;
  readonly isAtMost: (phrase: string) => boolean;
  readonly turns: { readonly words: RegExp; readonly figures: ReadonlyMap<string, string> };
  /** What stands behind the last "in" or "to". */
  readonly lastInto: RegExp;
};
const known = new WeakMap<AskingWords, Words>();

/** The words of a language; made ready once. */
export function wordsOf(asking: AskingWords): Words {
  const ready = known.get(asking);
  if (ready !== undefined) return ready;
  const isWord = (word: string): boolean => /^\p{L}/u.test(word);
  const leading = (all: readonly string[]): Leading => ({
    words: new Set(all.filter(isWord)),
    signs: all.filter((word) => !isWord(word)).sort((a, b) => b.length - a.length),
  });
  const role = (as: Role, all: readonly string[]) => all.map((word) => [word, as] as const);
  const [between, and] = asking.between;
  const made: Words = {
    roles: new Map([
      ...role("idle", asking.idle),
      ...role("exactly", asking.exactly),
      ...role("difference", asking.difference),
      ...role("torque", asking.torque),
      ...role("pressure", asking.pressure),
      ...role("between", [between]),
      ...role("fastener", asking.fastener),
      ...role("spanner", asking.spanner),
      ...role("fit", asking.fit),
      ...role("which", asking.which),
    ]),
    into: leading(asking.into),
    opening: leading(asking.opening),
    equals: leading(asking.equals),
    joins: leading(asking.joins),
    plus: leading(asking.plus),
    asks: leading([...asking.into, ...asking.equals, ...asking.opening]),
    metric: new Set(asking.metric),
    imperial: new Set(asking.imperial),
    bounds: boundsOf([...asking.atMost, ...asking.atLeast]),
    isAtMost: (phrase) => asking.atMost.includes(phrase),
    turns: { words: new RegExp(asking.turns.map(([said]) => said).join("|"), "giu"), figures: new Map(asking.turns) },
    between: new RegExp(`${between}\\s+([\\d.,/]+)\\s+${and}\\s+`, "iu"),
    lastInto: new RegExp(`\\s(?:${asking.into.filter(isWord).join("|")})\\s+(\\S.*)$`, "iu"),
  };
  known.set(asking, made);
  return made;
}

/** Phrases with word ends round them, and signs; "max." with its stop, which is no decimal point. Behind a stroke or "per", "min" is a minute. */
function boundsOf(all: readonly string[]): RegExp {
  const phrases = all.filter((each) => /^\p{L}/u.test(each));
  const signs = all.filter((each) => !/^\p{L}/u.test(each));
  return new RegExp(`(?<![\\p{L}\\p{N}/]|per )(?:(?:${phrases.join("|")})(?![\\p{L}\\p{N}])\\.?|${signs.join("|")})`, "giu");
}

/** A question without its ornaments, and what they said. */
export type Tidied = {
  readonly asked: string;
  readonly said: ReadonlySet<Role>;
  /** What is measured, where a word names it. */
  readonly hint: Dimension | null;
  readonly bound: Bound | null;
};

/** Takes the ornaments off a question. */
export function tidied(text: string, words: Words): Tidied {
  const said = new Set<Role>();
  const { bound, left } = bounded(plain(text), words);
  let asked = left.replace(/[\p{L}\p{N}]+|[?!]/gu, (word) => {
    if (word === "?" || word === "!") return " ";
    const role = words.roles.get(word.toLowerCase());
    if (role === undefined) return word;
    said.add(role);
    return role === "between" ? word : " ";
  });
  if (said.has("between")) asked = asked.replace(words.between, "$1 to ");
  asked = asked.replace(/\s\s+/gu, " ").trim();
  if (asked.includes("turn")) asked = asked.replace(words.turns.words, (share) => words.turns.figures.get(share.toLowerCase()) ?? share);
  while (asked.endsWith(".")) asked = asked.slice(0, -1).trimEnd();
  const hint = said.has("difference") ? "temperature difference" : said.has("torque") ? "torque" : said.has("pressure") ? "pressure" : null;
  return { asked, said, hint, bound };
}

/** "max 10 Nm", "10 Nm max": the bound and the text without it. Two bounds, and one between two figures, are a window: "min 60 max 80", "60 up to 80". */
function bounded(text: string, { bounds, isAtMost }: Words): { readonly bound: Bound | null; readonly left: string } {
  let bound: Bound | null = null;
  const left = text.replace(bounds, (phrase: string, at: number) => {
    const between = /\d\s*$/u.test(text.slice(0, at)) && /^\s*\d/u.test(text.slice(at + phrase.length));
    const first = bound === null;
    if (!between) bound = isAtMost(phrase.toLowerCase().replace(/\.$/u, "")) ? "at most" : "at least";
    return between || !first ? " to " : " ";
  });
  return { bound, left };
}

/** A text without the words and signs at its beginning; `last` stands when nothing would be left ("3 mm in" asks for inches). */
export function stripped(text: string, { words, signs }: Leading, last = ""): string {
  let left = text.trim();
  while (left !== "") {
    const sign = signs.find((each) => left.startsWith(each));
    const space = left.indexOf(" ");
    const word = space < 0 ? left : left.slice(0, space);
    if (sign !== undefined) left = left.slice(sign.length).trimStart();
    else if (words.has(word.toLowerCase())) left = left.slice(word.length).trimStart();
    else return left;
  }
  return last.trim();
}
