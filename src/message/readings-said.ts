// The readings of one clause: odometer figures, cold pressures, tread depths.

import { toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { kindRow, type Place, type ReadingKind, type ReadingUnit } from "../core/reading/kinds.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { type Figure, figureAt, measures, unitAlone } from "./figures.ts";
import { bikeAt, dayAt, type Layout } from "./layout.ts";
import { oncePerPart } from "./pieces.ts";

/** @param used tokens that work has already accounted for */
export function readingsSaid(layout: Layout, clause: Clause, used: ReadonlySet<number>): readonly LogReading[] {
  const dials: LogReading[] = [];
  const small: Small[] = [];
  let kind: "cold pressure" | "tread" | null = null;
  for (const part of clause.parts) {
    kind = kindSaid(layout, part) ?? kind;
    for (let at = part.from; at <= part.to; at++) {
      if (used.has(at)) continue;
      const figure = figureAt(layout, at);
      if (figure === null) continue;
      const dial = asDial(layout, part, figure, used);
      if (dial !== null) dials.push(dial);
      else {
        const as = smallKind(layout, figure, part, kind);
        if (as !== null) small.push({ figure, part, kind: as });
      }
    }
  }
  return [...dials, ...placed(layout, clause, small)].sort((a, b) => layout.text.indexOf(a.typed.text) - layout.text.indexOf(b.typed.text));
}

type Small = { readonly figure: Figure; readonly part: Part; readonly kind: "cold pressure" | "tread" };

/** The kind that a part names, tread before pressure ("rear tyre tread"). */
function kindSaid(layout: Layout, part: Part): "cold pressure" | "tread" | null {
  const { kinds } = layout.known.vocabulary;
  const words = wordsOf(layout, part);
  if (words.some((word) => kinds.tread.includes(word))) return "tread";
  return words.some((word) => kinds["cold pressure"].includes(word)) ? "cold pressure" : null;
}

const wordsOf = oncePerPart((layout, part): readonly string[] => {
  const found = new Set<string>();
  for (let at = part.from; at <= part.to; at++) {
    const word = wordAt(layout.tokens, at);
    if (word !== null && !layout.taken.has(at)) found.add(word);
  }
  return [...found];
});

/** How far beyond its last figure a dial is believed without further words. */
const AHEAD = { mi: 3000, km: 5000 } as const;

function asDial(layout: Layout, part: Part, figure: Figure, used: ReadonlySet<number>): LogReading | null {
  const of = measures(figure);
  const unit = of === "distance" ? (figure.units[0] as "mi" | "km") : null;
  const { value, other } = figure.token;
  if (figure.token.fraction !== null || (of !== null && unit === null) || Math.max(value, other ?? 0) < (unit === null ? 1000 : 1)) return null;
  const { vocabulary } = layout.known;
  const words = wordsOf(layout, part);
  if (words.some((word) => vocabulary.notOdometer.includes(word) && vocabulary.workDone[word] === undefined)) return null;
  const meant = bikeAt(layout, { from: figure.at, to: figure.at });
  const near = meant.bike !== null && isNear(value, other, unit, meant.bike);
  const strong = words.some((word) => vocabulary.kinds.odometer.includes(word)) || isStrong(layout, part, used);
  const isYear = unit === null && /^(19|20)\d\d$/.test(figure.token.text);
  const named = layout.named.length > 0;
  const believed = strong ? !isYear || near : near && !isYear && (unit !== null || named);
  if (unit === null && value > 999_999) return null;
  if (!believed || (!strong && words.some((word) => vocabulary.notDone.includes(word) || vocabulary.notReading.includes(word)))) return null;
  const day = dayAt(layout, part, [part]);
  // "We did 14,820 miles last year" is a distance ridden; a dial of some day in a span is one only when the dial or the bike is named.
  if (day.span !== null && !named && !words.some((word) => vocabulary.kinds.odometer.includes(word))) return null;
  const dialUnit = meant.bike?.unit ?? null;
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(unit !== null && dialUnit !== null && unit !== dialUnit ? [{ need: "unit" as const, options: [unit, dialUnit] }] : []),
    ...(other === null || settledBy(value, other, meant.bike) ? [] : [{ need: "number" as const, options: [value, other] }]),
    ...(day.gap === null ? [] : [day.gap]),
  ];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind: "odometer",
    place: null,
    value: settled(value, other, meant.bike),
    unit: unit ?? dialUnit,
    typed: { text: figure.token.text, unit: figure.token.unitText },
    on: day.on,
    gaps,
  };
}

