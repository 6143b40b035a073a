// Adding an item of one's own, dropping one and bringing it back, and the record of every change. Each can be taken back by a change of its own.

import { nicknameKey } from "../core/bike.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey, MemberId } from "../core/ids.ts";
import { fold } from "../core/plan/fold.ts";
import { ACTIONS, type Interval, type PlanEdit, type PlanItem, type System, type WorkAction } from "../core/plan/plan.ts";
import { isTornApart } from "../core/plan/two-units.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { readEvery } from "../message/read-every.ts";
import type { Ctx } from "./context.ts";
import { editPlan } from "./edit-plan.ts";
import type { Garaged } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { itemsNamed, nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

/** A change that was saved, and the state of the plan to take it back from. */
export type PlanEdited = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly did: "added" | "dropped" | "brought back" | "taken back";
  readonly name: string;
  readonly every: Interval | null;
  readonly column: DistanceUnit;
  readonly caution: string | null;
  readonly rev: number;
};

const LONGEST_NAME = 60;

async function bikeMeant(ctx: Ctx, typed: string | undefined): Promise<Result<Garaged>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    return all.length === 0 ? noneLeft(q, ctx) : whichBike(all, typed);
  });
}

const editedOf = (g: Garaged, did: PlanEdited["did"], name: string, item: PlanItem | null): PlanEdited => ({
  ...{ bike: g.bike.id, nickname: g.bike.nickname, did, name, column: g.bike.column, rev: g.bike.edits.length + 1 },
  ...{ every: item?.repeat.by === "interval" && did === "added" ? item.repeat.every : null, caution: item?.caution ?? null },
});

/** Adds an item of the member's own, counted from the last time it is done. */
export async function addItem(
  ctx: Ctx,
  input: {
    readonly called: string;
    readonly every: string;
    readonly action?: WorkAction;
    readonly system?: System;
    readonly why?: string;
    readonly bike?: string;
  },
): Promise<Result<PlanEdited>> {
  const which = await bikeMeant(ctx, input.bike);
  if (which.is === "refused") return which;
  return editPlan<PlanEdited>(
    ctx,
    which.value.bike.id,
    which.value.bike.edits.length,
    async (g, _q, all) => {
      const called = [...input.called.normalize("NFKC").trim().replace(/\s+/gu, " ")].slice(0, LONGEST_NAME).join("");
      const every = readEvery(input.every, knownOf(ctx, all));
      if (every === null) return refused({ why: "not an interval", typed: input.every });
      if ([...g.plan.items, ...g.plan.dropped].some((item) => nicknameKey(nameIn(ctx, g, item.key)) === nicknameKey(called)))
        return refused({ why: "already so", state: `${called} is in the plan` });
      if (isTornApart(every)) return refused({ why: "two distances", miles: every.miles ?? 0, km: every.km ?? 0 });
      const item: PlanItem = {
        ...{ key: `own.${ctx.newId()}` as ItemKey, called, system: input.system ?? "frame and stands", action: input.action ?? ACTIONS[0] },
        ...{ anchor: "last done", first: null, repeat: { by: "interval", every }, parked: "counts", noLateWindow: false, shortened: {} },
        ...{ measuredBy: null, covers: [], fits: {}, engine: "any", position: "any", minutes: null, caution: null, firstOnUsedBike: null },
        source: "an item of its owner's own",
      };
      return done({ edits: [{ change: "add", item }], value: editedOf(g, "added", called, item) });
    },
    input.why,
  );
}

