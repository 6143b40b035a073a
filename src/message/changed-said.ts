// What is said of how much a value changed, and no value read: "lost 10 psi", "less than 2 mm"; and what was changed from one figure to another.

import { dimensionOf, toCanonical } from "../core/quantity/units.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { type Layout, phrasesInside } from "./layout.ts";
import { boundOf, type Measurable } from "./measured-figures.ts";
import { standsBeside } from "./phrases.ts";
import { oncePerPart, tokensOf } from "./pieces.ts";

/** "Disc runout 0.2 mm". */
const saysRunout = oncePerPart((layout: Layout, part: Part): boolean =>
  tokensOf(part).some((at) => among(layout.known.vocabulary.measuring.runout, wordAt(layout.tokens, at))),
);

/** "Rear tyre lost 10 psi", "grew by 10 mm", "less than 2 mm": how much more or less, and no value read. "Dropped to 28" is one. */
export const isDifference = (layout: Layout, figure: Measurable): boolean => {
  const { at, part } = figure;
  const { changed, past, up } = layout.known.vocabulary.measuring.change;
  if (isMoved(layout, part)) return false;
  if (isLittle(layout, figure) || (saysRunout(layout, part) && !phrasesInside(layout.phrases.kind, part).some(({ are }) => are.includes("disc runout"))))
    return true;
  for (let n = at - 1; n >= Math.max(part.from, at - 3); n--) {
    const word = wordAt(layout.tokens, n);
    if (layout.tokens[n]?.is === "number" || among(up, word)) return false;
    if (among(changed, word) || (n === at - 1 && among(past, word))) return boundOf(layout, figure) === null || !isPlainBound(layout, part);
  }
  return false;
};

/** "Rear tread less than 1 mm", and not "all treads under 1 mm get a fine": nothing else is said. */
const isPlainBound = oncePerPart((layout: Layout, part: Part): boolean => {
  const { change, bounds } = layout.known.vocabulary.measuring;
  const words = new Set([...bounds.under, ...bounds.over].flatMap((phrase) => phrase.split(" ")));
  return tokensOf(part).every((at) => {
    const word = wordAt(layout.tokens, at);
    return word === null || layout.taken.has(at) || (!among(change.changed, word) && (words.has(word) || standsBeside(word, layout.known.vocabulary)));
  });
});

/** "Put 3 psi in the front", "rear 3 psi low": of a tyre so little is what it has more or less, where a word beside it says so. */
function isLittle(layout: Layout, { at, part, value, units }: Measurable): boolean {
  const [unit] = units;
  if (unit === undefined || value <= 0 || dimensionOf(unit) !== "pressure" || toCanonical(value, unit) >= LITTLE) return false;
  const { little, up } = layout.known.vocabulary.measuring.change;
  if (among(up, wordAt(layout.tokens, at - 1)) && !among(little, wordAt(layout.tokens, at + 1))) return false;
  return [at - 3, at - 2, at - 1, at + 1, at + 2].some((n) => n >= part.from && n <= part.to && among(little, wordAt(layout.tokens, n)));
}

/** kPa; about 10 psi. */
const LITTLE = 70;

/** "Dropped the rear from 42 to 36": from a figure to another one, and nothing else. */
export const isMoved = oncePerPart((layout: Layout, part: Part): boolean => {
  const { moved, left } = layout.known.vocabulary.measuring;
  const figures = tokensOf(part).filter((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at));
  const [first = 0, second = 0] = figures;
  const isFound = phrasesInside(layout.phrases.state, part).some(({ to, are }) => to === first - 1 && are.includes("found"));
  if (figures.length !== 2 || !isFound || second !== first + 2 || !among(left, wordAt(layout.tokens, first + 1))) return false;
  return tokensOf(part).every((at) => {
    const word = wordAt(layout.tokens, at);
    return word === null || layout.taken.has(at) || among(moved, word) || standsBeside(word, layout.known.vocabulary);
  });
});

/** Is a disc named in the clause, so that a runout is its own? */
export const isOfDisc = oncePerPart((layout: Layout, part: Part): boolean => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to) ?? part;
  const named = phrasesInside(layout.phrases.kind, clause);
  return named.some(
    ({ at, to, are }) =>
      are.includes("disc thickness") ||
      (are.includes("disc runout") && (to > at || !among(layout.known.vocabulary.measuring.runout, wordAt(layout.tokens, at)))),
  );
});
