// Parts fitted to a bike, each with a life of its own.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type PartFitted, type PartRow, partsFitted } from "../core/parts/fitted.ts";
import { between, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import type { Job } from "../core/schedule/facts.ts";
import { tyreSets } from "../core/schedule/tyre-sets.ts";
import { PART_ROWS } from "../trade/parts.ts";
import type { Ctx } from "./context.ts";
import { type DueBike, dueBike } from "./due.ts";
import type { Garaged } from "./garage.ts";
import { changedOf } from "./kits.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { piecesAt } from "./pieces.ts";
import { done, type Result } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type PartShown = PartFitted & {
  /** What was noted of it: the words of the work, a tyre's week and year. */
  readonly words: string | null;
  readonly made: string | null;
  /** Of a kit that was changed only in part: what was. */
  readonly changed: readonly string[] | null;
  /** Where one that had come off was put back on: what it is told by, and the day it went back on. */
  readonly again: { readonly label: string; readonly since: LocalDate } | null;
  /** The others of that position, which lie by. */
  readonly resting: readonly { readonly label: string; readonly ridden: Stretch }[];
};
export type PartsShown = { readonly bike: Omit<DueBike, "dues" | "first">; readonly id: BikeId; readonly parts: readonly PartShown[] };

/** Every part of one bike, as the latest work left it. */
export async function showParts(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<PartsShown>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const { dues: _dues, first: _first, ...bike } = dueBike(ctx, g);
    const parts = partsFitted(PART_ROWS, g.bike.equipment, g.facts.jobs, g.at.ridden, (item, job) => offSince(g, item, job)).map((part): PartShown => {
      const record = g.work.find((each) => each.id === part.job);
      const items = PART_ROWS.find((row) => row.part === part.part)?.items ?? [];
      const fitted = record?.detail.parts.find((each) => each.item === null || items.includes(each.item));
      const changed = record === undefined || part.kit.length === 0 ? null : changedOf({ kit: part.kit, items }, record);
      const plain = { ...part, words: changed === null ? (fitted?.words ?? null) : null, made: fitted?.made ?? null, changed };
      const row = g.facts.refitted.some((each) => each.part === part.part) ? PART_ROWS.find((each) => each.part === part.part) : undefined;
      return row === undefined ? { ...plain, again: null, resting: [] } : swapped(g, row, plain);
    });
    return done({ bike, id: g.bike.id, parts });
  });
}

/** A part of which a piece was put back on: the one that is on, with all that was ridden on it, and those that lie by. */
function swapped(g: Garaged, row: PartRow, shown: Omit<PartShown, "again" | "resting">): PartShown {
  const pieces = piecesAt(g, row);
  const on = pieces.find(({ fitted }) => fitted);
  const resting = pieces.filter(({ fitted }) => !fitted).map(({ label, ridden }) => ({ label, ridden }));
  if (on === undefined) return { ...shown, again: null, resting };
  const first = g.work.find(({ id }) => id === on.piece);
  const known = { from: g.bike.knownFrom.date, to: g.bike.knownFrom.date, typed: "" };
  const isBack = g.facts.refitted.some(({ part, fittings }) => part === row.part && fittings.filter(({ set }) => set === on.piece).length > 1);
  const again = isBack ? { label: on.label, since: on.since } : null;
  return { ...shown, job: first?.id ?? null, on: first?.on ?? known, ridden: on.ridden, words: null, made: null, changed: null, again, resting };
}

/** What was ridden since a job on other tyres than those that are on: a set that rests keeps its distance. */
function offSince(g: Garaged, item: ItemKey, job: Job): Stretch {
  const { fittings, ofTyres } = g.facts;
  const now = g.at.ridden;
  const on = fittings.at(-1);
  if (on === undefined || now === null || job.ridden === null || !ofTyres.has(item)) return 0 as Stretch;
  const set = tyreSets(fittings, job.ridden, now).find((each) => each.set === on.set);
  return (between(job.ridden as Ridden, now) - (set?.ridden ?? 0)) as Stretch;
}
