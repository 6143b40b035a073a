// The lists of checks: their order, what they ask of which bike, and whether they cover what a published sheet covers.

import { describe, expect, test } from "vitest";
import { CHECKLISTS, type Point } from "../../src/core/check/checklist.ts";
import { type RunSection, tailored } from "../../src/core/check/tailor.ts";
import { EQUIPMENT, type Equipment, type EquipmentPart } from "../../src/core/equipment.ts";
import type { ItemKey } from "../../src/core/ids.ts";
import { LISTS } from "../../src/trade/checklists/index.ts";
import { POINTS } from "../../src/trade/checklists/points.ts";
import { checklistOf, pointsOf } from "../../src/trade/checklists/row.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import { POINT_WORDS } from "../../src/words/en/check-points.ts";
import { SECTION_WORDS } from "../../src/words/en/checks.ts";

const TWIN = KINDS["chain-drive twin"].equipment;
const SINGLE = KINDS["dual-purpose single"].equipment;
const pointOf = (key: string): Point => (POINTS as Readonly<Record<string, Point>>)[key] as Point;
const ofBike = (list: (typeof CHECKLISTS)[number], equipment: Equipment, more: Partial<Parameters<typeof tailored>[2]> = {}): readonly RunSection[] =>
  tailored(LISTS[list], POINTS, { equipment, planHas: new Set(), stoodDays: 150, coldest: null, wanting: [], before: new Map(), ...more });
const keysOf = (sections: readonly RunSection[]): string[] => sections.flatMap((section) => section.points.map((point) => point.key));

/** What is out of order: cold after warm, warm before anything has warmed it, a bike put up twice. */
function outOfOrder(points: readonly (Pick<Point, "engine" | "heat" | "position"> & { readonly key: string })[]): string[] {
  const faults: string[] = [];
  let warm = false;
  let up = "before";
  for (const { key, engine, heat, position } of points) {
    if (engine === "cold" && warm) faults.push(`${key} wants it cold`);
    if (engine === "warm" && !warm && heat !== "runs") faults.push(`${key} wants it warm`);
    if (position === "weight off" && up === "after") faults.push(`${key} puts it up again`);
    if (position === "weight off") up = "now";
    else if (position !== "any" && up === "now") up = "after";
    if (heat === "runs") warm = true;
    if (heat === "cools") warm = false;
  }
  return faults;
}

describe("the order is the trade's", () => {
  const at = (key: string, engine: Point["engine"] = "any", heat: Point["heat"] = null, position: Point["position"] = "any") => ({
    key,
    engine,
    heat,
    position,
  });
  test("the rule bites", () => {
    expect(outOfOrder([at("start", "any", "runs"), at("coolant", "cold")])).toEqual(["coolant wants it cold"]);
    expect(outOfOrder([at("oil", "warm")])).toEqual(["oil wants it warm"]);
    expect(outOfOrder([at("a", "any", null, "weight off"), at("b", "any", null, "upright"), at("c", "any", null, "weight off")])).toEqual([
      "c puts it up again",
    ]);
    expect(outOfOrder([at("run", "any", "runs"), at("rest", "any", "cools"), at("coolant", "cold")])).toEqual([]);
  });
  test.each(CHECKLISTS)("%s: nothing that wants it cold after what warms it, and the bike is put up once", (name) => {
    const all = LISTS[name].sections.flatMap((section) => section.points.map((key) => ({ key, ...pointOf(key) })));
    expect(outOfOrder(all)).toEqual([]);
  });
  test("out of storage goes nests, rags, battery, pressures, brakes, bars, lights, levels, and only then the start", () => {
    const keys = keysOf(ofBike("out of storage", TWIN));
    const order = [
      "nests",
      "leaks",
      "stopped-openings",
      "battery-volts",
      "tyre-pressures",
      "brake-fluid",
      "full-lock",
      "throttle-cable",
      "headlamp",
      "engine-oil-level",
      "coolant-level",
    ];
    const then = ["start", "idle-and-leaks", "charging-volts", "wheels-turn", "first-miles", "look-again"];
    expect(keys.filter((key) => [...order, ...then].includes(key))).toEqual([...order, ...then]);
  });
  test("lay-up washes, runs stabiliser through, empties bowls, changes oil warm, and stops the exhaust only when it is cold", () => {
    const keys = keysOf(ofBike("lay-up", { ...SINGLE, cooling: "liquid" }, { stoodDays: 0 }));
    const order = [
      "wash-and-dry",
      "fuel-stabiliser",
      "carburettor-bowls",
      "oil-before-rest",
      "chain-before-rest",
      "cool-down",
      "coolant-strength",
      "tyres-at-rest",
      "battery-at-rest",
      "stop-openings",
      "cover",
      "no-short-starts",
    ];
    expect(keys.filter((key) => order.includes(key))).toEqual(order);
  });
});

