// A slow leak: what a tyre loses in a month once the weather is taken out of its readings; where the weather is not known, what it cannot explain.

import { lineThrough } from "../wear/line.ts";
import { atTemperature } from "./pressure.ts";

/** A cold reading: the day as a number, the gauge in kPa, the temperature it was read at in °C, null when not noted. `load`: how the bike was loaded, and `wanted`: the kPa that its specs ask for with it, where any is known; `left`: as it was left after setting it; `over` and `under`: more or less than is wanted. */
export type PressureReading = {
  readonly day: number;
  readonly gauge: number;
  readonly celsius: number | null;
  readonly load?: string | null;
  readonly wanted?: number | null;
  readonly left?: boolean;
  readonly over?: boolean;
  readonly under?: boolean;
};

/** How losses are judged: a row of trade/. kPa; `usual` in 30 days is what a sound tyre loses, `noise` one reading's standard deviation, `pumped` a change that only a pump or a valve makes. `fall`: K by which it may have grown colder where nobody noted it; `back`: days over which fills are added up there. `flat`: to less than this nobody lets a tyre down. */
export type LeakRule = {
  readonly usual: number;
  readonly noise: number;
  readonly pumped: number;
  readonly fewestDays: number;
  readonly fall: number;
  readonly back: number;
  readonly flat: number;
  readonly source: string;
};

export type Leak =
  /** `usual`: what a sound tyre loses in 30 days at the most. */
  | { readonly is: "sound" | "leaks"; readonly per30days: number; readonly usual: number; readonly readings: number; readonly days: number }
  /** No temperature is known. `lost` kPa over `days` from `fills` fills; `explained` is what so many K colder, `fall`, would take. */
  | {
      readonly is: "leak likely";
      readonly lost: number;
      readonly days: number;
      readonly fills: number;
      readonly explained: number;
      readonly fall: number;
      readonly readings: number;
    }
  /** `temperature`: there are readings enough, but not with the temperature they were read at. */
  | { readonly is: "cannot tell"; readonly missing: "readings" | "temperature" };

/** °C at which pressures read in different weather are compared. */
export const COMPARED_AT = 20;
const MONTH = 30;
/** A loss is told as a leak when it is beyond the usual with nine chances in ten. */
const SURE = 1.2816;

/** Judges the readings of one tyre, oldest first. */
export function leakOf(readings: readonly PressureReading[], rule: LeakRule): Leak {
  const told = readings.filter(({ celsius }) => celsius !== null);
  const known = lineOf(told, rule);
  if (told.length === readings.length) return known ?? { is: "cannot tell", missing: "readings" };
  const fills = fillsOf(readings, rule);
  // What was lost since, with the weather not noted, makes a leak no smaller.
  if (known?.is === "leaks") return fellSince(readings, rule) ? (likely(fills, rule) ?? known) : known;
  return likely(fills, rule) ?? known ?? { is: "cannot tell", missing: enough(fills.at(-1) ?? [], rule) ? "temperature" : "readings" };
}

/** What a line through the last fill's readings tells, the weather taken out; null where it tells nothing. */
function lineOf(told: readonly PressureReading[], rule: LeakRule): Extract<Leak, { is: "sound" | "leaks" }> | null {
  const since = fillsOf(told, rule).at(-1) ?? [];
  if (!enough(since, rule)) return null;
  const line = lineThrough(
    since.map(({ day, gauge, celsius }) => ({ x: day, y: atTemperature(gauge, celsius ?? COMPARED_AT, COMPARED_AT) })),
    rule.noise,
    { start: null, slope: null },
  );
  if (line === null) return null;
  const per30days = -line.slope * MONTH;
  const least = per30days - SURE * Math.sqrt(line.slopeVar) * MONTH;
  return { is: least > rule.usual ? "leaks" : "sound", per30days, usual: rule.usual, readings: since.length, days: daysOf(since) };
}

/** Is the last reading, of which no temperature is known, lower than the last of which one is by more than the weather can make it? */
function fellSince(readings: readonly PressureReading[], rule: LeakRule): boolean {
  const [last, before] = [readings.at(-1), readings.findLast(({ celsius }) => celsius !== null)];
  if (last === undefined || before === undefined || last.celsius !== null) return false;
  return before.gauge - last.gauge > explainedBy(before.gauge, rule);
}

