// Rechecks: one-off looks that some work asks for, a distance after it. They follow from the work records; nothing of them is stored.

import type { ItemKey } from "../ids.ts";
import type { Columns, PlanEdit, PlanItem } from "../plan/plan.ts";
import { ahead, type DistanceUnit, type Ridden } from "../quantity/distance.ts";
import { riddenOnDay, type Track } from "../usage/track.ts";
import type { Job, Outcome, Recheck } from "./facts.ts";
import { printed } from "./intervals.ts";
import { isLeft } from "./mending.ts";

/** What is looked at again after which work, how far after it, and when it is too late to be of use. Distances as printed, whole units. */
export type RecheckRule = {
  /** The look itself: an item without legs of its own, which a bike has only while it is open. */
  readonly item: PlanItem;
  readonly after: readonly { readonly item: ItemKey; readonly outcomes: readonly Outcome[] }[];
  /** Work that looks at the same by the way: it closes the look once the bike has gone half the distance to it. */
  readonly seenBy: readonly { readonly item: ItemKey; readonly outcomes: readonly Outcome[] }[];
  readonly distance: Columns;
  /** So far beyond its point nobody looks anew: what was loose has shown. */
  readonly lapses: Columns;
};

/** A rule as a bike's owner has it: the distance of their own, or none at all where they dropped it. */
export type OwnRule = { readonly rule: RecheckRule; readonly distance: Columns; readonly changed: boolean; readonly dropped: boolean };

/** The rules as the owner's edits leave them: `interval` sets the distance, `drop` and `restore` take it out and back. Later edits win. */
export function ownRules(rules: readonly RecheckRule[], edits: readonly PlanEdit[]): readonly OwnRule[] {
  return rules.map((rule) => {
    let own: OwnRule = { rule, distance: rule.distance, changed: false, dropped: false };
    for (const edit of edits) {
      if (edit.change === "interval" && edit.item === rule.item.key && edit.repeat.by === "interval")
        own = { ...own, distance: { miles: edit.repeat.every.miles, km: edit.repeat.every.km }, changed: true };
      if (edit.change === "drop" && edit.item === rule.item.key) own = { ...own, dropped: true };
      if (edit.change === "restore" && edit.item === rule.item.key) own = { ...own, dropped: false };
    }
    return own;
  });
}

/**
 * The rechecks that are open: of each rule the latest work that asks for it, unless it was looked at since or has lapsed.
 * @param upTo the bike's last reading, null without one: nothing lapses then
 */
export function rechecksOf(rules: readonly OwnRule[], jobs: readonly Job[], track: Track, column: DistanceUnit, upTo: Ridden | null): readonly Recheck[] {
  return rules.flatMap(({ rule, distance, dropped }): Recheck[] => {
    const far = printed(distance, column);
    const late = printed(rule.lapses, column);
    if (dropped || far === null || late === null) return [];
    const asking = jobs
      .filter((job) => rule.after.some(({ item, outcomes }) => item === job.item && outcomes.includes(job.outcome)))
      .flatMap((job) => {
        const ridden = placed(job, track);
        return ridden === null ? [] : [{ job, ridden }];
      })
      .sort((a, b) => a.ridden - b.ridden || (a.job.on.from < b.job.on.from ? -1 : 1));
    const last = asking.at(-1);
    if (last === undefined) return [];
    const dueAt = ahead(last.ridden, far.stretch);
    if (upTo !== null && upTo >= ahead(dueAt, late.stretch)) return [];
    const halfway = last.ridden + far.stretch / 2;
    const bySide = (job: Job): boolean =>
      rule.seenBy.some(({ item, outcomes }) => item === job.item && outcomes.includes(job.outcome)) && (placed(job, track) ?? 0) >= halfway;
    const looked = (job: Job): boolean => job.item === rule.item.key && !isLeft(job.outcome) && isLook(job, last.job, last.ridden);
    const seen = jobs.some((job) => looked(job) || bySide(job));
    return seen ? [] : [{ id: `${rule.item.key}@${last.job.id}`, item: rule.item.key, dueAt, because: rule.item.key, after: last.ridden }];
  });
}

/** A look counts when it came after the work: on a later day, or further on. On the same day without a figure it is taken at its word. */
const isLook = (look: Job, work: Job, ridden: Ridden): boolean =>
  look.on.from > work.on.from || (look.on.from === work.on.from && (look.ridden === null || look.ridden > ridden));

/** Where the bike stood when the work was done; without a figure the least it can have been. Null when nothing says. */
const placed = (job: Job, track: Track): Ridden | null => job.ridden ?? riddenOnDay(track, job.on.from)?.low ?? null;