function isNear(value: number, other: number | null, unit: "mi" | "km" | null, bike: KnownBike): boolean {
  if (bike.lastFigure === null) return true;
  const last = bike.lastFigure;
  const inDial = (figure: number): number => (unit === null || unit === bike.unit ? figure : toCanonical(figure, unit) / toCanonical(1, bike.unit));
  return [value, ...(other === null ? [] : [other])].some((figure) => inDial(figure) >= last && inDial(figure) <= last + AHEAD[bike.unit]);
}

/** Of "14.820", the way that lies near the last figure when only one does. */
const settledBy = (value: number, other: number, bike: KnownBike | null): boolean =>
  bike !== null && bike.lastFigure !== null && isNear(value, null, null, bike) !== isNear(other, null, null, bike);
const settled = (value: number, other: number | null, bike: KnownBike | null): number =>
  other !== null && settledBy(value, other, bike) && bike !== null && isNear(other, null, null, bike) ? other : value;

/** Nothing but words that may stand around a bare reading. */
function isStrong(layout: Layout, part: Part, used: ReadonlySet<number>): boolean {
  const { vocabulary } = layout.known;
  for (let at = part.from; at <= part.to; at++) {
    const word = wordAt(layout.tokens, at);
    if (word === null || layout.taken.has(at) || used.has(at)) continue;
    const place = Object.values(vocabulary.places).some((list) => list.includes(word));
    if (
      !vocabulary.beside.includes(word) &&
      !place &&
      vocabulary.workDone[word] === undefined &&
      !vocabulary.at.includes(word) &&
      !vocabulary.onBike.includes(word) &&
      !isKindWord(layout, word)
    )
      return false;
  }
  return true;
}

const isKindWord = (layout: Layout, word: string): boolean => Object.values(layout.known.vocabulary.kinds).some((list) => list.includes(word));

/** A figure as a pressure or a depth: by its unit, else by the word or the place it stands with. */
function smallKind(layout: Layout, figure: Figure, part: Part, kind: "cold pressure" | "tread" | null): Small["kind"] | null {
  const of = measures(figure);
  if (of === "pressure") return "cold pressure";
  if (of === "length") return kind === "tread" ? "tread" : null;
  if (of !== null) return null;
  const { value, fraction } = figure.token;
  if (kind === "tread") return value <= 20 ? "tread" : placeBeside(layout, part, figure) ? "cold pressure" : null;
  if (fraction !== null || possibleUnits("cold pressure", value).length === 0) return null;
  return kind === "cold pressure" || placeBeside(layout, part, figure) || unitAlone(layout, part, "pressure") !== null ? "cold pressure" : null;
}

/** Does a place word stand next to the figure (one word between allowed)? */
function placeBeside(layout: Layout, part: Part, figure: Figure): boolean {
  if (figure.place !== null) return true;
  return placeTokens(layout, part).some(({ at }) => Math.abs(at - figure.at) <= 2);
}

type PlaceToken = { readonly at: number; readonly place: Place | "both" };

const placeTokens = oncePerPart((layout, part): readonly PlaceToken[] => {
  const { places } = layout.known.vocabulary;
  const found: PlaceToken[] = [];
  for (let at = part.from; at <= part.to; at++) {
    const word = wordAt(layout.tokens, at);
    if (word === null || layout.taken.has(at)) continue;
    const place = (["front", "rear", "both"] as const).find((each) => places[each].includes(word));
    if (place !== undefined) found.push({ at, place });
  }
  return found;
});

