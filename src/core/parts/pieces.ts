// Parts that came off and went on again: which piece was on when, and how far each was ridden. A piece is known by the work that first put it on.

import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import type { Ridden, Stretch } from "../quantity/distance.ts";
import type { Fitting, Job, Refitted } from "../schedule/facts.ts";
import { riddenOnSet } from "../schedule/tyre-sets.ts";
import type { PartRow } from "./fitted.ts";

/** The piece that was on when the bike came to its rider. */
export const FIRST_PIECE = "first";

/** A piece put back on. `label`: what it is told by: what was noted of it, else the day on which it was first fitted; empty for the one that the bike came with. */
export type Refit = { readonly part: string; readonly piece: string; readonly label: string };

/** The name under which putting a piece back on is kept among a bike's work; it is no item of a plan. */
export const refitKey = ({ part, piece, label }: Refit): ItemKey => ["refit", part, piece, label].join("/") as ItemKey;

/** What such a name says; null for every other item. */
export function refitIn(key: string): Refit | null {
  const [head, part, piece, ...label] = key.split("/");
  return head !== "refit" || part === undefined || piece === undefined ? null : { part, piece, label: label.join("/") };
}

/** A piece as it stands: what was ridden on it in all while the bike was its rider's. `since`: the day it last went on. */
export type Piece = { readonly piece: string; readonly ridden: Stretch; readonly fitted: boolean; readonly since: LocalDate };

/**
 * The parts of which some piece was put back on, with the pieces in the order in which they went on. Parts of which none was follow from the last job alone.
 * @param place where a job was done by the odometer, null when that cannot be told
 * @param start where the bike came to its rider
 */
export function refittedParts(
  rows: readonly PartRow[],
  jobs: readonly Job[],
  place: (job: Job) => Ridden | null,
  start: { readonly date: LocalDate; readonly ridden: Ridden },
): readonly Refitted[] {
  return rows.flatMap((row): readonly Refitted[] => {
    const isBack = (job: Job): boolean => refitIn(job.item)?.part === row.part;
    return jobs.some(isBack) ? [{ part: row.part, items: new Set([...row.items, ...row.goesWith]), fittings: fittingsOf(row, jobs, place, start) }] : [];
  });
}

/** Every piece of a position that was ever on while the bike was its rider's, by when it went on; the one that the bike came with first. */
export function fittingsOf(
  row: PartRow,
  jobs: readonly Job[],
  place: (job: Job) => Ridden | null,
  start: { readonly date: LocalDate; readonly ridden: Ridden },
): readonly Fitting[] {
  const isBefore = ({ on, ridden }: Job): boolean => on.to < start.date || (ridden !== null && ridden < start.ridden);
  const placed = jobs.flatMap((job): { readonly fitting: Fitting; readonly came: boolean }[] => {
    const back = refitIn(job.item);
    const isNew = row.items.includes(job.item) && row.outcomes.includes(job.outcome);
    if (!isNew && back?.part !== row.part) return [];
    const fitting = {
      set: isNew ? job.id : (back?.piece ?? FIRST_PIECE),
      on: job.on.from,
      ridden: place(job) ?? start.ridden,
      ...(job.at === undefined ? {} : { at: job.at, id: job.id }),
    };
    return [{ fitting, came: isNew && isBefore(job) }];
  });
  const went = placed.toSorted(({ fitting: a }, { fitting: b }) => (a.ridden ?? 0) - (b.ridden ?? 0) || (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  // What is known of the one that it came with, from before it came, is no other piece.
  const last = went.findLastIndex(({ came }) => came);
  const first: Fitting = { set: FIRST_PIECE, on: start.date, ridden: null };
  return last < 0 ? [first, ...went.map(({ fitting }) => fitting)] : went.slice(last).map(({ fitting }) => fitting);
}

const NEW = 0 as Ridden;

/** Every piece of a position, as it stands. @param upTo where the bike is now @param start where it came to its rider */
export function piecesOf(fittings: readonly Fitting[], start: Ridden, upTo: Ridden): readonly Piece[] {
  const on = fittings.at(-1)?.set;
  return [...new Set(fittings.map(({ set }) => set))].map((piece) => ({
    piece,
    ridden: riddenOnSet(fittings, piece, start, NEW, upTo),
    fitted: piece === on,
    since: fittings.findLast(({ set }) => set === piece)?.on ?? ("" as LocalDate),
  }));
}
