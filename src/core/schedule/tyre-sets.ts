// Sets of tyres swapped back and forth: what is done to a set counts for that set, and only what is ridden on it.

import type { LocalDate } from "../calendar/dates.ts";
import type { ItemKey } from "../ids.ts";
import { ahead, between, type Ridden, type Stretch } from "../quantity/distance.ts";
import type { Facts, Fitting } from "./facts.ts";
import type { PlacedJob } from "./history.ts";
import { madeAt } from "./measured.ts";

/** The name under which the fitting of a set is kept among a bike's work; it is no item of a plan. */
export const TYRES_FITTED = "tyres.fit" as ItemKey;

/** A set, as it stands: `ridden` on it in all since it was first named, as far as `upTo`. */
export type TyreSet = { readonly set: string; readonly ridden: Stretch; readonly fitted: boolean; readonly since: LocalDate };

const NONE = 0 as Stretch;

/** Every set of a bike, in the order in which they were first fitted. @param start where the bike came to its rider, which is where the first set begins */
export function tyreSets(fittings: readonly Fitting[], start: Ridden, upTo: Ridden): readonly TyreSet[] {
  const names = [...new Set(fittings.map(({ set }) => set))];
  const last = fittings.at(-1);
  return names.map((set) => ({
    set,
    ridden: riddenOnSet(fittings, set, start, start, upTo),
    fitted: last?.set === set,
    since: (fittings.findLast((each) => each.set === set) as Fitting).on,
  }));
}

/** What was ridden on a set between two points of the track. */
export function riddenOnSet(fittings: readonly Fitting[], set: string, start: Ridden, from: Ridden, to: Ridden): Stretch {
  let total = 0;
  fittings.forEach((fitting, n) => {
    if (fitting.set !== set) return;
    const begins = Math.max(fitting.ridden ?? start, from);
    const ends = Math.min(fittings[n + 1]?.ridden ?? to, to);
    total += Math.max(0, ends - begins);
  });
  return total as Stretch;
}

/** The set that a reading was taken of; on the day of a swap, by which of the two was put on record first. Null where no set is named. */
export function setReadOf(fittings: readonly Fitting[], read: { readonly id: string; readonly on: LocalDate; readonly loggedAt: string }): string | null {
  const isBefore = ({ on, at, id = "" }: Fitting): boolean =>
    on < read.on || (on === read.on && (at === undefined || at < read.loggedAt || (at === read.loggedAt && madeAt({ id }) <= madeAt(read))));
  return (fittings.findLast(isBefore) ?? fittings[0])?.set ?? null;
}

/** The set that was on when a job was done; on the day of a swap, the one that was put on. */
function setAt(fittings: readonly Fitting[], { job, ridden }: PlacedJob): string | null {
  const by = ridden === null ? (each: Fitting) => each.on <= job.on.from : (each: Fitting) => each.ridden === null || each.ridden <= ridden;
  return (fittings.findLast(by) ?? fittings[0])?.set ?? null;
}

/** What was swapped that an item goes with: the sets of tyres, or the pieces of a part; empty where nothing was. */
export const swapsOf = (item: ItemKey, { fittings, ofTyres, refitted }: Pick<Facts, "fittings" | "ofTyres" | "refitted">): readonly Fitting[] =>
  ofTyres.has(item) && fittings.length > 0 ? fittings : (refitted.find(({ items }) => items.has(item))?.fittings ?? []);

/**
 * The facts and jobs of an item, as they are for the set that is on: the jobs done to it, each with what was ridden on others since.
 * Of a set on which nothing is recorded, what is known begins where it was first fitted. Any other part of which a piece was put back on counts in the same way.
 * The same as given where nothing was swapped that the item goes with.
 */
export function ofTheSetFitted(item: ItemKey, jobs: readonly PlacedJob[], facts: Facts): { readonly jobs: readonly PlacedJob[]; readonly facts: Facts } {
  const fittings = swapsOf(item, facts);
  const fitted = fittings.at(-1);
  if (fitted === undefined) return { jobs, facts };
  const start = facts.knownFrom.ridden;
  const off = (from: Ridden): Stretch => {
    const now = fitted.ridden ?? from;
    return now <= from ? NONE : ((between(from, now) - riddenOnSet(fittings, fitted.set, start, from, now)) as Stretch);
  };
  const own = jobs.filter((job) => setAt(fittings, job) === fitted.set).map((job) => ({ ...job, off: job.ridden === null ? NONE : off(job.ridden) }));
  const first = fittings.find(({ set }) => set === fitted.set) ?? fitted;
  // The set that was on when the bike came counts from there, less what was ridden on others.
  if (first.ridden === null) return { jobs: own, facts: { ...facts, knownFrom: { ...facts.knownFrom, ridden: ahead(start, off(start)) } } };
  return { jobs: own, facts: { ...facts, knownFrom: { date: first.on, ridden: ahead(first.ridden, off(first.ridden)), wholeSinceNew: false } } };
}
