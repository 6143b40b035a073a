// A checklist as data: what is looked at, in which order, on which bikes.
// Not here: the words (words/), which points a bike gets today (tailor.ts), what a run of it came to (result.ts).

import type { EquipmentRule } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { Place, ReadingKind } from "../reading/kinds.ts";
import type { Outcome } from "../schedule/facts.ts";

export const CHECKLISTS = ["out of storage", "lay-up", "pre-ride", "pre-trip", "buying used", "after a fall"] as const;
export type ChecklistName = (typeof CHECKLISTS)[number];

/** What must be looked at before anything good is said of a bike. */
export const VITAL = ["brakes", "tyres", "steering"] as const;
export type Vital = (typeof VITAL)[number];

/** How bad what was found is. */
export const FAULT_GRADES = ["do not ride", "watch"] as const;
export type FaultGrade = (typeof FAULT_GRADES)[number];

/** One value to read at a point; `place` null for a kind with one place only. `optional`: looking is enough. */
export type Measure = { readonly kind: ReadingKind; readonly place: Place | null; readonly optional?: true };

/** One thing to look at. Its key is stable and never used for another. */
export type Point = {
  /** The bikes that have it. */
  readonly fits: EquipmentRule;
  /** What the engine must be for it. */
  readonly engine: "cold" | "warm" | "any";
  /** "runs": the engine runs for it, so that nothing after it finds the engine cold; "cools": it is left until it is cold. */
  readonly heat: "runs" | "cools" | null;
  readonly position: PlanItem["position"];
  readonly vital: Vital | null;
  /** Values read here; each is logged as a reading. */
  readonly measures: readonly Measure[];
  /** What a fail means unless the member says otherwise. */
  readonly onFail: FaultGrade;
  /** Named in trade/cautions. */
  readonly caution: string | null;
  /** Plan items which a good answer does, and with which outcome. */
  readonly records: readonly { readonly item: ItemKey; readonly outcome: Outcome }[];
  /** Only when the bike has stood so many days. */
  readonly stoodDays: number | null;
  /** Left out where it is known that it never froze. */
  readonly frost: boolean;
  /** Only on a bike whose plan has this item: what the equipment does not say. */
  readonly planHas: ItemKey | null;
  /** Asked here because another list's point was done: rags put in at lay-up are taken out in spring. */
  readonly undoes: string | null;
  readonly source: string;
};

export type Section = { readonly key: string; readonly points: readonly string[] };
export type Checklist = { readonly name: ChecklistName; readonly sections: readonly Section[]; readonly source: string };
