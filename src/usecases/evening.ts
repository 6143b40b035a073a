// A wrench evening of a group: the bikes whose owners bring them, what falls due on each, the tools it takes and the hours in all. Nothing found wrong is told.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { GroupId } from "../core/ids.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import { PLAIN } from "../core/sheet/how.ts";
import type { Repos } from "../store/store.ts";
import { howWorked } from "../trade/workshop.ts";
import { type Ctx, todayOf } from "./context.ts";
import { dayAhead, distanceAhead, type FallingUntil, fallingUntil } from "./falling.ts";
import { type Garaged, garage, itemOf } from "./garage.ts";
import { horizonOf } from "./outlook.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";

/** A bike brought, and whose it is. */
export type Brought = { readonly g: Garaged; readonly owner: string | null };

export type EveningItem = Pick<PlanItem, "minutes" | "engine"> & { readonly item: string; readonly name: string };
export type EveningBike = {
  readonly nickname: string;
  readonly owner: string | null;
  readonly items: readonly EveningItem[];
  /** Of those, what nothing is on record of. */
  readonly unknown: readonly string[];
  readonly minutes: number;
  /** Items that do not say how long they take. */
  readonly unsaid: number;
};
export type GroupEvening = {
  readonly until: LocalDate;
  /** The span was a distance: as it was typed. */
  readonly far: string | null;
  readonly today: LocalDate;
  /** Those with most to do first. */
  readonly bikes: readonly EveningBike[];
  /** Brought, with nothing that falls due by then. */
  readonly idle: readonly string[];
  /** Nothing says how far these are ridden: what falls due by distance is in only where their next service is near. */
  readonly byDate: readonly string[];
  readonly tools: readonly { readonly tool: string; readonly bikes: readonly string[] }[];
  /** Bikes that found no room. */
  readonly more: number;
};

const MOST = 25;
const NOTHING_FALLS: FallingUntil = { keys: [], next: [], unknown: [], blind: null };

/** What falls due by a day, a month ahead when none was typed, on the bikes brought to the group spoken in. */
export async function groupEvening(ctx: Ctx, input: { readonly until?: string }): Promise<Result<GroupEvening>> {
  const { group } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  return ctx.store.read(async (q): Promise<Result<GroupEvening>> => {
    const far = distanceAhead(ctx, input.until);
    const until = far === null ? dayAhead(ctx, input.until) : done(todayOf(ctx));
    if (until.is === "refused") return until;
    const { brought, more } = await broughtTo(q, ctx, group);
    const rows = brought.map(({ g, owner }) => {
      const reach = far === null ? until.value : horizonOf(g, far);
      // An odometer that this bike has passed, or of which nothing is known, asks nothing of it.
      const { keys, next, unknown, blind } = reach === "past" || reach === "too far" || reach === "no reading" ? NOTHING_FALLS : fallingUntil(g, reach);
      return { nickname: g.bike.nickname, owner, g, items: [...keys, ...next, ...unknown], unknown, blind: blind?.until === "day" };
    });
    const busy = rows.filter(({ items }) => items.length > 0);
    const bikes = busy
      .map(({ nickname, owner, g, items, unknown }): EveningBike => {
        const each = items.flatMap((key) => itemOf(g, key) ?? []);
        return {
          ...{ nickname, owner },
          items: each.map((item) => ({ item: item.key, name: nameIn(ctx, g, item.key), minutes: item.minutes, engine: item.engine })),
          unknown: unknown.map((key) => nameIn(ctx, g, key)),
          minutes: each.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
          unsaid: each.filter(({ minutes }) => minutes === null).length,
        };
      })
      .sort((a, b) => b.minutes - a.minutes);
    const wants = busy.map(({ nickname, items }) => ({ nickname, tools: new Set(items.flatMap((key) => (howWorked(key) ?? PLAIN).tools)) }));
    const tools = [...new Set(wants.flatMap((each) => [...each.tools]))].map((tool) => ({
      tool,
      bikes: wants.filter((each) => each.tools.has(tool)).map(({ nickname }) => nickname),
    }));
    return done({
      ...{ until: until.value, far: far === null ? null : (input.until ?? null), today: brought[0]?.g.today ?? until.value, bikes, more },
      byDate: rows.flatMap(({ nickname, blind }) => (blind ? [nickname] : [])),
      idle: rows.filter(({ items }) => items.length === 0).map(({ nickname }) => nickname),
      tools: tools.toSorted((a, b) => b.bikes.length - a.bikes.length),
    });
  });
}

/** The bikes that their owners bring to a group's evening, ridden or laid up, in the order in which they were added. */
export async function broughtTo(q: Repos, ctx: Ctx, group: GroupId): Promise<{ readonly brought: readonly Brought[]; readonly more: number }> {
  const bikes = (await q.bikes.broughtTo(group)).filter(({ state }) => state === "riding" || state === "laid up");
  const owners = await q.members.byIds([...new Set(bikes.map(({ owner }) => owner))]);
  const all = await garage(q, bikes.slice(0, MOST), ctx.now, (bike) => ({ member: owners.get(bike.owner) ?? null, home: ctx.who.home }));
  return { brought: all.map((g) => ({ g, owner: owners.get(g.bike.owner)?.name ?? null })), more: Math.max(0, bikes.length - MOST) };
}
