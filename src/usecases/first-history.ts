// "What was done last, and how do you know?", asked once for a bike just added. Vague answers are welcome; "don't know" is an answer too.

import type { Bike } from "../core/bike.ts";
import { isUndated } from "../core/calendar/arithmetic.ts";
import type { VagueDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type Dial, dialOf, figureIn, type Ridden, riddenOf } from "../core/quantity/distance.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import { dialAt, lastPoint } from "../core/usage/track.ts";
import { NO_DETAIL } from "../core/work-detail.ts";
import type { ReadDial } from "../message/read-dial.ts";
import { readPastWork, splitByEnd } from "../message/read-past-work.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type DueBike, dueBike } from "./due.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { heldAgainst, save } from "./settle.ts";
import { whenAtDial } from "./when-at.ts";

/** A question of the form: the jobs that one answer covers, under one name. `item` names them all, joined by "+". */
export type Asked = { readonly item: string; readonly called: string };

/** The jobs asked about, most telling first: at most five questions, so that one form holds them. Jobs of one rank (front and rear tyre) share a question. */
export function askedAbout(ctx: Pick<Ctx, "itemName">, g: Garaged): readonly Asked[] {
  const ranks = new Map<number, ItemKey[]>();
  for (const item of g.plan.items) {
    if (item.firstOnUsedBike === null || item.action !== "replace") continue;
    const list = ranks.get(item.firstOnUsedBike);
    if (list === undefined) ranks.set(item.firstOnUsedBike, [item.key]);
    else list.push(item.key);
  }
  return [...ranks]
    .sort(([a], [b]) => a - b)
    .slice(0, 5)
    .map(([, items]) => ({ item: items.join("+"), called: items.map((item) => nameIn(ctx, g, item)).join(" + ") }));
}

export type History = {
  readonly nickname: string;
  readonly recorded: readonly { readonly items: readonly ItemKey[]; readonly called: string; readonly on: VagueDate }[];
  readonly unknown: readonly string[];
  /** As typed, to be put right in the form. */
  readonly unread: readonly { readonly item: string; readonly called: string; readonly typed: string }[];
  /** What the unread answers are kept under; null where there are none. */
  readonly kept: string | null;
  readonly due: DueBike;
};

/** The form's fields for a bike: item and its name. @param input.kept of a form that came back: only what was not read, as it was typed */
export async function historyQuestions(
  ctx: Ctx,
  input: { readonly bike: BikeId; readonly kept?: string },
): Promise<Result<{ readonly bike: BikeId; readonly nickname: string; readonly items: readonly (Asked & { readonly typed: string | null })[] }>> {
  return ctx.store.read(async (q) => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    if (g === null) return refused({ why: "not yours" });
    const draft = input.kept === undefined ? null : await q.drafts.byId(input.kept);
    const typed: Readonly<Record<string, string>> | null = draft?.owner === ctx.who.member ? JSON.parse(draft.typed) : null;
    const asked = askedAbout(ctx, g).map((each) => ({ ...each, typed: typed?.[each.item] ?? null }));
    return done({ bike: input.bike, nickname: g.bike.nickname, items: asked.filter(({ item }) => typed === null || item in typed) });
  });
}

/** Records what is known of the past. What cannot be read is said back, never dropped in silence. */
export async function recordHistory(ctx: Ctx, input: { readonly bike: BikeId; readonly answers: Readonly<Record<string, string>> }): Promise<Result<History>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<History>> => {
    const all = await ownGarage(q, ctx);
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const unknown: string[] = [];
    const unread: { item: string; called: string; typed: string }[] = [];
    const sure: RecordWork[] = [];
    for (const [key, typed] of Object.entries(input.answers)) {
      const items = (key.split("+") as ItemKey[]).filter((each) => itemOf(g, each) !== null);
      if (items.length === 0) continue;
      const told = partsOf(ctx, g, items, typed).map((part) => pastOf(ctx, all, g, part));
      const called = (of: readonly ItemKey[]): string => of.map((item) => nameIn(ctx, g, item)).join(" + ");
      // Half of an answer is not kept: it comes back whole, as it was typed.
      if (told.includes(null)) unread.push({ item: key, called: called(items), typed });
      else
        for (const part of told) {
          if (part === null) continue;
          if ("unknown" in part) unknown.push(called(part.unknown));
          else sure.push({ ...part, words: called(part.items) });
        }
    }
    // The same answers sent twice, as from two devices, are on record once.
    const news = sure.filter((intent) => !isOnRecord(g, intent));
    if (news.length > 0) await save(q, ctx, news, all, ctx.event);
    const after = pick(await ownGarage(q, ctx), input.bike) ?? g;
    const due = dueBike(ctx, after);
    const kept = unread.length === 0 ? null : await keep(q, ctx, unread);
    return done({
      kept,
      nickname: g.bike.nickname,
      recorded: sure.map((i) => ({ items: i.items, called: i.words, on: i.on })),
      unknown,
      unread,
      due,
    });
  });
  return onceHeard(acted);
}

