// The trade's tables: each row is walked, and every kind of bike gets the items that its equipment asks for.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { EQUIPMENT, type Equipment, type EquipmentPart, isFitted } from "../../src/core/equipment.ts";
import type { Columns, PlanItem } from "../../src/core/plan/plan.ts";
import { CAUTIONS } from "../../src/trade/cautions.ts";
import { KINDS, type KindId } from "../../src/trade/kinds.ts";
import { STANDARD_ITEMS } from "../../src/trade/standard-items.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { ENGLISH_CAUTIONS } from "../../src/words/en/cautions.ts";
import { ENGLISH_ITEMS } from "../../src/words/en/items.ts";

const KIND_IDS = Object.keys(KINDS) as KindId[];
const allItems: [string, PlanItem][] = KIND_IDS.flatMap((kind) => STARTER_PLANS[kind].items.map((item): [string, PlanItem] => [`${kind}: ${item.key}`, item]));

function columnsOf(item: PlanItem): readonly Columns[] {
  const own = item.repeat.by === "interval" ? [item.repeat.every] : item.repeat.by === "nth mark" ? [item.repeat.base] : [];
  return [...own, ...(item.first === null ? [] : [item.first]), ...Object.values(item.shortened)].filter(
    (columns) => columns.miles !== null || columns.km !== null,
  );
}

describe("every row", () => {
  test.each(allItems)("%s", (_name, item) => {
    expect(item.source.length).toBeGreaterThan(0);
    expect(item.minutes).toBeGreaterThan(0);
    expect(Object.keys(ENGLISH_ITEMS)).toContain(item.key);
    if (item.caution !== null) {
      expect(Object.keys(CAUTIONS)).toContain(item.caution);
      expect(Object.keys(ENGLISH_CAUTIONS)).toContain(item.caution);
    }
    for (const covered of item.covers) expect(Object.keys(STANDARD_ITEMS)).toContain(covered);
    // Manuals print two columns near each other: a mile is 1.609 km, and both columns are round.
    for (const { miles, km } of columnsOf(item)) {
      expect(miles).not.toBeNull();
      expect(km).not.toBeNull();
      expect((km ?? 0) / (miles ?? 1)).toBeGreaterThanOrEqual(1.45);
      expect((km ?? 0) / (miles ?? 1)).toBeLessThanOrEqual(1.75);
    }
    // A use that shortens must shorten.
    if (item.repeat.by === "interval")
      for (const harsh of Object.values(item.shortened))
        if (harsh.miles !== null && item.repeat.every.miles !== null) expect(harsh.miles).toBeLessThan(item.repeat.every.miles);
    if (item.anchor === "marks") expect(["interval", "nth mark", "mark list"]).toContain(item.repeat.by);
  });
});

