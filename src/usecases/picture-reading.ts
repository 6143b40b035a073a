// What pictures of readings show: the odometer's track, tread against the odometer, cold pressures with the weather taken out.

import { dayNumber } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId } from "../core/ids.ts";
import { between, type DistanceUnit, type Ridden } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { atTemperature } from "../core/tyre/pressure.ts";
import { riddenOnDay } from "../core/usage/track.ts";
import { wearOf } from "../core/wear/wear.ts";
import type { ReadingRecord } from "../store/readings.ts";
import { WEAR_HABITS } from "../trade/wear.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { type OdometerShown, odometerOf } from "./picture-odometer.ts";
import { done, type Result } from "./refusals.ts";
import { specFor } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

export const READING_PICTURES = ["odometer", "tread", "pressure"] as const;
export type ReadingPicture = (typeof READING_PICTURES)[number];

type OnBike = { readonly bike: BikeId; readonly nickname: string; readonly today: LocalDate };
export type TreadPanel = {
  readonly place: "front" | "rear";
  /** Depth in millimetres. */
  readonly points: readonly { readonly ridden: Ridden; readonly value: number }[];
  readonly limit: { readonly value: number; readonly from: "manual" | "law" | "bar" };
  /** Where the line begins, and where it reaches the limit; null when the readings do not say. */
  readonly line: { readonly from: Ridden; readonly start: number; readonly likely: Ridden; readonly low: Ridden; readonly high: Ridden | null } | null;
  readonly worn: boolean;
};
export type TreadShown = OnBike & { readonly unit: DistanceUnit; readonly offset: number; readonly typedIn: UnitId; readonly panels: readonly TreadPanel[] };
export type PressurePanelShown = {
  readonly place: "front" | "rear";
  /** In kPa over the air outside, at one temperature too where one was noted. */
  readonly points: readonly { readonly on: LocalDate; readonly read: number; readonly levelled: number | null }[];
  /** What the bike's specs ask for, solo; null while none is entered or members differ. */
  readonly wanted: number | null;
};
export type PressureShown = OnBike & { readonly typedIn: UnitId; readonly celsius: number; readonly panels: readonly PressurePanelShown[] };
export type ReadingPictured =
  | { readonly pictured: "odometer"; readonly shown: OdometerShown }
  | { readonly pictured: "tread"; readonly shown: TreadShown }
  | { readonly pictured: "pressure"; readonly shown: PressureShown };

const ENDS = ["front", "rear"] as const;
/** A tread that grew by so much (mm) is another tyre's. */
const ANOTHER_TYRE = 1;
/** The moulded bar. Source: 49 CFR 571.119 S6.4, 1/32 in. */
const BAR = 25.4 / 32;
/** Pressures are compared at this temperature. */
const AT_CELSIUS = 20;
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
    if (input.picture === "tread") return done({ pictured: "tread", shown: treadOf(g, await q.readings.ofKinds(g.bike.id, ["tread"])) });
    const readings = await q.readings.ofKinds(g.bike.id, ["cold pressure", "ambient temperature"]);
    return done({ pictured: "pressure", shown: pressureOf(g, readings) });
  });
}

const onBike = (g: Garaged): OnBike => ({ bike: g.bike.id, nickname: g.bike.nickname, today: g.today });
const lastUnit = (readings: readonly ReadingRecord[], otherwise: UnitId): UnitId => {
  const unit = readings.at(-1)?.unit;
  return unit === undefined || unit === "level" ? otherwise : unit;
};

