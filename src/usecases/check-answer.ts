// Answering the points of a check. Every answer is one transaction, once per event; the next point without an answer comes up.
// A press on an old card overwrites nothing: what was answered since is shown instead.

import type { FaultGrade, Measure } from "../core/check/checklist.ts";
import type { CheckAnswer } from "../core/check/result.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { kindRow } from "../core/reading/kinds.ts";
import { isQuantity } from "../core/reading/value.ts";
import { readDial } from "../message/read-dial.ts";
import type { CheckRun, PointAnswer } from "../store/checks.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { nextPoint } from "./check-begin.ts";
import { followFault } from "./check-faults.ts";
import { type CheckShown, checkShown, type PointShown } from "./check-view.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, pick } from "./garage.ts";
import { settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

/** A run and what came of the last input to it; `logged` where figures were read, which may be a question. */
export type CheckStep = CheckShown & {
  readonly logged: MessageOutcome | null;
  /** Pressed on an older card: nothing was changed. */
  readonly stale?: true;
};

type Opened = { readonly q: Repos; readonly run: CheckRun; readonly g: Garaged | null; readonly all: readonly Garaged[]; readonly shown: CheckShown };

/** A run as it stands, for its owner. */
export async function showCheck(ctx: Ctx, input: { readonly check: string }): Promise<Result<CheckStep>> {
  return ctx.store.read(async (q) => {
    const opened = await openedRun(q, ctx, input.check);
    return opened.is === "refused" ? opened : done({ ...opened.value.shown, logged: null });
  });
}

/** Moves to a point, or to the first open one of a section. */
export async function goTo(ctx: Ctx, input: { readonly check: string; readonly n?: number; readonly section?: number }): Promise<Result<CheckStep>> {
  return withRun(ctx, input.check, async ({ q, run, shown }) => {
    const section = input.section === undefined ? null : (shown.sections[input.section] ?? null);
    const point = section === null ? pointAt(shown, input.n ?? -1) : (section.points.find(({ answer }) => answer === null) ?? section.points[0] ?? null);
    if (point === null) return refused({ why: "gone" });
    await moved(q, ctx, run, point.key);
    return done(null);
  });
}

export type Answering = {
  readonly check: string;
  readonly rev: number;
  /** Points by their place in the run; several can be good at once. */
  readonly n: readonly number[];
  readonly answer: CheckAnswer;
  readonly grade?: FaultGrade;
  readonly note?: string;
  readonly link?: string;
};

/** Answers points. */
export async function answerPoints(ctx: Ctx, input: Answering): Promise<Result<CheckStep>> {
  return withRun(ctx, input.check, async ({ q, run, g, shown }) => {
    // A plan line records a job as done: it is answered by itself, never among several.
    const points = input.n.map((n) => pointAt(shown, n)).filter((point) => point !== null && (input.n.length === 1 || point.item === null)) as PointShown[];
    if (points.length === 0) return refused({ why: "gone" });
    if (input.answer === "not fitted" && points.some(({ everybodys }) => everybodys)) return refused({ why: "check", because: "every bike has it" });
    const link = linkTyped(input.link);
    if (link.is === "refused") return link;
    // What was answered after this card was drawn stands.
    const fresh = points.filter(({ answer }) => run.rev === input.rev || answer === null);
    const held = await saidSoFar(q, run);
    for (const point of fresh) {
      const before = held.get(point.key);
      const next: PointAnswer = {
        ...blank(ctx, point.key),
        ...before,
        ...{ answer: input.answer, grade: input.answer === "needs work" ? (input.grade ?? point.onFail) : null, by: ctx.who.member, at: ctx.now },
        ...(input.note === undefined || input.note.trim() === "" ? {} : { note: input.note.trim() }),
        ...(link.value === null ? {} : { link: link.value }),
      };
      await q.checks.put(run.id, g === null ? next : { ...next, defect: await followFault(q, ctx, run, g, next) });
    }
    if (fresh.length > 0) await moved(q, ctx, run, nextPoint(answered(shown, fresh, input.answer), fresh.at(-1)?.key ?? null));
    return done(null);
  });
}

/** Keeps a note or a link at a point, without answering it. */
export async function notePoint(
  ctx: Ctx,
  input: { readonly check: string; readonly n: number; readonly note: string; readonly link: string },
): Promise<Result<CheckStep>> {
  return withRun(ctx, input.check, async ({ q, run, shown }) => {
    const point = pointAt(shown, input.n);
    if (point === null) return refused({ why: "gone" });
    const link = linkTyped(input.link);
    if (link.is === "refused") return link;
    const before = (await saidSoFar(q, run)).get(point.key) ?? blank(ctx, point.key);
    await q.checks.put(run.id, { ...before, note: input.note.trim() || null, link: link.value, by: ctx.who.member, at: ctx.now });
    await moved(q, ctx, run, point.key);
    return done(null);
  });
}

/** Logs what was read at a point. One that is read whole is answered by it. */
export async function measurePoint(
  ctx: Ctx,
  input: { readonly check: string; readonly n: number; readonly figures: readonly string[] },
): Promise<Result<CheckStep>> {
  return withRun(ctx, input.check, async ({ q, run, shown, g, all }) => {
    const point = pointAt(shown, input.n);
    if (point === null || point.measures.length === 0) return refused({ why: "gone" });
    const given = point.measures.flatMap((measure, at) => {
      const typed = input.figures[at]?.trim() ?? "";
      return typed === "" ? [] : [{ measure, typed }];
    });
    const read = given.map(({ measure, typed }) => readingTyped(ctx, g, all, measure, typed));
    const wrong = read.indexOf(null);
    if (wrong >= 0 || given.length === 0) return refused({ why: "check", because: "not a figure", typed: given[wrong]?.typed ?? "" });
    const intents = read.filter((each) => each !== null);
    if (g === null) {
      const before = (await saidSoFar(q, run)).get(point.key) ?? blank(ctx, point.key);
      const figures = given.map(({ measure, typed }) => [measure.place, typed].filter((part) => part !== null).join(" ")).join(", ");
      await q.checks.put(run.id, { ...before, figures, by: ctx.who.member, at: ctx.now });
      await moved(q, ctx, run, point.key);
      return done(null);
    }
    const typed = given.map(({ typed: each }) => each).join(", ");
    const logged = await settle(q, ctx, all, intents, { source: ctx.event, typed, message: null });
    // The bike anew: what was just read is judged with it.
    const after = await openedRun(q, ctx, run.id);
    if (after.is === "refused") return after;
    const isAnswered = pointAt(after.value.shown, input.n)?.answer !== null;
    await moved(q, ctx, run, isAnswered ? nextPoint(after.value.shown, point.key) : point.key);
    return done(logged);
  });
}

/** A figure of a form, as the intent that a message would come to; null when it is none. A unit that is missing is asked for. */
function readingTyped(ctx: Ctx, g: Garaged | null, all: readonly Garaged[], { kind, place }: Measure, text: string): LogReading | null {
  const bare = { do: "log reading", bike: g?.bike.id ?? null, kind, place, on: todayOf(ctx) } as const;
  if (kind === "odometer") {
    const dial = readDial(text, knownOf(ctx, all), g?.unit ?? ctx.who.distance ?? "mi");
    return dial === null ? null : { ...bare, value: dial.value, unit: dial.unit, typed: { text, unit: dial.unit }, gaps: [] };
  }
  const row = kindRow(kind);
  const amount = parseAmount(text, ctx.vocabulary.units, ctx.who.numbers);
  const units = row.units.filter(isQuantity);
  const named = amount.is === "amount" ? amount.unit : null;
  if (amount.is !== "amount" || amount.rest !== "" || amount.from !== amount.to) return null;
  if (named !== null && dimensionOf(named) !== row.dimension) return null;
  const own = kind === "cold pressure" ? ctx.who.pressure : kind === "tread" ? ctx.who.depth : null;
  const usual = units.filter((unit) => {
    const range = row.usual[unit];
    return range !== undefined && amount.from >= range[0] && amount.from <= range[1];
  });
  const unit = named ?? own ?? (usual.length === 1 ? (usual[0] ?? null) : null);
  const gaps: Gap[] = unit === null ? [{ need: "unit", options: usual.length > 1 ? usual : units }] : [];
  return { ...bare, value: amount.from, unit, typed: { text, unit: named }, gaps };
}

const LINK = /^https:\/\/\S{4,500}$/u;

function linkTyped(typed: string | undefined): Result<string | null> {
  const link = typed?.trim() ?? "";
  return link === "" ? done(null) : LINK.test(link) ? done(link) : refused({ why: "check", because: "not a link", typed: link });
}

/** The run as it will be, to find where to go on. */
const answered = (shown: CheckShown, points: readonly PointShown[], answer: CheckAnswer): CheckShown => ({
  ...shown,
  sections: shown.sections.map((section) => ({
    ...section,
    points: section.points.map((point) => (points.some(({ key }) => key === point.key) ? { ...point, answer } : point)),
  })),
});

const pointAt = (shown: CheckShown, n: number): PointShown | null => shown.sections.flatMap((section) => section.points)[n] ?? null;

const saidSoFar = async (q: Repos, run: CheckRun): Promise<ReadonlyMap<string, PointAnswer>> =>
  new Map((await q.checks.answersOf(run.id)).map((answer) => [answer.point, answer]));

const blank = (ctx: Ctx, point: string): PointAnswer => ({
  ...{ point, answer: null, grade: null, note: null, link: null, figures: null, defect: null },
  ...{ by: ctx.who.member, at: ctx.now },
});

/** @throws Conflict when another write came first */
export async function moved(q: Repos, ctx: Ctx, run: CheckRun, atPoint: string | null, more: Partial<CheckRun> = {}): Promise<void> {
  if (!(await q.checks.change({ ...run, atPoint, ...more, rev: run.rev + 1, at: ctx.now }))) throw new Conflict("check changed meanwhile");
}

/** A run of the speaker's with its bike. */
export async function openedRun(q: Repos, ctx: Ctx, id: string): Promise<Result<Opened>> {
  const run = await q.checks.byId(id);
  if (run === null) return refused({ why: "gone" });
  if (run.owner !== ctx.who.member) return refused({ why: "not yours" });
  const all = await ownGarage(q, ctx);
  const g = run.bike === null ? null : pick(all, run.bike);
  if (run.bike !== null && g === null) return refused({ why: "gone" });
  return done({ q, run, g, all, shown: await checkShown(q, ctx, run, g) });
}

/** Works on an open run; one that is finished is shown as it is. What the work answers are figures logged, or null. */
async function withRun(ctx: Ctx, id: string, work: (opened: Opened) => Promise<Result<MessageOutcome | null>>): Promise<Result<CheckStep>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<CheckStep>> => {
    const opened = await openedRun(q, ctx, id);
    if (opened.is === "refused") return opened;
    if (opened.value.run.state !== "open") return done({ ...opened.value.shown, logged: null });
    const worked = await work(opened.value);
    if (worked.is === "refused") return worked;
    const after = await openedRun(q, ctx, id);
    return after.is === "refused" ? after : done({ ...after.value.shown, logged: worked.value });
  });
  return onceHeard(acted);
}
