// Taking items out of a record that says more than was done, such as a service at a shop: amended, never erased.

import type { ItemKey } from "../core/ids.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, pick } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";

/** What stands with a record of all that was on a sheet, of which the bill says no more. */
export const NOT_ITEMISED = "not itemised";

/** A record and the revision of it that was shown. */
export type Billed = { readonly record: string; readonly rev: number };
export type BillAmended = {
  readonly record: string;
  readonly rev: number;
  readonly nickname: string;
  /** What it says now, and what this took out or put back. */
  readonly items: readonly { readonly item: ItemKey; readonly called: string }[];
  readonly changed: readonly string[];
  readonly back: boolean;
};

/** Takes out what was not on the bill. */
export const offTheBill = (ctx: Ctx, input: Billed & { readonly items: readonly string[] }): Promise<Result<BillAmended>> =>
  amended(ctx, (q, all) => takenOut(q, ctx, all, input), false);

/** Puts back what the last amendment took out. */
export const backOnBill = (ctx: Ctx, input: Billed): Promise<Result<BillAmended>> => amended(ctx, (q, all) => putBack(q, ctx, all, input), true);

export const takenOut = (q: Repos, ctx: Ctx, all: readonly Garaged[], input: Billed & { readonly items: readonly string[] }): Promise<Result<Amendment>> =>
  amending(q, ctx, all, input, (record) => record.items.filter(({ item }) => !input.items.includes(item)), "not on the bill");

export const putBack = (q: Repos, ctx: Ctx, all: readonly Garaged[], input: Billed): Promise<Result<Amendment>> =>
  amending(q, ctx, all, input, async () => (await q.work.atRev(input.record, input.rev - 1))?.items ?? [], "put back");

/** A record before and after. */
type Amendment = { readonly before: WorkRecord; readonly after: WorkRecord };

async function amending(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  input: Billed,
  itemsOf: (record: WorkRecord) => WorkRecord["items"] | Promise<WorkRecord["items"]>,
  why: string,
): Promise<Result<Amendment>> {
  const record = await q.work.byId(input.record);
  if (record === null) return refused({ why: "gone" });
  if (pick(all, record.bike) === null) return refused({ why: "not yours" });
  if (record.rev !== input.rev) return refused({ why: "changed meanwhile" });
  // Withdrawn as a whole it is no longer there; withdrawn since nothing of it was left, it can be put back.
  if (record.state === "withdrawn" && record.why !== NOTHING_LEFT) return refused({ why: "gone" });
  const items = await itemsOf(record);
  const held = record.state === "withdrawn" ? [] : record.items;
  if (items.length === held.length) return refused({ why: "nothing to change" });
  // Nothing left of it: it was not done at all.
  const next: WorkRecord = { ...record, rev: record.rev + 1, by: ctx.who.member, at: ctx.now, state: "live", why };
  const after = items.length === 0 ? { ...next, state: "withdrawn" as const, why: NOTHING_LEFT } : { ...next, items };
  if (!(await q.work.revise(after))) throw new Conflict("work changed meanwhile");
  await touch(q, ctx, [record.bike]);
  return done({ before: record, after });
}

const NOTHING_LEFT = "nothing of it was on the bill";

async function amended(ctx: Ctx, work: (q: Repos, all: readonly Garaged[]) => Promise<Result<Amendment>>, back: boolean): Promise<Result<BillAmended>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<BillAmended>> => {
    const all = await ownGarage(q, ctx);
    const did = await work(q, all);
    if (did.is === "refused") return did;
    const { before, after } = did.value;
    const [held, holds] = [before.state === "live" ? before.items : [], after.state === "live" ? after.items : []];
    const [more, less] = back ? [holds, held] : [held, holds];
    const changed = more.filter(({ item }) => !less.some((each) => each.item === item)).map(({ called }) => called);
    const nickname = pick(all, after.bike)?.bike.nickname ?? "";
    return done({ record: after.id, rev: after.rev, nickname, items: holds.map(({ item, called }) => ({ item, called })), changed, back });
  });
  return onceHeard(acted);
}
