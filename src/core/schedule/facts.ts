// What the schedule knows and what it answers: types only. The rules are in the files beside this one.

import type { Instant, LocalDate, VagueDate } from "../calendar/dates.ts";
import type { Equipment } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import type { VerdictWord } from "../judgement/verdict.ts";
import type { Condition, Plan } from "../plan/plan.ts";
import type { DistanceUnit, Ridden, Stretch } from "../quantity/distance.ts";
import type { Place, ReadingKind, ReadingUnit } from "../reading/kinds.ts";
import type { TyreMade } from "../tyre/age.ts";
import type { Forecast } from "../usage/forecast.ts";
import type { Track } from "../usage/track.ts";

/** What came of working at an item. "Inspected" alone: it was looked at, and no limit is known for what was found. "Could not do" and "found wrong" leave it undone: a look that found a fault says nothing of how long it will be well. "Topped up" and "adjusted" leave a replacement undone: what is in there is as old as before. */
export const OUTCOMES = ["inspected, within limits", "inspected", "found wrong", "adjusted", "replaced", "topped up", "done", "could not do"] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** How we know that work was done. */
export const HOW_WE_KNOW = ["did it", "receipt", "service book", "seller's word", "guess"] as const;
export type HowWeKnow = (typeof HOW_WE_KNOW)[number];

/** One item done once. `ridden` is null when the odometer was not noted: the low end of the interpolated range is then used, and the reason says "about". */
export type Job = {
  readonly id: string;
  readonly item: ItemKey;
  readonly on: VagueDate;
  readonly ridden: Ridden | null;
  readonly hours: number | null;
  readonly outcome: Outcome;
  readonly how: HowWeKnow;
  /** The one end that it was done at, of what is one line for both. */
  readonly end?: "front" | "rear";
  /** When it was put on record, where that tells what was read before it of the same day. */
  readonly at?: Instant;
};

/** A judgement of a measured value that makes its item due by itself. `measured`: what was read, for the reason; `limit` is the end that tells, both in the canonical unit of the kind. */
export type Verdict = {
  readonly item: ItemKey;
  readonly on: LocalDate;
  readonly is: VerdictWord;
  readonly reading: string;
  readonly measured?: {
    readonly kind: ReadingKind;
    readonly place: Place | null;
    readonly value: number;
    readonly unit: ReadingUnit;
    /** As it was typed. */
    readonly typed: string;
    readonly limit: number | null;
    readonly side: "low" | "high" | null;
    /** The limit is of the bike's own manual, and no other's. */
    readonly bySpec?: boolean;
  };
  /** Of what is near its limit: how soon it is looked at again. */
  readonly again?: SoonAgain;
  /** Seen, not measured: what was found, as typed. */
  readonly seen?: string;
  /** A tyre judged by its age: the code it was fitted with, and how many months old it is. */
  readonly made?: { readonly week: number; readonly year: number | null; readonly months: number };
};

/** How soon after it was read: so far or so many days, whichever comes first; or after half of what the plan asks. */
export type SoonAgain = { readonly far: Readonly<Record<DistanceUnit, number>> | null; readonly days: number | null } | "twice as often";

/** A one-off look after work, due a distance after it. `because` names the rule that asks for it; `after`: where the work was done. */
export type Recheck = { readonly id: string; readonly item: ItemKey; readonly dueAt: Ridden; readonly because: string; readonly after: Ridden };

/** A part whose wear line tells how far it goes: `since` is its first reading, by which one life of it is known, `on` the day of the last. `reaches`: the odometer at its limit, likely and the 80 % range; `high` null when it may have no end. */
export type Wearing = {
  readonly item: ItemKey;
  readonly since: string;
  readonly on: LocalDate;
  readonly reaches: { readonly likely: Ridden; readonly low: Ridden; readonly high: Ridden | null };
};

/** Time out of use; `to` null while it lasts. */
export type LayUp = { readonly from: LocalDate; readonly to: LocalDate | null };

/** From when on the bike's history is known. `wholeSinceNew`: everything since zero is on record. */
export type KnownFrom = { readonly date: LocalDate; readonly ridden: Ridden; readonly wholeSinceNew: boolean };

/** Marks never move, early work outside the window does not count, late work counts for all marks passed. `firstRegistered`: yearly legs run from it when set. */
export type ByTheBook = { readonly firstRegistered: LocalDate | null };

/** A set of tyres put on; `ridden` null for the set that was on when the bike's story began. `at`: when that was put on record and under which id, which tells what was read of that day before the swap from what was read after. */
export type Fitting = {
  readonly set: string;
  readonly on: LocalDate;
  readonly ridden: Ridden | null;
  readonly at?: Instant;
  readonly id?: string;
};

/** A position of which a piece was taken off and put back on: the pieces in the order in which they went on, and the items that go with each. */
export type Refitted = { readonly part: string; readonly items: ReadonlySet<ItemKey>; readonly fittings: readonly Fitting[] };

