// Records as they are first written: signed by whoever said so, in the order they were said.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { Defect } from "../core/defect.ts";
import type { BikeId } from "../core/ids.ts";
import type { Dial, DistanceUnit } from "../core/quantity/distance.ts";
import type { ReadingRecord } from "../store/readings.ts";
import { defectRow } from "../trade/defects.ts";
import type { Ctx } from "./context.ts";

/** What every first revision carries. `source`: the message or event it came from; `ordinal`: its place in it. */
export function signed(ctx: Ctx, source: string, ordinal: number) {
  return { id: ctx.newId(), rev: 1, state: "live", message: source, ordinal, loggedAt: ctx.now, by: ctx.who.member, at: ctx.now, why: null } as const;
}

/** A dial read on a day. */
export type DialRead = { readonly bike: BikeId; readonly dial: Dial; readonly unit: DistanceUnit; readonly typed: string; readonly on: LocalDate };

/** An odometer reading as a record. */
export const odometerRecord = (ctx: Ctx, read: DialRead, source: string, ordinal: number): ReadingRecord => ({
  ...signed(ctx, source, ordinal),
  kind: "odometer",
  place: null,
  value: null,
  detail: null,
  ...read,
});

/** A defect as it is first noted. */
export const defectRecord = (
  ctx: Ctx,
  found: Pick<Defect, "bike" | "kind" | "words" | "grade" | "on" | "dial" | "from">,
  source: string,
  ordinal: number,
): Defect => {
  const row = defectRow(found.kind);
  const grade = found.grade ?? (row?.always === true ? row.usual : null);
  return { ...signed(ctx, source, ordinal), ...found, grade, state: "open", closedBy: null, closedBecause: null };
};
