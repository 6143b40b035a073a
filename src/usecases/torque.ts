// Torque at the wrench: what is wanted, what stands between wrench and fastener, and which of the member's wrenches to set, where.

import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf, toCanonical, type UnitId } from "../core/quantity/units.ts";
import { settingWith } from "../core/torque/adapter.ts";
import { type Drive, type Fit, fits, type Window, type Wrench } from "../core/torque/wrench.ts";
import { USUAL_WRENCHES } from "../trade/fasteners.ts";
import type { Ctx } from "./context.ts";
import { done, type Result, refused } from "./refusals.ts";

/** A window as it was typed, in newton metres beside. */
export type Target = { readonly typed: string; readonly from: number; readonly to: number; readonly unit: UnitId; readonly window: Window };

/** Reads a torque; a pound alone is asked about, since a foot and an inch are twelve apart. */
export function targetTyped(ctx: Ctx, typed: string): Result<Target> {
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is === "ambiguous") return refused({ why: "cannot convert", typed, because: "unknown unit", to: null, candidates: amount.candidates, word: null });
  if (amount.is === "refused" || amount.from <= 0 || amount.rest !== "") return refused({ why: "not a torque", typed });
  const unit = amount.unit ?? ctx.who.torque;
  // A pound of torque is a foot's or an inch's, twelve apart.
  if (unit === "lb" || unit === "lbf")
    return refused({ why: "cannot convert", typed, because: "unknown unit", to: null, candidates: ["ft-lb", "in-lb"], word: null });
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
/** A length as typed, and in millimetres. */
export type Length = { readonly value: number; readonly unit: UnitId; readonly millimetres: number };
/** What stands between wrench and fastener: `lever` the wrench's own length, `adapter` from its square to the fastener, `angle` in degrees, 0 in line. */
export type Geometry = { readonly lever: Length; readonly adapter: Length; readonly angle: number };
/** A usual size of torque wrench, for borrowing: newton metres. */
export type UsualWrench = { readonly drive: Drive; readonly low: number; readonly high: number };
/** What to set: the window at the wrench (another than the target with an adapter), and every wrench held against it. `borrow`: a usual size that would do. */
export type SetAnswer = {
  readonly target: Target;
  readonly atWrench: Window;
  readonly geometry: Geometry | null;
  readonly fits: readonly Fit[];
  readonly borrow: UsualWrench | null;
};

/** Picks among the member's wrenches for a target. */
export async function setTorque(ctx: Ctx, input: SetInput): Promise<Result<SetAnswer>> {
  const target = targetTyped(ctx, input.target);
  if (target.is === "refused") return target;
  const geometry = geometryTyped(ctx, input);
  if (geometry.is === "refused") return geometry;
  const atWrench = windowWith(target.value.window, geometry.value);
  if (atWrench === null) return refused({ why: "adapter geometry", missing: null });
  const held = fits(atWrench, await torqueWrenches(ctx));
  const able = held.some((fit) => fit.setting !== null);
  return done({ target: target.value, atWrench, geometry: geometry.value, fits: held, borrow: able ? null : usualFor(atWrench) });
}

/** The member's torque wrenches, without the gauges. */
export const torqueWrenches = async (ctx: Ctx): Promise<readonly Wrench[]> =>
  (await ctx.store.one((q) => q.wrenches.ofOwner(ctx.who.member))).filter((wrench) => dimensionOf(wrench.unit) === "torque");

/** From a fifth of a scale on its reading is good: common practice. */
const WELL_UP = 5;
/** The smallest usual wrench that holds a window well up its scale; null where none does. */
function usualFor({ low, high }: Window): UsualWrench | null {
  return USUAL_WRENCHES.find((usual) => low >= usual.low && low * WELL_UP >= usual.high && high <= usual.high) ?? null;
}

function geometryTyped(ctx: Ctx, { adapter, lever, angle }: SetInput): Result<Geometry | null> {
  if (adapter === undefined && lever === undefined && angle === undefined) return done(null);
  if (adapter === undefined || lever === undefined) return refused({ why: "adapter geometry", missing: "lengths" });
  const [long, short] = [lengthTyped(ctx, lever), lengthTyped(ctx, adapter)];
  if (long === null) return refused({ why: "not a length", typed: lever });
  if (short === null) return refused({ why: "not a length", typed: adapter });
  const degrees = angle === undefined ? 0 : degreesTyped(angle);
  if (degrees === null || degrees > 180) return refused({ why: "adapter geometry", missing: "angle" });
  return done({ lever: long, adapter: short, angle: degrees });
}

/** "45", "45°", "22,5 deg": null when it is none, or below zero. */
export function degreesTyped(typed: string): number | null {
  const found = /^\s*(\d{1,3}(?:[.,]\d+)?)\s*(?:°|deg|degrees)?\s*$/iu.exec(typed)?.[1];
  return found === undefined ? null : Number(found.replace(",", "."));
}

function windowWith(window: Window, geometry: Geometry | null): Window | null {
  if (geometry === null) return window;
  const between = { wrench: geometry.lever.millimetres, adapter: geometry.adapter.millimetres, angle: geometry.angle };
  const [low, high] = [settingWith(window.low, between), settingWith(window.high, between)];
  return low === null || high === null ? null : { low, high };
}

/** A length above zero; a bare figure is millimetres. */
export function lengthTyped(ctx: Ctx, typed: string): Length | null {
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is !== "amount" || amount.from !== amount.to || amount.rest !== "" || amount.from <= 0) return null;
  const unit = amount.unit ?? "mm";
  return dimensionOf(unit) === "length" ? { value: amount.from, unit, millimetres: toCanonical(amount.from, unit) } : null;
}
