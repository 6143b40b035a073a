// Putting an item off: it changes when it is spoken of again, never its status.

import { addDays, addMonths, weekdayOf } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type Dial, type DistanceUnit, dialOf, figureIn, stretchOf } from "../core/quantity/distance.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Due, Leg } from "../core/schedule/facts.ts";
import { readUntil } from "../message/read-until.ts";
import type { PutOff } from "../store/notices.ts";
import type { Ctx } from "./context.ts";
import { duesOf, figureOfLast, type Garaged, pick } from "./garage.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

export const PUT_OFF_UNTIL = ["the weekend", "a week", "two weeks", "a month", "250 more", "1000 more"] as const;
export type PutOffUntil = (typeof PUT_OFF_UNTIL)[number];

/** The day on which a put-off item is spoken of again. The weekend is the next Saturday that is not today. */
export function putOffDate(today: LocalDate, until: PutOffUntil): LocalDate {
  switch (until) {
    case "the weekend":
      return addDays(today, ((6 - weekdayOf(today) + 6) % 7) + 1);
    case "a week":
      return addDays(today, 7);
    case "two weeks":
      return addDays(today, 14);
    case "a month":
      return addMonths(today, 1);
    // A dial that nobody reads does not silence it for good.
    case "250 more":
    case "1000 more":
      return addMonths(today, 6);
  }
}

/** Is it silent now? Until its day, until the dial shows its figure, or until the work is done, whichever comes first: what falls due after that was never put off. */
export const isPutOff = (put: PutOff, due: Due, g: Garaged): boolean =>
  put.until > g.today && !(put.dial !== null && g.lastDial !== null && g.lastDial >= put.dial) && !due.legs.some((leg) => countsFromAfter(leg, put.at, g));

/** Does a leg count from what was put on record since a moment? */
function countsFromAfter(leg: Leg, at: Instant, g: Garaged): boolean {
  if (leg.by === "recheck") return g.work.some(({ id, loggedAt }) => leg.recheck.id.endsWith(`@${id}`) && loggedAt > at);
  if (leg.by === "date" && leg.anchor.from === "made") {
    const { by } = leg.anchor;
    return [...g.work, ...g.measured].some(({ id, loggedAt }) => id === by && loggedAt > at);
  }
  if (leg.by === "verdict" || leg.by === "wear" || leg.anchor.from !== "job") return false;
  const { job, on } = leg.anchor;
  const record = g.work.find(({ id }) => id === job);
  // A reading that is the job is known by its day alone.
  return record === undefined ? on.from > at.slice(0, 10) : record.loggedAt > at;
}

export type PutOffDone = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly items: readonly string[];
  readonly until: LocalDate;
  /** On the dial, where it is a distance that was asked for. */
  readonly figure: Figure | null;
  /** When that was said: by it, it can be taken back. */
  readonly at: Instant;
};
type Figure = { readonly at: number; readonly unit: DistanceUnit };

/** What is added to the dial's figure; null: only a day was asked for. */
const moreOf = (until: PutOffUntil): number | null => (until === "250 more" ? 250 : until === "1000 more" ? 1000 : null);

/** A span of the list, or a day or a figure of the dial as typed. */
export type PutOffInput = { readonly bike: BikeId; readonly items: readonly ItemKey[]; readonly until: PutOffUntil | { readonly typed: string } };

/** Puts items of one bike off until a day, or until its dial shows a figure. */
export async function putOff(ctx: Ctx, input: PutOffInput): Promise<Result<PutOffDone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<PutOffDone>> => {
    const all = await ownGarage(q, ctx);
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const found = typeof input.until === "string" ? ofList(g, input.until) : ofTyped(g, input.until.typed, knownOf(ctx, all), ctx.who.distance ?? g.unit);
    if (found.is === "refused") return found;
    const { until, dial } = found.value;
    for (const item of input.items) await q.notices.putOff({ bike: input.bike, item, until, dial, at: ctx.now }, ctx.who.member);
    await q.bikes.touched([input.bike], ctx.now);
    const figure = figureOf(dial, g);
    return done({ bike: input.bike, nickname: g.bike.nickname, items: input.items.map((item) => nameIn(ctx, g, item)), until, figure, at: ctx.now });
  });
  return onceHeard(acted);
}

export type TakenBack = { readonly bike: BikeId; readonly nickname: string; readonly items: readonly string[] };

/** Takes back what was put off at one moment: it is told as if it had never been. */
export async function takePutOffBack(ctx: Ctx, input: { readonly bike: BikeId; readonly at: Instant }): Promise<Result<TakenBack>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<TakenBack>> => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    if (g === null) return refused({ why: "not yours" });
    const items = await q.notices.takeBack(input.bike, input.at);
    if (items.length === 0) return refused({ why: "already done" });
    await q.bikes.touched([input.bike], ctx.now);
    return done({ bike: input.bike, nickname: g.bike.nickname, items: items.map((item) => nameIn(ctx, g, item)) });
  });
  return onceHeard(acted);
}

/** What of one bike is silent today, and until when. */
export function putOffsShown(g: Garaged, put: readonly PutOff[]): ReadonlyMap<ItemKey, { readonly until: LocalDate; readonly figure: Figure | null }> {
  const dues = new Map(duesOf(g).map((due) => [due.item, due]));
  return new Map(
    put.flatMap((each) => {
      const due = dues.get(each.item);
      if (each.bike !== g.bike.id || due === undefined || !isPutOff(each, due, g)) return [];
      return [[each.item, { until: each.until, figure: figureOf(each.dial, g) }]];
    }),
  );
}

const figureOf = (dial: Dial | null, g: Garaged): Figure | null => (dial === null ? null : { at: Math.round(figureIn(dial, g.unit)), unit: g.unit });

type Until = Pick<PutOff, "until" | "dial">;

function ofList(g: Garaged, until: PutOffUntil): Result<Until> {
  const more = moreOf(until);
  const last = figureOfLast(g);
  if (more !== null && last === null) return refused({ why: "not ahead", typed: until, because: "no reading" });
  return done({ until: putOffDate(g.today, until), dial: more === null || last === null ? null : dialOf(Math.round(last) + more, g.unit) });
}

/** What is put off for longer than a year would be forgotten. */
const MOST_MONTHS = 12;

function ofTyped(g: Garaged, typed: string, known: Known, unit: DistanceUnit): Result<Until> {
  const read = readUntil(typed, known, unit);
  if (read === null) return refused({ why: "not ahead", typed, because: "not read" });
  if (read.is === "day") {
    if (read.on <= g.today) return refused({ why: "not ahead", typed, because: "past" });
    return read.on > addMonths(g.today, MOST_MONTHS) ? refused({ why: "not ahead", typed, because: "over a year" }) : done({ until: read.on, dial: null });
  }
  const last = g.lastDial;
  if (last === null) return refused({ why: "not ahead", typed, because: "no reading" });
  const dial = read.more ? ((last + stretchOf(read.value, read.unit)) as Dial) : dialOf(read.value, read.unit);
  return dial <= last ? refused({ why: "not ahead", typed, because: "past" }) : done({ until: putOffDate(g.today, "1000 more"), dial });
}
