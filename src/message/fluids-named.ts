// Hydraulic fluids named in words: by the class on the cap, or by the family that they are of.

import type { DetailWords, FluidWords } from "../core/reading/detail-words.ts";

/** A fluid named: its class or family as the rows of the trade call it, and where it stands. */
export type FluidNamed = { readonly name: string; readonly typed: string; readonly start: number; readonly end: number };

/** A fluid class by its label. Source: 49 CFR 571.116. */
const CLASS = /(?<![\p{L}\p{N}])DOT[ -]?([34]|5(?:[.,]1)?)(?![\p{L}\p{N}])/giu;

/** Fluids that a text names, in the order in which they stand. One that is denied ("not DOT 5") is none, and neither is what only begins so ("silicone grease"). */
export function fluidsNamed(text: string, languages: readonly Pick<DetailWords, "fluids">[]): readonly FluidNamed[] {
  const classes = [...text.matchAll(CLASS)].map((match): FluidNamed => {
    const [typed, n = ""] = match;
    return { name: `DOT ${n.replace(",", ".")}`, typed, start: match.index, end: match.index + typed.length };
  });
  const families = languages.flatMap(({ fluids }) => {
    const { pattern, names } = patternOf(fluids);
    return [...text.matchAll(pattern)].map((match): FluidNamed => {
      const [typed] = match;
      return { name: names.get(typed.toLowerCase()) ?? "", typed, start: match.index, end: match.index + typed.length };
    });
  });
  const denied = languages.flatMap(({ fluids }) => fluids.denied);
  return [...classes, ...families].filter(({ start }) => !denied.includes(wordBefore(text, start))).toSorted((a, b) => a.start - b.start);
}

const wordBefore = (text: string, at: number): string => /([\p{L}']{1,20}) {1,3}$/u.exec(text.slice(Math.max(0, at - 24), at))?.[1]?.toLowerCase() ?? "";

const patterns = new WeakMap<FluidWords, { readonly pattern: RegExp; readonly names: ReadonlyMap<string, string> }>();

/** The names of a language in one pattern, the longest first. */
function patternOf(words: FluidWords) {
  const ready = patterns.get(words);
  if (ready !== undefined) return ready;
  const names = new Map(Object.entries(words.names).flatMap(([name, called]) => called.map((each) => [each, name] as const)));
  const any = [...names.keys()].toSorted((a, b) => b.length - a.length).join("|");
  const made = { pattern: new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])(?![ -](?:${words.notBefore.join("|")})(?![\\p{L}]))`, "giu"), names };
  patterns.set(words, made);
  return made;
}
