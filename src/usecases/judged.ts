// A judged reading, and what is known of the bike that it is judged by.

import type { Bike } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Stand } from "../core/chain/stand.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import type { Judgement } from "../core/judgement/verdict.ts";
import type { AirSaid, ReadingDetail } from "../core/reading/detail.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Taken } from "../core/schedule/measured.ts";
import type { Spec, SpecUse } from "../core/spec/spec.ts";
import type { Chemistry } from "../trade/battery.ts";
import { type JudgedKind, judgedRow } from "../trade/judged.ts";
import type { SpecKey } from "../trade/spec-keys.ts";

/** Whose limit a reading is held against. "bars": no place is known whose law would ask for more; "bars, state law": the place leaves what is asked in use to its states; "bars, no group": the bike is in none whose place could be said. */
export const LIMITS_BY = ["spec", "law", "bars", "bars, state law", "bars, no group", "practice", "mark"] as const;
export type LimitBy = (typeof LIMITS_BY)[number];

/** Of a battery: it may be frozen; it is more than flat, a cell of it gone; or it may be one of 6 V. Of a tyre: it holds next to nothing. */
export type Alarm = "frozen" | "more than flat" | "six volts" | "flat";

/** A reading with what came of judging it. */
export type Judged = Pick<Taken, "id" | "place" | "on" | "value" | "unit" | "typed"> & {
  readonly kind: JudgedKind;
  readonly judgement: Judgement;
  /** Whose limit it is. */
  readonly by: LimitBy;
  /** The spec that holds its limit, and for which load; null where none does. */
  readonly spec: SpecKey | null;
  readonly use: SpecUse | null;
  /** The load that the figure held against it is for, where that is less than it was read with; null mostly. */
  readonly lesser: SpecUse | null;
  /** The plan line that it makes due when it calls for work. */
  readonly item: ItemKey | null;
  /** The bike is not to be ridden on it. */
  readonly doNotRide: boolean;
  readonly caution: string | null;
  /** Pressure: what to add where it stands, in kPa. */
  readonly add: number | null;
  /** Battery: share of its charge. Chain: how much longer than new. */
  readonly share: number | null;
  /** The share is by figures that are no more than typical of such batteries. */
  readonly typical?: boolean;
  /** A chain measured over a pitch too few or too many. */
  readonly miscounted: boolean;
  /** °C at which a low lead-acid battery freezes, or a coolant of that share of antifreeze; null for lithium and for all else. */
  readonly freezes: number | null;
  /** °C of the air that its volts were set right by; null where none was noted with them. */
  readonly air: number | null;
  /** Of charging volts: the engine speed kept from before, where none was said with them. */
  readonly rpmKept: number | null;
  /** °C of the air noted otherwise that day, where it may have frozen at that. */
  readonly airKept: number | null;
  /** What is worse than low charge or low pressure; null mostly. */
  readonly alarm: Alarm | null;
  /** It calls for work if it was taken as it has to be, which nobody said; null where that is known, or would call for none. */
  readonly ifSo: { readonly judgement: Judgement; readonly doNotRide: boolean } | null;
  /** A pressure read in a garage, and where the ride starts; null for all else. */
  readonly indoors: Indoors | null;
  /** Every point measured, where it was more than one; `value` is the least of them. */
  readonly points: readonly number[];
  /** Of a belt: the force at which its figure holds, as typed; null where none was. */
  readonly force: string | null;
  /** Of a chain's slack: how the bike stands where its figure holds; null where it names none. */
  readonly stand: Stand | null;
};

/**
 * In kPa: `onRoad` is what the tyre shows where the ride starts, which is judged; null where that is not told, or the garage is no warmer: it is judged as it was read. `wanted`: the end of the figure that it is to have, null where none is known.
 * `set`: what to set indoors for it; null where garage and road are too far apart, or the garage is no warmer.
 */
export type Indoors = AirSaid & { readonly onRoad: number | null; readonly wanted: number | null; readonly set: number | null };

/** A reading that was just logged, judged. `first`: of its kind on this bike, or the first of them that cannot be judged. */
export type JudgedOn = Judged & { readonly bike: BikeId; readonly first: boolean };

/** Is it so near the end at which it gets worse that its line of the plan is worth an earlier look? */
export const looksSooner = ({ kind, judgement }: Judged): boolean =>
  judgement.is === "near limit" && judgement.side !== null && judgedRow(kind).sooner === judgement.side;

export type AirNoted = { readonly celsius: number; readonly message: string | null };

/** What is known of a bike besides what was read. `place`: whose tread law; `homed`: is it at home in a group, which has that place. `use`: how it is loaded. `ways`: how each kind is measured on it, said once. */
export type Rig = {
  readonly bike: Pick<Bike, "id" | "kind" | "equipment">;
  readonly specs: readonly Spec[];
  readonly place: string | null;
  readonly homed: boolean;
  readonly use: SpecUse | null;
  /** While one lasts the bike is loaded as it says. */
  readonly trips: readonly { readonly from: LocalDate; readonly to: LocalDate; readonly use: SpecUse }[];
  readonly ways: ReadonlyMap<ReadingKind, ReadingDetail>;
  /** °C of the air by the day on which it was noted, in the order in which it was; `message`: what it was said in. */
  readonly air: ReadonlyMap<LocalDate, readonly AirNoted[]>;
  /** The kind that its new battery is said to be, where the bike is entered with another: until that is settled no table holds. */
  readonly otherBattery: Chemistry | null;
  /** Was all of this looked up? A bike of which nothing was measured needs it not. */
  readonly looked: boolean;
};

/** What came of one, with what its kind tells besides. */
export type Found = {
  readonly judgement: Judgement;
  readonly more?: Partial<Pick<Judged, "by" | "add" | "share" | "typical" | "miscounted" | "freezes" | "air" | "airKept" | "alarm" | "indoors" | "ifSo">>;
};
