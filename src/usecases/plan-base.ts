// Another plan beneath a bike's own changes: the starter plan as it is now, the group's for its model, or one from a file. Shown side by side, taken by a press, never forced.

import { isFitted } from "../core/equipment.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import { differences, type PlanDifference, rebased } from "../core/plan/compare.ts";
import { fold } from "../core/plan/fold.ts";
import type { PlanBase, PlanItem } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Refusal } from "../core/refusal.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { defectRow } from "../trade/defects.ts";
import { faultAt } from "../trade/found-faults.ts";
import type { KindId } from "../trade/kinds.ts";
import { STARTER_PLANS } from "../trade/starter-plans.ts";
import type { Ctx } from "./context.ts";
import { editPlan } from "./edit-plan.ts";
import { type Garaged, pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { readPlanFile } from "./plan-file.ts";
import { hashOf } from "./plan-hash.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

/** "As it was given": the plan beneath the bike's own changes, without them. */
export const PLANS_TO_COMPARE = ["starter plan", "group plan", "as it was given"] as const;

export type Trigger = Pick<PlanItem, "anchor" | "first" | "repeat" | "shortened">;
/** What another plan would change. `hash` begins the plan's own; `rev` counts the edits that it was shown with. */
export type BaseChange = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly column: DistanceUnit;
  readonly was: string;
  readonly name: string;
  readonly source: string;
  readonly sharedBy: string | null;
  readonly hash: string;
  readonly rev: number;
  readonly added: readonly ({ readonly name: string } & Trigger)[];
  readonly gone: readonly string[];
  /** Of those, what can hurt where nobody looks at it. */
  readonly goneSafety: readonly string[];
  /** Items of the plan as it stands. */
  readonly of: number;
  readonly changed: readonly { readonly name: string; readonly was: Trigger; readonly will: Trigger }[];
  /** Changed by the owner and by the new plan: the owner's stands. */
  readonly conflicts: readonly string[];
  /** Where the plan in force goes on differing by the owner's own changes. `now` null: dropped by the owner; `there` null: added by the owner. */
  readonly kept: readonly { readonly name: string; readonly now: Trigger | null; readonly there: Trigger | null }[];
  /** It is the plan beneath the bike's own changes: there is none to take. */
  readonly same: boolean;
  readonly saved: boolean;
};

export const triggerOf = ({ anchor, first, repeat, shortened }: PlanItem): Trigger => ({ anchor, first, repeat, shortened });

/** What hurts where it is worked at, or where a fault of it is not seen. */
const canHurt = ({ key, caution }: PlanItem): boolean => caution !== null || defectRow(faultAt(key))?.usual === "do not ride";

/** So much of a hash fits a button. */
export const HASH_SHOWN = 32;

/** The starter plan of its kind as it is now, or the group's for its model. */
export async function compareBase(ctx: Ctx, input: { readonly bike?: string; readonly with: (typeof PLANS_TO_COMPARE)[number] }): Promise<Result<BaseChange>> {
  return proposing(ctx, input.bike, async (q, g) => {
    if (input.with === "starter plan") {
      const starter = STARTER_PLANS[g.bike.kind as KindId] as PlanBase | undefined;
      return starter === undefined ? refused({ why: "gone" }) : done({ base: starter, by: null });
    }
    if (input.with === "as it was given") return done({ base: await q.bikes.base(g.bike.planHash), by: null });
    const { group, home } = { group: ctx.who.group ?? g.bike.homeGroup, home: g.bike.model };
    if (group === null) return refused({ why: "not in a group" });
    const shared = home === null ? null : await q.groupPlans.latest(group, home);
    if (shared === null) return refused({ why: "no group plan", model: home });
    const names = await q.members.byIds([shared.by]);
    return done({ base: await q.bikes.base(shared.hash), by: names.get(shared.by as MemberId)?.name ?? shared.by });
  });
}

/** A file that cannot be read: why, and the bike that it was for. */
export type BadFile = { readonly is: "bad file"; readonly bike: string; readonly why: Refusal };

/** A plan pasted into the form: one that cannot be read can be pasted again. */
export async function proposePasted(ctx: Ctx, input: { readonly bike: string; readonly text: string }): Promise<Result<BaseChange | BadFile>> {
  const shown = await proposeFile(ctx, input);
  if (shown.is !== "refused" || (shown.why.why !== "bad plan file" && shown.why.why !== "too long")) return shown;
  return done({ is: "bad file", bike: input.bike, why: shown.why });
}

/** A plan from a file, as it was pasted. */
export async function proposeFile(ctx: Ctx, input: { readonly bike?: string; readonly text: string }): Promise<Result<BaseChange>> {
  const read = readPlanFile(input.text);
  return read.is === "refused" ? read : proposing(ctx, input.bike, async () => done({ base: read.value, by: null }));
}

type Offered = { readonly base: PlanBase; readonly by: string | null };

