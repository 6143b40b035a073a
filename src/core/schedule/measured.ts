// Items that a reading does: a tread depth logged is the tread measured.

import type { LocalDate } from "../calendar/dates.ts";
import type { PlanItem } from "../plan/plan.ts";
import { type Place, READING_KINDS, type ReadingKind } from "../reading/kinds.ts";
import type { Job } from "./facts.ts";

/** The latest day on which something was read at a place. */
export type Measured = { readonly kind: ReadingKind; readonly place: Place | null; readonly on: LocalDate };

/** The last time each such item was done: when all its places had been read, so the one read longest ago tells. */
export function measuredJobs(items: readonly PlanItem[], measured: readonly Measured[]): Job[] {
  return items.flatMap((item) => {
    const { measuredBy: kind } = item;
    if (kind === null) return [];
    const places: readonly (Place | null)[] = READING_KINDS[kind].places.length === 0 ? [null] : READING_KINDS[kind].places;
    const days = places.map((place) => measured.filter((each) => each.kind === kind && each.place === place).reduce<LocalDate | null>(later, null));
    const on = days.reduce((a, b) => (a === null || b === null ? null : a < b ? a : b));
    if (on === undefined || on === null) return [];
    return [{ id: `${kind}@${on}`, item: item.key, on: { from: on, to: on, typed: "" }, ridden: null, hours: null, outcome: "done", how: "did it" }];
  });
}

const later = (latest: LocalDate | null, { on }: Measured): LocalDate => (latest === null || on > latest ? on : latest);
