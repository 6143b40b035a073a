// What there is to tell of a bike beside its plan: the season's two lists, whether a silent one was put away, and the days of its papers.

import type { Group } from "../core/bike.ts";
import { addDays } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { NoticeKind } from "../core/reminding.ts";
import { nextSeasonEdge, type Seasonal, type SeasonWant, seasonWant, windowOf } from "../core/season/season.ts";
import type { BikeDate } from "../store/bike-dates.ts";

import type { Repos } from "../store/store.ts";
import { type Ask, asksOf } from "./asks.ts";
import type { Garaged } from "./garage.ts";
import { type TripAsk, tripAsks } from "./trip-asks.ts";

export type Aside = SeasonWant | Ask | TripAsk | { readonly want: "date"; readonly on: LocalDate; readonly what: string };
/** `key` is unique: the same thing is told once. */
export type KeyedAside = { readonly key: string; readonly kind: NoticeKind; readonly aside: Aside };
export type Asides = { readonly now: readonly KeyedAside[]; readonly next: LocalDate | null };

/** A paper's day is told a month before, and a week before. Noted six days sooner, since it waits for the member's day of the week: it is never later than that. */
const STAGES = [
  { days: 30, from: 36 },
  { days: 7, from: 13 },
] as const;
/** So long after it is still worth saying. */
const DAYS_AFTER = 14;

/** @param dates those of its papers */
export async function asidesOf(q: Repos, g: Garaged, home: Group | null, dates: readonly BikeDate[]): Promise<Asides> {
  const papers = together([datesOf(g, dates), asksOf(g), await tripAsks(q, g)]);
  const window = windowOf(home?.riding ?? null);
  if (window === null) return papers;
  const seasonal: Seasonal = {
    window,
    laidUp: g.bike.state === "laid up",
    lastLogged: lastLogged(g),
    lastOut: (await q.checks.lastOf(g.bike.id, "out of storage"))?.finishedOn ?? null,
    lastAway: (await q.checks.lastOf(g.bike.id, "lay-up"))?.finishedOn ?? null,
  };
  const want = seasonWant(seasonal, g.today);
  const edges = [papers.next, nextSeasonEdge(seasonal, g.today)].filter((day) => day !== null).sort();
  return {
    now: [...papers.now, ...(want === null ? [] : [{ key: `season:${g.bike.id}:${want.want}:${want.on}`, kind: "season" as const, aside: want }])],
    next: edges[0] ?? null,
  };
}

const together = (all: readonly Asides[]): Asides => ({
  now: all.flatMap(({ now }) => now),
  next: all.flatMap(({ next }) => next ?? []).sort()[0] ?? null,
});

function datesOf(g: Garaged, dates: readonly BikeDate[]): Asides {
  const own = dates.filter(({ bike }) => bike === g.bike.id);
  const now = own.flatMap(({ what, on }): KeyedAside[] => {
    const stage = STAGES.findLast(({ from }) => g.today >= addDays(on, -from))?.days;
    if (stage === undefined || g.today > addDays(on, DAYS_AFTER)) return [];
    return [{ key: `date:${g.bike.id}/${what}:${on}:${stage}`, kind: "date", aside: { want: "date", on, what } }];
  });
  const edges = own.flatMap(({ on }) => STAGES.map(({ from }) => addDays(on, -from))).filter((day) => day > g.today);
  return { now, next: edges.sort()[0] ?? null };
}

/** The last day on which anything was read on a bike, or done to it. */
function lastLogged(g: Garaged): LocalDate | null {
  const days = [...g.odometers.map(({ on }) => on), ...g.measured.map(({ on }) => on), ...g.work.map(({ on }) => on.to)].filter((day) => day <= g.today);
  return days.sort().at(-1) ?? null;
}