/** Drops an item: it stays visible as dropped, and falls due no more. `back` brings it in again. */
export async function dropItem(
  ctx: Ctx,
  input: { readonly item: string; readonly back?: boolean; readonly why?: string; readonly bike?: string },
): Promise<Result<PlanEdited>> {
  const which = await bikeMeant(ctx, input.bike);
  if (which.is === "refused") return which;
  return editPlan<PlanEdited>(
    ctx,
    which.value.bike.id,
    which.value.bike.edits.length,
    async (g, _q, all) => {
      if (input.back === true) {
        const item = g.plan.dropped.find((each) => nicknameKey(ctx.itemName(each.key, each.called)) === nicknameKey(input.item) || each.key === input.item);
        if (item === undefined)
          return refused({ why: "no such item", typed: input.item, nearest: g.plan.dropped.map((each) => ctx.itemName(each.key, each.called)) });
        return done({ edits: [{ change: "restore", item: item.key }], value: editedOf(g, "brought back", ctx.itemName(item.key, item.called), item) });
      }
      const named = itemsNamed(ctx, all, g, input.item);
      if (named.is === "refused") return named;
      const [key, ...others] = named.value;
      if (key === undefined || others.length > 0)
        return refused({ why: "which item", typed: input.item, items: named.value.map((each) => nameIn(ctx, g, each)) });
      const item = g.plan.items.find((each) => each.key === key) ?? null;
      return done({ edits: [{ change: "drop", item: key }], value: editedOf(g, "dropped", nameIn(ctx, g, key), item) });
    },
    input.why,
  );
}

/** Takes the last change back, whatever it was, by a change of its own. */
export async function undoEdit(ctx: Ctx, input: { readonly bike: BikeId; readonly rev: number }): Promise<Result<PlanEdited>> {
  return editPlan<PlanEdited>(ctx, input.bike, input.rev, async (g, q) => {
    const edits = g.bike.edits.map(({ edit }) => edit);
    const last = edits.at(-1);
    if (last === undefined) return refused({ why: "gone" });
    const named =
      last.change === "base" ? null : last.change === "add" ? last.item : ([...g.plan.items, ...g.plan.dropped].find(({ key }) => key === last.item) ?? null);
    const name = named === null ? "" : ctx.itemName(named.key, named.called);
    const value = editedOf(g, "taken back", name, named);
    switch (last.change) {
      case "add":
        return done({ edits: [{ change: "drop", item: last.item.key }], value });
      case "drop":
        return done({ edits: [{ change: "restore", item: last.item }], value });
      case "restore":
        return done({ edits: [{ change: "drop", item: last.item }], value });
      case "base":
        return done({ edits: [{ change: "base", from: last.to, to: last.from }], value, planHash: last.from });
      case "interval": {
        const before = fold(await q.bikes.base(g.bike.planHash), edits.slice(0, -1)).items.find((item) => item.key === last.item);
        if (before === undefined) return refused({ why: "gone" });
        const { repeat, first, anchor, shortened } = before;
        return done({ edits: [{ change: "interval", item: last.item, repeat, first, anchor, shortened }], value });
      }
    }
  });
}

/** One change as it is told: `to`: the name of the plan taken, for a change of base. */
export type ToldEdit = {
  readonly change: PlanEdit["change"];
  readonly name: string;
  readonly repeat: PlanItem["repeat"] | null;
  /** What uses shorten since, where that was changed. */
  readonly shortened: PlanItem["shortened"] | null;
  readonly by: string | null;
  readonly at: Instant;
  readonly why: string | null;
};
export type PlanHistory = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly column: DistanceUnit;
  readonly rev: number;
  readonly edits: readonly ToldEdit[];
};

/** Every change of a bike's plan, the latest first: what, by whom, when and why. */
export async function planHistory(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<PlanHistory>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const { bike } = which.value;
    const names = await q.members.byIds([...new Set(bike.edits.map((signed) => signed.by as MemberId))]);
    const base = await q.bikes.base(bike.planHash);
    const items = new Map([...base.items, ...bike.edits.flatMap(({ edit }) => (edit.change === "add" ? [edit.item] : []))].map((item) => [item.key, item]));
    const edits: ToldEdit[] = [];
    for (const { edit, by, at, why } of bike.edits) {
      const key = edit.change === "base" ? null : edit.change === "add" ? edit.item.key : edit.item;
      const name = edit.change === "base" ? (await q.bikes.base(edit.to)).name : ctx.itemName(key ?? "", items.get(key ?? ("" as ItemKey))?.called ?? null);
      const repeat = edit.change === "interval" ? edit.repeat : edit.change === "add" ? edit.item.repeat : null;
      const shortened = edit.change === "interval" ? (edit.shortened ?? null) : null;
      edits.push({ change: edit.change, name, repeat, shortened, by: by === ctx.who.member ? null : (names.get(by)?.name ?? by), at, why });
    }
    return done({ bike: bike.id, nickname: bike.nickname, column: bike.column, rev: bike.edits.length, edits: edits.reverse() });
  });
}
