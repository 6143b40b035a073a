// Values found and left at the items of a record, and what they say of its outcome.

import type { ItemKey } from "../core/ids.ts";
import { callsForWork } from "../core/judgement/verdict.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import { fromCanonical, type UnitId } from "../core/quantity/units.ts";
import { kindRow, type ReadingKind } from "../core/reading/kinds.ts";
import { isQuantity } from "../core/reading/value.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { isLook } from "../core/schedule/mending.ts";
import type { ItemValue } from "../core/work-detail.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { WorkRecord } from "../store/work.ts";
import { endOf, isJudged, judgedRow } from "../trade/judged.ts";
import { howWorked, isDrained, WEARS } from "../trade/workshop.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { judgeTaken } from "./judge.ts";
import type { Rig } from "./judged.ts";

/** The end of the bike that an item is about, where it is about one. */
export function endAt(g: Garaged, item: ItemKey, kind: ReadingKind): "front" | "rear" | "sidecar" | null {
  const by = itemOf(g, item)?.measuredBy ?? null;
  if (by !== null && by.kind === kind && (by.place === "front" || by.place === "rear" || by.place === "sidecar")) return by.place;
  if (!isJudged(kind)) return null;
  const { items } = judgedRow(kind);
  return (["front", "rear"] as const).find((end) => items[end] === item) ?? null;
}

/**
 * A record with the values that were logged as found and left at its items in the same set, where it holds none of its own,
 * and with the outcome that these values leave standing: what was found otherwise than it was left was not only looked at.
 * @param usual nobody said the outcome
 */
export function withValues(record: WorkRecord, readings: readonly ReadingRecord[], g: Garaged, rig: Rig, usual: boolean): WorkRecord {
  const said = readings.filter((r) => r.bike === record.bike && r.on === record.on.from && r.detail?.state !== undefined && r.value !== null);
  if (said.length === 0) return record;
  const items = record.items.map((each) => {
    const own = said.filter((r) => isAt(g, each.item, r));
    const valued = (state: "found" | "left"): readonly ItemValue[] =>
      filled(
        each[state],
        own.filter((r) => r.detail?.state === state && isQuantity(r.unit)),
      );
    return { ...each, found: valued("found"), left: valued("left"), outcome: outcomeLeft({ ...each, usual }, itemOf(g, each.item)?.action ?? null, own, rig) };
  });
  return { ...record, items };
}

/** Is this measured at the item? */
function isAt(g: Garaged, item: ItemKey, { kind, place }: ReadingRecord): boolean {
  if (howWorked(item)?.measures.includes(kind) !== true) return false;
  const end = endAt(g, item, kind);
  return end === null || endOf(place) === end;
}

/** Values as typed beside the item; places that were asked for since are added. Where fewer were typed so than were read, those of the readings: none is lost. */
function filled(typed: readonly ItemValue[], logged: readonly ReadingRecord[]): readonly ItemValue[] {
  if (typed.length < logged.length)
    return logged.map(({ value, unit, place, detail }) => {
      const where = [place, detail?.side].filter((each) => each != null);
      return { value: fromCanonical(value ?? 0, unit as UnitId), unit: unit as UnitId, place: where.length === 0 ? null : where.join(" ") };
    });
  if (typed.length !== logged.length) return typed;
  return typed.map((each, n) => ({
    ...each,
    place: each.place ?? (kindRow(logged[n]?.kind ?? "odometer").ask.length === 0 ? null : (logged[n]?.place ?? null)),
  }));
}

type Came = { readonly item: ItemKey; readonly outcome: Outcome; readonly usual: boolean };

/** What the usual outcome, or "looked at, within limits", comes to beside the values: something set or renewed, or a look that found it wanting or that nothing can judge. */
function outcomeLeft({ item, outcome, usual }: Came, action: WorkAction | null, own: readonly ReadingRecord[], rig: Rig): Outcome {
  if (own.length === 0 || (outcome !== "inspected, within limits" && !(usual && OPEN.includes(outcome)))) return outcome;
  for (const before of own.filter((r) => r.detail?.state === "found")) {
    const after = own.find((r) => r.detail?.state === "left" && r.kind === before.kind && r.place === before.place);
    if (after === undefined) continue;
    const step = (after.value ?? 0) - (before.value ?? 0);
    if (Math.abs(step) <= fineOf(before.kind)) continue;
    if (before.unit === "level") return isDrained(item) ? outcome : "topped up";
    // What only wears is as new again by a new one alone.
    const wears = WEARS[before.kind];
    return wears === (step > 0 ? "down" : "up") ? "replaced" : "adjusted";
  }
  // What was renewed, cleaned or greased was so whatever was found.
  if (action !== null && !isLook(action) && action !== "adjust" && action !== "check tightness") return outcome;
  const standing = own.filter(
    (r) => r.detail?.state === "left" || !own.some((other) => other.detail?.state === "left" && other.kind === r.kind && other.place === r.place),
  );
  const judged = standing.map((r) => judgeTaken({ ...r, value: r.value ?? 0 }, rig)?.judgement ?? null);
  const set = action !== null && !isLook(action);
  // Set, and told how it was left: that is judged by itself.
  if (set && standing.some((r) => r.detail?.state === "left")) return outcome;
  if (judged.some((each) => each !== null && callsForWork(each))) return action === null || (set && !usual) ? outcome : "found wrong";
  if (!usual) return outcome;
  return judged.some((each) => each === null || each.is === "cannot tell") ? "inspected" : "inspected, within limits";
}

/** Usual outcomes that what was read may settle otherwise. */
const OPEN: readonly Outcome[] = ["inspected", "adjusted", "replaced", "done"];

/** Half the finest step of the tool: two readings that differ by no more are one value. */
const fineOf = (kind: ReadingKind): number => (isJudged(kind) ? judgedRow(kind).fine / 2 : 0) + 1e-9;
