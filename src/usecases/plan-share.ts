// A bike's plan as the group's for its make and model. One that is there already is replaced only by a press, beside what would differ, and can be brought back.

import { createHash } from "node:crypto";
import { isFitted } from "../core/equipment.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import { differences } from "../core/plan/compare.ts";
import { fold } from "../core/plan/fold.ts";
import type { PlanBase, PlanItem } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { GroupPlan } from "../store/group-plans.ts";
import type { Repos } from "../store/store.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { HASH_SHOWN, type Trigger, triggerOf } from "./plan-base.ts";
import { hashOf } from "./plan-hash.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

/** Whose plan it is and from which manual; `by` null: the speaker's own. */
export type GroupPlanNamed = { readonly by: string | null; readonly manual: string };
/** A plan beside the one that the group has. `gone` and `added` as seen from the group's. */
export type ShareBeside = {
  readonly added: readonly ({ readonly name: string } & Trigger)[];
  readonly gone: readonly string[];
  readonly changed: readonly { readonly name: string; readonly was: Trigger; readonly will: Trigger }[];
};
/** "asked": nothing is shared yet, `before` would be replaced; `rev` names the group's plan as it was shown. "taken back": `before` is the group's again, or none is. */
export type PlanShared = { readonly nickname: string; readonly model: string; readonly items: number; readonly manual: string } & (
  | { readonly is: "shared"; readonly share: string; readonly before: GroupPlanNamed | null }
  | {
      readonly is: "asked";
      readonly bike: BikeId;
      readonly column: DistanceUnit;
      readonly hash: string;
      readonly rev: number;
      readonly before: GroupPlanNamed;
      readonly beside: ShareBeside;
    }
  | { readonly is: "taken back"; readonly before: GroupPlanNamed | null }
);

const LONGEST_MANUAL = 120;

/** Shares a bike's plan, its own changes in it, as the group's for its make and model; where there is one already, it is asked first. */
export async function sharePlan(ctx: Ctx, input: { readonly bike?: string; readonly manual: string }): Promise<Result<PlanShared>> {
  return acting(ctx, async (q, group) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const { bike } = g;
    if (bike.model === null) return refused({ why: "no model", nickname: bike.nickname });
    const base = await baseOf(q, g, bike.model, input.manual.trim().slice(0, LONGEST_MANUAL));
    const hash = hashOf(base);
    const before = await q.groupPlans.latest(group, bike.model);
    if (before?.hash === hash) return refused({ why: "already done" });
    await q.bikes.keepBase(hash, base);
    if (before === null) return kept(q, ctx, group, g, { hash, base, before });
    const { column, equipment } = bike;
    const [theirs, fits] = [await q.bikes.base(before.hash), (item: PlanItem): boolean => isFitted(item.fits, equipment)];
    const name = ({ key, called }: PlanItem): string => ctx.itemName(key, called);
    const { added, gone, changed } = differences(theirs, base, column);
    return done<PlanShared>({
      ...{ is: "asked", ...headOf(g, base), bike: bike.id, column, hash: hash.slice(0, HASH_SHOWN), rev: revOf(before) },
      before: await named(q, ctx, before),
      beside: {
        added: added.filter(fits).map((item) => ({ name: name(item), ...triggerOf(item) })),
        gone: gone.filter(fits).map(name),
        changed: changed.filter(({ will }) => fits(will)).map(({ was, will }) => ({ name: name(will), was: triggerOf(was), will: triggerOf(will) })),
      },
    });
  });
}

/** Shares the plan that was shown in place of the group's that was shown with it. */
export async function replaceShared(ctx: Ctx, input: { readonly bike: BikeId; readonly hash: string; readonly rev: number }): Promise<Result<PlanShared>> {
  return acting(ctx, async (q, group) => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    if (g === null) return refused({ why: "not yours" });
    const found = await q.bikes.baseBeginning(input.hash);
    if (found === null || g.bike.model === null) return refused({ why: "gone" });
    const before = await q.groupPlans.latest(group, g.bike.model);
    if (before?.hash === found.hash) return refused({ why: "already done" });
    const isAsShown = hashOf(await baseOf(q, g, g.bike.model, found.base.source)) === found.hash;
    if (!isAsShown || before === null || revOf(before) !== input.rev) return refused({ why: "changed meanwhile" });
    return kept(q, ctx, group, g, { ...found, before });
  });
}

/** Takes one's own plan back from the group: the one that it replaced is the group's again. Who has taken it keeps it. */
export async function unsharePlan(ctx: Ctx, input: { readonly share: string }): Promise<Result<PlanShared>> {
  return acting(ctx, async (q, group) => {
    const share = await q.groupPlans.byId(input.share);
    if (share === null || share.group !== group) return refused({ why: "gone" });
    if (share.by !== ctx.who.member) return refused({ why: "not yours" });
    if ((await q.groupPlans.latest(group, share.model))?.id !== share.id) return refused({ why: "changed meanwhile" });
    await q.groupPlans.remove(share.id);
    const before = await q.groupPlans.latest(group, share.model);
    const { items } = await q.bikes.base(share.hash);
    return done<PlanShared>({
      ...{ is: "taken back", nickname: share.model, model: share.model, items: items.length, manual: share.manual },
      before: before === null ? null : await named(q, ctx, before),
    });
  });
}

async function kept(
  q: Repos,
  ctx: Ctx,
  group: GroupId,
  g: Garaged,
  { hash, base, before }: { readonly hash: string; readonly base: PlanBase; readonly before: GroupPlan | null },
): Promise<Result<PlanShared>> {
  await keepMember(q, ctx);
  const share = ctx.newId();
  await q.groupPlans.add({ id: share, group, model: base.name, hash, manual: base.source, by: ctx.who.member, at: ctx.now });
  return done<PlanShared>({ is: "shared", ...headOf(g, base), share, before: before === null ? null : await named(q, ctx, before) });
}

const headOf = (g: Garaged, base: PlanBase) => ({ nickname: g.bike.nickname, model: base.name, items: g.plan.items.length, manual: base.source });

/** The plan as it is shared: the bike's, its owner's changes in it, by the name of its model. */
async function baseOf(q: Repos, { bike }: Garaged, model: string, manual: string): Promise<PlanBase> {
  const beneath = await q.bikes.base(bike.planHash);
  const { items } = fold(
    beneath,
    bike.edits.map(({ edit }) => edit),
  );
  return { name: model, source: manual, items };
}

async function named(q: Repos, ctx: Ctx, { by, manual }: GroupPlan): Promise<GroupPlanNamed> {
  if (by === ctx.who.member) return { by: null, manual };
  const names = await q.members.byIds([by]);
  return { by: names.get(by as MemberId)?.name ?? by, manual };
}

/** Which of the group's plans was shown, in so few digits as a button holds. */
const revOf = ({ id }: GroupPlan): number => Number.parseInt(createHash("sha256").update(id).digest("hex").slice(0, 7), 16);

async function acting(ctx: Ctx, work: (q: Repos, group: GroupId) => Promise<Result<PlanShared>>): Promise<Result<PlanShared>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<PlanShared>> => {
    const { group } = ctx.who;
    return group === null ? refused({ why: "not in a group" }) : work(q, group);
  });
  return onceHeard(acted);
}
