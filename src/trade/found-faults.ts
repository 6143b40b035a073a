// What a fault that was found at an item is, where the words name only the sign ("cracked", "has play") and the item says of what. Common practice.

import type { DefectKind } from "./defects.ts";
import type { StandardItemKey } from "./standard-items.ts";

const FOUND: Partial<Readonly<Record<StandardItemKey, DefectKind>>> = {
  "brake-hoses.inspect": "damaged brake hose",
  "brake-hoses.replace": "damaged brake hose",
  "front-pads.measure": "damaged brake",
  "rear-pads.measure": "damaged brake",
  "front-shoes.measure": "damaged brake",
  "rear-shoes.measure": "damaged brake",
  "front-discs.measure": "damaged brake",
  "rear-discs.measure": "damaged brake",
  "front-drum.adjust": "damaged brake",
  "rear-drum.adjust": "damaged brake",
  "front-brake-cam.lubricate": "damaged brake",
  "rear-brake-cam.lubricate": "damaged brake",
  "calipers.clean": "damaged brake",
  "fuel-hoses.inspect": "damaged fuel hose",
  "coolant-hoses.inspect": "damaged coolant hose",
  "rims.inspect": "damaged wheel",
  "spokes.check": "spoke",
  "wheel-bearings.inspect": "wheel bearing",
  "sidecar-bearings.inspect": "wheel bearing",
  "front-tread.measure": "damaged tyre",
  "rear-tread.measure": "damaged tyre",
  "sidecar-tread.measure": "damaged tyre",
  "tyre-pressure.measure": "damaged tyre",
  "steering-head.inspect": "steering",
  "steering-head.lubricate": "steering",
  "swingarm.inspect": "swingarm bearing",
  "swingarm.lubricate": "swingarm bearing",
  "throttle-grip.test": "sticking throttle",
  "throttle-cable.adjust": "sticking throttle",
  "controls.lubricate": "cable",
  "chain.measure": "chain",
  "chain.adjust": "chain tension",
  "chain.lubricate": "chain",
  "drive-belt.inspect": "drive belt",
  "side-stand.test": "side stand",
  "frame.inspect": "frame",
  "fasteners.check": "fastener",
  "sidecar-fittings.check": "fastener",
  "exhaust.check": "exhaust",
};

/** The kind of defect that a fault at an item is; null where the sign alone does not say. */
export const faultAt = (item: string): DefectKind | null => FOUND[item as StandardItemKey] ?? null;

/** Measured first, and set only where need be, mostly with shims that are still to be had: ticked with a word of what was found, nothing is set yet. Common practice. */
const LOOKED_AT_FIRST: readonly StandardItemKey[] = ["valve-clearance.adjust"];

export const isLookedAtFirst = (item: string): boolean => LOOKED_AT_FIRST.includes(item as StandardItemKey);

/** Nothing of these may move or leak: found tight, or dry, all is well. Of a bearing neither is praise. */
const TIGHT: readonly StandardItemKey[] = [
  ...(["brake-hoses.inspect", "brake-hoses.replace", "fuel-hoses.inspect", "coolant-hoses.inspect", "calipers.clean", "exhaust.check"] as const),
  ...(["spokes.check", "fasteners.check", "sidecar-fittings.check", "head-bolts.check", "motor-mounts.check"] as const),
];

export const isToBeTight = (item: string): boolean => TIGHT.includes(item as StandardItemKey);

const LEAKS: readonly DefectKind[] = ["oil leak", "fuel leak", "brake fluid leak", "coolant leak", "fork leak", "shock leak"];

/** May it stay though the part or the fluid was renewed? What leaks leaks new oil too, unless the seal was done with it. */
export const outlivesRenewal = (kind: string | null): boolean => LEAKS.some((leak) => leak === kind);
