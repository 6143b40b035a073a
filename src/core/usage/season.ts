// What a track says of its rider: in which part of the year they ride, how much, in how large pieces, and whether they make one long trip a year.
// Each season that could be is weighed by how well it explains the track (a Poisson count of rides with a gamma prior, which has a closed form);
// none is chosen: the forecast is the mixture. Not here: what follows for the days ahead (forecast.ts).

import { stretchOf } from "../quantity/distance.ts";
import { type Stint, stintsOf, type Trip, takeTrips, YEAR } from "./stints.ts";
import type { Track } from "./track.ts";

/** Seasons begin and end on tenths of a month, near enough. */
const BINS = 36;
const BIN = YEAR / BINS;
const MILE = stretchOf(1, "mi");
/** Riding out of season, as a share of that in season; shortest and longest season, in bins. */
const OFF = [0.01, 0.1, 0.3, 0.6];
const SHORTEST = 9;
const LONGEST = 31;

// Tuned by npm run backtest:
/** How likely a rider rides the whole year alike, before the track has shown. */
const ALL_YEAR = 0.05;
/** How firmly the yearly figure holds before the track has shown: the shape of a gamma distribution, so a year as far off as 80 % is nothing rare. */
const FIRM = 1.5;
/** The same of a figure that nobody stated: it only keeps a few weeks in one season from speaking for the whole year. */
const LOOSE = 0.6;
/** What was ridden lately says more of the pace than what was ridden before: it counts half after so many days. */
const LEVEL_HALF_LIFE = 170;
/** Usual doubt in the pace over a span of days, as a share of it; it counts as so many spans. The share of a span's miss that chance in the rides explains. */
const USUAL_DRIFT = 0.4;
const USUAL_SPANS = 2;
const SPAN = 40;
const CHANCE = 0.6;
/** Seasons e to this power less likely than the best are left out. */
const FAR = 12;
/** Seasons weighed stint by stint, and those that are kept. More gained under 1 %. */
const SCREENED = 60;
const KEPT = 12;
/** As if riding came in pieces so long, before the track has shown; it counts as so many stints. */
const FIRST_PIECE = 70 * MILE;
const FIRST_STINTS = 4;
/** One stint says no more than this of the piece: a slip of the thumb does not make a rider erratic. */
const WORST_MISS = 1000 * MILE;

/** A season that could be, and what the track then says of the pace in it. */
export type Season = {
  readonly from: number;
  readonly days: number;
  readonly off: number;
  readonly weight: number;
  /** Distance a day in season: mean and standard deviation of what it may be. */
  readonly pace: number;
  readonly unsure: number;
};
export type Habit = {
  readonly seasons: readonly Season[];
  /** Variance of what is ridden for each unit of what was expected: as if riding came in pieces so long. */
  readonly piece: number;
  /** How far the pace itself may be off, as a share of it. */
  readonly drift: number;
  readonly trip: Trip | null;
};
/** Days in season before a day, counted from any fixed day: differences count. */
const inSeason = (day: number, from: number, days: number): number => {
  const year = Math.floor((day - from) / YEAR);
  return year * days + Math.min(days, day - from - year * YEAR);
};
/** How many days of full riding a stretch of days is worth. */
export const worth = (from: number, to: number, season: { readonly from: number; readonly days: number; readonly off: number }): number => {
  const within = inSeason(to, season.from, season.days) - inSeason(from, season.from, season.days);
  return worthOf(within, to - from, season.off);
};
const worthOf = (within: number, days: number, off: number): number => within + off * (days - within);

/**
 * @param isLaidUp days on which the bike was off the road
 * @param perDay what is ridden on an average day of the year, before the track has shown
 * @param stated by the member or by their group's riding; else it is what is usual anywhere, and holds loosely
 */
