// Readings that a later one shows to be slips: withdrawn for its sake, and restored when it is undone.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { Defect } from "../core/defect.ts";
import type { BikeId } from "../core/ids.ts";
import type { Dial } from "../core/quantity/distance.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { buildTrack } from "../core/usage/track.ts";
import type { ReadingRecord } from "../store/readings.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { reopened, revised } from "./revise-defects.ts";

/** Why a reading was withdrawn for the sake of what came from a source. */
export const correctedBy = (source: string): string => `corrected by ${source}`;

/** Writes the revision that withdraws a reading; the bike is touched by the caller. @throws Conflict */
export async function withdrawReading(q: Repos, ctx: Ctx, reading: ReadingRecord, why: string): Promise<void> {
  if (!(await q.readings.revise({ ...reading, rev: reading.rev + 1, state: "withdrawn", by: ctx.who.member, at: ctx.now, why })))
    throw new Conflict("reading changed meanwhile");
}

/** What stands as logged from one source. */
export type Records = { readonly readings: readonly ReadingRecord[]; readonly work: readonly WorkRecord[]; readonly defects: readonly Defect[] };

export const recordsOf = async (q: Repos, source: string): Promise<Records> => ({
  readings: await q.readings.ofMessage(source),
  work: await q.work.ofMessage(source),
  defects: await q.defects.ofMessage(source),
});

export const allOf = ({ readings, work, defects }: Records): readonly (ReadingRecord | WorkRecord | Defect)[] => [...readings, ...work, ...defects];

/** Withdraws records of every kind, and opens again what the work among them closed. Answers what is open again. @throws Conflict */
export async function withdrawAll(q: Repos, ctx: Ctx, { readings, work, defects }: Records, why: string): Promise<Defect[]> {
  for (const reading of readings) await withdrawReading(q, ctx, reading, why);
  for (const record of work)
    if (!(await q.work.revise({ ...record, rev: record.rev + 1, state: "withdrawn", by: ctx.who.member, at: ctx.now, why })))
      throw new Conflict("work changed meanwhile");
  for (const defect of defects) await revised(q, ctx, defect, { state: "withdrawn", why });
  const again = await reopened(q, ctx, work);
  return again.filter((defect) => !defects.some(({ id }) => id === defect.id));
}

/** Withdraws the readings that cannot stand beside a dial figure of a day. Answers them as they were. */
export async function withdrawSlips(
  q: Repos,
  ctx: Ctx,
  g: Garaged,
  read: { readonly dial: Dial; readonly on: LocalDate },
  source: string,
): Promise<ReadingRecord[]> {
  const gone: ReadingRecord[] = [];
  let left = g.odometers;
  for (;;) {
    const judged = judgeReading(buildTrack(g.track.epochs, left), read.dial, read.on, []);
    const slip = judged.is === "fine" ? null : await q.readings.byId(judged.against.reading);
    if (slip === null) return gone;
    await withdrawReading(q, ctx, slip, correctedBy(source));
    gone.push(slip);
    left = left.filter((each) => each.id !== slip.id);
  }
}

/** Restores what was withdrawn for a source's sake. Answers the readings as they stand again. */
export async function restoreCorrected(q: Repos, ctx: Ctx, bikes: readonly BikeId[], source: string): Promise<ReadingRecord[]> {
  const restored: ReadingRecord[] = [];
  for (const reading of await q.readings.correctedBy(bikes, correctedBy(source))) {
    const next: ReadingRecord = { ...reading, rev: reading.rev + 1, state: "live", by: ctx.who.member, at: ctx.now, why: "undone" };
    if (!(await q.readings.revise(next))) throw new Conflict("reading changed meanwhile");
    restored.push(next);
  }
  return restored;
}
