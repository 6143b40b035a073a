// When the battery of a bike that stands is to be charged: by what was read of it since, else by how long such batteries hold out.

import { CHARGED } from "../core/battery/charged.ts";
import { chargeBy, falls, isAtWork, type RestTable, restedFor, type Stood } from "../core/battery/rest.ts";
import { addDays, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { inOneDay, type Taken } from "../core/schedule/measured.ts";
import { CHARGE_DAYS, CHARGE_LATEST, CHARGED_BY, type Chemistry, LOST_A_DAY, REST_TABLES, RESTED_HOURS, SIX_VOLTS } from "../trade/battery.ts";
import { BATTERY_AGAIN } from "../trade/near-limit.ts";
import type { Garaged } from "./garage.ts";

/**
 * `by`: "days" that it stands; "flat part": volts that tell no more than that it is not low; "volts" otherwise. `readings`: how many since it was charged.
 * `since`: the day from which its charge is counted. `low`: the volts last read, where they are too low. `riding`: it is not laid up, and stands all the same.
 */
export type ChargeBy = {
  readonly on: LocalDate;
  readonly by: "days" | "flat part" | "volts";
  readonly since: LocalDate;
  readonly readings: number;
  readonly low: Pick<Taken, "on" | "typed"> | null;
  readonly lithium: boolean;
  readonly riding: boolean;
};

type Facts = Pick<Garaged, "bike" | "layUps" | "work" | "track">;

/**
 * The day by which to charge, which may have passed; null for a bike that has no battery of 12 V, or that is not laid up while nothing read at rest falls.
 * @param taken its battery voltages, oldest first
 */
export function chargeDay(g: Facts, taken: readonly Taken[]): ChargeBy | null {
  const { battery } = g.bike.equipment;
  const riding = g.bike.state === "riding";
  const began = riding ? lastRidden(g, taken) : g.layUps.find(({ to }) => to === null)?.from;
  if ((!riding && g.bike.state !== "laid up") || began === undefined || battery === "none") return null;
  const { since, stood } = sinceCharged(g, taken, { battery, began, riding });
  const last = stood.at(-1);
  if ((riding && !falls(stood.map(asStood(since)))) || stood.some(({ value }) => value <= SIX_VOLTS)) return null;
  const basis = { since, readings: stood.length, lithium: battery === "lithium", riding };
  if (last === undefined) return { ...basis, on: addDays(since, CHARGE_DAYS[battery]), by: "days", low: null };
  if (last.value <= least(REST_TABLES[battery])) return { ...basis, on: last.on, by: "volts", low: last };
  const ahead = battery === "lithium" ? byDays(since, stood, riding) : byLine(battery, since, stood);
  return ahead === null ? null : { ...basis, ...ahead, low: null };
}

const least = ({ limit }: RestTable): number => limit.min ?? 0;
const asStood =
  (since: LocalDate) =>
  ({ on, value }: Taken): Stood => ({ day: daysBetween(since, on), volts: value });

/** The last day on which it is known to have been charged, else the first that it stands, and its volts at rest since. */
function sinceCharged(
  { work }: Facts,
  taken: readonly Taken[],
  { battery, began, riding }: { readonly battery: Chemistry; readonly began: LocalDate; readonly riding: boolean },
): { readonly since: LocalDate; readonly stood: readonly Taken[] } {
  // Work on the battery since then: it was charged, or is another.
  const worked = work
    .filter(({ on, items }) => on.from >= began && items.some(({ item }) => OF_BATTERY.has(item)))
    .reduce<Facts["work"][number] | null>((late, each) => (late === null || each.on.from >= late.on.from ? each : late), null);
  const table = REST_TABLES[battery];
  let since = worked?.on.from ?? began;
  let stood: Taken[] = [];
  for (const each of taken) {
    const { kind, on, value, detail } = each;
    if (kind !== "battery voltage" || on < since || (worked !== null && on === worked.on.from && inOneDay(each, worked) < 0)) continue;
    const rested = restedFor(detail, RESTED_HOURS);
    const short = rested !== null && rested < RESTED_HOURS;
    const offCharger = detail?.conditions?.includes("charged") === true && (rested === null || short);
    // Low volts are low whether rested or not; one that is ridden is judged by what was read well rested alone, since just off the road they fall by themselves.
    const isLow = value <= least(table) && !riding;
    if (detail?.conditions?.includes("on the charger") === true || (offCharger && !isLow)) [since, stood] = [on, []];
    else if (isAtWork(detail) || value > table.most || (riding && rested === null) || (short && !isLow)) continue;
    // A rise that only a charger makes: what was read before it says nothing of now.
    else if (value - (stood.at(-1)?.value ?? value) > CHARGED_BY) [since, stood] = [on, [each]];
    else stood.push(each);
  }
  return { since, stood };
}

type Ahead = Pick<ChargeBy, "on" | "by">;

/** By the line of its volts, which begins no higher than full. Volts that hold say nothing of when; they are looked at as often as those of any that stands. */
function byLine(battery: Exclude<Chemistry, "lithium">, since: LocalDate, stood: readonly Taken[]): Ahead {
  const table = REST_TABLES[battery];
  const full = table.points[0].volts;
  const day = chargeBy(
    stood.map(asStood(since)).map((each) => ({ ...each, volts: Math.min(full, each.volts) })),
    least(table),
    LOST_A_DAY[battery],
  );
  const read = stood.at(-1)?.on ?? since;
  if (day === null) return { on: addDays(read, CHARGE_DAYS[battery]), by: "days" };
  return { on: addDays(since, Math.min(day, daysBetween(since, read) + CHARGE_LATEST[battery])), by: "volts" };
}

/** Where charts of lithium disagree no line of volts holds: by the days since it was known to be full, and half as many from a reading that is not low. */
function byDays(since: LocalDate, stood: readonly Taken[], riding: boolean): Ahead | null {
  const table: RestTable = REST_TABLES.lithium;
  const last = stood.at(-1);
  const full = stood.findLast(({ value }) => value >= REST_TABLES.lithium.unsure[1])?.on ?? since;
  const on = addDays(full, CHARGE_DAYS.lithium);
  if (last === undefined) return { on, by: "days" };
  if (last.value <= least(table) + (table.limit.near ?? 0)) return { on: earlier(on, addDays(last.on, BATTERY_AGAIN.days)), by: "volts" };
  const looked = addDays(last.on, CHARGE_DAYS.lithium / 2);
  return riding ? null : { on: on < looked ? looked : on, by: "flat part" };
}

const earlier = (a: LocalDate, b: LocalDate): LocalDate => (a < b ? a : b);

/** The day from which on nothing shows that it was ridden; with no ride on record that of its first voltage. */
function lastRidden({ track }: Pick<Garaged, "track">, taken: readonly Taken[]): LocalDate | undefined {
  const moved = track.points.findLast((point, n) => n > 0 && point.ridden > (track.points[n - 1]?.ridden ?? point.ridden));
  return moved?.on ?? taken.find(({ kind }) => kind === "battery voltage")?.on;
}

const OF_BATTERY: ReadonlySet<string> = new Set(["battery.test", "battery-acid.top-up", CHARGED]);
