// Readings that count as the check of an item: which of the plan they did, and what is still lacking of others.

import type { BikeId, ItemKey } from "../core/ids.ts";
import type { MeasuredBy, PlanItem } from "../core/plan/plan.ts";
import type { Due, Job } from "../core/schedule/facts.ts";
import { CHECKED_BY, CHECKED_IN_PART, type CheckLacks } from "../trade/checked.ts";
import { endOf } from "../trade/judged.ts";
import type { Ctx } from "./context.ts";
import type { Judged } from "./judged.ts";

type Row = readonly [string, (typeof CHECKED_BY)[keyof typeof CHECKED_BY]];
const ROWS: readonly Row[] = Object.entries(CHECKED_BY);

/** Is the item looked at by a reading within limits? */
export const isCheckedBy = (item: string): boolean => ROWS.some(([key]) => key === item);

const isWithin = ({ judgement: { is } }: Pick<Judged, "judgement">): boolean => is === "within" || is === "near limit";

/** The times each such item was looked at by a reading within limits. */
export function checkedJobs(items: readonly PlanItem[], judged: readonly Judged[]): Job[] {
  return ROWS.flatMap(([key, kind]) => {
    const item = items.find((each) => each.key === key);
    const days = item === undefined ? [] : [...new Set(judged.filter((each) => each.kind === kind && isWithin(each)).map(({ on }) => on))].sort();
    return days.map(
      (on): Job => ({
        ...{ id: `${kind}@${on}`, item: key as string as ItemKey, on: { from: on, to: on, typed: "" }, ridden: null, hours: null },
        ...{ outcome: "inspected, within limits", how: "did it" },
      }),
    );
  });
}

/** An item that readings counted for; `lacks`: what it still wants to be looked at, null where it is looked at by them. */
export type Counted = { readonly bike: BikeId; readonly nickname: string; readonly item: ItemKey; readonly called: string; readonly lacks: CheckLacks | null };

/** As much of a bike as telling it takes. */
type Counting = {
  readonly bike: { readonly id: BikeId; readonly nickname: string };
  readonly plan: { readonly items: readonly PlanItem[] };
  readonly facts: { readonly jobs: readonly Job[] };
  readonly judged: readonly Judged[];
};

/**
 * What readings counted for that the plan was asking for.
 * @param was how its items stood before them
 * @param judged what came of judging the readings
 */
export function countedFor(
  ctx: Pick<Ctx, "itemName">,
  after: Counting,
  was: readonly Due[],
  judged: readonly Judged[],
  recorded: ReadonlySet<ItemKey>,
): readonly Counted[] {
  const asked = new Map(was.filter(({ status, habit }) => !habit && status !== "good").map((due) => [due.item, due]));
  const days = new Set<string>(judged.map(({ on }) => on));
  const { id, nickname } = after.bike;
  return after.plan.items.flatMap(({ key, called, measuredBy }): readonly Counted[] => {
    if (!asked.has(key) || recorded.has(key)) return [];
    const told = { bike: id, nickname, item: key, called: ctx.itemName(key, called) };
    const those =
      measuredBy === null
        ? []
        : judged.filter(({ kind, place }) => kind === measuredBy.kind && (isAnyEnd(measuredBy.place) || endOf(place) === measuredBy.place));
    const jobs = after.facts.jobs.filter((job) => job.item === key && job.id.includes("@") && days.has(job.on.from));
    if (jobs.length > 0 && (those.length > 0 ? those.every(isWithin) : judged.some((each) => isOf(key, each.kind) && isWithin(each))))
      return [{ ...told, lacks: null }];
    if (jobs.length === 0 && those.length > 0 && those.every((each) => isWithin(each) && endOf(each.place) !== each.place))
      return [{ ...told, lacks: "other side" }];
    const part = Object.entries(CHECKED_IN_PART).find(([item]) => item === key)?.[1];
    const some = judged.filter(({ kind }) => (part?.kinds as readonly string[] | undefined)?.includes(kind) === true);
    if (part === undefined || some.length === 0 || !some.every(isWithin)) return [];
    const lacks =
      part.lacks === "every valve" && areOfOneSide(after.judged.filter(({ kind, on }) => kind === some[0]?.kind && days.has(on))) ? "other valves" : part.lacks;
    return [{ ...told, lacks }];
  });
}

/** Intake valves alone, or exhaust valves. */
const areOfOneSide = (valves: readonly Judged[]): boolean =>
  (["intake", "exhaust"] as const).some((side) => valves.every(({ place }) => place?.startsWith(side) === true));

const isAnyEnd = (place: MeasuredBy["place"]): boolean => place === null || place === "both";

const isOf = (key: ItemKey, kind: Judged["kind"]): boolean => ROWS.some(([item, by]) => item === key && by === kind);
