// Which fluid a job on the brakes or the clutch was done with: what is known of fluids, what belongs into no circuit, and what nobody here knows, as typed.

import type { RecordWork } from "../core/reading/intent.ts";
import type { PartFitted } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { type FluidNamed, fluidsNamed, strangePut, unknownPut } from "./fluids-named.ts";
import type { Layout } from "./layout.ts";
import { mark, tokensOf } from "./pieces.ts";

const FLUIDS = /^(?:brake-fluid|clutch-fluid|brake-hoses)\./u;

/** Is it work on what holds a hydraulic fluid? */
export const isOfFluids = ({ items }: Pick<RecordWork, "items">): boolean => items.some((each) => FLUIDS.test(each));

/**
 * "Topped up with DOT 4", "with mineral oil", "with engine oil", "with Zorbo": a fluid of which no amount was said.
 * @param used its words are added as accounted for @param jobs what the names of the jobs account for
 */
export function fluidsSaid(
  layout: Layout,
  clause: Clause,
  at: readonly number[],
  intent: RecordWork,
  used: Set<number>,
  jobs: ReadonlySet<number>,
): readonly PartFitted[] {
  const item = intent.items.find((each) => FLUIDS.test(each));
  if (item === undefined) return [];
  const { details } = layout.known.vocabulary;
  const offset = layout.tokens[clause.from]?.start ?? 0;
  const text = layout.text.slice(offset, layout.tokens[clause.to]?.end);
  const known = [...fluidsNamed(text, [details]), ...strangePut(text, details)].toSorted((a, b) => a.start - b.start);
  const isSaid = known.some(({ name }) => name !== "brake fluid");
  const named: readonly FluidNamed[] = isSaid ? known : [...known, ...unknownIn(layout, clause, offset)];
  return named.flatMap((fluid, n): readonly PartFitted[] => {
    const [start, end] = [offset + fluid.start, offset + fluid.end];
    const within = layout.tokens.flatMap((token, each) => (token.start >= start && token.start < end ? [each] : []));
    if (within.some((each) => layout.taken.has(each))) return [];
    // What was poured in is no name of the job, and of the brakes "brake fluid" says nothing.
    const isClutch = intent.items.some((each) => each.startsWith("clutch"));
    if (fluid.name === "brake fluid" && (!isClutch || within.some((each) => used.has(each) || !at.includes(each)))) return [];
    // Of which an amount was said is told there.
    if (within.some((each) => used.has(each) && !jobs.has(each))) return [];
    mark(layout, at, start, end, used);
    // "DOT 5 silicone" is one fluid.
    if (n > 0 && named[n - 1]?.name === fluid.name) return [];
    return [{ words: /^dot/iu.test(fluid.typed) ? fluid.name : fluid.typed, item, made: null }];
  });
}

function unknownIn(layout: Layout, clause: Clause, offset: number): readonly FluidNamed[] {
  const { details, at, onBike } = layout.known.vocabulary;
  return clause.parts.flatMap((part: Part): readonly FluidNamed[] => {
    const lead = tokensOf(part).find((each) => among(details.fluids.with, wordAt(layout.tokens, each)));
    if (lead === undefined) return [];
    // The day, the bike or what the dial showed may stand behind it.
    const end = tokensOf(part).find((each) => {
      const word = wordAt(layout.tokens, each);
      return each > lead && (layout.taken.has(each) || among(at, word) || among(onBike, word) || among(layout.known.vocabulary.dateWords, word));
    });
    const [start, stop] = [layout.tokens[part.from]?.start ?? 0, layout.tokens[end === undefined ? part.to : end - 1]?.end];
    const found = unknownPut(layout.text.slice(start, stop), details);
    return found === null ? [] : [{ ...found, name: "", start: found.start + start - offset, end: found.end + start - offset }];
  });
}
