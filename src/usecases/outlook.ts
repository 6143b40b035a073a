// What falls due until a day or an odometer ahead, and what of it goes together. Nothing is saved.

import { addDays, addMonths } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { ahead, dialOf, type Ridden, stretchOf } from "../core/quantity/distance.ts";
import { evenings, type Falling, type Horizon, outlook } from "../core/schedule/outlook.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import { readUntil, type Until } from "../message/read-until.ts";
import type { Ctx } from "./context.ts";
import { type DueBike, type DueLine, dueBike, MOST_PICTURES, withoutFaults } from "./due.ts";
import { type Garaged, itemsOf } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { type NextShown, nextOf } from "./picture-next.ts";
import { done, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type FallingLine = Pick<Falling, "likely" | "on" | "at" | "by"> & { readonly due: DueLine };
/** What can be done in one go; `minutes` is null when not every item says how long it takes. */
export type Evening = { readonly items: readonly FallingLine[]; readonly minutes: number | null };

export type OutlookBike = {
  readonly bike: Omit<DueBike, "dues" | "first">;
  /** The day looked ahead to; null when it is an odometer and nothing says when that comes. */
  readonly on: LocalDate | null;
  readonly ridden: Horizon["ridden"];
  /** By an odometer, not by a day. */
  readonly byDistance: boolean;
  readonly evenings: readonly Evening[];
  /** Falls due only if the bike is ridden more than is likely. */
  readonly perhaps: readonly FallingLine[];
  /** Items of which nothing is known, and which do not fall due until then; what is looked at between rides is none of them, as in the due list. */
  readonly unknown: number;
  /** Of those, what cannot wait for its next mark, by name. */
  readonly first: readonly string[];
};
export type Outlook = { readonly is: "outlook"; readonly bikes: readonly OutlookBike[]; readonly next?: readonly NextShown[] };

/** Further than this nobody plans, and a forecast says nothing. */
const MOST_MONTHS = 36;

/** What falls due on one bike, or on all the speaker's, until what was typed. */
export async function whatFallsDue(
  ctx: Ctx,
  input: { readonly bike?: string; readonly until: string; readonly picture?: boolean; readonly share?: boolean },
): Promise<Result<Outlook>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const chosen = one === null ? all : [one.value];
    const looked: OutlookBike[] = [];
    const next: NextShown[] = [];
    for (const g of chosen) {
      const until = readUntil(input.until, knownOf(ctx, all), ctx.who.distance ?? g.unit);
      if (until === null) return refused({ why: "not ahead", typed: input.until, because: "not read" });
      // Each bike has an odometer of its own; only a distance more is the same for all.
      if (until.is === "distance" && !until.more && chosen.length > 1) return whichBike(all, undefined) as Extract<Result<Outlook>, { is: "refused" }>;
      const horizon = horizonOf(g, until);
      if (typeof horizon === "string") return refused({ why: "not ahead", typed: input.until, because: horizon });
      looked.push(outlookOf(ctx, g, horizon, until.is === "distance"));
      if (input.picture === true && next.length < MOST_PICTURES)
        next.push(nextOf(ctx, input.share === true ? withoutFaults(g) : g, horizon.named ?? undefined));
    }
    return done({ is: "outlook", bikes: looked, ...(input.picture === true ? { next } : {}) });
  });
}

/** `named`: the day, null where nothing says when a distance is reached. */
export type Looked = Horizon & { readonly named: LocalDate | null };

/** How far a span that was typed reaches on one bike, or why it does not. */
export function horizonOf(g: Garaged, until: Until): Looked | "past" | "too far" | "no reading" {
  const furthest = addMonths(g.today, MOST_MONTHS);
  if (until.is === "day") {
    if (until.on <= g.today) return "past";
    return until.on > furthest ? "too far" : { on: until.on, named: until.on, ridden: g.at.forecast.riddenOn(until.on) };
  }
  if (g.at.ridden === null) return "no reading";
  const ridden: Ridden = until.more ? ahead(g.at.ridden, stretchOf(until.value, until.unit)) : riddenAtDial(g.track, dialOf(until.value, until.unit), g.today);
  if (ridden <= g.at.ridden) return "past";
  const likely = g.at.forecast.dateOf(ridden)?.on ?? null;
  // Where nothing says when it comes, only what is due by date today is counted.
  const on = likely === null || likely > furthest ? null : likely <= g.today ? addDays(g.today, 1) : likely;
  return { on: on ?? g.today, named: on, ridden: { low: ridden, likely: ridden, high: ridden } };
}

function outlookOf(ctx: Ctx, g: Garaged, horizon: Looked, byDistance: boolean): OutlookBike {
  const { dues, first, ...bike } = dueBike(ctx, g);
  const lines = new Map(dues.map((line) => [line.item, line]));
  const minutes = new Map(itemsOf(g).map((item) => [item.key, item.minutes]));
  const falling = outlook(g.facts, g.at, horizon);
  const lineOf = ({ item, likely, on, at, by }: Falling): FallingLine[] => {
    const due = lines.get(item);
    return due === undefined ? [] : [{ likely, on, at, by, due }];
  };
  const groups = evenings(
    falling.filter((each) => each.likely),
    g.facts.column,
  );
  const falls = new Set(falling.map(({ item }) => item));
  return {
    bike,
    on: horizon.named,
    ridden: horizon.ridden,
    byDistance,
    evenings: groups.map((group) => {
      const each = group.map(({ item }) => minutes.get(item) ?? null);
      return { items: group.flatMap(lineOf), minutes: each.includes(null) ? null : each.reduce<number>((sum, n) => sum + (n ?? 0), 0) };
    }),
    perhaps: falling.filter((each) => !each.likely).flatMap(lineOf),
    first: first.flatMap((key) => (falls.has(key) ? [] : (lines.get(key)?.name ?? []))),
    unknown: dues.filter((line) => line.status === "no record" && !line.habit && !falls.has(line.item)).length,
  };
}
