// Two plans side by side, and what becomes of a member's own changes when the plan beneath them is another.

import type { ItemKey } from "../ids.ts";
import { fold } from "./fold.ts";
import type { Plan, PlanBase, PlanEdit, PlanItem } from "./plan.ts";

export type PlanDifference = {
  readonly added: readonly PlanItem[];
  readonly gone: readonly PlanItem[];
  readonly changed: readonly { readonly was: PlanItem; readonly will: PlanItem }[];
};

/** What another plan would add, take away and change. Only when and how often is compared: that is what falls due otherwise. */
export function differences(from: Plan, to: Plan): PlanDifference {
  const [was, will] = [byKey(from.items), byKey(to.items)];
  return {
    added: to.items.filter((item) => !was.has(item.key)),
    gone: from.items.filter((item) => !will.has(item.key)),
    changed: from.items.flatMap((item) => {
      const other = will.get(item.key);
      return other === undefined || isSameTrigger(item, other) ? [] : [{ was: item, will: other }];
    }),
  };
}

/** A change of base. `difference`: in the plan as it stands with its edits. `conflicts`: items that the owner changed and the new base changes too; the owner's change stands. */
export type Rebased = { readonly difference: PlanDifference; readonly conflicts: readonly ItemKey[] };

/** What taking another base does. The edits are kept as they are and lie on the new base. */
export function rebased(base: PlanBase, edits: readonly PlanEdit[], next: PlanBase): Rebased {
  const [before, after] = [byKey(base.items), byKey(next.items)];
  const edited = new Set(edits.flatMap((edit) => (edit.change === "interval" || edit.change === "drop" ? [edit.item] : [])));
  const conflicts = [...edited].filter((key) => {
    const [was, will] = [before.get(key), after.get(key)];
    return was !== undefined && (will === undefined || !isSameTrigger(was, will));
  });
  return { difference: differences(fold(base, edits), fold(next, edits)), conflicts };
}

/** Do two items fall due alike? */
export const isSameTrigger = (a: PlanItem, b: PlanItem): boolean => JSON.stringify(triggerOf(a)) === JSON.stringify(triggerOf(b));
const triggerOf = ({ anchor, first, repeat, shortened, parked }: PlanItem) => [anchor, first, repeat, Object.entries(shortened).sort(), parked];
const byKey = (items: readonly PlanItem[]): ReadonlyMap<ItemKey, PlanItem> => new Map(items.map((item) => [item.key, item]));
