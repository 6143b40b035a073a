// Where on the bike each value was read: figures and places matched part by part, in the order they were said, or asked about.

import type { Place, ReadingKind } from "../core/reading/kinds.ts";
import { hasSides, kindRow } from "../core/reading/kinds.ts";
import { LININGS, TYRES } from "../core/reading/places.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { aheadOf } from "./counted.ts";
import { indexOf, longest } from "./defect-index.ts";
import { firstBehind } from "./kind-of.ts";
import { type Layout, phrasesInside, SEVERAL } from "./layout.ts";
import type { Measurable } from "./measured-figures.ts";
import { isAnd, oncePerPart, tokensOf } from "./pieces.ts";

/** Where a figure was read; "both" is front and rear alike; null when nothing says so. */
export type Where = Place | "both" | null;

/** A figure with its kind, while its place is looked for. */
export type Kinded = { readonly figure: Measurable; readonly kind: ReadingKind; readonly state: "found" | "left" | null };

type PlaceAt = { readonly at: number; readonly place: Place | "both" };

/** The place of each figure of one clause, in their order. */
export function placesOf(layout: Layout, all: readonly Kinded[]): readonly Where[] {
  const found = new Map<Kinded, Where>();
  for (const part of new Set(all.map(({ figure }) => figure.part))) {
    const here = all.filter(({ figure }) => figure.part === part);
    for (const kind of new Set(here.map((each) => each.kind))) {
      const same = here.filter((each) => each.kind === kind);
      const places = placesFor(layout, kind, part, same, here);
      if (!isEnds(kind)) continue;
      const where = matched(same, places, kind === "pad thickness" ? phrasesInside(layout.phrases.side, part).length : 0, isAlone(layout, part, here));
      same.forEach((each, n) => {
        found.set(each, where[n] ?? null);
      });
    }
  }
  numbered(
    layout,
    all.filter(({ kind }) => !isEnds(kind) && kindRow(kind).places.length > 0),
    found,
  );
  // "Intake 0.09 found, 0.15 left": what was left is where it was found.
  all.forEach((each, n) => {
    const before = all[n - 1];
    if (each.state !== null && before?.state != null && before.state !== each.state && before.kind === each.kind && found.get(each) == null)
      found.set(each, found.get(before) ?? null);
  });
  for (const each of all)
    if (found.get(each) == null && each.figure.place === null && WORN.includes(each.kind) && (each.state !== null || isSided(layout, each.figure)))
      found.set(each, endSaid(layout, each, all, found));
  for (const each of all) if (each.kind === "tread" && found.get(each) == null && each.figure.place === null) found.set(each, tyreSaid(layout, each.figure));
  const count = new Map<ReadingKind, number>();
  for (const { kind } of all) count.set(kind, (count.get(kind) ?? 0) + 1);
  for (const each of all)
    if (count.get(each.kind) === 1 && found.get(each) == null && each.figure.place === null && isEnds(each.kind)) found.set(each, endBefore(layout, each));
  return all.map((each) => found.get(each) ?? each.figure.place);
}

/** "Rear tyre cracked sidewall, tread 2 mm": the only end that the clause names, before the figure, and of a tyre. */
function tyreSaid({ tokens, phrases, clauses, known, taken }: Layout, { at, part }: Measurable): Where {
  const clause = clauses.find(({ from, to }) => from <= part.from && part.to <= to) ?? part;
  const [only, ...others] = phrasesInside(phrases.place, clause).filter((phrase) => isWheel(phrase) && !taken.has(phrase.at));
  const end = only?.are.find((place) => place === "front" || place === "rear");
  if (only === undefined || end === undefined || others.length > 0 || only.at > at) return null;
  const isTyre = (n: number): boolean => among(known.vocabulary.measuring.tyre, wordAt(tokens, n));
  return isTyre(only.to) || isTyre(only.to + 1) ? end : null;
}

/** What wears, and is measured at several points of one end. */
export const WORN: readonly ReadingKind[] = ["tread", "pad thickness", "shoe thickness", "disc thickness"];

/** Is a side, or which pad of a pair, said right beside it? */
const isSided = (layout: Layout, { at, part }: Measurable): boolean =>
  [...phrasesInside(layout.phrases.side, part), ...phrasesInside(layout.phrases.place, part).filter(isSide)].some(
    (phrase) => phrase.to === at - 1 || phrase.at === at + 1,
  );

