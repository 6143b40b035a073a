// Finishing a check: what was good is recorded into the plan, in one transaction that can be undone; opening it again takes that back.

import type { ChecklistName } from "../core/check/checklist.ts";
import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import { TENTHS_OF_MM } from "../core/quantity/distance.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import type { CheckRun } from "../store/checks.ts";
import type { Repos } from "../store/store.ts";
import { type CheckStep, moved, openedRun } from "./check-answer.ts";
import { nextPoint } from "./check-begin.ts";
import { type CheckShown, checkShown, rowOf } from "./check-view.ts";
import { type Ctx, todayOf } from "./context.ts";
import { withdrawAll } from "./corrections.ts";
import { figureOfLast, type Garaged, itemOf, pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { save, touch } from "./settle.ts";
import { whichBike } from "./which-bike.ts";

/** Finishes a run, with whatever is open listed as left. One in which nothing was answered is only put away. @param input.rev the run as the card pressed showed it */
export async function finishCheck(ctx: Ctx, input: { readonly check: string; readonly rev: number }): Promise<Result<CheckStep>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<CheckStep>> => {
    const opened = await openedRun(q, ctx, input.check);
    if (opened.is === "refused") return opened;
    const { run, g, all, shown } = opened.value;
    if (run.state !== "open" || run.rev !== input.rev) return done({ ...shown, logged: null, stale: true });
    const touched = shown.sections.some((section) => section.points.some(({ answer, note, figures }) => answer !== null || note !== null || figures !== null));
    const intents = g === null || !touched ? [] : recordsOf(ctx, shown, g);
    if (intents.length > 0) await save(q, ctx, intents, all, ctx.event);
    await moved(q, ctx, run, run.atPoint, { state: touched ? "finished" : "left", finishedOn: todayOf(ctx), source: ctx.event });
    return again(q, ctx, run.id);
  });
  return onceHeard(acted);
}

/** Opens a finished run again: what it recorded no longer counts, what was answered stays. */
export async function reopenCheck(ctx: Ctx, input: { readonly check: string; readonly rev: number }): Promise<Result<CheckStep>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<CheckStep>> => {
    const opened = await openedRun(q, ctx, input.check);
    if (opened.is === "refused") return opened;
    const { run, shown } = opened.value;
    if (run.state === "open" || run.rev !== input.rev) return done({ ...shown, logged: null, stale: true });
    const work = run.source === null ? [] : await q.work.ofMessage(run.source);
    if (work.length > 0) {
      await withdrawAll(q, ctx, { readings: [], work, defects: [] }, "check opened again");
      await touch(q, ctx, [...new Set(work.map((record) => record.bike))]);
    }
    await moved(q, ctx, run, nextPoint(shown, null), { state: "open", finishedOn: null, source: null });
    return again(q, ctx, run.id);
  });
  return onceHeard(acted);
}

async function again(q: Repos, ctx: Ctx, id: string): Promise<Result<CheckStep>> {
  const after = await openedRun(q, ctx, id);
  return after.is === "refused" ? after : done({ ...after.value.shown, logged: null });
}

/** The work that good answers come to, one record for each outcome, with today's odometer where it was read. */
function recordsOf(ctx: Ctx, shown: CheckShown, g: Garaged): RecordWork[] {
  const byOutcome = new Map<Outcome, Set<ItemKey>>();
  const add = (item: ItemKey, outcome: Outcome): void => void byOutcome.set(outcome, (byOutcome.get(outcome) ?? new Set()).add(item));
  for (const point of shown.sections.flatMap((section) => section.points)) {
    // What a reading does it does by itself; that something was read is no judgement.
    if (point.answer !== "good" || point.byReading) continue;
    const line = point.item === null ? null : itemOf(g, point.item);
    if (line !== null) add(line.key, OUTCOME_OF[line.action]);
    for (const { item, outcome } of rowOf(point.key).records) if (itemOf(g, item) !== null) add(item, outcome);
  }
  const on = todayOf(ctx);
  const figure = g.track.points.at(-1)?.on === on ? figureOfLast(g) : null;
  const typed = figure === null ? null : String(Math.round(figure * TENTHS_OF_MM[g.unit]) / TENTHS_OF_MM[g.unit]);
  return [...byOutcome].map(([outcome, items]) => ({
    do: "record work",
    bike: g.bike.id,
    items: [...items],
    words: shown.list,
    on: { from: on, to: on, typed: "" },
    odometer: figure === null || typed === null ? null : { value: figure, unit: g.unit, typed: { text: typed, unit: g.unit } },
    outcome,
    how: "did it",
    gaps: [],
  }));
}

const LOOKED: Outcome = "inspected, within limits";
/** What "done" means for a plan line that joined the list. */
const OUTCOME_OF: Readonly<Record<WorkAction, Outcome>> = {
  ...{ inspect: LOOKED, measure: LOOKED, test: LOOKED, "check tightness": LOOKED },
  ...{ adjust: "adjusted", replace: "replaced", clean: "done", lubricate: "done", "top up": "done", bleed: "done" },
};

/** What there is to go on with or to look at again, and what can be begun. */
export type CheckMenu = {
  readonly open: readonly CheckShown[];
  readonly finished: readonly CheckShown[];
  readonly bikes: readonly { readonly bike: string; readonly nickname: string; readonly laidUp: boolean }[];
};

/** A member's own bikes before a list. */
export type CheckMine = { readonly list: ChecklistName; readonly bikes: CheckMenu["bikes"] };

/** The speaker's bikes that a list is for: what is laid up is brought out, what is ridden is put away. */
export async function myBikesFor(ctx: Ctx, list: ChecklistName): Promise<Result<CheckMine>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const wanted = list === "out of storage" ? "laid up" : "riding";
    // Who never says when a bike is put away checks it all the same.
    const fitting = all.filter(({ bike }) => bike.state === wanted);
    return done({ list, bikes: (fitting.length === 0 ? all : fitting).map(onMenu) });
  });
}

const onMenu = ({ bike }: Garaged): CheckMenu["bikes"][number] => ({ bike: bike.id, nickname: bike.nickname, laidUp: bike.state === "laid up" });

const MOST = 5;

export async function checkMenu(ctx: Ctx): Promise<Result<CheckMenu>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    const still = (run: CheckRun): boolean => run.bike === null || pick(all, run.bike) !== null;
    const shown = async (runs: readonly CheckRun[]): Promise<CheckShown[]> => {
      const found: CheckShown[] = [];
      for (const run of runs.filter(still).slice(0, MOST)) found.push(await checkShown(q, ctx, run, run.bike === null ? null : pick(all, run.bike)));
      return found;
    };
    return done({
      open: await shown(await q.checks.openOf(ctx.who.member)),
      finished: await shown(await q.checks.finishedOf(ctx.who.member, MOST)),
      bikes: all.map(onMenu),
    });
  });
}

/** The last finished check of a bike. */
export async function lastCheck(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<CheckStep>> {
  return ctx.store.read(async (q): Promise<Result<CheckStep>> => {
    const all = await ownGarage(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const run = await q.checks.lastOf(which.value.bike.id);
    if (run === null) return refused({ why: "check", because: "none finished" });
    return done({ ...(await checkShown(q, ctx, run, which.value)), logged: null });
  });
}
