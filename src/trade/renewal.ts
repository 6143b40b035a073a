// What a part at its end takes, where the line that finds it only measures: the line that fits a new one, or what is bought. Common practice.

import type { ItemKey } from "../core/ids.ts";
import type { Consumable } from "../core/sheet/how.ts";
import type { ConsumableName } from "./shelf.ts";
import type { StandardItemKey } from "./standard-items.ts";
import { howWorked } from "./workshop.ts";

/** Lines that a measured value makes due, and the line that then fits a new one. */
const FITS_NEW: Partial<Readonly<Record<StandardItemKey, StandardItemKey>>> = {
  "front-tread.measure": "front-tyre.replace",
  "rear-tread.measure": "rear-tyre.replace",
  "sidecar-tread.measure": "sidecar-tyre.replace",
  "chain.measure": "chain.replace",
  "drive-belt.inspect": "drive-belt.replace",
  "variator-belt.inspect": "variator-belt.replace",
  "brake-hoses.inspect": "brake-hoses.replace",
};
/** Lines that measure a part and fit the new one too. */
const BOUGHT: Partial<Readonly<Record<StandardItemKey, ConsumableName>>> = {
  "front-pads.measure": "front brake pads",
  "rear-pads.measure": "rear brake pads",
  "front-shoes.measure": "front brake shoes",
  "rear-shoes.measure": "rear brake shoes",
  "front-discs.measure": "front brake disc",
  "rear-discs.measure": "rear brake disc",
};

/** The line that fits the new part: itself, where it does so. */
export const fitsNew = (item: ItemKey): ItemKey => (FITS_NEW[item as string as StandardItemKey] ?? item) as string as ItemKey;

/** Does a look, or a date code, tell whether the new part that this line fits is wanted? */
export const isToldByALook = (item: ItemKey): boolean => Object.values(FITS_NEW).some((fits) => fits === (item as string));

/** Is a new part fitted at this line? A level, a slack or a pressure found wanting is set, and nothing is bought for it. */
export const isRenewed = (item: ItemKey): boolean => (item as string) in BOUGHT || (item as string).endsWith(".replace");

/** What a new part takes, by the line that fits it. */
export function renewalOf(item: ItemKey): readonly Consumable[] {
  const what = BOUGHT[item as string as StandardItemKey];
  return what === undefined ? (howWorked(item)?.consumables ?? []) : [{ what, count: null, spec: null, kind: null }];
}
