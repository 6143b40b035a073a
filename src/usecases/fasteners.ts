// Fasteners: an estimate where no value can be found, tightening in stages, and spanners of the other system.

import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf, toCanonical, type UnitId } from "../core/quantity/units.ts";
import { type Estimate, estimate, type Into } from "../core/torque/estimate.ts";
import { type CrossFit, crossFits, type HexSize } from "../core/torque/hex.ts";
import { readJoint } from "../core/torque/joint.ts";
import { crossOrder, FEWEST, MOST, STAGES } from "../core/torque/stages.ts";
import { readThread, systemOf, type Thread } from "../core/torque/thread.ts";
import { fits, isLowOnScale, stepAt, type Wrench } from "../core/torque/wrench.ts";
import {
  ALUMINIUM_SHEAR,
  FRICTION,
  type FrictionName,
  GRADES,
  type GradeName,
  INCH_SPANNERS,
  METRIC_SPANNERS,
  MOST_ENGAGED,
  THREADS,
} from "../trade/fasteners.ts";
import { JOINTS } from "../trade/joints.ts";
import type { Ctx } from "./context.ts";
import { done, type Result, refused } from "./refusals.ts";
import { degreesTyped, lengthTyped, type Target, targetTyped, torqueWrenches } from "./torque.ts";

export const GRADE_NAMES = Object.keys(GRADES) as readonly GradeName[];
export const THREAD_STATES = Object.keys(FRICTION) as readonly FrictionName[];
export const MATERIALS = ["steel", "aluminium"] as const satisfies readonly Into["material"][];

export type EstimateInput = {
  readonly thread: string;
  readonly grade: GradeName;
  readonly threads: FrictionName;
  readonly joint: string;
  readonly into: Into["material"];
  readonly engaged?: string;
};
export type Estimated = Estimate & { readonly thread: string; readonly grade: GradeName; readonly threads: FrictionName; readonly into: Into["material"] };

/** The smallest bolt that is estimated into aluminium, in mm. */
const SMALL = 7;

/** An estimate for a joint that is known to be harmless; refused for every other, for threads and grades there is no table of, and for what people strip. */
export function estimateTorque(ctx: Ctx, input: EstimateInput): Result<Estimated> {
  const joint = readJoint(input.joint, JOINTS);
  if (joint.is === "refused") return refused({ why: "never estimated", joint: joint.kind, estimated: Object.keys(JOINTS.harmless) });
  const read = readThread(input.thread, THREADS);
  if (read.is === "no thread") return refused({ why: "not a thread", typed: input.thread });
  if (read.is === "not listed") return refused({ why: "thread not listed", typed: input.thread, ofSize: read.ofSize, listed: read.listed });
  const { thread } = read;
  const system = systemOf(thread);
  if (GRADES[input.grade].system !== system) {
    const grades = GRADE_NAMES.filter((name) => GRADES[name].system === system);
    return refused({ why: "grade of the other system", grade: input.grade, thread: thread.name, grades });
  }
  const into = intoTyped(ctx, input, thread);
  if (into.is === "refused") return into;
  const named = { grade: input.grade, threads: input.threads, thread: thread.name, into: input.into };
  return done({ ...estimate(thread, GRADES[input.grade], FRICTION[input.threads], into.value), ...named });
}

function intoTyped(ctx: Ctx, { into, engaged }: EstimateInput, thread: Thread): Result<Into> {
  if (into === "steel") return done({ material: "steel" });
  if (thread.diameter < SMALL) return refused({ why: "small screw in aluminium" });
  if (engaged === undefined) return refused({ why: "engagement missing" });
  const length = lengthTyped(ctx, engaged);
  if (length === null) return refused({ why: "not a length", typed: engaged });
  const most = MOST_ENGAGED * thread.diameter;
  if (length.millimetres > most + 1e-9) return refused({ why: "engagement too long", typed: engaged, thread: thread.name, most: Math.floor(most * 10) / 10 });
  return done({ material: "aluminium", engaged: length.millimetres, shear: ALUMINIUM_SHEAR });
}

/** `setting`: on the member's wrench, in its unit; null where it is off the scale or there is none. */
export type Stage = { readonly share: number; readonly low: number; readonly high: number; readonly setting: number | null; readonly lowOnScale: boolean };
export type Stages = {
  readonly target: Target;
  readonly order: readonly number[];
  readonly stages: readonly Stage[];
  readonly angle: number | null;
  readonly wrench: Wrench | null;
};

/** Staged tightening of several fasteners, across from one another; `angle` in degrees is turned after the last stage. */
export async function stagesFor(ctx: Ctx, input: { readonly target: string; readonly fasteners: string; readonly angle?: string }): Promise<Result<Stages>> {
  const target = targetTyped(ctx, input.target);
  if (target.is === "refused") return target;
  const count = Number(/^\s*(\d{1,2})\s*$/u.exec(input.fasteners)?.[1] ?? Number.NaN);
  if (!(count >= FEWEST && count <= MOST)) return refused({ why: "not a count", typed: input.fasteners, from: FEWEST, to: MOST });
  const angle = input.angle === undefined ? null : degreesTyped(ctx, input.angle);
  if (input.angle !== undefined && (angle === null || angle <= 0 || angle > 360)) return refused({ why: "not an angle", typed: input.angle });
  const { window, from, to } = target.value;
  const best = fits(window, await torqueWrenches(ctx)).find((fit) => fit.setting !== null) ?? null;
  const stages = STAGES.map((share) => {
    const whole = share === 1;
    const setting = best === null ? null : whole ? best.setting : stepAt(((window.low + window.high) / 2) * share, best.wrench);
    const lowOnScale = best !== null && setting !== null && isLowOnScale(setting, best.wrench);
    return { share, low: from * share, high: to * share, setting, lowOnScale };
  });
  return done({ target: target.value, order: crossOrder(count), stages, angle, wrench: best?.wrench ?? null });
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
  return done({ head: same ?? { name: typed, width }, fits: crossFits(same ?? { name: typed, width }, metric ? INCH_SPANNERS : METRIC_SPANNERS) });
}
