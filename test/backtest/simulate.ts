// Invented riders: what each rides day by day, and what of it is read. Shares nothing with the forecaster.
// The pooled yearly distance is anchored to what was measured from odometers: about 2,000 miles a year on average, strongly skewed, many bikes hardly ridden (NHTSA, DOT HS 813 288, 2022).

import { type Chance, chance } from "./random.ts";

export const POPULATIONS = ["steady commuter", "northern season", "southern season", "tourer", "new owner", "two bikes"] as const;
export type Population = (typeof POPULATIONS)[number];

/** Days of readings: three years. */
export const READ_DAYS = 1096;
/** Days simulated after a day of asking, and so in all. */
export const FUTURE = 364;
const ALL_DAYS = READ_DAYS + FUTURE;
/** 1 January of a year that begins the three. */
const YEAR = 365.25;

/** What makes a rider; the oracle knows all of it. */
export type Rider = {
  readonly population: Population;
  readonly seed: number;
  /** Rides a day in season, and the median and spread of one, in miles. */
  readonly rides: number;
  readonly median: number;
  readonly sigma: number;
  /** Share of the usual riding on a day of the year (0 to 1). */
  readonly season: readonly number[];
  /** Days on which a change of habit multiplies the rides. */
  readonly changes: readonly { readonly from: number; readonly by: number }[];
  /** Trips: first day, days, miles a day. */
  readonly trips: { readonly aYear: number; readonly from: number; readonly to: number };
  /** Day on which the bike came to the rider. */
  readonly begins: number;
  readonly gap: number;
};

/** Makes the pooled mean about 2,000 mi a year. */
const SCALE = 0.62;

export function riderOf(population: Population, seed: number): Rider {
  const c = chance(seed * 2_654_435_761 + POPULATIONS.indexOf(population) * 97);
  const keen = (c.u() < 0.25 ? 0.12 : 1) * c.around(1, 0.6) * SCALE;
  const change = c.u() < 0.3 ? [{ from: Math.floor(c.between(300, READ_DAYS)), by: c.u() < 0.5 ? 0.4 : 1.8 }] : [];
  const usual = { population, seed, changes: change, trips: { aYear: 0, from: 0, to: 0 }, begins: 0, gap: c.around(12, 0.5) };
  switch (population) {
    case "steady commuter":
      return { ...usual, rides: 0.6 * Math.min(1.5, keen), median: c.around(15, 0.3), sigma: 0.35, season: seasonOf(c, 0, 365, 0.8) };
    case "northern season":
      return { ...usual, rides: 0.22 * keen, median: c.around(55, 0.3), sigma: 0.6, season: seasonOf(c, c.between(75, 120), c.between(270, 320), 0) };
    case "southern season":
      return { ...usual, rides: 0.22 * keen, median: c.around(55, 0.3), sigma: 0.6, season: seasonOf(c, c.between(255, 300), c.between(85, 135), 0) };
    case "tourer":
      return {
        ...usual,
        ...{ rides: 0.12 * keen, median: c.around(60, 0.3), sigma: 0.5, season: seasonOf(c, c.between(75, 130), c.between(265, 310), 0.05) },
        trips: { aYear: 1, from: 150, to: 250 },
      };
    case "new owner":
      return {
        ...usual,
        rides: 0.25 * keen,
        median: c.around(35, 0.4),
        sigma: 0.6,
        season: seasonOf(c, c.between(40, 100), c.between(290, 340), c.between(0, 0.5)),
        begins: Math.floor(c.between(30, 900)),
        gap: 20,
      };
    case "two bikes":
      return {
        ...usual,
        rides: 0.18 * keen,
        median: c.around(50, 0.3),
        sigma: 0.6,
        season: seasonOf(c, c.between(60, 110), c.between(280, 330), c.between(0, 0.3)),
      };
  }
}

/** Riding by the day of the year: full in season, `off` of it out of season. */
function seasonOf(_c: Chance, from: number, to: number, off: number): number[] {
  return Array.from({ length: 366 }, (_, day) => ((from < to ? day >= from && day < to : day >= from || day < to) ? 1 : off));
}

/** What a rider truly rode, and how things stood on each day: which share of the riding this bike had, and when each year's trip fell. */
export type Truth = { readonly ridden: Float64Array; readonly shares: Float64Array; readonly trips: readonly Trip[] };

