// Fluid put into hydraulics: "topped up the rear brake", "filled the clutch reservoir with DOT 4", "bled the clutch". The circuit names the job, and never the fluid.

import type { ItemKey } from "../core/ids.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { type FluidNamed, fluidsNamed, strangePut } from "./fluids-named.ts";
import type { Layout } from "./layout.ts";
import { oncePerPart, tokensOf } from "./pieces.ts";
import type { ItemPhrase } from "./read-items.ts";
import type { Phrase } from "./work-fit.ts";
import { holdsOnlyItems } from "./work-words.ts";

/** What a verb of pouring does, as work. */
const TOPPED = "top up";

/** Does a word say that something was poured in: "poured", "got", or "in" before what it went into? */
export const saysPut = (layout: Layout, at: number): boolean => {
  const { details, gets } = layout.known.vocabulary;
  const word = wordAt(layout.tokens, at);
  if (among(details.fluids.puts, word) || among(gets, word)) return true;
  return saysInto(layout, at);
};

/** "Into the clutch". */
function saysInto(layout: Layout, at: number): boolean {
  const { details, articles } = layout.known.vocabulary;
  if (!among(details.fluids.into, wordAt(layout.tokens, at))) return false;
  const next = among(articles, wordAt(layout.tokens, at + 1)) ? at + 2 : at + 1;
  return circuitAt(layout, next, layout.tokens.length - 1) !== null;
}

/** `phrase`: the job; null where the bike has no such circuit. `holds`: what else was read in it as a job and is the circuit or the fluid. */
type Put = {
  readonly phrase: Phrase | null;
  readonly verb: string;
  readonly circuit: Pick<Circuit, "from" | "to">;
  readonly holds: (phrase: ItemPhrase) => boolean;
};

/** Fluid that a part says went into a circuit of this bike, or that its clutch was bled; null where it says no such thing, or where the jobs that were read say it as well. */
export function fluidPut(layout: Layout, part: Part, bike: KnownBike, said: readonly ItemPhrase[]): Put | null {
  const { details, workDone } = layout.known.vocabulary;
  const at = tokensOf(part);
  const bled = at.find((each) => under(workDone, wordAt(layout.tokens, each))?.includes("bleed") === true);
  const puts = at.filter((each) => saysPut(layout, each));
  if (bled === undefined && puts.length === 0) return null;
  const isTopped = at.some((each) => under(workDone, wordAt(layout.tokens, each))?.includes(TOPPED) === true);
  const [start, end] = [layout.tokens[part.from]?.start ?? 0, layout.tokens[part.to]?.end];
  const text = layout.text.slice(start, end);
  const strange = strangePut(text, details);
  const fluids = [...fluidsNamed(text, [details]), ...strange].toSorted((a, b) => a.start - b.start);
  // "Put the front brake back" pours nothing.
  if (bled === undefined && !isTopped && fluids.length === 0) return null;
  const each = tokensOf(part).flatMap((from) => circuitAt(layout, from, part.to) ?? []);
  // What is said of the brakes when they are bled is in the names of their own job.
  const may = bled === undefined ? each : each.filter(({ item }) => item !== BRAKES);
  const isFluid = ({ from }: Circuit): boolean => fluids.some((fluid) => layout.tokens[from]?.start === start + fluid.start);
  // "The clutch with brake fluid", "brake fluid in the clutch" are the clutch.
  const circuit = may.find((one) => !isFluid(one)) ?? may[0] ?? (puts.length > 0 ? ofClassAlone(layout, part, start, fluids) : undefined);
  if (circuit === undefined) return null;
  // "DOT 4 goes in the brake" is advice: where no verb says that it was put in, nothing else may be said.
  const named = at.flatMap((each) => {
    const token = layout.tokens[each];
    const inFluid = token !== undefined && fluids.some((fluid) => token.start >= start + fluid.start && token.start < start + fluid.end);
    return inFluid || saysInto(layout, each) ? [{ from: each, to: each }] : [];
  });
  const isAdvice = bled === undefined && strange.length === 0 && puts.every((each) => saysInto(layout, each));
  if (isAdvice && !holdsOnlyItems(layout, part, [circuit, ...named])) return null;
  const overlaps = ({ from, to }: ItemPhrase): boolean => from <= circuit.to && to >= circuit.from;
  // "Brake fluid DOT 5.1 topped up": the fluid stands between the job and its verb.
  const parts = fluids.some((fluid) => layout.tokens[circuit.to + 1]?.start === start + fluid.start);
  if (isTopped && !parts && circuit.item === BRAKES && said.some((phrase) => overlaps(phrase) && phrase.items.some((each) => each === BRAKES))) return null;
  const item = bike.items.find(({ key }) => key === circuit.item)?.key;
  const poured = Object.entries(workDone).find(([, [first]]) => first === TOPPED)?.[0] ?? "";
  const verb = bled === undefined ? poured : (wordAt(layout.tokens, bled) ?? "");
  return {
    phrase: item === undefined ? null : { items: [item], together: true, from: circuit.from, to: circuit.to, part, verb, asks: false },
    verb,
    circuit,
    // "The clutch with brake fluid" names no job on the brakes.
    holds: (phrase) => overlaps(phrase) || named.some(({ from }) => from >= phrase.from && from <= phrase.to),
  };
}

