// What a message says was mended: open defects, and what it has just told of itself.

import type { KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import { foldWord } from "./scan.ts";
import { namesThing, thingsIn } from "./things-named.ts";

/** What was seen, and where it stands. */
type Seen = Part & { readonly kind: string | null };

/** Open defects of a bike that a part says were mended: "fixed the rear brake light". */
export function mendedIn(layout: Layout, part: Part, bike: KnownBike): readonly string[] {
  const open = bike.defects ?? [];
  const { defects } = layout.known.vocabulary;
  if (open.length === 0 || !tokensOf(part).some((at) => among(defects.mended, wordAt(layout.tokens, at)))) return [];
  const kinds = new Set(
    thingsIn(layout, part).flatMap((kind) => {
      const ends = defects.byEnd[kind];
      return ends === undefined ? [kind] : [kind, ends.front, ends.rear, ends.sidecar];
    }),
  );
  const said = sidesOf(
    layout,
    tokensOf(part).map((at) => wordAt(layout.tokens, at) ?? ""),
  );
  const verbs = tokensOf(part).flatMap((at) => (among(defects.mended, wordAt(layout.tokens, at)) ? [wordAt(layout.tokens, at)] : []));
  const isSetOnly = verbs.every((verb) => under(layout.known.vocabulary.workDone, verb)?.[0] === "adjust");
  const mayBe = (kind: string): boolean =>
    verbs.some((verb) => under(defects.mendsOnly, verb)?.includes(kind) !== false) && !(isSetOnly && !canBeSet(kind, bike));
  const { things, ofThem } = defects.linings;
  const namesLinings = (those: readonly (string | null)[]): boolean => those.some((word) => among(things, word));
  const withLinings = namesLinings(tokensOf(part).map((at) => wordAt(layout.tokens, at) ?? null));
  const meant = open.filter(({ kind, words }) => {
    if (kind === null || !kinds.has(kind) || !mayBe(kind)) return false;
    // "Changed the front pads": a caliper that has seized, or a disc that is cracked, is as it was.
    if (withLinings && ofThem.includes(kind) && !namesLinings(words.split(/[^\p{L}]+/u).map(foldWord))) return false;
    const sides = sidesOf(layout, words.split(/\s+/u).map(foldWord));
    return said.length === 0 || sides.length === 0 || sides.some((side) => said.includes(side));
  });
  // Of several that it could be, the member says which.
  return meant.length === 1 ? meant.map(({ id }) => id) : [];
}

/** "Clutch adjusted" mends these where a cable works it, "brake adjusted" where a drum is set: what fluid works sets itself. */
const SET_AT: Readonly<Record<string, RegExp>> = {
  ...{ "slipping clutch": /^clutch-free-play\./u, "dragging clutch": /^clutch-free-play\./u, "no clutch play": /^clutch-free-play\./u },
  ...{ "soft clutch": /^clutch-free-play\./u, "soft brake": /-drum\.adjust$/u, "odd brake": /-drum\.adjust$/u, "dragging brake": /-drum\.adjust$/u },
};
const canBeSet = (kind: string, { items }: KnownBike): boolean => {
  const at = SET_AT[kind];
  return at === undefined || items.some(({ key }) => at.test(key));
};

const SIDES = ["left", "right"];
const sidesOf = (layout: Layout, words: readonly string[]): readonly string[] => {
  const { front, rear } = layout.known.vocabulary.places;
  return words.flatMap((word) => (front.includes(word) ? "front" : rear.includes(word) ? "rear" : SIDES.includes(word) ? word : []));
};

/** "Headlight bulb blown, replaced", "oil leak at the plug, new washer fitted": mended since, as it seems, so it is asked. */
export function mayBeMended(layout: Layout, next: Part | null): boolean {
  if (next === null || namesThing(layout, next)) return false;
  const { vocabulary } = layout.known;
  const words = tokensOf(next).flatMap((at) => wordAt(layout.tokens, at) ?? []);
  const isNew = words.some((word) => among(vocabulary.renewed, word));
  return (
    words.length <= (isNew ? 5 : 2) && words.some((word) => among(vocabulary.defects.mended, word)) && !words.some((word) => among(vocabulary.notDone, word))
  );
}

/** "Had an oil leak, fixed it": nothing stands open; "spongy after I bled it" does, and so does what must yet be fixed. */
export function isMended(layout: Layout, part: Part, seen: Seen, next: Part | null): boolean {
  const { vocabulary } = layout.known;
  const { mended, inVain, past } = vocabulary.defects;
  const says = (within: Part): boolean => {
    // "Headlight out and changed the oil": something else was worked at.
    if (seen.kind !== null && namesThing(layout, within) && !thingsIn(layout, within).includes(seen.kind)) return false;
    const words = tokensOf(within).map((at) => wordAt(layout.tokens, at));
    return words.some((word) => among(mended, word)) && !words.some((word) => among(inVain, word) || among(vocabulary.notDone, word));
  };
  const isPast = tokensOf({ from: part.from, to: seen.from - 1 }).some((at) => among(past, wordAt(layout.tokens, at)));
  return says({ from: seen.to + 1, to: part.to }) || (isPast && next !== null && says(next));
}