/** "New rear pads, found 1.2 mm, left 5 mm", "rear pads inner 3, outer 2.8": the end of the same thing read before, else the only one that the clause names; with its side, where one is said before it. */
function endSaid(layout: Layout, each: Kinded, all: readonly Kinded[], found: ReadonlyMap<Kinded, Where>): Where {
  const { part, at } = each.figure;
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to) ?? part;
  const ends = new Set(
    phrasesInside(layout.phrases.place, clause)
      .filter(isWheel)
      .flatMap(({ are }) => are),
  );
  const before = all.slice(0, all.indexOf(each)).findLast(({ kind }) => kind === each.kind);
  const place = before === undefined ? null : (found.get(before) ?? null);
  const [only] = ends.size === 1 ? ends : [];
  const end = place === null || place === "both" ? only : place.startsWith("front") ? "front" : place;
  if (end !== "front" && end !== "rear") return null;
  const sides = phrasesInside(layout.phrases.place, part).filter(isSide);
  const first = all.find(({ figure }) => figure.part === part)?.figure ?? each.figure;
  const leads = [...sides, ...phrasesInside(layout.phrases.side, part)].some((phrase) => phrase.to < first.at);
  const side = sides.find((phrase) => (leads ? phrase.to === at - 1 : phrase.at === at + 1));
  const isLed = side !== undefined && each.state === null && end === "front" && hasSides(each.kind);
  return isLed ? (side.are.includes("left") ? "front left" : "front right") : end;
}

/** "Checked the front pads, 3.5 mm": the end that the part right before names with the thing and without a figure, where the clause names no other. */
function endBefore(layout: Layout, { kind, figure: { part } }: Kinded): Where {
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to);
  if (clause === undefined) return null;
  const before = clause.parts.findLast(({ to }) => to < part.from) ?? aheadOf(layout, clause, part);
  if (before === null) return null;
  const ends = [...new Set(phrasesInside(layout.phrases.place, clause).flatMap(({ at, are }) => (layout.taken.has(at) ? [] : are)))];
  const [end] = ends;
  if (ends.length !== 1 || (end !== "front" && end !== "rear")) return null;
  const words = tokensOf(before);
  if (!words.some((at) => layout.placeStarts.has(at)) || words.some((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at))) return null;
  const names = phrasesInside(layout.phrases.kind, before).some(({ are }) => are.includes(kind));
  const isTyre = OF_TYRES.includes(kind) && words.some((at) => among(layout.known.vocabulary.measuring.tyre, wordAt(layout.tokens, at)));
  return names || isTyre ? end : null;
}
const OF_TYRES: readonly ReadingKind[] = ["cold pressure", "tread", "tyre date code"];

/** Is every figure of a part one of those that were read? */
const isAlone = (layout: Layout, part: Part, here: readonly Kinded[]): boolean => {
  const read = new Set(here.flatMap(({ figure: { at, rangeTo } }) => (rangeTo === null ? [at] : [at, at + 1, at + 2])));
  for (let at = part.from; at <= part.to; at++)
    if (layout.tokens[at]?.is === "number" && !layout.taken.has(at) && !layout.indexes.has(at) && !read.has(at)) return false;
  return true;
};

const isEnds = (kind: ReadingKind): boolean => kindRow(kind).places.some((place) => place === "front");

/** The places that a part names for a kind; a caliper's side counts only with "front" said. */
function placesFor(layout: Layout, kind: ReadingKind, part: Part, same: readonly Kinded[], here: readonly Kinded[]): readonly PlaceAt[] {
  const own = window(part, same, here);
  const words = withoutWrong(
    layout,
    part,
    same,
    withSideLetters(
      layout,
      own,
      kind,
      phrasesInside(layout.phrases.place, own).filter(({ at }) => !layout.taken.has(at)),
    ),
  );
  const before =
    kind === "static sag" || kind === "rider sag" ? sagPlace(layout, part, words) : kind === "cold pressure" ? flatPlace(layout, part, words) : null;
  if (before !== null) return [before];
  const front = words.some(({ are }) => are.some((place) => place.startsWith("front"))) || isFrontBefore(layout, kind, part, words);
  const calipers = hasSides(kind);
  const sided = calipers && front && words.some((word) => isSide(word) && !isRemaining(layout, part, word));
  const allowed: readonly string[] = [...(calipers ? LININGS : TYRES), "both"];
  return words.flatMap(({ at, are }): PlaceAt[] => {
    const [word] = are;
    if (sided && word === "front") return [];
    const place = sided && word === "left" ? "front left" : sided && word === "right" ? "front right" : word;
    return place !== undefined && allowed.includes(place) ? [{ at, place: place as PlaceAt["place"] }] : [];
  });
}

