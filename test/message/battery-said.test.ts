// Volts as riders say them: whole ones that a meter shows, and how long the battery had stood.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { HERON, knownWith } from "./riders.ts";

const KNOWN = knownWith([HERON]);
const readings = (text: string) =>
  read(text, KNOWN).intents.flatMap((intent) => (intent.do === "log reading" && intent.kind === "battery voltage" ? [intent] : []));

test.each([
  ["battery 12 V rested 8 h", 12, 8],
  ["battery reads 12V resting", 12, undefined],
  ["battery at rest 12 V", 12, undefined],
  ["battery 12 V rested 8 h, 14,300 mi", 12, 8],
  ["battery voltage 12 V rested a day, rear 42 psi", 12, 24],
  ["battery voltage 12 v rested 3 days, 5 °C", 12, 72],
  ["battery down to 12 V", 12, undefined],
  ["battery showed 12 V this morning", 12, undefined],
  ["battery at 12V after sitting all week", 12, 168],
  ["Batterie 12 V nach 8 Stunden Ruhe", 12, 8],
  ["battery 6 V rested 8 h", 6, 8],
  // Wednesday the 25th: since Sunday it has stood three days, and was read today.
  ["battery 12.6 V rested since Sunday", 12.6, 72],
  ["battery 12.6 V standing since last Friday", 12.6, 120],
  ["battery 12.6 V unused since 1 November", 12.6, 24 * 24],
] as const)("“%s”: %d V, stood %s hours, read today", (said, value, stood) => {
  expect(readings(said).map((each) => [each.value, each.detail?.stood, each.on])).toEqual([[value, stood, "2026-11-25"]]);
});

test.each(["12V battery fitted", "new 12 V battery", "battery 12 V 10 Ah", "fitted a 12 V battery at 14,300"])(
  "“%s”: what it is sold as is no reading",
  (said) => {
    expect(readings(said)).toEqual([]);
  },
);

test("a day of its own stays the day it was read on", () => {
  expect(readings("battery was 12.1 V on Sunday").map(({ on }) => on)).toEqual(["2026-11-22"]);
  expect(readings("battery 12.4 V since the trip on Sunday").map(({ on }) => on)).toEqual(["2026-11-22"]);
});

test.each([
  ["battery 12.1 V rested 3 days at -20 °C", -20],
  ["battery 12.1 V at -20 °C rested 3 days", -20],
  ["battery 11.9 V rested 1 day at -3 °C", -3],
  ["battery 12.1 V rested 8 h at 3 °C", 3],
])("“%s”: how cold it was is kept beside how long it had stood", (said, celsius) => {
  const kinds = read(said, KNOWN).intents.flatMap((intent) => (intent.do === "log reading" ? [[intent.kind, intent.value]] : []));
  expect(kinds).toContainEqual(["ambient temperature", celsius]);
  expect(readings(said)).toHaveLength(1);
});

test("a bike that is level stands upright", () => {
  const [level] = read("front brake fluid below min, bike level, bars straight", KNOWN).intents;
  expect(level).toMatchObject({ kind: "brake fluid level", place: "front", detail: { conditions: ["upright", "bars straight"] } });
});