/** Pairs figures with places in order; whichever comes first in the clause says on which side the place stands. */
function placed(layout: Layout, clause: Clause, small: readonly Small[]): readonly LogReading[] {
  const tokens = clause.parts
    .flatMap((part) => placeTokens(layout, part))
    .filter((place) => small.some(({ figure, part }) => Math.abs(figure.at - place.at) <= 3 || (place.at >= part.from && place.at <= part.to)));
  const before = (tokens[0]?.at ?? Number.POSITIVE_INFINITY) < (small[0]?.figure.at ?? 0);
  const sharedBy = (kind: Small["kind"]): readonly Part[] => [...new Set(small.filter((other) => other.kind === kind).map((other) => other.part))];
  const shared = { "cold pressure": sharedBy("cold pressure"), tread: sharedBy("tread") };
  const inherited = {
    "cold pressure": inheritedUnit(layout, small, "cold pressure", shared["cold pressure"]),
    tread: inheritedUnit(layout, small, "tread", shared.tread),
  };
  return small.flatMap(({ figure, part, kind }, n) => {
    const between = before
      ? tokens.findLast((place) => place.at < figure.at && place.at > (small[n - 1]?.figure.at ?? -1))
      : tokens.find((place) => place.at > figure.at && place.at < (small[n + 1]?.figure.at ?? Number.POSITIVE_INFINITY));
    const place = figure.place ?? between?.place ?? null;
    return place === "both"
      ? [one(layout, figure, part, kind, "front", inherited[kind], shared[kind]), one(layout, figure, part, kind, "rear", inherited[kind], shared[kind])]
      : [one(layout, figure, part, kind, place, inherited[kind], shared[kind])];
  });
}

/** The one unit typed for figures of this kind in the clause. */
function inheritedUnit(layout: Layout, small: readonly Small[], kind: Small["kind"], parts: readonly Part[]): UnitId | null {
  const typed = [...new Set(small.filter((each) => each.kind === kind).flatMap((each) => each.figure.units))];
  const alone = parts.map((part) => unitAlone(layout, part, kind === "tread" ? "length" : "pressure")).find((unit) => unit !== null) ?? null;
  return typed.length === 1 ? (typed[0] ?? null) : typed.length === 0 ? alone : null;
}

function one(
  layout: Layout,
  figure: Figure,
  part: Part,
  kind: Small["kind"],
  place: Place | null,
  inherited: UnitId | null,
  shared: readonly Part[],
): LogReading {
  const { known } = layout;
  const meant = bikeAt(layout, { from: figure.at, to: figure.at });
  const day = dayAt(layout, part, shared);
  const { unit, value, options } = unitOf(figure, kind, inherited, kind === "tread" ? known.depthUnit : known.pressureUnit);
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(place === null ? [{ need: "place" as const, options: ["front", "rear"] as const }] : []),
    ...(unit === null ? [{ need: "unit" as const, options }] : []),
    ...(day.gap === null ? [] : [day.gap]),
    ...(kind === "cold pressure" && layout.warm ? [{ need: "sure" as const, because: "warm" as const }] : []),
  ];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind,
    place,
    value,
    unit,
    typed: { text: figure.token.text, unit: figure.token.unitText },
    on: day.on,
    gaps,
  };
}

type Unit = { readonly unit: ReadingUnit | null; readonly value: number; readonly options: readonly ReadingUnit[] };

/** The unit typed, else the one typed beside it, else the member's own when it fits, else the only one that can be meant. */
function unitOf(figure: Figure, kind: ReadingKind, inherited: UnitId | null, own: UnitId | null): Unit {
  const { value, fraction } = figure.token;
  const [typed] = figure.units;
  // 3/32 on a tread gauge counts thirty-seconds of an inch.
  if (kind === "tread" && fraction !== null) return { unit: "in", value, options: [] };
  if (typed !== undefined) return { unit: typed, value, options: [] };
  const possible = possibleUnits(kind, value);
  if (inherited !== null && possible.includes(inherited)) return { unit: inherited, value, options: [] };
  if (own !== null && possible.includes(own)) return { unit: own, value, options: [] };
  const [only] = possible;
  return {
    unit: inherited === null && own === null && possible.length === 1 && only !== undefined ? only : null,
    value,
    options: possible.length > 0 ? possible : kindRow(kind).units,
  };
}

/** Units in which a bare figure is one that a bike can show. */
function possibleUnits(kind: ReadingKind, value: number): readonly ReadingUnit[] {
  const { units, usual } = kindRow(kind);
  return units.filter((unit) => {
    const range = usual[unit];
    return range !== undefined && value >= range[0] && value <= range[1];
  });
}
