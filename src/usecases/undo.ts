// Undo, edits and deletes. Nothing is erased: a withdrawn record is one more revision.

import { localDateAt } from "../core/calendar/zones.ts";
import type { Defect } from "../core/defect.ts";
import type { BikeId } from "../core/ids.ts";
import { read } from "../message/read.ts";
import type { ReadingRecord } from "../store/readings.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import type { Ctx } from "./context.ts";
import { allOf, type Records, recordsOf, restoreCorrected, withdrawAll } from "./corrections.ts";
import { pick, without } from "./garage.ts";
import { named, nextOf, settle, shownOn } from "./log-set.ts";
import type { Heard, MessageOutcome, NamedBike } from "./message-outcome.ts";
import { hear } from "./messages.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { squareVerdicts } from "./square-verdicts.ts";

/** What was withdrawn, and what stands again because it was withdrawn for the sake of that. */
export type Undone = {
  readonly readings: readonly ReadingRecord[];
  readonly work: readonly WorkRecord[];
  readonly defects: readonly Defect[];
  readonly restored: readonly ReadingRecord[];
  /** Defects that the work had closed. */
  readonly reopened: readonly Defect[];
  /** Defects that no figure speaks for any more, and what the figures left still say. */
  readonly lapsed: readonly Defect[];
  readonly noted: readonly Defect[];
  readonly bikes: readonly NamedBike[];
};

/** Withdraws all that stands as logged from one message or command: readings, work, a new dial; what was withdrawn for its sake stands again. */
export async function undoSource(ctx: Ctx, input: { readonly source: string }): Promise<Result<Undone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    const dials = await q.bikes.epochsOf(input.source);
    if (dials.length > 0 && (await usedSince(q, ctx, dials, input.source))) return refused({ why: "later on that dial" });
    const gone = await withdrawn(q, ctx, await recordsOf(q, input.source), "undone");
    if (gone.is === "refused") return gone;
    await q.bikes.withdrawEpochs({ source: input.source }, ctx.now);
    const bikes = gone.value.bikes.map((bike) => bike.id);
    return done({ ...gone.value, restored: await restoreCorrected(q, ctx, bikes, input.source) });
  });
  return onceHeard(acted);
}

/** Was anything logged on these bikes' dials after what the source logged? */
async function usedSince(q: Repos, ctx: Ctx, bikes: readonly BikeId[], source: string): Promise<boolean> {
  const own = await q.readings.ofMessage(source);
  return (await ownGarage(q, ctx))
    .filter((g) => bikes.includes(g.bike.id))
    .some((g) => {
      const at = g.odometers.findLastIndex((reading) => own.some((each) => each.id === reading.id));
      const after = g.odometers.slice(at + 1).length > 0;
      return after || g.work.some((record) => record.message !== source && own.some((each) => record.loggedAt > each.loggedAt && record.dial !== null));
    });
}

/** Withdraws one reading. */
export async function undoReading(ctx: Ctx, input: { readonly reading: string }): Promise<Result<Undone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    const reading = await q.readings.byId(input.reading);
    return withdrawn(q, ctx, { readings: reading === null || reading.state === "withdrawn" ? [] : [reading], work: [], defects: [] }, "undone");
  });
  return onceHeard(acted);
}

async function withdrawn(q: Repos, ctx: Ctx, records: Records, why: string): Promise<Result<Undone>> {
  if (allOf(records).length === 0) return refused({ why: "already done" });
  const all = await ownGarage(q, ctx);
  const bikes = [...new Set(allOf(records).map((record) => record.bike))];
  if (bikes.some((bike) => pick(all, bike) === null)) return refused({ why: "not yours" });
  const reopened = await withdrawAll(q, ctx, records, why);
  await touch(q, ctx, bikes);
  const after = records.readings.length === 0 ? [] : (await ownGarage(q, ctx)).filter((g) => bikes.includes(g.bike.id));
  const squared = await squareVerdicts(q, ctx, after, records, ctx.event);
  return done({ ...records, restored: [], reopened, ...squared, bikes: all.filter((g) => bikes.includes(g.bike.id)).map(named) });
}

/**
 * An edited message, read as on the day it was written. What still stands as logged from it stands until the new version is sure, and is then replaced by it;
 * if nothing was logged from it, it is read like a new one.
 */
export async function edited(ctx: Ctx, heard: Heard): Promise<MessageOutcome> {
  const [stands, was] = await ctx.store.read(async (q) => [allOf(await recordsOf(q, heard.message)).length > 0, (await nextOf(q, heard.message)) > 0]);
  // Taken back by its member: a nicer wording does not log it again.
  if (!stands && was) return { is: "taken back" };
  if (!stands) return hear(ctx, { ...heard, again: true });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<MessageOutcome> => {
    const records = await recordsOf(q, heard.message);
    const [first] = allOf(records);
    if (first === undefined) throw new Conflict("undone meanwhile");
    const whole = await ownGarage(q, ctx);
    if (pick(whole, first.bike) === null) return { is: "silence" };
    const all = whole.map((g) => without(g, records.readings, records.work));
    const on = localDateAt(first.loggedAt, ctx.who.zone);
    const meant = read(heard.text, { ...knownOf(ctx, all), today: on });
    // An edit that takes the figures out of a message is not a wish to lose them: the member can undo.
    if (meant.intents.length === 0) {
      await q.drafts.letGoOfMessage(heard.message);
      const of = whole.filter((g) => allOf(records).some((record) => record.bike === g.bike.id));
      return { is: "stands", source: heard.message, ...records, defects: shownOn(of, records.defects), bikes: of.map(named) };
    }
    return settle(q, ctx, all, meant.intents, { source: heard.message, typed: heard.text, message: heard.message, again: true });
  });
  return acted.first ? acted.value : { is: "seen before" };
}

/** A deleted message erases nothing: its author is asked once, privately, when something stands as logged from it. */
export async function deleted(ctx: Ctx, input: { readonly message: string }): Promise<Undone | null> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Undone | null> => {
    const records = await recordsOf(q, input.message);
    await q.drafts.letGoOfMessage(input.message);
    if (allOf(records).length === 0) return null;
    const all = await ownGarage(q, ctx);
    const bikes = all.filter((g) => allOf(records).some((record) => record.bike === g.bike.id)).map(named);
    return { ...records, restored: [], reopened: [], lapsed: [], noted: [], bikes };
  });
  return acted.first ? acted.value : null;
}
