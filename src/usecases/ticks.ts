// What is ticked at the items of a job: the records logged while it was open, or the readings that do them.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Dial } from "../core/quantity/distance.ts";
import type { Intent } from "../core/reading/intent.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import type { ItemValue } from "../core/work-detail.ts";
import type { Job } from "../store/jobs.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { isCheckedBy } from "./checked.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";

/** A record of an item. */
type Recorded = {
  readonly outcome: Outcome;
  readonly on: LocalDate;
  readonly dial: Dial | null;
  readonly found: readonly ItemValue[];
  readonly left: readonly ItemValue[];
  /** The record, null where a reading did it. */
  readonly record: string | null;
  /** How many items that record holds: a shop's bill is one. */
  readonly together: number;
  readonly doneBy: string | null;
  readonly note: string | null;
  readonly cost: string | null;
};
/** What was done at an item since the job began. */
export type Ticked = Recorded & {
  /** What else was recorded at it since the job began: it stands too. Oldest first; `after`: later than what it is ticked by. */
  readonly others: readonly (Recorded & { readonly after: boolean })[];
};

/** Nothing came of it: the item is as open as it was. */
export const isInVain = ({ outcome }: Pick<Ticked, "outcome">): boolean => outcome === "could not do";

/** The latest record of an item that was logged while the job was open, or the reading that does it. What could not be done undoes nothing that was. */
export function tickedOf(g: Garaged, job: Job, item: ItemKey): Ticked | null {
  const those = recordsIn(g, job, item).flatMap((record) => {
    const of = record.items.find((each) => each.item === item);
    const { id, on, dial, note, doneBy, detail, items } = record;
    if (of === undefined) return [];
    const { outcome, found, left } = of;
    return [{ outcome, on: on.from, dial, found, left, note, record: id, together: items.length, doneBy, cost: detail.cost?.typed ?? null }];
  });
  const last = those.findLast((each) => !isInVain(each)) ?? those.at(-1);
  const others = those.flatMap((each, n) => (each === last ? [] : [{ ...each, after: last !== undefined && n > those.indexOf(last) }]));
  if (last !== undefined && !isInVain(last)) return { ...last, others };
  const read = readAt(g, job, item);
  // What a reading does is done, whatever could not be done beside it.
  if (read !== null) return { ...read, others: those.map((each) => ({ ...each, after: false })) };
  return last === undefined ? null : { ...last, others };
}

/** A reading that does the item by itself. */
function readAt(g: Garaged, job: Job, item: ItemKey): Recorded | null {
  if (itemOf(g, item)?.measuredBy == null && !isCheckedBy(item)) return null;
  const read = g.facts.jobs.find((each) => each.item === item && each.id.includes("@") && each.on.from >= job.begunOn);
  return read === undefined
    ? null
    : { outcome: read.outcome, on: read.on.from, dial: null, found: [], left: [], record: null, together: 1, doneBy: null, note: null, cost: null };
}

/** The records of an item that were logged while the job was open. */
export const recordsIn = (g: Garaged, job: Job, item: ItemKey): readonly WorkRecord[] =>
  g.work.filter((each) => isOf(job, each) && each.items.some((of) => of.item === item));

/**
 * Was it logged while the job was open? What was logged in the moment of its beginning is of it if it was done since, or said after it:
 * identities begin with the time at which they were made, and so tell which came first.
 */
const isOf = (job: Job, { id, loggedAt, on }: WorkRecord): boolean => {
  const { begunAt, begunOn, endedAt } = job;
  return (loggedAt > begunAt || (loggedAt === begunAt && (on.to >= begunOn || id > job.id))) && (endedAt === null || loggedAt <= endedAt);
};

/** What a member did with their own hands is theirs, whatever a bill of the whole service says; what could not be done, or was found wrong, the shop may well have done. */
function isOwn(ticked: Ticked, { work }: Garaged): boolean {
  const { outcome, record } = ticked;
  const byShop = work.find(({ id }) => id === record)?.detail.by ?? null;
  return byShop === null && !isInVain(ticked) && outcome !== "found wrong";
}

/** The intents, each question about a whole service with what the member ticked off in the job that is open on that bike. */
export async function withOwnTicks(q: Repos, all: readonly Garaged[], intents: readonly Intent[]): Promise<readonly Intent[]> {
  const asked = intents.filter(({ bike, gaps }) => bike !== null && gaps.some(({ need }) => need === "service"));
  if (asked.length === 0) return intents;
  const jobs = await q.jobs.openOf([...new Set(asked.flatMap(({ bike }) => bike ?? []))]);
  const ownOf = (intent: Intent): readonly ItemKey[] => {
    const g = intent.bike === null ? null : pick(all, intent.bike);
    const job = jobs.findLast(({ bike }) => bike === intent.bike);
    if (g === null || job === undefined) return [];
    return job.items.flatMap(({ item }) => {
      const ticked = tickedOf(g, job, item);
      return ticked !== null && isOwn(ticked, g) ? [item] : [];
    });
  };
  return intents.map((intent) =>
    asked.includes(intent) ? { ...intent, gaps: intent.gaps.map((gap) => (gap.need === "service" ? { ...gap, own: ownOf(intent) } : gap)) } : intent,
  );
}
