// Judging one reading, and a wear line through a tyre's readings.

import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, MemberId } from "../../src/core/ids.ts";
import { stretchOf } from "../../src/core/quantity/distance.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import type { Spec } from "../../src/core/spec/spec.ts";
import { wearOf } from "../../src/core/wear/wear.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import { SPEC_KEY_NAMES } from "../../src/trade/spec-keys.ts";
import { WEAR_HABITS } from "../../src/trade/wear.ts";
import { judgeTaken } from "../../src/usecases/judge.ts";
import type { Rig } from "../../src/usecases/judged.ts";
import { type Bench, compare } from "./harness.ts";

/** What a bike's manual says, forty figures of it: those of its tyres are looked for among them. */
const SPECS: readonly Spec[] = SPEC_KEY_NAMES.slice(0, 40).map((key, n) => ({
  ...{ id: `s${n}`, rev: 1, bike: "b1" as BikeId, key, use: null, typed: "34 psi", by: "m1" as MemberId, at: "2026-11-01T00:00:00.000Z" as Instant },
  holds: { is: "figure", low: 234, high: 234, nominal: null, unit: "psi", step: 1 },
  source: { manual: "Heron owner's manual", edition: null, page: "88" },
}));
const RIG: Rig = {
  bike: { kind: "chain-drive twin", id: "b1" as BikeId, equipment: KINDS["chain-drive twin"].equipment },
  specs: [],
  place: "Germany",
  use: null,
  trips: [],
  homed: true,
  ways: new Map(),
  air: new Map(),
  otherBattery: null,
  looked: true,
};
const of = (kind: Taken["kind"], value: number, unit: Taken["unit"]): Taken => ({
  ...{ id: "r1", kind, place: kind === "tread" ? "rear" : null, on: localDate("2026-11-26"), value, unit, detail: { conditions: ["rested"] } },
  ...{ typed: "", loggedAt: "2026-11-26T09:00:00.000Z", ordinal: 0 },
});
const SPECIFIED: Rig = { ...RIG, specs: SPECS };
const PRESSURE: Taken = { ...of("cold pressure", 220, "psi"), place: "front" };
const CHAIN: Taken = { ...of("chain length", 319, "mm"), detail: { pitches: 20 } };
const [TREAD, BATTERY] = [of("tread", 1.8, "mm"), of("battery voltage", 12.5, "V")];
const READINGS = Array.from({ length: 6 }, (_, n) => ({ ridden: stretchOf(1500 * n, "km"), value: 7 - 0.8 * n }));

export const judge: Bench = {
  name: "judge",
  rows: () =>
    compare("judging", null, {
      "one tread reading": () => judgeTaken(TREAD, RIG),
      "one battery reading": () => judgeTaken(BATTERY, RIG),
      "one pressure against one of forty specs": () => judgeTaken(PRESSURE, SPECIFIED),
      "one chain length": () => judgeTaken(CHAIN, RIG),
      "a wear line through six readings, with its range": () => wearOf(READINGS, 1.6, WEAR_HABITS["rear tread"], true),
    }),
};
