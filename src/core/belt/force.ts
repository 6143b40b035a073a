// The force that a belt is pressed with while its deflection is read. A figure without it says nothing: manuals print both.

import { toCanonical, type UnitId } from "../quantity/units.ts";

/** By how a unit is written. On a belt gauge "lb" and "kg" are forces. */
const WRITTEN: readonly (readonly [RegExp, UnitId])[] = [
  [/^n(?:ewtons?)?$/iu, "N"],
  [/^(?:lbf?|lbs|pounds?)$/iu, "lbf"],
  [/^(?:kgf?|kp)$/iu, "kgf"],
];
const FORCE = /(\d+(?:[.,]\d+)?)\s*(newtons?|n|lbf|lbs?|pounds?|kgf?|kp)(?![\p{L}·*])/iu;

/** The first force in a text, "10-13 mm at 45 N": as it stands there and in newtons; null where there is none. */
export function forceIn(text: string): { readonly typed: string; readonly newtons: number } | null {
  const found = FORCE.exec(text);
  if (found === null) return null;
  const [typed, figure = "", unit = ""] = found;
  const id = WRITTEN.find(([written]) => written.test(unit))?.[1];
  return id === undefined ? null : { typed, newtons: toCanonical(Number(figure.replace(",", ".")), id) };
}

/** Share by which two forces may differ and be the same one: manuals round 10 lbf, 44.5 N, to 45 or 44 N, and gauges are read no finer. */
const SAME = 0.05;

/** Were both pressed alike? */
export const sameForce = (a: number, b: number): boolean => Math.abs(a - b) <= SAME * Math.max(a, b) * (1 + 1e-9);
