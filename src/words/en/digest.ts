// A group's digest of the week in English: five lines at most.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { WeekHour } from "../../core/reminding.ts";
import type { Countdown } from "../../core/season/season.ts";
import type { Printer } from "../printer.ts";
import { WEEKDAYS } from "./weekdays.ts";

type Bike = { readonly nickname: string; readonly owner: string | null; readonly dueNow: number; readonly next: LocalDate | null };
type Digest = {
  readonly logged: { readonly readings: number; readonly jobs: number; readonly bikes: number } | null;
  readonly due: readonly Bike[];
  readonly soon: readonly Bike[];
  readonly season: Countdown | null;
};

/** Bikes that one line names. */
const NAMED = 4;

export const digestWords = (p: Printer, today: LocalDate) => {
  const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
  const bike = ({ nickname, owner }: Bike): string => (owner === null ? nickname : `${nickname} (${owner})`);
  const named = (bikes: readonly Bike[], say: (each: Bike) => string): string => {
    const rest = bikes.length - NAMED;
    return `${bikes.slice(0, NAMED).map(say).join("; ")}${rest > 0 ? `; and ${count(rest, "more bike", "more bikes")}` : ""}`;
  };
  return {
    title: "This week in the group",
    lines: ({ logged, due, soon, season }: Digest): readonly string[] => [
      ...(logged === null
        ? []
        : [
            `${p.list([...(logged.readings === 0 ? [] : [count(logged.readings, "reading", "readings")]), ...(logged.jobs === 0 ? [] : [count(logged.jobs, "job", "jobs")])])} logged on ${count(logged.bikes, "bike", "bikes")}.`,
          ]),
      ...(due.length === 0 ? [] : [`Due now: ${named(due, (each) => `${bike(each)}, ${count(each.dueNow, "item", "items")}`)}.`]),
      ...(soon.length === 0 ? [] : [`Coming up: ${named(soon, (each) => `${bike(each)}${each.next === null ? "" : ` about ${p.date(each.next, today)}`}`)}.`]),
      ...(season === null ? [] : [`The riding season ${season.season} on ${p.date(season.on, today)}, ${p.gap(today, season.on)}.`]),
    ],
    /** A button in the channel: each member gets their own. */
    mine: (list: "out of storage" | "lay-up"): string => (list === "lay-up" ? "Put my bikes away" : "Bring my bikes out"),
    /** Behind "why did I get this". */
    why: ({ weekday, time }: WeekHour): readonly string[] => [
      `The group's digest comes once a week, ${WEEKDAYS[weekday - 1]} at ${time} by the group's clock, when there is something to say. Whoever manages the server moves it with /group digest:, or stops it with /group digest:off.`,
      "It names only bikes whose owners said so with /bike change group-picture:yes, never what was found wrong, and counts what was logged only where three members or more did.",
    ],
    /** Among the group's settings. */
    setting: (digest: WeekHour | "off", hasChannel: boolean): string =>
      digest === "off"
        ? "The digest of the week is off; /group digest:Sunday starts it."
        : `The digest of the week comes ${WEEKDAYS[digest.weekday - 1]} at ${digest.time}${hasChannel ? " into the reading channel; /group digest:off stops it" : ", once a reading channel is named"}.`,
  };
};
