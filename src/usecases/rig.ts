// What readings are judged by, for bikes that have any: their specs, the law of their home group's place, how they are loaded.

import type { Bike } from "../core/bike.ts";
import type { BikeId } from "../core/ids.ts";
import { waysAfter } from "../core/reading/detail.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { isJudged } from "../trade/judged.ts";
import { airOf } from "./judge.ts";
import type { Rig } from "./judged.ts";
import { specsOf } from "./specs.ts";

/** What is known of a bike before anything is looked up. */
export const bareRig = (bike: Bike): Rig => ({
  bike,
  specs: [],
  place: null,
  homed: bike.homeGroup !== null,
  trips: [],
  ways: new Map(),
  air: new Map(),
  otherBattery: null,
  looked: false,
  use: bike.conditions.includes("two-up") ? "two-up" : null,
});

/** For all at once: one statement for the groups, one for the specs, one for how things are measured, two more for each bike that shares specs with others of its make. */
export async function rigsOf(q: Repos, bikes: readonly Bike[]): Promise<ReadonlyMap<BikeId, Rig>> {
  if (bikes.length === 0) return new Map();
  const groups = await q.members.groupsByIds([...new Set(bikes.flatMap(({ homeGroup }) => homeGroup ?? []))]);
  const alone = bikes.filter(({ model }) => model === null);
  const own = await q.specs.ofBikes(alone.map(({ id }) => id));
  const ways = await q.readings.waysOf(bikes.map(({ id }) => id));
  const rigs = new Map<BikeId, Rig>();
  for (const bike of bikes) {
    const specs = bike.model === null ? own.filter((spec) => spec.bike === bike.id) : await specsOf(q, bike, null);
    const home = bike.homeGroup === null ? undefined : groups.get(bike.homeGroup);
    rigs.set(bike.id, { ...bareRig(bike), specs, place: home?.place ?? null, ways: ways.get(bike.id) ?? new Map(), looked: true });
  }
  return rigs;
}

/** What readings just saved are judged by: what the bikes were loaded with, and how these readings say they were taken; looked up where it is a bike's first. */
export async function rigsFor(
  q: Repos,
  all: readonly { readonly bike: Bike; readonly rig: Rig }[],
  readings: readonly ReadingRecord[],
): Promise<ReadonlyMap<BikeId, Rig>> {
  const judged = readings.filter(({ kind }) => isJudged(kind));
  const fresh = all.filter((g) => !g.rig.looked && judged.some(({ bike }) => bike === g.bike.id));
  const found = await rigsOf(
    q,
    fresh.map((g) => g.bike),
  );
  return new Map(
    all.map((g) => {
      const rig = { ...(found.get(g.bike.id) ?? g.rig), trips: g.rig.trips, otherBattery: g.rig.otherBattery };
      const said = judged.flatMap(({ bike, kind, detail }) =>
        bike === g.bike.id && detail !== null ? [[kind, waysAfter(rig.ways.get(kind), detail)] as const] : [],
      );
      const air = airOf(
        readings.filter(({ bike }) => bike === g.bike.id),
        g.rig.air,
      );
      return [g.bike.id, { ...rig, ways: new Map([...rig.ways, ...said]), air }];
    }),
  );
}
