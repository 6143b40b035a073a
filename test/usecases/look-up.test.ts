// Open tables against what is published: each row names where.

import { expect, test } from "vitest";
import { lookUp } from "../../src/usecases/look-up.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const found = (typed: string) => lookUp({ vocabulary: ENGLISH_VOCABULARY }, typed);

test.each([
  // SAE J300:2015: 10W cranks at -25 °C and pumps at -30 °C; 40 is 12.5 to below 16.3 mm²/s at 100 °C; 20 begins at 6.9 in that issue.
  ["10W-40", { winter: { cranks: -25, pumps: -30 }, hot: { from: 12.5, below: 16.3 } }],
  ["SAE 20", { winter: null, hot: { from: 6.9, below: 9.3 } }],
  // 49 CFR 571.116 S5.1: DOT 4 at least 230 °C dry and 155 °C wet; DOT 5.1 has the limits of DOT 5, 260 and 180.
  ["DOT 4", { dry: 230, wet: 155 }],
  ["dot5.1", { dry: 260, wet: 180 }],
  // UN Regulation No. 75, Annex 4: 58 is 236 kg; V is 240 km/h, H 210.
  ["58V", { load: { index: 58, kilograms: 236 }, speed: { symbol: "V", kmh: 240 } }],
  ["load index 73", { load: { index: 73, kilograms: 365 }, speed: null }],
  ["speed symbol H", { speed: { symbol: "H", kmh: 210 } }],
  // ISO 272: M10 has 16 mm, 17 before (DIN 933).
  ["M10", { size: "M10", hex: { now: 16, before: 17 } }],
])("%s", (typed, row) => {
  expect(found(typed)).toMatchObject(row);
});

test("tread law and resting volts are whole tables", () => {
  // Road Vehicles (Construction and Use) Regulations 1986, reg. 27: 1.0 mm; Battery Council International: 12.65 V charged.
  expect(found("tread law")).toMatchObject({ rows: expect.arrayContaining([expect.objectContaining({ place: "United Kingdom", millimetres: 1 })]) });
  expect(found("battery voltages")).toMatchObject({ kinds: expect.arrayContaining([expect.objectContaining({ kind: "flooded" })]) });
});

test.each(["oil", "rear axle", "58", "front tyre pressure", "M99", "valves", "99W-99", "battery"])("%s is no mark of a table", (typed) => {
  expect(found(typed)).toBeNull();
});
