// A torque from the fastener itself, for where no maker's value can be found: T = K·d·F. An estimate and no more, with the range that friction gives it.

import { stressArea, stripArea, type Thread } from "./thread.ts";

/** Least proof stress of a property class or grade, in MPa. */
export type Grade = { readonly proof: number };
/** Nut factor of a state of the threads: likely, and the range that published tables give. */
export type Friction = { readonly likely: number; readonly from: number; readonly to: number };
/** What the thread goes into. `engaged`: length of full thread in the hole, in mm; `shear`: shear strength of what the hole is in, in MPa. */
export type Into = { readonly material: "steel" } | { readonly material: "aluminium"; readonly engaged: number; readonly shear: number };

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
  /** The same as a share of what strips the hole; null into steel, where the bolt gives first. */
  readonly holeAtWorst: number | null;
  /** True when the hole's thread, not the bolt, sets the limit. */
  readonly limitedByHole: boolean;
};

/** Share of proof load for a joint that is opened again. Source: Shigley, eq. 8-31. */
const PRELOAD = 0.75;
/** Share of what strips the hole: with it two diameters of thread in cast aluminium carry a bolt of class 8.8, which is common practice. */
const HOLE = 0.6;

/** The torque that gives three quarters of proof load, or less where the hole would strip, for the likely friction and for both ends of what is published. */
export function estimate(thread: Thread, grade: Grade, friction: Friction, into: Into): Estimate {
  const area = stressArea(thread);
  const strips = into.material === "steel" ? null : into.shear * stripArea(thread, into.engaged);
  const ofBolt = PRELOAD * grade.proof * area;
  const preload = strips === null ? ofBolt : Math.min(ofBolt, HOLE * strips);
  const torque = (k: number): number => (k * thread.diameter * preload) / 1000;
  const most = (preload * friction.likely) / friction.from;
  return {
    likely: torque(friction.likely),
    from: torque(friction.from),
    to: torque(friction.to),
    preload,
    area,
    atWorst: most / (grade.proof * area),
    holeAtWorst: strips === null ? null : most / strips,
    limitedByHole: preload < ofBolt,
  };
}
