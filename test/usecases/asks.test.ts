// When a bike's rider is asked for a reading: once nobody can tell any more to within the widest window where its odometer stands.

import { expect, test } from "vitest";
import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { dialOf, type Ridden, riddenOf, stretchOf } from "../../src/core/quantity/distance.ts";
import { buildTrack } from "../../src/core/usage/track.ts";
import { asksOf } from "../../src/usecases/asks.ts";
import type { Garaged } from "../../src/usecases/garage.ts";

const READ = localDate("2026-06-01");
const epochs = [{ id: "e", from: READ, lastOfOld: null, firstOfNew: dialOf(3000, "mi"), unit: "mi", cause: "as bought" }] as const;

/** A bike read some days ago, whose odometer may by now lie within so much. */
function silent(days: number, width: number, unit: "mi" | "km"): Garaged {
  const low = riddenOf(3100, "mi");
  const high = (low + stretchOf(width, unit)) as Ridden;
  const forecast = { basis: { from: "nothing" }, perWeek: null, dateOf: () => null, riddenOn: () => ({ low, likely: low, high }) };
  const of = {
    ...{ bike: { id: "heron", state: "riding", equipment: { battery: "none" } }, unit, trips: [], layUps: [], defects: [], measured: [], series: [] },
    ...{ track: buildTrack(epochs, [{ id: "a", on: READ, order: 0, dial: dialOf(3000, "mi") }]), today: addDays(READ, days), at: { forecast } },
  };
  return of as unknown as Garaged;
}
const asked = (days: number, width: number, unit: "mi" | "km" = "mi"): boolean => asksOf(silent(days, width, unit)).now.some(({ kind }) => kind === "reading");

test("at a range of 500 mi or 800 km, and not below", () => {
  expect([asked(40, 499), asked(40, 500), asked(40, 799, "km"), asked(40, 800, "km")]).toEqual([false, true, false, true]);
});

test("never within 30 days of a reading", () => {
  expect([asked(29, 900), asked(30, 900)]).toEqual([false, true]);
});
