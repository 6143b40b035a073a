// Bikes, figures and readings as the judgements take them, for their tests.

import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, MemberId } from "../../src/core/ids.ts";
import type { UnitId } from "../../src/core/quantity/units.ts";
import type { ReadingDetail } from "../../src/core/reading/detail.ts";
import type { Place, ReadingKind } from "../../src/core/reading/kinds.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import type { Spec } from "../../src/core/spec/spec.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import type { SpecKey } from "../../src/trade/spec-keys.ts";
import { judgeTaken } from "../../src/usecases/judge.ts";
import type { Rig } from "../../src/usecases/judged.ts";

export const BIKE = { kind: "chain-drive twin", id: "b1" as BikeId, equipment: KINDS["chain-drive twin"].equipment };
export const rig = (specs: readonly Spec[] = [], place: string | null = null, use: Rig["use"] = null): Rig => ({
  bike: BIKE,
  specs,
  place,
  use,
  trips: [],
  homed: true,
  ways: new Map(),
  air: new Map(),
  otherBattery: null,
  looked: true,
});

export const airOn = (day: string, celsius: number, message = "said together"): Rig["air"] => new Map([[localDate(day), [{ celsius, message }]]]);

let n = 0;
export const taken = (
  kind: ReadingKind,
  value: number,
  more: { place?: Place; on?: string; detail?: ReadingDetail; unit?: UnitId; at?: string } = {},
): Taken => ({
  ...{ id: `r${n++}`, kind, place: more.place ?? null, on: localDate(more.on ?? "2026-11-26"), value, unit: more.unit ?? "mm" },
  ...{ typed: "", detail: more.detail ?? null, loggedAt: more.at ?? "2026-11-26T09:00:00.000Z", ordinal: n, message: "said together" },
});
export const figure = (key: SpecKey, low: number | null, high: number | null, use: Spec["use"] = null): Spec => ({
  ...{ id: `s${n++}`, rev: 1, bike: BIKE.id, key, use, typed: "", by: "m1" as MemberId, at: "2026-11-01T00:00:00.000Z" as Instant },
  holds: { is: "figure", low, high, nominal: null, unit: "mm", step: 1 },
  source: { manual: "Heron workshop manual", edition: null, page: "4-12" },
});
export const words = (key: SpecKey, typed: string): Spec => ({ ...figure(key, null, null), holds: { is: "words" }, typed });
export const verdict = (each: Taken, r: Rig = rig()) => {
  const judged = judgeTaken(each, r);
  return judged?.judgement.is === "cannot tell" ? judged.judgement.missing[0] : judged?.judgement.is;
};
