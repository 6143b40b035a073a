// What a planned trip asks by itself, in English: before it, and on the way back.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { SpecUse } from "../../core/spec/spec.ts";
import type { Printer } from "../printer.ts";
import { capital, lowered } from "./text.ts";

/** Names that one line holds. */
const NAMED = 8;
type Pressures = readonly { readonly at: "front" | "rear"; readonly loaded: string | null; readonly solo: string | null }[];

type Ahead = {
  readonly on: LocalDate;
  readonly use: SpecUse;
  readonly pressures: Pressures;
  /** Parts measured that may not last the way. */
  readonly short: readonly string[];
  /** Open defects. */
  readonly defects: number;
  readonly ungraded: number;
};
/** How open defects are counted before a trip. */
type Open = { readonly defects: (n: number) => string; readonly ungraded: (n: number) => string };

export const tripAskWords = (p: Printer, today: LocalDate, partName: (part: string) => string, open: Open) => {
  /** A long list is cut for the phone; /trip has all of it. */
  const names = (all: readonly string[]): string => {
    const rest = all.length - NAMED;
    return capital(p.list([...all.slice(0, rest > 1 ? NAMED : all.length).map(lowered), ...(rest > 1 ? [`${rest} more`] : [])]));
  };
  return {
    /** @param before names of what falls due by its first day @param during of what does on the way @param short parts measured */
    ahead: (
      nickname: string,
      { on, use, pressures, short, defects, ungraded }: Ahead,
      before: readonly string[],
      during: readonly string[],
    ): readonly string[] => {
      const known = pressures.filter(({ loaded }) => loaded !== null);
      return [
        `${nickname}: the trip begins on ${p.date(on, today)}, ${p.gap(today, on)}.`,
        ...(defects === 0 ? [] : [`- ${open.defects(defects)}`]),
        ...(ungraded === 0 ? [] : [`- ${open.ungraded(ungraded)}`]),
        ...(before.length === 0 ? [] : [`- Before you go: ${names(before)}.`]),
        ...(during.length === 0 ? [] : [`- Falls due on the way: ${names(during)}.`]),
        ...(short.length === 0 ? [] : [`- May not last the way: ${names(short.map(partName))}. Measure, or fit new before you go.`]),
        ...(known.length === 0 ? [] : [`- Cold pressures${use === "solo" ? "" : ` ${use}`}: ${p.list(known.map(({ at, loaded }) => `${at} ${loaded}`))}.`]),
        "/trip shows all of it.",
      ];
    },
    back: (
      nickname: string,
      { on, use, pressures, read }: { readonly on: LocalDate; readonly use: SpecUse; readonly pressures: Pressures; readonly read: boolean },
    ): string => {
      const solo = pressures.filter((each) => each.solo !== null);
      const values = solo.length === 0 ? "" : ` (${p.list(solo.map((each) => `${each.at} ${each.solo}`))})`;
      return [
        `${nickname}: the trip ended on ${p.date(on, today)}.`,
        ...(read ? [] : ["What does the odometer say? Just write it."]),
        ...(use === "solo" ? [] : [`Cold pressures go back to normal for one rider${values}.`]),
      ].join(" ");
    },
  };
};
