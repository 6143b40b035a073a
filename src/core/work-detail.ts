// What went into a job beside its items: how much of what, which parts, what it cost.

import type { ItemKey } from "./ids.ts";
import type { UnitId } from "./quantity/units.ts";

/** A value found before work or left after it, as typed, in its unit; `place` when the item has several ("intake 1", "front"). */
export type ItemValue = { readonly value: number; readonly unit: UnitId; readonly place: string | null };

/** "3.2 L 20W-50": `of` is what it was, as typed; null when it was not said. */
export type Quantity = { readonly value: number; readonly unit: UnitId; readonly of: string | null; readonly typed: string };

/** A part fitted. `item` is the plan item that it was fitted with; `made` the week and year of a tyre's code, as typed ("3725"). */
export type PartFitted = { readonly words: string; readonly item: ItemKey | null; readonly made: string | null };

/** Money as typed. `minor` counts hundredths of the currency; the currency is null when only a figure was typed. */
export type Cost = { readonly minor: number; readonly currency: string | null; readonly typed: string };

export type WorkDetail = {
  readonly quantities: readonly Quantity[];
  readonly parts: readonly PartFitted[];
  readonly cost: Cost | null;
  /** Done by somebody else than the member, as typed: "shop". Null: by the member. */
  readonly by: string | null;
  /** The one end that was named of what is one line for both: the reservoir that was filled. */
  readonly end?: "front" | "rear";
  /** Hydraulics were bled, and nobody said that all of the fluid was changed. */
  readonly bled?: true;
};

export const NO_DETAIL: WorkDetail = { quantities: [], parts: [], cost: null, by: null };
