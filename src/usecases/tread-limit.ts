// Whose limit holds for a tread where the bike has none of its own: the law of its place, else the moulded bars.

import type { Limit } from "../core/judgement/verdict.ts";
import type { JudgedRow } from "../trade/judged.ts";
import { TREAD_LAW, type TreadLawPlace } from "../trade/tread-law.ts";

/** What the law of a place asks for; null where it names no figure, or the place is not known. */
function lawOf(place: string | null): { readonly millimetres: number; readonly source: string } | null {
  const law = place !== null && place in TREAD_LAW ? TREAD_LAW[place as TreadLawPlace] : null;
  return law === null || law.millimetres === null ? null : { millimetres: law.millimetres, source: law.source };
}

/** Whose limit a tread is held against where the bike has none of its own. */
export function treadBy(place: string | null): "law" | "bars" | "bars, state law" {
  if (lawOf(place) !== null) return "law";
  return place !== null && place in TREAD_LAW ? "bars, state law" : "bars";
}

/** The law of the place, else the moulded bars. */
export function treadLimit(row: JudgedRow, place: string | null): Limit {
  const law = lawOf(place);
  return law === null ? (row.usual as Limit) : { min: law.millimetres, max: null, near: row.near, source: law.source };
}
