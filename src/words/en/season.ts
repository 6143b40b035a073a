// The season and a bike's papers in English: what is told beside the plan.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";

export const seasonWords = (p: Printer, today: LocalDate) => ({
  out: (nickname: string, on: LocalDate): string =>
    on > today
      ? `The season begins on ${p.date(on, today)}. Look ${nickname} over now, while there is time for parts.`
      : `The season began on ${p.date(on, today)}, and ${nickname} still stands. Look it over before its first ride.`,
  away: (nickname: string, on: LocalDate): string =>
    `The season ${on >= today ? "ends" : "ended"} on ${p.date(on, today)}. If ${nickname} is to stand, put it away with the list while the engine can still be warmed.`,
  asleep: (nickname: string, on: LocalDate): string =>
    `${nickname}: not logged since ${p.date(on, today)}. Laid up? If it rides, just write what the odometer says.`,
  date: (nickname: string, what: string, on: LocalDate): string =>
    on > today
      ? `${nickname}: ${what} on ${p.date(on, today)}, ${p.gap(today, on)}.`
      : on === today
        ? `${nickname}: ${what} today.`
        : `${nickname}: ${what} was on ${p.date(on, today)}.`,
  labels: {
    out: (nickname: string): string => `Out of storage: ${nickname}`.slice(0, 80),
    away: (nickname: string): string => `Lay-up: ${nickname}`.slice(0, 80),
    laidUp: (nickname: string): string => `${nickname} is laid up`.slice(0, 80),
    riding: (nickname: string): string => `Still riding: ${nickname}`.slice(0, 80),
  },
  rides: (nickname: string): string => `${nickname} rides on. I ask again when it has been silent for another month after its next reading.`,
  dateChanged: ({ nickname, what, on }: { readonly nickname: string; readonly what: string; readonly on: LocalDate | null }): string =>
    on === null ? `${nickname}: ${what} is taken off.` : `${nickname}: ${what} on ${p.date(on)}. I say so a month before and a week before.`,
  dates: (bikes: readonly { readonly nickname: string; readonly dates: readonly { readonly what: string; readonly on: LocalDate }[] }[]): readonly string[] => {
    const with_ = bikes.filter(({ dates }) => dates.length > 0);
    if (with_.length === 0)
      return ["No day is noted. Note one with /bike date what:insurance on:31 March. It is a plain date: what your law asks you know best."];
    return with_.map(({ nickname, dates }) => `${nickname}: ${p.list(dates.map(({ what, on }) => `${what} ${p.date(on)}`))}.`);
  },
});
