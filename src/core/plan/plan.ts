// A maintenance plan as data: what is done to a bike, how often, and to which bikes.
// Not here: when an item falls due (schedule/), nor the sentences about it (words/).

import type { EquipmentRule } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import type { Place, ReadingKind } from "../reading/kinds.ts";

/** What is done to the thing. */
export const ACTIONS = ["inspect", "measure", "adjust", "clean", "lubricate", "top up", "bleed", "test", "check tightness", "replace"] as const;
export type WorkAction = (typeof ACTIONS)[number];

/** Where on the bike an item belongs; also the order in which a list is read. */
export const SYSTEMS = [
  "engine",
  "fuel and air",
  "ignition and electrics",
  "cooling",
  "clutch and gearbox",
  "final drive",
  "brakes",
  "wheels and tyres",
  "steering and suspension",
  "controls",
  "frame and stands",
] as const;
export type System = (typeof SYSTEMS)[number];

/** Uses of the bike that shorten an interval. They never lengthen one. */
export const CONDITIONS = ["dust", "wet", "short cold trips", "track", "two-up"] as const;
export type Condition = (typeof CONDITIONS)[number];

/** A point on the odometer as the manual prints it: two columns, not conversions of one another. Whole units. */
export type Columns = { readonly miles: number | null; readonly km: number | null };

/** Legs of a trigger; whichever comes first governs. At least one is not null. Whole units; hours are engine hours. */
export type Interval = Columns & { readonly months: number | null; readonly hours: number | null };

/** How an item comes round again. */
export type Repeat =
  /** The same legs over and over. With anchor "marks" the marks are the multiples of the distance. */
  | { readonly by: "interval"; readonly every: Interval }
  /** Every `nth` regular mark of `base` (running-in not counted); the calendar leg, if any, in `months`. Anchor "marks" only. */
  | { readonly by: "nth mark"; readonly nth: number; readonly base: Columns; readonly months: number | null }
  /** Every `nth` completion of another item since this one was last done. Anchor "last done" only. */
  | { readonly by: "nth time"; readonly nth: number; readonly of: ItemKey; readonly months: number | null }
  /** Marks as listed, then `thenEvery` over and over, counted from zero or from the last mark listed. Anchor "marks" only. */
  | { readonly by: "mark list"; readonly at: readonly Columns[]; readonly thenEvery: Interval | null; readonly thenFrom: "zero" | "last mark" };

/** A reading at one place, or at both of them; null where there is one place only. */
export type MeasuredBy = { readonly kind: ReadingKind; readonly place: Place | "both" | null };

/** One line of a plan. */
export type PlanItem = {
  readonly key: ItemKey;
  /** A member's own words for an item of their own; null for a standard item, whose words are in words/. */
  readonly called: string | null;
  readonly system: System;
  readonly action: WorkAction;
  /** "marks": a service table, falling due at fixed points of the odometer. "last done": wear and fluids, counted from the last job. */
  readonly anchor: "marks" | "last done";
  /** Running-in job, once; null when there is none. It never stands in for a regular mark. */
  readonly first: Interval | null;
  readonly repeat: Repeat;
  /** Does the calendar leg run while the bike is laid up? */
  readonly parked: "counts" | "pauses";
  /** No late window: do-not-ride items, timing belts. */
  readonly noLateWindow: boolean;
  /** Conditions of use that shorten it, and the interval then. */
  readonly shortened: { readonly [C in Condition]?: Interval };
  /** The reading that does it: logging it is doing the item. Null when it takes more than a reading. */
  readonly measuredBy: MeasuredBy | null;
  /** Items that are done by doing this one (replace covers inspect). */
  readonly covers: readonly ItemKey[];
  /** The bikes that have it. */
  readonly fits: EquipmentRule;
  readonly engine: "cold" | "warm" | "any";
  readonly position: "upright" | "side stand" | "weight off" | "any";
  readonly minutes: number | null;
  /** The caution shown with it, named in trade/cautions; null when the work cannot hurt. */
  readonly caution: string | null;
  /** Place in "do these first" when nothing is known of a used bike: 1 first; null for the rest. */
  readonly firstOnUsedBike: number | null;
  readonly source: string;
};

/** A plan as given to bikes: immutable, known by the hash of its content. */
export type PlanBase = { readonly name: string; readonly source: string; readonly items: readonly PlanItem[] };

/** What a plan line calls for once the edits are in: the effective plan of a bike. */
export type Plan = { readonly items: readonly PlanItem[] };

/** One change of a bike's plan by its owner. `item` null in `drop` never occurs: a dropped item stays visible as dropped. */
export type PlanEdit =
  /** `first`, `anchor` and what uses shorten are as they were where they are left out. */
  | {
      readonly change: "interval";
      readonly item: ItemKey;
      readonly repeat: Repeat;
      readonly first?: Interval | null;
      readonly anchor?: PlanItem["anchor"];
      readonly shortened?: PlanItem["shortened"];
    }
  | { readonly change: "add"; readonly item: PlanItem }
  | { readonly change: "drop"; readonly item: ItemKey }
  | { readonly change: "restore"; readonly item: ItemKey }
  /** Another plan was taken, from one hash to another; the other edits lie on it as they did. */
  | { readonly change: "base"; readonly from: string; readonly to: string };
