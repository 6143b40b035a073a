// What belongs on the sheet of a service: what falls due there, what is due already, and what is near enough to be done with it.

import { addDays } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import { chartOf, MOST_SERVICES, printedAt, runningInOf, servicesAround } from "../plan/chart.ts";
import type { PlanItem } from "../plan/plan.ts";
import { between, figureIn, type Ridden, riddenOf, type Stretch, stretchOf } from "../quantity/distance.ts";
import { doTheseFirst } from "../schedule/do-these-first.ts";
import type { Due, Facts, Moment } from "../schedule/facts.ts";
import { type Falling, type Horizon, NEAR, NEAR_DAYS, outlook } from "../schedule/outlook.ts";
import { dueList } from "../schedule/status.ts";

/** "now": due already. "there": falls due at this service. "near": soon after it. "next": of the next service, which is near enough to be done with what falls due by a day. "unknown": nothing is on record of it, and it cannot wait for its next mark. */
export type SheetWhy = "now" | "there" | "near" | "next" | "unknown";
export type SheetEntry = { readonly item: ItemKey; readonly why: SheetWhy; readonly due: Due };

/** What a service has over the ordinary one: "12,000 is the 4,000 list plus ...". Whole figures of the bike's column. */
export type Adds = { readonly at: number; readonly ordinary: number; readonly items: readonly ItemKey[] };

export type SheetList = {
  /** The service; null where nothing goes by services, and the sheet is of a day. */
  readonly mark: Ridden | null;
  /** When it is likely to come; today when it is reached. Null when nothing says. */
  readonly on: LocalDate | null;
  /** All that falls due by this day, done now while the bike stands: the sheet is of no service. */
  readonly until: LocalDate | null;
  /** All that falls due up to this point, done now likewise. */
  readonly upTo: Ridden | null;
  readonly entries: readonly SheetEntry[];
  /** Done by doing another item on the sheet. */
  readonly covered: readonly { readonly item: ItemKey; readonly by: ItemKey }[];
  /** Falls due well before it, and is best done then. */
  readonly meanwhile: readonly ItemKey[];
  readonly adds: Adds | null;
  /** What such a list cannot know; null where it can, and of a service. */
  readonly blind: Blind | null;
};

/**
 * Nothing says how far the bike is ridden. Until a day, only what goes by date is foreseen, until a point only what goes by distance.
 * `next`: the service that comes next, until a day; `counted`: it is near enough to be done with the rest, and in the list. Null where none lies ahead.
 */
export type Blind = {
  readonly until: "day" | "point";
  readonly next: { readonly mark: Ridden; readonly away: Stretch; readonly counted: boolean } | null;
};

/**
 * The list of a service.
 * @param at the point of it; "next": the next one that falls due, or is due @returns null when nothing of the plan goes by distance and nothing falls due within a year
 */
export function sheetAt(facts: Facts, moment: Moment, at: Ridden | "next"): SheetList | null {
  const mark = at === "next" ? nextMark(facts, moment) : at;
  if (mark === null) return byDay(facts, moment);
  const { likely, placed, entries } = ofService(facts, moment, mark);
  const meanwhile = placed.filter(({ when }) => when === "before").map(({ each }) => each.item);
  return { mark, on: likely, until: null, upTo: null, ...apartFromCovered(facts.plan.items, entries), meanwhile, adds: addsAt(facts, mark), blind: null };
}

/** What belongs to a service, with what another item there does as well; and how all that falls due until then lies to it. */
function ofService(facts: Facts, moment: Moment, mark: Ridden) {
  const { today, ridden } = moment;
  const reached = ridden !== null && ridden >= mark;
  const likely = reached ? today : (moment.forecast.dateOf(mark)?.on ?? null);
  const near = stretchOf(NEAR[facts.column], facts.column);
  const furthest = Math.max(mark, ridden ?? 0) + near;
  const point = { low: furthest as Ridden, likely: furthest as Ridden, high: furthest as Ridden };
  const day = addDays(likely === null || likely < today ? today : likely, NEAR_DAYS);
  const charted = chartedAt(facts, mark);
  const falling = outlook(facts, moment, { on: day, ridden: point });
  const placed = falling
    .filter((each) => !isEarlyLook(each, Math.max(mark, ridden ?? 0)))
    .map((each) => ({ each, when: whenOf(each, mark, near, likely ?? today, charted) }));
  const falls = placed.flatMap(({ each, when }): SheetEntry[] => (when === "before" ? [] : [{ item: each.item, why: when, due: each.now }]));
  const listed = new Set(falls.map(({ item }) => item));
  const passed = [...falls, ...unknownAt(facts, moment, mark, charted).filter(({ item }) => !listed.has(item))];
  // Where nothing falls due there is no service; what cannot wait is not left for a later one than the next.
  const isNext = mark <= (nextMark(facts, moment) ?? mark) + near;
  const entries = passed.length > 0 && isNext ? withUnknown(facts, moment, withMeasured(facts, moment, passed)) : passed;
  return { likely, placed, entries };
}

