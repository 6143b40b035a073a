// The looks again that work on a bike asks for: shown, and their distances changed by its owner.

import type { BikeId, ItemKey } from "../core/ids.ts";
import type { Columns, PlanEdit } from "../core/plan/plan.ts";
import { isTornApart } from "../core/plan/two-units.ts";
import { type DistanceUnit, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import { ownRules } from "../core/schedule/rechecks.ts";
import { readEvery } from "../message/read-every.ts";
import { RECHECK_RULES } from "../trade/rechecks.ts";
import type { Ctx } from "./context.ts";
import { editPlan } from "./edit-plan.ts";
import type { Garaged } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type RecheckLine = { readonly item: ItemKey; readonly name: string; readonly distance: Columns; readonly changed: boolean; readonly dropped: boolean };
export type RechecksShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly column: DistanceUnit;
  readonly lines: readonly RecheckLine[];
  /** Left out or put off further than common practice just now: its name, so far as common practice goes, and its caution. */
  readonly later: { readonly name: string; readonly usual: Columns; readonly never: boolean; readonly caution: string | null } | null;
};
export type RechecksInput = { readonly item?: string; readonly every?: string; readonly bike?: string };

/** What is looked at again on a bike; with an item and a distance, "never" or "again" it is changed first. */
export async function rechecks(ctx: Ctx, input: RechecksInput): Promise<Result<RechecksShown>> {
  const found = await ctx.store.read(async (q): Promise<Result<{ readonly g: Garaged; readonly edit: PlanEdit | null }>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    if (input.item === undefined) return done({ g, edit: null });
    const typed = input.item.trim().toLowerCase();
    const lines = shown(ctx, g, []).lines;
    const named = lines.filter(({ name, item }) => item === typed || name.toLowerCase() === typed);
    const near = named.length > 0 ? named : lines.filter(({ name }) => name.toLowerCase().includes(typed));
    const [line, ...more] = near;
    if (line === undefined) return refused({ why: "no such item", typed: input.item, nearest: lines.map(({ name }) => name) });
    if (more.length > 0) return refused({ why: "which item", typed: input.item, items: near.map(({ name }) => name) });
    const said = (input.every ?? "").trim().toLowerCase();
    if (said === "never") return done({ g, edit: { change: "drop", item: line.item } });
    if (said === "again") return done({ g, edit: { change: "restore", item: line.item } });
    const every = readEvery(said, knownOf(ctx, all));
    if (every === null || (every.miles === null && every.km === null)) return refused({ why: "not a distance", typed: input.every ?? "", unit: g.unit });
    if (isTornApart(every)) return refused({ why: "two distances", miles: every.miles ?? 0, km: every.km ?? 0 });
    return done({ g, edit: { change: "interval", item: line.item, repeat: { by: "interval", every: { ...every, months: null, hours: null } } } });
  });
  if (found.is === "refused") return found;
  const { g, edit } = found.value;
  if (edit === null) return done(shown(ctx, g, []));
  return editPlan(ctx, g.bike.id, g.bike.edits.length, (now) => done({ edits: [edit], value: shown(ctx, now, [edit]) }));
}

/** The rules whose work this bike's plan has. */
function shown(ctx: Ctx, g: Garaged, more: readonly PlanEdit[]): RechecksShown {
  const edits = [...g.bike.edits.map((signed) => signed.edit), ...more];
  const has = new Set(g.plan.items.map((item) => item.key));
  const lines = ownRules(RECHECK_RULES, edits).flatMap(({ rule, distance, changed, dropped }): RecheckLine[] =>
    rule.after.some(({ item }) => has.has(item)) ? [{ item: rule.item.key, name: ctx.itemName(rule.item.key, null), distance, changed, dropped }] : [],
  );
  return { bike: g.bike.id, nickname: g.bike.nickname, column: g.bike.column, lines, later: laterBy(ctx, more) };
}

/** What a change takes away of the looks that common practice asks for. */
function laterBy(ctx: Ctx, [edit]: readonly PlanEdit[]): RechecksShown["later"] {
  const key = edit?.change === "drop" || edit?.change === "interval" ? edit.item : null;
  const rule = RECHECK_RULES.find(({ item }) => item.key === key);
  if (edit === undefined || rule === undefined) return null;
  const never = edit.change === "drop";
  if (!never && !(edit.change === "interval" && edit.repeat.by === "interval" && far(edit.repeat.every) > far(rule.distance) * ROUNDED)) return null;
  return { name: ctx.itemName(rule.item.key, null), usual: rule.distance, never, caution: rule.item.caution };
}

const far = ({ miles, km }: Columns): number => (km === null ? (miles ?? 0) * TENTHS_OF_MM.mi : km * TENTHS_OF_MM.km);
/** The other column of the same distance is not further. */
const ROUNDED = 1.1;
