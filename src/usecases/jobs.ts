// Working through a service sheet: begun, ticked off an item at a time over as many evenings as it takes, and finished.
// What is done is a work record like any other; the job only says what was on the sheet. So nothing is lost when it is left, and undoing the record unticks the item.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Ridden } from "../core/quantity/distance.ts";
import type { Intent, RecordWork } from "../core/reading/intent.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { itemsOfService, unknownFirst } from "../core/sheet/select.ts";
import { NO_DETAIL } from "../core/work-detail.ts";
import { readCost } from "../message/read-values.ts";
import type { Job } from "../store/jobs.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { keepMember } from "./add-bike.ts";
import { type Billed, NOT_ITEMISED, putBack, takenOut } from "./bill.ts";
import type { Ctx } from "./context.ts";
import type { DefectShown } from "./defect-shown.ts";
import { type DueBike, dueBike } from "./due.ts";
import { foundWrong } from "./found-wrong.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";
import { settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { dateTyped, dialOfDay, dialTyped, isFarBeside, itemsNamed } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { arrangedOf, listOf, pointOf, stopsOf } from "./sheet.ts";
import { recordsIn, type Ticked, tickedOf } from "./ticks.ts";
import { usualOutcome, valuesSaid } from "./values-said.ts";
import { whichBike } from "./which-bike.ts";

export type JobLine = {
  readonly item: ItemKey;
  readonly name: string;
  readonly evening: number;
  readonly action: WorkAction | null;
  readonly engine: "cold" | "warm" | "any";
  readonly caution: string | null;
  /** Taken out of the plan meanwhile. */
  readonly gone: boolean;
  readonly ticked: Ticked | null;
};
export type JobShown = {
  readonly job: string;
  readonly rev: number;
  readonly state: Job["state"];
  readonly bike: Omit<DueBike, "dues" | "first">;
  readonly mark: Ridden | null;
  readonly begunOn: LocalDate;
  readonly note: string | null;
  readonly lines: readonly JobLine[];
  /** The evening that is being worked at: the first with something open. */
  readonly evening: number;
  readonly evenings: number;
  /** The engine was run today, and the next item wants it cold. */
  readonly standOvernight: boolean;
  /** What stands open that the bike is not to be ridden with. */
  readonly stops: readonly DefectShown[];
};
/** What ticking an item came to: the record or a question about it, and the job as it stands then. */
export type JobWorked = {
  readonly outcome: MessageOutcome;
  readonly job: JobShown;
  /** Ticked before, and recorded a second time beside it. `source`: what takes the first back; null where that would take more than this. */
  readonly again: readonly { readonly name: string; readonly source: string | null }[];
};

/** Begins a job from the sheet at a point. One at a time on a bike. */
export async function startJob(ctx: Ctx, input: { readonly bike: BikeId; readonly at: string }): Promise<Result<JobShown>> {
  return acting(ctx, async (q, all) => {
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const open = (await q.jobs.openOf([g.bike.id])).at(-1);
    if (open !== undefined) return done(shownOf(ctx, g, open));
    const at = pointOf(ctx, all, g, input.at);
    if (at.is === "refused") return at;
    const list = listOf(g, at.value.at);
    if (list === null || list.entries.length === 0) return refused({ why: "no sheet" });
    await keepMember(q, ctx);
    const job: Job = {
      ...{ id: ctx.newId(), rev: 1, bike: g.bike.id, state: "open", mark: list.mark, begunOn: g.today, begunAt: ctx.now, endedAt: null, note: null },
      by: ctx.who.member,
      items: arrangedOf(g, list).flatMap(({ items }, n) => items.map((item) => ({ item, called: nameOf(ctx, g, item), evening: n + 1 }))),
    };
    await q.jobs.begin(job);
    return done(shownOf(ctx, g, job));
  });
}

/** A job by its id, or the one that is open on a bike. */
export async function showJob(ctx: Ctx, input: { readonly job?: string; readonly bike?: string }): Promise<Result<JobShown>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const found = await jobOf(q, all, input);
    return found.is === "refused" ? found : done(shownOf(ctx, found.value.g, found.value.job));
  });
}

export type TickInput = {
  readonly job?: string;
  readonly bike?: string;
  /** By key, or in a member's words. */
  readonly item: string;
  readonly outcome?: Outcome;
  readonly found?: string;
  readonly left?: string;
  readonly at?: string;
  readonly on?: string;
  readonly note?: string;
};

/** Ticks one item off: a work record at its own date and odometer. */
export async function tick(ctx: Ctx, input: TickInput): Promise<Result<JobWorked>> {
  return acting(ctx, async (q, all) => {
    const found = await jobOf(q, all, input);
    if (found.is === "refused") return found;
    const { g, job } = found.value;
    const items = itemsNamed(ctx, all, g, input.item);
    if (items.is === "refused") return items;
    return worked(q, ctx, all, g, job, items.value, input);
  });
}