/** A look again after work is worth nothing before half its distance: what is new has not settled yet, and such a look would close it. */
function isEarlyLook({ now }: Falling, point: number): boolean {
  const looks = now.legs.flatMap((leg) => (leg.by === "recheck" ? [leg.recheck] : []));
  return looks.length > 0 && looks.length === now.legs.length && looks.every(({ after, dueAt }) => point < (after + dueAt) / 2);
}

/** What the plan prints at a service that has just been passed and of which nothing is on record: a bike that came with its figure past it may well want it. */
function unknownAt(facts: Facts, moment: Moment, mark: Ridden, charted: ReadonlySet<ItemKey>): readonly SheetEntry[] {
  const passed = moment.ridden !== null && moment.ridden >= mark && !liesBehind(facts, moment, mark);
  if (!passed) return [];
  const unknown = dueList(facts, moment).filter(({ item, status, habit }) => charted.has(item) && status === "no record" && !habit);
  return unknown.map((due): SheetEntry => ({ item: due.item, why: "there", due }));
}

/** What was read near its limit is done as the plan asks, and yet looked at again with the next service, where what it will take is bought for. */
function withMeasured(facts: Facts, moment: Moment, entries: readonly SheetEntry[]): readonly SheetEntry[] {
  const read = new Set(facts.plan.items.filter(({ measuredBy }) => measuredBy !== null).map(({ key }) => key));
  for (const { item } of entries) read.delete(item);
  if (read.size === 0) return entries;
  const near = dueList(facts, moment).filter(
    ({ item, habit, legs }) => !habit && read.has(item) && legs.some(({ by, state }) => by === "verdict" && state === "soon"),
  );
  return [...entries, ...near.map((due): SheetEntry => ({ item: due.item, why: "near", due }))];
}

/** What a used bike with nothing on record wants first, behind what is listed by its own. */
function withUnknown(facts: Facts, moment: Moment, entries: readonly SheetEntry[]): readonly SheetEntry[] {
  const listed = new Set(entries.map(({ item }) => item));
  const unknown = unknownFirst(facts, moment).filter(({ item }) => !listed.has(item));
  return [...entries, ...unknown.map((due): SheetEntry => ({ item: due.item, why: "unknown", due }))];
}

/** Items without a record that cannot wait for their next mark, most pressing first. */
export function unknownFirst(facts: Facts, moment: Moment): readonly Due[] {
  const dues = dueList(facts, moment).filter(({ habit }) => !habit);
  return doTheseFirst(dues, facts.plan).flatMap((key) => dues.find(({ item }) => item === key) ?? []);
}

/** All that is due, or likely falls due until a day or a point: the work of a winter, done while the bike stands. */
export function sheetUntil(facts: Facts, moment: Moment, horizon: Horizon, named: Pick<SheetList, "until" | "upTo">): SheetList {
  const falling = outlook(facts, moment, horizon).filter((each) => each.likely && !isEarlyLook(each, moment.ridden ?? 0));
  const known = falling.map(({ item, now }): SheetEntry => ({ item, why: now.status === "due" || now.status === "overdue" ? "now" : "there", due: now }));
  const blind = blindUntil(facts, moment, horizon, named.upTo === null ? "day" : "point");
  const entries = [...known, ...ofNext(facts, moment, blind, new Set(known.map(({ item }) => item)))];
  return {
    ...{ mark: null, on: moment.today, ...named, ...apartFromCovered(facts.plan.items, withUnknown(facts, moment, entries)) },
    ...{ meanwhile: [], adds: null, blind },
  };
}

