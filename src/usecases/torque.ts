// Torque at the wrench: a member's wrenches, what to set, an estimate where no value can be found, stages, and hexes of the other system.

import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf, toCanonical, type UnitId } from "../core/quantity/units.ts";
import { settingWith } from "../core/torque/adapter.ts";
import { type Estimate, estimate } from "../core/torque/estimate.ts";
import { type CrossFit, crossFits, type HexSize } from "../core/torque/hex.ts";
import { crossOrder, STAGES } from "../core/torque/stages.ts";
import { readThread } from "../core/torque/thread.ts";
import { type Fit, fits, type Window, type Wrench } from "../core/torque/wrench.ts";
import { FRICTION, type FrictionName, GRADES, type GradeName, INCH_SPANNERS, METRIC_SPANNERS, NEVER_ESTIMATED, THREADS } from "../trade/fasteners.ts";
import type { Ctx } from "./context.ts";
import { done, type Result, refused } from "./refusals.ts";

/** A window as it was typed, in newton metres beside. */
export type Target = { readonly typed: string; readonly from: number; readonly to: number; readonly unit: UnitId; readonly window: Window };

/** Reads a torque; a pound alone is asked about, since a foot and an inch are twelve apart. */
export function targetTyped(ctx: Ctx, typed: string): Result<Target> {
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is === "ambiguous") return refused({ why: "cannot convert", typed, because: "unknown unit", to: null, candidates: amount.candidates });
  if (amount.is === "refused" || amount.from <= 0 || amount.rest !== "") return refused({ why: "not a torque", typed });
  const unit = amount.unit ?? ctx.who.torque;
  // A pound of torque is a foot's or an inch's, twelve apart.
  if (unit === "lb" || unit === "lbf") return refused({ why: "cannot convert", typed, because: "unknown unit", to: null, candidates: ["ft-lb", "in-lb"] });
  if (amount.other !== null || unit === null || dimensionOf(unit) !== "torque") return refused({ why: "not a torque", typed });
  return done({
    typed: amount.typed,
    from: amount.from,
    to: amount.to,
    unit,
    window: { low: toCanonical(amount.from, unit), high: toCanonical(amount.to, unit) },
  });
}

export type SetInput = { readonly target: string; readonly adapter?: string; readonly lever?: string; readonly angle?: string };
/** What to set: the window at the wrench (lower than the target with an adapter), and every wrench held against it. */
export type SetAnswer = { readonly target: Target; readonly atWrench: Window; readonly adapted: boolean; readonly fits: readonly Fit[] };

/** Picks among the member's wrenches for a target. */
export async function setTorque(ctx: Ctx, input: SetInput): Promise<Result<SetAnswer>> {
  const target = targetTyped(ctx, input.target);
  if (target.is === "refused") return target;
  const atWrench = adapted(ctx, target.value.window, input);
  if (atWrench.is === "refused") return atWrench;
  const wrenches = await ctx.store.one((q) => q.wrenches.ofOwner(ctx.who.member));
  return done({ target: target.value, atWrench: atWrench.value, adapted: input.adapter !== undefined, fits: fits(atWrench.value, wrenches) });
}

function adapted(ctx: Ctx, window: Window, { adapter, lever, angle }: SetInput): Result<Window> {
  if (adapter === undefined && lever === undefined && angle === undefined) return done(window);
  if (adapter === undefined || lever === undefined) return refused({ why: "adapter geometry", missing: "lengths" });
  const lengths = [lengthTyped(ctx, lever), lengthTyped(ctx, adapter)];
  const [long, short] = lengths;
  if (long === undefined || long === null) return refused({ why: "not a length", typed: lever });
  if (short === undefined || short === null) return refused({ why: "not a length", typed: adapter });
  const degrees = angle === undefined ? 0 : Number(/^\s*(\d{1,3}(?:\.\d+)?)\s*°?\s*$/u.exec(angle)?.[1] ?? Number.NaN);
  if (!(degrees >= 0 && degrees <= 180)) return refused({ why: "adapter geometry", missing: "angle" });
  const geometry = { wrench: long, adapter: short, angle: degrees };
  const [low, high] = [settingWith(window.low, geometry), settingWith(window.high, geometry)];
  return low === null || high === null ? refused({ why: "adapter geometry", missing: null }) : done({ low, high });
}

/** A length in millimetres; a bare figure is millimetres. */
function lengthTyped(ctx: Ctx, typed: string): number | null {
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is !== "amount" || amount.from !== amount.to || amount.rest !== "") return null;
  const unit = amount.unit ?? "mm";
  return dimensionOf(unit) === "length" ? toCanonical(amount.from, unit) : null;
}

export type WrenchInput = { readonly name: string; readonly range: string; readonly step: string; readonly accuracy?: string };

/** Lists a wrench of the member's; one of the same name is listed anew. */
export async function listWrench(ctx: Ctx, input: WrenchInput): Promise<Result<{ readonly wrench: Wrench }>> {
  const range = targetTyped(ctx, input.range);
  if (range.is === "refused" || range.value.from === range.value.to) return refused({ why: "not a range", typed: input.range });
  const step = parseAmount(input.step, ctx.vocabulary.units, ctx.who.numbers);
  const { from: low, to: high, unit } = range.value;
  const sameUnit = step.is === "amount" && (step.unit === null || step.unit === unit);
  if (step.is !== "amount" || !sameUnit || step.from !== step.to || step.from <= 0 || step.from > high - low)
    return refused({ why: "not a range", typed: input.step });
  const accuracy = input.accuracy === undefined ? 4 : Number(/^\s*(?:±\s*)?(\d{1,2}(?:\.\d+)?)\s*%?\s*$/u.exec(input.accuracy)?.[1] ?? Number.NaN);
  if (!(accuracy > 0 && accuracy <= 20)) return refused({ why: "not a range", typed: input.accuracy ?? "" });
  const wrench: Wrench = { id: ctx.newId(), name: input.name.trim().slice(0, 32), low, high, step: step.from, unit, accuracy: accuracy / 100 };
  const acted = await ctx.store.act(ctx.event, ctx.now, (q) => q.wrenches.put(ctx.who.member, wrench, ctx.now));
  return acted.first ? done({ wrench }) : refused({ why: "already done" });
}

