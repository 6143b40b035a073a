// Recording work by command or form: the same intents as a message, read from labelled fields.

import { nicknameKey } from "../core/bike.ts";
import { addMonths, daysBetween, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { dialOf, figureIn } from "../core/quantity/distance.ts";
import type { Gap, LogReading, RecordWork } from "../core/reading/intent.ts";
import type { HowWeKnow, Outcome } from "../core/schedule/facts.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { NO_DETAIL, type WorkDetail } from "../core/work-detail.ts";
import { read } from "../message/read.ts";
import { readCost, readUsed } from "../message/read-detail.ts";
import { readDial } from "../message/read-dial.ts";
import { readItems } from "../message/read-items.ts";
import { readVagueDate } from "../message/read-vague-date.ts";
import { isHalfNamed } from "../message/work-fit.ts";
import type { Repos } from "../store/store.ts";
import { type Ctx, todayOf } from "./context.ts";
import { saysSomething } from "./defects.ts";
import { foundWrong } from "./found-wrong.ts";
import { type Garaged, itemsOf, pick } from "./garage.ts";
import { settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { itemNotFitted } from "./not-fitted.ts";
import { isEither, isOnlyRenewed } from "./of-old.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { codeAtAge } from "./tyre-code.ts";
import { usualOutcome, valuesSaid } from "./values-said.ts";
import { whichBike } from "./which-bike.ts";

export type WorkInput = {
  readonly did: string;
  readonly bike?: string;
  readonly at?: string;
  readonly on?: string;
  readonly how?: HowWeKnow;
  readonly outcome?: Outcome;
  readonly cost?: string;
  readonly note?: string;
  /** Values before and after the work: "0.09 mm intake 1". */
  readonly found?: string;
  readonly left?: string;
  readonly by?: string;
  /** What was used and fitted: "3.2 L 20W-50, crush washer". */
  readonly with?: string;
};

/** Records work named in a member's own words. */
export async function recordWork(ctx: Ctx, input: WorkInput): Promise<Result<MessageOutcome>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const all = await ownGarage(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const service = serviceNamed(ctx, g, input.did);
    if (service !== null) return recorded(q, ctx, all, g, [], input, [], [service]);
    const items = itemsNamed(ctx, all, g, input.did);
    if (items.is === "refused") return items;
    const code = codeFound(ctx, g, items.value, input);
    if (code !== null) return done(await settle(q, ctx, all, [code], { source: ctx.event, typed: asMessage(input), message: null }));
    return recorded(q, ctx, all, g, items.value, input);
  });
  return onceHeard(acted);
}

/** "Rear tyre age", found 1417 and nothing else said: the code was read off the tyre that is on; no new one was fitted. */
function codeFound(ctx: Ctx, g: Garaged, [item, ...more]: readonly ItemKey[], { did, bike: _, found, ...rest }: WorkInput): LogReading | null {
  if (item === undefined || more.length > 0 || found === undefined || Object.values(rest).some((each) => each !== undefined)) return null;
  return nicknameKey(nameIn(ctx, g, item)) === nicknameKey(did) ? codeAtAge(ctx, g.bike.id, item, found) : null;
}

/** Records known items of a known bike, as the buttons on a reminder and on the due list do. */
export async function recordItems(
  ctx: Ctx,
  input: { readonly bike: BikeId; readonly items: readonly ItemKey[]; readonly at?: string; readonly on?: string; readonly outcome?: Outcome },
): Promise<Result<MessageOutcome>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const all = await ownGarage(q, ctx);
    const g = all.find((each) => each.bike.id === input.bike);
    if (g === undefined) return refused({ why: "not yours" });
    return recorded(q, ctx, all, g, input.items, { did: input.items.map((key) => nameIn(ctx, g, key)).join(", "), ...input, bike: g.bike.nickname });
  });
  return onceHeard(acted);
}

/** Records what was done about a defect, and closes it by that. The work need not be an item of the plan. */
export async function recordMended(
  ctx: Ctx,
  input: { readonly defect: string; readonly did: string; readonly at?: string; readonly on?: string },
): Promise<Result<MessageOutcome>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const defect = await q.defects.byId(input.defect);
    if (defect === null) return refused({ why: "gone" });
    const all = await ownGarage(q, ctx);
    const g = pick(all, defect.bike);
    if (g === null) return refused({ why: "not yours" });
    if (defect.state !== "open") return refused({ why: "already done" });
    if (!saysSomething(input.did)) return refused({ why: "left blank", field: "what was done" });
    const named = itemsNamed(ctx, all, g, input.did);
    const items = named.is === "refused" ? [] : named.value;
    const said = outcomeSaid(ctx, g, items, input.did);
    if (said === null && isEither(defect.kind, items)) return refused({ why: "new or mended", items: items.map((key) => nameIn(ctx, g, key)) });
    const outcome = said ?? (isOnlyRenewed(defect.kind, items) ? "replaced" : null);
    return recorded(q, ctx, all, g, items, outcome === null ? input : { ...input, outcome }, [defect.id]);
  });
  return onceHeard(acted);
}

