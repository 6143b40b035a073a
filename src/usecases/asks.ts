// What a bike asks for by itself: a reading when nobody can tell any more where its odometer stands, a charge while it is laid up, and an eye on what makes it unfit to ride.

import { addDays, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { type DistanceUnit, type Ridden, stretchOf } from "../core/quantity/distance.ts";
import type { NoticeKind } from "../core/reminding.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { CHARGE_DAYS, LOW_AGAIN } from "../trade/battery.ts";
import { defectRow } from "../trade/defects.ts";
import { chargeDay } from "./charge.ts";
import type { Garaged } from "./garage.ts";
import { awayUntil } from "./trip-asks.ts";

export type Ask =
  /** Last read on `on`; by now the dial may stand anywhere between. */
  | { readonly want: "reading"; readonly on: LocalDate; readonly unit: DistanceUnit; readonly low: number; readonly high: number }
  /** `on`: the day since which a charge is due; `low`: the volts at rest that say so, null where it goes by what such batteries lose. */
  | { readonly want: "charge"; readonly on: LocalDate; readonly low: Pick<Taken, "on" | "typed"> | null; readonly lithium: boolean }
  /** `graded`: its owner said that the bike is not to be ridden with it; else that is what is usual, and they have not said. */
  | { readonly want: "defect"; readonly on: LocalDate; readonly words: string; readonly id: string; readonly rev: number; readonly graded: boolean };

/** `key` is unique: the same thing is told once. */
type KeyedAsk = { readonly key: string; readonly kind: NoticeKind; readonly aside: Ask };
/** `next`: the day on which that can change by itself. */
export type Asks = { readonly now: readonly KeyedAsk[]; readonly next: LocalDate | null };

/** So wide that a service of the widest window could come and go unseen. */
const TOO_WIDE = { mi: stretchOf(500, "mi"), km: stretchOf(800, "km") } as const;
/** Nobody is asked sooner after a reading. */
const FEWEST_DAYS = 30;
/** How far ahead the day is looked for on which it has grown too wide. */
const AHEAD_DAYS = 30;

export function asksOf(g: Garaged): Asks {
  const all = [readingAsk(g), chargeAsk(g), defectAsks(g)];
  return { now: all.flatMap(({ now }) => now), next: all.flatMap(({ next }) => next ?? []).sort()[0] ?? null };
}

const NONE: Asks = { now: [], next: null };

/** Asked once for each reading that has grown old. */
function readingAsk(g: Garaged): Asks {
  const last = g.track.points.at(-1);
  if (last === undefined || g.bike.state !== "riding") return NONE;
  // Whoever is on the way is asked once, on the way back.
  const away = awayUntil(g);
  if (away !== null) return { now: [], next: away };
  const earliest = addDays(last.on, FEWEST_DAYS);
  const wideOn = (day: LocalDate): { low: Ridden; high: Ridden } | null => {
    const at = g.at.forecast.riddenOn(day);
    return at === null || at.high - at.low < TOO_WIDE[g.unit] ? null : at;
  };
  const now = g.today < earliest ? null : wideOn(g.today);
  if (now !== null) {
    const offset = g.track.epochs.at(-1)?.offset ?? 0;
    const aside = { want: "reading", on: last.on, unit: g.unit, low: now.low - offset, high: now.high - offset } as const;
    return { now: [{ key: `reading:${g.bike.id}:${last.on}@${last.ridden}`, kind: "reading", aside }], next: null };
  }
  const from = g.today < earliest ? earliest : addDays(g.today, 1);
  const to = addDays(from, AHEAD_DAYS);
  if (wideOn(to) === null) return { now: [], next: to };
  return { now: [], next: firstDay(from, to, (day) => wideOn(day) !== null) };
}

/** The first day on which something holds that then goes on to hold. */
function firstDay(from: LocalDate, to: LocalDate, holds: (day: LocalDate) => boolean): LocalDate {
  let [low, high] = [0, daysBetween(from, to)];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(addDays(from, middle))) high = middle;
    else low = middle + 1;
  }
  return addDays(from, low);
}

/** From the day by which to charge on; again while it stays so, and sooner where it was read too low. What was read or charged since moves that day. */
function chargeAsk(g: Garaged): Asks {
  const { battery } = g.bike.equipment;
  const charge = chargeDay(g, g.series);
  if (charge === null || charge.riding || battery === "none") return NONE;
  const { on, since, low, lithium } = charge;
  if (g.today < on) return { now: [], next: on };
  const every = low === null ? CHARGE_DAYS[battery] : LOW_AGAIN;
  const n = Math.floor(daysBetween(on, g.today) / every);
  const key = `charge:${g.bike.id}:${since}:${low === null ? "" : `${low.on}:`}${n + 1}`;
  return { now: [{ key, kind: "charge", aside: { want: "charge", on, low, lithium } }], next: addDays(on, (n + 1) * every) };
}

/** From the day after it was found: on the day itself its rider knows. What nobody graded counts as such are usually graded, so that a question left unanswered is not forgotten. */
function defectAsks(g: Garaged): Asks {
  const grave = g.defects.filter(({ grade, kind }) => (grade ?? defectRow(kind)?.usual) === "do not ride");
  const now = grave.flatMap(({ id, rev, on, words, grade }): KeyedAsk[] =>
    on < g.today ? [{ key: `defect:${g.bike.id}/${id}`, kind: "defect", aside: { want: "defect", on, words, id, rev, graded: grade !== null } }] : [],
  );
  return { now, next: grave.some(({ on }) => on >= g.today) ? addDays(g.today, 1) : null };
}
