// Which of a member's torque wrenches can do a window, and where to set it: on a step of its scale, inside the window, high enough on the scale.

import { fromCanonical, toCanonical, type UnitId } from "../quantity/units.ts";

/** A wrench as its owner lists it: figures in its own unit. `accuracy` as a share of the reading. */
export type Wrench = {
  readonly id: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly unit: UnitId;
  readonly accuracy: number;
};

/** A window in newton metres; both ends the same for a single figure. */
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

/** Setting tools are specified from 20 % of full scale. Source: ISO 6789 test points; ASME B107.300. */
const LEAST_SHARE = 0.2;
/** A step counts as inside a single figure when it misses it by no more than this. */
const NEAR_ENOUGH = 0.02;

/**
 * Every wrench against the window, the best first: one that keeps inside by its own accuracy, then one that is high enough on its scale, then the finer step.
 * @param window what the wrench must be set to, in newton metres; an adapter's correction is already in it
 */
export function fits(window: Window, wrenches: readonly Wrench[]): readonly Fit[] {
  return wrenches.map((wrench) => fitOf(window, wrench)).sort((a, b) => rank(b) - rank(a) || a.wrench.step - b.wrench.step);
}

const rank = (fit: Fit): number => (fit.setting === null ? 0 : 4) + (fit.keepsInside ? 2 : 0) + (fit.lowOnScale ? 0 : 1);

function fitOf(window: Window, wrench: Wrench): Fit {
  const [low, high] = [fromCanonical(window.low, wrench.unit), fromCanonical(window.high, wrench.unit)];
  const none = (why: Exclude<Fit["why"], "fits">): Fit => ({ wrench, setting: null, why, lowOnScale: false, keepsInside: false, reach: null });
  if (high < wrench.low) return none("below its scale");
  if (low > wrench.high) return none("above its scale");
  const setting = stepNear((low + high) / 2, wrench);
  const single = window.low === window.high;
  const slack = single ? low * NEAR_ENOUGH : 1e-9 * Math.max(1, high);
  if (setting < low - slack || setting > high + slack) return none("no step inside");
  const reach = { low: toCanonical(setting * (1 - wrench.accuracy), wrench.unit), high: toCanonical(setting * (1 + wrench.accuracy), wrench.unit) };
  return {
    wrench,
    setting,
    why: "fits",
    lowOnScale: setting < wrench.high * LEAST_SHARE,
    keepsInside: !single && reach.low >= window.low && reach.high <= window.high,
    reach,
  };
}

/** The step of the scale nearest to a figure. */
function stepNear(figure: number, { low, high, step }: Wrench): number {
  const steps = Math.floor((high - low) / step + 1e-9);
  const n = Math.min(steps, Math.max(0, Math.round((figure - low) / step)));
  return Number((low + n * step).toPrecision(12));
}
