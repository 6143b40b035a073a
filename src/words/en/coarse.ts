// Distances and points of the road that a wear line foresees: no single mile of them is known.

import { type DistanceUnit, type Ridden, type Stretch, stretchOf, TENTHS_OF_MM } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import { dialPoint } from "./dial-point.ts";

const FINEST = 50;

/** Rounded to two digits, fifties at the finest. */
export function coarse(distance: Stretch, unit: DistanceUnit): Stretch {
  const figure = distance / TENTHS_OF_MM[unit];
  const step = Math.max(FINEST, 10 ** Math.floor(Math.log10(Math.max(figure, 1)) - 1));
  return stretchOf(Math.round(figure / step) * step, unit);
}

/** "about 14,850 mi": what the dial shows there, in fifties. */
export function pointAbout(p: Printer, ridden: Ridden, b: { readonly unit: DistanceUnit; readonly offset: number }): string {
  const step = FINEST * TENTHS_OF_MM[b.unit];
  return `about ${dialPoint(p, (Math.round((ridden - b.offset) / step) * step + b.offset) as Ridden, b)}`;
}
