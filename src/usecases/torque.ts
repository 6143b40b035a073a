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

/** Reads a torque; a pound alone is asked about, since a foot and an inch are twelve apart, and so is the other end of "max 10 Nm": what lies inside is the maker's to say. */
export function targetTyped(ctx: Ctx, typed: string): Result<Target> {
  const whole = wholeTarget(ctx, typed);
  if (whole.is === "done") return whole;
  const without = withoutEnd(typed, ctx.vocabulary.oneEnd);
  const left = without === null ? whole : wholeTarget(ctx, without);
  return left.is === "done" && left.value.from === left.value.to ? refused({ why: "one end only", typed }) : whole;
}

/** "max 10 Nm", "10 Nm max": what is left without such a word; null where there is none. */
function withoutEnd(typed: string, words: readonly string[]): string | null {
  const text = typed.trim().toLowerCase();
  for (const word of [...words].sort((a, b) => b.length - a.length)) {
    const apart = /\p{L}$/u.test(word) ? " " : "";
    if (text.startsWith(`${word}${apart}`)) return text.slice(word.length).trim();
    if (text.endsWith(` ${word}`)) return text.slice(0, -word.length).trim();
  }
  return null;
}

function wholeTarget(ctx: Ctx, typed: string): Result<Target> {
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
/** A usual size that would do; "too small": below them all, for a torque screwdriver; null: none does. */
export type Borrow = UsualWrench | "too small" | null;
/** What to set: the window at the wrench (another than the target with an adapter), and every wrench held against it. `borrow`: null too where one of theirs does it. */
export type SetAnswer = {
  readonly target: Target;
  readonly atWrench: Window;
  readonly geometry: Geometry | null;
  readonly fits: readonly Fit[];
  readonly borrow: Borrow;
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
/** The smallest usual wrench that holds a window well up its scale. */
function usualFor({ low, high }: Window): Borrow {
  const does = USUAL_WRENCHES.find((usual) => low >= usual.low && low * WELL_UP >= usual.high && high <= usual.high);
  return does ?? (USUAL_WRENCHES.every((usual) => high < usual.low || high * WELL_UP < usual.high) ? "too small" : null);
}

function geometryTyped(ctx: Ctx, { adapter, lever, angle }: SetInput): Result<Geometry | null> {
  if (adapter === undefined && lever === undefined && angle === undefined) return done(null);
  if (adapter === undefined || lever === undefined) return refused({ why: "adapter geometry", missing: "lengths" });
  const [long, short] = [lengthTyped(ctx, lever), lengthTyped(ctx, adapter)];
  if (long === null) return refused({ why: "not a length", typed: lever });
  if (short === null) return refused({ why: "not a length", typed: adapter });
  // In line is the usual way, but an adapter taken for in line that is not would leave the fastener loose.
  if (angle === undefined) return refused({ why: "adapter geometry", missing: "angle" });
  const degrees = degreesTyped(ctx, angle);
  if (degrees === null || degrees > 180) return refused({ why: "adapter geometry", missing: "possible angle" });
  return done({ lever: long, adapter: short, angle: degrees });
}

/** "45", "45°", "22,5 deg", "1/4 turn", "quarter turn", "half a turn": in degrees; null when it is none, or below zero. A bare figure is degrees. */
export function degreesTyped(ctx: Ctx, typed: string): number | null {
  const { units, turns } = ctx.vocabulary;
  const inWords =
    turns[
      typed
        .trim()
        .toLowerCase()
        .replace(/[\s-]+/gu, " ")
    ];
  if (inWords !== undefined) return inWords;
  const amount = parseAmount(typed, units, ctx.who.numbers);
  if (amount.is !== "amount" || amount.from !== amount.to || amount.rest !== "" || amount.from < 0) return null;
  if (amount.unit === null) return amount.fraction === null ? amount.from : null;
  return dimensionOf(amount.unit) === "angle" ? toCanonical(amount.from, amount.unit) : null;
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
