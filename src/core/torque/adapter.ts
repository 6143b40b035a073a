// An adapter between wrench and fastener makes the lever longer: the wrench is set lower.

/** What stands between the wrench's head and the fastener. Lengths in one unit of the caller's; the angle between wrench and adapter in degrees, 0 in line. */
export type Adapter = { readonly wrench: number; readonly adapter: number; readonly angle: number };

/**
 * The setting that puts `torque` on the fastener: T·L / (L + E·cos α).
 * Source: US Army TM 9-254 fig. 4-6; FAA AC 43.13-1B, 7-40. Null when the geometry cannot be: no lever, or one that the adapter undoes.
 */
export function settingWith(torque: number, { wrench, adapter, angle }: Adapter): number | null {
  const lever = wrench + adapter * Math.cos((angle * Math.PI) / 180);
  const possible = wrench > 0 && adapter >= 0 && angle >= 0 && angle <= 180 && lever > wrench / 4;
  return possible ? (torque * wrench) / lever : null;
}