/** Pure of the bike's facts and its tread readings, oldest first. */
export function treadOf(g: Garaged, all: readonly ReadingRecord[]): TreadShown {
  const readings = all.filter(({ on }) => isOfTheSetOn(g, on));
  const panels = ENDS.map((place): TreadPanel => {
    const limit = limitOf(g, place);
    const placed = readings.flatMap(({ place: where, value, on }) => {
      const ridden = where === place && value !== null ? riddenOnDay(g.track, on) : null;
      return ridden === null || value === null ? [] : [{ ridden: ridden.likely, value }];
    });
    const fitted = placed.findLastIndex((point, n) => n > 0 && point.value - (placed[n - 1]?.value ?? point.value) > ANOTHER_TYRE);
    const points = placed.slice(Math.max(0, fitted)).slice(-MOST_POINTS);
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) return { place, points, limit, line: null, worn: false };
    const wear = wearOf(
      points.map(({ ridden, value }) => ({ ridden: between(first.ridden, ridden), value })),
      limit.value,
      WEAR_HABITS[`${place} tread`],
      false,
    );
    if (wear.is !== "line") return { place, points, limit, line: null, worn: wear.is === "worn" };
    const { left } = wear;
    const then = (stretch: number): Ridden => (last.ridden + stretch) as Ridden;
    return {
      ...{ place, points, limit, worn: false },
      line: { from: first.ridden, start: wear.start, likely: then(left.likely), low: then(left.low), high: left.high === null ? null : then(left.high) },
    };
  });
  return { ...onBike(g), unit: g.unit, offset: g.track.epochs.at(-1)?.offset ?? 0, typedIn: lastUnit(readings, "mm"), panels };
}

/** The limit that the last reading there was judged by, so that picture and verdict never differ. */
function limitOf(g: Garaged, place: "front" | "rear"): TreadPanel["limit"] {
  const judged = g.judged.find((each) => each.kind === "tread" && each.place === place);
  const least = judged === undefined || judged.judgement.is === "cannot tell" ? null : judged.judgement.limit.min;
  if (judged === undefined || least === null) return { value: BAR, from: "bar" };
  return { value: least, from: judged.by === "spec" ? "manual" : judged.by === "law" ? "law" : "bar" };
}

/** Of the tyres that are on now, where the rider swaps sets? */
function isOfTheSetOn({ facts: { fittings } }: Garaged, day: LocalDate): boolean {
  const setOn = fittings.findLast(({ on }) => on <= day) ?? fittings[0];
  return setOn?.set === fittings.at(-1)?.set;
}

/** The pressure that the bike's specs ask for as it is usually loaded, in kPa; null where none is entered, or members differ. */
function wantedOf({ rig, bike }: Garaged, place: "front" | "rear"): number | null {
  const found = specFor(rig.specs, bike, `${place} tyre pressure`, rig.use ?? "solo");
  return found.is === "one" && found.spec.holds.is === "figure" ? (found.spec.holds.nominal ?? found.spec.holds.low ?? found.spec.holds.high) : null;
}

/** Pure of the readings of pressure and of the air's temperature, oldest first. */
export function pressureOf(g: Garaged, all: readonly ReadingRecord[]): PressureShown {
  const readings = all.filter(({ on }) => isOfTheSetOn(g, on));
  const pressures = readings.filter(({ kind }) => kind === "cold pressure");
  const airs = readings.filter(({ kind }) => kind === "ambient temperature");
  // Of the same message, else of the same day.
  const celsius = (of: ReadingRecord): number | null => {
    const near = airs.filter(({ on }) => dayNumber(on) === dayNumber(of.on));
    return (near.find(({ message }) => message !== null && message === of.message) ?? near.at(-1))?.value ?? null;
  };
  return {
    ...onBike(g),
    typedIn: lastUnit(pressures, "kPa"),
    celsius: AT_CELSIUS,
    panels: ENDS.map((place) => ({
      place,
      wanted: wantedOf(g, place),
      points: pressures
        .filter((each) => each.place === place && each.value !== null)
        .slice(-MOST_POINTS)
        .map((each) => {
          const [value, air] = [each.value ?? 0, celsius(each)];
          return { on: each.on, read: value, levelled: air === null ? null : atTemperature(value, air, AT_CELSIUS) };
        }),
    })),
  };
}