/** A shop did what is still open: one record of it all, not itemised, with what it cost as typed. */
export async function shopDid(
  ctx: Ctx,
  input: { readonly job: string; readonly at?: string; readonly on?: string; readonly cost?: string; readonly shop?: string },
): Promise<Result<JobWorked>> {
  return acting(ctx, async (q, all) => {
    const found = await jobOf(q, all, input);
    if (found.is === "refused") return found;
    const { g, job } = found.value;
    // What is on the sheet only because nothing is on record of it is on no bill by itself.
    const printed = new Set(job.mark === null ? [] : itemsOfService(g.facts, g.at, job.mark));
    const unknown = new Set(unknownFirst(g.facts, g.at).flatMap(({ item }) => (printed.has(item) ? [] : [item])));
    const items = shownOf(ctx, g, job)
      .lines.filter((line) => !line.gone && line.ticked === null && !unknown.has(line.item))
      .map((line) => line.item);
    if (items.length === 0) return refused({ why: "already done" });
    const { shop, at, on, cost } = input;
    return worked(q, ctx, all, g, job, items, {
      ...(at === undefined ? {} : { at }),
      ...(on === undefined ? {} : { on }),
      ...(cost === undefined ? {} : { cost }),
      note: NOT_ITEMISED,
      doneBy: shop ?? "shop",
    });
  });
}

/** Ends a job; what is unticked stays due by itself. The note is shown with the next sheet. */
export const finishJob = (ctx: Ctx, input: { readonly job: string; readonly note?: string }): Promise<Result<JobShown>> =>
  changing(ctx, input.job, ["open"], (job) => ({ ...job, state: "finished", endedAt: ctx.now, note: input.note?.trim() || job.note }));

/** Takes the finishing, or the leaving, back. */
export const reopenJob = (ctx: Ctx, input: { readonly job: string }): Promise<Result<JobShown>> =>
  changing(ctx, input.job, ["finished", "left"], (job) => ({ ...job, state: "open", endedAt: null }));

/** Takes the beginning back: the sheet is put away, and what was ticked stays recorded. */
export const leaveJob = (ctx: Ctx, input: { readonly job: string }): Promise<Result<JobShown>> =>
  changing(ctx, input.job, ["open"], (job) => ({ ...job, state: "left", endedAt: ctx.now }));

/** Takes what was not on the bill out of a record, and shows the job. */
export const notOnTheBill = (ctx: Ctx, input: Billed & { readonly job: string; readonly items: readonly string[] }): Promise<Result<JobShown>> =>
  amending(ctx, input, (q, all) => takenOut(q, ctx, all, input));

/** Puts back what the last amendment of a record took out. */
export const backOnTheBill = (ctx: Ctx, input: Billed & { readonly job: string }): Promise<Result<JobShown>> =>
  amending(ctx, input, (q, all) => putBack(q, ctx, all, input));

async function amending(
  ctx: Ctx,
  input: { readonly job: string },
  work: (q: Repos, all: readonly Garaged[]) => Promise<Result<{ readonly after: WorkRecord }>>,
): Promise<Result<JobShown>> {
  return acting(ctx, async (q, all) => {
    const found = await jobOf(q, all, input);
    if (found.is === "refused") return found;
    const amended = await work(q, all);
    if (amended.is === "refused") return amended;
    if (amended.value.after.bike !== found.value.g.bike.id) throw new Error("a record of another bike than the job's");
    const g = pick(await ownGarage(q, ctx), found.value.g.bike.id);
    return g === null ? refused({ why: "gone" }) : done(shownOf(ctx, g, found.value.job));
  });
}

type Work = Pick<TickInput, "outcome" | "found" | "left" | "at" | "on" | "note"> & { readonly doneBy?: string; readonly cost?: string };

async function worked(q: Repos, ctx: Ctx, all: readonly Garaged[], g: Garaged, job: Job, items: readonly ItemKey[], input: Work): Promise<Result<JobWorked>> {
  if (job.state !== "open") return refused({ why: "job ended" });
  const on = dateTyped(ctx, all, input.on);
  if (on.is === "refused") return on;
  const odometer = dialTyped(ctx, all, g, input.at);
  if (odometer.is === "refused") return odometer;
  const words = items.map((item) => nameOf(ctx, g, item)).join(", ");
  const said = valuesSaid(ctx, g, items, input, on.value);
  const { values, readings, notes, words: inWords } = said;
  const cost = readCost(input.cost ?? "");
  // What is no value, and what is no figure of money, is kept as it was typed.
  const note = [input.note, ...notes, cost === null ? input.cost : null]
    .map((each) => each?.trim() ?? "")
    .filter((each) => each !== "")
    .join("; ");
  const outcomeOf = (): Outcome => (input.doneBy === undefined ? usualOutcome(ctx, g, items, input, said) : "done");
  const work: RecordWork = {
    ...{ do: "record work", bike: g.bike.id, items, words, on: on.value, odometer: odometer.value ?? dialOfDay(g, on.value), how: "did it", gaps: [] },
    ...(input.doneBy === undefined ? await foundWrong(q, ctx, g, items, inWords, input.outcome, outcomeOf()) : { outcome: input.outcome ?? outcomeOf() }),
    ...(note === "" ? {} : { note }),
    ...values,
    ...(input.doneBy === undefined && input.outcome === undefined ? { usual: true } : {}),
    ...(input.doneBy === undefined ? {} : { detail: { ...NO_DETAIL, by: input.doneBy, cost } }),
  };
  const asked: RecordWork = isFarBeside(g, odometer.value, on.value) ? { ...work, gaps: [...work.gaps, { need: "sure", because: "implausible jump" }] } : work;
  const intents: readonly Intent[] = [asked, ...readings];
  const outcome = await settle(q, ctx, all, intents, { source: ctx.event, typed: words, message: null });
  const after = pick(await ownGarage(q, ctx), g.bike.id);
  if (after === null) return refused({ why: "gone" });
  const again = outcome.is !== "logged" ? [] : items.flatMap((item) => againOf(ctx, g, job, item));
  return done({ outcome, job: shownOf(ctx, after, job), again });
}

