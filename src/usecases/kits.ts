// Parts that are changed as a kit: a record of the whole says which of them were changed, where the others stayed on.

import type { BikeId } from "../core/ids.ts";
import type { PartRow } from "../core/parts/fitted.ts";
import { kitNamed } from "../core/parts/kit-named.ts";
import type { DetailWords } from "../core/reading/detail-words.ts";
import { Conflict } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { PART_ROWS } from "../trade/parts.ts";
import type { Ctx } from "./context.ts";
import { pick } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";

/** The kit that a job put on, if it did: its part, and what belongs to it. */
export function kitIn({ items }: Pick<WorkRecord, "items">): Pick<PartRow, "part" | "kit" | "items"> | null {
  return PART_ROWS.find((row) => row.kit.length > 0 && items.some(({ item, outcome }) => row.items.includes(item) && row.outcomes.includes(outcome))) ?? null;
}

/** What of a kit a record names as changed; null where it says nothing, and all of it was. */
export function changedOf(kit: Pick<PartRow, "kit" | "items">, { detail }: Pick<WorkRecord, "detail">): readonly string[] | null {
  const named = detail.parts.flatMap(({ words, item }) => (item !== null && kit.items.includes(item) && kit.kit.includes(words) ? [words] : []));
  return named.length === 0 ? null : named;
}

/** Items that a record says were renewed, of which its words name another part of the kit alone: a sprocket is no chain, whatever the plan counts by it. */
export function notRenewed(record: Pick<WorkRecord, "items" | "detail" | "words">, languages: readonly Pick<DetailWords, "kits">[]): readonly string[] {
  const kit = kitIn(record);
  if (kit === null) return [];
  const words = languages.map(({ kits }) => kits);
  const changed = changedOf(kit, record) ?? kitNamed(kit.kit, record.words, words);
  return changed.includes(kit.kit[0] ?? "") ? [] : kit.items;
}

export type KitKept = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly record: string;
  readonly rev: number;
  readonly changed: readonly string[];
  readonly stayed: readonly string[];
  /** Does what the plan counts start anew? */
  readonly counts: boolean;
};

/** Notes on the record that only some of its kit was changed. @param changed by name, as the kit has them */
export async function keptOfKit(
  ctx: Ctx,
  input: { readonly record: string; readonly rev: number; readonly changed: readonly string[] },
): Promise<Result<KitKept>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<KitKept>> => {
    const record = await q.work.byId(input.record);
    if (record === null || record.state === "withdrawn") return refused({ why: "gone" });
    const g = pick(await ownGarage(q, ctx), record.bike);
    if (g === null) return refused({ why: "not yours" });
    if (record.rev !== input.rev) return refused({ why: "changed meanwhile" });
    const kit = kitIn(record);
    const changed = kit === null ? [] : input.changed.filter((each) => kit.kit.includes(each));
    const [item] = kit?.items ?? [];
    if (kit === null || item === undefined || changed.length === 0 || changed.length === kit.kit.length) return refused({ why: "nothing to change" });
    // The first of a kit is what its item counts: where that stayed on, nothing starts anew.
    const counts = changed.includes(kit.kit[0] ?? "");
    const items = counts ? record.items : record.items.filter((each) => !kit.items.includes(each.item));
    const parts = [...record.detail.parts, ...changed.map((words) => ({ words, item, made: null }))];
    const next: WorkRecord = {
      ...record,
      rev: record.rev + 1,
      by: ctx.who.member,
      at: ctx.now,
      why: "part of the kit",
      items,
      detail: { ...record.detail, parts },
    };
    if (!(await q.work.revise(next))) throw new Conflict("work changed meanwhile");
    await touch(q, ctx, [record.bike]);
    const stayed = kit.kit.filter((each) => !changed.includes(each));
    return done({ bike: record.bike, nickname: g.bike.nickname, record: record.id, rev: next.rev, changed, stayed, counts });
  });
  return onceHeard(acted);
}
