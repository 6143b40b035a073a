// How something was read: cold, upright, rested; said beside the figure, or behind it by itself: "12.6 V, rested".

import type { ConditionRead } from "../core/reading/detail.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { type Layout, phrasesInside } from "./layout.ts";
import { isAnd, oncePerPart, tokensOf } from "./pieces.ts";

/**
 * The conditions that hold for what a part says.
 * @param last the last of the parts that speak of the same kind: what stands by itself behind it is said of all of them
 */
export const conditionsOf = (layout: Layout, part: Part, last: Part = part): readonly ConditionRead[] => [
  ...new Set([...beside(layout, part), ...behind(layout, part), ...behind(layout, last)]),
];

const beside = oncePerPart((layout: Layout, part: Part): readonly ConditionRead[] => [
  ...new Set(phrasesInside(layout.phrases.condition, part).flatMap(({ are }) => are)),
]);

/** Said in the parts that follow and say nothing else. */
const behind = oncePerPart((layout: Layout, part: Part): readonly ConditionRead[] => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  const after = clause?.parts.filter(({ from }) => from > part.to) ?? [];
  const other = after.findIndex((each) => !saysOnlyHow(layout, each));
  return (other < 0 ? after : after.slice(0, other)).flatMap((each) => beside(layout, each));
});

function saysOnlyHow(layout: Layout, part: Part): boolean {
  const phrases = phrasesInside(layout.phrases.condition, part);
  if (phrases.length === 0) return false;
  return tokensOf(part).every((at) => {
    if (phrases.some((phrase) => at >= phrase.at && at <= phrase.to) || isAnd(layout, at)) return true;
    const word = wordAt(layout.tokens, at);
    return layout.tokens[at]?.is !== "number" && !layout.taken.has(at) && (word === null || word === undefined || among(layout.known.vocabulary.onBike, word));
  });
}
