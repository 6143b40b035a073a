// Starter plans as bikes are given them.

import type { Columns, Interval, PlanBase, PlanItem } from "../core/plan/plan.ts";
import { PRACTICE } from "./items/row.ts";
import type { KindId } from "./kinds.ts";
import { CATALOGUE_MARK, STARTERS, type StarterRow } from "./plans.ts";
import { planItem } from "./standard-items.ts";

function built(row: StarterRow): PlanBase {
  return {
    name: row.name,
    source: PRACTICE,
    items: row.items.map((key) => shortening(onMarks(planItem(key, row.intervals[key] ?? null), row, row.intervals[key] !== undefined))),
  };
}

/** A use that shortens the catalogue's interval halves the plan's own where that is as short already. Common practice: hard use halves an interval. */
function shortening(item: PlanItem): PlanItem {
  if (item.repeat.by !== "interval") return item;
  const { miles, km } = item.repeat.every;
  if (miles === null || km === null) return item;
  const shorter = (harsh: Interval): Interval => (harsh.miles === null || harsh.miles < miles ? harsh : { ...harsh, miles: miles / 2, km: km / 2 });
  return { ...item, shortened: Object.fromEntries(Object.entries(item.shortened).map(([use, harsh]) => [use, shorter(harsh)])) };
}

/** What goes by the catalogue's services goes by the plan's own: for every second one as for each. What the plan states itself is left. */
function onMarks(item: PlanItem, { mark }: StarterRow, stated: boolean): PlanItem {
  if (mark === undefined || stated || item.anchor !== "marks" || item.repeat.by !== "interval") return item;
  const { every } = item.repeat;
  const nth = (every.miles ?? 0) / CATALOGUE_MARK.miles;
  if (!Number.isInteger(nth) || nth === 0) return item;
  const times = (columns: Columns): Columns => ({ miles: (columns.miles ?? 0) * nth, km: (columns.km ?? 0) * nth });
  return { ...item, repeat: { by: "interval", every: { ...every, ...times(mark) } } };
}

export const STARTER_PLANS: Readonly<Record<KindId, PlanBase>> = {
  "chain-drive twin": built(STARTERS["chain-drive twin"]),
  "belt-drive cruiser": built(STARTERS["belt-drive cruiser"]),
  "shaft-drive tourer": built(STARTERS["shaft-drive tourer"]),
  "dual-purpose single": built(STARTERS["dual-purpose single"]),
  "four-cylinder sport tourer": built(STARTERS["four-cylinder sport tourer"]),
  "small commuter": built(STARTERS["small commuter"]),
  classic: built(STARTERS.classic),
  electric: built(STARTERS.electric),
  scooter: built(STARTERS.scooter),
  "sidecar outfit": built(STARTERS["sidecar outfit"]),
};
