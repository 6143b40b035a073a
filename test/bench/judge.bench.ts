// Judging one reading, and a wear line through a tyre's readings.

import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { stretchOf } from "../../src/core/quantity/distance.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import { wearOf } from "../../src/core/wear/wear.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import { WEAR_HABITS } from "../../src/trade/wear.ts";
import { judgeTaken, type Rig } from "../../src/usecases/judge.ts";
import { type Bench, compare } from "./harness.ts";

const RIG: Rig = {
  bike: { id: "b1" as BikeId, equipment: KINDS["chain-drive twin"].equipment },
  specs: [],
  place: "Germany",
  use: null,
  ways: new Map(),
  looked: true,
};
const of = (kind: Taken["kind"], value: number, unit: Taken["unit"]): Taken => ({
  ...{ id: "r1", kind, place: kind === "tread" ? "rear" : null, on: localDate("2026-11-26"), value, unit, detail: { conditions: ["rested"] } },
  ...{ loggedAt: "2026-11-26T09:00:00.000Z", ordinal: 0 },
});
const [TREAD, BATTERY] = [of("tread", 1.8, "mm"), of("battery voltage", 12.5, "V")];
const READINGS = Array.from({ length: 6 }, (_, n) => ({ ridden: stretchOf(1500 * n, "km"), value: 7 - 0.8 * n }));

export const judge: Bench = {
  name: "judge",
  rows: () =>
    compare("judging", null, {
      "one tread reading": () => judgeTaken(TREAD, RIG),
      "one battery reading": () => judgeTaken(BATTERY, RIG),
      "a wear line through six readings, with its range": () => wearOf(READINGS, 1.6, WEAR_HABITS["rear tread"], true),
    }),
};