/** "Front pads 3 mm l 2.5 mm r": letters of both sides, of what has sides and of the front. */
function withSideLetters(layout: Layout, own: Part, kind: ReadingKind, words: readonly PlacePhrase[]): readonly PlacePhrase[] {
  const { left, right } = layout.known.vocabulary.measuring.sideLetters;
  const at = (letters: readonly string[]): readonly number[] =>
    tokensOf(own).filter((each) => {
      const token = layout.tokens[each];
      return token?.is === "number"
        ? token.units.length === 0 && among(letters, (token.unitText ?? "").toLowerCase())
        : among(letters, wordAt(layout.tokens, each));
    });
  const [lefts, rights] = hasSides(kind) ? [at(left), at(right)] : [[], []];
  if (lefts.length === 0 || rights.length === 0 || !words.some(({ are }) => are.includes("front"))) return words;
  const letters = [...lefts.map((n) => ({ at: n, to: n, are: ["left" as const] })), ...rights.map((n) => ({ at: n, to: n, are: ["right" as const] }))];
  return [...words.filter((word) => !rights.includes(word.at) && !lefts.includes(word.at)), ...letters].sort((a, b) => a.at - b.at);
}

/** "Front 34 psi rear flat", "rear bald, front 3 mm": of two ends, the one that only something wrong is said of has none of the figures. */
function withoutWrong(layout: Layout, part: Part, same: readonly Kinded[], words: readonly PlacePhrase[]): readonly PlacePhrase[] {
  const ends = words.filter(isWheel);
  if (ends.length <= same.length) return words;
  const alone = ends.filter((end) => !isPaired(layout, ends, end));
  const behind = new Map(alone.map((end) => [end, signAt(layout, part, end, 1)]));
  // "Front is flat and rear 36 psi": what is said of the end before it is not of the one behind it.
  const said = [...behind.values()];
  const wrong = alone.filter((end) => {
    const before = behind.get(end) === null ? signAt(layout, part, end, -1) : null;
    return behind.get(end) !== null || (before !== null && !said.includes(before));
  });
  return wrong.length === 0 || wrong.length === ends.length ? words : words.filter((each) => !wrong.includes(each));
}

/** "Front and rear". */
const isPaired = (layout: Layout, ends: readonly PlacePhrase[], { at, to }: PlacePhrase): boolean =>
  ends.some((other) => {
    const between = { from: Math.min(other.to, to) + 1, to: Math.max(other.at, at) - 1 };
    return other.at !== at && tokensOf(between).every((each) => isAnd(layout, each) || layout.tokens[each]?.is === "break");
  });

/** The sign of something wrong that stands right behind an end, or else right before it; null where none does. */
function signAt(layout: Layout, part: Part, { at, to }: PlacePhrase, step: 1 | -1): number | null {
  const { defects, measuring } = layout.known.vocabulary;
  const { signs } = indexOf(defects);
  const things = phrasesInside(layout.phrases.kind, part);
  const mayStand = (n: number): boolean =>
    [defects.between, defects.joins, measuring.tyre].some((list) => among(list, wordAt(layout.tokens, n))) ||
    things.some((each) => n >= each.at && n <= each.to);
  for (let n = step === 1 ? to + 1 : at - 1; n >= part.from && n <= part.to; n += step) {
    if (longest(layout.tokens, n, step === 1 ? part.to : at - 1, signs) !== null) return n;
    if (!mayStand(n)) return null;
  }
  return null;
}

const isSide = ({ are }: PlacePhrase): boolean => are.includes("left") || are.includes("right");

/** "Front pads 2 mm left", "2 mm left on the front pads": behind a figure, with no right said in the clause, it is what is left of them. */
function isRemaining(layout: Layout, part: Part, { at, are }: PlacePhrase): boolean {
  const isBehindThing = phrasesInside(layout.phrases.kind, { from: at - 1, to: at - 1 }).length > 0 && layout.tokens[at - 3]?.is === "number";
  if (!are.includes("left") || !(layout.tokens[at - 1]?.is === "number" || isBehindThing)) return false;
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to) ?? part;
  return !phrasesInside(layout.phrases.place, clause).some((other) => other.are.includes("right"));
}

type PlacePhrase = Layout["phrases"]["place"][number];
const isWheel = ({ are }: PlacePhrase): boolean => are.some((place) => place === "front" || place === "rear" || place === "both");