/** A rider's three years and what came after, by miles ridden on each day. */
export function truthOf(rider: Rider, c: Chance): Truth {
  const trips = Array.from({ length: Math.ceil(ALL_DAYS / YEAR) }, (_, year) => tripOf(rider, year, -1, c)).filter((trip) => trip !== null);
  const shares = new Float64Array(ALL_DAYS);
  const ridden = new Float64Array(ALL_DAYS);
  ridden.set(days(rider, c, rider.begins, ALL_DAYS, trips, 0.2 + 0.6 * ((rider.seed % 97) / 97), shares), rider.begins);
  return { ridden, shares, trips };
}

/**
 * One way in which the days after `day` may go, by miles ridden on each: drawn from what the rider is and how things stand, never from what came.
 * A trip that has begun or is over stands; one that has not is drawn among the days left for it.
 */
export function futureOf(rider: Rider, truth: Truth, day: number, c: Chance): Float64Array {
  const to = day + 1 + FUTURE;
  const trips = truth.trips.filter((trip) => trip.from <= day);
  for (let year = trips.length; rider.trips.aYear > 0 && year * YEAR < to; year++) {
    const trip = tripOf(rider, year, day, c);
    if (trip !== null) trips.push(trip);
  }
  return days(rider, c, day + 1, to, trips, truth.shares[day] ?? 0.5, null);
}

/** Miles on the days from `from` to before `to`. */
function days(rider: Rider, c: Chance, from: number, to: number, trips: readonly Trip[], share: number, shares: Float64Array | null): Float64Array {
  const ridden = new Float64Array(to - from);
  let bikeShare = share;
  for (let day = from; day < to; day++) {
    if (rider.population === "two bikes" && day % 30 === 0) bikeShare = Math.min(0.95, Math.max(0.05, bikeShare + 0.12 * c.normal()));
    if (shares !== null) shares[day] = bikeShare;
    const trip = trips.length === 0 ? undefined : trips.find((each) => day >= each.from && day < each.from + each.days);
    if (trip !== undefined) {
      ridden[day - from] = c.around(trip.miles, 0.3);
      continue;
    }
    let mean = rider.rides * (rider.season[Math.floor(day % YEAR)] ?? 0) * (rider.population === "two bikes" ? 2 * bikeShare : 1);
    if (mean <= 0) continue;
    for (const change of rider.changes) if (day >= change.from) mean *= change.by;
    let miles = 0;
    for (let n = c.poisson(mean); n > 0; n--) miles += c.around(rider.median, rider.sigma);
    ridden[day - from] = miles;
  }
  return ridden;
}

type Trip = { readonly from: number; readonly days: number; readonly miles: number };
/** A year's trip, begun after a day; null for who makes none. */
function tripOf({ trips }: Rider, year: number, after: number, c: Chance): Trip | null {
  if (trips.aYear === 0) return null;
  const first = Math.max(year * YEAR + trips.from, after + 1);
  return { from: Math.floor(c.between(first, Math.max(first, year * YEAR + trips.to))), days: Math.floor(c.between(7, 16)), miles: c.between(150, 260) };
}

export type Typed = { readonly day: number; readonly figure: number; readonly slipped: boolean };

/** What the rider types: a day and a figure of the dial in whole miles, one in fifty with a slip. */
export function readingsOf(rider: Rider, ridden: Float64Array, start: number): Typed[] {
  const c = chance(rider.seed * 31 + 7);
  const found: Typed[] = [];
  let total = start;
  let next = rider.begins;
  for (let day = 0; day < READ_DAYS; day++) {
    total += ridden[day] ?? 0;
    if (day < next) continue;
    // Who does not ride does not look: a parked bike is read a third as often.
    const parked = (ridden[day] ?? 0) === 0 && (ridden[Math.max(0, day - 7)] ?? 0) === 0;
    next = day + Math.max(1, Math.round(c.around(rider.gap, 0.8) * (parked ? 2 : 1)));
    const slipped = c.u() < 0.02;
    found.push({ day, figure: slipped ? slip(Math.floor(total), c) : Math.floor(total), slipped });
  }
  return found;
}

/** Two digits swapped, one doubled, or one wrong. */
function slip(figure: number, c: Chance): number {
  const text = String(figure);
  const at = Math.floor(c.u() * Math.max(1, text.length - 1));
  const kind = c.u();
  if (kind < 0.4) return Number(text.slice(0, at) + (text[at + 1] ?? "") + (text[at] ?? "") + text.slice(at + 2));
  if (kind < 0.6) return Number(text.slice(0, at + 1) + (text[at] ?? "") + text.slice(at + 1));
  return Number(text.slice(0, at) + String(Math.floor(c.u() * 10)) + text.slice(at + 1));
}
