// The riding season of a group, and what a bike wants told around it: out of storage before it begins, lay-up before it ends,
// and whether one that nobody logs any more was put away.

import { addDays, isLocalDate, localDate, yearOf } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";

/** Month and day, `03-15`, of the first and the last day of the season; it may run over the new year. */
export type SeasonWindow = { readonly from: string; readonly to: string };

/** Common practice where winters bring salt and frost: half of March to the end of October, and the same half a year away. */
export const USUAL_WINDOWS = { north: { from: "03-15", to: "10-31" }, south: { from: "09-15", to: "04-30" } } as const satisfies Record<string, SeasonWindow>;

/** A window as stored, `03-15/10-31`; null for "none", for nothing, and for what is none. */
export function windowOf(stored: string | null): SeasonWindow | null {
  const [from = "", to = "", more] = stored?.split("/") ?? [];
  const isDay = (text: string): boolean => /^\d\d-\d\d$/u.test(text) && isLocalDate(`2027-${text}`);
  return isDay(from) && isDay(to) && more === undefined && from !== to ? { from, to } : null;
}

/** The first such day of a year on or after a date. */
function nextOn(day: string, after: LocalDate): LocalDate {
  const here = localDate(`${yearOf(after)}-${day}`);
  return here >= after ? here : localDate(`${yearOf(after) + 1}-${day}`);
}

/** What there is to tell of a bike. `on`: the day it is about; with the bike it makes the notice one of a kind. */
export type SeasonWant =
  | { readonly want: "out of storage"; readonly on: LocalDate }
  | { readonly want: "lay-up"; readonly on: LocalDate }
  /** `on`: when it was last logged. */
  | { readonly want: "silent"; readonly on: LocalDate };

export type Seasonal = {
  readonly window: SeasonWindow;
  readonly laidUp: boolean;
  /** The last day on which anything was read or done; null when nothing ever was. */
  readonly lastLogged: LocalDate | null;
  /** When a check out of storage, and one for lay-up, was last finished. */
  readonly lastOut: LocalDate | null;
  readonly lastAway: LocalDate | null;
};

/** Days before the season in which a bike is brought out, and before its end in which it is put away. */
const BEFORE = { out: 21, away: 14 } as const;
/** Days after either edge in which it is still worth saying. */
const AFTER = 28;
/** A check that was finished so many days before counts for this season. */
const COUNTS = 90;
/** Silence of so many days, so many days after the season, asks whether the bike was put away. */
const SILENT = 30;
const PAST_THE_END = 14;

/** What a bike wants told on a day; at most one thing. */
export function seasonWant(of: Seasonal, today: LocalDate): SeasonWant | null {
  const begins = nextOn(of.window.from, addDays(today, -AFTER));
  const ends = nextOn(of.window.to, addDays(today, -AFTER));
  const fresh = (done: LocalDate | null, edge: LocalDate): boolean => done !== null && done >= addDays(edge, -COUNTS);
  if (of.laidUp) return today >= addDays(begins, -BEFORE.out) && !fresh(of.lastOut, begins) ? { want: "out of storage", on: begins } : null;
  if (isSilent(of, today)) return { want: "silent", on: of.lastLogged as LocalDate };
  return today >= addDays(ends, -BEFORE.away) && !fresh(of.lastAway, ends) ? { want: "lay-up", on: ends } : null;
}

/** Well past the end of the season, well before the next, and nothing logged for a month. */
function isSilent({ window, lastLogged }: Seasonal, today: LocalDate): boolean {
  const next = nextOn(window.from, today);
  const ended = nextOn(window.to, addDays(next, -366));
  const last = ended < next ? ended : null;
  return (
    last !== null && today >= addDays(last, PAST_THE_END) && today < addDays(next, -BEFORE.out) && lastLogged !== null && lastLogged <= addDays(today, -SILENT)
  );
}

/** The next day on which that may change by itself. */
export function nextSeasonEdge(of: Seasonal, today: LocalDate): LocalDate | null {
  const after = addDays(today, 1);
  const days = [nextOn(of.window.from, addDays(after, BEFORE.out)), nextOn(of.window.to, addDays(after, BEFORE.away))];
  const edges = [
    addDays(days[0] as LocalDate, -BEFORE.out),
    addDays(days[1] as LocalDate, -BEFORE.away),
    addDays(nextOn(of.window.to, addDays(after, -PAST_THE_END)), PAST_THE_END),
    ...(of.lastLogged === null ? [] : [addDays(of.lastLogged, SILENT)]),
  ];
  return edges.filter((day) => day > today).sort()[0] ?? null;
}

/** The next turn of the season that is near enough to count the days to; `list`: the check that it is time for, as for each bike. */
export type Countdown = { readonly season: "begins" | "ends"; readonly on: LocalDate; readonly list: "out of storage" | "lay-up" | null };

/** Days before either turn from which they are counted. */
const COUNTED = { begins: 56, ends: 28 } as const;

/** Null: neither turn is near. */
export function seasonCountdown(window: SeasonWindow, today: LocalDate): Countdown | null {
  const [begins, ends] = [nextOn(window.from, today), nextOn(window.to, today)];
  const within = (on: LocalDate, days: number): boolean => on <= addDays(today, days);
  if (within(ends, COUNTED.ends)) return { season: "ends", on: ends, list: within(ends, BEFORE.away) ? "lay-up" : null };
  return within(begins, COUNTED.begins) ? { season: "begins", on: begins, list: within(begins, BEFORE.out) ? "out of storage" : null } : null;
}
