// What is only at an end that is fitted so: where one end alone has it, nobody need say which.

import type { EquipmentRule } from "../core/equipment.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";

export type EndRules = { readonly front: EquipmentRule; readonly rear: EquipmentRule };

const DISC: EndRules = { front: { frontBrake: ["disc"] }, rear: { rearBrake: ["disc"] } };
const DRUM: EndRules = { front: { frontBrake: ["drum"] }, rear: { rearBrake: ["drum"] } };

/** Drums of motorcycles are worked by cable or rod, common practice: only a disc has a reservoir. */
export const AT_ENDS: Partial<Record<ReadingKind, EndRules>> = {
  "pad thickness": DISC,
  "disc thickness": DISC,
  "brake fluid level": DISC,
  "shoe thickness": DRUM,
  "drum diameter": DRUM,
};
