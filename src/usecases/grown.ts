// What wears does not grow back: more lining, tread or disc than was there last, with nothing new on record since, is asked about.

import { callsForWork } from "../core/judgement/verdict.ts";
import { refitIn } from "../core/parts/pieces.ts";
import type { Gap, Intent, LogReading } from "../core/reading/intent.ts";
import { canonicalReading, isQuantity } from "../core/reading/value.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { TYRES_FITTED } from "../core/schedule/tyre-sets.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import { endOf, isJudged, judgedRow } from "../trade/judged.ts";
import { putNew } from "./fitted.ts";
import type { Garaged } from "./garage.ts";
import { judgeTaken } from "./judge.ts";
import { isWithPlate } from "./judge-kinds.ts";

/** The reading before that it has grown beyond, as the question tells it; null where it has not, or where something new explains it. @param beside what is said with it @param gone readings that it gives way to */
export function grownBeyond(
  intent: LogReading,
  beside: readonly Intent[],
  g: Garaged,
  gone: readonly { readonly id: string }[],
): NonNullable<Extract<Gap, { need: "sure" }>["before"]> | null {
  const { kind, place, unit, on } = intent;
  if (!isJudged(kind) || unit === null || !isQuantity(unit) || intent.detail?.state === "left") return null;
  const row = judgedRow(kind);
  if (row.grows === null || isWithPlate({ detail: intent.detail ?? null })) return null;
  const last = g.measured
    .filter((each) => !isWithPlate(each) && each.kind === kind && each.place === place && each.on <= on && !gone.some(({ id }) => id === each.id))
    .at(-1);
  if (last === undefined || canonicalReading(intent.value, unit) - last.value <= row.grows) return null;
  const renewing = renews({ kind, place });
  // A part put on again, and another set of tyres, bear names of their own.
  const isNew = (item: string): boolean => renewing.includes(item) || item === TYRES_FITTED || refitIn(item) !== null;
  const recorded = g.work.some(({ on: done, items }) => done.to >= last.on && items.some(({ item }) => isNew(item)));
  const said = beside.some((other) => other.do === "record work" && other.bike === g.bike.id && (other.items.length === 0 || other.items.some(isNew)));
  return recorded || said ? null : { value: last.value, unit: last.unit, on: last.on };
}

/**
 * A value said beside work that put a new one in, and not said to be of either: of the old one where nobody would fit it so, or where it has not grown; else of the new.
 * @param work of the same set
 */
export function asOldOrNew(reading: ReadingRecord, work: readonly WorkRecord[], g: Garaged): ReadingRecord {
  const { kind, place, on, value, detail } = reading;
  if (value === null || detail?.state !== undefined || !isJudged(kind)) return reading;
  if (!work.some((record) => record.bike === reading.bike && record.on.from === on && record.on.to === on && putNew(record, reading))) return reading;
  const judgement = judgeTaken({ ...reading, value }, g.rig)?.judgement ?? null;
  const last = g.measured.filter((each) => each.kind === kind && each.place === place && each.on <= on).at(-1);
  const isWorn = judgement !== null && (judgement.is === "near limit" || callsForWork(judgement));
  const grows = judgedRow(kind).grows;
  const isOld = isWorn || (last !== undefined && grows !== null && value - last.value <= grows);
  return { ...reading, detail: { ...detail, state: isOld ? "found" : "left" } };
}

/** The items whose work puts a new one in place of what was measured. */
export function renews({ kind, place }: Pick<Taken, "kind" | "place">): readonly string[] {
  if (!isJudged(kind)) return [];
  const { defects } = judgedRow(kind);
  return defectRow(defects[endOf(place)] ?? defects.any ?? null)?.mends ?? [];
}
