// A torque from the fastener itself, for where no maker's value can be found: T = K·d·F. An estimate and no more, with the range that friction gives it.

import { stressArea, stripArea, type Thread } from "./thread.ts";

/** Least proof stress of a property class or grade, in MPa; `thicker`: another one over a diameter in mm. */
export type Grade = { readonly proof: number; readonly thicker?: { readonly over: number; readonly proof: number } };
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
  /** The highest torque to be named: the likely one, or less, so that on the slipperiest thread of that state nothing is stretched or stripped. */
  readonly upTo: number;
  /** Share of proof load that `upTo` gives on the slipperiest thread of that state; never 1. */
  readonly atWorst: number;
  /** The same as a share of what strips the hole, never 1; null into steel, where the bolt gives first. */
  readonly holeAtWorst: number | null;
  /** True when the hole's thread, not the bolt, sets the limit. */
  readonly limitedByHole: boolean;
};

/** Share of proof load for a joint that is opened again. Source: Shigley, eq. 8-31. */
const PRELOAD = 0.75;
/** Share of what strips the hole: with it two diameters of thread in cast aluminium carry a bolt of class 8.8, which is common practice. */
const HOLE = 0.8;
/** How near to proof load or to stripping the slipperiest thread may come: the rest is for a torque wrench's own error, 6 % at most where it is in order (see wrench.ts). */
const NEAREST = 0.94;

/** The torque that gives three quarters of proof load, or less where the hole would strip, for the likely friction and for both ends of what is published. */
export function estimate(thread: Thread, grade: Grade, friction: Friction, into: Into): Estimate {
  const area = stressArea(thread);
  const strips = into.material === "steel" ? null : into.shear * stripArea(thread, into.engaged);
  const proofLoad = proofOf(grade, thread.diameter) * area;
  const ofBolt = PRELOAD * proofLoad;
  const preload = strips === null ? ofBolt : Math.min(ofBolt, HOLE * strips);
  const torque = (k: number): number => (k * thread.diameter * preload) / 1000;
  // What the bolt carries on the slipperiest thread when it is turned to the likely torque; held below what the bolt and the hole bear.
  const most = Math.min((preload * friction.likely) / friction.from, NEAREST * proofLoad, NEAREST * (strips ?? Number.POSITIVE_INFINITY));
  return {
    likely: torque(friction.likely),
    from: torque(friction.from),
    to: torque(friction.to),
    upTo: (friction.from * thread.diameter * most) / 1000,
    preload,
    area,
    atWorst: most / proofLoad,
    holeAtWorst: strips === null ? null : most / strips,
    limitedByHole: preload < ofBolt,
  };
}

/** Least proof stress of a grade at a diameter in mm. */
function proofOf({ proof, thicker }: Grade, diameter: number): number {
  return thicker !== undefined && diameter > thicker.over ? thicker.proof : proof;
}
