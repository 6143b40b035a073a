// Items that a reading does: a tread depth logged is the tread measured.

import type { LocalDate } from "../calendar/dates.ts";
import type { PlanItem } from "../plan/plan.ts";
import type { ReadingDetail } from "../reading/detail.ts";
import type { Place, ReadingKind, ReadingUnit } from "../reading/kinds.ts";
import type { Job } from "./facts.ts";

/** The latest day on which something was read at a place. */
export type Measured = { readonly kind: ReadingKind; readonly place: Place | null; readonly on: LocalDate };

/** A reading of the latest day at its place, with all that judging it takes. `value` in the canonical unit of its kind; `loggedAt` and `ordinal` put those of one day in order. */
export type Taken = Measured & {
  readonly id: string;
  readonly value: number;
  readonly unit: ReadingUnit;
  readonly detail: ReadingDetail | null;
  readonly loggedAt: string;
  readonly ordinal: number;
};

/** The last time each such item was done: the latest reading at its place; of both places, the one read longest ago tells. */
export function measuredJobs(items: readonly PlanItem[], measured: readonly Measured[]): Job[] {
  return items.flatMap(({ key, measuredBy }) => {
    if (measuredBy === null) return [];
    const { kind, place } = measuredBy;
    const days = (place === "both" ? BOTH : [place]).map((at) =>
      measured.filter((each) => each.kind === kind && each.place === at).reduce<LocalDate | null>(later, null),
    );
    const on = days.reduce((a, b) => (a === null || b === null ? null : a < b ? a : b));
    if (on === undefined || on === null) return [];
    return [{ id: `${kind}@${on}`, item: key, on: { from: on, to: on, typed: "" }, ridden: null, hours: null, outcome: "done", how: "did it" }];
  });
}

const BOTH: readonly Place[] = ["front", "rear"];
const later = (latest: LocalDate | null, { on }: Measured): LocalDate => (latest === null || on > latest ? on : latest);
