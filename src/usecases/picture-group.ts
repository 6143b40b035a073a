// A group's picture: the bikes whose owners let it show them, and when something falls due on each. No item is named, nothing found wrong is told.

import { addMonths } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { outlook, rangeOf } from "../core/schedule/outlook.ts";
import { type Ctx, todayOf } from "./context.ts";
import { duesOf, type Garaged, garage } from "./garage.ts";
import { type LaidUp, layUpsWithin } from "./picture-odometer.ts";
import { done, type Result, refused } from "./refusals.ts";

/** One bike: what is due now counted, and the likely days on which something falls due. */
export type GroupRow = {
  readonly nickname: string;
  readonly owner: string | null;
  readonly dueNow: number;
  readonly next: readonly { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null; readonly soon: boolean; readonly items: number }[];
  readonly layUps: readonly LaidUp[];
};
export type GroupPictured = {
  readonly is: "group picture";
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly rows: readonly GroupRow[];
  /** Bikes that found no room. */
  readonly more: number;
};

const MONTHS = 6;
const MOST = 25;

/** The picture of the group spoken in; only bikes whose owners chose to be in it, riding or laid up. */
export async function groupPicture(ctx: Ctx): Promise<Result<GroupPictured>> {
  const { group, home } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  return ctx.store.read(async (q): Promise<Result<GroupPictured>> => {
    const bikes = (await q.bikes.picturedIn(group)).filter(({ state }) => state === "riding" || state === "laid up");
    const owners = await q.members.byIds([...new Set(bikes.map(({ owner }) => owner))]);
    const all = await garage(q, bikes.slice(0, MOST), ctx.now, (bike) => ({ member: owners.get(bike.owner) ?? null, home }));
    const today = todayOf(ctx);
    const until = addMonths(today, MONTHS);
    const rows = all.map((g) => groupRow(g, owners.get(g.bike.owner)?.name ?? null, until)).toSorted((a, b) => compare(soonest(a), soonest(b)));
    return done({ is: "group picture", today, until, rows, more: Math.max(0, bikes.length - MOST) });
  });
}

/** Pure of the bike's facts. */
export function groupRow(g: Garaged, owner: string | null, until: LocalDate): GroupRow {
  const ahead = outlook(g.facts, g.at, { on: until, ridden: g.at.forecast.riddenOn(until) }).filter(
    ({ likely, now, on }) => likely && on !== null && !isDue(now.status),
  );
  const days = new Map<string, GroupRow["next"][number]>();
  for (const falling of ahead) {
    const { on, now } = falling;
    if (on === null) continue;
    const range = rangeOf(falling, g.at);
    const seen = days.get(on);
    const from = range === null ? on : range.from > g.today ? range.from : g.today;
    days.set(on, { on, from, to: range === null ? on : range.to, soon: now.status === "soon" || seen?.soon === true, items: (seen?.items ?? 0) + 1 });
  }
  return {
    nickname: g.bike.nickname,
    owner,
    dueNow: duesOf(g).filter((due) => !due.habit && isDue(due.status)).length,
    next: [...days.values()],
    layUps: layUpsWithin(g, g.today, until),
  };
}

const isDue = (status: string): boolean => status === "due" || status === "overdue";
const soonest = (row: GroupRow): string => (row.dueNow > 0 ? "" : (row.next[0]?.on ?? "9999"));
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
