// What a picture of the odometer shows of a bike: its track as ridden, its lay-ups, and what is likely ahead.

import { addDays, addMonths, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId } from "../core/ids.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import type { Basis } from "../core/usage/forecast.ts";
import type { Garaged } from "./garage.ts";

/** A lay-up as far as it lies within a picture. */
export type LaidUp = { readonly from: LocalDate; readonly to: LocalDate };

export type OdometerShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly offset: number;
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly points: readonly { readonly on: LocalDate; readonly ridden: Ridden }[];
  /** What is likely from the last reading on, with its 80 % range; empty where nothing says. */
  readonly ahead: readonly { readonly on: LocalDate; readonly low: Ridden; readonly likely: Ridden; readonly high: Ridden }[];
  readonly layUps: readonly LaidUp[];
  readonly basis: Basis;
};

/** So much is shown of the past and of what is ahead. */
const YEARS_BACK = 3;
const MONTHS_AHEAD = 6;

/** Works out what is drawn; pure of the bike's facts. */
export function odometerOf(g: Garaged): OdometerShown {
  const { forecast } = g.at;
  const foreseen = g.track.points.length > 0 && forecast.riddenOn(addMonths(g.today, MONTHS_AHEAD)) !== null;
  // Nothing is drawn ahead where nothing is foreseen.
  const until = foreseen ? addMonths(g.today, MONTHS_AHEAD) : g.today;
  const since = addMonths(g.today, -12 * YEARS_BACK);
  const { points } = g.track;
  // The last point before what is shown gives the line its beginning.
  const first = Math.max(0, points.findIndex((point) => point.on >= since) - 1);
  const shown = points.slice(points.some((point) => point.on >= since) ? first : -1);
  const from = shown[0]?.on ?? g.today;
  const last = shown.at(-1)?.on ?? g.today;
  return {
    bike: g.bike.id,
    nickname: g.bike.nickname,
    unit: g.unit,
    offset: g.track.epochs.at(-1)?.offset ?? 0,
    today: g.today,
    until,
    points: shown.map(({ on, ridden }) => ({ on, ridden })),
    ahead: daysFrom(last, until).flatMap((on) => {
      const then = foreseen ? forecast.riddenOn(on) : null;
      return then === null ? [] : [{ on, ...then }];
    }),
    layUps: layUpsWithin(g, from, until),
    basis: forecast.basis,
  };
}

/** Days across a picture, so many that a line through them is smooth; both ends included. */
export function daysFrom(from: LocalDate, until: LocalDate): LocalDate[] {
  const step = Math.max(1, Math.ceil(daysBetween(from, until) / 30));
  const days: LocalDate[] = [];
  for (let day = from; day < until; day = addDays(day, step)) days.push(day);
  return [...days, until];
}

/** Lay-ups between two days; one that lasts is drawn to the end, since nothing says when it does. */
export const layUpsWithin = (g: Pick<Garaged, "layUps">, from: LocalDate, until: LocalDate): readonly LaidUp[] =>
  g.layUps.flatMap((layUp) => {
    const to = layUp.to ?? until;
    return to <= from || layUp.from >= until ? [] : [{ from: layUp.from < from ? from : layUp.from, to: to > until ? until : to }];
  });
