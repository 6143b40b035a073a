// Another plan that there is for a bike: the starter plan where it has changed since, the group's for its make and model. Offered where the plan is looked at, never forced.

import { differences } from "../core/plan/compare.ts";
import { fold } from "../core/plan/fold.ts";
import type { PlanBase } from "../core/plan/plan.ts";
import type { Repos } from "../store/store.ts";
import type { KindId } from "../trade/kinds.ts";
import { STARTER_PLANS } from "../trade/starter-plans.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { hashOf } from "./plan-hash.ts";

/** A plan beside the one in force. `by`: who shared it; `manual`: from which. Both null of the starter plan. */
export type PlanOffer = { readonly plan: "starter plan" | "group plan"; readonly by: string | null; readonly manual: string | null };

/** The plans that a bike could have and that would make something of it fall due otherwise. */
export async function offersFor(q: Repos, ctx: Ctx, g: Garaged): Promise<readonly PlanOffer[]> {
  const { planHash, kind, model, column } = g.bike;
  const now = await q.bikes.base(planHash);
  const edits = g.bike.edits.map(({ edit }) => edit);
  const differs = (base: PlanBase): boolean => {
    const { added, gone, changed } = differences(fold(now, edits), fold(base, edits), column);
    return added.length + gone.length + changed.length > 0;
  };
  const offers: PlanOffer[] = [];
  const starter = STARTER_PLANS[kind as KindId] as PlanBase | undefined;
  // Whoever has taken another plan has left the starter plan behind.
  if (starter !== undefined && starter.name === now.name && hashOf(starter) !== planHash && differs(starter))
    offers.push({ plan: "starter plan", by: null, manual: null });
  const group = ctx.who.group ?? g.bike.homeGroup;
  const shared = group === null || model === null ? null : await q.groupPlans.latest(group, model);
  if (shared !== null && shared.by !== ctx.who.member && shared.hash !== planHash && differs(await q.bikes.base(shared.hash))) {
    const names = await q.members.byIds([shared.by]);
    offers.push({ plan: "group plan", by: names.get(shared.by)?.name ?? shared.by, manual: shared.manual });
  }
  return offers;
}
