// Which of a member's torque wrenches can do a window, and where to set it: on a step of its scale, inside the window, high enough on the scale.
// A pressure gauge is listed and read in the same way.

import { dimensionOf, fromCanonical, toCanonical, type UnitId } from "../quantity/units.ts";

/** What a wrench is. A click wrench is set beforehand, the others are read while they turn; a gauge reads pressure. */
export const WRENCH_KINDS = ["click", "beam", "dial", "electronic", "screwdriver", "pressure gauge"] as const;
export type WrenchKind = (typeof WRENCH_KINDS)[number];
/** What it drives. */
export const DRIVES = ["1/4 in", "3/8 in", "1/2 in", "3/4 in", "bits"] as const;
export type Drive = (typeof DRIVES)[number];

/** A wrench as its owner lists it: figures in its own unit. `accuracy` as a share of the reading. Null: not said. */
export type Wrench = {
  readonly id: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly unit: UnitId;
  readonly accuracy: number;
  readonly drive: Drive | null;
  readonly kind: WrenchKind | null;
};

/** A window in newton metres (kilopascals for a gauge); both ends the same for a single figure. */
export type Window = { readonly low: number; readonly high: number };

/** One wrench held against a window. `setting` is on a step of its scale, in its unit; null when no step can serve. */
export type Fit = {
  readonly wrench: Wrench;
  readonly setting: number | null;
  readonly why: "fits" | "below its scale" | "above its scale" | "no step inside";
  /** Below a fifth of full scale a wrench is not held to its accuracy. */
  readonly lowOnScale: boolean;
  /** True when the wrench's whole error keeps the fastener inside the window; never for a single figure. */
  readonly keepsInside: boolean;
  /** What may really be on the fastener, in newton metres. */
  readonly reach: Window | null;
};

/**
 * Share of the reading by which a setting wrench in order may be out, where its owner does not say: 6 % with a full scale up to 10 N·m, else 4 %.
 * Source: ISO 6789-1:2017 type II and ASME B107.300, both from memory. Gauges are taken alike. Common practice.
 */
export const usualAccuracy = (high: number, unit: UnitId): number => (dimensionOf(unit) === "torque" && toCanonical(high, unit) <= 10 ? 0.06 : 0.04);

/** Share of full scale from which setting tools are specified. Source: ISO 6789 test points; ASME B107.300. */
const LEAST_SHARE = 0.2;
/** Whether a setting lies so low on a wrench's scale that the wrench is not held to its accuracy there; from exactly a fifth on it is. */
export const isLowOnScale = (setting: number, { high }: Pick<Wrench, "high">): boolean => setting < high * LEAST_SHARE - 1e-9;

/** A step counts as inside a single figure when it misses it by no more than this. */
const NEAR_ENOUGH = 0.02;

/** The step of a wrench's scale nearest to a torque in newton metres; null when it is off the scale. */
export function stepAt(torque: number, wrench: Wrench): number | null {
  const figure = fromCanonical(torque, wrench.unit);
  return figure < wrench.low - wrench.step / 2 || figure > wrench.high + wrench.step / 2 ? null : stepNear(figure, figure, wrench);
}

/**
 * Every wrench against the window, the best first: one that keeps inside by its own accuracy, then one that is high enough on its scale, then the finer step,
 * steps of different units compared as torques.
 * @param window what the wrench must be set to, in newton metres; an adapter's correction is already in it
 */
export function fits(window: Window, wrenches: readonly Wrench[]): readonly Fit[] {
  return wrenches.map((wrench) => fitOf(window, wrench)).sort((a, b) => rank(b) - rank(a) || fineness(a.wrench) - fineness(b.wrench));
}

const fineness = ({ step, unit }: Wrench): number => toCanonical(step, unit);

const rank = (fit: Fit): number => (fit.setting === null ? 0 : 4) + (fit.keepsInside ? 2 : 0) + (fit.lowOnScale ? 0 : 1);

function fitOf(window: Window, wrench: Wrench): Fit {
  const [low, high] = [fromCanonical(window.low, wrench.unit), fromCanonical(window.high, wrench.unit)];
  const none = (why: Exclude<Fit["why"], "fits">): Fit => ({ wrench, setting: null, why, lowOnScale: false, keepsInside: false, reach: null });
  if (high < wrench.low) return none("below its scale");
  if (low > wrench.high) return none("above its scale");
  const setting = stepNear(low, high, wrench);
  const single = window.low === window.high;
  const slack = single ? low * NEAR_ENOUGH : 1e-9 * Math.max(1, high);
  if (setting < low - slack || setting > high + slack) return none("no step inside");
  const reach = { low: toCanonical(setting * (1 - wrench.accuracy), wrench.unit), high: toCanonical(setting * (1 + wrench.accuracy), wrench.unit) };
  return {
    wrench,
    setting,
    why: "fits",
    lowOnScale: isLowOnScale(setting, wrench),
    keepsInside: !single && reach.low >= window.low && reach.high <= window.high,
    reach,
  };
}

/** Where to aim: the middle of all settings whose whole error stays inside; the middle of the window where there are none. */
function aim(low: number, high: number, accuracy: number): number {
  const [least, most] = [low / (1 - accuracy), high / (1 + accuracy)];
  return least <= most ? (least + most) / 2 : (low + high) / 2;
}

/** The step of the scale nearest to where a window is aimed at: one inside it where there is one. */
function stepNear(from: number, to: number, { low, high, step, accuracy }: Wrench): number {
  const steps = Math.floor((high - low) / step + 1e-9);
  const [first, last] = [Math.max(0, Math.ceil((from - low) / step - 1e-9)), Math.min(steps, Math.floor((to - low) / step + 1e-9))];
  const nearest = Math.round((aim(from, to, accuracy) - low) / step);
  const n = first <= last ? Math.min(last, Math.max(first, nearest)) : Math.min(steps, Math.max(0, nearest));
  return Number((low + n * step).toPrecision(12));
}
