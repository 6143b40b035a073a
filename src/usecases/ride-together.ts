// Several bikes on one trip: a list in the group of those whose riders said so, each in its own unit. Each has a trip of its own by it, and nothing else of a bike is told.

import type { Bike } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { DistanceUnit, Stretch } from "../core/quantity/distance.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { TripRecord } from "../store/trips.ts";
import { type KitKey, TRIP_KIT } from "../trade/trip.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, garage, pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { fitting, type TripShown, tripShown } from "./trip.ts";

/** One bike on a ride, as the group sees it. */
export type Along = { readonly nickname: string; readonly owner: string | null; readonly unit: DistanceUnit; readonly kit: readonly KitKey[] };
export type RideShown = {
  readonly ride: string;
  readonly from: LocalDate;
  readonly to: LocalDate;
  readonly distance: Stretch;
  readonly along: readonly Along[];
  /** Bikes that found no room. */
  readonly more: number;
};
const MOST = 25;
export type Joined =
  /** The speaker has several bikes that could come. */
  | { readonly is: "which"; readonly ride: string; readonly bikes: readonly { readonly bike: string; readonly nickname: string }[] }
  | { readonly is: "along"; readonly trip: TripShown; readonly replaced: readonly string[] };

/** Puts a planned trip of the speaker's before the group spoken in, for others to ride along; shown anew if it is there already. */
export async function shareTrip(ctx: Ctx, input: { readonly trip: string }): Promise<Result<RideShown>> {
  const { group } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<RideShown>> => {
    const g = (await ownGarage(q, ctx)).find(({ trips }) => trips.some(({ id }) => id === input.trip));
    const trip = g?.trips.find(({ id }) => id === input.trip);
    if (trip === undefined || trip.to < todayOf(ctx)) return refused({ why: "gone" });
    // One that was joined belongs to its ride already.
    const ride = trip.ride?.group === group ? trip.ride.id : trip.id;
    if (ride === trip.id) await q.trips.share(trip.id, group);
    return rideShown(q, ctx, ride);
  });
  return onceHeard(acted);
}

/** Who rides along by now. */
export const showRide = (ctx: Ctx, input: { readonly ride: string }): Promise<Result<RideShown>> => ctx.store.read((q) => rideShown(q, ctx, input.ride));

/** The speaker rides along: a trip of their own bike, on the same days and as far. */
export async function rideAlong(ctx: Ctx, input: { readonly ride: string; readonly bike?: string }): Promise<Result<Joined>> {
  const { group, member } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<Joined>> => {
    const [first, ...others] = await q.trips.onRide(input.ride, group);
    if (first === undefined || first.to < todayOf(ctx)) return refused({ why: "gone" });
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const there = all.find(({ bike }) => [first, ...others].some((each) => each.bike === bike.id));
    const riding = all.filter(({ bike }) => bike.state === "riding");
    const open = riding.length === 0 ? all : riding;
    const g = input.bike === undefined ? (there ?? (open.length === 1 ? open[0] : undefined)) : all.find(({ bike }) => bike.id === input.bike);
    if (g === undefined) {
      if (input.bike !== undefined) return refused({ why: "not yours" });
      return done({ is: "which", ride: input.ride, bikes: open.map(({ bike }) => ({ bike: bike.id, nickname: bike.nickname })) });
    }
    const own = g.trips.find(({ ride }) => ride?.id === input.ride);
    if (own !== undefined) return done({ is: "along", trip: await tripShown(q, ctx, g, own), replaced: [] });
    const over = g.trips.filter(({ from, to }) => from <= first.to && first.from <= to);
    const { from, to, distance, typed } = first;
    const use = g.bike.conditions.includes("two-up") ? "two-up" : "solo";
    const trip: TripRecord = {
      ...{ id: ctx.newId(), from, to, distance, typed, use, source: ctx.event, plannedOn: todayOf(ctx) },
      ride: { id: input.ride, group },
    };
    for (const each of over) if (!(await q.trips.withdraw(each.id, ctx.now, trip.id))) throw new Conflict("trip changed meanwhile");
    await q.trips.add(g.bike.id, trip, member, ctx.now);
    await touch(q, ctx, [g.bike.id]);
    const after = pick(await ownGarage(q, ctx), g.bike.id) ?? g;
    return done({ is: "along", trip: await tripShown(q, ctx, after, trip), replaced: over.map((each) => each.typed) });
  });
  return onceHeard(acted);
}

async function rideShown(q: Repos, ctx: Ctx, ride: string): Promise<Result<RideShown>> {
  const { group, home } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const trips = await q.trips.onRide(ride, group);
  const [first] = trips;
  if (first === undefined) return refused({ why: "gone" });
  const bikes: Bike[] = [];
  for (const { bike } of trips.slice(0, MOST)) {
    const found = await q.bikes.byId(bike);
    if (found !== null) bikes.push(found);
  }
  const owners = await q.members.byIds([...new Set(bikes.map(({ owner }) => owner))]);
  const all = await garage(q, bikes, ctx.now, (bike) => ({ member: owners.get(bike.owner) ?? null, home }));
  const along = trips.flatMap((trip) => {
    const g = pick(all, trip.bike);
    return g === null ? [] : [alongOf(g, owners.get(g.bike.owner)?.name ?? null)];
  });
  return done({ ride, from: first.from, to: first.to, distance: first.distance, along, more: Math.max(0, trips.length - MOST) });
}

const alongOf = (g: Garaged, owner: string | null): Along => ({ nickname: g.bike.nickname, owner, unit: g.unit, kit: fitting(TRIP_KIT, g) });
