// Beginning a check, or going on with the one that is open: which points this bike gets today.

import { daysBetween } from "../core/calendar/arithmetic.ts";
import { CHECKLISTS, type ChecklistName } from "../core/check/checklist.ts";
import { nextOpen } from "../core/check/result.ts";
import { type Before, type Today, tailored, type Wanting } from "../core/check/tailor.ts";
import { isFitted } from "../core/equipment.ts";
import type { System } from "../core/plan/plan.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import { dimensionOf, toCanonical } from "../core/quantity/units.ts";
import { doTheseFirst } from "../core/schedule/do-these-first.ts";
import type { CheckRun, PointAnswer } from "../store/checks.ts";
import type { Repos } from "../store/store.ts";
import { LISTS } from "../trade/checklists/index.ts";
import { POINTS } from "../trade/checklists/points.ts";
import { KINDS, type KindId } from "../trade/kinds.ts";
import { type CheckShown, checkShown, rowOf } from "./check-view.ts";
import { type Ctx, todayOf } from "./context.ts";
import { duesOf, type Garaged, itemOf } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type BeginInput = {
  readonly list: ChecklistName;
  readonly bike?: string;
  /** Of a bike that is looked at before it is bought. */
  readonly kind?: KindId;
  /** The coldest night that it stood through, as typed. */
  readonly coldest?: string;
};

/** Begins a list on a bike; one that is open there is gone on with. */
export async function beginCheck(ctx: Ctx, input: BeginInput): Promise<Result<CheckShown>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<CheckShown>> => {
    const coldest = coldestTyped(ctx, input.coldest);
    if (coldest.is === "refused") return coldest;
    const all = await ownGarage(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return input.list === "buying used" ? beginOnStranger(q, ctx, input) : which;
    const g = which.value;
    const open = (await q.checks.openOf(ctx.who.member)).find((run) => run.bike === g.bike.id && run.list === input.list);
    if (open !== undefined) return done(await checkShown(q, ctx, open, g));
    const today = await todayOn(q, g, input.list, coldest.value);
    return begun(q, ctx, { bike: g.bike.id, called: g.bike.nickname, list: input.list }, today, g);
  });
  return onceHeard(acted);
}

/** A bike that is not the member's yet: known by the name typed and its kind. */
async function beginOnStranger(q: Repos, ctx: Ctx, { list, bike, kind }: BeginInput): Promise<Result<CheckShown>> {
  const called = bike?.normalize("NFKC").trim().replace(/\s+/gu, " ").slice(0, 32) ?? "";
  const open = (await q.checks.openOf(ctx.who.member)).find((run) => run.bike === null && run.list === list && run.called === called);
  if (open !== undefined) return done(await checkShown(q, ctx, open, null));
  if (kind === undefined || called === "") return refused({ why: "check", because: "whose bike" });
  const { equipment } = KINDS[kind];
  const today: Today = { equipment, planHas: new Set(), stoodDays: 0, coldest: null, wanting: [], before: new Map() };
  return begun(q, ctx, { bike: null, called, list }, today, null);
}

async function begun(q: Repos, ctx: Ctx, of: Pick<CheckRun, "bike" | "called" | "list">, today: Today, g: Garaged | null): Promise<Result<CheckShown>> {
  const sections = tailored(LISTS[of.list], POINTS, today);
  const run: CheckRun = {
    ...of,
    id: ctx.newId(),
    owner: ctx.who.member,
    sections,
    state: "open",
    atPoint: sections[0]?.points[0]?.key ?? null,
    begunOn: todayOf(ctx),
    begunAt: ctx.now,
    finishedOn: null,
    source: null,
    rev: 1,
    at: ctx.now,
  };
  await q.checks.add(run);
  return done(await checkShown(q, ctx, run, g));
}

/** Who is asked about nothing: to walk on to when a point is answered. */
export const nextPoint = (shown: CheckShown, after: string | null): string | null =>
  nextOpen(
    shown.sections.flatMap((section) => section.points),
    after,
  );

