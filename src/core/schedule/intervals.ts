// Printed columns into stretches of road, and the windows around what is due.
// A window is 10 % of the interval each way, at most 500 mi / 800 km and one calendar month; running-in has one of its own.

import type { Columns, Condition, Interval, PlanItem } from "../plan/plan.ts";
import { type DistanceUnit, figureIn, type Stretch, stretchOf, TENTHS_OF_MM } from "../quantity/distance.ts";

/** A printed distance as this bike counts it. `unit`: of the column that it was printed in; `converted` when that is not the bike's own. */
export type Printed = { readonly stretch: Stretch; readonly unit: DistanceUnit; readonly converted: boolean };

/** The bike's own column, else the other converted; null when the leg has no distance. */
export function printed(columns: Columns, column: DistanceUnit): Printed | null {
  const own = column === "mi" ? columns.miles : columns.km;
  if (own !== null) return { stretch: stretchOf(own, column), unit: column, converted: false };
  const unit = column === "mi" ? "km" : "mi";
  const other = column === "mi" ? columns.km : columns.miles;
  return other === null ? null : { stretch: stretchOf(other, unit), unit, converted: true };
}

const MOST = { mi: 500, km: 800 } as const;
const RUNNING_IN = { mi: 100, km: 150 } as const;
const HABIT = { mi: 1000, km: 1600 } as const;

/** Rounds down to a whole unit of the column that is printed: a converted interval keeps the window it was printed with. */
export const wholeUnits = (stretch: number, column: DistanceUnit): Stretch => (Math.floor(stretch / TENTHS_OF_MM[column]) * TENTHS_OF_MM[column]) as Stretch;

/** How far from the point a job still counts for it. */
export const distanceWindow = (interval: Stretch, column: DistanceUnit): Stretch =>
  Math.min(wholeUnits(interval / 10, column), stretchOf(MOST[column], column)) as Stretch;

export const runningInWindow = (column: DistanceUnit): Stretch => stretchOf(RUNNING_IN[column], column);

/** 10 % of the leg's days, rounded down, at most 30. */
export const dayWindow = (legDays: number): number => Math.min(Math.floor(legDays / 10), 30);

/** How long before a date an item is coming up: the least of 30 days and a quarter of the leg, and never less than its window. */
export const dayNotice = (legDays: number): number => Math.max(dayWindow(legDays), Math.min(30, Math.floor(legDays / 4)));

/** Legs of an item as the bike's use shortens them, and the condition that shortened each; use never lengthens a leg. */
export type Shortened = { readonly interval: Interval; readonly distanceBy: Condition | null; readonly monthsBy: Condition | null };

export function shortenedBy(item: PlanItem, every: Interval, conditions: readonly Condition[], column: DistanceUnit): Shortened {
  let interval = every;
  let distanceBy: Condition | null = null;
  let monthsBy: Condition | null = null;
  for (const condition of conditions) {
    const harsh = item.shortened[condition];
    if (harsh === undefined) continue;
    const [now, then] = [printed(interval, column), printed(harsh, column)];
    if (then !== null && (now === null || then.stretch < now.stretch)) {
      interval = { ...interval, miles: harsh.miles, km: harsh.km };
      distanceBy = condition;
    }
    if (harsh.months !== null && (interval.months === null || harsh.months < interval.months)) {
      interval = { ...interval, months: harsh.months };
      monthsBy = condition;
    }
  }
  return { interval, distanceBy, monthsBy };
}

/** A distance that is gone through between two services of any table: nobody's service interval. */
export const isShort = ({ miles, km }: Columns): boolean => (miles !== null && miles < HABIT.mi) || (km !== null && km < HABIT.km);

/** Items under 1,000 mi / 1,600 km or two months are habits: one line in a list, never a reminder of their own. */
export function isHabit(item: PlanItem, column: DistanceUnit): boolean {
  if (item.repeat.by !== "interval") return false;
  const distance = printed(item.repeat.every, column);
  if (distance !== null && figureIn(distance.stretch, distance.unit) < HABIT[distance.unit]) return true;
  return item.repeat.every.months !== null && item.repeat.every.months < 2;
}
