// How far tyres, pads and a chain still go: the readings of each since it was fitted, put on the road they were ridden, and the wear line through them.

import type { Bike } from "../core/bike.ts";
import { daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { elongation } from "../core/chain/elongation.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Plan } from "../core/plan/plan.ts";
import { ahead, between, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import type { Place, ReadingKind } from "../core/reading/kinds.ts";
import type { Facts, Moment, Wearing } from "../core/schedule/facts.ts";
import { jobsByItem, type PlacedJob } from "../core/schedule/history.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { riddenOnSet, swapsOf } from "../core/schedule/tyre-sets.ts";
import { wearDays } from "../core/schedule/wear-leg.ts";
import { riddenOnDay, type Track } from "../core/usage/track.ts";
import type { DayRange } from "../core/wear/days.ts";
import { type Wear, type WearHabits, wearOf } from "../core/wear/wear.ts";
import type { WorkRecord } from "../store/work.ts";
import { ELONGATION } from "../trade/chain.ts";
import { endOf, judgedRow, SAME_AS } from "../trade/judged.ts";
import { WEAR_HABITS, type WearKind } from "../trade/wear.ts";
import { ofPartsOn, ofTheSetOn } from "./fitted.ts";
import { besideLast, judgeTaken } from "./judge.ts";
import { isWithPlate } from "./judge-kinds.ts";
import type { Judged, LimitBy, Rig } from "./judged.ts";

/** A part that wears, at its place; a chain has none. */
export type WornPart = {
  readonly part: WearKind;
  readonly place: Place | null;
  readonly wear: Wear;
  /** Ridden on it since it was last read: what is left now is less by so much. */
  readonly since: Stretch;
  /** When the limit is reached, by the forecast: likely, and the 80 % range; null where either cannot tell. */
  readonly likely: DayRange | null;
  /** What the schedule takes of it; null where no line tells. */
  readonly wearing: Wearing | null;
};

/** `unsettled`: the least of what a limit that is not known can be. */
export type LimitDrawn = { readonly value: number; readonly by: LimitBy; readonly unsettled?: boolean };

/** What was read of one part since it was fitted, and where its line leads. Values in mm; of a chain, how much longer than new as a share, which grows. */
export type WearSeries = Omit<WornPart, "wear"> & {
  readonly points: readonly { readonly ridden: Ridden; readonly value: number; readonly typed: string }[];
  /** Null while nothing says how far it may go. */
  readonly limit: LimitDrawn | null;
  readonly wear: Wear | null;
  /** Where the line begins, and its value there; null when none is drawn. */
  readonly start: { readonly ridden: Ridden; readonly value: number } | null;
};

/** The kinds of reading that a wear line is drawn through. */
export const WORN_KINDS = ["tread", "pad thickness", "shoe thickness", "chain length", "chain elongation"] as const;

/** What is measured of each part. */
export const wornKind = (part: WearKind): (typeof WORN_KINDS)[number] =>
  part === "chain" ? "chain length" : part.endsWith("tread") ? "tread" : part.endsWith("shoes") ? "shoe thickness" : "pad thickness";

/** The line that a part at its limit makes due: the one that its readings are judged for. */
const judgedItem = (part: WearKind): ItemKey => {
  const { items } = judgedRow(wornKind(part));
  const end = (["front", "rear", "sidecar"] as const).find((each) => part.startsWith(each));
  return ((end === undefined ? undefined : items[end]) ?? items.any) as string as ItemKey;
};

/** The line that a new part of each kind is recorded at. */
export const FITTED: Readonly<Record<WearKind, string>> = {
  "front tread": "front-tyre.replace",
  "rear tread": "rear-tyre.replace",
  "sidecar tread": "sidecar-tyre.replace",
  "front pads": "front-pads.measure",
  "rear pads": "rear-pads.measure",
  "front shoes": "front-shoes.measure",
  "rear shoes": "rear-shoes.measure",
  chain: "chain.replace",
};

/** What the schedule takes of the wear lines: nothing of what no line can be drawn through. */
export const wearingOf = (g: Worn): readonly Wearing[] => wearSeries(g).flatMap(({ wearing }) => wearing ?? []);

/** What of a bike its wear lines go by. */
type Worn = {
  readonly bike: Pick<Bike, "knownFrom">;
  readonly plan: Plan;
  readonly facts: Facts;
  readonly at: Moment;
  readonly track: Track;
  readonly work: readonly WorkRecord[];
  readonly rig: Rig;
  readonly series: readonly Taken[];
};

/** Every part of a bike of which something says how far it may go. @param kinds of them only these */
export const wornParts = (g: Worn, kinds?: readonly ReadingKind[]): readonly WornPart[] =>
  wearSeries(g, kinds).flatMap(({ part, place, wear, since, likely, wearing }) => (wear === null ? [] : [{ part, place, wear, since, likely, wearing }]));

/** Every part of a bike that has been measured where the odometer tells. @param kinds of them only these */
export function wearSeries(g: Worn, kinds: readonly ReadingKind[] = WORN_KINDS): readonly WearSeries[] {
  const taken = g.series.filter(({ kind }) => kinds.includes(kind));
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

/** Of a day's readings the ones that tell: of what was found, and of what was left, each the least of the part measured. */
function oneADay(taken: readonly Taken[]): readonly Taken[] {
  const days = new Map<LocalDate, Taken[]>();
  for (const each of taken) days.set(each.on, [...(days.get(each.on) ?? []), each]);
  return [...days.values()].flatMap((those) => {
    const found = those.filter(({ detail }) => detail?.state === "found");
    const left = those.filter(({ detail }) => detail?.state !== "found");
    return [...tells(found), ...tells(left)];
  });
}

/** The last, or the least of what was read of the same part beside it. */
function tells(those: readonly Taken[]): readonly Taken[] {
  const last = those.at(-1);
  return last === undefined ? [] : [besideLast(those, last).reduce((least, each) => (each.value < least.value ? each : least))];
}

function partOf({ kind, place }: Taken): WearKind | null {
  if (kind === "chain length" || kind === "chain elongation") return "chain";
  if (place === null) return null;
  const part = `${endOf(place)} ${kind === "tread" ? "tread" : kind === "shoe thickness" ? "shoes" : "pads"}`;
  return part in WEAR_HABITS ? (part as WearKind) : null;
}

type Point = { readonly id: string; readonly on: LocalDate; readonly at: Ridden; readonly value: number; readonly typed: string; readonly found: boolean };

function seriesOf(g: Worn, part: WearKind, place: Place | null, taken: readonly Taken[]): WearSeries | null {
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
    return at === null || value === null ? [] : [{ on: each.on, at, value, id: each.id, typed: each.typed, found: each.detail?.state === "found" }];
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
  if (limit === null) return { part, place, points, limit, since: ridden, wear: null, likely: null, wearing: null, start: null };
  const sinceNew = since !== undefined && since.ridden !== null && rose < 0;
  const start = sinceNew && since.ridden !== null ? since.ridden : first.at;
  // What is left until the limit, which falls whatever is measured.
  const left = (value: number): number => (part === "chain" ? limit.value - value : value);
  const fresh: WearHabits = part === "chain" ? { ...habits, fresh: { ...habits.fresh, mean: left(habits.fresh.mean) } } : habits;
  const readings = placed.map(({ at, value }) => ({ ridden: road(start, at), value: left(value) }));
  const wear = wearOf(readings, part === "chain" ? 0 : limit.value, fresh, sinceNew);
  const isLine = wear.is === "line";
  // Counted from today: what was ridden on others since wears nothing off it.
  const reached = (left: Stretch): Ridden => ahead(g.at.ridden ?? last.at, (left - ridden) as Stretch);
  const wearing: Wearing | null = !isLine
    ? null
    : {
        item: judgedItem(part),
        since: first.id,
        on: last.on,
        reaches: { likely: reached(wear.left.likely), low: reached(wear.left.low), high: wear.left.high === null ? null : reached(wear.left.high) },
      };
  return {
    ...{ part, place, points, limit, wear, since: ridden, wearing, likely: wearing === null ? null : wearDays(wearing.reaches, g.at) },
    start: isLine ? { ridden: start, value: left(wear.start) } : null,
  };
}

/** Of a chain the share that it is longer than new; null where that cannot be told. Nothing else needs judging for its value. */
function measureOf(part: WearKind, taken: Taken, { rig }: Worn): number | null {
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
  // A length over the pitches measured, as long as the share that was read says they are.
  const value = last.kind === "chain elongation" ? max / 100 : elongation(max, 1, last.value / (1 + last.share));
  const { unsettled } = last.judgement.limit;
  // The line stays where it was drawn while the chain was shorter.
  return {
    value: last.by === "practice" ? Math.min(value, ELONGATION.least) : value,
    by: last.by,
    ...(unsettled === undefined ? {} : { unsettled: true }),
  };
}

/** What the tyre before the present one went at each end; ends of which that is not on record are left out, and so are bikes whose tyres are swapped. */
export function lastTyres(g: Worn): readonly { readonly place: "front" | "rear"; readonly went: Stretch }[] {
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

/** When the part was replaced, oldest first. One change that was recorded twice is one. */
function fittings(g: Worn, part: WearKind): readonly PlacedJob[] {
  const jobs = jobsByItem(g.facts, g.plan.items).get(FITTED[part] as never) ?? [];
  // Linings are measured at the line at which new ones are recorded.
  const changes =
    part.endsWith("pads") || part.endsWith("shoes")
      ? jobs.filter(({ job }) => job.outcome === "replaced")
      : jobs.filter(({ job }) => job.outcome === "replaced" || job.outcome === "done");
  return changes.filter((change, n) => !isSameChange(changes[n - 1], change));
}

/** So near each other that nothing was worn out between them: the bill of a change behind the word of it. Common practice. */
const TOLD_TWICE = { days: 14, km: 100 } as const;

function isSameChange(before: PlacedJob | undefined, { job, ridden }: PlacedJob): boolean {
  if (before === undefined || daysBetween(before.job.on.from, job.on.from) > TOLD_TWICE.days) return false;
  // With no figure at one of them, only the day says so.
  if (before.ridden === null || ridden === null) return before.job.on.from === job.on.from;
  return between(before.ridden, ridden) <= TOLD_TWICE.km * KM;
}
const KM = 10_000_000;