/** What a look ahead cannot know, where nothing says how far the bike is ridden. @param until what was asked for */
export function blindUntil(facts: Facts, moment: Moment, horizon: Horizon, until: Blind["until"]): Blind | null {
  if (until === "point") return horizon.ridden !== null && moment.forecast.dateOf(horizon.ridden.likely) === null ? { until, next: null } : null;
  if (horizon.ridden !== null) return null;
  const [mark, ridden] = [nextMark(facts, moment), moment.ridden];
  if (mark === null || ridden === null || mark <= ridden) return { until, next: null };
  const away = between(ridden, mark);
  return { until, next: { mark, away, counted: away <= stretchOf(NEAR[facts.column], facts.column) } };
}

/** The items of the next service beside a list that foresees by date alone, where it is near enough. @param listed items that the list has already */
export function ofNext(facts: Facts, moment: Moment, blind: Blind | null, listed: ReadonlySet<ItemKey>): readonly SheetEntry[] {
  if (blind?.next?.counted !== true) return [];
  const { entries } = ofService(facts, moment, blind.next.mark);
  return entries.filter(({ item, why }) => why !== "unknown" && !listed.has(item)).map((entry): SheetEntry => ({ ...entry, why: "next" }));
}

/** The services at a point or nearest to it, in whole figures of the bike's column. */
export const servicesNear = ({ plan, column, conditions }: Facts, point: Ridden): readonly number[] =>
  servicesAround(plan.items, column, conditions, Math.round(figureIn(point, column)));

/** The service meant by a point, which may be early or late by what is done together; where there is none so near, those either side. Whole figures of the bike's column. */
export function servicesMeant(facts: Facts, point: Ridden): readonly number[] {
  const figure = Math.round(figureIn(point, facts.column));
  const around = servicesNear(facts, point);
  const [nearest] = nearestFirst(around, figure);
  return nearest !== undefined && Math.abs(nearest - figure) <= NEAR[facts.column] ? [nearest] : around;
}

/** Services about a point, nearest first: what a service may have been of which only that is known. Whole figures of the bike's column. */
export function servicesAbout({ plan, column, conditions }: Facts, point: Ridden): readonly number[] {
  const figure = Math.round(figureIn(point, column));
  const around = (at: number): readonly number[] => servicesAround(plan.items, column, conditions, at);
  const near = around(figure);
  const beyond = near.length === 0 ? [] : [...around(Math.min(...near) - 1), ...around(Math.max(...near) + 1)];
  return nearestFirst([...new Set([...near, ...beyond])], figure).slice(0, MOST_OFFERED);
}

const nearestFirst = (marks: readonly number[], figure: number): readonly number[] =>
  marks.filter((mark) => mark > 0).toSorted((a, b) => Math.abs(a - figure) - Math.abs(b - figure));
const MOST_OFFERED = 3;

/** Is a point passed by more than is done together? */
export const liesBehind = ({ column }: Facts, { ridden }: Moment, point: Ridden): boolean =>
  ridden !== null && point < ridden - stretchOf(NEAR[column], column);

/** What a service that was done came to: what its sheet says or, where that is empty or the service lies behind, what the plan prints there. */
export function itemsOfService(facts: Facts, moment: Moment, mark: Ridden): readonly ItemKey[] {
  // Of what nothing is on record nobody says that it was of the service.
  const onSheet = liesBehind(facts, moment, mark) ? [] : (sheetAt(facts, moment, mark)?.entries ?? []).filter(({ why }) => why !== "unknown");
  if (onSheet.length > 0) return onSheet.map(({ item }) => item);
  const printed = [...chartedAt(facts, mark)];
  const covered = new Set(facts.plan.items.flatMap(({ key, covers }) => (printed.includes(key) ? covers : [])));
  return printed.filter((item) => !covered.has(item));
}

function whenOf(falling: Falling, mark: Ridden, near: number, likely: LocalDate, charted: ReadonlySet<ItemKey>): SheetWhy | "before" {
  const { item, on, now } = falling;
  if (now.status === "due" || now.status === "overdue") return "now";
  // Without a forecast nothing says which day a distance is reached: the distance itself does.
  const at = falling.at ?? (on === null ? (now.legs.find((leg) => leg.by === "distance")?.dueAt ?? null) : null);
  if (at !== null) {
    if (Math.abs(at - mark) <= near) return at <= mark || charted.has(item) ? "there" : "near";
    if (at > mark) return "near";
    return charted.has(item) ? "there" : "before";
  }
  if (charted.has(item)) return "there";
  if (on === null || on > likely) return "near";
  return on >= addDays(likely, -NEAR_DAYS) ? "there" : "before";
}

