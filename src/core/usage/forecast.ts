// What to expect of the odometer: a pace for each month of the year, learnt from the track, shrunk towards the bike's own overall pace, with a range calibrated on the track's own surprises.
// Not here: what makes a reading believable (judge-reading.ts), nor what falls due (schedule/).

import { addDays, dayNumber, daysBetween, monthFrom, monthOf } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { Ridden, Stretch } from "../quantity/distance.ts";
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
/** Older riding counts half after so many days. */
const HALF_LIFE = 365;
/** Only the last three years are walked day by day: older riding weighs under an eighth. */
const WALKED = 3 * 365;
/** Weight of a day by its age. */
const WEIGHTS = Float64Array.from({ length: WALKED + 1 }, (_, age) => 2 ** (-age / HALF_LIFE));
/** Days of a month that must be seen before the month outweighs the bike's overall pace. */
const PRIOR_DAYS = 30;
/** How far off the pace is over two months, as a share of it, before the track has shown: it counts as so many spans. Tuned by npm run backtest. */
const FIRST_DOUBT = 0.6;
const FIRST_SPANS = 2;
/** Days over which the pace is held against what came. */
const SPAN = 60;
/** Out of season little is expected and more may come: this share of the usual pace is in doubt as well. Tuned by npm run backtest. */
const OUT_OF_SEASON = 0.6;
/** The pace was learnt from the spans that it is held against, and fits them better than those to come. Tuned by npm run backtest. */
const UNSEEN = 2.5;
/** The longer a track, the surer its pace: half-way between new and old after so many days. */
const SETTLED = 180;
/** 90th percentile of the standard normal distribution: an 80 % range has 10 % at each end. */
const Z90 = 1.2816;
/** Spread of what is ridden in a span, as a share of a typical stint, before the track has shown its own. */
const FIRST_SPREAD = 1.0;

/**
 * @param own the member's own yearly figure, used while readings say little
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
  const learnt = learn(track, known);
  const fallback = own.perYear ?? groupMedian?.perYear ?? null;
  const last = track.points.at(-1);
  if (last === undefined || (learnt === null && fallback === null)) return NOTHING;
  const perDay = fallback === null ? 0 : fallback / 365.25;
  const pace = learnt ?? { byMonth: Array.from({ length: 12 }, () => perDay), stint: perDay * 30, spread: FIRST_SPREAD, doubt: FIRST_DOUBT };
  const basis: Basis =
    learnt !== null
      ? { from: "readings", readings: track.points.length, days: learnt.days }
      : own.perYear !== null
        ? { from: "yearly figure", perYear: own.perYear }
        : { from: "group median", perYear: groupMedian?.perYear ?? (0 as Stretch) };
  return walk(last, pace, known, basis, today);
}

const NOTHING: Forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => null };

type Pace = {
  readonly byMonth: readonly number[] /** a typical stint between readings: what chance comes in */;
  readonly stint: number;
  readonly spread: number;
  /** How far the pace itself has been off over spans of two months, as a share of it. */
  readonly doubt: number;
};

/** Learns the pace month by month; null when the readings span less than a fortnight. */
function learn(track: Track, known: Known): (Pace & { readonly days: number }) | null {
  const { points } = track;
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return null;
  const days = daysBetween(first.on, last.on);
  if (days < 14) return null;
  const seen = new Float64Array(12);
  const ridden = new Float64Array(12);
  // Counted back from the last reading, not from today: while nothing is read, what was learnt stands still.
  const end = dayNumber(last.on);
  const oldest = end - WALKED;
  let from = first;
  for (const to of points) {
    const length = daysBetween(from.on, to.on);
    if (length > 0) {
      const start = dayNumber(from.on);
      const riding = countRiding(start, length, known);
      const perDay = riding === 0 ? 0 : (to.ridden - from.ridden) / riding;
      for (let day = Math.max(start, oldest); day < start + length; ) {
        const { month, next } = monthFrom(day);
        let weight = 0;
        for (const stop = Math.min(next, start + length); day < stop; day++) if (!isLaidUp(day, known)) weight += WEIGHTS[end - day] ?? 0;
        seen[month - 1] = (seen[month - 1] ?? 0) + weight;
        ridden[month - 1] = (ridden[month - 1] ?? 0) + weight * perDay;
      }
      from = to;
    }
  }
  const allSeen = sum(seen);
  if (allSeen === 0) return null;
  const overall = sum(ridden) / allSeen;
  // An unseen month leans on its neighbours and on the overall pace.
  const byMonth = Array.from({ length: 12 }, (_, month) => {
    const near = [-1, 1].map((step) => (month + step + 12) % 12);
    const nearSeen = near.reduce((total, m) => total + (seen[m] ?? 0), 0) / 4;
    const nearRidden = near.reduce((total, m) => total + (ridden[m] ?? 0), 0) / 4;
    return ((ridden[month] ?? 0) + nearRidden + PRIOR_DAYS * 0.5 * overall) / ((seen[month] ?? 0) + nearSeen + PRIOR_DAYS * 0.5);
  });
  return { byMonth, ...surprises(track, byMonth, known), days };
}

