// How far tyres, pads and a chain still go: the readings of each since it was fitted, put on the road they were ridden, and the wear line through them.

import type { LocalDate } from "../core/calendar/dates.ts";
import { elongation } from "../core/chain/elongation.ts";
import type { ItemKey } from "../core/ids.ts";
import { ahead, between, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import type { Place } from "../core/reading/kinds.ts";
import { jobsByItem, type PlacedJob } from "../core/schedule/history.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { riddenOnSet, swapsOf } from "../core/schedule/tyre-sets.ts";
import { riddenOnDay } from "../core/usage/track.ts";
import { dayRange } from "../core/wear/days.ts";
import { type Wear, type WearHabits, wearOf } from "../core/wear/wear.ts";
import { endOf, SAME_AS } from "../trade/judged.ts";
import { WEAR_HABITS, type WearKind } from "../trade/wear.ts";
import { ofPartsOn, ofTheSetOn } from "./fitted.ts";
import type { Garaged } from "./garage.ts";
import { isWithPlate, type Judged, judgeTaken, type LimitBy } from "./judge.ts";

/** A part that wears, at its place; a chain has none. */
export type WornPart = {
  readonly part: WearKind;
  readonly place: Place | null;
  readonly wear: Wear;
  /** Ridden on it since it was last read: what is left now is less by so much. */
  readonly since: Stretch;
  /** Where the limit is reached, by the forecast: likely, and the 80 % range; null where either cannot tell. */
  readonly likely: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
};

/** What was read of one part since it was fitted, and where its line leads. Values in mm; of a chain, how much longer than new as a share, which grows. */
export type WearSeries = Omit<WornPart, "wear"> & {
  readonly points: readonly { readonly ridden: Ridden; readonly value: number; readonly typed: string }[];
  /** Null while nothing says how far it may go. */
  readonly limit: { readonly value: number; readonly by: LimitBy } | null;
  readonly wear: Wear | null;
  /** Where the line begins, and its value there; null when none is drawn. */
  readonly start: { readonly ridden: Ridden; readonly value: number } | null;
};

/** The kinds of reading that a wear line is drawn through. */
export const WORN_KINDS = ["tread", "pad thickness", "chain length", "chain elongation"] as const;

/** The line that a new part of each kind is recorded at. */
export const FITTED: Readonly<Record<WearKind, string>> = {
  "front tread": "front-tyre.replace",
  "rear tread": "rear-tyre.replace",
  "front pads": "front-pads.measure",
  "rear pads": "rear-pads.measure",
  chain: "chain.replace",
};

/** Every part of a bike of which something says how far it may go. @param taken all readings of WORN_KINDS, oldest first */
export const wornParts = (g: Garaged, taken: readonly Taken[]): readonly WornPart[] =>
  wearSeries(g, taken).flatMap(({ part, place, wear, since, likely }) => (wear === null ? [] : [{ part, place, wear, since, likely }]));

/** Every part of a bike that has been measured where the odometer tells. @param taken all readings of WORN_KINDS, oldest first */
export function wearSeries(g: Garaged, taken: readonly Taken[]): readonly WearSeries[] {
  const ours = ofPartsOn(ofTheSetOn(taken, g.facts.fittings), g.work, g.facts.refitted);
  const keyOf = ({ kind, place }: Taken): string => `${SAME_AS[kind] ?? kind}|${place ?? ""}`;
  const places = [...new Set(ours.map(keyOf))].sort();
  return places.flatMap((key) => {
    const those = ours.filter((each) => keyOf(each) === key);
    const [first] = those;
    const part = first === undefined ? null : partOf(first);
    return first === undefined || part === null ? [] : (seriesOf(g, part, first.place, those) ?? []);
  });
}

/** Of a day's readings the one that tells: as it was found, else the least of both pads of a pair, else the last. */
function oneADay(taken: readonly Taken[]): readonly Taken[] {
  const days = new Map<LocalDate, Taken[]>();
  for (const each of taken) days.set(each.on, [...(days.get(each.on) ?? []), each]);
  return [...days.values()].flatMap((those) => {
    const found = those.filter(({ detail }) => detail?.state === "found");
    const left = those.filter(({ detail }) => detail?.state !== "found");
    return [...tells(found), ...tells(left)];
  });
}

/** The last, or the least of both pads of a pair that were read together with it. */
function tells(those: readonly Taken[]): readonly Taken[] {
  const last = those.at(-1);
  if (last === undefined) return [];
  const pair = last.detail?.side === undefined ? [] : those.filter(({ detail, loggedAt }) => detail?.side !== undefined && loggedAt === last.loggedAt);
  return [pair.length > 1 ? pair.reduce((least, each) => (each.value < least.value ? each : least)) : last];
}

function partOf({ kind, place }: Taken): WearKind | null {
  if (kind === "chain length" || kind === "chain elongation") return "chain";
  if (place === null) return null;
  const part = kind === "tread" ? `${endOf(place)} tread` : `${endOf(place)} pads`;
  return part in WEAR_HABITS ? (part as WearKind) : null;
}

type Point = { readonly on: LocalDate; readonly at: Ridden; readonly value: number; readonly typed: string; readonly found: boolean };

function seriesOf(g: Garaged, part: WearKind, place: Place | null, taken: readonly Taken[]): WearSeries | null {
  const days = oneADay(taken);
  const habits = WEAR_HABITS[part];
  const swaps = swapsOf(FITTED[part] as ItemKey, g.facts);
  const set = swaps.at(-1)?.set;
  const road = (from: Ridden, to: Ridden): Stretch => (set === undefined ? between(from, to) : riddenOnSet(swaps, set, g.bike.knownFrom.ridden, from, to));
  const isBack = set !== undefined && g.facts.refitted.some(({ fittings: those }) => those === swaps);
  const since = isBack ? fittings(g, part).findLast(({ job }) => job.id === set) : fittings(g, part).at(-1);
  const all = days.flatMap((each): Point[] => {
    const value = measureOf(part, each, g);
    // Where the odometer was read more than once that day, the last: it is mostly said with what was measured, and the first may be what the bike came with.
    const at = value === null ? null : (g.track.points.findLast(({ on }) => on === each.on)?.ridden ?? riddenOnDay(g.track, each.on)?.likely ?? null);
    return at === null || value === null ? [] : [{ on: each.on, at, value, typed: each.typed, found: each.detail?.state === "found" }];
  });
  // What was found on the day of the new one was of the old.
  const own = all.filter(({ on, found }) => since === undefined || on > since.job.on.from || (on === since.job.on.from && !found));
  // A new one that nobody recorded shows as a value that grew, a chain's as one that fell.
  const better = (n: number): number => ((own[n]?.value ?? 0) - (own[n - 1]?.value ?? 0)) * (part === "chain" ? -1 : 1);
  const rose = own.findLastIndex((_, n) => n > 0 && better(n) > habits.another);
  const placed = rose < 0 ? own : own.slice(rose);
  const [first, last] = [placed[0], placed.at(-1)];
  if (first === undefined || last === undefined) return null;
  const latest = days.at(-1);
  const limit = limitOf(part, latest === undefined ? null : judgeTaken(latest, g.rig));
  const points = placed.map(({ at, value, typed }) => ({ ridden: at, value, typed }));
  const ridden = road(last.at, g.at.ridden ?? last.at);
  if (limit === null) return { part, place, points, limit, since: ridden, wear: null, likely: null, start: null };
  const sinceNew = since !== undefined && since.ridden !== null && rose < 0;
  const start = sinceNew && since.ridden !== null ? since.ridden : first.at;
  // What is left until the limit, which falls whatever is measured.
  const left = (value: number): number => (part === "chain" ? limit.value - value : value);
  const fresh: WearHabits = part === "chain" ? { ...habits, fresh: { ...habits.fresh, mean: left(habits.fresh.mean) } } : habits;
  const readings = placed.map(({ at, value }) => ({ ridden: road(start, at), value: left(value) }));
  const wear = wearOf(readings, part === "chain" ? 0 : limit.value, fresh, sinceNew);
  const isLine = wear.is === "line";
  return {
    ...{ part, place, points, limit, wear, since: ridden, likely: isLine ? datesOf(g, last.at, wear.left) : null },
    start: isLine ? { ridden: start, value: left(wear.start) } : null,
  };
}

/** Of a chain the share that it is longer than new; null where that cannot be told. Nothing else needs judging for its value. */
function measureOf(part: WearKind, taken: Taken, { rig }: Garaged): number | null {
  if (part !== "chain") return isWithPlate(taken) ? null : taken.value;
  const judged = judgeTaken(taken, rig);
  return judged === null || judged.miscounted ? null : judged.share;
}

/** The limit that the last reading is judged by, in what the series counts. */
function limitOf(part: WearKind, last: Judged | null): WearSeries["limit"] {
  if (last === null || last.judgement.is === "cannot tell") return null;
  const { min, max } = last.judgement.limit;
  if (part !== "chain") return min === null ? null : { value: min, by: last.by };
  if (max === null || last.share === null) return null;
  if (last.kind === "chain elongation") return { value: max / 100, by: last.by };
  // A length over the pitches measured, as long as the share that was read says they are.
  return { value: elongation(max, 1, last.value / (1 + last.share)), by: last.by };
}

/** What the tyre before the present one went at each end; ends of which that is not on record are left out, and so are bikes whose tyres are swapped. */
export function lastTyres(g: Garaged): readonly { readonly place: "front" | "rear"; readonly went: Stretch }[] {
  if (g.facts.fittings.length > 0) return [];
  return (["front", "rear"] as const).flatMap((place) => {
    // Where one was put back on, what the work says is no life of one tyre.
    if (g.facts.refitted.some(({ items }) => items.has(FITTED[`${place} tread`] as ItemKey))) return [];
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

/** The day on which the odometer is expected there, with its range; none of it lies before today but where all does. */
function datesOf(g: Garaged, from: Ridden, left: { readonly likely: Stretch; readonly low: Stretch; readonly high: Stretch | null }): WornPart["likely"] {
  const dateOf = (stretch: Stretch) => g.at.forecast.dateOf(ahead(from, stretch));
  const [likely, low, high] = [dateOf(left.likely), dateOf(left.low), left.high === null ? null : dateOf(left.high)];
  if (likely === null || low === null) return null;
  const range = dayRange(likely, low.on, high?.on ?? null);
  return range.from < g.today && g.today <= range.on ? { ...range, from: g.today } : range;
}