export const wrenchesOf = async (ctx: Ctx): Promise<Result<{ readonly wrenches: readonly Wrench[] }>> =>
  done({ wrenches: await ctx.store.one((q) => q.wrenches.ofOwner(ctx.who.member)) });

export async function dropWrench(ctx: Ctx, input: { readonly name: string }): Promise<Result<{ readonly name: string }>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<{ readonly name: string }>> => {
    if (await q.wrenches.remove(ctx.who.member, input.name)) return done({ name: input.name.trim() });
    return refused({ why: "no such wrench", typed: input.name, wrenches: (await q.wrenches.ofOwner(ctx.who.member)).map((wrench) => wrench.name) });
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}

export const GRADE_NAMES = Object.keys(GRADES) as readonly GradeName[];
export const THREAD_STATES = Object.keys(FRICTION) as readonly FrictionName[];

export type EstimateInput = {
  readonly thread: string;
  readonly grade: GradeName;
  readonly threads: FrictionName;
  readonly joint: string;
  readonly into?: "steel" | "aluminium";
  readonly engaged?: string;
};
export type Estimated = Estimate & { readonly thread: string; readonly grade: GradeName; readonly threads: FrictionName };

/** The smallest bolt that is estimated into aluminium, in mm. */
const SMALL = 7;

/** An estimate for a joint that nothing depends on; refused for those that hold the rider, the wheels or the brakes. */
export function estimateTorque(ctx: Ctx, input: EstimateInput): Result<Estimated> {
  const joint = neverEstimated(input.joint);
  if (joint !== null) return refused({ why: "never estimated", joint });
  const thread = readThread(input.thread, THREADS);
  if (thread === null) return refused({ why: "not a thread", typed: input.thread });
  if (input.into !== "aluminium")
    return done({ ...estimate(thread, GRADES[input.grade], FRICTION[input.threads], { material: "steel" }), ...named(input, thread.name) });
  if (thread.diameter < SMALL) return refused({ why: "small screw in aluminium" });
  if (input.engaged === undefined) return refused({ why: "engagement missing" });
  const engaged = lengthTyped(ctx, input.engaged);
  if (engaged === null || engaged <= 0) return refused({ why: "not a length", typed: input.engaged });
  return done({ ...estimate(thread, GRADES[input.grade], FRICTION[input.threads], { material: "aluminium", engaged }), ...named(input, thread.name) });
}

const named = ({ grade, threads }: EstimateInput, thread: string) => ({ grade, threads, thread });

function neverEstimated(joint: string): string | null {
  const said = ` ${joint
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;
  const found = Object.entries(NEVER_ESTIMATED).find(([, words]) => words.some((word) => said.includes(` ${word} `)));
  return found?.[0] ?? null;
}

export type Stages = {
  readonly target: Target;
  readonly order: readonly number[];
  readonly stages: readonly { readonly share: number; readonly low: number; readonly high: number }[];
  readonly angle: number | null;
};

/** Staged tightening of several fasteners, across from one another; `angle` in degrees is turned after the last stage. */
export function stagesFor(ctx: Ctx, input: { readonly target: string; readonly fasteners: string; readonly angle?: string }): Result<Stages> {
  const target = targetTyped(ctx, input.target);
  if (target.is === "refused") return target;
  const count = Number(/^\s*(\d{1,2})\s*$/u.exec(input.fasteners)?.[1] ?? Number.NaN);
  if (!(count >= 3 && count <= 24)) return refused({ why: "not a count", typed: input.fasteners });
  const angle = input.angle === undefined ? null : Number(/^\s*(\d{1,3})\s*°?\s*$/u.exec(input.angle)?.[1] ?? Number.NaN);
  if (angle !== null && !(angle > 0 && angle <= 360)) return refused({ why: "adapter geometry", missing: "angle" });
  const stages = STAGES.map((share) => ({ share, low: target.value.from * share, high: target.value.to * share }));
  return done({ target: target.value, order: crossOrder(count), stages, angle });
}

/** Spanners of the other system for a hex. */
export function hexFits(ctx: Ctx, input: { readonly size: string }): Result<{ readonly head: HexSize; readonly fits: readonly CrossFit[] }> {
  const typed = input.size.trim();
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  const unit: UnitId | null = amount.is !== "amount" ? null : (amount.unit ?? (amount.fraction === null ? null : "in"));
  if (amount.is !== "amount" || unit === null || dimensionOf(unit) !== "length" || amount.from !== amount.to) return refused({ why: "not a hex size", typed });
  const width = toCanonical(amount.from, unit);
  if (width < 3 || width > 60) return refused({ why: "not a hex size", typed });
  const metric = unit === "mm" || unit === "cm";
  const same = (metric ? METRIC_SPANNERS : INCH_SPANNERS).find((size) => Math.abs(size.width - width) < 0.001);
  return done({ head: same ?? { name: typed, width }, fits: crossFits({ name: typed, width }, metric ? INCH_SPANNERS : METRIC_SPANNERS) });
}