/** What growing colder by `fall` takes at the most. */
const explainedBy = (gauge: number, { fall }: LeakRule): number => gauge - atTemperature(gauge, COMPARED_AT, COMPARED_AT - fall);

/**
 * What was lost from the last fills, where that is more than growing colder by `fall` would take (at constant volume, on absolute pressure).
 * Within a month so great a fall has room for what a sound tyre loses; over longer that comes on top of it.
 */
function likely(all: readonly Fill[], rule: LeakRule): Extract<Leak, { is: "leak likely" }> | null {
  const last = all.at(-1) ?? [];
  const today = last.at(-1)?.day ?? 0;
  // What holds for a fortnight now leaks no more, whatever it lost before.
  if (enough(last, rule) && lossOf(last) <= (rule.usual * daysOf(last)) / MONTH) return null;
  // Of a fill that began longer ago, what it lost of late: pumping it up makes none of that good.
  const recent = all.map((fill) => (fill === last ? fill : fill.filter(({ day }) => day >= today - rule.back)));
  const fills = recent.filter((fill) => daysOf(fill) > 0);
  const from = Math.max(0, ...fills.map((fill) => fill[0]?.gauge ?? 0));
  const explained = explainedBy(from, rule);
  const [lost, days] = [sum(fills.map(lossOf)), sum(fills.map(daysOf))];
  if (lost <= explained + (rule.usual * Math.max(0, days - MONTH)) / MONTH) return null;
  return { is: "leak likely", lost, days, fills: fills.length, explained, fall: rule.fall, readings: sum(fills.map((fill) => fill.length)) };
}

/** Readings from one fill to the next. */
type Fill = readonly PressureReading[];

const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);
const daysOf = (fill: Fill): number => (fill.at(-1)?.day ?? 0) - (fill[0]?.day ?? 0);
const enough = (fill: Fill, rule: LeakRule): boolean => fill.length >= 2 && daysOf(fill) >= rule.fewestDays;

/** What was lost from one reading to the next, in kPa: the weather taken out where it is known of both. */
function lostBetween(a: PressureReading, b: PressureReading): number {
  if (a.celsius === null || b.celsius === null) return a.gauge - b.gauge;
  return atTemperature(a.gauge, a.celsius, COMPARED_AT) - atTemperature(b.gauge, b.celsius, COMPARED_AT);
}
const lossOf = (fill: Fill): number => sum(fill.slice(1).map((each, n) => lostBetween(fill[n] ?? each, each)));

/** Parted where it was pumped up or let down, and where it was set for another load. */
function fillsOf(readings: readonly PressureReading[], { pumped, flat }: LeakRule): readonly Fill[] {
  const fills: PressureReading[][] = [];
  for (const each of readings) {
    const before = fills.at(-1)?.at(-1);
    const lost = before === undefined ? 0 : lostBetween(before, each);
    // Told to be too high and found right the next time, it was let down in between: that is no leak.
    const set = before?.over === true && each.over !== true && each.under !== true && lost > 0;
    // Nor does anybody let out on purpose what is wanted, on one day or over several.
    const wantsMore = each.under === true || each.gauge < flat;
    const letDown = (before?.day === each.day && lost > pumped && !wantsMore) || set;
    if (before === undefined || lost < -pumped || letDown || each.left === true || setForLoad(before, each, lost)) fills.push([each]);
    else fills.at(-1)?.push(each);
  }
  return fills;
}

/** May air have been put in or let out for another load in between? Where it fell only while there was more in than is wanted now, and another load wants less, or is not known to want as much: nobody lets out what is wanted. */
function setForLoad(before: PressureReading, each: PressureReading, lost: number): boolean {
  const [was, is] = [before.wanted ?? null, each.wanted ?? null];
  const otherLoad = (each.load ?? null) !== (before.load ?? null);
  if (was === null || is === null) return otherLoad;
  if (lost <= 0) return was !== is;
  return otherLoad && is <= was && before.gauge > is;
}
