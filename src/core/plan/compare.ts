// Two plans side by side, and what becomes of a member's own changes when the plan beneath them is another.

import type { ItemKey } from "../ids.ts";
import type { DistanceUnit } from "../quantity/distance.ts";
import { fold } from "./fold.ts";
import type { Plan, PlanBase, PlanEdit, PlanItem } from "./plan.ts";

export type PlanDifference = {
  readonly added: readonly PlanItem[];
  readonly gone: readonly PlanItem[];
  readonly changed: readonly { readonly was: PlanItem; readonly will: PlanItem }[];
};

/**
 * What another plan would add, take away and change. Only when and how often is compared: that is what falls due otherwise.
 * @param column the column by which the bike goes: what stands in the other alone changes nothing for it; both count when left out
 */
export function differences(from: Plan, to: Plan, column?: DistanceUnit): PlanDifference {
  const [was, will] = [byKey(from.items), byKey(to.items)];
  return {
    added: to.items.filter((item) => !was.has(item.key)),
    gone: from.items.filter((item) => !will.has(item.key)),
    changed: from.items.flatMap((item) => {
      const other = will.get(item.key);
      return other === undefined || isSameTrigger(item, other, column) ? [] : [{ was: item, will: other }];
    }),
  };
}

/** A change of base. `difference`: in the plan as it stands with its edits. `conflicts`: items that the owner changed and the new base changes too; the owner's change stands. */
export type Rebased = { readonly difference: PlanDifference; readonly conflicts: readonly ItemKey[] };

/** What taking another base does. The edits are kept as they are and lie on the new base. @param column as in `differences` */
export function rebased(base: PlanBase, edits: readonly PlanEdit[], next: PlanBase, column?: DistanceUnit): Rebased {
  const [before, after] = [byKey(base.items), byKey(next.items)];
  const edited = new Set(edits.flatMap((edit) => (edit.change === "interval" || edit.change === "drop" ? [edit.item] : [])));
  const own = byKey(fold(base, edits).items);
  const conflicts = [...edited].filter((key) => {
    const [was, will, as] = [before.get(key), after.get(key), own.get(key)];
    // The owner changed it to what the new plan has.
    if (as === undefined ? will === undefined : will !== undefined && isSameTrigger(as, will, column)) return false;
    return was !== undefined && (will === undefined || !isSameTrigger(was, will, column));
  });
  return { difference: differences(fold(base, edits), fold(next, edits), column), conflicts };
}

type Trigger = Pick<PlanItem, "anchor" | "first" | "repeat" | "shortened" | "parked">;

/** Do two items fall due alike? With a column: on a bike that goes by it. */
export const isSameTrigger = (a: Trigger, b: Trigger, column?: DistanceUnit): boolean => triggerOf(a, column) === triggerOf(b, column);

/** As text, its fields in one order, whoever wrote them. */
const triggerOf = ({ anchor, first, repeat, shortened, parked }: Trigger, column?: DistanceUnit): string =>
  JSON.stringify([anchor, first, repeat, shortened, parked], (_key, value: unknown) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
    const fields = Object.entries(value).filter(([name]) => !isOtherColumn(name, value as Readonly<Record<string, unknown>>, column));
    return Object.fromEntries(fields.sort(([one], [other]) => (one < other ? -1 : 1)));
  });

/** A figure of the column by which the bike does not go, beside one of its own. */
function isOtherColumn(name: string, interval: Readonly<Record<string, unknown>>, column: DistanceUnit | undefined): boolean {
  if (column === undefined) return false;
  const [own, other] = column === "mi" ? ["miles", "km"] : ["km", "miles"];
  return name === other && (interval[own] ?? null) !== null;
}
const byKey = (items: readonly PlanItem[]): ReadonlyMap<ItemKey, PlanItem> => new Map(items.map((item) => [item.key, item]));
