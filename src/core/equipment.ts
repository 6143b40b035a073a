// What a bike is fitted with. Equipment decides which plan items exist.

/** One list of choices per thing fitted; the type, the forms and the validation all read this table. */
export const EQUIPMENT = {
  finalDrive: ["chain", "belt", "shaft", "variator", "hub motor"],
  wheels: ["wire-spoked", "cast"],
  tyres: ["tubed", "tubeless"],
  cooling: ["air", "oil", "liquid"],
  throttle: ["cable", "by-wire"],
  clutch: ["cable", "hydraulic brake fluid", "hydraulic mineral oil", "automatic"],
  frontBrake: ["disc", "drum"],
  rearBrake: ["disc", "drum"],
  abs: ["fitted", "none"],
  brakeFluid: ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1", "mineral oil", "none"],
  fuel: ["carburettor", "injection", "electric"],
  ignition: ["electronic", "points"],
  valveGear: ["screw", "shim", "hydraulic", "none"],
  camDrive: ["chain", "timing belt", "gear or pushrod", "none"],
  battery: ["flooded", "AGM", "gel", "lithium", "none"],
  fork: ["telescopic", "upside-down", "other"],
  rearSuspension: ["linkage", "twin shock", "direct", "rigid"],
  centreStand: ["fitted", "none"],
  sidecar: ["fitted", "none"],
} as const satisfies Record<string, readonly string[]>;

export type EquipmentPart = keyof typeof EQUIPMENT;
export type Equipment = { readonly [P in EquipmentPart]: (typeof EQUIPMENT)[P][number] };
/** Every part named must be one of the choices named. An empty rule fits every bike. */
export type EquipmentRule = { readonly [P in EquipmentPart]?: readonly (typeof EQUIPMENT)[P][number][] };

/** Does this bike have what the rule asks for? */
export function isFitted(rule: EquipmentRule, equipment: Equipment): boolean {
  return (Object.keys(rule) as EquipmentPart[]).every((part) => (rule[part] as readonly string[]).includes(equipment[part]));
}
