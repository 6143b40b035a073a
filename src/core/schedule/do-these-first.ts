// A used bike with nothing known gets a short ranked list, not thirty lines.

import type { ItemKey } from "../ids.ts";
import type { Plan } from "../plan/plan.ts";
import type { Due } from "./facts.ts";

const MOST = 8;

/** Items without a record that cannot wait for their next mark, most pressing first. */
export function doTheseFirst(dues: readonly Due[], plan: Plan): readonly ItemKey[] {
  const rank = new Map(plan.items.filter((item) => item.firstOnUsedBike !== null).map((item) => [item.key, item.firstOnUsedBike ?? 0]));
  return dues
    .filter((due) => due.status === "no record" && rank.has(due.item))
    .sort((a, b) => (rank.get(a.item) ?? 0) - (rank.get(b.item) ?? 0))
    .map((due) => due.item)
    .slice(0, MOST);
}
