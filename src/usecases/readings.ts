// The latest readings of a bike, and the questions still unanswered.

import type { BikeId } from "../core/ids.ts";
import { read } from "../message/read.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Ctx } from "./context.ts";
import { allOf, recordsOf } from "./corrections.ts";
import { unanswered } from "./drafts.ts";
import { type FuelShown, fuelOf } from "./fuel.ts";
import { duesOf } from "./garage.ts";
import { agedBy, isPressing, named, newsOf, settle, shownOn } from "./log-set.ts";
import type { MessageOutcome, NamedBike } from "./message-outcome.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import type { Question } from "./question.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type ReadingList = {
  readonly bikes: readonly (NamedBike & { readonly readings: readonly ReadingRecord[]; readonly fuel: readonly FuelShown[] })[];
  readonly open: readonly Question[];
};

const SHOWN = 5;

/** The last few readings of one bike or of each, newest first, with what is still to be answered. */
export async function listReadings(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<ReadingList>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const bikes = [];
    for (const g of one === null ? all : [one.value]) {
      const readings = await q.readings.recent(g.bike.id as BikeId, SHOWN);
      bikes.push({ ...named(g), readings, fuel: await fuelOf(q, g, readings) });
    }
    return done({ bikes, open: await unanswered(q, ctx) });
  });
}

/** What stands as logged from one message, for its author. */
export async function loggedFrom(ctx: Ctx, input: { readonly source: string }): Promise<Result<MessageOutcome>> {
  return ctx.store.read(async (q) => {
    const records = await recordsOf(q, input.source);
    if (allOf(records).length === 0) return refused({ why: "gone" });
    const all = await ownGarage(q, ctx);
    // What stands out on these bikes now is what the note in the channel was about.
    const bikes = all.filter((g) => allOf(records).some((record) => record.bike === g.bike.id));
    if (bikes.length === 0) return refused({ why: "not yours" });
    const fuel: FuelShown[] = [];
    for (const g of bikes) fuel.push(...(await fuelOf(q, g, records.readings)));
    return done<MessageOutcome>({
      is: "logged",
      fuel,
      source: input.source,
      ...records,
      defects: shownOn(bikes, records.defects),
      closed: shownOn(bikes, await q.defects.closedBy(records.work.map(({ id }) => id))),
      mayClose: [],
      bikes: bikes.map(named),
      news: bikes.flatMap((g) => newsOf(ctx, g, duesOf(g).filter(isPressing))),
      // With what it asks for: nobody saw it in the channel.
      judged: bikes.flatMap((g) =>
        g.judged.filter(({ id }) => records.readings.some((reading) => reading.id === id)).map((each) => ({ ...each, bike: g.bike.id, first: true })),
      ),
      aged: bikes.flatMap((g) => agedBy(records, g)),
      withdrawn: [],
    });
  });
}

/** Logs what is typed in a command's option, as a message of one bike or of any. */
export async function logTyped(ctx: Ctx, input: { readonly log: string; readonly bike?: string }): Promise<Result<MessageOutcome>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const meant = read(input.log, knownOf(ctx, one === null ? all : [one.value]));
    if (meant.tooLong) return done<MessageOutcome>({ is: "too long" });
    if (meant.intents.length === 0) return done<MessageOutcome>({ is: "not understood", bikes: all.map((g) => g.bike.nickname) });
    return done(await settle(q, ctx, all, meant.intents, { source: ctx.event, typed: input.log, message: null, unread: meant.unread }));
  });
  return onceHeard(acted);
}
