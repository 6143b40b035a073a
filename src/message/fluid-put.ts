// Fluid poured into hydraulics: "topped up the rear brake", "filled the clutch reservoir with DOT 4". The circuit names the job, and never the fluid.

import type { ItemKey } from "../core/ids.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { fluidsNamed } from "./fluids-named.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import type { ItemPhrase } from "./read-items.ts";
import type { Phrase } from "./work-fit.ts";

/** What a verb of pouring does, as work. */
const TOPPED = "top up";

/** Does a word say that something was poured in? */
export const saysPut = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.details.fluids.puts, wordAt(layout.tokens, at));

/** `phrase`: the job; null where the bike has no such circuit. `holds`: what else was read in it as a job and is the circuit or the fluid. */
type Put = { readonly phrase: Phrase | null; readonly verb: string; readonly holds: (phrase: ItemPhrase) => boolean };

/** Fluid that a part says went into a circuit of this bike; null where it says no such thing, or where the jobs that were read say it as well. */
export function fluidPut(layout: Layout, part: Part, bike: KnownBike, said: readonly ItemPhrase[]): Put | null {
  const { details, workDone } = layout.known.vocabulary;
  const at = tokensOf(part).find((each) => saysPut(layout, each));
  if (at === undefined) return null;
  const isTopped = under(workDone, wordAt(layout.tokens, at))?.includes(TOPPED) === true;
  const text = layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end);
  // "Put the front brake back" pours nothing.
  if (!isTopped && fluidsNamed(text, [details]).length === 0) return null;
  const circuit = circuitIn(layout, part);
  if (circuit === null) return null;
  const overlaps = ({ from, to }: ItemPhrase): boolean => from <= circuit.to && to >= circuit.from;
  if (isTopped && circuit.item === BRAKES && said.some((phrase) => overlaps(phrase) && phrase.items.some((each) => each === BRAKES))) return null;
  const item = bike.items.find(({ key }) => key === circuit.item)?.key;
  const verb = Object.entries(workDone).find(([, [first]]) => first === TOPPED)?.[0] ?? "";
  return {
    phrase: item === undefined ? null : { items: [item], together: true, from: circuit.from, to: circuit.to, part, verb, asks: false },
    verb,
    holds: (phrase) => overlaps(phrase) || phrase.items.some((each) => /^brake-fluid\./u.test(each)),
  };
}

const BRAKES = "brake-fluid.inspect";

/** The circuit that a part names first: "the clutch with brake fluid" is the clutch. */
function circuitIn(layout: Layout, part: Part): { readonly item: ItemKey; readonly from: number; readonly to: number } | null {
  const each = Object.entries(layout.known.vocabulary.details.fluids.circuits).flatMap(([item, phrases]) =>
    phrases.map((phrase) => ({ item, words: phrase.split(" ") })),
  );
  for (const from of tokensOf(part)) {
    const here = each.filter(({ words }) => from + words.length - 1 <= part.to && words.every((word, n) => wordAt(layout.tokens, from + n) === word));
    const [longest] = here.toSorted((a, b) => b.words.length - a.words.length);
    if (longest !== undefined) return { item: longest.item as ItemKey, from, to: from + longest.words.length - 1 };
  }
  return null;
}
