// The order of a sheet: what a technician's order forbids, over every mix of the catalogue's items, and the orders that workshops teach.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ItemKey } from "../../../src/core/ids.ts";
import { READING_KINDS } from "../../../src/core/reading/kinds.ts";
import { arrange, type Evening, USUAL_EVENING } from "../../../src/core/sheet/arrange.ts";
import { PLAIN, type Work } from "../../../src/core/sheet/how.ts";
import { SPEC_KEYS } from "../../../src/trade/spec-keys.ts";
import { planItem, STANDARD_ITEMS, type StandardItemKey } from "../../../src/trade/standard-items.ts";
import { howWorked, WORKSHOP } from "../../../src/trade/workshop.ts";

const KEYS = Object.keys(STANDARD_ITEMS) as StandardItemKey[];
const workOf = (key: StandardItemKey): Work => ({ ...planItem(key, null), how: howWorked(key as string as ItemKey) ?? PLAIN });
const sheet = (...keys: StandardItemKey[]): readonly Evening[] => arrange(keys.map(workOf), { tension: true });
const told = (evenings: readonly Evening[]): string[] =>
  evenings.flatMap(({ starts, steps }, n) => [
    `evening ${n + 1}, ${starts}`,
    ...steps.map((each) => ("item" in each ? each.item : "part" in each ? `${each.step} ${each.part}` : each.step)),
  ]);

describe("the rows", () => {
  test.each(KEYS)("%s has one, and what it names exists", (key) => {
    const how = howWorked(key as string as ItemKey);
    expect(how).not.toBeNull();
    for (const spec of [...(how?.specs ?? []), ...(how?.consumables ?? []).flatMap(({ spec, kind }) => [spec, kind])])
      if (spec !== null) expect(SPEC_KEYS).toHaveProperty([spec]);
    for (const before of how?.after ?? []) expect(KEYS).toContain(before);
    for (const kind of how?.measures ?? []) expect(READING_KINDS).toHaveProperty([kind]);
  });
  test("there is none for an item that the catalogue lacks, and none is made up", () => {
    expect(Object.keys(WORKSHOP).filter((key) => !KEYS.includes(key as StandardItemKey))).toEqual([]);
    expect(howWorked("own.thing" as ItemKey)).toBeNull();
  });
  test("what is drained has a new washer, and what is torqued has a torque wrench", () => {
    for (const key of ["engine-oil.replace", "gearbox-oil.replace", "shaft-oil.replace", "coolant.replace"] as const)
      expect(howWorked(key as string as ItemKey)?.consumables.map(({ what }) => what)).toContain("crush washer");
    for (const key of KEYS) {
      const how = howWorked(key as string as ItemKey);
      if (how?.opens.some((part) => part === "front wheel" || part === "rear wheel")) {
        expect(how.tools, key).toContain("torque wrench");
        expect(
          how.specs.some((spec) => spec.endsWith("axle torque")),
          key,
        ).toBe(true);
      }
    }
  });
});

// Common practice of workshops: clearances are set on an engine that stood overnight, oil is drained warm, throttles are balanced warm and after the valves.
test("oil warm on the first evening; valves cold after a night; balance warm again, after them; the ride last", () => {
  const lines = told(sheet("throttle-balance.adjust", "valve-clearance.adjust", "engine-oil.replace"));
  expect(lines).toEqual([
    ...["evening 1, warm", "engine-oil.replace"],
    ...["evening 2, cold", "open seat", "open tank", "open valve cover", "valve-clearance.adjust"],
    ...["close valve cover", "close tank", "close seat"],
    ...["evening 3, warm", "throttle-balance.adjust", "last look", "test ride"],
  ]);
});

test("short enough for one evening, the engine is run once the cold work is done and closed", () => {
  expect(told(sheet("idle-speed.adjust", "spark-plugs.replace"))).toEqual([
    ...["evening 1, cold", "open seat", "open tank", "spark-plugs.replace", "close tank", "close seat", "warm up", "idle-speed.adjust"],
    ...["last look", "test ride"],
  ]);
});

test("the tank comes off once for all that lies under it", () => {
  const lines = told(sheet("air-filter.replace", "chain.adjust", "spark-plugs.replace", "lights.test", "fuel-hoses.inspect"));
  expect(lines.filter((line) => line === "open tank")).toHaveLength(1);
  const [off, on] = [lines.indexOf("open tank"), lines.indexOf("close tank")];
  for (const item of ["air-filter.replace", "spark-plugs.replace", "fuel-hoses.inspect"]) {
    expect(lines.indexOf(item)).toBeGreaterThan(off);
    expect(lines.indexOf(item)).toBeLessThan(on);
  }
});

test("the rear wheel back in, then the slack, the chain's oil after it, and the brakes pumped", () => {
  const lines = told(sheet("chain.lubricate", "chain.adjust", "rear-tyre.replace", "brake-fluid.replace"));
  const order = ["rear-tyre.replace", "close rear wheel", "chain.adjust", "chain.lubricate", "brakes", "last look", "test ride"].map((line) =>
    lines.indexOf(line),
  );
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(lines.indexOf("brake-fluid.replace")).toBeGreaterThan(lines.indexOf("close rear wheel"));
  // With no slack on the sheet, the wheel itself asks for it.
  expect(told(sheet("rear-tyre.replace"))).toContain("tension");
  expect(told(sheet("rear-tyre.replace", "chain.adjust"))).not.toContain("tension");
  expect(told(arrange([workOf("rear-tyre.replace")], { tension: false }))).not.toContain("tension");
});

