// The unit that a question asks for, wherever people put it.

import type { Typed } from "./asking.ts";
import { foldUnit, parseUnit } from "./parse.ts";
import { stripped, type Words } from "./question-words.ts";
import { dimensionOf, type UnitId } from "./units.ts";

export type Wanted =
  | { readonly is: "nothing" }
  | { readonly is: "system"; readonly system: "metric" | "imperial" }
  /** `sure`: nothing but the asking stands between amount and unit. */
  | { readonly is: "units"; readonly units: readonly UnitId[]; readonly word: string; readonly sure: boolean }
  /** `asked`: a word such as "in" asked for it. */
  | { readonly is: "unknown"; readonly word: string; readonly asked: boolean };

/** The unit wanted: behind the amount ("in Nm"), else before it ("how many Nm is"). */
export function wantedIn(rest: string, before: string, typed: Typed, words: Words): Wanted {
  if (rest.trim() !== "") {
    const behind = wantedTyped(rest, typed, words);
    if (behind.is !== "unknown") return behind;
    // "24 lbs of torque": what is left asks for nothing.
    if (stripped(rest, words.equals) === "") return { is: "nothing" };
    // "3 m of hose in feet".
    const last = words.lastInto.exec(rest)?.[1];
    const wanted = last === undefined ? behind : wantedTyped(last, typed, words);
    return wanted.is === "units" ? { ...wanted, sure: false } : behind;
  }
  const left = stripped(before, words.opening);
  for (const from of [left, stripped(left, words.into)]) {
    const found = parseUnit(from, 0, typed.units);
    if (found !== null && stripped(from.slice(found.end), words.equals) === "")
      return { is: "units", units: found.units, word: from.slice(0, found.end), sure: true };
  }
  return { is: "nothing" };
}

/** A text that names what is wanted: "in Nm", "ft-lb and in-lb", "metric". */
export function wantedTyped(text: string, typed: Typed, words: Words): Wanted {
  const left = stripped(text, words.asks, text);
  const word = foldUnit(left);
  if (words.metric.has(word)) return { is: "system", system: "metric" };
  const units: UnitId[] = [];
  for (let at = left; at !== ""; ) {
    const found = parseUnit(at, 0, typed.units);
    if (found === null) return words.imperial.has(word) ? { is: "system", system: "imperial" } : { is: "unknown", word: left, asked: isAsked(text, left) };
    units.push(...found.units);
    at = stripped(at.slice(found.end), words.joins).trim();
  }
  // "lb/in" is no two units to choose from: one of force by length.
  const quotient = /\S\/\S/u.test(left) && units.some((unit) => dimensionOf(unit) !== dimensionOf(units[0] ?? unit));
  return quotient ? { is: "unknown", word: left, asked: isAsked(text, left) } : { is: "units", units, word: left, sure: true };
}

/** A word or two behind an "in" or a "to" were meant as a unit. */
const isAsked = (text: string, word: string): boolean => text.trim() !== word && /^[\p{L}\d/²³·-]+(?: [\p{L}\d/²³·-]+)?$/u.test(word);
