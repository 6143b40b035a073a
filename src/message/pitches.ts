// The chain's pitches and pins, and other things counted beside a value: "over 20 pitches", "21 pins", "at 4000 rpm".

import { dimensionOf, toCanonical } from "../core/quantity/units.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import type { Measurable } from "./measured-figures.ts";
import { oncePerPart, tokensOf } from "./pieces.ts";

/** "Over 20 pitches"; 21 pins are the same. */
export function pitchesIn(layout: Layout, part: Part): number | null {
  const { pitches, pins } = layout.known.vocabulary.measuring;
  const counted = countOf(layout, part, pins);
  return counted === null ? countOf(layout, part, pitches) : counted - 1;
}

/** The number before one of some words: "over 20 pitches", "at 4000 rpm". */
function countOf(layout: Layout, part: Part, words: readonly string[]): number | null {
  for (const at of tokensOf(part)) {
    const token = layout.tokens[at];
    if (token?.is === "number" && among(words, wordAt(layout.tokens, at + 1))) return token.value;
  }
  return null;
}

/** At how many revolutions it was read: "at 4000 rpm", or, where a charge is read with the engine running, the figure behind "at": "14.4 running @4000". */
export function revsIn(layout: Layout, part: Part): { readonly at: number; readonly value: number } | null {
  const { rpm, runs } = layout.known.vocabulary.measuring;
  const figures = tokensOf(part).flatMap((at) => {
    const token = layout.tokens[at];
    return token?.is === "number" && !layout.taken.has(at) ? [{ at, token, value: token.value }] : [];
  });
  const counted = figures.find(({ at }) => among(rpm, wordAt(layout.tokens, at + 1)));
  if (counted !== undefined) return counted;
  const runsHere = tokensOf(part).some((at) => among(runs, wordAt(layout.tokens, at)));
  const [volts, revs, ...others] = figures;
  if (!runsHere || volts === undefined || revs === undefined || others.length > 1) return null;
  return (
    figures.find(
      ({ at, token, value }) =>
        token.units.length === 0 &&
        token.decimals === 0 &&
        value >= SLOWEST &&
        value <= FASTEST &&
        isAt(layout, at - 1) &&
        figures.some((each) => each.at < at && each.value < MOST_VOLTS),
    ) ?? null
  );
}
const isAt = ({ tokens, known: { vocabulary } }: Layout, at: number): boolean => {
  const token = tokens[at];
  return token?.is === "break" ? token.mark === "@" : among(vocabulary.at, wordAt(tokens, at));
};
/** Revolutions a minute of an engine that charges, and more volts than it charges with. */
const [SLOWEST, FASTEST, MOST_VOLTS] = [600, 9000, 17];

/** "319 mm, 21 pins": the part right behind, where it counts pitches and holds no other figure. */
export const pitchesBehind = oncePerPart((layout: Layout, part: Part): Part | null => {
  if (pitchesIn(layout, part) !== null) return null;
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to);
  const behind = clause?.parts.find(({ from }) => from > part.to);
  if (behind === undefined || pitchesIn(layout, behind) === null) return null;
  return tokensOf(behind).filter((at) => layout.tokens[at]?.is === "number").length === 1 ? behind : null;
});

/** The pitches counted in a part, or in the one right behind it that says nothing else. */
export const overPitches = oncePerPart((layout: Layout, part: Part): number | null => {
  const own = pitchesIn(layout, part);
  if (own !== null) return own;
  const behind = pitchesBehind(layout, part);
  return behind === null ? null : pitchesIn(layout, behind);
});

/** A length over so many pitches that can be a chain's: those of roller chains for motorcycles are 3/8 to 3/4 in (ISO 606); a "525 with 112 links" is its size. */
export const isPitch = ({ units, value }: Measurable, pitches: number): boolean => {
  const unit = units.find((each) => dimensionOf(each) === "length");
  // "12.55 in over 21 pins": "in" is a plain word as well, and bare figures may be of either.
  return (unit === undefined ? (["mm", "in"] as const) : [unit]).some((each) => {
    const pitch = toCanonical(value, each) / pitches;
    return pitch > LEAST_PITCH && pitch < MOST_PITCH;
  });
};
/** mm, with the wear of a chain and a slip of the ruler. */
const [LEAST_PITCH, MOST_PITCH] = [9, 20.5];

/** Right behind the chain, or behind a word that says that it was or is so. */
export function isBehindChain({ tokens, known: { vocabulary } }: Layout, { at, part }: Measurable): boolean {
  const { chain, found } = vocabulary.measuring;
  if (among(chain, wordAt(tokens, at - 1))) return true;
  const [state, before] = [wordAt(tokens, at - 1), at - 2 >= part.from ? wordAt(tokens, at - 2) : null];
  return among(chain, before) && [found, vocabulary.maybe.is, vocabulary.at, vocabulary.now].some((list) => among(list, state));
}
