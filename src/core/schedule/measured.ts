// Items that a reading does: a tread depth logged is the tread measured, a pad's thickness the pads. An item that asks for more than a figure, such as sprockets looked at beside the chain, is none of these.

import type { LocalDate } from "../calendar/dates.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { ReadingDetail } from "../reading/detail.ts";
import type { Place, ReadingKind, ReadingUnit } from "../reading/kinds.ts";
import type { Job } from "./facts.ts";

/** A day on which something was read at a place: the latest, or for a bike whose tyres are swapped every one. */
export type Measured = { readonly kind: ReadingKind; readonly place: Place | null; readonly on: LocalDate };

/** A reading of the latest day at its place, with all that judging it takes. `value` in the canonical unit of its kind; `inOneDay` puts those of one day in order. */
export type Taken = Measured & {
  readonly id: string;
  readonly value: number;
  readonly unit: ReadingUnit;
  /** As it was typed, its unit with it. */
  readonly typed: string;
  readonly detail: ReadingDetail | null;
  readonly loggedAt: string;
  readonly ordinal: number;
  /** What it was said in; null or absent where it was in none. */
  readonly message?: string | null;
};

/** When a record was put down, and its place among what was said with it. */
type Logged = { readonly id: string; readonly loggedAt: string; readonly ordinal: number };

/** Those of one day as they were logged: of one moment, as where a clock stands still, in the order in which they were made, and of one message as they were said. */
export const inOneDay = (a: Logged, b: Logged): number => compare(a.loggedAt, b.loggedAt) || compare(madeAt(a), madeAt(b)) || a.ordinal - b.ordinal;
/** When a row was made, by the machine's own clock: an id begins with it, to the millisecond (RFC 9562, version 7). Only ever told apart within one moment of the bot's clock. */
export const madeAt = ({ id }: { readonly id: string }): string => id.slice(0, 13);
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The times each such item was done: a reading at its place; of both places, the one read longest ago tells. */
export function measuredJobs(items: readonly PlanItem[], measured: readonly Measured[]): Job[] {
  return items.flatMap(({ key, measuredBy }) => {
    if (measuredBy === null) return [];
    const { kind, place } = measuredBy;
    const places = place === "both" ? BOTH : [place];
    const read = measured.filter((each) => each.kind === kind && places.some((at) => at === each.place || sidesOf(at).some((side) => side === each.place)));
    // As it stood on each of those days.
    const done = read.map(({ on: day }) => places.map((at) => lookedAt(at, read, day)).reduce((a, b) => (a === null || b === null ? null : a < b ? a : b)));
    return [...new Set(done)]
      .filter((on) => on !== null && on !== undefined)
      .sort()
      .map((on) => ({ id: `${kind}@${on}`, item: key, on: { from: on, to: on, typed: "" }, ridden: null, hours: null, outcome: "done", how: "did it" }));
  });
}

const BOTH: readonly Place[] = ["front", "rear"];
const SIDES: readonly Place[] = ["front left", "front right"];
const sidesOf = (at: Place | null): readonly Place[] => (at === "front" ? SIDES : []);

/** The day up to which all of a place was read: at once, or of its two sides the one read longest ago; null where it never was. */
function lookedAt(at: Place | null, read: readonly Measured[], day: LocalDate): LocalDate | null {
  const of = (place: Place | null) => read.filter((each) => each.place === place && each.on <= day).reduce<LocalDate | null>(later, null);
  const whole = of(at);
  const [left, right] = sidesOf(at).map(of);
  const sides = left == null || right == null ? null : left < right ? left : right;
  return whole === null || (sides !== null && sides > whole) ? sides : whole;
}

const later = (latest: LocalDate | null, { on }: Measured): LocalDate => (latest === null || on > latest ? on : latest);
