// When and how often a plan line comes round, changed by the bike's owner: shown beside what is, and saved only when said so.

import type { Bike } from "../core/bike.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { isSameTrigger } from "../core/plan/compare.ts";
import { fold } from "../core/plan/fold.ts";
import type { Condition, Interval, PlanEdit, PlanItem, Repeat } from "../core/plan/plan.ts";
import { twiceAsOften } from "../core/plan/sooner.ts";
import { columnsIn, isTornApart } from "../core/plan/two-units.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import type { Refusal } from "../core/refusal.ts";
import { firstMarks } from "../core/schedule/marks.ts";
import { readMarks } from "../message/read-marks.ts";
import { type ReadRepeat, readRepeat } from "../message/read-repeat.ts";
import type { Repos } from "../store/store.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import { type DueBike, type DueLine, dueBike } from "./due.ts";
import { editPlan } from "./edit-plan.ts";
import { type Garaged, garagedOf, pick } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { itemsNamed, nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

/** Where what follows listed services is counted from; an interval by itself goes from zero, by the marks of the odometer, or from the last time it was done. */
export const COUNTED_FROM = ["zero", "the last one listed", "the last time"] as const;

/** What can be changed of a line. */
type Trigger = Pick<PlanItem, "repeat" | "first" | "anchor" | "shortened">;

/** A line under one trigger: its first marks, where it goes by marks, and how it stands. */
export type Under = Trigger & { readonly marks: readonly Ridden[]; readonly due: DueLine };
export type IntervalChange = {
  readonly bike: Omit<DueBike, "dues" | "first">;
  readonly column: DistanceUnit;
  readonly item: ItemKey;
  readonly name: string;
  readonly was: Under;
  readonly will: Under;
  /** The change as it was shown, by which it is saved; null once it is. */
  readonly draft: string | null;
  readonly why: string | null;
  /** Counts the changes of the plan: a change is saved only on the plan that it was shown with. */
  readonly rev: number;
  readonly saved: boolean;
};

export type ChangeInput = {
  readonly bike?: string;
  readonly item: string;
  readonly every?: string;
  /** Services listed; `every` then says what comes after them. */
  readonly marks?: string;
  readonly counted?: (typeof COUNTED_FROM)[number];
  /** A use that shortens it, to `every`; "never": it does not. */
  readonly when?: Condition;
  readonly why?: string;
};

/** A change as typed, beside what is in force. It is kept as shown, and nothing of the plan is changed by it. */
export async function proposeInterval(ctx: Ctx, input: ChangeInput): Promise<Result<IntervalChange>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<IntervalChange>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const named = itemsNamed(ctx, all, g, input.item);
    if (named.is === "refused") return named;
    const [key, ...others] = named.value;
    if (key === undefined || others.length > 0)
      return refused({ why: "which item", typed: input.item, items: named.value.map((each) => nameIn(ctx, g, each)) });
    const item = g.plan.items.find((each) => each.key === key);
    if (item === undefined) return refused({ why: "gone" });
    const typed = triggerTyped(ctx, all, g, item, input);
    if (typed.is === "refused") return typed;
    const torn = tornApart(item, typed.value);
    if (torn !== null) return refused(torn);
    const said = [input.marks, input.every, input.when].filter((each) => each !== undefined).join("; ");
    return proposed(q, ctx, g, item, typed.value, said, input.why?.trim() || null);
  });
  return onceHeard(acted);
}

/** A distance that was typed in two units that are not the same; what stood before is not asked about. */
function tornApart(item: PlanItem, typed: Trigger): Refusal | null {
  const before = columnsIn(item);
  const torn = columnsIn(typed).find((each) => isTornApart(each) && !before.some(({ miles, km }) => miles === each.miles && km === each.km));
  return torn === undefined ? null : { why: "two distances", miles: torn.miles ?? 0, km: torn.km ?? 0 };
}

/** A line of the plan twice as often as it is, shown before it is saved: a value near the end at which it gets worse calls for an earlier look. */
export async function proposeSooner(ctx: Ctx, input: { readonly bike: BikeId; readonly item: ItemKey }): Promise<Result<IntervalChange>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<IntervalChange>> => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    const item = g?.plan.items.find(({ key }) => key === input.item);
    const repeat = item === undefined ? null : twiceAsOften(item.repeat);
    if (g === undefined || g === null || item === undefined || repeat === null) return refused({ why: "gone" });
    return proposed(q, ctx, g, item, { ...item, repeat }, "", null);
  });
  return onceHeard(acted);
}

