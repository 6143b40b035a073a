// The shape of a catalogue row: a plan item without its key, with what most items share left out.

import type { EquipmentRule } from "../../core/equipment.ts";
import type { Columns, Condition, Interval, MeasuredBy, PlanItem, Repeat, System, WorkAction } from "../../core/plan/plan.ts";
import type { CautionKey } from "../cautions.ts";

export type ItemRow = {
  readonly system: System;
  readonly action: WorkAction;
  readonly anchor: PlanItem["anchor"];
  readonly repeat: Repeat;
  readonly first?: Interval;
  /** Does the calendar leg run while laid up? Fluids, belts, tyres and the battery age in storage; what only wear uses up does not. */
  readonly parked: PlanItem["parked"];
  readonly noLateWindow?: true;
  readonly shortened?: { readonly [C in Condition]?: Interval };
  readonly measuredBy?: MeasuredBy;
  readonly covers?: readonly string[];
  readonly fits?: EquipmentRule;
  readonly engine?: "cold" | "warm";
  readonly position?: "upright" | "side stand" | "weight off";
  readonly minutes: number;
  readonly caution?: CautionKey;
  readonly firstOnUsedBike?: number;
  readonly source: string;
};

/** A leg as manuals print it: miles, kilometres, months. */
export const every = (miles: number | null, km: number | null, months: number | null = null): Interval => ({ miles, km, months, hours: null });
/** The usual way round: the same interval over and over. */
export const repeating = (miles: number | null, km: number | null, months: number | null = null): Repeat => ({
  by: "interval",
  every: every(miles, km, months),
});
/** Every nth regular mark of a service table. */
export const everyNthMark = (nth: number, base: Columns, months: number | null = null): Repeat => ({ by: "nth mark", nth, base, months });

/** The running-in service of most manuals. Common practice: 600 mi / 1,000 km. */
export const RUNNING_IN: Interval = { miles: 600, km: 1000, months: null, hours: null };

/** Why an interval is what it is: printed with the plan. */
export const PRACTICE = "common practice; confirm with the maker's manual";
