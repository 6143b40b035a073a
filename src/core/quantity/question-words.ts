// The words round a question about units, made ready for looking; and the question without its ornaments.

import type { AskingWords } from "./asking.ts";
import { plain } from "./number.ts";
import type { Dimension } from "./units.ts";

/** Words and signs that may be taken off the beginning of a text. */
export type Leading = { readonly words: ReadonlySet<string>; readonly signs: readonly string[] };
type Role = "idle" | "exactly" | "difference" | "torque" | "pressure" | "between";

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
  readonly between: RegExp;
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
    ]),
    into: leading(asking.into),
    opening: leading(asking.opening),
    equals: leading(asking.equals),
    joins: leading(asking.joins),
    asks: leading([...asking.into, ...asking.equals, ...asking.opening]),
    metric: new Set(asking.metric),
    imperial: new Set(asking.imperial),
    between: new RegExp(`${between}\\s+([\\d.,/]+)\\s+${and}\\s+`, "iu"),
    lastInto: new RegExp(`\\s(?:${asking.into.filter(isWord).join("|")})\\s+(\\S.*)$`, "iu"),
  };
  known.set(asking, made);
  return made;
}

/** The question without its ornaments, and what they said. */
export function tidied(text: string, words: Words): { readonly asked: string; readonly exactly: boolean; readonly hint: Dimension | null } {
  const said = new Set<Role>();
  let asked = plain(text).replace(/[\p{L}\p{N}]+|[?!]/gu, (word) => {
    if (word === "?" || word === "!") return " ";
    const role = words.roles.get(word.toLowerCase());
    if (role === undefined) return word;
    said.add(role);
    return role === "between" ? word : " ";
  });
  if (said.has("between")) asked = asked.replace(words.between, "$1 to ");
  asked = asked.replace(/\s\s+/gu, " ").trim();
  while (asked.endsWith(".")) asked = asked.slice(0, -1).trimEnd();
  const hint = said.has("difference") ? "temperature difference" : said.has("torque") ? "torque" : said.has("pressure") ? "pressure" : null;
  return { asked, exactly: said.has("exactly"), hint };
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
