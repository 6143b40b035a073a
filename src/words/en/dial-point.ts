// A point of the road as a bike's dial shows it.

import type { DistanceUnit, Ridden } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";

/** What the dial shows there; a point from before this dial has no figure on it, so the distance ridden in all is given. @param b `offset`: where this dial's zero lies */
export function dialPoint(p: Printer, ridden: Ridden, b: { readonly unit: DistanceUnit; readonly offset: number }): string {
  if (ridden < b.offset) return `${p.point(ridden, b.unit)} (ridden, before this dial)`;
  // Where a dial rolled over it shows nothing but noughts.
  if (ridden === b.offset && b.offset > 0) return `${p.point(ridden, b.unit)} (ridden, where this dial began)`;
  return p.point((ridden - b.offset) as Ridden, b.unit);
}
