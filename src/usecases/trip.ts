// Planning a trip: kept with its bike, held against the plan and what wears; changed by planning it anew, called off, undone.

import { addDays, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { localDateAt, zone } from "../core/calendar/zones.ts";
import { isFitted } from "../core/equipment.ts";
import { between, type DistanceUnit, type Ridden, type Stretch, stretchOf } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Place, ReadingKind } from "../core/reading/kinds.ts";
import { doTheseFirst } from "../core/schedule/do-these-first.ts";
import type { SpecUse } from "../core/spec/spec.ts";
import { type Lasting, lasts, type OnTrip, onTrip, type Trip } from "../core/trip/trip.ts";
import { riddenOnDay } from "../core/usage/track.ts";
import { readTrip } from "../message/read-trip.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { TripRecord } from "../store/trips.ts";
import { DAILY_CARD, type DailyKey, FASTER, type KitKey, TRIP_KIT } from "../trade/trip.ts";
import type { WearKind } from "../trade/wear.ts";
import { type Ctx, todayOf } from "./context.ts";
import { duesOf, type Garaged, itemOf, pick } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { specFor, specsOf, typedWithUnit } from "./specs.ts";
import { wornKind, wornParts } from "./wear.ts";
import { whichBike } from "./which-bike.ts";

export type TripWear = Lasting & { readonly part: string; readonly value: number; readonly unit: UnitId | "%"; readonly limit: number };
export type TripNearing = { readonly part: string; readonly value: number; readonly unit: UnitId | "%"; readonly limit: number };
export type TripShown = {
  readonly trip: string;
  readonly bike: string;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly from: LocalDate;
  readonly to: LocalDate;
  readonly distance: Stretch;
  readonly use: SpecUse;
  readonly typed: string;
  /** The odometer at the start is known, or foreseen. */
  readonly start: Ridden | null;
  readonly items: readonly (OnTrip & { readonly name: string; readonly caution: string | null })[];
  readonly wear: readonly TripWear[];
  /** Of tyres, pads and the chain: what was never measured, or too little. */
  readonly unmeasured: readonly string[];
  /** Tyres, pads and a chain at or near their limit of which nothing says how far they go. */
  readonly nearing: readonly TripNearing[];
  /** Open defects that are not to be ridden on, and those nobody has graded yet. */
  readonly defects: number;
  readonly ungraded: number;
  /** What a used bike wants first and has no record of, by name. */
  readonly unknown: readonly string[];
  readonly pressures: readonly { readonly at: "front" | "rear"; readonly loaded: string | null; readonly solo: string | null }[];
  readonly kit: readonly KitKey[];
  readonly daily: readonly DailyKey[];
};
export type TripAnswer = {
  readonly trips: readonly TripShown[];
  readonly did: "planned" | "called off" | "restored" | "shown";
  readonly replaced: readonly string[];
};

const MOST_DAYS = 370;
const UTC = zone("UTC");
const MOST_MILES = 60_000;
/** More than anybody rides in 24 hours: a day or a figure is a slip. */
const MOST_MILES_A_DAY = 1500;

/** Plans a trip, or shows those planned. One that overlaps an earlier plan of the bike takes its place. */
export async function planTrip(ctx: Ctx, input: { readonly plan?: string; readonly bike?: string; readonly load?: SpecUse }): Promise<Result<TripAnswer>> {
  if (input.plan === undefined) return ctx.store.read((q) => shownTrips(q, ctx, input.bike));
  const typed = input.plan;
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<TripAnswer>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const read = readTrip(typed, knownOf(ctx, all), ctx.who.distance ?? g.unit);
    const why = read === null ? "not read" : read.to < read.from ? "backwards" : whyNot(read, todayOf(ctx));
    if (read === null || why !== null) return refused({ why: "trip", because: why ?? "not read", typed });
    const trip: TripRecord = {
      ...{ id: ctx.newId(), from: read.from, to: read.to, distance: stretchOf(read.value, read.unit) },
      ...{
        typed,
        use: input.load ?? (g.bike.conditions.includes("two-up") ? "two-up" : "solo"),
        source: ctx.event,
        plannedOn: localDateAt(ctx.now, UTC),
        ride: null,
      },
    };
    const over = g.trips.filter(({ from, to }) => from <= trip.to && trip.from <= to);
    for (const each of over) if (!(await q.trips.withdraw(each.id, ctx.now, trip.id))) throw new Conflict("trip changed meanwhile");
    await q.trips.add(g.bike.id, trip, ctx.who.member, ctx.now);
    await touch(q, ctx, [g.bike.id]);
    const after = pick(await ownGarage(q, ctx), g.bike.id) ?? g;
    return done({ trips: [await tripShown(q, ctx, after, trip)], did: "planned", replaced: over.map((each) => each.typed) });
  });
  return onceHeard(acted);
}