/** What a member's words say was done to the items that they name: "new front pads". Null where they only name them. */
function outcomeSaid(ctx: Ctx, g: Garaged, items: readonly ItemKey[], typed: string): Outcome | null {
  const outcomes = read(typed, knownOf(ctx, [g])).intents.flatMap((intent) =>
    intent.do === "record work" && intent.items.some((item) => items.includes(item)) && intent.outcome !== "done" ? [intent.outcome] : [],
  );
  return outcomes[0] ?? null;
}

async function recorded(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  g: Garaged,
  items: readonly ItemKey[],
  input: WorkInput,
  closes: readonly string[] = [],
  gaps: readonly Gap[] = [],
): Promise<Result<MessageOutcome>> {
  const on = dateTyped(ctx, all, input.on);
  if (on.is === "refused") return on;
  const odometer = dialTyped(ctx, all, g, input.at);
  if (odometer.is === "refused") return odometer;
  const detail = detailTyped(ctx, all, input);
  if (detail.is === "refused") return detail;
  const said = valuesSaid(ctx, g, items, input, on.value);
  const { values, readings, notes, words } = said;
  const note = [input.note?.trim() ?? "", ...notes].filter((each) => each !== "").join("; ");
  const measured = input.found !== undefined || input.left !== undefined;
  const usual = measured ? usualOutcome(ctx, g, items, input, said) : "done";
  const come =
    measured || input.outcome === "found wrong"
      ? await foundWrong(q, ctx, g, items, words, input.outcome, usual)
      : { outcome: input.outcome ?? usual, gaps: [] };
  const intent: RecordWork = {
    do: "record work",
    bike: g.bike.id,
    items,
    words: input.did,
    on: on.value,
    odometer: odometer.value,
    ...come,
    ...(measured && input.outcome === undefined ? { usual: true } : {}),
    how: input.how ?? "did it",
    ...(closes.length === 0 ? {} : { closes }),
    ...(detail.value === null ? {} : { detail: detail.value }),
    ...(note === "" ? {} : { note }),
    ...values,
    gaps: [...gaps, ...come.gaps],
  };
  return done(await settle(q, ctx, all, [intent, ...readings], { source: ctx.event, typed: asMessage(input), message: null }));
}

/** What went into it, from the options; null when nothing was said of it. */
function detailTyped(ctx: Ctx, all: readonly Garaged[], input: WorkInput): Result<WorkDetail | null> {
  const known = knownOf(ctx, all);
  const cost = input.cost === undefined ? null : readCost(input.cost, known);
  if (input.cost !== undefined && cost === null) return refused({ why: "not a cost", typed: input.cost });
  const used = input.with === undefined ? NO_DETAIL : readUsed(input.with, known);
  if (cost === null && input.by === undefined && input.with === undefined) return done(null);
  return done({ quantities: used.quantities, parts: used.parts, cost, by: input.by ?? null });
}

/** The options as the message that says the same, for typing it again. */
const asMessage = ({ did, at, on }: WorkInput): string =>
  [`did ${did}`, ...(at === undefined ? [] : [`at ${at}`]), ...(on === undefined ? [] : [on])].join(" ");

/** "12,000 mi service": the whole of it, to be asked which the plan has there; null for anything else. */
function serviceNamed(ctx: Ctx, g: Garaged, typed: string): Gap | null {
  const known = knownOf(ctx, [g]);
  const [did = ""] = Object.keys(known.vocabulary.workDone);
  return read(`${did} ${typed}`, known).intents.flatMap((intent): Gap[] => intent.gaps.filter(({ need }) => need === "service"))[0] ?? null;
}