async function todayOn(q: Repos, g: Garaged, list: ChecklistName, coldest: number | null): Promise<Today> {
  const stoodDays = stoodOf(g, list);
  return {
    equipment: g.bike.equipment,
    planHas: new Set(g.plan.items.map((item) => item.key)),
    stoodDays,
    coldest: coldest ?? (await coldestRead(q, g)),
    wanting: wantingOf(g, list),
    before: await beforeOf(q, g, list),
  };
}

/** The least that a list out of storage takes for granted. */
const STORED = 30;
/** A lay-up that ended so few days ago is the one that a list out of storage is about. */
const JUST_ENDED = 21;

/** Days that the bike has stood: as its lay-up says. Out of storage it stood a month at least, whatever was noted. */
function stoodOf(g: Garaged, list: ChecklistName): number {
  const last = g.layUps.at(-1);
  const stood = last === undefined || (last.to !== null && daysBetween(last.to, g.today) > JUST_ENDED) ? 0 : daysBetween(last.from, last.to ?? g.today);
  return list === "out of storage" ? Math.max(stood, STORED) : stood;
}

/** The coldest air that was read since the bike was put away; null when none was. */
async function coldestRead(q: Repos, g: Garaged): Promise<number | null> {
  const since = g.layUps.at(-1)?.from;
  if (since === undefined) return null;
  const read = (await q.readings.recent(g.bike.id, 200)).filter(({ kind, on, value }) => kind === "ambient temperature" && on >= since && value !== null);
  return read.length === 0 ? null : Math.min(...read.map(({ value }) => value ?? 0));
}

function coldestTyped(ctx: Ctx, typed: string | undefined): Result<number | null> {
  if (typed === undefined || typed.trim() === "") return done(null);
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is !== "amount" || amount.unit === null || dimensionOf(amount.unit) !== "temperature" || amount.rest !== "")
    return refused({ why: "check", because: "not a temperature", typed });
  return done(toCanonical(Math.min(amount.from, amount.to), amount.unit));
}

const MOST_WANTING = 12;
/** Before a ride and after a fall only what stops, steers and carries is brought up; there is time for the rest at other checks. */
const AT_ONCE: readonly System[] = ["brakes", "wheels and tyres", "steering and suspension"];

/** Plan lines that join a list: what is due, what comes up where there is time for it, and the first of those with no record. */
function wantingOf(g: Garaged, list: ChecklistName): readonly Wanting[] {
  if (list === "buying used") return [];
  const short = list === "pre-ride" || list === "after a fall";
  const dues = duesOf(g);
  const first = new Set(short ? [] : doTheseFirst(dues, g.plan));
  return dues
    .flatMap(({ item: key, status, habit }): Wanting[] => {
      const item = itemOf(g, key);
      if (item === null || habit || status === "good" || !isFitted(item.fits, g.bike.equipment)) return [];
      if (status === "no record" ? !first.has(key) : status === "soon" && short) return [];
      return short && !AT_ONCE.includes(item.system) ? [] : [{ item, status }];
    })
    .slice(0, MOST_WANTING);
}

/** What the last check found, and what lay-up left to be undone. */
async function beforeOf(q: Repos, g: Garaged, list: ChecklistName): Promise<ReadonlyMap<string, Before>> {
  const before = new Map<string, Before>();
  const last = await q.checks.lastOf(g.bike.id);
  if (last !== null)
    for (const { point, answer, note } of await q.checks.answersOf(last.id))
      if (answer === "needs work") before.set(point, { list: last.list, on: last.finishedOn ?? last.begunOn, found: "needs work", note });
  if (list !== "out of storage") return before;
  const [away, out] = [await q.checks.lastOf(g.bike.id, "lay-up"), await q.checks.lastOf(g.bike.id, "out of storage")];
  if (away === null || (out !== null && out.at > away.at)) return before;
  const said = new Map((await q.checks.answersOf(away.id)).map((answer): [string, PointAnswer] => [answer.point, answer]));
  for (const key of Object.keys(POINTS)) {
    const { undoes } = rowOf(key);
    const answer = undoes === null ? undefined : said.get(undoes);
    if (answer?.answer === "good") before.set(key, { list: away.list, on: away.finishedOn ?? away.begunOn, found: "done", note: answer.note });
  }
  return before;
}

/** Is that the name of a list? */
export const listNamed = (typed: string): ChecklistName | null => CHECKLISTS.find((name) => name === typed) ?? null;
