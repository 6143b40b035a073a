// What pictures of readings show: the odometer's track, what wears against the odometer, cold pressures with the weather taken out.

import { dayNumber } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Equipment } from "../core/equipment.ts";
import type { BikeId } from "../core/ids.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Place, ReadingKind } from "../core/reading/kinds.ts";
import { TYRES } from "../core/reading/places.ts";
import { isQuantity } from "../core/reading/value.ts";
import { setReadOf } from "../core/schedule/tyre-sets.ts";
import { wearDays } from "../core/schedule/wear-leg.ts";
import { SPEC_USES, type SpecUse } from "../core/spec/spec.ts";
import { COMPARED_AT } from "../core/tyre/leak.ts";
import { atTemperature } from "../core/tyre/pressure.ts";
import type { DayRange } from "../core/wear/days.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { WearKind } from "../trade/wear.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { type LeakOn, leaksOn } from "./leaks.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { type OdometerShown, odometerOf } from "./picture-odometer.ts";
import { done, type Result } from "./refusals.ts";
import { specFor } from "./specs.ts";
import { type LimitDrawn, wearSeries } from "./wear.ts";
import { whichBike } from "./which-bike.ts";

export const WEAR_PICTURES = ["tread", "pads", "chain"] as const;
export type WearPicture = (typeof WEAR_PICTURES)[number];
export const READING_PICTURES = ["odometer", ...WEAR_PICTURES, "pressure"] as const;
export type ReadingPicture = (typeof READING_PICTURES)[number];

/** The kinds of reading behind each. */
const WORN = {
  tread: ["tread"],
  // Linings, whichever brake they are in.
  pads: ["pad thickness", "shoe thickness"],
  chain: ["chain length", "chain elongation"],
} as const satisfies Record<WearPicture, readonly ReadingKind[]>;

type OnBike = { readonly bike: BikeId; readonly nickname: string; readonly today: LocalDate };
export type WearPanelShown = {
  readonly part: WearKind;
  readonly place: Place | null;
  /** In millimetres; of a chain, how much longer than new as a share. */
  readonly points: readonly { readonly ridden: Ridden; readonly value: number; readonly typed: string }[];
  /** Null while nothing says how far it may go. */
  readonly limit: LimitDrawn | null;
  /** Where the line begins, and where it reaches the limit; null when the readings do not say. */
  readonly line: { readonly from: Ridden; readonly start: number; readonly likely: Ridden; readonly low: Ridden; readonly high: Ridden | null } | null;
  readonly worn: boolean;
  /** The days on which the line likely reaches the limit; null where no pace is known, or it lies behind. */
  readonly days: DayRange | null;
};
export type WearShown = OnBike & {
  readonly unit: DistanceUnit;
  readonly offset: number;
  /** Null for shares. */
  readonly typedIn: UnitId | null;
  /** Where the bike stands; null while no dial was read. */
  readonly now: Ridden | null;
  /** What tells which of it the bike has at all. */
  readonly fitted: Pick<Equipment, "finalDrive" | "frontBrake" | "rearBrake" | "sidecar">;
  readonly panels: readonly WearPanelShown[];
};
export type PressurePanelShown = {
  readonly place: TyrePlace;
  /** In kPa over the air outside, at one temperature too where one was noted; and how the bike was loaded. */
  readonly points: readonly {
    readonly on: LocalDate;
    readonly read: number;
    readonly typed: string;
    readonly levelled: number | null;
    readonly load: SpecUse;
  }[];
  /** What the bike's specs ask for at the loads it was read at, a row each pressure; a load of which nothing was entered is held against riding solo, which it takes at the least. Empty while none is entered or members differ. */
  readonly wanted: readonly { readonly loads: readonly SpecUse[]; readonly value: number }[];
};
export type PressureShown = OnBike & {
  readonly typedIn: UnitId;
  readonly celsius: number;
  readonly panels: readonly PressurePanelShown[];
  /** Of the tyres that leak. */
  readonly leaks?: readonly LeakOn[];
};
export type ReadingPictured =
  | { readonly pictured: "odometer"; readonly shown: OdometerShown }
  | { readonly pictured: WearPicture; readonly shown: WearShown }
  | { readonly pictured: "pressure"; readonly shown: PressureShown };

type TyrePlace = (typeof TYRES)[number];
/** More points than these run into one another. */
const MOST_POINTS = 120;

/** One picture of one bike's readings. */
export async function pictureReadings(ctx: Ctx, input: { readonly bike?: string; readonly picture: ReadingPicture }): Promise<Result<ReadingPictured>> {
  return ctx.store.read(async (q): Promise<Result<ReadingPictured>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    if (input.picture === "odometer") return done({ pictured: "odometer", shown: odometerOf(g) });
    if (input.picture !== "pressure") return done({ pictured: input.picture, shown: wearShown(g, input.picture) });
    const readings = await q.readings.ofKinds(g.bike.id, ["cold pressure", "ambient temperature"]);
    const leaks = (await leaksOn(q, g)).filter(({ leak }) => leak.is !== "sound");
    return done({ pictured: "pressure", shown: { ...pressureOf(g, readings), ...(leaks.length === 0 ? {} : { leaks }) } });
  });
}

