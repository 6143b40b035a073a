// How far tyres and pads still go: the readings of each since it was fitted, put on the road they were ridden, and the wear line through them.

import type { LocalDate } from "../core/calendar/dates.ts";
import { ahead, between, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import type { Place } from "../core/reading/kinds.ts";
import { jobsByItem, type PlacedJob } from "../core/schedule/history.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { riddenOnSet } from "../core/schedule/tyre-sets.ts";
import { riddenOnDay } from "../core/usage/track.ts";
import { type Wear, type WearReading, wearOf } from "../core/wear/wear.ts";
import { endOf } from "../trade/judged.ts";
import { WEAR_HABITS, type WearKind } from "../trade/wear.ts";
import type { Garaged } from "./garage.ts";
import { judgeTaken } from "./judge.ts";

/** A part that wears, at its place. */
export type WornPart = {
  readonly part: WearKind;
  readonly place: Place;
  readonly wear: Wear;
  /** Where the limit is reached, by the forecast: likely, and the 80 % range; null where either cannot tell. */
  readonly likely: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
};

/** The kinds of reading that a wear line is drawn through. */
export const WORN_KINDS = ["tread", "pad thickness"] as const;

const FITTED: Readonly<Record<WearKind, string>> = {
  "front tread": "front-tyre.replace",
  "rear tread": "rear-tyre.replace",
  "front pads": "front-pads.measure",
  "rear pads": "rear-pads.measure",
};
/** A value that rises by more than a gauge is off by: a new part nobody recorded. mm. */
const NEW_ONE = 1;

/** Every part of a bike that has been measured. @param taken all readings of WORN_KINDS, oldest first */
export function wornParts(g: Garaged, taken: readonly Taken[]): readonly WornPart[] {
  const places = [...new Set(taken.map(({ kind, place }) => `${kind}|${place ?? ""}`))].sort();
  return places.flatMap((key) => {
    const those = taken.filter(({ kind, place }) => `${kind}|${place ?? ""}` === key);
    const part = partOf(those[0]);
    return part === null ? [] : (wornPart(g, part, those) ?? []);
  });
}

function partOf(taken: Taken | undefined): { readonly part: WearKind; readonly place: Place } | null {
  if (taken === undefined || taken.place === null) return null;
  const end = endOf(taken.place);
  const part = taken.kind === "tread" ? (`${end} tread` as const) : (`${end} pads` as const);
  return part in WEAR_HABITS ? { part: part as WearKind, place: taken.place } : null;
}

function wornPart(g: Garaged, { part, place }: { readonly part: WearKind; readonly place: Place }, taken: readonly Taken[]): WornPart | null {
  const last = taken.at(-1);
  const judged = last === undefined ? null : judgeTaken(last, g.rig);
  const limit = judged === null || judged.judgement.is === "cannot tell" ? null : judged.judgement.limit.min;
  if (limit === null) return null;
  const isTyre = part.endsWith("tread");
  const fitted = fittings(g, part);
  const since = fitted.at(-1);
  const set = isTyre ? g.facts.fittings.at(-1)?.set : undefined;
  const road = (from: Ridden, to: Ridden): Stretch =>
    set === undefined ? between(from, to) : riddenOnSet(g.facts.fittings, set, g.bike.knownFrom.ridden, from, to);
  // What was found on the day of the new one was of the old.
  const own = taken.filter(({ on, detail }) => since === undefined || on > since.job.on.from || (on === since.job.on.from && detail?.state !== "found"));
  // A new one that nobody recorded shows as a value that rose.
  const rose = own.findLastIndex((each, n) => n > 0 && each.value - (own[n - 1]?.value ?? each.value) > NEW_ONE);
  const kept = rose < 0 ? own : own.slice(rose);
  const placed = kept.flatMap((each) => {
    const on = riddenOnDay(g.track, each.on);
    return on === null ? [] : [{ at: on.likely, value: each.value }];
  });
  const first = placed[0];
  if (first === undefined) return null;
  const sinceNew = since !== undefined && since.ridden !== null && rose < 0;
  const start = sinceNew && since !== undefined && since.ridden !== null ? since.ridden : first.at;
  const readings: WearReading[] = placed.map(({ at, value }) => ({ ridden: road(start, at), value }));
  const wear = wearOf(readings, limit, WEAR_HABITS[part], sinceNew);
  return { part, place, wear, likely: wear.is === "line" ? datesOf(g, placed.at(-1)?.at ?? start, wear.left) : null };
}

/** What the tyre before the present one went at each end; ends of which that is not on record are left out, and so are bikes whose tyres are swapped. */
export function lastTyres(g: Garaged): readonly { readonly place: "front" | "rear"; readonly went: Stretch }[] {
  if (g.facts.fittings.length > 0) return [];
  return (["front", "rear"] as const).flatMap((place) => {
    const [before, since] = [undefined, undefined, ...fittings(g, `${place} tread`)].slice(-2);
    // Of a bike whose history is whole, the first one was on from new.
    const from = before === undefined ? (g.bike.knownFrom.wholeSinceNew ? (0 as Ridden) : null) : before.ridden;
    return since?.ridden == null || from === null ? [] : [{ place, went: between(from, since.ridden) }];
  });
}

/** When the part was replaced, oldest first. */
function fittings(g: Garaged, part: WearKind): readonly PlacedJob[] {
  const jobs = jobsByItem(g.facts, g.plan.items).get(FITTED[part] as never) ?? [];
  return part.endsWith("pads")
    ? jobs.filter(({ job }) => job.outcome === "replaced")
    : jobs.filter(({ job }) => job.outcome === "replaced" || job.outcome === "done");
}

/** The days on which the odometer is expected there: the low end of the distance at the earliest, the high end at the latest. */
function datesOf(g: Garaged, from: Ridden, left: { readonly likely: Stretch; readonly low: Stretch; readonly high: Stretch | null }): WornPart["likely"] {
  const { forecast } = g.at;
  const [likely, low] = [forecast.dateOf(ahead(from, left.likely)), forecast.dateOf(ahead(from, left.low))];
  if (likely === null || low === null) return null;
  const high = left.high === null ? null : forecast.dateOf(ahead(from, left.high));
  return { on: likely.on, from: low.from < low.on ? low.from : low.on, to: high?.to ?? null };
}