/** The service that comes next: the first mark at which an item falls due, as the plan prints it where it prints one near. */
function nextMark(facts: Facts, moment: Moment): Ridden | null {
  const marks = dueList(facts, moment).flatMap((due) => (due.habit || due.mark === null ? [] : [due.mark]));
  if (marks.length === 0) return null;
  const first = Math.min(...marks) as Ridden;
  const near = stretchOf(NEAR[facts.column], facts.column);
  const printed = servicesUpTo(facts, (first + near) as Ridden).map((figure) => riddenOf(figure, facts.column));
  return printed.filter((mark) => Math.abs(mark - first) <= near).sort((a, b) => Math.abs(a - first) - Math.abs(b - first))[0] ?? first;
}

/** Where nothing goes by services: what falls due first within a year, and what goes with it. */
function byDay(facts: Facts, moment: Moment): SheetList | null {
  const falling = outlook(facts, moment, { on: addDays(moment.today, 365), ridden: null });
  const first = falling.find(({ on }) => on !== null)?.on ?? null;
  if (first === null) return null;
  const entries = falling
    .filter(({ on }) => on !== null && on <= addDays(first, NEAR_DAYS))
    .map(
      ({ item, now, on }): SheetEntry => ({ item, why: now.status === "due" || now.status === "overdue" ? "now" : on === first ? "there" : "near", due: now }),
    );
  return { mark: null, on: first, until: null, upTo: null, ...apartFromCovered(facts.plan.items, entries), meanwhile: [], adds: null, blind: null };
}

/** Replacing covers inspecting: what another entry does is not done twice. */
function apartFromCovered(items: readonly PlanItem[], entries: readonly SheetEntry[]): Pick<SheetList, "entries" | "covered"> {
  const on = new Set(entries.map(({ item }) => item));
  const by = new Map<ItemKey, ItemKey>();
  // Nobody knows yet whether what has no record is done at all, so that it stands in for nothing.
  const sure = new Set(entries.flatMap(({ item, why }) => (why === "unknown" ? [] : [item])));
  for (const item of items) if (sure.has(item.key)) for (const covered of item.covers) if (on.has(covered)) by.set(covered, item.key);
  return {
    entries: entries.filter(({ item }) => !by.has(item)),
    covered: entries.flatMap(({ item }) => {
      const cover = by.get(item);
      return cover === undefined ? [] : [{ item, by: cover }];
    }),
  };
}

const chart = (facts: Facts, end: Ridden) => chartOf(facts.plan.items, facts.column, facts.conditions, Math.round(figureIn(end, facts.column)));
const servicesUpTo = (facts: Facts, end: Ridden): readonly number[] => chart(facts, end).marks;

/** The items that the plan prints at a service. */
const chartedAt = ({ plan, column, conditions }: Facts, mark: Ridden): ReadonlySet<ItemKey> =>
  new Set(printedAt(plan.items, column, conditions, Math.round(figureIn(mark, column))));

const at = ({ rows }: ReturnType<typeof chartOf>, figure: number): ReadonlySet<ItemKey> =>
  new Set(rows.filter((row) => row.at.includes(figure)).map((row) => row.item));

/** Null at a point that is no service, at the ordinary service itself, and beyond what a chart holds. */
function addsAt(facts: Facts, mark: Ridden): Adds | null {
  const printed = chart(facts, mark);
  const figure = Math.round(figureIn(mark, facts.column));
  if (printed.marks.length > MOST_SERVICES) return null;
  const here = at(printed, figure);
  const running = runningInOf(printed.marks);
  const ordinary = printed.marks.find((each) => each !== running && each < figure && [...at(printed, each)].every((item) => here.has(item)));
  if (ordinary === undefined || here.size === 0) return null;
  const usual = at(printed, ordinary);
  return { at: figure, ordinary, items: [...here].filter((item) => !usual.has(item)) };
}