/** Calls a planned trip off. */
export async function callOff(ctx: Ctx, input: { readonly trip: string }): Promise<Result<TripAnswer>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<TripAnswer>> => {
    const all = await ownGarage(q, ctx);
    const g = all.find(({ trips }) => trips.some(({ id }) => id === input.trip));
    const trip = g?.trips.find(({ id }) => id === input.trip);
    if (g === undefined || trip === undefined) return refused({ why: "gone" });
    const shown = await tripShown(q, ctx, g, trip);
    if (!(await q.trips.withdraw(trip.id, ctx.now))) return refused({ why: "already done" });
    await touch(q, ctx, [g.bike.id]);
    return done({ trips: [shown], did: "called off", replaced: [] });
  });
  return onceHeard(acted);
}

/** Undoes a plan that took the place of others: they stand again, and it does not. */
export async function backToEarlier(ctx: Ctx, input: { readonly trip: string }): Promise<Result<TripAnswer>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<TripAnswer>> => {
    const g = (await ownGarage(q, ctx)).find(({ trips }) => trips.some(({ id }) => id === input.trip));
    if (g === undefined || !(await q.trips.withdraw(input.trip, ctx.now))) return refused({ why: "gone" });
    const back = await q.trips.restoreReplaced(input.trip);
    await touch(q, ctx, [g.bike.id]);
    const after = pick(await ownGarage(q, ctx), g.bike.id) ?? g;
    const trips: TripShown[] = [];
    for (const trip of back) trips.push(await tripShown(q, ctx, after, trip));
    return done({ trips, did: "restored", replaced: [] });
  });
  return onceHeard(acted);
}

function whyNot({ value, unit, from, to }: NonNullable<ReturnType<typeof readTrip>>, today: LocalDate): "past" | "too far" | "too far a day" | null {
  if (to < today) return "past";
  const distance = stretchOf(value, unit);
  if (value <= 0 || distance > stretchOf(MOST_MILES, "mi") || daysBetween(today, to) > MOST_DAYS || daysBetween(from, to) > MOST_DAYS) return "too far";
  return distance / (daysBetween(from, to) + 1) > stretchOf(MOST_MILES_A_DAY, "mi") ? "too far a day" : null;
}

async function shownTrips(q: Repos, ctx: Ctx, bike: string | undefined): Promise<Result<TripAnswer>> {
  const all = await ownGarage(q, ctx);
  if (all.length === 0) return noneLeft(q, ctx);
  const one = bike === undefined ? null : whichBike(all, bike);
  if (one?.is === "refused") return one;
  const trips: TripShown[] = [];
  for (const g of one === null ? all : [one.value]) for (const trip of g.trips.filter(({ to }) => to >= g.today)) trips.push(await tripShown(q, ctx, g, trip));
  return done({ trips, did: "shown", replaced: [] });
}

