// Facts for tests: invented bikes with as little said as a test needs.

import { localDate, vagueDate } from "../../../src/core/calendar/arithmetic.ts";
import type { Equipment } from "../../../src/core/equipment.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import type { PlanItem } from "../../../src/core/plan/plan.ts";
import { type DistanceUnit, dialOf, riddenOf, type Stretch } from "../../../src/core/quantity/distance.ts";
import type { Due, Facts, Job, Moment } from "../../../src/core/schedule/facts.ts";
import { dueList } from "../../../src/core/schedule/status.ts";
import type { Forecast } from "../../../src/core/usage/forecast.ts";
import { buildTrack } from "../../../src/core/usage/track.ts";

export const equipment: Equipment = {
  finalDrive: "chain",
  wheels: "cast",
  tyres: "tubeless",
  cooling: "liquid",
  throttle: "cable",
  clutch: "cable",
  frontBrake: "disc",
  rearBrake: "disc",
  abs: "none",
  brakeFluid: "DOT 4",
  fuel: "injection",
  ignition: "electronic",
  valveGear: "shim",
  camDrive: "chain",
  battery: "AGM",
  fork: "telescopic",
  rearSuspension: "linkage",
  centreStand: "none",
  sidecar: "none",
};

export const every = (miles: number | null, months: number | null, km: number | null = null) => ({ miles, km, months, hours: null });

export function anItem(over: Partial<Omit<PlanItem, "key" | "covers">> & { key?: string; covers?: string[] } = {}): PlanItem {
  return {
    called: null,
    system: "engine",
    action: "replace",
    anchor: "marks",
    first: null,
    repeat: { by: "interval", every: every(4000, 12) },
    parked: "counts",
    noLateWindow: false,
    shortened: {},
    measuredBy: null,
    fits: {},
    engine: "any",
    position: "any",
    minutes: null,
    caution: null,
    firstOnUsedBike: null,
    source: "invented for the test",
    ...over,
    key: (over.key ?? "oil.replace") as ItemKey,
    covers: (over.covers ?? []) as ItemKey[],
  };
}

/** Never knows what is ahead. */
export const noForecast: Forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => null };

export const aJob = (item: string, on: string, at: number | null, over: Partial<Job> = {}, unit: DistanceUnit = "mi"): Job => ({
  id: `${item}@${on}`,
  item: item as ItemKey,
  on: vagueDate(localDate(on), localDate(on), on),
  ridden: at === null ? null : riddenOf(at, unit),
  hours: null,
  outcome: "done",
  how: "did it",
  ...over,
});

export function facts(items: readonly PlanItem[], over: Partial<Facts> = {}): Facts {
  return {
    plan: { items },
    equipment,
    column: "mi",
    conditions: [],
    jobs: [],
    odometer: buildTrack([], []),
    hours: [],
    verdicts: [],
    wearing: [],
    rechecks: [],
    layUps: [],
    knownFrom: { date: localDate("2025-01-01"), ridden: riddenOf(0, "mi"), wholeSinceNew: true },
    byTheBook: null,
    fittings: [],
    ofTyres: new Set(),
    refitted: [],
    made: new Map(),
    ...over,
  };
}

export const moment = (today: string, at: number | null, unit: DistanceUnit = "mi", forecast: Forecast = noForecast): Moment => ({
  today: localDate(today),
  ridden: at === null ? null : riddenOf(at, unit),
  hours: null,
  forecast,
});

export function only(f: Facts, m: Moment, key = "oil.replace"): Due {
  const due = dueList(f, m).find((each) => each.item === key);
  if (due === undefined) throw new Error(`no ${key}`);
  return due;
}

/** Where the distance leg falls due, in miles. */
export function dueMiles(due: Due, unit: DistanceUnit = "mi"): number {
  const leg = due.legs.find((each) => each.by === "distance");
  if (leg?.by !== "distance") throw new Error("no distance leg");
  return leg.dueAt / dialOf(1, unit);
}

export const stretchMiles = (stretch: Stretch): number => stretch / dialOf(1, "mi");
