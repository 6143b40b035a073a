// What to expect of the odometer: the mixture of the seasons that the track allows (season.ts), with chance in the rides, doubt in the pace and a yearly trip, as a distribution for every day ahead.
// Not here: what makes a reading believable (judge-reading.ts), nor what falls due (schedule/).

import { addDays, dayNumber, daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import { type Ridden, type Stretch, stretchOf } from "../quantity/distance.ts";
import { gammaBelow, normalBelow } from "./chances.ts";
import { type Habit, learnHabit, worth } from "./season.ts";
import { type Trip, YEAR } from "./stints.ts";
import type { Track } from "./track.ts";

/** How a forecast knows. */
export type Basis =
  | { readonly from: "readings"; readonly readings: number; readonly days: number }
  | { readonly from: "yearly figure"; readonly perYear: Stretch }
  | { readonly from: "group median"; readonly perYear: Stretch }
  | { readonly from: "nothing" };

/** What to expect of the odometer: pure functions of the track; null answers where it cannot tell. */
export type Forecast = {
  readonly basis: Basis;
  /** Likely pace now, per week of 7 days; null when it cannot tell. */
  readonly perWeek: Stretch | null;
  /** The likely date of a future odometer with its 80 % range; `to` null when it may not come within ten years. */
  readonly dateOf: (ridden: Ridden) => { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
  /** The likely odometer on a future date with its 80 % range. */
  readonly riddenOn: (date: LocalDate) => { readonly likely: Ridden; readonly low: Ridden; readonly high: Ridden } | null;
};

/** Known times of other use: a lay-up rides nothing, a planned trip rides its own distance. */
export type Known = {
  readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate | null }[];
  readonly trips: readonly { readonly from: LocalDate; readonly to: LocalDate; readonly distance: Stretch }[];
};

const HORIZON_DAYS = 3653;
/** What is ridden in a year on average, where nobody has said. Source: NHTSA, DOT HS 813 288 (2022), from odometers: about 2,000 miles. */
const USUAL_YEAR = stretchOf(2000, "mi");
/** Readings over fewer days than these say nothing of a pace. */
export const FEWEST_DAYS = 14;
// Tuned by npm run backtest:
/** Habits change: doubt in the pace grows by a quarter until so many days ahead. */
const DRIFT_GROWS = 120;
/** A yearly trip begins about so many days earlier or later than last time, and is by such a share longer or shorter (standard deviations). */
const TRIP_DAYS = 50;
const TRIP_SPREAD = 0.6;
/** The shares of chance below the range's ends. They promise 10 and 90 %; the model is somewhat too sure of itself, more at the upper end. */
const LOW = 0.045;
const HIGH = 0.95;

/**
 * @param own the member's own yearly figure: it counts most while readings say little
 * @param groupMedian what bikes of the group ride in a year, used when the member has said nothing
 * @param today the day of asking; the forecast starts at the last reading, and nothing ridden since is assumed beyond the pace
 */
export function forecast(
  track: Track,
  known: Known,
  own: { readonly perYear: Stretch | null },
  groupMedian: { readonly perYear: Stretch } | null,
  today: LocalDate,
): Forecast {
  const first = track.points[0];
  const last = track.points.at(-1);
  if (first === undefined || last === undefined) return NOTHING;
  const days = daysBetween(first.on, last.on);
  const shown = days >= FEWEST_DAYS;
  const stated = own.perYear ?? groupMedian?.perYear ?? null;
  if (!shown && stated === null) return NOTHING;
  const perDay = (stated ?? USUAL_YEAR) / YEAR;
  const laidUp = known.layUps.length === 0 ? null : (day: number) => isLaidUp(day, known);
  const habit = learnHabit(track, laidUp, Math.max(perDay, 1), stated !== null);
  const basis: Basis = shown
    ? { from: "readings", readings: track.points.length, days }
    : own.perYear !== null
      ? { from: "yearly figure", perYear: own.perYear }
      : { from: "group median", perYear: groupMedian?.perYear ?? (0 as Stretch) };
  return look(last, habit, known, basis, today);
}

/** A first step when a range is looked for. */
const A_LITTLE = stretchOf(30, "mi");

const NOTHING: Forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => null };

/** Days ahead for which the distribution is worked out; between them it is a straight line. */
const KNOTS: readonly number[] = [
  ...[0, 1, 3, 6, 10, 14, 18, 24, 30, 37, 45, 52, 60, 70, 80, 90, 105, 120, 135, 150, 165, 180, 200, 220, 240, 270, 300, 330, 365],
  ...Array.from({ length: 36 }, (_, n) => 457 + Math.floor((n * (HORIZON_DAYS - 457)) / 35)),
];

type Likely = { readonly low: number; readonly likely: number; readonly high: number };

