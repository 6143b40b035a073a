// Slow leaks: what the cold pressures of the tyres that are on tell of them.

import { daysBetween } from "../core/calendar/arithmetic.ts";
import { toCanonical } from "../core/quantity/units.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { type Leak, leakOf } from "../core/tyre/leak.ts";
import type { Repos } from "../store/store.ts";
import { LEAK_RULE } from "../trade/tyres.ts";
import { figureOf } from "./figures.ts";
import { ofPartsOn, ofTheSetOn } from "./fitted.ts";
import type { Garaged } from "./garage.ts";
import { judgeTaken } from "./judge.ts";
import type { Rig } from "./judged.ts";

const ENDS = ["front", "rear"] as const;

/** A slow leak of one end's tyre, or none. */
export type LeakOn = { readonly place: (typeof ENDS)[number]; readonly leak: Exclude<Leak, { is: "cannot tell" }> };

/** By end, only where it can be told. */
export async function leaksOn(q: Repos, g: Garaged): Promise<readonly LeakOn[]> {
  const taken = (await q.readings.everyTaken([g.bike.id], ["cold pressure", "ambient temperature"])).get(g.bike.id) ?? [];
  const ours = ofTyresOn(g, taken);
  return ENDS.flatMap((place) => {
    const leak = leakOf(pressures(ours, place, g.rig), LEAK_RULE);
    return leak.is === "cannot tell" ? [] : [{ place, leak }];
  });
}

/** What was read of a tyre that is off says nothing of a leak in this one: a pressure is the tyre's as its tread is. */
function ofTyresOn(g: Garaged, taken: readonly Taken[]): readonly Taken[] {
  const asTread = ofTheSetOn(taken, g.facts.fittings).map((each) => (each.kind === "cold pressure" ? { ...each, kind: "tread" as const } : each));
  const on = new Set(ofPartsOn(asTread, g.work, g.facts.refitted).map(({ id }) => id));
  return taken.filter(({ id }) => on.has(id));
}

/** Cold pressures of one end with the temperature noted on the same day. */
function pressures(taken: readonly Taken[], place: "front" | "rear", rig: Rig) {
  const first = taken[0]?.on;
  return taken.flatMap((each) => {
    if (first === undefined || each.kind !== "cold pressure" || each.place !== place) return [];
    const garage = each.detail?.air?.garage;
    const airs = taken.filter(({ kind, on }) => kind === "ambient temperature" && on === each.on);
    // Said with it before what was said of something else that day.
    const air = airs.find(({ message = null }) => message !== null && message === each.message) ?? airs[0];
    const celsius = garage !== undefined ? toCanonical(garage.value, garage.unit) : (air?.value ?? null);
    const add = judgeTaken(each, rig)?.add ?? 0;
    const { load = rig.use, state } = each.detail ?? {};
    // Where nothing is entered for that load, it takes at least what it takes with less.
    const figure = figureOf(rig, `${place} tyre pressure`, load);
    const wanted = figure?.high ?? figure?.low ?? null;
    return [{ day: daysBetween(first, each.on), gauge: each.value, celsius, load, wanted, left: state === "left", over: add < 0, under: add > 0 }];
  });
}
