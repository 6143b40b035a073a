// Starter plans as bikes are given them.

import type { PlanBase } from "../core/plan/plan.ts";
import { PRACTICE } from "./items/row.ts";
import type { KindId } from "./kinds.ts";
import { STARTERS, type StarterRow } from "./plans.ts";
import { planItem } from "./standard-items.ts";

function built(row: StarterRow): PlanBase {
  return { name: row.name, source: PRACTICE, items: row.items.map((key) => planItem(key, row.intervals[key] ?? null)) };
}

export const STARTER_PLANS: Readonly<Record<KindId, PlanBase>> = {
  "chain-drive twin": built(STARTERS["chain-drive twin"]),
  "belt-drive cruiser": built(STARTERS["belt-drive cruiser"]),
  "shaft-drive tourer": built(STARTERS["shaft-drive tourer"]),
  "dual-purpose single": built(STARTERS["dual-purpose single"]),
};