function look(last: { readonly on: LocalDate; readonly ridden: Ridden }, habit: Habit, known: Known, basis: Basis, today: LocalDate): Forecast {
  const start = dayNumber(last.on);
  const ahead = aheadOf(start, habit, known);
  const knots: Likely[] = [{ low: 0, likely: 0, high: 0 }];
  const knot = (n: number): Likely => {
    for (let next = knots.length; next <= n; next++) {
      const days = KNOTS[next] ?? HORIZON_DAYS;
      const below = ahead(days);
      const before = knots[next - 1] as Likely;
      // What may have been ridden never falls with time, though doubt grows.
      const low = quantile(below, LOW, before.low);
      const likely = quantile(below, 0.5, Math.max(low, before.likely));
      knots.push({ low, likely, high: quantile(below, HIGH, Math.max(likely, before.high)) });
    }
    return knots[n] as Likely;
  };
  const at = (days: number): Likely => {
    const after = Math.max(
      1,
      KNOTS.findIndex((each) => each >= days),
    );
    const [a, b] = [knot(after - 1), knot(after)];
    const share = (days - (KNOTS[after - 1] ?? 0)) / ((KNOTS[after] ?? 1) - (KNOTS[after - 1] ?? 0));
    return { low: a.low + share * (b.low - a.low), likely: a.likely + share * (b.likely - a.likely), high: a.high + share * (b.high - a.high) };
  };
  const reach = (distance: number, which: keyof Likely): number | null => {
    if (distance <= 0) return 0;
    while ((knots.at(-1)?.[which] ?? 0) < distance) {
      if (knots.length === KNOTS.length) return null;
      knot(knots.length);
    }
    let [before, n] = [0, knots.length - 1];
    while (n - before > 1) {
      const middle = (before + n) >> 1;
      if (knot(middle)[which] >= distance) n = middle;
      else before = middle;
    }
    const [a, b] = [knot(n - 1)[which], knot(n)[which]];
    const [from, to] = [KNOTS[n - 1] ?? 0, KNOTS[n] ?? 0];
    return Math.max(1, Math.ceil(from + ((to - from) * (distance - a)) / Math.max(1, b - a)));
  };
  const day = dayNumber(today);
  const perDay = habit.seasons.reduce((sum, season) => sum + season.weight * season.pace * worth(day, day + 1, season), 0);
  return {
    basis,
    perWeek: (isLaidUp(day, known) ? 0 : Math.round(perDay * 7)) as Stretch,
    riddenOn(date) {
      const days = daysBetween(last.on, date);
      if (days < 0) return null;
      const to = (distance: number): Ridden => (last.ridden + Math.round(distance)) as Ridden;
      const { low, likely, high } = at(Math.min(days, HORIZON_DAYS));
      return { likely: to(likely), low: to(low), high: to(high) };
    },
    dateOf(ridden) {
      const distance = ridden - last.ridden;
      const on = reach(distance, "likely");
      const from = reach(distance, "high");
      const to = reach(distance, "low");
      if (on === null || from === null) return null;
      return { on: addDays(last.on, on), from: addDays(last.on, from), to: to === null ? null : addDays(last.on, to) };
    },
  };
}

/** The distribution of what is ridden within so many days after the last reading: the share of it below a distance. Asked for growing numbers of days. */
function aheadOf(start: number, habit: Habit, known: Known): (days: number) => (distance: number) => number {
  const exposed = habit.seasons.map(() => 0);
  let [reached, planned] = [0, 0];
  return (days) => {
    if (known.layUps.length === 0 && known.trips.length === 0)
      habit.seasons.forEach((season, n) => {
        exposed[n] = worth(start, start + days, season);
      });
    else
      for (; reached < days; reached++) {
        const day = start + reached;
        const onTrip = tripOn(day, known);
        planned += onTrip;
        if (onTrip === 0 && !isLaidUp(day, known))
          habit.seasons.forEach((season, n) => {
            exposed[n] = (exposed[n] ?? 0) + worth(day, day + 1, season);
          });
      }
    const drift = habit.drift ** 2 * (0.77 + 0.23 * Math.min(1, days / DRIFT_GROWS));
    const trip = habit.trip === null ? 0 : tripWithin(habit.trip, start, days, known);
    const length = habit.trip?.distance ?? 0;
    const parts = habit.seasons.map((season, n) => {
      const mean = season.pace * (exposed[n] ?? 0);
      return { weight: season.weight, mean, variance: habit.piece * mean + (season.unsure * (exposed[n] ?? 0)) ** 2 + drift * mean * mean };
    });
    return (distance) => {
      const beyond = distance - planned;
      let below = 0;
      for (const { weight, mean, variance } of parts) {
        const without = gammaBelow(beyond, mean, variance);
        below += weight * (trip < 0.01 ? without : (1 - trip) * without + trip * gammaBelow(beyond, mean + length, variance + (TRIP_SPREAD * length) ** 2));
      }
      return below;
    };
  };
}

/** The smallest distance, at least `least`, below which lies such a share. */
function quantile(below: (distance: number) => number, share: number, least: number): number {
  if (below(least) >= share) return least;
  let [low, high] = [least, Math.max(least * 1.3, least + A_LITTLE)];
  while (below(high) < share) [low, high] = [high, high * 2];
  for (let step = 0; step < 9; step++) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** How likely the yearly trip comes within so many days, when it has not come yet. One that is planned stands for it. */
function tripWithin(trip: Trip, start: number, days: number, known: Known): number {
  let chance = 0;
  for (let year = Math.floor((start - trip.day) / YEAR) - 1; trip.day + year * YEAR < start + days + YEAR / 2; year++) {
    const about = trip.day + year * YEAR;
    const near = (day: number): boolean => Math.abs(day - about) < 120;
    if (trip.seen.some(near) || known.trips.some(({ from }) => near(dayNumber(from)))) continue;
    const past = normalBelow((start - about) / TRIP_DAYS);
    chance += (trip.rate * Math.max(0, normalBelow((start + days - about) / TRIP_DAYS) - past)) / Math.max(0.02, 1 - trip.rate * past);
  }
  return Math.min(1, chance);
}

const tripOn = (day: number, known: Known): number =>
  known.trips.reduce((sum, { from, to, distance }) => sum + (day >= dayNumber(from) && day <= dayNumber(to) ? distance / (daysBetween(from, to) + 1) : 0), 0);

const isLaidUp = (day: number, known: Known): boolean =>
  known.layUps.length > 0 && known.layUps.some((layUp) => day >= dayNumber(layUp.from) && (layUp.to === null || day < dayNumber(layUp.to)));
