// The words by which the details of a job are read, as data. Each language supplies its own.

import type { KitWords } from "../parts/kit-named.ts";
import type { Construction } from "../tyre/marking.ts";

export type DetailWords = {
  /** Signs and words of money, each with its code (ISO 4217) or the sign itself where several countries share it. */
  readonly currencies: Readonly<Record<string, string>>;
  /** Who works on bikes for others: "shop". */
  readonly shops: readonly string[];
  /** Words that say a measure is of the new part: "new". */
  readonly fresh: readonly string[];
  /** Before what a job cost: "for". */
  readonly forCost: readonly string[];
  /** Before what was left out of a job: "without". */
  readonly without: readonly string[];
  /** Beside what was taken off: "old ones". */
  readonly old: readonly string[];
  /** What is done at a mark of the plan as a whole: "service". */
  readonly service: readonly string[];
  /** The same as a verb: "serviced". */
  readonly serviced: readonly string[];
  /** How much of a service it was, which its plan knows by the figure: "big", "annual". */
  readonly sized: readonly string[];
  /** Beside a service these say that the bike was in other hands for it: "took", "had". */
  readonly handedOver: readonly string[];
  /** Beside a service these make it none that was done: "limit", "booked". */
  readonly notService: readonly string[];
  /** Before a shop: "at", "by". */
  readonly byWhom: readonly string[];
  /** Of those, what a shop's own name may stand behind: "at Miller's". */
  readonly byName: readonly string[];
  /** What kinds of battery are called beside "battery", by kind. */
  readonly batteries: Readonly<Record<string, readonly string[]>>;
  /** How a tyre is built, beside "tyre" or in its place, by construction: "cross-ply". */
  readonly constructions: Readonly<Record<Construction, readonly string[]>>;
  /** What belongs to a kit. */
  readonly kits: KitWords;
  /** What goes into hydraulics. */
  readonly fluids: FluidWords;
  /** Before those: one's own garage does no work, "in the garage". */
  readonly within: readonly string[];
};

export type FluidWords = {
  /** What a fluid is called beside its class, by the class or family that it is of. */
  readonly names: Readonly<Record<string, readonly string[]>>;
  /** What belongs into no circuit and is put there by mistake, as the trade's table names it: "engine oil". It is a fluid only where it is said to have gone in. */
  readonly strange: Readonly<Record<string, readonly string[]>>;
  /** Behind such a name these make it something else: "oil change". */
  readonly strangeNotBefore: readonly string[];
  /** Before such a name these say that it went in: "with engine oil". */
  readonly with: readonly string[];
  /** Between those and the name: "with some engine oil". */
  readonly some: readonly string[];
  /** Beside such a name these say the same: "ATF by mistake". */
  readonly mistake: readonly string[];
  /** Verbs that get the air out and need not change all of the fluid: "bled". */
  readonly bled: readonly string[];
  /** Behind a class that went in without a word of where: "put DOT 5 in". */
  readonly in: readonly string[];
  /** What a job is done with and is no fluid: "with a syringe". */
  readonly tools: readonly string[];
  /** Behind such a name these make it something else: "silicone grease". */
  readonly notBefore: readonly string[];
  /** Before such a name these deny it: "not DOT 5". */
  readonly denied: readonly string[];
  /** Verbs of pouring: beside a circuit and what was poured they say a topping up. */
  readonly puts: readonly string[];
  /** Before a circuit they say the same: "DOT 4 into the clutch". */
  readonly into: readonly string[];
  /** What is topped up, by the item that it is recorded at. */
  readonly circuits: Readonly<Record<string, readonly string[]>>;
};
