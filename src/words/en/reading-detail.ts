// A reading's value as finely as it was typed, and what was said beside it.

import { decimalsOf, fromCanonical, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { AirSaid, ReadingDetail } from "../../core/reading/detail.ts";
import { kindRow, type ReadingKind, type ReadingUnit } from "../../core/reading/kinds.ts";
import { isQuantity } from "../../core/reading/value.ts";
import type { Printer } from "../printer.ts";
import { CONDITION_WORDS } from "./kinds.ts";

const MOST_DECIMALS = 4;
/** Of points across, which are read with a tread gauge. */
const POINT_DECIMALS = 3;

/** " 2 h", " 20 min"; empty where how long was not said. */
function stoodWords(p: Printer, hours: number): string {
  if (hours === 0) return "";
  if (hours < 1) return ` ${p.figure(Math.round(hours * 60), 0)} min`;
  return hours < 48 ? ` ${p.figure(hours, 1)} h` : ` ${p.figure(Math.round(hours / 24), 0)} days`;
}

/** What a value can be in that is no level. */
type ScaleUnit = Exclude<ReadingUnit, "level">;

/** A canonical value in a unit, with the decimals that its scales show or that were typed, whichever are more: a clearance of 0.09 mm stays one. With nothing typed, as finely as its kind is read. */
export function valueAsTyped(p: Printer, canonical: number, unit: ScaleUnit, typed: string, kind: ReadingKind): string {
  if (unit === "date code") return typed === "" ? String(canonical) : typed;
  // A share is told as finely as it was typed; what is worked out beside it to a tenth.
  if (unit === "%") return `${p.figure(canonical, typed === "" ? 1 : behind(typed))} %`;
  if (typed === "") return p.amount(canonical, unit, finest(canonical, unit, kindRow(kind).decimals?.[unit]));
  const symbol = symbolOf(unit);
  return `${p.figure(fromCanonical(canonical, unit), decimalsTyped(unit, typed))}${symbol.startsWith("/") ? "" : " "}${symbol}`;
}

/** Tenths of a thousandth of an inch, where a manual prints them: 0.0087 in is no 0.009 in. */
function finest(canonical: number, unit: UnitId, usual: number | undefined): number | undefined {
  if (unit !== "in") return usual;
  const [figure, least] = [fromCanonical(canonical, unit), usual ?? decimalsOf(unit)];
  return [least, least + 1].find((each) => Math.abs(figure - Number(figure.toFixed(each))) < 1e-6) ?? usual;
}

/** Decimals that a unit's scales show or that were typed, whichever are more. */
export const decimalsTyped = (unit: UnitId, typed: string): number => Math.max(decimalsOf(unit), behind(typed));

/** Decimals of the finest figure typed. */
const behind = (typed: string): number =>
  Math.min(MOST_DECIMALS, Math.max(0, ...[...typed.matchAll(/(?<![\d.,])\d*[.,](\d{1,4})(?!\d)/gu)].map(([, digits = ""]) => digits.length)));

/** A value that is judged, and whatever is told beside it in the same unit: as finely as it was typed, never coarser than its kind is read. */
export function valueJudged(
  p: Printer,
  canonical: number,
  { unit, kind, typed }: { readonly unit: ScaleUnit; readonly kind: ReadingKind; readonly typed: string },
) {
  const read = kindRow(kind).decimals?.[unit];
  return read === undefined || !isQuantity(unit) ? valueAsTyped(p, canonical, unit, typed, kind) : p.amount(canonical, unit, Math.max(read, behind(typed)));
}

/** What a pressure is off by, and what is wanted, as finely as the reading and, where that is a round figure, as the wanted one: what is told adds up. */
export function pressureJudged(p: Printer, kPa: number, wanted: number, reading: { readonly unit: UnitId; readonly typed: string }): string {
  const { unit, typed } = reading;
  const decimals = decimalsTyped(unit, typed);
  const figure = fromCanonical(wanted, unit);
  const finer = [decimals, decimals + 1].find((each) => Math.abs(figure - Number(figure.toFixed(each))) < 1e-6) ?? decimals;
  return `${p.figure(fromCanonical(kPa, unit), finer)} ${symbolOf(unit)}`;
}

const warmth = (p: Printer, { value, unit }: AirSaid["garage"]): string => `${p.figure(value, 0)} ${symbolOf(unit)}`;

/** "garage 20 °C, road 2 °C". */
export const airWords = (p: Printer, { garage, road }: AirSaid): string => `garage ${warmth(p, garage)}${road === null ? "" : `, road ${warmth(p, road)}`}`;

/** " (inner, points 3.5 and 4 mm, as found)"; empty when nothing was said. */
export function detailTail(p: Printer, detail: ReadingDetail | null, unit: ReadingUnit): string {
  if (detail === null) return "";
  const points = detail.points ?? [];
  const parts = [
    ...(detail.side === undefined ? [] : [detail.side]),
    ...(points.length === 0 || !isQuantity(unit)
      ? []
      : [`the least of ${p.list(points.map((point) => p.figure(fromCanonical(point, unit), POINT_DECIMALS)))}`]),
    ...(detail.pitches === undefined ? [] : [`over ${p.figure(detail.pitches, 0)} pitches`]),
    ...(detail.rpm === undefined ? [] : [`at ${p.figure(detail.rpm, 0)} rpm`]),
    ...(detail.state === undefined ? [] : [detail.state === "found" ? "as found" : "as left"]),
    ...(detail.load === undefined ? [] : [detail.load]),
    ...(detail.air === undefined ? [] : [airWords(p, detail.air)]),
    ...(detail.conditions ?? []).map((each) => (each === "rested" ? `${CONDITION_WORDS.rested}${stoodWords(p, detail.stood ?? 0)}` : CONDITION_WORDS[each])),
    ...(detail.force === undefined ? [] : [`at ${detail.force}`]),
    ...(detail.full === true ? ["tank full"] : []),
    ...(detail.price === undefined ? [] : [`price ${detail.price.typed}${detail.price.currency === null ? "" : ` ${detail.price.currency}`}`]),
    ...(detail.trip === undefined ? [] : [`trip ${detail.trip.typed}`]),
  ];
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}