export function learnHabit(track: Track, isLaidUp: ((day: number) => boolean) | null, perDay: number, stated: boolean): Habit {
  const firm = stated ? FIRM : LOOSE;
  const stints = stintsOf(track, isLaidUp);
  const end = stints.at(-1)?.to ?? 0;
  const trip = takeTrips(stints);
  let piece = FIRST_PIECE;
  let seasons: Season[] = [];
  const candidates = screen(stints, piece, perDay, firm);
  // How long the pieces are shows only beside a season: first roughly, with the likeliest ones.
  for (const some of [candidates.slice(0, KEPT), candidates]) {
    seasons = weigh(some, stints, end, piece, perDay, firm);
    piece = pieceOf(stints, seasons);
  }
  return { seasons, piece, drift: driftOf(stints, seasons, piece), trip };
}

/** How far the pace was off over spans of about two months, beyond what chance in the rides explains, as a share of it; shrunk to a usual one. */
function driftOf(stints: readonly Stint[], seasons: readonly Season[], piece: number): number {
  const usual = seasons.reduce((sum, season) => sum + season.weight * season.pace * worth(0, YEAR, season), 0) / YEAR;
  let [beyond, spans] = [USUAL_SPANS * USUAL_DRIFT ** 2, USUAL_SPANS];
  let [came, expected, days] = [0, 0, 0];
  for (const { from, to, distance } of stints) {
    came += distance;
    days += to - from;
    expected += seasons.reduce((sum, season) => sum + season.weight * season.pace * worth(from, to, season), 0);
    if (days < SPAN) continue;
    const w = expected / (expected + usual * days);
    beyond += w * Math.min(4, Math.max(-1, ((came - expected) ** 2 - CHANCE * piece * expected) / (expected ** 2 + 1)));
    spans += w;
    [came, expected, days] = [0, 0, 0];
  }
  return Math.sqrt(Math.max(0, beyond / spans));
}

type Candidate = { readonly from: number; readonly days: number; readonly off: number; readonly prior: number };

/** The seasons worth weighing, found roughly: each stint is spread evenly over its days. */
function screen(stints: readonly Stint[], piece: number, perDay: number, firm: number): Candidate[] {
  const rides = new Float64Array(BINS * 2 + 1);
  const days = new Float64Array(BINS * 2 + 1);
  for (const { from, to, distance } of stints) {
    const each = distance / (to - from) / piece;
    for (let day = from; day < to; day++) {
      const bin = Math.floor((day - Math.floor(day / YEAR) * YEAR) / BIN) + 1;
      rides[bin] = (rides[bin] ?? 0) + each;
      days[bin] = (days[bin] ?? 0) + 1;
    }
  }
  // Cumulated over two years, so that a season may pass the turn of the year.
  for (let bin = 1; bin <= BINS * 2; bin++) {
    rides[bin] = (rides[bin - 1] ?? 0) + (bin > BINS ? (rides[bin - BINS] ?? 0) - (rides[bin - BINS - 1] ?? 0) : (rides[bin] ?? 0));
    days[bin] = (days[bin - 1] ?? 0) + (bin > BINS ? (days[bin - BINS] ?? 0) - (days[bin - BINS - 1] ?? 0) : (days[bin] ?? 0));
  }
  const [allRides, allDays] = [rides[BINS] ?? 0, days[BINS] ?? 0];
  const lengths = LONGEST - SHORTEST + 1;
  const seasons = BINS * lengths * OFF.length;
  const fits = new Float64Array(seasons);
  let [best, n] = [Number.NEGATIVE_INFINITY, 0];
  for (const off of OFF) {
    const quiet = Math.log(off);
    for (let length = SHORTEST; length <= LONGEST; length++) {
      const first = (firm * piece * (length + off * (BINS - length))) / BINS / perDay;
      const usual = firm * Math.log(first);
      for (let from = 0; from < BINS; from++) {
        const inRides = (rides[from + length] ?? 0) - (rides[from] ?? 0);
        const inDays = (days[from + length] ?? 0) - (days[from] ?? 0);
        const fit = (allRides - inRides) * quiet + usual - (firm + allRides) * Math.log(first + inDays + off * (allDays - inDays));
        fits[n++] = fit;
        if (fit > best) best = fit;
      }
    }
  }
  const found: { season: Candidate; fit: number }[] = [];
  fits.forEach((fit, at) => {
    if (fit < best - FAR) return;
    const [from, length, off] = [at % BINS, SHORTEST + (Math.floor(at / BINS) % lengths), OFF[Math.floor(at / lengths / BINS)] ?? 1];
    found.push({ season: { from: from * BIN, days: length * BIN, off, prior: (1 - ALL_YEAR) / seasons }, fit });
  });
  found.sort((a, b) => b.fit - a.fit);
  return [{ from: 0, days: YEAR, off: 1, prior: ALL_YEAR }, ...found.slice(0, SCREENED).map(({ season }) => season)];
}

