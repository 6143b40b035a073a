// "Heron rear axle torque?": a plain question about a spec, with the bikes it names taken out of it.

import type { BikeId } from "../core/ids.ts";
import { parseUnit } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Known, Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { bikesNamed } from "./bikes.ts";
import { inItsLanguage } from "./language.ts";
import { ownWords, scan } from "./scan.ts";

/** `unit`: the one that the answer is wanted in, null where none was said. `bikes` empty: none was named. `spoken`: the words of the language that it was asked in, and then those of the others. */
export type SpecAsked = { readonly what: string; readonly unit: UnitId | null; readonly bikes: readonly BikeId[]; readonly spoken: readonly Vocabulary[] };

const LONGEST = 80;
/** So few words beside a bike's name are a name, not a sentence. */
const FEW = 4;

/** Null for what is neither put as a question nor short enough to be a name. */
export function specAsked(said: string, of: Known): SpecAsked | null {
  if (said.length > LONGEST) return null;
  const { text: bare, unit } = withoutUnit(said, of);
  const text = unit === null ? bare : `${bare}?`;
  const own = ownWords(text).trim();
  const known = inItsLanguage(own, of);
  const tokens = scan(own, known.vocabulary.units, known.numbers);
  const named = bikesNamed(tokens, known);
  const at = new Set(named.flatMap(({ from, to }) => tokens.flatMap((_token, n) => (n >= from && n <= to ? [n] : []))));
  const words = tokens.flatMap((token, n) => {
    // "On Heron": the word before a name goes with it.
    const beside = token.is === "word" && at.has(n + 1) && among(known.vocabulary.onBike, token.folded);
    return token.is === "break" || at.has(n) || beside ? [] : [{ token, text: own.slice(token.start, token.end) }];
  });
  const [first] = words;
  const asks = own.endsWith("?") || (first?.token.is === "word" && among(known.vocabulary.questions, first.token.folded));
  if (first === undefined || (!asks && words.length > FEW)) return null;
  const all = [of.vocabulary, ...(of.also ?? []).map(({ vocabulary }) => vocabulary)];
  const spoken = [known.vocabulary, ...all.filter((each) => each !== known.vocabulary)];
  return { spoken, unit, what: words.map((word) => word.text.replace(/['’]s$/u, "")).join(" "), bikes: [...new Set(named.flatMap(({ bikes }) => bikes))] };
}

/** "Rear axle torque in ft-lb?": the words without the unit that ends them, and the unit. Only a unit that is sure of its dimension is one. */
export function withoutUnit(text: string, { vocabulary }: Pick<Known, "vocabulary">): { readonly text: string; readonly unit: UnitId | null } {
  const asked = text.trim().replace(/\?$/u, "").trim();
  const at = Math.max(...BEFORE_UNIT.map((word) => asked.toLowerCase().lastIndexOf(word)));
  if (at <= 0) return { text, unit: null };
  const typed = asked.slice(at + BEFORE_UNIT[0].length).trim();
  const read = parseUnit(typed, 0, vocabulary.units);
  const [unit, ...others] = read === null || read.end !== typed.length ? [] : read.units;
  return unit === undefined || others.length > 0 ? { text, unit: null } : { text: asked.slice(0, at), unit };
}
const BEFORE_UNIT = [" in ", " as "] as const;
