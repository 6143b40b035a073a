// The group's median year, for bikes of which too little is known to foresee anything else.

import type { Bike } from "../core/bike.ts";
import { daysBetween } from "../core/calendar/arithmetic.ts";
import type { BikeId, GroupId } from "../core/ids.ts";
import type { Stretch } from "../core/quantity/distance.ts";
import { FEWEST_DAYS } from "../core/usage/forecast.ts";
import { medianYear } from "../core/usage/group-median.ts";
import type { OdometerReading } from "../core/usage/track.ts";
import type { Repos } from "../store/store.ts";

/** What bikes of the home group ride in a year, for those of some bikes that neither say it nor show it; read only where there are such. */
export async function groupYears(
  q: Repos,
  bikes: readonly Bike[],
  odometers: (bike: BikeId) => readonly OdometerReading[],
): Promise<ReadonlyMap<BikeId, Stretch | null>> {
  const wanting = bikes.flatMap(({ id, homeGroup, perYear }) => (homeGroup === null || perYear !== null || isShown(odometers(id)) ? [] : [{ id, homeGroup }]));
  const medians = new Map<GroupId, Stretch | null>();
  for (const group of new Set(wanting.map(({ homeGroup }) => homeGroup))) {
    medians.set(group, medianYear(await q.readings.riddenIn(group)));
  }
  return new Map(wanting.map(({ id, homeGroup }) => [id, medians.get(homeGroup) ?? null]));
}

/** Do its own readings show a pace? */
function isShown(odometers: readonly OdometerReading[]): boolean {
  const days = odometers.map(({ on }) => on).sort();
  const [first, last] = [days[0], days.at(-1)];
  // Without any reading nothing can be foreseen, by no figure.
  return first === undefined || last === undefined || daysBetween(first, last) >= FEWEST_DAYS;
}