describe("every kind", () => {
  test.each(KIND_IDS)("%s has 30 to 45 items of its own, none twice", (kind) => {
    const own = STARTER_PLANS[kind].items.filter((item) => isFitted(item.fits, KINDS[kind].equipment));
    expect(own.length).toBeGreaterThanOrEqual(30);
    expect(own.length).toBeLessThanOrEqual(45);
    expect(new Set(own.map((item) => item.key)).size).toBe(own.length);
  });
  test.each(KIND_IDS)("%s: what can end a ride is in the plan whatever it is fitted with", (kind) => {
    const parts = Object.keys(EQUIPMENT) as EquipmentPart[];
    const any = fc.record(Object.fromEntries(parts.map((part) => [part, fc.constantFrom(...EQUIPMENT[part])]))) as unknown as fc.Arbitrary<Equipment>;
    fc.assert(
      fc.property(any, (equipment) => {
        const keys = STARTER_PLANS[kind].items.filter((item) => isFitted(item.fits, equipment)).map((item) => String(item.key));
        const has = (key: string): boolean => keys.includes(key);
        expect(has(equipment.frontBrake === "disc" ? "front-pads.measure" : "front-shoes.measure")).toBe(true);
        expect(has(equipment.rearBrake === "disc" ? "rear-pads.measure" : "rear-shoes.measure")).toBe(true);
        expect(has("brake-fluid.replace")).toBe(equipment.brakeFluid !== "none");
        expect(has("spokes.check")).toBe(equipment.wheels === "wire-spoked");
        expect(has("chain.measure")).toBe(equipment.finalDrive === "chain");
        expect(has("drive-belt.inspect")).toBe(equipment.finalDrive === "belt");
        expect(has("shaft-oil.replace")).toBe(equipment.finalDrive === "shaft");
        expect(has("coolant.replace")).toBe(equipment.cooling === "liquid");
        expect(has(equipment.throttle === "cable" ? "throttle-cable.adjust" : "throttle-grip.test")).toBe(true);
        expect(has("timing-belt.replace")).toBe(equipment.camDrive === "timing belt");
        expect(has("variator-belt.replace")).toBe(equipment.finalDrive === "variator");
        expect(has("points.adjust")).toBe(equipment.ignition === "points" && equipment.fuel !== "electric");
        expect(has("high-voltage-cables.inspect")).toBe(equipment.fuel === "electric");
        expect(has("engine-oil.replace")).toBe(equipment.fuel !== "electric");
        expect(has("fuel-hoses.inspect")).toBe(equipment.fuel !== "electric");
        for (const key of ["sidecar-fittings.check", "sidecar-tread.measure", "sidecar-tyre.replace", "sidecar-bearings.inspect"])
          expect(has(key)).toBe(equipment.sidecar === "fitted");
        expect(has("front-drum.adjust")).toBe(equipment.frontBrake === "drum");
        expect(has("rims.inspect")).toBe(equipment.wheels === "cast");
        expect(has("swingarm.inspect")).toBe(equipment.rearSuspension !== "rigid");
        expect(has("brake-hoses.inspect")).toBe(equipment.brakeFluid !== "none");
        expect(has("clutch-free-play.adjust")).toBe(equipment.clutch === "cable");
        expect(has("clutch-fluid.replace")).toBe(equipment.clutch.startsWith("hydraulic"));
        expect(has("shaft-splines.lubricate")).toBe(equipment.finalDrive === "shaft");
        for (const always of [
          "tyre-pressure.measure",
          "front-tread.measure",
          "rear-tread.measure",
          "front-tyre.replace",
          "rear-tyre.replace",
          "wheel-bearings.inspect",
          "steering-head.inspect",
          "fasteners.check",
          "side-stand.test",
          "lights.test",
        ])
          expect(has(always)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

test("every point of the published pre-ride sheet that a plan can hold is held by every plan", () => {
  // Source: T-CLOCS pre-ride inspection sheet (tires, controls, lights, oil, chassis, stands), its points in our own words.
  const points: Readonly<Record<string, readonly string[]>> = {
    "tires and wheels: condition, tread depth, air pressure": [
      "front-tread.measure",
      "rear-tread.measure",
      "tyre-pressure.measure",
      "front-tyre.replace",
      "rear-tyre.replace",
    ],
    "wheels: spokes, bearings": ["spokes.check", "wheel-bearings.inspect"],
    "brakes: pads, shoes, fluid": [
      "front-pads.measure",
      "rear-pads.measure",
      "front-shoes.measure",
      "rear-shoes.measure",
      "brake-fluid.inspect",
      "brake-hoses.inspect",
    ],
    "controls: levers, cables, hoses, throttle": ["controls.lubricate", "throttle-cable.adjust", "throttle-grip.test", "clutch-free-play.adjust"],
    "lights and electrics: battery, lamps": ["battery.test", "lights.test"],
    "oil and other fluids: levels": ["engine-oil.inspect", "coolant.inspect", "shaft-oil.inspect"],
    "chassis: steering head, drive chain or belt, fasteners": [
      "steering-head.inspect",
      "chain.adjust",
      "chain.lubricate",
      "drive-belt.inspect",
      "fasteners.check",
      "fork-oil.replace",
    ],
    "stands: side stand and switch, center stand": ["side-stand.test", "centre-stand.lubricate"],
  };
  for (const kind of KIND_IDS) {
    const keys = STARTER_PLANS[kind].items.map((item) => String(item.key));
    for (const [point, items] of Object.entries(points)) for (const item of items) expect(keys, `${kind}: ${point}`).toContain(item);
  }
});

test("names differ, so that a list never says one thing for two", () => {
  const names = Object.values(ENGLISH_ITEMS).map((item) => item.name);
  expect(new Set(names).size).toBe(names.length);
});

test("checking tightness is a look: the fasteners' caution says what is not turned", () => {
  const key = STANDARD_ITEMS["fasteners.check"].caution;
  expect([STANDARD_ITEMS["fasteners.check"].action, key]).toEqual(["check tightness", "check tightness"]);
  expect(ENGLISH_CAUTIONS["check tightness"]).toMatch(/A look, not a second tightening: threadlocked, split-pinned and stretch bolts are not turned\./u);
});

// Common practice: what is worn out by age and hurts most comes first on a bike of which nothing is known.
test("what to do first on a used bike: tyre dates, brake fluid, oil and filter, coolant, final drive, timing belt, battery, steering head, tread", () => {
  const ranked = Object.entries(STANDARD_ITEMS as Readonly<Record<string, { readonly firstOnUsedBike?: number }>>)
    .flatMap(([key, { firstOnUsedBike: rank }]) => (rank === undefined ? [] : [{ key, rank }]))
    .sort((a, b) => a.rank - b.rank || (a.key < b.key ? -1 : 1));
  expect(ranked.map(({ key }) => key)).toEqual([
    ...["front-tyre.replace", "rear-tyre.replace", "sidecar-tyre.replace", "brake-fluid.replace", "engine-oil.replace", "coolant.replace"],
    ...["chain.replace", "drive-battery.test", "drive-belt.replace", "shaft-oil.replace", "variator-belt.replace", "timing-belt.replace"],
    ...["battery.test", "steering-head.inspect", "front-tread.measure", "rear-tread.measure", "sidecar-tread.measure"],
  ]);
});
