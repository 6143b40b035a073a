// When the battery of a bike that stands is to be charged: by what was read of it since, else by how long such batteries hold out.

import { CHARGED } from "../core/battery/charged.ts";
import { chargeBy, falls } from "../core/battery/rest.ts";
import { addDays, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { CHARGE_DAYS, CHARGED_BY, LOST_A_DAY, REST_TABLES, SIX_VOLTS } from "../trade/battery.ts";
import type { Garaged } from "./garage.ts";

/** `readings`: how many volts since it was charged the day goes by; none: by how long it has stood. `riding`: it is not laid up, and stands all the same. */
export type ChargeBy = { readonly on: LocalDate; readonly readings: number; readonly lithium: boolean; readonly riding: boolean };

/**
 * The day by which to charge, which may have passed; null for a bike that has no battery of 12 V, whose volts hold, or that is not laid up while nothing read at rest falls.
 * @param taken its battery voltages, oldest first
 */
export function chargeDay(g: Pick<Garaged, "bike" | "layUps" | "work" | "track">, taken: readonly Taken[]): ChargeBy | null {
  const { battery } = g.bike.equipment;
  const riding = g.bike.state === "riding";
  const began = riding ? lastRidden(g, taken) : g.layUps.find(({ to }) => to === null)?.from;
  if ((!riding && g.bike.state !== "laid up") || began === undefined || battery === "none") return null;
  // Work on the battery since then: it was charged, or is another.
  const since = g.work.reduce((day, { on, items }) => (on.from > day && items.some(({ item }) => OF_BATTERY.has(item)) ? on.from : day), began);
  const lithium = battery === "lithium";
  const volts = taken
    // One that is ridden is judged by what was read well rested alone: just off the road the volts fall by themselves.
    .filter(({ kind, on, detail }) => kind === "battery voltage" && on >= since && (!riding || detail?.conditions?.includes("rested") === true))
    .map(({ on, value }) => ({ day: daysBetween(since, on), volts: value }));
  // A rise that only a charger makes: what was read before it says nothing of now.
  const charged = volts.findLastIndex((each, n) => n > 0 && each.volts - (volts[n - 1]?.volts ?? each.volts) > CHARGED_BY);
  const stood = charged < 0 ? volts : volts.slice(charged);
  if (riding && !falls(stood)) return null;
  if (stood.length === 0) return { on: addDays(since, CHARGE_DAYS[battery]), readings: 0, lithium, riding };
  const table = REST_TABLES[battery];
  if (stood.some((each) => each.volts <= SIX_VOLTS)) return null;
  const day = chargeBy(stood, table.limit.min ?? 0, LOST_A_DAY[battery]);
  return day === null ? null : { on: addDays(since, day), readings: stood.length, lithium, riding };
}

/** The day from which on nothing shows that it was ridden; with no ride on record that of its first voltage. */
function lastRidden({ track }: Pick<Garaged, "track">, taken: readonly Taken[]): LocalDate | undefined {
  const moved = track.points.findLast((point, n) => n > 0 && point.ridden > (track.points[n - 1]?.ridden ?? point.ridden));
  return moved?.on ?? taken.find(({ kind }) => kind === "battery voltage")?.on;
}

const OF_BATTERY: ReadonlySet<string> = new Set(["battery.test", "battery-acid.top-up", CHARGED]);