test("a wheel that stays out overnight: the bike is not moved, and the brakes are made ready when it is back in", () => {
  const work = (key: string): Work => ({
    ...{ key: key as ItemKey, engine: "any", minutes: 100, system: "final drive" },
    how: { ...PLAIN, opens: ["rear wheel"] },
  });
  const evenings = arrange([work("own.a"), work("own.b")], { tension: false });
  expect(told(evenings)).toEqual([
    ...["evening 1, cold", "open rear wheel", "own.a", "stays apart", "evening 2, cold", "own.b", "close rear wheel", "brakes", "last look", "test ride"],
  ]);
  expect(evenings[0]?.steps.at(-1)).toEqual({ step: "stays apart", parts: ["rear wheel"] });
});

test("nothing to do is no evening, and an item of a member's own has its place", () => {
  expect(arrange([], { tension: true })).toEqual([]);
  const own: Work = { key: "own.wash" as ItemKey, engine: "any", minutes: null, system: "frame and stands", how: PLAIN };
  expect(arrange([own], { tension: true })).toMatchObject([{ items: ["own.wash"], minutes: 0, unsaid: 1 }]);
});

test("rows that wait for each other keep nobody from the rest", () => {
  const [a, b] = ["own.a", "own.b"] as readonly string[] as readonly ItemKey[];
  const work = (key: ItemKey | undefined, after: ItemKey | undefined): Work => ({
    key: key as ItemKey,
    engine: "any",
    minutes: 5,
    system: "engine",
    how: { ...PLAIN, after: [after as ItemKey], opens: ["seat"], closed: ["seat"] },
  });
  expect(arrange([work(a, b), work(b, a)], { tension: true }).flatMap(({ items }) => items)).toEqual([a, b]);
});

test("over every mix of items: each once, none cold after warm in one evening, nothing before what it waits for, nothing left apart", () => {
  let mixed = 0;
  fc.assert(
    fc.property(fc.shuffledSubarray(KEYS, { minLength: 1 }), fc.constantFrom(45, 120, USUAL_EVENING), (keys, longest) => {
      const evenings = arrange(keys.map(workOf), { tension: true, longest });
      const { faults, warmedAfterCold } = faultsOf(evenings, longest);
      mixed += warmedAfterCold;
      expect(faults).toEqual([]);
      expect(evenings.flatMap(({ items }) => items).sort()).toEqual([...keys].sort());
      expect(told(evenings).slice(-2)).toEqual(["last look", "test ride"]);
    }),
    { numRuns: 150 },
  );
  // Evenings that begin cold and end warm did occur.
  expect(mixed).toBeGreaterThan(0);
});

/** What a technician's order forbids, wherever it occurs. */
function faultsOf(evenings: readonly Evening[], longest: number): { readonly faults: readonly string[]; readonly warmedAfterCold: number } {
  const faults: string[] = [];
  let warmedAfterCold = 0;
  const seen = new Set<string>();
  const all = new Set<string>(evenings.flatMap(({ items }) => items));
  const apart = new Set<string>();
  const isWheelOut = (): boolean => apart.has("front wheel") || apart.has("rear wheel");
  let untried = false;
  for (const { starts, steps, items, minutes } of evenings) {
    let hot = starts === "warm";
    if (items.length === 0) faults.push("an evening of nothing");
    if (items.length > 1 && minutes > longest) faults.push(`${minutes} minutes`);
    for (const each of steps) {
      if (each.step === "warm up") {
        if (apart.size > 0) faults.push("run while apart");
        hot = true;
        warmedAfterCold++;
      }
      if (each.step === "open") apart.add(each.part);
      if (each.step === "close" && !apart.delete(each.part)) faults.push(`${each.part} closed twice`);
      if (each.step === "close" && each.part.endsWith("wheel")) untried = true;
      if (each.step === "brakes" && isWheelOut()) faults.push("brakes tried with a wheel out");
      if (each.step === "brakes") untried = false;
      if (each.step !== "item") continue;
      const { engine } = STANDARD_ITEMS[each.item as string as StandardItemKey] as { readonly engine?: string };
      const how = howWorked(each.item) ?? PLAIN;
      if (engine !== undefined && engine !== (hot ? "warm" : "cold")) faults.push(`${each.item} ${hot ? "hot" : "cold"}`);
      for (const part of how.opens) if (!apart.has(part)) faults.push(`${each.item} without ${part} off`);
      for (const part of how.closed) if (apart.has(part)) faults.push(`${each.item} with ${part} out`);
      for (const before of how.after) if (all.has(before) && !seen.has(before)) faults.push(`${each.item} before ${before}`);
      seen.add(each.item);
    }
  }
  if (untried) faults.push("brakes not tried");
  if (apart.size > 0) faults.push(`left apart: ${[...apart].join()}`);
  return { faults, warmedAfterCold };
}

test("the faults would be seen", () => {
  const [evening] = sheet("spark-plugs.replace", "idle-speed.adjust");
  if (evening === undefined) throw new Error("no evening");
  expect(faultsOf([evening], USUAL_EVENING).faults).toEqual([]);
  expect(faultsOf([{ ...evening, steps: [...evening.steps].reverse() }], USUAL_EVENING).faults).not.toEqual([]);
  expect(faultsOf([{ ...evening, starts: "warm" }], USUAL_EVENING).faults).toContain("spark-plugs.replace hot");
});