/** Items a member's words name on this bike; refused with the nearest names. */
export function itemsNamed(ctx: Ctx, all: readonly Garaged[], g: Garaged, typed: string): Result<readonly ItemKey[]> {
  const exact = itemsOf(g).filter((item) => nicknameKey(nameIn(ctx, g, item.key)) === nicknameKey(typed) || item.key === typed.trim());
  if (exact.length > 0) return done(exact.map((item) => item.key));
  const known = knownOf(ctx, all);
  const bike = known.bikes.find((each) => each.id === g.bike.id);
  const found = bike === undefined ? { sure: [], unsure: [], rest: [] } : readItems(typed, known, bike);
  const [unsure] = found.unsure;
  if (unsure !== undefined) return refused({ why: "which item", typed, items: unsure.map((key) => nameIn(ctx, g, key)) });
  // What stands in the plan for both ends does not begin anew for one.
  if (isHalfNamed(typed, found.sure, ctx.vocabulary)) return refused({ why: "which item", typed, items: found.sure.map((key) => nameIn(ctx, g, key)) });
  // All of it or none: a job is not recorded past a word that names nothing.
  if (found.sure.length > 0 && found.rest.length === 0) return done(found.sure);
  if (found.sure.length > 0) return refused({ why: "no such item", typed: found.rest.join(" "), nearest: [] });
  const otherwise = itemNotFitted(ctx, g, typed);
  if (otherwise !== null) return refused(otherwise);
  const words = nicknameKey(typed)
    .split(" ")
    .filter((word) => word.length > 2);
  const nearest = itemsOf(g)
    .map((item) => nameIn(ctx, g, item.key))
    .filter((name) => words.some((word) => nicknameKey(name).includes(word)));
  return refused({ why: "no such item", typed, nearest: nearest.slice(0, 5) });
}

/** A date as vague as it was typed; today when nothing was typed. */
export function dateTyped(ctx: Ctx, all: readonly Garaged[], typed: string | undefined): Result<VagueDate> {
  const today = todayOf(ctx);
  if (typed === undefined || typed.trim() === "") return done({ from: today, to: today, typed: "" });
  const on = readVagueDate(typed, knownOf(ctx, all));
  if (on === null || on === "unknown") return refused({ why: "not a date", typed });
  if (on.from > today) return refused({ why: "future date", on: on.from });
  const ahead = stillToCome(ctx, on, today);
  return ahead === null ? done(on) : refused({ why: "future date", on: ahead, before: on.from });
}

/** "30 November" in the week before it: the coming one is as likely meant as last year's, and nothing says which. The day of this year; null where the past is meant for certain. */
function stillToCome(ctx: Ctx, { from, to, typed }: VagueDate, today: LocalDate): LocalDate | null {
  const words = typed.toLowerCase().split(/[^\p{L}]+/u);
  const months = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].flatMap((vocabulary) => Object.keys(vocabulary.months));
  const isBare = words.some((word) => months.includes(word)) || /^\d{1,2}[./-]\d{1,2}\.?$/u.test(typed.trim());
  if (from !== to || !isBare || /\d{4}|\d[./-]\d{1,2}[./-]\d{2}|'\d{2}/u.test(typed)) return null;
  const coming = addMonths(from, 12);
  return coming > today && yearOf(coming) === yearOf(today) && daysBetween(today, coming) < daysBetween(from, today) ? coming : null;
}

export function dialTyped(ctx: Ctx, all: readonly Garaged[], g: Garaged, typed: string | undefined): Result<RecordWork["odometer"]> {
  if (typed === undefined || typed.trim() === "") return done(null);
  const dial = readDial(typed, knownOf(ctx, all), g.unit);
  if (dial === null || dial.value > 999_999) return refused({ why: "not a distance", typed, unit: g.unit });
  return done({ value: dial.value, unit: dial.unit, typed: { text: typed, unit: dial.unit } });
}

/** The dial where it was read that day, the last of the day: work with no figure of its own was done there. */
export function dialOfDay(g: Garaged, { from, to }: Pick<VagueDate, "from" | "to">): RecordWork["odometer"] {
  if (from !== to) return null;
  const last = g.odometers
    .filter(({ on }) => on === from)
    .toSorted((a, b) => a.order - b.order)
    .at(-1);
  if (last === undefined) return null;
  const value = figureIn(last.dial, g.unit);
  return { value, unit: g.unit, typed: { text: "", unit: null } };
}

/** Is a figure typed at a job too far beyond what the dial showed that day, though a day on the road could hold it? */
export function isFarBeside(g: Garaged, said: RecordWork["odometer"], { from, to }: Pick<VagueDate, "from" | "to">): boolean {
  if (said === null || from !== to) return false;
  const dial = dialOf(said.value, said.unit ?? g.unit);
  return judgeReading(g.track, dial, from, g.trips).is === "fine" && judgeReading(g.track, dial, from, g.trips, { atWork: true }).is !== "fine";
}

export const nameIn = (ctx: Pick<Ctx, "itemName">, g: Garaged, key: ItemKey): string =>
  ctx.itemName(key, itemsOf(g).find((item) => item.key === key)?.called ?? null);
