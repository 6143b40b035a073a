// Undo, edits and deletes. Nothing is erased: a withdrawn record is one more revision.

import type { BikeId } from "../core/ids.ts";
import { read } from "../message/read.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { Conflict } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import type { Ctx } from "./context.ts";
import { type Heard, hear, knownOf, type MessageOutcome, type NamedBike, named, ownGarage, settle } from "./messages.ts";
import { done, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";

/** What was withdrawn. */
export type Undone = { readonly readings: readonly ReadingRecord[]; readonly work: readonly WorkRecord[]; readonly bikes: readonly NamedBike[] };

/** Withdraws all that stands as logged from one message or command. */
export async function undoSource(ctx: Ctx, input: { readonly source: string }): Promise<Result<Undone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    const readings = await q.readings.ofMessage(input.source);
    const work = await q.work.ofMessage(input.source);
    return withdrawn(q, ctx, readings, work);
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}

/** Withdraws one reading. */
export async function undoReading(ctx: Ctx, input: { readonly reading: string }): Promise<Result<Undone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    const reading = await q.readings.byId(input.reading);
    return withdrawn(q, ctx, reading === null || reading.state === "withdrawn" ? [] : [reading], []);
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}

async function withdrawn(q: Repos, ctx: Ctx, readings: readonly ReadingRecord[], work: readonly WorkRecord[]): Promise<Result<Undone>> {
  if (readings.length + work.length === 0) return refused({ why: "already done" });
  const all = await ownGarage(q, ctx);
  const mine = (bike: BikeId): boolean => all.some((g) => g.bike.id === bike);
  if ([...readings, ...work].some((record) => !mine(record.bike))) return refused({ why: "not yours" });
  for (const reading of readings) await withdrawReading(q, ctx, reading, "undone");
  for (const record of work) {
    if (!(await q.work.revise({ ...record, rev: record.rev + 1, state: "withdrawn", by: ctx.who.member, at: ctx.now, why: "undone" })))
      throw new Conflict("work changed meanwhile");
  }
  const bikes = [...new Set([...readings, ...work].map((record) => record.bike))];
  await touch(q, ctx, bikes);
  return done({ readings, work, bikes: all.filter((g) => bikes.includes(g.bike.id)).map(named) });
}

/** Writes the revision that withdraws a reading; the bike is touched by the caller. */
export async function withdrawReading(q: Repos, ctx: Ctx, reading: ReadingRecord, why: string): Promise<void> {
  if (!(await q.readings.revise({ ...reading, rev: reading.rev + 1, state: "withdrawn", by: ctx.who.member, at: ctx.now, why })))
    throw new Conflict("reading changed meanwhile");
}

/**
 * An edited message. What still stands as logged from it is replaced by what it says now; if it was amended since, or nothing was logged, it is read like a new one.
 */
export async function edited(ctx: Ctx, heard: Heard): Promise<MessageOutcome> {
  const stands = await ctx.store.read(async (q) => (await q.readings.ofMessage(heard.message)).length + (await q.work.ofMessage(heard.message)).length > 0);
  if (!stands) return hear(ctx, { ...heard, addressed: heard.addressed });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<MessageOutcome> => {
    const before = await ownGarage(q, ctx);
    const meant = read(heard.text, knownOf(ctx, before));
    // An edit that takes the figures out of a message is not a wish to lose them: the member can undo.
    if (meant.intents.length === 0) return { is: "not understood", bikes: before.map((g) => g.bike.nickname) };
    const readings = await q.readings.ofMessage(heard.message);
    const work = await q.work.ofMessage(heard.message);
    const gone = await withdrawn(q, ctx, readings, work);
    if (gone.is === "refused") return { is: "silence" };
    const all = await ownGarage(q, ctx);
    return settle(q, ctx, all, meant.intents, { source: heard.message, typed: heard.text, message: heard.message, again: true });
  });
  return acted.first ? acted.value : { is: "seen before" };
}

/** A deleted message erases nothing: its author is asked once, privately, when something stands as logged from it. */
export async function deleted(ctx: Ctx, input: { readonly message: string }): Promise<Undone | null> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Undone | null> => {
    const readings = await q.readings.ofMessage(input.message);
    const work = await q.work.ofMessage(input.message);
    if (readings.length + work.length === 0) return null;
    const all = await ownGarage(q, ctx);
    return { readings, work, bikes: all.filter((g) => [...readings, ...work].some((record) => record.bike === g.bike.id)).map(named) };
  });
  return acted.first ? acted.value : null;
}
