// The torque wrenches and pressure gauges that a member lists as theirs.

import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import { type Drive, usualAccuracy, type Wrench, type WrenchKind } from "../core/torque/wrench.ts";
import type { Ctx } from "./context.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

export type WrenchInput = {
  readonly name: string;
  readonly range: string;
  readonly step: string;
  readonly accuracy?: string;
  readonly drive?: Drive;
  readonly type?: WrenchKind;
};

/** Lists a wrench or a gauge of the member's; one of the same name is listed anew. */
export async function listWrench(ctx: Ctx, input: WrenchInput): Promise<Result<{ readonly wrench: Wrench }>> {
  const { units } = ctx.vocabulary;
  const range = parseAmount(input.range, units, ctx.who.numbers);
  if (range.is !== "amount" || range.rest !== "" || range.unit === null || range.from === range.to || range.from < 0)
    return refused({ why: "not a range", typed: input.range });
  const { from: low, to: high, unit } = range;
  const measures = dimensionOf(unit);
  const gauge = measures === "pressure";
  if (!gauge && measures !== "torque") return refused({ why: "not a range", typed: input.range });
  // A gauge reads pressure, everything else torque.
  if (input.type !== undefined && (input.type === "pressure gauge") !== gauge) return refused({ why: "not a range", typed: input.range });
  const step = parseAmount(input.step, units, ctx.who.numbers);
  if (step.is !== "amount" || (step.unit !== null && step.unit !== unit) || step.rest !== "" || step.from !== step.to)
    return refused({ why: "not a step", typed: input.step, unit });
  if (step.from <= 0 || step.from > high - low) return refused({ why: "not a step", typed: input.step, unit });
  const accuracy = input.accuracy === undefined ? usualAccuracy(high, unit) : shareTyped(input.accuracy);
  if (accuracy === null) return refused({ why: "not an accuracy", typed: input.accuracy ?? "" });
  const named = { id: ctx.newId(), name: input.name.trim().slice(0, 32), drive: input.drive ?? null, kind: input.type ?? (gauge ? "pressure gauge" : null) };
  const wrench: Wrench = { ...named, low, high, step: step.from, unit, accuracy };
  const acted = await ctx.store.act(ctx.event, ctx.now, (q) => q.wrenches.put(ctx.who.member, wrench, ctx.now));
  return acted.first ? done({ wrench }) : refused({ why: "heard already" });
}

/** "4", "±4 %": as a share; null when it is none up to 20 %. */
function shareTyped(typed: string): number | null {
  const percent = Number((/^\s*(?:±|\+\/?-)?\s*(\d{1,2}(?:[.,]\d+)?)\s*%?\s*$/u.exec(typed)?.[1] ?? "").replace(",", "."));
  return percent > 0 && percent <= 20 ? percent / 100 : null;
}

/** All of them, from the smallest scale to the largest. */
export const wrenchesOf = async (ctx: Ctx): Promise<Result<{ readonly wrenches: readonly Wrench[] }>> =>
  done({ wrenches: await ctx.store.one((q) => q.wrenches.ofOwner(ctx.who.member)) });

/** Takes one off the list by its name. */
export async function dropWrench(ctx: Ctx, input: { readonly name: string }): Promise<Result<{ readonly name: string }>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<{ readonly name: string }>> => {
    if (await q.wrenches.remove(ctx.who.member, input.name)) return done({ name: input.name.trim() });
    return refused({ why: "no such wrench", typed: input.name, wrenches: (await q.wrenches.ofOwner(ctx.who.member)).map((wrench) => wrench.name) });
  });
  return onceHeard(acted);
}
