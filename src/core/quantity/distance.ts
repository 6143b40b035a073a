// Odometer distance, held in whole tenths of a millimetre, so that "4,000 mi later" is exact.
// A mile is 1,609.344 m by definition (international yard and pound agreement of 1959).

import type { Brand } from "../brand.ts";

/** What the dial shows, in whole tenths of a millimetre. */
export type Dial = Brand<number, "dial, 0.1 mm">;
/** What the bike has ridden in its life (dial plus the epochs before), in whole tenths of a millimetre: the only distance that rules compare. */
export type Ridden = Brand<number, "ridden, 0.1 mm">;
/** A length of road between two points, in whole tenths of a millimetre. */
export type Stretch = Brand<number, "stretch, 0.1 mm">;

/** The two units in which dials, plans and members count distance. */
export type DistanceUnit = "mi" | "km";

/** Tenths of a millimetre in one of each distance unit; both exact. */
export const TENTHS_OF_MM = { mi: 16_093_440, km: 10_000_000 } as const satisfies Record<DistanceUnit, number>;

/** A dial figure (miles or kilometres, tenths allowed) as a `Dial`. */
export const dialOf = (figure: number, unit: DistanceUnit): Dial => whole(figure, unit) as Dial;
/** A ridden figure as a `Ridden`. */
export const riddenOf = (figure: number, unit: DistanceUnit): Ridden => whole(figure, unit) as Ridden;
/** An interval or a trip as a `Stretch`. */
export const stretchOf = (figure: number, unit: DistanceUnit): Stretch => whole(figure, unit) as Stretch;

/** The figure in `unit`; whole miles and kilometres, and tenths of them, come back exactly as they went in. */
export const figureIn = (distance: Dial | Ridden | Stretch, unit: DistanceUnit): number => distance / TENTHS_OF_MM[unit];

/** `from` moved on by `by`. */
export const ahead = (from: Ridden, by: Stretch): Ridden => (from + by) as Ridden;
/** The road from `from` to `to`; negative when `to` lies behind. */
export const between = (from: Ridden, to: Ridden): Stretch => (to - from) as Stretch;

function whole(figure: number, unit: DistanceUnit): number {
  const tenths = Math.round(figure * TENTHS_OF_MM[unit]);
  if (!Number.isSafeInteger(tenths)) throw new RangeError(`not a distance: ${figure} ${unit}`);
  return tenths;
}