describe("a bike is asked for what it is fitted with", () => {
  const parts = Object.keys(EQUIPMENT) as EquipmentPart[];
  const bikes = [TWIN, ...parts.flatMap((part) => EQUIPMENT[part].map((choice) => ({ ...TWIN, [part]: choice }) as Equipment))];
  test.each(CHECKLISTS)("%s, whatever one part is", (name) => {
    for (const equipment of bikes)
      for (const key of keysOf(ofBike(name, equipment)))
        for (const [part, choices] of Object.entries(pointOf(key).fits))
          expect(choices, `${key} on ${equipment[part as EquipmentPart]}`).toContain(equipment[part as EquipmentPart]);
    // Every point with a rule is left out by some bike, and asked of some bike.
    for (const key of LISTS[name].sections.flatMap((section) => section.points)) {
      const { fits, planHas } = pointOf(key);
      const some = bikes.map((equipment) => keysOf(ofBike(name, equipment, { planHas: new Set(planHas === null ? [] : [planHas]) })).includes(key));
      expect(some, key).toContain(true);
      if (Object.keys(fits).length > 0) expect(some, key).toContain(false);
    }
  });
  test("a cable throttle gets free play and snap-back, one by wire does not", () => {
    expect(keysOf(ofBike("pre-ride", { ...TWIN, throttle: "cable" }))).toContain("throttle-cable");
    const byWire = keysOf(ofBike("pre-ride", { ...TWIN, throttle: "by-wire" }));
    expect(byWire).not.toContain("throttle-cable");
    expect(byWire).toContain("throttle-grip");
  });
  test("what only standing brings is asked after a month, and frost only where it may have frozen", () => {
    expect(keysOf(ofBike("pre-ride", TWIN, { stoodDays: 29 }))).not.toContain("nests");
    expect(keysOf(ofBike("pre-ride", TWIN, { stoodDays: 30 }))).toContain("nests");
    for (const [coldest, asked] of [
      [null, true],
      [0, true],
      [-8, true],
      [1, false],
    ] as const)
      expect(keysOf(ofBike("out of storage", TWIN, { coldest })).includes("battery-frozen"), String(coldest)).toBe(asked);
  });
  test("a gearbox with oil of its own is known by its plan", () => {
    expect(keysOf(ofBike("pre-ride", TWIN))).not.toContain("gearbox-oil-level");
    expect(keysOf(ofBike("pre-ride", TWIN, { planHas: new Set(["gearbox-oil.replace" as ItemKey]) }))).toContain("gearbox-oil-level");
  });
});

// T-CLOCS pre-ride inspection sheet (US rider-training foundation), in our own words: which points of ours cover each of its own.
// Seen as copies: studylib.net/doc/18624690, mcrider.com/t-clocs-pre-ride-inspection, onandofftheroad.com, rideitwrenchit.blogspot.com;
// wiring, mirrors, fluids, fuel and swingarm from memory of the sheet.
const PUBLISHED = {
  "tyre-condition": ["tyre-condition"],
  "tyre-pressure": ["tyre-pressures"],
  spokes: ["spokes"],
  "cast-wheels": ["cast-rims"],
  "rim-runout": ["rim-runout"],
  "wheel-bearings": ["wheel-bearings"],
  "wheel-seals": ["wheel-seals"],
  "brake-function": ["brake-hold"],
  "brake-wear": ["front-pads", "rear-shoes"],
  handlebars: ["handlebars"],
  "levers-pedals": ["levers"],
  "lever-pivots": ["levers"],
  cables: ["throttle-cable", "clutch-cable"],
  "cable-routing": ["full-lock"],
  hoses: ["brake-hoses"],
  "hose-routing": ["full-lock", "brake-hoses"],
  throttle: ["throttle-cable", "throttle-running"],
  battery: ["battery-fitted"],
  "battery-vent": ["battery-vent"],
  headlamp: ["headlamp"],
  "headlamp-function": ["headlamp"],
  "tail-and-brake-lamp": ["tail-and-brake-light"],
  "turn-signals": ["indicators"],
  horn: ["horn"],
  lenses: ["lenses-and-reflectors"],
  reflectors: ["lenses-and-reflectors"],
  wiring: ["wiring"],
  mirrors: ["mirrors"],
  "engine-oil": ["engine-oil-level"],
  "gear-and-final-drive-oil": ["gearbox-oil-level", "shaft-drive"],
  "brake-and-clutch-fluid": ["brake-fluid", "clutch-fluid"],
  coolant: ["coolant-level"],
  fuel: ["fuel-level"],
  leaks: ["leaks"],
  frame: ["frame"],
  "steering-head": ["steering-head"],
  "swingarm-bearings": ["swingarm"],
  "front-suspension": ["fork"],
  "rear-suspension": ["rear-suspension"],
  chain: ["chain"],
  belt: ["belt"],
  shaft: ["shaft-drive"],
  fasteners: ["fasteners"],
  "centre-stand": ["centre-stand"],
  "side-stand": ["side-stand"],
  "side-stand-cutout": ["side-stand-switch"],
} as const;

