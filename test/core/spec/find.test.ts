// What people type for a spec, slips and all; and how a value and its source are read.

import { expect, test } from "vitest";
import { findSpecs } from "../../../src/core/spec/find.ts";
import { readSpecFigure, readSpecSource } from "../../../src/message/read-spec.ts";
import { SPEC_KEY_NAMES, SPEC_KEYS } from "../../../src/trade/spec-keys.ts";
import { ENGLISH_SPEC_WORDS, ENGLISH_SPECS } from "../../../src/words/en/spec-names.ts";
import { ENGLISH_VOCABULARY } from "../../../src/words/en/vocabulary.ts";

test.each([
  ["front tyre pressure two-up", ["front tyre pressure"], "two-up"],
  ["what's the front tire pressure with a passenger?", ["front tyre pressure"], "two-up"],
  ["rear axel", ["rear axle torque"], null],
  ["rear wheel nut torque", ["rear axle torque"], null],
  ["banjo bolt", ["brake hose bolt torque"], null],
  ["chian slack", ["chain slack"], null],
  ["sump plug", ["oil drain plug torque"], null],
  ["inlet valves", ["intake valve clearance"], null],
  ["valves", ["intake valve clearance", "exhaust valve clearance"], null],
  ["gap", ["spark plug gap", "points gap"], null],
  // A front brake's disc is no pad, no lever and no bolt of it.
  ["front brake disc", ["front disc limit"], null],
  ["front brake rotor", ["front disc limit"], null],
  ["front brake pads", ["front pad limit"], null],
  ["rear brake shoes", ["rear shoe limit"], null],
  ["brake disc", ["front disc limit", "rear disc limit"], null],
  ["brake disc bolt torque", ["brake disc bolt torque"], null],
  ["front brake free play", ["front brake free play"], null],
  ["wheel spindle", ["front axle torque", "rear axle torque"], null],
  ["back spindle", ["rear axle torque"], null],
  ["spindle nut", ["front axle torque", "rear axle torque"], null],
  ["back brake pads", ["rear pad limit"], null],
  ["how much oil does it take", ["engine oil with filter", "engine oil without filter", "engine oil dry"], null],
  ["how much coolant does it need", ["coolant amount"], null],
  ["banana", [], null],
])("%s", (typed, keys, use) => {
  const found = findSpecs(typed, ENGLISH_SPEC_WORDS);
  expect([found.keys, found.use]).toEqual([keys, use]);
});

test.each(SPEC_KEY_NAMES)("%s is found by its own name, and by each of its synonyms among others", (key) => {
  const found = findSpecs(ENGLISH_SPECS[key].name, ENGLISH_SPEC_WORDS);
  expect([found.own, found.keys.includes(key)]).toEqual([key, true]);
  for (const synonym of ENGLISH_SPECS[key].synonyms) {
    const { keys } = findSpecs(synonym, ENGLISH_SPEC_WORDS);
    expect(keys, synonym).toContain(key);
  }
});

test("every row is sane: typical ranges rise and have a unit, and what tyres, brakes and axles hold is settled by a page", () => {
  for (const key of SPEC_KEY_NAMES) {
    const { typical, unit, system, holds, byPage } = SPEC_KEYS[key];
    if (typical !== undefined) expect([typical[0] < typical[1], unit !== null]).toEqual([true, true]);
    if (system === "brakes" || (key.includes("axle") && holds === "torque") || (holds === "pressure" && key !== "compression")) expect(byPage, key).toBe(true);
  }
});

const POINT = { decimal: ".", group: "," } as const;
const read = (typed: string, holds: "torque" | "length" | "pressure", end: "value" | "least" = "value") => {
  const figure = readSpecFigure(typed, { holds, end, unit: null }, holds === "length" ? "mm" : null, ENGLISH_VOCABULARY, POINT);
  return typeof figure === "string" ? figure : [figure.low, figure.high];
};
test.each([
  ["98 Nm", "torque", "value", [98, 98]],
  ["25-35 mm", "length", "value", [25, 35]],
  ["10 ± 1 Nm", "torque", "value", [9, 11]],
  ["4.5", "length", "least", [4.5, null]],
  ["at least 4.5 mm", "length", "value", [4.5, null]],
  ["max 3 mm", "length", "value", [null, 3]],
  ["2.5 bar (36 psi)", "pressure", "value", [250, 250]],
  ["2.5 bar (30 psi)", "pressure", "value", "two figures"],
  ["36 lb", "torque", "value", "other dimension"],
] as const)("%s of %s", (typed, holds, end, expected) => {
  expect(read(typed, holds, end)).toEqual(expected);
});

test.each([
  ["workshop manual, 2019 edition, p. 142", { manual: "workshop manual", edition: "2019 edition", page: "142" }],
  ["owner's manual p. 88", { manual: "owner's manual", edition: null, page: "88" }],
  ["Owner's manual page 6-12, 2nd edition", { manual: "Owner's manual", edition: "2nd edition", page: "6-12" }],
  ["p 60", { manual: "manual", edition: null, page: "60" }],
  ["plate on the swingarm", { manual: "plate on the swingarm", edition: null, page: null }],
  ["", null],
])("source %s", (typed, source) => {
  expect(readSpecSource(typed)).toEqual(source);
});
