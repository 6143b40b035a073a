// Changing a bike's plan: by its owner, on the plan as it was shown, all edits of one change together.

import type { BikeId } from "../core/ids.ts";
import type { PlanEdit } from "../core/plan/plan.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, pick } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

/** What a change comes to: its edits, and what is answered. */
type Change<T> = { readonly edits: readonly PlanEdit[]; readonly value: T /** Another plan beneath the edits. */; readonly planHash?: string };

/** @param why in the member's words, kept with the change
 * @param rev counts the edits of the plan that it was shown with */
export async function editPlan<T>(
  ctx: Ctx,
  bike: BikeId,
  rev: number,
  work: (g: Garaged, q: Repos, all: readonly Garaged[]) => Result<Change<T>> | Promise<Result<Change<T>>>,
  why?: string,
): Promise<Result<T>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<T>> => {
    const all = await ownGarage(q, ctx);
    const g = pick(all, bike);
    if (g === null) return refused({ why: "not yours" });
    if (g.bike.edits.length !== rev) return refused({ why: "changed meanwhile" });
    const change = await work(g, q, all);
    if (change.is === "refused") return change;
    await keepMember(q, ctx);
    const signed = change.value.edits.map((edit) => ({ edit, by: ctx.who.member, at: ctx.now, why: why?.trim() || null }));
    const planHash = change.value.planHash ?? g.bike.planHash;
    if (!(await q.bikes.change({ ...g.bike, planHash, edits: [...g.bike.edits, ...signed] }, ctx.now))) throw new Conflict("bike changed meanwhile");
    return done(change.value.value);
  });
  return onceHeard(acted);
}
