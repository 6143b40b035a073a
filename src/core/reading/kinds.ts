// The kinds of reading: one row each. Names and "how to measure" are one line per language in words/.
// Limits are not here: they belong to a spec and a place, not to the kind.

import type { UnitId } from "../quantity/units.ts";

type KindRow = {
  /** What it measures, in the words of core/quantity. */
  readonly dimension: "distance" | "pressure" | "length";
  /** Where on the bike it can be taken; empty when there is one place only. */
  readonly places: readonly string[];
  /** Values that a bike can show, in the canonical unit of the dimension: outside it the member is asked. */
  readonly plausible: readonly [number, number];
  /** Units people read it in; the first is taken when a bare number can mean nothing else. */
  readonly units: readonly UnitId[];
};

export const READING_KINDS = {
  odometer: { dimension: "distance", places: [], plausible: [0, 16_093_440 * 999_999], units: ["mi", "km"] },
  // kPa. Common practice: road and trail pressures lie between about 10 psi (trail) and 50 psi; 5 to 80 leaves room for error to be a member's, not ours.
  "cold pressure": { dimension: "pressure", places: ["front", "rear"], plausible: [34, 552], units: ["psi", "bar", "kPa"] },
  // mm. Common practice: new road tyres carry 4 to 9 mm, off-road blocks up to about 18.
  tread: { dimension: "length", places: ["front", "rear"], plausible: [0, 20], units: ["mm", "1/32 in", "in"] },
} as const satisfies Record<string, KindRow>;

export type ReadingKind = keyof typeof READING_KINDS;
export type Place = "front" | "rear";
