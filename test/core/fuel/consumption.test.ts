// Fuel from fill to fill, against worked examples and a general library of units.

import { unit as mathUnit } from "mathjs";
import { expect, test } from "vitest";
import { consumptionIn, consumptionUnits, type Fill, fuelUsed, perHundredKm } from "../../../src/core/fuel/consumption.ts";
import { riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";

const fill = (id: string, litres: number, full: boolean | null, at: number | null, trip: number | null = null): Fill => ({
  ...{ id, litres, full },
  ridden: at === null ? null : riddenOf(at, "km"),
  trip: trip === null ? null : stretchOf(trip, "km"),
});

test("from full tank to full tank by the odometer", () => {
  // 12 L over 240 km is 5 L in each hundred: by the definition of the figure.
  const [used] = fuelUsed([fill("a", 9, true, 1000), fill("b", 12, true, 1240)]);
  expect(used).toEqual({ fill: "b", litres: 12, distance: stretchOf(240, "km"), by: "odometer" });
  expect(perHundredKm(used ?? { litres: 0, distance: stretchOf(1, "km") })).toBeCloseTo(5, 12);
});

test("part fills between count in, and close nothing; what was not said to be full is no full tank", () => {
  const used = fuelUsed([fill("a", 9, true, 1000), fill("b", 4, false, 1100), fill("c", 3, null, 1150), fill("d", 8, true, 1300)]);
  expect(used).toEqual([{ fill: "d", litres: 15, distance: stretchOf(300, "km"), by: "odometer" }]);
  expect(used.map(perHundredKm)).toEqual([5]);
});

test("by the trip meter where the odometer was not said, and only if it was said at every fill between", () => {
  expect(fuelUsed([fill("a", 9, true, null), fill("b", 12.4, true, null, 240)])).toMatchObject([{ fill: "b", by: "trip meter", litres: 12.4 }]);
  expect(fuelUsed([fill("a", 9, true, null), fill("b", 4, false, null, 80), fill("c", 8, true, null, 160)])).toMatchObject([
    { fill: "c", litres: 12, distance: stretchOf(240, "km") },
  ]);
  expect(fuelUsed([fill("a", 9, true, null), fill("b", 4, false, null), fill("c", 8, true, null, 160)])).toEqual([]);
  // The first fill on record, with the distance of its tank.
  expect(fuelUsed([fill("a", 12, true, null, 240)])).toMatchObject([{ fill: "a", by: "trip meter" }]);
  expect(fuelUsed([fill("a", 4, false, null, 80), fill("b", 12, true, null, 240)])).toEqual([]);
});

test("nothing comes of a first fill, of a dial that stood still, or of a top-up at the next pump", () => {
  expect(fuelUsed([fill("a", 12, true, 1000)])).toEqual([]);
  expect(fuelUsed([fill("a", 12, true, 1000), fill("b", 1, true, 1000)])).toEqual([]);
  expect(fuelUsed([fill("a", 12, true, 1000), fill("b", 0.4, true, 1008)])).toEqual([]);
});

test("miles a gallon, of either gallon, as a general library has them", () => {
  const used = { litres: 15.2, distance: stretchOf(187, "mi") };
  // mathjs: "gallon" is the US liquid gallon. The imperial one is 4.54609 L (Units of Measurement Regulations 1995).
  const perUs = mathUnit(187, "mile").toNumber("mile") / mathUnit(15.2, "litre").toNumber("gallon");
  expect(consumptionIn(used, "mpg US")).toBeCloseTo(perUs, 6);
  expect(consumptionIn(used, "mpg imp")).toBeCloseTo(187 / (15.2 / 4.54609), 9);
  // A worked example by hand: 187 mi = 300.947 km; 1520 / 300.947 = 5.0507.
  expect(consumptionIn(used, "L/100 km")).toBeCloseTo(5.0507, 3);
});

test("the member's units: litres on kilometres; on miles the gallon typed, else the place's, else both", () => {
  expect(consumptionUnits("km", "US gal", "US gal")).toEqual(["L/100 km"]);
  expect(consumptionUnits("mi", "L", "imp gal")).toEqual(["mpg imp"]);
  expect(consumptionUnits("mi", "L", "US gal")).toEqual(["mpg US"]);
  expect(consumptionUnits("mi", "US gal", "imp gal")).toEqual(["mpg US"]);
  expect(consumptionUnits("mi", "L", null)).toEqual(["mpg imp", "mpg US"]);
});