/** "3k ago", on the dial as it stands. */
function backFrom(g: Garaged, back: ReadDial | null): RecordWork["odometer"] {
  const last = lastPoint(g.track);
  if (back === null || last === null) return null;
  const value = Math.round(figureIn((dialAt(g.track, last.ridden) - dialOf(back.value, back.unit)) as Dial, g.unit));
  return value < 0 ? null : { value, unit: g.unit, typed: { text: String(value), unit: null } };
}

/** The day said or, where only the figure is known, when the dial showed it. Before it was theirs is before it came here. */
function whenOf(g: Garaged, on: VagueDate | null, odometer: RecordWork["odometer"]): VagueDate | null {
  if (on !== null) return isUndated(on) && g.bike.knownFrom.date < on.to ? { ...on, to: g.bike.knownFrom.date } : on;
  return odometer === null ? null : whenAtDial(g, dialOf(odometer.value, odometer.unit ?? g.unit), "");
}

type Part = { readonly items: readonly ItemKey[]; readonly typed: string };

/** An answer about both ends, cut into what it says of each; what names no end is of all of them. An end that is left out is unknown. */
function partsOf(ctx: Ctx, g: Garaged, items: readonly ItemKey[], typed: string): readonly Part[] {
  const whole: Part = { items, typed };
  const endOf = (item: ItemKey): "front" | "rear" | null => (item.startsWith("front-") ? "front" : item.startsWith("rear-") ? "rear" : null);
  if (items.length < 2 || items.some((item) => endOf(item) === null)) return [whole];
  const known = knownOf(ctx, [g]);
  const told = [known, ...(known.also ?? []).map((also) => ({ ...known, ...also }))].map((each) => splitByEnd(typed, each)).find((each) => each !== null);
  return told === undefined || told === null ? [whole] : items.map((item) => ({ items: [item], typed: told.get(endOf(item) ?? "front") ?? "" }));
}

/** What an answer comes to; null where it cannot be read, or does not fit the bike's readings. */
function pastOf(ctx: Ctx, all: readonly Garaged[], g: Garaged, { items, typed }: Part): RecordWork | { readonly unknown: readonly ItemKey[] } | null {
  const past = typed.trim() === "" ? "unknown" : readPastWork(typed, knownOf(ctx, all), g.unit);
  if (past === "unknown") return { unknown: items };
  if (past === null) return null;
  const odometer = past.odometer ?? backFrom(g, past.back);
  const on = whenOf(g, past.on, odometer);
  if (on === null || on.from > todayOf(ctx)) return null;
  const intent: RecordWork = {
    ...{ do: "record work", bike: g.bike.id, items, words: "", on, odometer, outcome: "done", how: past.how ?? "did it" },
    ...(past.by === null && past.cost === null ? {} : { detail: { ...NO_DETAIL, by: past.by, cost: past.cost } }),
    gaps: [],
  };
  return heldAgainst([intent], all, todayOf(ctx)).every(({ gaps }) => gaps.length === 0) ? intent : null;
}

/** Keeps what could not be read, to be put right. @returns what it is kept under */
async function keep(q: Repos, ctx: Ctx, unread: History["unread"]): Promise<string> {
  const typed = JSON.stringify(Object.fromEntries(unread.map((each) => [each.item, each.typed])));
  const id = ctx.newId();
  const { member: owner, group, channel } = ctx.who;
  await q.drafts.add({ id, owner, group, channel, message: null, typed, intents: [], state: "given back", rev: 1, at: ctx.now });
  return id;
}

const isOnRecord = ({ work }: Garaged, { items, on, odometer, how }: RecordWork): boolean =>
  work.some(
    (record) =>
      record.items.map(({ item }) => item).join() === items.join() &&
      [record.on.from, record.on.to, record.how].join() === [on.from, on.to, how].join() &&
      record.dialTyped === (odometer?.typed.text ?? null),
  );

/** The bike's whole history is known since it was new: everything counts from zero and from its first day. */
export async function wholeSinceNew(ctx: Ctx, input: { readonly bike: BikeId }): Promise<Result<DueBike>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<DueBike>> => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    if (g === null) return refused({ why: "not yours" });
    const bike: Bike = { ...g.bike, knownFrom: { date: g.bike.knownFrom.date, ridden: riddenOf(0, g.unit) as Ridden, wholeSinceNew: true } };
    if (!(await q.bikes.change(bike, ctx.now))) throw new Conflict("bike changed meanwhile");
    const after = pick(await ownGarage(q, ctx), input.bike) ?? g;
    return done(dueBike(ctx, after));
  });
  return onceHeard(acted);
}
