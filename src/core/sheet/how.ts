// How an item is worked at: types only. The rows are trade data; the order that follows from them is in arrange.ts.

import type { ItemKey } from "../ids.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { ReadingKind } from "../reading/kinds.ts";

/** What is taken off or out to get at an item. What several items need is opened once. */
export const APART = ["seat", "tank", "air box", "valve cover", "sprocket cover", "drive cover", "front wheel", "rear wheel", "front fork"] as const;
export type Apart = (typeof APART)[number];

/** Something used up. `count` pieces where it is counted; null where the amount is the spec's, or as needed. `spec`: the key of the amount, `kind`: that of grade or part number. */
export type Consumable = { readonly what: string; readonly count: number | null; readonly spec: string | null; readonly kind: string | null };

/** How one item is worked at. */
export type HowWorked = {
  readonly tools: readonly string[];
  readonly consumables: readonly Consumable[];
  readonly opens: readonly Apart[];
  /** Items done before this one where both are on a sheet. */
  readonly after: readonly ItemKey[];
  /** Done once these are back in: slack after the axle, bleeding after the calipers. */
  readonly closed: readonly Apart[];
  /** Keys of the torques, fits and limits that it needs. */
  readonly specs: readonly string[];
  /** What is measured, found and left. */
  readonly measures: readonly ReadingKind[];
};

/** An item with how it is worked at, as the order of a sheet needs it. */
export type Work = Pick<PlanItem, "key" | "engine" | "minutes" | "system"> & { readonly how: HowWorked };

/** What an item without a row needs: nothing in particular. */
export const PLAIN: HowWorked = { tools: [], consumables: [], opens: [], after: [], closed: [], specs: [], measures: [] };