describe("the pre-ride list covers what a published sheet looks at", () => {
  // No bike has everything: each has one of every choice, and together they have them all.
  const bikes: readonly Equipment[] = [
    { ...TWIN, battery: "flooded", rearBrake: "drum", centreStand: "fitted" },
    { ...TWIN, wheels: "wire-spoked", finalDrive: "belt", clutch: "hydraulic brake fluid" },
    { ...TWIN, finalDrive: "shaft", throttle: "cable" },
  ];
  const asked = new Set(
    bikes.flatMap((equipment) => keysOf(ofBike("pre-ride", equipment, { stoodDays: 0, planHas: new Set(["gearbox-oil.replace" as ItemKey]) }))),
  );
  test("it has all 46 of them", () => {
    expect(Object.keys(PUBLISHED)).toHaveLength(46);
  });
  test.each(Object.entries(PUBLISHED))("%s", (_theirs, ours) => {
    for (const key of ours) expect([...asked], key).toContain(key);
  });
  test("the run-out of a rim is its 5 mm", () => {
    expect(POINT_WORDS["rim-runout"].good).toContain("no more than 5 mm");
  });
  test("and goes by headings of our own: where one stands, not a word made of first letters", () => {
    const initials = LISTS["pre-ride"].sections.map(({ key }) => key[0]).join("");
    expect(initials).not.toMatch(/tcloc/iu);
  });
});

describe("rows are held against the schema when they are loaded", () => {
  const row = { onFail: "watch" } as const;
  test.each([
    ["a key in capitals", { Nests: row }],
    ["a caution that there is not", { nests: { ...row, caution: "ghosts" as "fuel" } }],
    ["a place that the kind lacks", { nests: { ...row, measures: [{ kind: "tread", place: "front left" } as const] } }],
    ["equipment that there is not", { nests: { ...row, fits: { fuel: ["steam"] } as never } }],
    ["brakes that may be ridden on when they fail", { nests: { ...row, vital: "brakes" as const } }],
  ])("%s is refused", (_what, rows) => {
    expect(() => pointsOf<string>(rows as unknown as Record<string, typeof row>)).toThrow();
    expect(() => pointsOf({ nests: row })).not.toThrow();
  });
  test("a list that names a point twice, or one that there is not, is refused", () => {
    const list = (points: string[]) => ({ name: "pre-ride" as const, sections: [{ key: "brakes", points }], source: "common practice" });
    expect(() => checklistOf(list(["horn"]), POINTS)).not.toThrow();
    expect(() => checklistOf(list(["horn", "horn"]), POINTS)).toThrow();
    expect(() => checklistOf(list(["hoof"]), POINTS)).toThrow();
  });
  test("every point is on a list, with one line to do and one for what is good", () => {
    const listed = new Set(CHECKLISTS.flatMap((name) => LISTS[name].sections.flatMap((section) => section.points)));
    expect(Object.keys(POINTS).filter((key) => !listed.has(key))).toEqual([]);
    for (const [key, words] of Object.entries(POINT_WORDS)) {
      expect(words.name.length, key).toBeLessThanOrEqual(32);
      expect(words.look.length, key).toBeLessThanOrEqual(110);
      expect(words.good.length, key).toBeLessThanOrEqual(110);
    }
    for (const name of CHECKLISTS) for (const { key } of LISTS[name].sections) expect(Object.keys(SECTION_WORDS)).toContain(key);
  });
  test("what is undone in spring was done at lay-up", () => {
    for (const { undoes } of Object.values<Point>(POINTS)) if (undoes !== null) expect(keysOf(ofBike("lay-up", SINGLE))).toContain(undoes);
  });
});