/** A trip held against its bike as it stands now. */
export async function tripShown(q: Repos, ctx: Pick<Ctx, "itemName">, g: Garaged, trip: TripRecord): Promise<TripShown> {
  const start = startOf(g, trip);
  const specs = await specsOf(q, g.bike, g.bike.homeGroup);
  const { wear, unmeasured, nearing } = wearOn(g, trip, start);
  const items = onTrip(g.facts, g.at, trip, start).map((each) => ({
    ...each,
    name: nameIn(ctx, g, each.item),
    caution: itemOf(g, each.item)?.caution ?? null,
  }));
  const named = new Set(items.map(({ item }) => item));
  const value = (key: "front tyre pressure" | "rear tyre pressure", use: SpecUse): string | null => {
    const settled = specFor(specs, g.bike, key, use);
    return settled.is === "one" ? typedWithUnit(settled.spec) : null;
  };
  return {
    ...{ trip: trip.id, bike: g.bike.id, nickname: g.bike.nickname, unit: g.unit },
    ...{ from: trip.from, to: trip.to, distance: trip.distance, use: trip.use, typed: trip.typed, start },
    ...{ items, wear, unmeasured, nearing },
    defects: g.defects.filter(({ grade }) => grade === "do not ride").length,
    ungraded: g.defects.filter(({ grade }) => grade === null).length,
    unknown: doTheseFirst(duesOf(g), g.plan)
      .filter((item) => !named.has(item))
      .map((item) => nameIn(ctx, g, item)),
    pressures: (["front", "rear"] as const).map((at) => ({ at, loaded: value(`${at} tyre pressure`, trip.use), solo: value(`${at} tyre pressure`, "solo") })),
    kit: fitting(TRIP_KIT, g),
    daily: fitting(DAILY_CARD, g),
  };
}

/** Rows that fit what a bike is fitted with. */
export const fitting = <K extends string>(rows: Readonly<Record<K, { readonly fits: object }>>, g: Garaged): readonly K[] =>
  (Object.keys(rows) as K[]).filter((key) => isFitted(rows[key].fits, g.bike.equipment));

/** Where the odometer stands at the start: foreseen, else as it was last read; on a trip under way, as it was on that day. */
function startOf(g: Garaged, trip: Trip): Ridden | null {
  if (trip.from <= g.today) return riddenOnDay(g.track, trip.from)?.likely ?? g.at.ridden;
  // The evening before: the first day is the trip's own.
  return g.at.forecast.riddenOn(addDays(trip.from, -1))?.likely ?? g.at.ridden;
}

/** What is read of a part that wears. */
const kindsOf = (part: WearKind): readonly ReadingKind[] => (part === "chain" ? ["chain length", "chain elongation"] : [wornKind(part)]);

function wearOn(g: Garaged, trip: TripRecord, start: Ridden | null): Pick<TripShown, "wear" | "unmeasured" | "nearing"> {
  const parts = wornParts(g);
  const wear: TripWear[] = [];
  const unmeasured: string[] = [];
  const nearing: TripNearing[] = [];
  for (const { part, place, wear: line } of parts) {
    const isOfIt = (each: { readonly kind: ReadingKind; readonly place: Place | null }): boolean => kindsOf(part).includes(each.kind) && each.place === place;
    const last = g.series.findLast(isOfIt);
    const judged = g.judged.find(isOfIt);
    const limit = judged === undefined || judged.judgement.is === "cannot tell" ? null : judged.judgement.limit[part === "chain" ? "max" : "min"];
    const at = last === undefined ? null : riddenOnDay(g.track, last.on);
    if (last === undefined || limit === null) continue;
    const unit = last.unit as UnitId | "%";
    if (line.is === "worn") {
      const none = 0 as Stretch;
      wear.push({ is: "not enough", left: { low: none, likely: none, high: none }, part, value: last.value, unit, limit });
    } else if (line.is === "line" && start !== null && at !== null)
      wear.push({ ...lasts(line.left, between(at.likely, start), trip.distance, FASTER[trip.use].times), part, value: last.value, unit, limit });
    else if (judged?.judgement.is === "within") unmeasured.push(part);
    else nearing.push({ part, value: last.value, unit, limit });
  }
  for (const place of ["front", "rear"] as const) if (!parts.some(({ part }) => part === `${place} tread`)) unmeasured.push(`${place} tread`);
  return { wear, unmeasured, nearing };
}
