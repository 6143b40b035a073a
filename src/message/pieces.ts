// A clause cut into pieces, each speaking of one bike or of several together.

import { among, under } from "./among.ts";
import type { Named } from "./bikes.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { bikeAt, inside, type Layout } from "./layout.ts";

/** Parts that speak of the same bikes; `names` empty when none is named in them. */
export type Group = { readonly names: readonly Named[]; readonly parts: readonly Part[] };

/** In order: "lubed the chain on Heron, changed the oil on Otter" are two, and so are two bikes named in one part. */
export function byBike(layout: Layout, clause: Clause): readonly Group[] {
  const groups: { names: readonly Named[]; parts: Part[] }[] = [];
  for (const piece of clause.parts.flatMap((part) => piecesOf(layout, part))) {
    const last = groups.at(-1);
    if (last !== undefined && keyOf(layout, last) === keyOf(layout, { names: piece.names, parts: [piece.part] })) last.parts.push(piece.part);
    else groups.push({ names: piece.names, parts: [piece.part] });
  }
  return groups;
}

const keyOf = (layout: Layout, { names, parts: [part = { from: 0, to: 0 }] }: Group): string =>
  names.length > 0 ? names.map((name) => name.bikes.join("+") || name.typed).join() : (bikeAt(layout, part).bike?.id ?? "");

/** A part cut between the bikes that it names: behind each when the work comes first, before each when the name does. Names joined by "and" stay together. */
function piecesOf(layout: Layout, part: Part): readonly { readonly names: readonly Named[]; readonly part: Part }[] {
  const names = layout.named.filter((name) => inside(name, part));
  const joined: Named[][] = [];
  for (const name of names) {
    const before = joined.at(-1)?.at(-1);
    if (before !== undefined && tokensOf({ from: before.to + 1, to: name.from - 1 }).every((at) => isJoin(layout, at))) joined.at(-1)?.push(name);
    else joined.push([name]);
  }
  const [first] = names;
  if (joined.length < 2 || first === undefined) return [{ names: joined[0] ?? [], part }];
  const verb = tokensOf(part).find((at) => isVerb(layout, at)) ?? part.to;
  const pieces: { names: readonly Named[]; part: Part }[] = [];
  let from = part.from;
  for (const [n, group] of joined.entries()) {
    const next = joined[n + 1]?.[0];
    const behind = (group.at(-1)?.to ?? from) + 1;
    const cut =
      next === undefined
        ? part.to + 1
        : first.from < verb
          ? (workBefore(layout, behind, next.from) ?? next.from)
          : (tokensOf({ from: behind, to: next.from - 1 }).find((at) => isJoin(layout, at)) ?? behind);
    pieces.push({ names: group, part: { from, to: cut - 1 } });
    from = cut;
  }
  return pieces.filter((piece) => piece.part.to >= piece.part.from);
}

/** "Heron 14,350 and lubed the chain on Bramble": the join before a verb that works on the bike named behind it. */
function workBefore(layout: Layout, from: number, name: number): number | null {
  for (let at = name - 1; at >= from; at--) {
    if (!isAnd(layout, at)) continue;
    return tokensOf({ from: at + 1, to: name - 1 }).some((each) => isVerb(layout, each)) ? at : null;
  }
  return null;
}

/** Does a token join two things: "and", a comma, the "on" before a bike's name? */
export const isJoin = (layout: Layout, at: number): boolean =>
  joinAt(layout, at) === "," || isAnd(layout, at) || [...layout.known.vocabulary.joins, ...layout.known.vocabulary.onBike].includes(joinAt(layout, at));

/** "And", "&" and their like. */
export const isAnd = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.and, joinAt(layout, at));

/** A verb of the workshop, or "did". */
export function isVerb(layout: Layout, at: number): boolean {
  if (layout.tokens[at]?.is !== "word") return false;
  // It is asked of the same words over and over.
  const known = verbs.get(layout) ?? new Int8Array(layout.tokens.length);
  if (known[at] === 0) {
    verbs.set(layout, known);
    const works = under(layout.known.vocabulary.workDone, wordAt(layout.tokens, at)) !== undefined && !isRun(layout, at);
    known[at] = works || isPutNew(layout, at) ? 1 : -1;
  }
  return known[at] === 1;
}
const verbs = new WeakMap<Layout, Int8Array>();

/** "The front tyre has done 2,000 km", "der Reifen hat 2.000 km gemacht": how far a part has run is no work on it. */
function isRun({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  if (tokens[at + 1]?.is !== "number" && tokens[at - 1]?.is !== "number") return false;
  const word = wordAt(tokens, at);
  const isFar = (n: number): boolean => {
    const token = tokens[n];
    return token?.is === "number" && token.units.some((unit) => unit === "mi" || unit === "km");
  };
  const has = (n: number): boolean => among(vocabulary.others.has, wordAt(tokens, n));
  if (among(vocabulary.rode, word) && isFar(at + 1)) return has(at - 1);
  return among(vocabulary.rodeBehind, word) && isFar(at - 1) && has(at - 2);
}

/** How many words may stand between "put" and what is new. */
const NEAR = 5;

/** "Put new pads in", "had a new tyre put on": what is put says nothing, but for something new it is the fitting of it. */
function isPutNew({ tokens, named, known: { vocabulary } }: Layout, at: number): boolean {
  const word = wordAt(tokens, at);
  // "Heron got a new cable": what a bike gets is fitted; what its rider gets may only be bought.
  const gets = among(vocabulary.gets, word) && named.some(({ to }) => to === at - 1);
  // "Both bikes got oil": what was done is asked.
  const all = among(vocabulary.gets, word) && among(vocabulary.others.allBikes, `${wordAt(tokens, at - 2) ?? ""} ${wordAt(tokens, at - 1) ?? ""}`);
  if (all) return true;
  if (!gets && !among(vocabulary.puts, word)) return false;
  for (const step of [1, -1])
    for (let n = at + step; Math.abs(n - at) <= NEAR && tokens[n]?.is === "word"; n += step) if (among(vocabulary.renewed, wordAt(tokens, n))) return true;
  return false;
}

/** The tokens of a part. A part may be made for the asking, and nobody writes in what is given. */
export function tokensOf({ from, to }: Part): readonly number[] {
  for (let at = COUNTED.length; at <= to; at++) COUNTED.push(at);
  return to < from ? NO_TOKENS : COUNTED.slice(Math.max(0, from), to + 1);
}
const COUNTED: number[] = [];
const NO_TOKENS: readonly number[] = [];

/** A joining word or mark at a token. */
export function joinAt(layout: Layout, at: number): string {
  const token = layout.tokens[at];
  return token?.is === "break" ? token.mark : (wordAt(layout.tokens, at) ?? "");
}

/** Worked out once a part of a message: a part of many figures would else be read through again for each. */
export function oncePerPart<T>(work: (layout: Layout, part: Part) => T): (layout: Layout, part: Part) => T {
  return (layout, part) => {
    const known = layout.once.get(work) ?? new Map<Part, unknown>();
    if (known.size === 0) layout.once.set(work, known);
    if (!known.has(part)) known.set(part, work(layout, part));
    return known.get(part) as T;
  };
}

/** Marks the tokens of a stretch of the text as accounted for. */
export function mark(layout: Layout, at: readonly number[], start: number, end: number, used: Set<number>): void {
  for (const each of at) {
    const token = layout.tokens[each];
    if (token !== undefined && token.start >= start && token.start < end) used.add(each);
  }
}
