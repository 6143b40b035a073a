// What a planned trip asks of a bike by itself: three weeks, a week and a day before it, and on the way back.

import { addDays } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import type { NoticeKind } from "../core/reminding.ts";
import type { SpecUse } from "../core/spec/spec.ts";
import type { Repos } from "../store/store.ts";
import type { TripRecord } from "../store/trips.ts";
import type { Garaged } from "./garage.ts";
import { type TripShown, tripShown } from "./trip.ts";

type OfTrip = { readonly on: LocalDate; readonly use: SpecUse; readonly pressures: TripShown["pressures"] };
export type TripAsk =
  /** `on`: its first day. `short`: tyres and pads that may not last the way, by the names of what was measured. */
  | (OfTrip & {
      readonly want: "trip ahead";
      readonly before: readonly ItemKey[];
      readonly during: readonly ItemKey[];
      readonly short: readonly string[];
      /** Open defects that are not to be ridden on, and those that nobody has graded. */
      readonly defects: number;
      readonly ungraded: number;
    })
  /** `on`: its last day. `read`: the odometer was read since. */
  | (OfTrip & { readonly want: "trip back"; readonly read: boolean });
type KeyedTripAsk = { readonly key: string; readonly kind: NoticeKind; readonly aside: TripAsk };
export type TripAsks = { readonly now: readonly KeyedTripAsk[]; readonly next: LocalDate | null };

/** Three weeks leave time for a tyre or a workshop; a week for a job at home; on the eve the pressures are set. */
const DAYS_BEFORE = [21, 7, 1] as const;
/** So long after its end it is still worth asking. */
const DAYS_AFTER = 14;

/** Is a bike on a trip, or just back from one, so that its odometer is asked for on its return? Answers the day from which it is not. */
export function awayUntil(g: Garaged): LocalDate | null {
  const trip = g.trips.find(({ from, to }) => from <= g.today && g.today <= addDays(to, DAYS_AFTER));
  return trip === undefined ? null : addDays(trip.to, DAYS_AFTER + 1);
}

export async function tripAsks(q: Repos, g: Garaged): Promise<TripAsks> {
  const now: KeyedTripAsk[] = [];
  for (const trip of g.trips) {
    const ahead = await aheadOf(q, g, trip);
    if (ahead !== null) now.push(ahead);
    const back = await backOf(q, g, trip);
    if (back !== null) now.push(back);
  }
  const edges = g.trips.flatMap(({ from, to }) => [...DAYS_BEFORE.map((days) => addDays(from, -days)), addDays(to, 1)]);
  return { now, next: edges.filter((day) => day > g.today).sort()[0] ?? null };
}

async function aheadOf(q: Repos, g: Garaged, trip: TripRecord): Promise<KeyedTripAsk | null> {
  const { id, from, use } = trip;
  const stage = DAYS_BEFORE.findLast((days) => g.today >= addDays(from, -days));
  // What was answered when it was planned is not said again the morning after.
  if (stage === undefined || g.today >= from || trip.plannedOn >= addDays(from, -stage)) return null;
  const shown = await tripShown(q, NAMELESS, g, trip);
  const of = (when: "before" | "during"): ItemKey[] => shown.items.flatMap((each) => (each.when === when ? [each.item] : []));
  const short = [...shown.wear.filter(({ is }) => is === "not enough"), ...shown.nearing].map(({ part }) => part);
  const [before, during] = [of("before"), of("during")];
  if (stage === DAYS_BEFORE[0] && before.length + during.length + short.length === 0) return null;
  const aside: TripAsk = {
    want: "trip ahead",
    on: from,
    use,
    pressures: stage === 1 ? shown.pressures : [],
    before,
    during,
    short,
    defects: shown.defects,
    ungraded: shown.ungraded,
  };
  return { key: `trip:${g.bike.id}/${id}:${stage}`, kind: "trip ahead", aside };
}

async function backOf(q: Repos, g: Garaged, trip: TripRecord): Promise<KeyedTripAsk | null> {
  const { id, to, use } = trip;
  if (g.today <= to || g.today > addDays(to, DAYS_AFTER)) return null;
  const read = g.odometers.some(({ on }) => on >= to);
  if (read && use === "solo") return null;
  const { pressures } = await tripShown(q, NAMELESS, g, trip);
  return { key: `trip:${g.bike.id}/${id}:back`, kind: "trip back", aside: { want: "trip back", on: to, use, pressures, read } };
}

/** Items get their names where they are drawn. */
const NAMELESS = { itemName: (key: string): string => key };