/** Keeps a change as it is shown. @param said as typed; empty where it was pressed */
async function proposed(q: Repos, ctx: Ctx, g: Garaged, item: PlanItem, trigger: Trigger, said: string, why: string | null): Promise<Result<IntervalChange>> {
  const shown = changed(ctx, g, item.key, trigger);
  if (shown.is === "refused") return shown;
  await keepMember(q, ctx);
  const draft = ctx.newId();
  const { member: owner, group, channel } = ctx.who;
  await q.planChanges.add({ id: draft, owner, group, channel, typed: said, bike: g.bike.id, edit: editOf(item, trigger), why, at: ctx.now });
  return done({ ...shown.value, draft, why });
}

/** Only what is changed is said: the rest goes on following the plan beneath. */
function editOf(item: PlanItem, { repeat, first, anchor, shortened }: Trigger): Extract<PlanEdit, { change: "interval" }> {
  const differs = (a: unknown, b: unknown): boolean => JSON.stringify(a) !== JSON.stringify(b);
  return {
    ...{ change: "interval", item: item.key, repeat },
    ...(differs(first, item.first) ? { first } : {}),
    ...(anchor === item.anchor ? {} : { anchor }),
    ...(differs(shortened, item.shortened) ? { shortened } : {}),
  };
}

function triggerTyped(ctx: Ctx, all: readonly Garaged[], g: Garaged, item: PlanItem, input: ChangeInput): Result<Trigger> {
  const { every, marks, counted, when } = input;
  const { repeat, first, anchor, shortened } = item;
  const known = knownOf(ctx, all);
  if (marks !== undefined && when !== undefined) return refused({ why: "plan change", because: "marks and use", typed: marks });
  if (every === undefined && marks === undefined) return refused({ why: "plan change", because: "nothing said", typed: "" });
  const never = when !== undefined && every?.trim().toLowerCase() === NEVER;
  const read = every === undefined || never ? null : readRepeat(every, known);
  if (every !== undefined && read === null && !never) return refused({ why: "not an interval", typed: every });
  // Under a use, and after a list, there is room for an interval alone.
  const interval = read?.by === "interval" && read.first === undefined && !read.fromLast ? read.every : null;
  if (read !== null && interval === null && (when !== undefined || marks !== undefined)) return refused({ why: "not an interval", typed: every ?? "" });
  if (when !== undefined) {
    if (repeat.by !== "interval") return refused({ why: "plan change", because: "no interval", typed: when });
    const { [when]: _before, ...rest } = shortened;
    return done({ repeat, first, anchor, shortened: interval === null ? rest : { ...rest, [when]: interval } });
  }
  if (marks === undefined)
    return read === null ? refused({ why: "plan change", because: "nothing said", typed: "" }) : repeating(ctx, all, g, item, read, counted);
  const at = readMarks(marks, known, g.bike.column);
  if (at === null) return refused({ why: "plan change", because: "no marks", typed: marks });
  const far = interval !== null && (interval.miles !== null || interval.km !== null);
  if (counted === "the last time" || (far && counted === undefined)) return refused({ why: "plan change", because: "counted from", typed: marks });
  // The list says itself what is done while running in.
  return done({
    repeat: { by: "mark list", at, thenEvery: interval, thenFrom: counted === "zero" ? "zero" : "last mark" },
    first: null,
    anchor: "marks",
    shortened,
  });
}

/** The trigger of an interval, of each so manieth service, or of each so manieth time that another item is done. */
function repeating(ctx: Ctx, all: readonly Garaged[], g: Garaged, item: PlanItem, read: ReadRepeat, counted: ChangeInput["counted"]): Result<Trigger> {
  const first = read.first === undefined ? item.first : read.first;
  const { shortened } = item;
  if (counted === "the last one listed") return refused({ why: "plan change", because: "no list", typed: counted });
  const fromLast = read.fromLast || counted === "the last time";
  const anchor = fromLast ? "last done" : counted === "zero" ? "marks" : item.anchor;
  switch (read.by) {
    case "interval":
      return done({ repeat: { by: "interval", every: read.every }, first, anchor, shortened });
    case "nth mark": {
      if (fromLast) return refused({ why: "plan change", because: "marks from last", typed: "" });
      const { miles, km, months } = read.base;
      return done({ repeat: { by: "nth mark", nth: read.nth, base: { miles, km }, months }, first, anchor: "marks", shortened });
    }
    case "nth time": {
      const named = itemsNamed(ctx, all, g, read.of);
      if (named.is === "refused") return named;
      const [of, ...others] = named.value;
      if (of === undefined || others.length > 0) return refused({ why: "which item", typed: read.of, items: named.value.map((each) => nameIn(ctx, g, each)) });
      if (of === item.key) return refused({ why: "plan change", because: "itself", typed: read.of });
      return done({ repeat: { by: "nth time", nth: read.nth, of, months: read.months }, first, anchor: "last done", shortened });
    }
  }
}

