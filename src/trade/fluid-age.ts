// How long a bike's brake fluid is kept: by the class that it is fitted with, where its plan has the common practice and nobody has said otherwise.

import type { ItemKey } from "../core/ids.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import { FLUID_CLASSES, USUAL_MONTHS } from "./fluids.ts";
import { PRACTICE } from "./items/row.ts";

/** The line of a plan that a fluid's age makes due. */
const CHANGED: ItemKey = "brake-fluid.replace" as ItemKey;

/**
 * Plan items with the months of the class in the circuit. A manual's, a group's or a member's own interval stands as it is.
 * @param inside the class that the bike is fitted with, as its equipment names it
 * @param edited items whose interval the owner has changed
 */
export function byFluidClass(items: readonly PlanItem[], inside: string, edited: (item: ItemKey) => boolean): readonly PlanItem[] {
  const own = Object.entries(FLUID_CLASSES).find(([name]) => name === inside)?.[1];
  if (own === undefined || own.months === USUAL_MONTHS) return items;
  return items.map((item) => {
    const { repeat } = item;
    const stands = item.key !== CHANGED || item.source !== PRACTICE || edited(item.key) || repeat.by !== "interval" || repeat.every.months !== USUAL_MONTHS;
    return stands ? item : { ...item, repeat: { by: "interval", every: { ...repeat.every, months: own.months } }, source: own.source };
  });
}
