// What readings are judged by, for bikes that have any: their specs, the law of their home group's place, how they are loaded.

import type { Bike } from "../core/bike.ts";
import type { BikeId } from "../core/ids.ts";
import type { Repos } from "../store/store.ts";
import type { Rig } from "./judge.ts";
import { specsOf } from "./specs.ts";

/** What is known of a bike before anything is looked up. */
export const bareRig = (bike: Bike): Rig => ({ bike, specs: [], place: null, use: bike.conditions.includes("two-up") ? "two-up" : null });

/** For all at once: one statement for the groups, one for the specs, two more for each bike that shares specs with others of its make. */
export async function rigsOf(q: Repos, bikes: readonly Bike[]): Promise<ReadonlyMap<BikeId, Rig>> {
  if (bikes.length === 0) return new Map();
  const groups = await q.members.groupsByIds([...new Set(bikes.flatMap(({ homeGroup }) => homeGroup ?? []))]);
  const alone = bikes.filter(({ model }) => model === null);
  const own = await q.specs.ofBikes(alone.map(({ id }) => id));
  const rigs = new Map<BikeId, Rig>();
  for (const bike of bikes) {
    const specs = bike.model === null ? own.filter((spec) => spec.bike === bike.id) : await specsOf(q, bike, null);
    const home = bike.homeGroup === null ? undefined : groups.get(bike.homeGroup);
    rigs.set(bike.id, { ...bareRig(bike), specs, place: home?.place ?? null });
  }
  return rigs;
}
