// "Heron rear axle torque?": a plain question about a spec, with the bikes it names taken out of it.

import type { BikeId } from "../core/ids.ts";
import type { Known, Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { bikesNamed } from "./bikes.ts";
import { inItsLanguage } from "./language.ts";
import { ownWords, scan } from "./scan.ts";

/** `bikes` empty: none was named. `spoken`: the words of the language that it was asked in, and then those of the others. */
export type SpecAsked = { readonly what: string; readonly bikes: readonly BikeId[]; readonly spoken: readonly Vocabulary[] };

const LONGEST = 80;
/** So few words beside a bike's name are a name, not a sentence. */
const FEW = 4;

/** Null for what is neither put as a question nor short enough to be a name. */
export function specAsked(text: string, of: Known): SpecAsked | null {
  if (text.length > LONGEST) return null;
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
  return { spoken, what: words.map((word) => word.text.replace(/['’]s$/u, "")).join(" "), bikes: [...new Set(named.flatMap(({ bikes }) => bikes))] };
}