/** An item that was ticked already. */
function againOf(ctx: Ctx, g: Garaged, job: Job, item: ItemKey): JobWorked["again"] {
  const before = recordsIn(g, job, item).at(-1);
  if (before === undefined) return [];
  const alone = before.items.length === 1 && g.work.every(({ id, message }) => id === before.id || message !== before.message);
  return [{ name: nameOf(ctx, g, item), source: alone ? before.message : null }];
}

async function changing(
  ctx: Ctx,
  id: string,
  from: readonly Job["state"][],
  to: (job: Job) => Pick<Job, "state" | "endedAt" | "note">,
): Promise<Result<JobShown>> {
  return acting(ctx, async (q, all) => {
    const found = await jobOf(q, all, { job: id });
    if (found.is === "refused") return found;
    const { g, job } = found.value;
    if (!from.includes(job.state)) return refused({ why: "already done" });
    const other = (await q.jobs.openOf([job.bike])).find((each) => each.id !== job.id);
    const next: Job = { ...job, ...to(job), rev: job.rev + 1 };
    if (next.state === "open" && other !== undefined) return refused({ why: "job open" });
    if (!(await q.jobs.change(next))) throw new Conflict("job changed meanwhile");
    return done(shownOf(ctx, g, next));
  });
}

async function acting<T>(ctx: Ctx, work: (q: Repos, all: readonly Garaged[]) => Promise<Result<T>>): Promise<Result<T>> {
  return onceHeard(await ctx.store.act(ctx.event, ctx.now, async (q) => work(q, await ownGarage(q, ctx))));
}

async function jobOf(q: Repos, all: readonly Garaged[], input: { readonly job?: string; readonly bike?: string }): Promise<Result<{ g: Garaged; job: Job }>> {
  if (input.job !== undefined) {
    const job = await q.jobs.byId(input.job);
    if (job === null) return refused({ why: "gone" });
    const g = pick(all, job.bike);
    return g === null ? refused({ why: "not yours" }) : done({ g, job });
  }
  const named = input.bike === undefined ? null : whichBike(all, input.bike);
  if (named?.is === "refused") return named;
  const bikes = named === null ? all.map((g) => g.bike.id) : [named.value.bike.id];
  const open = await q.jobs.openOf(bikes);
  const [only] = open;
  if (only === undefined) return refused({ why: "no job" });
  if (open.length > 1) return refused({ why: "which bike", bikes: open.map((job) => pick(all, job.bike)?.bike.nickname ?? job.bike) });
  const g = pick(all, only.bike);
  return g === null ? refused({ why: "gone" }) : done({ g, job: only });
}

const nameOf = (ctx: Pick<Ctx, "itemName">, g: Garaged, key: ItemKey): string => ctx.itemName(key, itemOf(g, key)?.called ?? null);

/** A job as it stands: what the records since it began say of each item. */
export function shownOf(ctx: Pick<Ctx, "itemName">, g: Garaged, job: Job): JobShown {
  const { dues: _dues, first: _first, ...bike } = dueBike(ctx, g);
  const lines = job.items.map(({ item, called, evening }): JobLine => {
    const plan = itemOf(g, item);
    return {
      ...{ item, name: called, evening, action: plan?.action ?? null, engine: plan?.engine ?? "any", caution: plan?.caution ?? null },
      gone: plan === null,
      ticked: tickedOf(g, job, item),
    };
  });
  const open = lines.filter((line) => !line.gone && line.ticked === null);
  const next = open[0];
  const ranToday = lines.some((line) => line.engine === "warm" && line.ticked?.on === g.today);
  return {
    ...{ job: job.id, rev: job.rev, state: job.state, bike, mark: job.mark, begunOn: job.begunOn, note: job.note, lines },
    evening: next?.evening ?? lines.at(-1)?.evening ?? 1,
    evenings: lines.at(-1)?.evening ?? 1,
    stops: stopsOf(g),
    standOvernight: ranToday && next?.engine === "cold",
  };
}
