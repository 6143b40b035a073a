// Honest printing: never more digits than were typed or than the tool shows; a window is rounded inward, never made wider.

import { decimalsOf, type UnitId } from "./units.ts";

/** `value` rounded to `decimals`; halves away from zero. Rounds the shortest decimal text of the value, so that 2.675 is a half. */
export function roundTo(value: number, decimals: number, way: "nearest" | "up" | "down" = "nearest"): number {
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

/** A window after conversion, rounded inward so that every value printed lies inside the original; as many decimals as leave it open. */
export function windowInward(from: number, to: number, decimals: number): { readonly from: number; readonly to: number; readonly decimals: number } {
  for (let d = decimals; d < decimals + 4; d++) {
    const low = roundTo(from, d, "up");
    const high = roundTo(to, d, "down");
    if (low < high || (low === high && from === to)) return { from: low, to: high, decimals: d };
  }
  return { from, to, decimals: decimals + 4 };
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
