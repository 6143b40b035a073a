// What wears does not grow back: more lining, tread or disc than was there last, with nothing new on record since, is asked about.

import { refitIn } from "../core/parts/pieces.ts";
import type { Gap, Intent, LogReading } from "../core/reading/intent.ts";
import { canonicalReading } from "../core/reading/value.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { TYRES_FITTED } from "../core/schedule/tyre-sets.ts";
import { defectRow } from "../trade/defects.ts";
import { endOf, isJudged, judgedRow } from "../trade/judged.ts";
import type { Garaged } from "./garage.ts";

/** The reading before that it has grown beyond, as the question tells it; null where it has not, or where something new explains it. @param beside what is said with it @param gone readings that it gives way to */
export function grownBeyond(
  intent: LogReading,
  beside: readonly Intent[],
  g: Garaged,
  gone: readonly { readonly id: string }[],
): NonNullable<Extract<Gap, { need: "sure" }>["before"]> | null {
  const { kind, place, unit, on } = intent;
  if (!isJudged(kind) || unit === null || unit === "level" || intent.detail?.state === "left") return null;
  const row = judgedRow(kind);
  if (row.grows === null) return null;
  const last = g.measured.filter((each) => each.kind === kind && each.place === place && each.on <= on && !gone.some(({ id }) => id === each.id)).at(-1);
  if (last === undefined || canonicalReading(intent.value, unit) - last.value <= row.grows) return null;
  const renewing = renews({ kind, place });
  // A part put on again, and another set of tyres, bear names of their own.
  const isNew = (item: string): boolean => renewing.includes(item) || item === TYRES_FITTED || refitIn(item) !== null;
  const recorded = g.work.some(({ on: done, items }) => done.to >= last.on && items.some(({ item }) => isNew(item)));
  const said = beside.some((other) => other.do === "record work" && other.bike === g.bike.id && (other.items.length === 0 || other.items.some(isNew)));
  return recorded || said ? null : { value: last.value, unit: last.unit, on: last.on };
}

/** The items whose work puts a new one in place of what was measured. */
export function renews({ kind, place }: Pick<Taken, "kind" | "place">): readonly string[] {
  if (!isJudged(kind)) return [];
  const { defects } = judgedRow(kind);
  return defectRow(defects[endOf(place)] ?? defects.any ?? null)?.mends ?? [];
}