/** All that the status of a bike depends on, besides the moment and the forecast. */
export type Facts = {
  readonly plan: Plan;
  readonly equipment: Equipment;
  /** Which printed column rules the distance legs of this bike. */
  readonly column: DistanceUnit;
  readonly conditions: readonly Condition[];
  readonly jobs: readonly Job[];
  readonly odometer: Track;
  /** Engine-hour readings, oldest first; empty when the bike has no meter. */
  readonly hours: readonly { readonly on: LocalDate; readonly hours: number }[];
  readonly verdicts: readonly Verdict[];
  readonly wearing: readonly Wearing[];
  readonly rechecks: readonly Recheck[];
  readonly layUps: readonly LayUp[];
  readonly knownFrom: KnownFrom;
  readonly byTheBook: ByTheBook | null;
  /** Sets of tyres in the order in which they were put on; empty while the rider names none. */
  readonly fittings: readonly Fitting[];
  /** Items that go with the tyres when these are taken off. */
  readonly ofTyres: ReadonlySet<ItemKey>;
  /** Parts other than tyres of which a piece was put back on. */
  readonly refitted: readonly Refitted[];
  /** Of parts whose making is known, as that of tyres by their date code: they age from then, whenever they were fitted. */
  readonly made: ReadonlyMap<ItemKey, TyreMade>;
};

/** The moment at which status is asked. `ridden` is the last reading, null when there is none. */
export type Moment = { readonly today: LocalDate; readonly ridden: Ridden | null; readonly hours: number | null; readonly forecast: Forecast };

export const STATUSES = ["no record", "good", "soon", "due", "overdue"] as const;
export type Status = (typeof STATUSES)[number];
export type LegState = "ahead" | "soon" | "due" | "overdue" | "cannot tell" | "no record";

/** What a leg counts from. */
export type Anchor =
  | {
      readonly from: "job";
      readonly job: string;
      readonly on: VagueDate;
      readonly ridden: Ridden | null;
      readonly about: boolean /** the mark that an early or late job counts for */;
      readonly countsFor: Ridden | null;
      /** Ridden since on another set of tyres or another piece, which does not count. */
      readonly off: Stretch;
    }
  | { readonly from: "new" }
  | { readonly from: "known from" }
  | { readonly from: "first registration"; readonly on: LocalDate }
  | ({ readonly from: "made" } & TyreMade);

/** When what was read near its limit is looked at again: at an odometer, on a day, or whichever of both comes first. By its wear line, by common practice, or by half of what the plan asks. `come`: that time has come. */
export type LookAgain = { readonly at: Ridden | null; readonly on: LocalDate | null; readonly by: "wear" | "practice" | "plan"; readonly come: boolean };

/** One leg of a trigger, worked out. */
export type Leg =
  | {
      readonly by: "distance";
      readonly state: LegState;
      readonly anchor: Anchor;
      readonly dueAt: Ridden;
      /** Distance still to go; negative when past; null without a reading. */
      readonly toGo: Stretch | null;
      readonly interval: Stretch;
      readonly window: Stretch;
      /** The likely date and its 80 % range, by the forecast; null when it cannot tell. */
      readonly likely: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
      /** True when only the other printed column was there and was converted. */
      readonly converted: boolean;
    }
  | {
      readonly by: "date";
      readonly state: LegState;
      readonly anchor: Anchor;
      readonly dueOn: LocalDate /** how coarsely it may be printed */;
      readonly grain: "day" | "month" | "season" | "year";
      readonly daysToGo: number;
      readonly months: number /** days of the leg, before any pause */;
      readonly legDays: number;
      readonly windowDays: number;
      readonly pausedDays: number;
    }
  | { readonly by: "hours"; readonly state: LegState; readonly anchor: Anchor; readonly dueAt: number; readonly toGo: number | null; readonly interval: number }
  | { readonly by: "times"; readonly state: LegState; readonly anchor: Anchor; readonly of: ItemKey; readonly done: number; readonly nth: number }
  /** `again`: of what was read near its limit, when to look again; null for all else. */
  | { readonly by: "verdict"; readonly state: LegState; readonly verdict: Verdict; readonly again: LookAgain | null }
  /** By the wear line: `dueAt` is where it likely reaches the limit, `likely` the day with its 80 % range, by how far it goes and how fast the road goes by. */
  | {
      readonly by: "wear";
      readonly state: LegState;
      readonly wearing: Wearing;
      readonly dueAt: Ridden;
      readonly toGo: Stretch | null;
      readonly likely: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
    }
  | { readonly by: "recheck"; readonly state: LegState; readonly recheck: Recheck; readonly toGo: Stretch | null };

/** Why an item stands as it does, as data; words/ makes it one sentence. */
export type Reason =
  | {
      readonly why: "leg" /** index into legs of the one that governs */;
      readonly leg: number;
      readonly shortenedBy: Condition | null;
      readonly runningIn: boolean;
      readonly byTheBook: boolean /** forecast only: the odometer is asked for */;
      readonly askOdometer: boolean;
    }
  | {
      readonly why: "never recorded" /** the mark or date passed before the history began */;
      readonly passedAt: Ridden | null;
      /** The next point and the next day at which it will fall due by itself, whichever comes first. */
      readonly nextMark: Ridden | null;
      readonly nextOn: LocalDate | null;
    }
  | { readonly why: "no reading"; readonly needs: "odometer" | "hours" }
  /** Last done at an odometer nobody knows; the leg holds the latest point at which it can fall due. */
  | { readonly why: "unplaced"; readonly leg: number }
  /** Last done on a day nobody knows; the leg holds the latest day on which it can fall due. */
  | { readonly why: "undated"; readonly leg: number };

/** The state of one plan item. */
export type Due = {
  readonly item: ItemKey;
  readonly status: Status;
  /** Short-interval item (under 1,000 mi / 1,600 km or two months): one line in a list, never a reminder. */
  readonly habit: boolean;
  /** Index into `legs` of the leg that governs; null when none can. */
  readonly governs: number | null;
  readonly legs: readonly Leg[];
  /** The odometer point of the service it belongs to, if any. */
  readonly mark: Ridden | null;
  readonly because: Reason;
};