/** How far each stint missed what the pace would have said: the track's own measure of chance. */
function surprises(track: Track, byMonth: readonly number[], known: Known): { stint: number; spread: number; doubt: number } {
  const misses: number[] = [];
  const stints: number[] = [];
  const usually = byMonth.reduce((total, perDay) => total + perDay, 0) / 12;
  const spans: { came: number; expected: number; days: number }[] = [];
  let span = { came: 0, expected: 0, days: 0 };
  let from = track.points[0];
  for (const to of track.points) {
    if (from === undefined || to.on === from.on) continue;
    const [start, stop] = [dayNumber(from.on), dayNumber(to.on)];
    let expected = 0;
    for (let day = Math.max(start, stop - 400); day < stop; ) {
      const { month, next } = monthFrom(day);
      let riding = 0;
      for (const ends = Math.min(next, stop); day < ends; day++) if (!isLaidUp(day, known)) riding++;
      expected += riding * (byMonth[month - 1] ?? 0);
    }
    stints.push(to.ridden - from.ridden);
    if (expected > 0) misses.push((to.ridden - from.ridden - expected) ** 2 / expected);
    span = { came: span.came + to.ridden - from.ridden, expected: span.expected + expected, days: span.days + stop - start };
    if (span.days >= SPAN) {
      spans.push(span);
      span = { came: 0, expected: 0, days: 0 };
    }
    from = to;
  }
  const stint = Math.max(median(stints), 1);
  // Variance grows with distance; the prior counts as three stints, so that two lucky readings do not look like certainty.
  const perDistance = (misses.reduce((total, miss) => total + miss, 0) + 3 * FIRST_SPREAD * stint) / (misses.length + 3);
  const off = spans.reduce(
    (total, { came, expected, days }) => total + Math.min(4, (came - expected) ** 2 / (expected ** 2 + (OUT_OF_SEASON * usually * days) ** 2 + 1)),
    0,
  );
  const doubt = Math.sqrt((UNSEEN * off + FIRST_SPANS * FIRST_DOUBT ** 2) / (spans.length + FIRST_SPANS));
  return { stint, spread: Math.sqrt(perDistance / stint), doubt };
}

function walk(last: { readonly on: LocalDate; readonly ridden: Ridden }, pace: Pace, known: Known, basis: Basis, today: LocalDate): Forecast {
  const start = dayNumber(last.on);
  // Cumulated likely distance by day after the last reading; made as far as it is asked for.
  const likely: number[] = [0];
  const lows: number[] = [0];
  const usually = pace.byMonth.reduce((total, perDay) => total + perDay, 0) / 12;
  const seen = basis.from === "readings" ? basis.days : 0;
  const doubt = Math.sqrt((365 + SETTLED) / (seen + SETTLED));
  /** Chance in what is ridden, and doubt in the pace itself: the first grows with the root of the distance, the second with the distance and the days. */
  const sd = (expected: number, days: number): number =>
    Math.sqrt(pace.spread ** 2 * expected * pace.stint + (doubt * pace.doubt) ** 2 * (expected ** 2 + (OUT_OF_SEASON * usually * days) ** 2));
  const trip = (day: number): number =>
    known.trips.reduce((total, t) => total + (day >= dayNumber(t.from) && day <= dayNumber(t.to) ? t.distance / (daysBetween(t.from, t.to) + 1) : 0), 0);
  let present = { month: 1, next: Number.NEGATIVE_INFINITY };
  const upTo = (days: number): number => {
    while (likely.length <= days) {
      const day = start + likely.length - 1;
      if (day >= present.next) present = monthFrom(day);
      const onTrip = known.trips.length === 0 ? 0 : trip(day);
      const usual = isLaidUp(day, known) ? 0 : (pace.byMonth[present.month - 1] ?? 0);
      likely.push((likely.at(-1) ?? 0) + (onTrip > 0 ? onTrip : usual));
      // What may be ridden at least never falls with time, though doubt grows.
      lows.push(Math.max(lows.at(-1) ?? 0, (likely.at(-1) ?? 0) - Z90 * sd(likely.at(-1) ?? 0, likely.length - 1)));
    }
    return likely[days] ?? 0;
  };
  const low = (days: number): number => {
    upTo(days);
    return lows[days] ?? 0;
  };
  const high = (days: number): number => upTo(days) + Z90 * sd(upTo(days), days);
  const reach = (distance: number, by: (days: number) => number): number | null => {
    if (distance <= 0) return 0;
    let [before, after] = [0, 32];
    while (by(after) < distance) {
      if (after === HORIZON_DAYS) return null;
      [before, after] = [after, Math.min(after * 2, HORIZON_DAYS)];
    }
    while (after - before > 1) {
      const middle = (before + after) >> 1;
      if (by(middle) >= distance) after = middle;
      else before = middle;
    }
    return after;
  };
  const month = pace.byMonth[monthOf(today) - 1] ?? 0;
  const laidUp = isLaidUp(dayNumber(today), known);
  return {
    basis,
    perWeek: laidUp ? (0 as Stretch) : (Math.round(month * 7) as Stretch),
    riddenOn(date) {
      const days = daysBetween(last.on, date);
      if (days < 0) return null;
      const at = (distance: number): Ridden => (last.ridden + Math.round(distance)) as Ridden;
      return { likely: at(upTo(days)), low: at(low(days)), high: at(high(days)) };
    },
    dateOf(ridden) {
      const distance = ridden - last.ridden;
      const on = reach(distance, upTo);
      const from = reach(distance, high);
      const to = reach(distance, low);
      if (on === null || from === null) return null;
      return { on: addDays(last.on, on), from: addDays(last.on, from), to: to === null ? null : addDays(last.on, to) };
    },
  };
}

const isLaidUp = (day: number, known: Known): boolean =>
  known.layUps.length > 0 && known.layUps.some((layUp) => day >= dayNumber(layUp.from) && (layUp.to === null || day < dayNumber(layUp.to)));

function countRiding(start: number, length: number, known: Known): number {
  if (known.layUps.length === 0) return length;
  let riding = 0;
  for (let day = start; day < start + length; day++) if (!isLaidUp(day, known)) riding++;
  // Ridden although laid up: the days are taken as they are.
  return riding === 0 ? length : riding;
}

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length === 0 ? 0 : sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}