/** "Rear sag: static 12 mm, rider 34 mm": the only end that the clause names, before any figure, is that of both sags. */
function sagPlace(layout: Layout, part: Part, own: readonly PlacePhrase[]): PlaceAt | null {
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to);
  if (clause === undefined || own.some(isWheel)) return null;
  const [only, ...others] = phrasesInside(layout.phrases.place, clause).filter((phrase) => isWheel(phrase) && !layout.taken.has(phrase.at));
  const place = only?.are.find((each) => each === "front" || each === "rear");
  if (only === undefined || place === undefined || others.length > 0) return null;
  for (let at = clause.from; at < only.at; at++) if (layout.tokens[at]?.is === "number" && !layout.taken.has(at)) return null;
  return { at: only.at, place };
}

/** "Front tyre is flat, 0 psi": the end that was said to be flat, where the part names none and the clause no other. */
function flatPlace(layout: Layout, part: Part, own: readonly PlacePhrase[]): PlaceAt | null {
  if (own.some(isWheel)) return null;
  const clause = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to);
  return clause === undefined ? null : flatEnd(layout, clause);
}

const flatEnd = oncePerPart((layout: Layout, clause: Part): PlaceAt | null => {
  const { flat } = layout.known.vocabulary.measuring;
  const at = tokensOf(clause).find((each) => among(flat, wordAt(layout.tokens, each)));
  const [only, ...others] =
    at === undefined ? [] : phrasesInside(layout.phrases.place, clause).filter((phrase) => isWheel(phrase) && !layout.taken.has(phrase.at));
  const place = only?.are.find((each) => each === "front" || each === "rear");
  if (at === undefined || only === undefined || place === undefined || others.length > 0) return null;
  // No mark between the two.
  const [from, to] = [Math.min(at, only.at), Math.max(at, only.to)];
  return tokensOf({ from, to }).every((each) => layout.tokens[each]?.is === "word") ? { at: only.at, place } : null;
});

/** "Front pads, left 3.5 right 3", "front pads 4 left, 3.5 right": a part before names the end and the thing, and no figure but of a side too. */
function isFrontBefore(layout: Layout, kind: ReadingKind, part: Part, own: readonly PlacePhrase[]): boolean {
  if (!hasSides(kind) || own.some(isWheel) || !own.some(isSide)) return false;
  const parts = layout.clauses.find(({ from, to }) => from <= part.from && part.to <= to)?.parts ?? [];
  const isEnd = (phrase: PlacePhrase): boolean => isWheel(phrase) || phrase.are.some((place) => place.startsWith("front"));
  const before = parts.findLast((each) => each.to < part.from && phrasesInside(layout.phrases.place, each).some(isEnd));
  if (before === undefined || !phrasesInside(layout.phrases.kind, before).some(({ are }) => are.includes(kind))) return false;
  const places = phrasesInside(layout.phrases.place, before);
  if (!places.filter(isEnd).every(({ are }) => are.some((place) => place.startsWith("front")))) return false;
  const isSided = places.some((phrase) => isSide(phrase) || phrase.are.some((place) => place === "front left" || place === "front right"));
  for (let at = before.from; at <= before.to; at++) if (layout.tokens[at]?.is === "number" && !layout.taken.has(at) && !isSided) return false;
  return true;
}

/** With several kinds in one part each has the words around its own figures: up to the figures of the kinds beside it. */
function window(part: Part, same: readonly Kinded[], here: readonly Kinded[]): Part {
  const [first, last] = [same[0]?.figure.at ?? part.from, same.at(-1)?.figure.at ?? part.to];
  const before = here.findLast(({ figure, kind }) => kind !== same[0]?.kind && figure.at < first);
  const after = here.find(({ figure, kind }) => kind !== same[0]?.kind && figure.at > last);
  return { from: before === undefined ? part.from : before.figure.at + 1, to: after === undefined ? part.to : after.figure.at - 1 };
}

/**
 * Figures and places of one kind in one part. As many of one as of the other: in order, when each figure stands by its own place.
 * One place for one figure; one place said twice; "front and rear 34". All else is left open.
 */