function proposing(ctx: Ctx, bike: string | undefined, work: (q: Repos, g: Garaged) => Promise<Result<Offered>>): Promise<Result<BaseChange>> {
  // The plan shown is kept by its content, so that a press takes the one that was shown and no other.
  return ctx.store
    .act(ctx.event, ctx.now, async (q): Promise<Result<BaseChange>> => {
      const all = await ownGarage(q, ctx);
      if (all.length === 0) return noneLeft(q, ctx);
      const which = whichBike(all, bike);
      if (which.is === "refused") return which;
      const offered = await work(q, which.value);
      if (offered.is === "refused") return offered;
      await q.bikes.keepBase(hashOf(offered.value.base), offered.value.base);
      return done(await changeTo(q, ctx, which.value, offered.value));
    })
    .then(onceHeard);
}

async function changeTo(q: Repos, ctx: Ctx, g: Garaged, { base, by }: Offered): Promise<BaseChange> {
  const now = await q.bikes.base(g.bike.planHash);
  const edits = g.bike.edits.map(({ edit }) => edit);
  // Beside the plan beneath it, what the owner changed is what differs; another plan would have those changes lie on it.
  const own = hashOf(base) === g.bike.planHash;
  const { column } = g.bike;
  const beside = differences(fold(now, edits), base, column);
  const taking = rebased(now, edits, base, column);
  const { difference, conflicts } = own ? { difference: beside, conflicts: [] } : taking;
  const items = new Map([...now.items, ...base.items].map((item) => [item.key, item]));
  const fits = (item: PlanItem): boolean => isFitted(item.fits, g.bike.equipment);
  const name = ({ key, called }: PlanItem): string => ctx.itemName(key, called);
  return {
    ...{ bike: g.bike.id, nickname: g.bike.nickname, column, was: now.name, name: base.name, source: base.source, sharedBy: by },
    ...{ hash: hashOf(base).slice(0, HASH_SHOWN), rev: g.bike.edits.length, same: own, saved: false },
    added: difference.added.filter(fits).map((item) => ({ name: name(item), ...triggerOf(item) })),
    gone: difference.gone.filter(fits).map(name),
    goneSafety: difference.gone.filter((item) => fits(item) && canHurt(item)).map(name),
    of: g.plan.items.length,
    changed: difference.changed.filter(({ will }) => fits(will)).map(({ was, will }) => ({ name: name(will), was: triggerOf(was), will: triggerOf(will) })),
    conflicts: conflicts
      .map((key) => items.get(key))
      .filter((item) => item !== undefined && fits(item))
      .map((item) => name(item as PlanItem)),
    kept: keptOf(beside, difference)
      .filter(({ now: own, there }) => fits((there ?? own) as PlanItem))
      .map(({ now: own, there }) => ({
        ...{ name: name((there ?? own) as PlanItem), now: own === null ? null : triggerOf(own), there: there === null ? null : triggerOf(there) },
      })),
  };
}

type Pair = { readonly now: PlanItem | null; readonly there: PlanItem | null };

/** What differs beside the other plan and would go on differing when it is taken: the owner's own changes. */
function keptOf(beside: PlanDifference, taking: PlanDifference): readonly Pair[] {
  const taken = new Set([...taking.changed.map(({ will }) => will), ...taking.added, ...taking.gone].map(({ key }) => key));
  const pairs: readonly Pair[] = [
    ...beside.changed.map(({ was, will }) => ({ now: was, there: will })),
    ...beside.added.map((there) => ({ now: null, there })),
    ...beside.gone.map((now) => ({ now, there: null })),
  ];
  return pairs.filter(({ now, there }) => !taken.has(((there ?? now) as PlanItem).key));
}

/** Takes the plan that was shown: the bike's own changes lie on it as they did on the one before. */
export async function takeBase(ctx: Ctx, input: { readonly bike: BikeId; readonly hash: string; readonly rev: number }): Promise<Result<BaseChange>> {
  return editPlan<BaseChange>(ctx, input.bike, input.rev, async (g, q) => {
    const found = await q.bikes.baseBeginning(input.hash);
    if (found === null) return refused({ why: "gone" });
    if (found.hash === g.bike.planHash) return refused({ why: "already done" });
    const change = await changeTo(q, ctx, g, { base: found.base, by: null });
    const value = { ...change, rev: input.rev + 1, saved: true };
    return done({ edits: [{ change: "base", from: g.bike.planHash, to: found.hash }], value, planHash: found.hash });
  });
}

/** So much of a name leaves room for a nickname in what a file may hold. */
const MOST_OF_NAME = 80;

/** A bike's plan as it stands, for a file. */
export async function planFor(
  ctx: Ctx,
  input: { readonly bike?: string },
): Promise<Result<{ readonly bike: BikeId; readonly nickname: string; readonly base: PlanBase }>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = pick(all, which.value.bike.id);
    if (g === null) throw new Conflict("bike gone");
    const { name, source } = await q.bikes.base(g.bike.planHash);
    // What its owner changed is no longer the plan that bears the name alone.
    const own = g.bike.edits.some(({ edit }) => edit.change !== "base") ? `${name.slice(0, MOST_OF_NAME)} (${g.bike.nickname})` : name;
    return done({ bike: g.bike.id, nickname: g.bike.nickname, base: { name: own, source, items: g.plan.items } });
  });
}
