// A bike and its member, as every part of the house knows them.

import type { Instant, Zone } from "./calendar/dates.ts";
import type { Equipment } from "./equipment.ts";
import type { BikeId, GroupId, MemberId } from "./ids.ts";
import type { Condition, PlanEdit } from "./plan/plan.ts";
import type { DistanceUnit, Stretch } from "./quantity/distance.ts";
import type { UnitId } from "./quantity/units.ts";
import type { Topics, WeekHour } from "./reminding.ts";
import type { ByTheBook, KnownFrom } from "./schedule/facts.ts";

export const BIKE_STATES = ["riding", "laid up", "sold", "retired"] as const;
export type BikeState = (typeof BIKE_STATES)[number];

/** One change of a bike's plan, with who made it, when and why. */
export type SignedEdit = { readonly edit: PlanEdit; readonly by: MemberId; readonly at: Instant; readonly why: string | null };

export type Bike = {
  readonly id: BikeId;
  readonly owner: MemberId;
  /** As typed; unique per owner when case-folded and NFKC-normalised. */
  readonly nickname: string;
  /** The kind picked when it was added, a row of trade/kinds. */
  readonly kind: string;
  readonly state: BikeState;
  readonly equipment: Equipment;
  /** Which printed column of the plan rules; changed only by its owner. */
  readonly column: DistanceUnit;
  readonly conditions: readonly Condition[];
  readonly byTheBook: ByTheBook | null;
  readonly knownFrom: KnownFrom;
  /** What the member reckons to ride in a year; null when not said. */
  readonly perYear: Stretch | null;
  /** Its zone, season and reminder channel come from here; null for a bike shown in no group. */
  readonly homeGroup: GroupId | null;
  readonly planHash: string;
  readonly edits: readonly SignedEdit[];
  /** Counts every write that touches the bike's facts. */
  readonly factsRev: number;
  /** Make and model as its owner typed them; bikes of one model share specs and plans within a group. Null when not said. */
  readonly model: string | null;
  /** What its owner calls it beside the nickname; left out where that was not looked up. */
  readonly byNames?: readonly string[];
};

/** How a member likes things; null where nothing was said, and the group's choice or a default serves. */
export type Member = {
  readonly id: MemberId;
  readonly name: string | null;
  readonly zone: Zone | null;
  readonly language: "en" | null;
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly depth: UnitId | null;
  readonly torque: UnitId | null;
  readonly reminders: ReminderWishes;
};

/** Where and when reminders come. `quiet`: no message between these wall-clock times. */
export type ReminderWishes = {
  readonly by: "direct message" | "channel" | "off";
  /** 1 Monday to 7 Sunday. */
  readonly weekday: number;
  readonly time: string;
  readonly quiet: { readonly from: string; readonly to: string };
  /** What the member switched on or off; nothing when nothing was said. */
  readonly topics?: Topics;
};

/** Quiet from the first minute named until before the second; over midnight when it is the earlier one. Equal ends: never quiet. */
export function isQuiet({ from, to }: ReminderWishes["quiet"], time: string): boolean {
  if (from === to) return false;
  return from < to ? time >= from && time < to : time >= from || time < to;
}

export type Group = {
  readonly id: GroupId;
  readonly zone: Zone;
  readonly language: "en";
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  /** Are plain messages read in the reading channel? */
  readonly reads: boolean;
  /** The platform's id of the channel where plain messages are read and reminders by channel go; null while none was named. */
  readonly readingChannel: string | null;
  /** Whose tread law is told; a row of trade/tread-law. */
  readonly place: string | null;
  /** Which half of the world the seasons are of; null follows the time zone. */
  readonly season: "north" | "south" | null;
  /** The riding season as stored (core/season), or "none"; null while nothing was said. */
  readonly riding: string | null;
  /** What was switched on or off for the whole group; nothing when nothing was said. */
  readonly topics?: Topics;
  /** When the digest of the week is posted, or never; nothing when nothing was said, and it comes at the usual hour. */
  readonly digest?: WeekHour | "off";
};

/** The name under which nicknames are compared: case-folded, NFKC, outer and doubled spaces gone. */
export function nicknameKey(nickname: string): string {
  return nickname.normalize("NFKC").toLowerCase().trim().replace(/\s+/gu, " ");
}
