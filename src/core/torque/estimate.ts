// A torque from the fastener itself, for where no maker's value can be found: T = K·d·F. An estimate and no more, with the range that friction gives it.

import { stressArea, type Thread } from "./thread.ts";

/** Least proof stress of a property class or grade, in MPa. */
export type Grade = { readonly proof: number };
/** Nut factor of a state of the threads: likely, and the range that published tables give. */
export type Friction = { readonly likely: number; readonly from: number; readonly to: number };
/** What the thread goes into. `engaged`: length of thread in the hole, in mm; needed where that is softer than the bolt. */
export type Into = { readonly material: "steel" } | { readonly material: "aluminium"; readonly engaged: number };

export type Estimate = {
  /** Newton metres. */
  readonly likely: number;
  readonly from: number;
  readonly to: number;
  /** Preload in newtons that the likely torque gives. */
  readonly preload: number;
  readonly area: number;
  /** Share of proof load that the likely torque gives on the slipperiest thread of that state: above 1 it stretches the bolt. */
  readonly atWorst: number;
  /** True when the hole's thread, not the bolt, sets the limit. */
  readonly limitedByHole: boolean;
};

/** Share of proof load for a joint that is opened again. Source: Shigley, eq. 8-31. */
const PRELOAD = 0.75;
/** In aluminium a thread carries its bolt from twice the diameter on. Common practice. */
const FULL_IN_ALUMINIUM = 2;

/** The torque that gives three quarters of proof load, for the likely friction and for both ends of what is published. */
export function estimate(thread: Thread, grade: Grade, friction: Friction, into: Into): Estimate {
  const area = stressArea(thread);
  const share = into.material === "steel" ? 1 : Math.min(1, into.engaged / (FULL_IN_ALUMINIUM * thread.diameter));
  const preload = PRELOAD * grade.proof * area * share;
  const torque = (k: number): number => (k * thread.diameter * preload) / 1000;
  return {
    likely: torque(friction.likely),
    from: torque(friction.from),
    to: torque(friction.to),
    preload,
    area,
    atWorst: (PRELOAD * share * friction.likely) / friction.from,
    limitedByHole: share < 1,
  };
}
