// The odometer's history as one line. Stored are dials as typed and epochs as facts; what the bike has ridden is derived here.

import { daysBetween } from "../calendar/arithmetic.ts";
import type { LocalDate } from "../calendar/dates.ts";
import type { Dial, DistanceUnit, Ridden } from "../quantity/distance.ts";

/** Why a dial starts again. */
export type EpochCause = "as bought" | "replaced" | "rolled over" | "unit changed";

/** A stretch of the bike's life under one dial: facts as they were noted. The offset is derived, never stored. */
export type Epoch = {
  readonly id: string;
  readonly from: LocalDate;
  readonly lastOfOld: Dial | null;
  readonly firstOfNew: Dial;
  readonly unit: DistanceUnit;
  readonly cause: EpochCause;
};

/** One odometer reading as logged. `order` breaks ties on one day (larger is later). */
export type OdometerReading = { readonly id: string; readonly on: LocalDate; readonly order: number; readonly dial: Dial };

/** A point of the track: what the bike had ridden, on which day. */
export type TrackPoint = { readonly on: LocalDate; readonly ridden: Ridden; readonly reading: string };

/** An epoch with what must be added to its dial to get the ridden distance. */
export type PlacedEpoch = Epoch & { readonly offset: number };

/** The odometer's history as one line that never falls, oldest first. */
export type Track = { readonly points: readonly TrackPoint[]; readonly epochs: readonly PlacedEpoch[] };

/**
 * Builds the track. Readings may come in any order; a reading belongs to the last epoch begun by its day, and on the day a dial was changed to the old one when only the old one can show it.
 * A reading that would make the line fall is passed over: it is kept in the store, and the member was asked about it when it was logged.
 */
export function buildTrack(epochs: readonly Epoch[], readings: readonly OdometerReading[]): Track {
  const placed = place(epochs);
  const points = readings
    .map((reading) => ({ reading, ridden: riddenIn(placed, reading.dial, reading.on) }))
    .sort((a, b) => compare(a.reading.on, b.reading.on) || a.reading.order - b.reading.order || a.ridden - b.ridden || compare(a.reading.id, b.reading.id));
  const kept: TrackPoint[] = [];
  for (const { reading, ridden } of points) {
    const last = kept.at(-1);
    if (last === undefined || ridden >= last.ridden) kept.push({ on: reading.on, ridden, reading: reading.id });
  }
  return { points: kept, epochs: placed };
}

/** Each epoch's offset: where the old dial ended, less where the new one began. */
function place(epochs: readonly Epoch[]): PlacedEpoch[] {
  const placed: PlacedEpoch[] = [];
  const inOrder = epochs.map((epoch, n) => ({ epoch, n })).sort((a, b) => compare(a.epoch.from, b.epoch.from) || a.n - b.n);
  for (const { epoch } of inOrder) {
    const before = placed.at(-1);
    const offset = before === undefined || epoch.lastOfOld === null ? (before?.offset ?? 0) : before.offset + epoch.lastOfOld - epoch.firstOfNew;
    placed.push({ ...epoch, offset });
  }
  return placed;
}

/** What the bike had ridden when the dial showed `dial` on that day. */
export const riddenAtDial = (track: Track, dial: Dial, on: LocalDate): Ridden => riddenIn(track.epochs, dial, on);

function riddenIn(epochs: readonly PlacedEpoch[], dial: Dial, on: LocalDate): Ridden {
  const begun = epochs.filter((epoch) => epoch.from <= on);
  let epoch = begun.at(-1) ?? epochs[0];
  // On the day of the change the old dial may have been read before it came out: a figure at or near its last belongs to it.
  while (epoch !== undefined && epoch.from === on && epoch.lastOfOld !== null && belongsToOld(dial, epoch)) {
    const earlier: PlacedEpoch | undefined = epochs[epochs.indexOf(epoch) - 1];
    if (earlier === undefined) break;
    epoch = earlier;
  }
  return (dial + (epoch?.offset ?? 0)) as Ridden;
}

const belongsToOld = (dial: Dial, epoch: Epoch): boolean =>
  dial !== epoch.firstOfNew && epoch.lastOfOld !== null && dial <= epoch.lastOfOld && Math.abs(dial - epoch.lastOfOld) < Math.abs(dial - epoch.firstOfNew);

/** What the present dial shows when the bike has ridden that far. */
export const dialAt = (track: Track, ridden: Ridden): Dial => (ridden - (track.epochs.at(-1)?.offset ?? 0)) as Dial;

/** The latest point, null when nothing was ever read. */
export const lastPoint = (track: Track): TrackPoint | null => track.points.at(-1) ?? null;

/** Where the bike stood on a day: the ends of what it can have ridden, and the likely value between the readings around it. Null without any reading. */
export function riddenOnDay(track: Track, on: LocalDate): { readonly low: Ridden; readonly likely: Ridden; readonly high: Ridden } | null {
  const { points } = track;
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return null;
  const after = points.find((point) => point.on >= on);
  if (after === undefined) return { low: last.ridden, likely: last.ridden, high: last.ridden };
  if (after.on === on) {
    const sameDay = points.filter((point) => point.on === on);
    return { low: after.ridden, likely: after.ridden, high: (sameDay.at(-1) ?? after).ridden };
  }
  const before = points[points.indexOf(after) - 1];
  // Before the first reading nothing is known but that it had ridden no further.
  if (before === undefined) return { low: 0 as Ridden, likely: first.ridden, high: first.ridden };
  const share = daysBetween(before.on, on) / daysBetween(before.on, after.on);
  return { low: before.ridden, likely: Math.round(before.ridden + (after.ridden - before.ridden) * share) as Ridden, high: after.ridden };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
