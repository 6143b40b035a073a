// The effective plan of a bike: the base it was given, with its owner's edits in order.

import type { ItemKey } from "../ids.ts";
import type { Plan, PlanBase, PlanEdit, PlanItem } from "./plan.ts";

/** The items in force, and those dropped (kept visible as dropped). */
export type FoldedPlan = Plan & { readonly dropped: readonly PlanItem[] };

/** Applies edits to a base. An edit of an item that is not there changes nothing: a merge may have taken it away. */
export function fold(base: PlanBase, edits: readonly PlanEdit[]): FoldedPlan {
  if (edits.length === 0) return { items: base.items, dropped: [] };
  const items = new Map<ItemKey, PlanItem>(base.items.map((item) => [item.key, item]));
  const dropped = new Set<ItemKey>();
  for (const edit of edits) {
    switch (edit.change) {
      case "interval": {
        const item = items.get(edit.item);
        const { repeat, first = item?.first ?? null, anchor = item?.anchor ?? "marks", shortened = item?.shortened ?? {} } = edit;
        if (item !== undefined) items.set(edit.item, { ...item, repeat, first, anchor, shortened });
        break;
      }
      case "add":
        if (!items.has(edit.item.key)) items.set(edit.item.key, edit.item);
        break;
      case "drop":
        if (items.has(edit.item)) dropped.add(edit.item);
        break;
      case "restore":
        dropped.delete(edit.item);
        break;
      case "base":
        // On record only: which base lies beneath is said by the bike.
        break;
    }
  }
  const all = [...items.values()];
  return { items: all.filter((item) => !dropped.has(item.key)), dropped: all.filter((item) => dropped.has(item.key)) };
}
