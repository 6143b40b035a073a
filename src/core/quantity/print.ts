// Honest printing. The rule: a figure is printed as finely as it was typed (`step`, no finer than its scales deserve), but with two significant digits at
// least, and so finely that rounding moves it by no more than 2 %. A window is rounded inward, never made wider, and so finely that neither end gives
// up more than 2.5 % of its width.

import { decimalsOf, dimensionOf, type UnitId } from "./units.ts";

/** Share of a figure by which rounding may move it. */
const MOVED = 0.02;
/** Share of a window's width that rounding inward may take off at each end: 79.7 to 97.4 may be printed as 80 to 97. */
const GIVEN_UP = 0.025;
/** More decimals than this are added to no figure. */
const MOST_ADDED = 6;

export type Way = "nearest" | "up" | "down";

/** `value` rounded to `decimals`; halves away from zero. Rounds the shortest decimal text of the value, so that 2.675 is a half. */
export function roundTo(value: number, decimals: number, way: Way = "nearest"): number {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e15) return value;
  const text = Number(value.toPrecision(15));
  const shifted = Number(`${Math.abs(text)}e${decimals}`);
  if (!Number.isFinite(shifted)) return value;
  const negative = text < 0;
  const rounded = way === "nearest" ? Math.round(shifted) : (way === "up") !== negative ? Math.ceil(shifted) : Math.floor(shifted);
  return Number(`${negative ? "-" : ""}${rounded}e${-decimals}`);
}

/** Decimals worth printing when the last digit typed is worth `step` of this unit: none finer than the figure supports, at most one more than the unit's scales show. */
export function honestDecimals(step: number, unit: UnitId): number {
  const needed = step > 0 && Number.isFinite(step) ? Math.ceil(-Math.log10(step) - 1e-9) : 0;
  return Math.min(decimalsOf(unit) + 1, Math.max(0, needed));
}

/**
 * A single figure after conversion, by the rule above. Temperatures keep to their step: their zero is agreed, so that a share of them says nothing.
 * @param step what the last digit typed is worth in `unit`
 * @param way a maximum is rounded "down", a minimum "up"
 */
export function figureRounded(value: number, step: number, unit: UnitId, way: Way = "nearest"): { readonly value: number; readonly decimals: number } {
  const honest = honestDecimals(step, unit);
  const plain = roundTo(value, honest, way);
  if (dimensionOf(unit) === "temperature") return { value: plain, decimals: honest };
  const least = significantAt(value);
  for (let decimals = honest; decimals < honest + MOST_ADDED; decimals++) {
    const rounded = roundTo(value, decimals, way);
    const off = Math.abs(rounded - value);
    if (off <= 1e-9 * Math.abs(value) || (decimals >= least && off <= MOVED * Math.abs(value))) return { value: rounded, decimals };
  }
  return { value: plain, decimals: honest };
}

/** Decimals at which a figure shows two significant digits. */
const significantAt = (value: number): number => (value === 0 ? 0 : 1 - Math.floor(Math.log10(Math.abs(value))));

/** A window after conversion, by the rule above: every value printed lies inside the original. @param decimals the fewest that are printed */
export function windowInward(from: number, to: number, decimals: number): { readonly from: number; readonly to: number; readonly decimals: number } {
  const least = (to - from) * GIVEN_UP;
  for (let d = decimals; d < decimals + MOST_ADDED; d++) {
    const low = roundTo(from, d, "up");
    const high = roundTo(to, d, "down");
    if ((low < high && low - from <= least && to - high <= least) || (low === high && from === to)) return { from: low, to: high, decimals: d };
  }
  return { from, to, decimals: decimals + MOST_ADDED };
}

/** A figure with its thousands marked in a locale. */
export function printFigure(value: number, decimals: number, locale: string, fixed = false): string {
  return formatter(locale, decimals, fixed).format(Object.is(value, -0) ? 0 : value);
}

const formatters = new Map<string, Intl.NumberFormat>();

function formatter(locale: string, decimals: number, fixed: boolean): Intl.NumberFormat {
  const key = `${locale}|${decimals}|${fixed}`;
  let known = formatters.get(key);
  if (known === undefined) {
    known = new Intl.NumberFormat(locale, { maximumFractionDigits: decimals, minimumFractionDigits: fixed ? decimals : 0 });
    formatters.set(key, known);
  }
  return known;
}
