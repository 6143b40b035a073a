// Parts fitted: what is on the bike at each position, since when, and how far it has gone. It follows from the work records; nothing of it is stored.

import type { VagueDate } from "../calendar/dates.ts";
import type { EquipmentRule } from "../equipment.ts";
import { type Equipment, isFitted } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import { between, type Ridden, type Stretch } from "../quantity/distance.ts";
import type { Job, Outcome } from "../schedule/facts.ts";

/** A position, and the work that puts a new part there. */
export type PartRow = {
  readonly part: string;
  readonly items: readonly ItemKey[];
  readonly outcomes: readonly Outcome[];
  readonly fits: EquipmentRule;
  /** What else is counted and read of the piece that is on, such as the depth of a tyre. */
  readonly goesWith: readonly ItemKey[];
  /** What is changed together with it, as a kit. */
  readonly kit: readonly string[];
  /** May a used one go on again? */
  readonly again: boolean;
};

/** A part as it stands. `job` null: nothing is known of it but that it is there. `ridden` null: at what odometer it was fitted is not known. */
export type PartFitted = {
  readonly part: string;
  readonly job: string | null;
  readonly on: VagueDate | null;
  readonly ridden: Stretch | null;
  readonly kit: readonly string[];
};

/** Every part that the bike's equipment brings, as the latest work left it. @param off what was ridden since a job on another set of tyres, by job */
export function partsFitted(
  rows: readonly PartRow[],
  equipment: Equipment,
  jobs: readonly Job[],
  at: Ridden | null,
  off: (item: ItemKey, job: Job) => Stretch,
): readonly PartFitted[] {
  return rows
    .filter((row) => isFitted(row.fits, equipment))
    .map(({ part, items, outcomes, kit }) => {
      const last = jobs.filter((job) => items.includes(job.item) && outcomes.includes(job.outcome)).reduce<Job | null>(later, null);
      if (last === null) return { part, job: null, on: null, ridden: null, kit };
      const gone = last.ridden === null || at === null ? null : ((between(last.ridden, at) - off(last.item, last)) as Stretch);
      return { part, job: last.id, on: last.on, ridden: gone === null ? null : (Math.max(0, gone) as Stretch), kit };
    });
}

const later = (a: Job | null, b: Job): Job =>
  a === null || b.on.from > a.on.from || (b.on.from === a.on.from && (b.ridden ?? -1) >= (a.ridden ?? -1)) ? b : a;
