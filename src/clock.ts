// The only place that asks what time it is.

import type { Instant } from "./core/calendar/dates.ts";
import { addDuration, instantOfMillis, millisOf } from "./core/calendar/zones.ts";

export type Clock = { readonly now: () => Instant };

export const realClock: Clock = { now: () => instantOfMillis(Date.now()) };

/** A clock that can be moved forward: real time with an offset, or a frozen moment. */
export type PracticeClock = Clock & {
  /** Moves on to a moment; never back. */
  readonly moveTo: (at: Instant) => void;
  /** Milliseconds ahead of real time; null when frozen. */
  readonly offset: () => number | null;
};

/** @param frozen the moment at which the clock stands, or null for real time @param offset milliseconds to begin with */
export function practiceClock(frozen: Instant | null, offset: number): PracticeClock {
  let stands = frozen;
  let ahead = offset;
  const now = (): Instant => stands ?? instantOfMillis(Date.now() + ahead);
  return {
    now,
    moveTo(at) {
      if (at <= now()) return;
      if (stands === null) ahead += millisOf(at) - millisOf(now());
      else stands = at;
    },
    offset: () => (stands === null ? ahead : null),
  };
}

/** `60d`, `2w`, `3m`, `1y`, `12h`, or an ISO 8601 duration, from a moment. @throws RangeError when it is neither */
export function later(from: Instant, typed: string): Instant {
  const short = /^(\d{1,5})\s*(h|d|w|m|y)[a-z]*$/iu.exec(typed.trim());
  if (short === null) return addDuration(from, typed.trim().toUpperCase());
  const [, count = "0", unit = "d"] = short;
  return addDuration(from, unit.toLowerCase() === "h" ? `PT${count}H` : `P${count}${unit.toUpperCase()}`);
}
