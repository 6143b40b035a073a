// Hydraulic fluids named in words: by the class on the cap, or by the family that they are of; and what is none and was put in all the same.

import type { DetailWords, FluidWords } from "../core/reading/detail-words.ts";

/** A fluid named: its class or family as the rows of the trade call it, and where it stands. */
export type FluidNamed = { readonly name: string; readonly typed: string; readonly start: number; readonly end: number };

/** A fluid class by its label, whether or not there is one of that number. Source: 49 CFR 571.116. */
const CLASS = /(?<![\p{L}\p{N}])DOT[ -]?(\d(?:[.,]\d)?)(?![\p{L}\p{N}])/giu;

/** Fluids that a text names, in the order in which they stand. One that is denied ("not DOT 5") is none, and neither is what only begins so ("silicone grease"). */
export function fluidsNamed(text: string, languages: readonly Pick<DetailWords, "fluids">[]): readonly FluidNamed[] {
  const classes = [...text.matchAll(CLASS)].map((match): FluidNamed => {
    const [typed, n = ""] = match;
    return { name: `DOT ${n.replace(",", ".")}`, typed, start: match.index, end: match.index + typed.length };
  });
  const families = languages.flatMap(({ fluids }) => namedBy(text, patternsOf(fluids).own));
  return undenied(text, [...classes, ...families], languages);
}

/** What belongs into no circuit, wherever a text names it: "engine oil". */
export function strangeNamed(text: string, languages: readonly Pick<DetailWords, "fluids">[]): readonly FluidNamed[] {
  const own = fluidsNamed(text, languages);
  const named = languages.flatMap(({ fluids }) => namedBy(text, patternsOf(fluids).strange));
  // "Mineral oil" is a fluid, and no oil.
  return undenied(text, named, languages).filter(({ start, end }) => !own.some((fluid) => start < fluid.end && end > fluid.start));
}

/** The same where a text says that it went in: "with engine oil", "ATF by mistake", "put oil in the brake reservoir"; "brake fluid and engine oil" are two jobs. */
export function strangePut(text: string, words: Pick<DetailWords, "fluids">): readonly FluidNamed[] {
  const { with: leads, some, mistake } = words.fluids;
  const { into } = patternsOf(words.fluids);
  return strangeNamed(text, [words]).filter(({ start, end }) => {
    const before = wordsOf(text.slice(Math.max(0, start - LOOK), start));
    const lead = before.findLast((word) => !some.includes(word));
    const isMistaken = mistake.some((each) => before.slice(-each.split(" ").length).join(" ") === each);
    const behind = text.slice(end, end + LOOK);
    const next = ` ${wordsOf(behind).slice(0, 3).join(" ")} `;
    return (lead !== undefined && leads.includes(lead)) || isMistaken || mistake.some((each) => next.startsWith(` ${each} `)) || into.test(behind);
  });
}

/** What a job on hydraulics was done with and nobody here knows: "with Zorbo"; null where nothing is said, or what is no fluid: "with a syringe". */
export function unknownPut(text: string, { fluids }: Pick<DetailWords, "fluids">): Omit<FluidNamed, "name"> | null {
  const said = patternsOf(fluids).said.exec(text);
  const typed = said?.groups?.["what"]?.trim() ?? "";
  if (said === null || typed === "") return null;
  const words = wordsOf(typed);
  if (words.length === 0 || words.length > MOST || words.some((word) => fluids.tools.includes(word) || fluids.some.includes(word))) return null;
  const start = said.index + said[0].lastIndexOf(typed);
  return { typed, start, end: start + typed.length };
}
/** A fluid's name has no more words. */
const MOST = 3;
/** So far around a name is looked at. */
const LOOK = 60;

const undenied = (text: string, named: readonly FluidNamed[], languages: readonly Pick<DetailWords, "fluids">[]): readonly FluidNamed[] => {
  const denied = languages.flatMap(({ fluids }) => fluids.denied);
  return named.filter(({ start }) => !denied.includes(wordBefore(text, start))).toSorted((a, b) => a.start - b.start);
};

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}'.-]+/gu) ?? [];

const wordBefore = (text: string, at: number): string => /([\p{L}']{1,20}) {1,3}$/u.exec(text.slice(Math.max(0, at - 24), at))?.[1]?.toLowerCase() ?? "";

type Names = { readonly pattern: RegExp; readonly names: ReadonlyMap<string, string> };

const namedBy = (text: string, { pattern, names }: Names): readonly FluidNamed[] =>
  [...text.matchAll(pattern)].map((match): FluidNamed => {
    const [typed] = match;
    return { name: names.get(typed.toLowerCase()) ?? "", typed, start: match.index, end: match.index + typed.length };
  });

type Patterns = { readonly own: Names; readonly strange: Names; readonly into: RegExp; readonly said: RegExp };
const patterns = new WeakMap<FluidWords, Patterns>();

/** The names of a language in patterns, the longest first. */
function patternsOf(words: FluidWords): Patterns {
  const ready = patterns.get(words);
  if (ready !== undefined) return ready;
  const either = (each: readonly string[]): string => each.toSorted((a, b) => b.length - a.length).join("|");
  const namesOf = (rows: Readonly<Record<string, readonly string[]>>, notBefore: readonly string[]): Names => {
    const names = new Map(Object.entries(rows).flatMap(([name, called]) => called.map((each) => [each, name] as const)));
    const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${either([...names.keys()])})(?![\\p{L}\\p{N}])(?![ -](?:${notBefore.join("|")})(?![\\p{L}]))`, "giu");
    return { pattern, names };
  };
  const circuits = either(Object.values(words.circuits).flat());
  const made: Patterns = {
    own: namesOf(words.names, words.notBefore),
    strange: namesOf(words.strange, [...words.notBefore, ...words.strangeNotBefore]),
    into: new RegExp(`^(?: \\p{L}{1,9}){0,3}? (?:${words.into.join("|")}) (?:\\p{L}{2,5} )?(?:${circuits}|it)(?![\\p{L}\\p{N}])`, "iu"),
    said: new RegExp(`(?<![\\p{L}])(?:${words.with.join("|")}) (?<what>[\\p{L}\\p{N} .+-]{2,40})$`, "iu"),
  };
  patterns.set(words, made);
  return made;
}