const onBike = (g: Garaged): OnBike => ({ bike: g.bike.id, nickname: g.bike.nickname, today: g.today });
const lastUnit = (readings: readonly ReadingRecord[], otherwise: UnitId): UnitId => {
  const unit = readings.at(-1)?.unit;
  return unit !== undefined && isQuantity(unit) ? unit : otherwise;
};

/** Pure of the bike's facts and its readings of the kind: the same lines that /due and /tyre tell. */
export function wearShown(g: Garaged, picture: WearPicture): WearShown {
  const panels = wearSeries(g, WORN[picture]).map(({ part, place, points, limit, wear, start }): WearPanelShown => {
    const last = points.at(-1);
    const then = (stretch: number): Ridden => ((last?.ridden ?? 0) + stretch) as Ridden;
    // It was ridden on since, and no limit lies behind where it stands while the likely one is ahead.
    const ahead = (low: Ridden, likely: Ridden): Ridden => (g.at.ridden === null || likely <= g.at.ridden ? low : Math.max(low, g.at.ridden)) as Ridden;
    const line =
      wear?.is !== "line" || start === null
        ? null
        : {
            ...{ from: start.ridden, start: start.value, likely: then(wear.left.likely), low: ahead(then(wear.left.low), then(wear.left.likely)) },
            high: wear.left.high === null ? null : then(wear.left.high),
          };
    const days = line === null || g.at.ridden === null || line.likely <= g.at.ridden ? null : wearDays(line, g.at);
    return { part, place, points: points.slice(-MOST_POINTS), limit, line, worn: wear?.is === "worn", days };
  });
  const { finalDrive, frontBrake, rearBrake, sidecar } = g.bike.equipment;
  const unit = g.series.findLast(({ kind }) => WORN[picture].some((each) => each === kind))?.unit ?? "mm";
  return {
    ...{ ...onBike(g), unit: g.unit, offset: g.track.epochs.at(-1)?.offset ?? 0, panels },
    typedIn: picture === "chain" || !isQuantity(unit) ? null : unit,
    now: g.at.ridden,
    fitted: { finalDrive, frontBrake, rearBrake, sidecar },
  };
}

/** The loads of which a tyre's specs name a pressure, in kPa, in the order of printing; of those that it was read at and have none, riding solo stands in. Loads that want the same are one row. */
function wantedAt(g: Garaged, place: TyrePlace, read: readonly SpecUse[]): PressurePanelShown["wanted"] {
  const named = SPEC_USES.filter((use) => read.some((load) => use === (figureOf(g, place, load) === null ? "solo" : load)));
  const rows = new Map<number, SpecUse[]>();
  for (const use of named) {
    const value = figureOf(g, place, use);
    if (value !== null) rows.set(value, [...(rows.get(value) ?? []), use]);
  }
  return [...rows].map(([value, loads]) => ({ loads, value }));
}

function figureOf({ rig, bike }: Garaged, place: TyrePlace, load: SpecUse): number | null {
  const found = specFor(rig.specs, bike, `${place} tyre pressure`, load);
  return found.is === "one" && found.spec.holds.is === "figure" ? (found.spec.holds.nominal ?? found.spec.holds.low ?? found.spec.holds.high) : null;
}

/** Pure of the readings of pressure and of the air's temperature, oldest first. */
export function pressureOf(g: Garaged, all: readonly ReadingRecord[]): PressureShown {
  // Of the tyres that are on now, where the rider swaps sets.
  const { fittings } = g.facts;
  const readings = all.filter((taken) => setReadOf(fittings, taken) === (fittings.at(-1)?.set ?? null));
  const pressures = readings.filter(({ kind }) => kind === "cold pressure");
  const airs = readings.filter(({ kind }) => kind === "ambient temperature");
  // Of the same message, else of the same day.
  const celsius = (of: ReadingRecord): number | null => {
    const near = airs.filter(({ on }) => dayNumber(on) === dayNumber(of.on));
    return (near.find(({ message }) => message !== null && message === of.message) ?? near.at(-1))?.value ?? null;
  };
  const typedIn = lastUnit(pressures, "kPa");
  return {
    ...onBike(g),
    typedIn,
    celsius: COMPARED_AT,
    panels: TYRES.map((place) => {
      const points = pressures
        .filter((each) => each.place === place && each.value !== null)
        .slice(-MOST_POINTS)
        .map((each) => {
          const [value, air] = [each.value ?? 0, celsius(each)];
          return {
            on: each.on,
            read: value,
            typed: each.unit === typedIn ? each.typed : "",
            levelled: air === null ? null : atTemperature(value, air, COMPARED_AT),
            load: each.detail?.load ?? g.rig.use ?? ("solo" as const),
          };
        });
      return { place, points, wanted: wantedAt(g, place, points.length === 0 ? [g.rig.use ?? "solo"] : points.map(({ load }) => load)) };
    }),
  };
}
