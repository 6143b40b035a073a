// Parts that are bought because they are at their end or will be: by what was measured, by their wear line, and by what was found wrong.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import { callsForWork } from "../core/judgement/verdict.ts";
import type { Consumable } from "../core/sheet/how.ts";
import { neededFor } from "../trade/defect-needs.ts";
import { fitsNew, isRenewed } from "../trade/renewal.ts";
import type { Garaged } from "./garage.ts";
import { FITTED, wornParts } from "./wear.ts";

/**
 * The lines that fit new parts until a day: of what was read at its limit or beyond, and of what is near it or wears down to it by then.
 * What is near its limit and goes by its wear line beyond that day waits.
 */
export function renewedUntil(g: Garaged, until: LocalDate): readonly ItemKey[] {
  const reached = new Map(wornParts(g).map(({ part, likely }) => [fitsNew(FITTED[part] as string as ItemKey), likely?.on ?? null]));
  const judged = g.facts.verdicts.flatMap(({ item, is }) => {
    const on = reached.get(fitsNew(item)) ?? null;
    if (is === "near limit" ? on === null || on <= until : callsForWork({ is })) return [fitsNew(item)];
    return [];
  });
  const byLine = [...reached].flatMap(([item, on]) => (on !== null && on <= until ? [item] : []));
  return [...new Set([...judged, ...byLine])].filter(isRenewed);
}

/** What the open defects of a bike take. */
export const neededOn = ({ defects }: Pick<Garaged, "defects">): readonly Consumable[] =>
  defects.flatMap(({ kind }) => neededFor(kind).map((what): Consumable => ({ what, count: null, spec: null, kind: null })));