/** Weighs the seasons by how likely each makes every stint. */
function weigh(candidates: readonly Candidate[], stints: readonly Stint[], end: number, piece: number, perDay: number, firm: number): Season[] {
  const rides = stints.reduce((sum, { distance }) => sum + distance, 0) / piece;
  // Plain rows of numbers: they are gone through once for each candidate.
  const [from, to, ridden, age] = [
    stints.map((s) => s.from),
    stints.map((s) => s.to),
    stints.map((s) => s.distance / piece),
    stints.map((s) => 2 ** ((s.to - end) / LEVEL_HALF_LIFE)),
  ].map((row) => Float64Array.from(row)) as [Float64Array, Float64Array, Float64Array, Float64Array];
  const lately = ridden.reduce((sum, distance, n) => sum + distance * (age[n] ?? 0), 0);
  const fits = candidates.map((season) => {
    const average = worth(0, YEAR, season) / YEAR;
    const first = (firm * piece * average) / perDay;
    let [fit, days, late] = [0, 0, 0];
    // A stint mostly begins where the one before it ended: what was in season until there is worked out once.
    let [ended, before] = [Number.NaN, 0];
    for (let n = 0; n < from.length; n++) {
      const [start, end] = [from[n] ?? 0, to[n] ?? 0];
      if (start !== ended) before = inSeason(start, season.from, season.days);
      const until = inSeason(end, season.from, season.days);
      const exposed = Math.max(worthOf(until - before, end - start, season.off), 1e-6);
      [ended, before] = [end, until];
      days += exposed;
      late += exposed * (age[n] ?? 0);
      fit += (ridden[n] ?? 0) * Math.log(exposed);
    }
    fit += Math.log(season.prior) + firm * Math.log(first) - (firm + rides) * Math.log(first + days);
    const shape = firm + lately;
    return { season, fit, pace: (piece * shape) / (first + late), unsure: (piece * Math.sqrt(shape)) / (first + late) };
  });
  fits.sort((a, b) => b.fit - a.fit);
  const best = fits[0]?.fit ?? 0;
  const kept = fits.slice(0, KEPT).filter(({ fit }) => fit > best - FAR / 2);
  const all = kept.reduce((sum, { fit }) => sum + Math.exp(fit - best), 0);
  return kept.map(({ season: { from, days, off }, fit, pace, unsure }) => ({ from, days, off, weight: Math.exp(fit - best) / all, pace, unsure }));
}

/** Chance in what came, against what was expected: as if riding came in pieces so long. Four stints' worth of a usual ride stands before the track has shown. */
function pieceOf(stints: readonly Stint[], seasons: readonly Season[]): number {
  let [off, n] = [FIRST_STINTS * FIRST_PIECE, FIRST_STINTS];
  for (const { from, to, distance } of stints) {
    const expected = seasons.reduce((sum, season) => sum + season.weight * season.pace * worth(from, to, season), 0);
    if (expected < MILE) continue;
    off += Math.min((distance - expected) ** 2 / expected, WORST_MISS);
    n++;
  }
  return Math.min(400 * MILE, Math.max(10 * MILE, off / n));
}