const BRAKES = "brake-fluid.inspect";

/** "The shop put DOT 5 in": a class that went in is of the brakes, where nothing else is said (49 CFR 571.116). */
function ofClassAlone(layout: Layout, part: Part, start: number, fluids: readonly FluidNamed[]): Circuit | undefined {
  const fluid = fluids.find(({ name, end }) => {
    const { in: behind } = layout.known.vocabulary.details.fluids;
    // "5 in" looks like inches.
    const next = layout.tokens.find((token) => token.start >= start + end || token.end > start + end);
    const word = next?.is === "word" ? next.folded : next?.is === "number" ? (next.unitText ?? "") : "";
    return name.startsWith("DOT ") && among(behind, word.toLowerCase());
  });
  if (fluid === undefined) return undefined;
  const within = tokensOf(part).filter((at) => {
    const token = layout.tokens[at];
    return token !== undefined && token.start >= start + fluid.start && token.start < start + fluid.end;
  });
  const [from, to] = [within[0], within.at(-1)];
  return from === undefined || to === undefined ? undefined : { item: BRAKES as string as ItemKey, from, to };
}

/** Is a token in the name of what was put into a circuit and belongs into none? It is no job: "topped up the brake fluid with engine oil". */
export const isStrangeFluid = oncePerPart((layout: Layout, part: Part): ((at: number) => boolean) => {
  // Most jobs are on no hydraulics.
  if (tokensOf(part).every((at) => circuitAt(layout, at, part.to) === null)) return () => false;
  const [start, end] = [layout.tokens[part.from]?.start ?? 0, layout.tokens[part.to]?.end ?? 0];
  const found = strangePut(layout.text.slice(start, end), layout.known.vocabulary.details);
  return (at) => {
    const token = layout.tokens[at];
    return token !== undefined && found.some((each) => token.start >= start + each.start && token.start < start + each.end);
  };
});

type Circuit = { readonly item: ItemKey; readonly from: number; readonly to: number };

/** The longest name of a circuit that begins at a token. */
function circuitAt(layout: Layout, from: number, to: number): Circuit | null {
  let best: Circuit | null = null;
  const first = wordAt(layout.tokens, from);
  if (first === null) return null;
  for (const { item, words } of circuitsOf(layout.known.vocabulary.details.fluids.circuits).get(first) ?? []) {
    const last = from + words.length - 1;
    if (last > to || last <= (best?.to ?? -1) || !words.every((word, n) => wordAt(layout.tokens, from + n) === word)) continue;
    best = { item, from, to: last };
  }
  return best;
}

type CircuitName = { readonly item: ItemKey; readonly words: readonly string[] };
const circuitNames = new WeakMap<object, ReadonlyMap<string, readonly CircuitName[]>>();

/** The names of circuits by their first word, made once a language. */
function circuitsOf(circuits: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, readonly CircuitName[]> {
  const ready = circuitNames.get(circuits);
  if (ready !== undefined) return ready;
  const made = new Map<string, CircuitName[]>();
  for (const [item, phrases] of Object.entries(circuits))
    for (const phrase of phrases) {
      const words = phrase.split(" ");
      const [first = ""] = words;
      made.set(first, [...(made.get(first) ?? []), { item: item as ItemKey, words }]);
    }
  circuitNames.set(circuits, made);
  return made;
}
