// Which numbers of a message can be a figure read off a bike, and as what.

import { unitsNamed } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { type Dimension, dimensionOf } from "../core/quantity/units.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { oncePerPart, tokensOf } from "./pieces.ts";
import type { NumberToken } from "./scan.ts";

/** A number that may be a reading. `units` empty: bare. */
export type Figure = { readonly at: number; readonly token: NumberToken; readonly units: readonly UnitId[]; readonly place: "front" | "rear" | null };

/** The figure at a token, null when it is a price, a time, a size, a grade, a date or a phone number. @param joined it may touch the marks that join it to figures beside it */
export function figureAt(layout: Layout, at: number, joined = false): Figure | null {
  const { tokens, text, known } = layout;
  const token = tokens[at];
  if (
    token?.is !== "number" ||
    token.code !== undefined ||
    layout.taken.has(at) ||
    !(joined || isFree(text, token) || hasLetter(tokens, at) || leadsPlace(layout, at))
  )
    return null;
  const { notReading } = known.vocabulary;
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  if (
    before?.is === "break" &&
    (among(notReading, before.mark) || before.mark === "#" || (before.mark === ":" && before.end === token.start && tokens[at - 2]?.is === "number"))
  )
    return null;
  // "120/70r 17": a letter that touches the figure before it belongs to that.
  const earlier = tokens[at - 2];
  if (before?.is === "word" && earlier?.is === "number" && before.start === earlier.end && earlier.cut !== true) return null;
  if (after?.is === "break" && (among(notReading, after.mark) || (after.mark === ":" && text[token.end] === ":" && !isDialBefore(text, token)))) return null;
  const named = layout.kindEnds.has(at - 1);
  if ((!named && among(notReading, wordAt(tokens, at - 1))) || (token.units.length === 0 && among(notReading, wordAt(tokens, at + 1)))) return null;
  // A fraction whose denominator no ruler has is a size ("120/70").
  if (token.fraction !== null && ![2, 4, 8, 16, 32, 64].includes(token.fraction)) return null;
  return withPlace(layout, at, token);
}

/** "At 14,500: 3 L": no time of day and no number of a list. */
const isDialBefore = (text: string, token: NumberToken): boolean => token.value >= 1000 && !/\d/u.test(text[token.end + 1] ?? " ");

/** "36r": a letter that stands for an end of the bike, cut off the figure that it touches. */
const hasLetter = (tokens: Layout["tokens"], at: number): boolean => {
  const token = tokens[at];
  return token?.is === "number" && token.cut === true;
};

/** "Front 36/rear 42": the stroke stands between two ends, each with its figure. */
function leadsPlace({ tokens, placeStarts }: Layout, at: number): boolean {
  const [before, stroke] = [tokens[at - 1], tokens[at + 1]];
  return before?.is === "word" && stroke?.is === "break" && stroke.mark === "/" && placeStarts.has(at + 2) && tokens[at + 3]?.is === "number";
}

/** A digit run that touches letters, slashes or further digits is part of a size, a grade or a number of another kind. */
function isFree(text: string, token: NumberToken): boolean {
  const before = text[token.start - 1] ?? " ";
  const after = text[token.end] ?? " ";
  if (/[-/\p{L}\p{N}_+.]/u.test(before) && !(before === "." && /\s/.test(text[token.start - 2] ?? " "))) return false;
  if (/[\p{L}\p{N}_]/u.test(after)) return false;
  return !(/[-/:]/.test(after) && /[\p{L}\p{N}]/u.test(text[token.end + 1] ?? " ")) || token.units.length > 0;
}

/** Is a figure part of a size or a grade: more strokes or letters than two values have? */
export const isStroked = (layout: Layout, at: number): boolean => {
  const token = layout.tokens[at];
  return token !== undefined && /^[-/]?[\d.,]*[-/][\p{L}]/u.test(layout.text.slice(token.start, token.start + 12));
};

/** "33 f" and "36 in the rear": what looks like a unit is a place or a plain word. */
function withPlace(layout: Layout, at: number, token: NumberToken): Figure {
  const typed = token.unitText?.toLowerCase() ?? null;
  const { places } = layout.known.vocabulary;
  if (typed === "f" && places.front.includes("f")) return { at, token, units: [], place: "front" };
  if (typed === "r" && places.rear.includes("r")) return { at, token, units: [], place: "rear" };
  if (typed === "in" && !layout.treadSaid) return { at, token, units: [], place: null };
  return { at, token, units: token.units, place: null };
}

/** What a figure with a unit measures; null for a bare one or a unit that several things share. */
export function measures(figure: Figure): "distance" | "pressure" | "length" | "other" | null {
  const [unit] = figure.units;
  if (unit === undefined) return null;
  const dimension = dimensionOf(unit);
  return figure.units.length === 1 && (dimension === "distance" || dimension === "pressure" || dimension === "length") ? dimension : "other";
}

/** A unit that stands by itself in a part ("33 front 36 rear psi"). */
export const unitAlone = (layout: Layout, part: Part, dimension: Dimension): UnitId | null =>
  unitsAlone(layout, part).find((unit) => dimensionOf(unit) === dimension) ?? null;

const unitsAlone = oncePerPart((layout, part): readonly UnitId[] =>
  tokensOf(part).flatMap((at) => {
    const word = layout.placeStarts.has(at) ? null : wordAt(layout.tokens, at);
    const [unit, ...others] = word === null ? [] : unitsNamed(word, layout.known.vocabulary.units);
    return unit !== undefined && others.length === 0 ? [unit] : [];
  }),
);
