// What has to be at hand to put a defect right, and which defects forbid running the engine. Common practice; what is found when it is opened has the last word.

import type { DefectKind } from "./defects.ts";
import type { ConsumableName } from "./shelf.ts";

const NEEDS: Partial<Readonly<Record<DefectKind, readonly ConsumableName[]>>> = {
  "damaged brake hose": ["brake hose set", "crush washer", "brake fluid, sealed"],
  "brake fluid leak": ["brake fluid, sealed"],
  "damaged brake": ["brake part found bad", "brake cleaner"],
  "brake light": ["bulb"],
  headlight: ["bulb"],
  light: ["bulb"],
  "fuel leak": ["fuel hose", "hose clamp"],
  "damaged fuel hose": ["fuel hose", "hose clamp"],
  "coolant leak": ["coolant"],
  "oil and coolant mixed": ["engine oil", "oil filter", "coolant"],
  "damaged coolant hose": ["coolant hose", "hose clamp", "coolant"],
  chain: ["chain", "front sprocket", "rear sprocket"],
  "worn sprockets": ["chain", "front sprocket", "rear sprocket"],
  "chain at its end": ["chain", "front sprocket", "rear sprocket"],
  "worn chain": ["chain", "front sprocket", "rear sprocket"],
  "drive belt": ["drive belt"],
  "timing belt": ["timing belt"],
  puncture: ["tyre"],
  "damaged tyre": ["tyre"],
  "cracked tyre": ["tyre"],
  "squared-off tyre": ["tyre"],
  "cupped tyre": ["tyre"],
  "plugged tyre": ["tyre"],
  "wheel bearing": ["wheel bearings", "bearing grease"],
  "swingarm bearing": ["swingarm bearings", "bearing grease"],
  spoke: ["spokes"],
  steering: ["bearing grease"],
  "fork leak": ["fork seals", "fork oil"],
  cable: ["control cable"],
  "sticking throttle": ["control cable", "cable oil"],
  fastener: ["bolt or nut of the same grade"],
  "old brake fluid": ["brake fluid, sealed"],
  "worn tyre": ["tyre"],
  "worn front tyre": ["front tyre"],
  "worn rear tyre": ["rear tyre"],
  "worn sidecar tyre": ["sidecar tyre"],
  "worn front pads": ["front brake pads"],
  "worn rear pads": ["rear brake pads"],
  "worn front shoes": ["front brake shoes"],
  "worn rear shoes": ["rear brake shoes"],
  "worn front drum": ["brake drum or hub", "front brake shoes"],
  "worn rear drum": ["brake drum or hub", "rear brake shoes"],
  "worn disc": ["brake disc"],
  "low brake fluid": ["brake fluid, sealed"],
  "low front brake fluid": ["brake fluid, sealed"],
  "low rear brake fluid": ["brake fluid, sealed"],
  "low engine oil": ["engine oil"],
  "attacked brake seals": ["brake part found bad", "brake hose set", "brake fluid, sealed"],
  "attacked clutch seals": ["clutch fluid, sealed"],
  "mixed clutch fluid": ["clutch fluid, sealed"],
  "mixed brake fluid": ["brake fluid, sealed"],
};

/** Petrol outside, a battery that may burst when it is charged, an engine short of oil or water, a throttle that stays open: it is not started before that is put right. */
const NOT_RUN: readonly DefectKind[] = [
  ...(["fuel leak", "damaged fuel hose", "low engine oil", "engine noise", "timing belt", "damaged battery", "damaged lithium battery"] as const),
  ...(["coolant leak", "damaged coolant hose", "overheating", "oil and coolant mixed", "sticking throttle", "no throttle play"] as const),
];

/** What a defect of a kind takes; nothing where that is only known when it is opened. */
export const neededFor = (kind: string | null): readonly ConsumableName[] => (kind === null ? [] : (NEEDS[kind as DefectKind] ?? []));

/** May the engine be run while it stands open? */
export const mayRun = (kind: string | null): boolean => !NOT_RUN.some((each) => each === kind);