/** As an interval: it never shortens it. */
const NEVER = "never";

/** Saves a change that was shown. @param rev the plan that it was shown with */
export async function saveInterval(ctx: Ctx, input: { readonly draft: string; readonly rev: number }): Promise<Result<IntervalChange>> {
  const draft = await ctx.store.read((q) => q.planChanges.byId(input.draft));
  if (draft === null) return refused({ why: "gone" });
  if (draft.owner !== ctx.who.member) return refused({ why: "not yours" });
  return editPlan<IntervalChange>(
    ctx,
    draft.bike,
    input.rev,
    (g) => {
      const { item, repeat } = draft.edit;
      const line = g.plan.items.find((each) => each.key === item);
      const { first = line?.first ?? null, anchor = line?.anchor ?? "marks", shortened = line?.shortened ?? {} } = draft.edit;
      return saving(changed(ctx, g, item, { repeat, first, anchor, shortened }), input.rev, draft.edit, draft.why);
    },
    draft.why ?? undefined,
  );
}

/** Takes the last change of a plan back, by a change of its own: the record of both stays. */
export async function undoInterval(ctx: Ctx, input: { readonly bike: BikeId; readonly rev: number }): Promise<Result<IntervalChange>> {
  return editPlan<IntervalChange>(ctx, input.bike, input.rev, async (g, q) => {
    const last = g.bike.edits.at(-1)?.edit;
    if (last?.change !== "interval") return refused({ why: "gone" });
    const edits = g.bike.edits.slice(0, -1).map(({ edit }) => edit);
    const before = fold(await q.bikes.base(g.bike.planHash), edits).items.find((item) => item.key === last.item);
    if (before === undefined) return refused({ why: "gone" });
    const { repeat, first, anchor, shortened } = before;
    return saving(changed(ctx, g, last.item, before), input.rev, { change: "interval", item: last.item, repeat, first, anchor, shortened }, null);
  });
}

const saving = (change: Result<IntervalChange>, rev: number, edit: PlanEdit, why: string | null) =>
  change.is === "refused" ? change : done({ edits: [edit], value: { ...change.value, why, rev: rev + 1, saved: true } });

/** The bike as it is and as it would be. */
function changed(ctx: Ctx, g: Garaged, key: ItemKey, { repeat, first, anchor, shortened }: Trigger): Result<IntervalChange> {
  const item = g.plan.items.find((each) => each.key === key);
  if (item === undefined) return refused({ why: "gone" });
  const next: PlanItem = { ...item, repeat, first, anchor, shortened };
  if (isSameTrigger(item, next, g.bike.column)) return refused({ why: "already so", state: nameIn(ctx, g, key) });
  const items = g.plan.items.map((each) => (each.key === key ? next : each));
  const { epochs } = g.track;
  const then = garagedOf(g.bike, { ...g.plan, items }, { ...g, epochs }, g.today);
  const { dues: _dues, first: _first, ...bike } = dueBike(ctx, g);
  const [was, will] = [under(ctx, g, key), under(ctx, then, key)];
  if (was === null || will === null) return refused({ why: "gone" });
  return done({ bike, column: g.bike.column, item: key, name: nameIn(ctx, g, key), was, will, draft: null, why: null, rev: revOf(g.bike), saved: false });
}

const revOf = (bike: Bike): number => bike.edits.length;

function under(ctx: Ctx, g: Garaged, key: ItemKey): Under | null {
  const item = g.plan.items.find((each) => each.key === key);
  const due = dueBike(ctx, g).dues.find((each) => each.item === key);
  if (item === undefined || due === undefined) return null;
  const { repeat, first, anchor, shortened } = item;
  return { repeat, first, anchor, shortened, marks: item.anchor === "marks" ? firstMarks(item.repeat, g.bike.column) : [], due };
}

/** The interval by itself; null where it goes by services listed or counted. */
export const everyOf = (repeat: Repeat): Interval | null => (repeat.by === "interval" ? repeat.every : null);
