// Which unit a figure is in, for a kind of reading: the one typed, else the one beside it, else the member's own, else the only one that can be meant.

import { type Dimension, dimensionOf, type UnitId } from "../core/quantity/units.ts";
import { type KindRow, kindRow, type ReadingKind, type ReadingUnit } from "../core/reading/kinds.ts";
import type { Measurable } from "./measured-figures.ts";

/** Unit words that are plain words or places as well: "36 in the rear", "33 f". */
const PLAIN_WORDS = ["in", "f", "r"];
/** "5 c" across a tyre is its centre; beside anything else it is degrees. */
const CENTRE = "c";

/** Typed units that a kind can be read in; `bare` true when the figure counts as typed without a unit. Null: it cannot be of this kind. */
export function unitsFor(kind: ReadingKind, figure: Measurable): { readonly units: readonly UnitId[]; readonly bare: boolean } | null {
  const { dimension } = kindRow(kind);
  const same = figure.units.filter((unit) => dimensionOf(unit) === dimension);
  if (same.length > 0) return { units: same, bare: false };
  // 33 "lbs" in a tyre are pounds a square inch.
  if (dimension === "pressure" && figure.units.includes("lb")) return { units: ["psi"], bare: false };
  const degrees = dimension === "temperature" && figure.units.includes("°");
  const word = figure.token.unitText?.toLowerCase() ?? null;
  const plain = word === null || PLAIN_WORDS.includes(word) || (word === CENTRE && kind === "tread");
  if (!degrees && figure.units.length > 0 && !plain) return null;
  return possibleUnits(kind, figure.value).length > 0 ? { units: [], bare: true } : null;
}

/** Units in which a bare figure is one that a bike can show. */
export function possibleUnits(kind: ReadingKind, value: number): readonly ReadingUnit[] {
  const { units, usual }: KindRow = kindRow(kind);
  return units.filter((unit) => {
    const range = usual[unit];
    return range !== undefined && value >= range[0] && value <= range[1];
  });
}

export type ValueUnit = { readonly unit: ReadingUnit | null; readonly options: readonly ReadingUnit[] };

/** @param inherited the one unit typed for figures of the same kind beside it @param own the member's own, where one was said */
export function unitOf(kind: ReadingKind, figure: Measurable, inherited: UnitId | null, own: UnitId | null): ValueUnit {
  const fits = unitsFor(kind, figure);
  const [typed, ...others] = fits?.units ?? [];
  // 3/32 on a tread gauge counts thirty-seconds of an inch.
  if (isInches(kind, figure)) return { unit: "in", options: [] };
  if (typed !== undefined) return others.length === 0 ? { unit: typed, options: [] } : { unit: null, options: [typed, ...others] };
  const possible = possibleUnits(kind, figure.value);
  if (inherited !== null && (possible.includes(inherited) || possible.length === 0)) return { unit: inherited, options: [] };
  if (own !== null && possible.includes(own)) return { unit: own, options: [] };
  const [only] = possible;
  return {
    unit: inherited === null && own === null && possible.length === 1 && only !== undefined ? only : null,
    options: possible.length > 0 ? possible : kindRow(kind).units,
  };
}

/** A fraction of a length typed bare is of an inch. */
const isInches = (kind: ReadingKind, figure: Measurable): boolean =>
  figure.token.fraction !== null && figure.value === figure.token.value && figure.units.length === 0 && kindRow(kind).dimension === "length";

/** The dimension of a figure's typed unit; null for a bare one or a word that several things share. */
export function typedDimension(figure: Measurable): Dimension | null {
  const [first, ...others] = figure.units.map(dimensionOf);
  return first !== undefined && others.every((each) => each === first) ? first : null;
}