function matched(same: readonly Kinded[], places: readonly PlaceAt[], sides: number, alone: boolean): readonly Where[] {
  const own = same.map(({ figure }) => figure.place);
  if (own.every((place) => place !== null)) return own;
  const distinct = [...new Set(places.map(({ place }) => place))];
  const [only] = distinct;
  if (only === undefined) return own;
  // Inner and outer pads of one caliper stand at one place.
  if (distinct.length === 1 && sides === same.length) return same.map(() => only);
  // So does what was found and what was left.
  if (distinct.length === 1 && same.length === 2 && same.every(({ state }) => state !== null)) return same.map(() => only);
  if (same.length === 1) {
    if (distinct.length === 1) return [only];
    const both = distinct.length === 2 && distinct.includes("front") && distinct.includes("rear");
    const joined = both && places.length === 2 && (places[1]?.at ?? 0) - (places[0]?.at ?? 0) <= 2;
    // "Both front pads", "both bikes 34 front": of the end that is said.
    const ends = distinct.filter((place) => place !== "both");
    const [end] = ends;
    return [
      both && joined && alone
        ? "both"
        : distinct.includes("both") && ends.length === 1 && end !== undefined
          ? end
          : distinct.includes("both") && ends.length > 1
            ? "both"
            : null,
    ];
  }
  if (places.length === same.length && distinct.length === same.length) {
    const order = [...same.map(({ figure }) => ({ at: figure.at, is: "figure" })), ...places.map(({ at }) => ({ at, is: "place" }))].sort(
      (a, b) => a.at - b.at,
    );
    const shape = order.map(({ is }) => is[0]).join("");
    // fp fp, pf pf, and "33 36 front rear" said respectively.
    const n = same.length;
    if (
      [..."fp"].join("").repeat(n) === shape ||
      "pf".repeat(n) === shape ||
      shape === "f".repeat(n) + "p".repeat(n) ||
      shape === "p".repeat(n) + "f".repeat(n) ||
      // "Front 33/36 rear".
      shape === "pffp"
    )
      return places.map(({ place }) => place);
  }
  return own;
}

/** "Cyl 1 in 0.10 ex 0.16, cyl 2 in 0.11", "exhaust 0.18 cyl 1": which cylinder a valve is of, the one named before it or, where the valves lead, behind it. */
function cylinderOf(layout: Layout, words: readonly PlacePhrase[], word: PlacePhrase): number | undefined {
  if (word.are.includes("cylinder")) return undefined;
  const counted = words.filter((each) => isCounted(layout, each));
  const [first] = counted;
  if (first === undefined) return undefined;
  const leads = first.at < (words.find(({ are }) => !are.includes("cylinder"))?.at ?? Number.POSITIVE_INFINITY);
  const own = leads ? counted.findLast(({ at }) => at < word.at) : counted.find(({ at }) => at > word.at);
  return own === undefined ? undefined : layout.indexes.get(own.to + 1);
}

/** "Cylinder 2". */
const isCounted = (layout: Layout, { are, to }: PlacePhrase): boolean => are.includes("cylinder") && layout.indexes.has(to + 1);

/** Valves and cylinders: each figure belongs to the word before it, or to the one behind where the figures come first; a row of figures is counted. */
function numbered(layout: Layout, all: readonly Kinded[], found: Map<Kinded, Where>): void {
  const [firstFigure] = all;
  if (firstFigure === undefined) return;
  const said = layout.phrases.place.filter(({ are }) => are.some((place) => place === "intake" || place === "exhaust" || place === "cylinder"));
  // A cylinder that is counted says which valve it is of, where valves are named.
  const valves = said.filter((word) => !isCounted(layout, word));
  const words = valves.length > 0 && all.every(({ kind }) => kind === "valve clearance") ? valves : said;
  const before = (words[0]?.at ?? Number.POSITIVE_INFINITY) < firstFigure.figure.at;
  const groups = new Map<number, Kinded[]>();
  const figures = all.map(({ figure }) => figure);
  for (const each of all) {
    const { at } = each.figure;
    const nextFigure = figures[firstBehind(figures, at)]?.at ?? Number.POSITIVE_INFINITY;
    const next = firstBehind(words, at);
    const behind = words[next];
    const word = before ? words[next - 1] : behind !== undefined && behind.at < nextFigure ? behind : undefined;
    const key = word === undefined ? -1 : word.at;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [each]);
    else group.push(each);
  }
  // With a figure that no word stands by, the rest are not sure either.
  if (groups.size > 1 && groups.has(-1)) return;
  for (const [key, group] of groups) {
    const word = key < 0 ? undefined : words[firstBehind(words, key) - 1];
    const name =
      word?.are.find((place) => place === "intake" || place === "exhaust" || place === "cylinder") ?? (group[0]?.kind === "compression" ? "cylinder" : null);
    const index = word === undefined ? undefined : (layout.indexes.get(word.to + 1) ?? cylinderOf(layout, said, word));
    for (const state of new Set(group.map((each) => each.state))) {
      const row = group.filter((each) => each.state === state);
      row.forEach((each, n) => {
        if (name === null) return;
        if (index !== undefined) found.set(each, row.length === 1 && index !== SEVERAL ? `${name} ${index}` : null);
        else if (row.length > 1) found.set(each, `${name} ${n + 1}`);
        else found.set(each, name === "cylinder" ? null : name);
      });
    }
  }
}
