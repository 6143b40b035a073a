// Whose limit holds for a tread where the bike has none of its own: the law of its place, else the moulded bars.

import type { Limit } from "../core/judgement/verdict.ts";
import type { JudgedRow } from "../trade/judged.ts";
import { MAY_BE_LIGHTEST, TREAD_LAW, type TreadLaw, type TreadLawPlace } from "../trade/tread-law.ts";

/** The least that an owner's own limit may be in a place: what its law asks of the lightest where the bike may be one, else of all; null where it names no figure. */
export function leastOwn(place: string | null, kind: string): number | null {
  const law: TreadLaw | null = place !== null && place in TREAD_LAW ? TREAD_LAW[place as TreadLawPlace] : null;
  return (MAY_BE_LIGHTEST.includes(kind) ? law?.lightest : undefined) ?? law?.millimetres ?? null;
}

/** What the law of a place asks for; null where it names no figure, or the place is not known. */
function lawOf(place: string | null): { readonly millimetres: number; readonly source: string } | null {
  const law = place !== null && place in TREAD_LAW ? TREAD_LAW[place as TreadLawPlace] : null;
  return law === null || law.millimetres === null ? null : { millimetres: law.millimetres, source: law.source };
}

/** Whose limit a tread is held against where the bike has none of its own. @param homed is it at home in a group, whose place could be said */
export function treadBy({ place, homed }: { readonly place: string | null; readonly homed: boolean }): "law" | "bars" | "bars, state law" | "bars, no group" {
  if (lawOf(place) !== null) return "law";
  if (place !== null && place in TREAD_LAW) return "bars, state law";
  return homed ? "bars" : "bars, no group";
}

/** The law of the place, else the moulded bars. */
export function treadLimit(row: JudgedRow, place: string | null): Limit {
  const law = lawOf(place);
  return law === null ? (row.usual as Limit) : { min: law.millimetres, max: null, near: row.near, source: law.source };
}

/** What counts instead of a limit of one's own that lies below it; null where the own one counts. @param own in mm @param bars the height of the moulded bars, in mm */
export function overruled(own: number, { place, kind }: { readonly place: string | null; readonly kind: string }, bars: number): TreadOverruled | null {
  const law = leastOwn(place, kind);
  const least = law ?? bars;
  return own >= least - 1e-9 ? null : { place: law === null ? null : place, least };
}

/** `place`: whose law asks for `least`, in mm; null where the moulded bars do. */
export type TreadOverruled = { readonly place: string | null; readonly least: number };

/** Places whose law a tread breaks, with what each asks for; `lightest`: what it asks of the lightest alone, where the tread would do for those. @param value in mm */
export const lawsBroken = (value: number): readonly LawBroken[] =>
  Object.entries(TREAD_LAW as Readonly<Record<string, TreadLaw>>).flatMap(([place, { millimetres, lightest }]) =>
    millimetres === null || value >= millimetres - 1e-9
      ? []
      : [{ place, least: millimetres, lightest: lightest !== undefined && value >= lightest - 1e-9 ? lightest : null }],
  );
export type LawBroken = { readonly place: string; readonly least: number; readonly lightest: number | null };

/** Pressed instead of a place: the moulded bars reached mean a new tyre. */
export const BY_THE_BARS = "bars";
