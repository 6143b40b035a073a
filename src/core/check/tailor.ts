// Which points of a list one bike gets today: by what it is fitted with, how long it stood and how cold,
// what its plan wants and what was found last time.

import type { LocalDate } from "../calendar/dates.ts";
import { type Equipment, isFitted } from "../equipment.ts";
import type { ItemKey } from "../ids.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { Status } from "../schedule/facts.ts";
import type { Checklist, ChecklistName, Point } from "./checklist.ts";

/** What an earlier check says about a point: it was not good then, or it was done at lay-up and is to be undone now. */
export type Before = { readonly list: ChecklistName; readonly on: LocalDate; readonly found: "needs work" | "done"; readonly note: string | null };

/** One thing asked in one run. Of a plan line, `item` and how it stood when the run began. */
export type RunPoint = {
  readonly key: string;
  readonly item: ItemKey | null;
  readonly status: Exclude<Status, "good"> | null;
  readonly before: Before | null;
};
export type RunSection = { readonly key: string; readonly points: readonly RunPoint[] };

/** A plan line that wants something: due, overdue, coming up, or among the first of those with no record. */
export type Wanting = { readonly item: PlanItem; readonly status: Exclude<Status, "good"> };

export type Today = {
  readonly equipment: Equipment;
  readonly planHas: ReadonlySet<ItemKey>;
  /** Days out of use; 0 for a bike that is ridden. */
  readonly stoodDays: number;
  /** The coldest it is known to have been meanwhile, in °C; null when nobody said. */
  readonly coldest: number | null;
  readonly wanting: readonly Wanting[];
  /** By point. */
  readonly before: ReadonlyMap<string, Before>;
};

const FREEZING = 0;
/** Keys of the sections that the tailoring adds. */
export const FROM_THE_PLAN = "from the plan";
export const FOUND_LAST_TIME = "found last time";

/** The key of a plan line among the points of a run. */
export const itemPoint = (item: ItemKey): string => `plan:${item}`;

/** The list as this bike gets it. What was found last time and is not on the list joins it where it can still be looked at cold. */
export function tailored(list: Checklist, points: Readonly<Record<string, Point>>, today: Today): readonly RunSection[] {
  const kept = list.sections.map(({ key, points: keys }) => ({
    key,
    points: keys.filter((each) => isAsked(points[each], today)).map((each) => run(each, today)),
  }));
  const asked = new Set(list.sections.flatMap((section) => section.points));
  const again = [...today.before].flatMap(([key, before]) => {
    const point = points[key];
    if (before.found !== "needs work" || asked.has(key) || !isAsked(point, today)) return [];
    return [{ key, late: point?.heat !== null || point.engine === "warm" }];
  });
  const lately = (late: boolean): RunSection => ({
    key: late ? `${FOUND_LAST_TIME}, warm` : FOUND_LAST_TIME,
    points: again.filter((each) => each.late === late).map((each) => run(each.key, today)),
  });
  const plan: RunSection = {
    key: FROM_THE_PLAN,
    points: today.wanting
      .filter(({ item }) => !isDone(item, kept, points))
      .map(({ item, status }) => ({ key: itemPoint(item.key), item: item.key, status, before: null })),
  };
  return [lately(false), ...kept, lately(true), plan].filter((section) => section.points.length > 0);
}

const run = (key: string, today: Today): RunPoint => ({ key, item: null, status: null, before: today.before.get(key) ?? null });

function isAsked(point: Point | undefined, { equipment, planHas, stoodDays, coldest }: Today): boolean {
  if (point === undefined || !isFitted(point.fits, equipment)) return false;
  if (point.planHas !== null && !planHas.has(point.planHas)) return false;
  if (point.stoodDays !== null && stoodDays < point.stoodDays) return false;
  return !point.frost || coldest === null || coldest <= FREEZING;
}

/** Does a point of the run do this plan line, by looking or by its reading? */
function isDone(item: PlanItem, sections: readonly RunSection[], points: Readonly<Record<string, Point>>): boolean {
  const asked = sections.flatMap((section) => section.points).flatMap(({ key }) => points[key] ?? []);
  return asked.some(
    ({ records, measures }) =>
      records.some((record) => record.item === item.key) ||
      measures.some(
        ({ kind, place }) => item.measuredBy !== null && item.measuredBy.kind === kind && (item.measuredBy.place === "both" || item.measuredBy.place === place),
      ),
  );
}
