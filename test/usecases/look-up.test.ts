// Open tables against what is published: each row names where.

import { expect, test } from "vitest";
import { lookUp } from "../../src/usecases/look-up.ts";
import { lookUpWords } from "../../src/words/en/look-up.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";
import { makePrinter } from "../../src/words/printer.ts";

const printer = makePrinter({ locale: "en-GB", distance: null });
const found = (typed: string) => lookUp({ vocabulary: ENGLISH_VOCABULARY }, typed);

test.each([
  // SAE J300:2015: 10W cranks at -25 °C and pumps at -30 °C; 40 is 12.5 to below 16.3 mm²/s at 100 °C; 20 begins at 6.9 in that issue.
  ["10W-40", { winter: { cranks: -25, pumps: -30 }, hot: { from: 12.5, below: 16.3 } }],
  ["SAE 20", { winter: null, hot: { from: 6.9, below: 9.3 } }],
  // The thinnest grades of that issue: 8 is 4.0 to below 6.1, 12 is 5.0 to below 7.1.
  ["0W-8", { unknown: [], winter: { cranks: -35, pumps: -40 }, hot: { from: 4, below: 6.1 } }],
  ["SAE 12", { unknown: [], hot: { from: 5, below: 7.1 } }],
  ["10W-35", { unknown: ["35"], hot: null }],
  // 49 CFR 571.116 S5.1: DOT 4 at least 230 °C dry and 155 °C wet; DOT 5.1 has the limits of DOT 5, 260 and 180.
  ["DOT 4", { dry: 230, wet: 155 }],
  ["dot5.1", { dry: 260, wet: 180 }],
  // UN Regulation No. 75, Annex 4: 58 is 236 kg; V is 240 km/h, H 210.
  ["58V", { load: { index: 58, kilograms: 236 }, speed: { symbol: "V", kmh: 240 } }],
  ["load index 73", { load: { index: 73, kilograms: 365 }, speed: null }],
  ["speed symbol H", { speed: { symbol: "H", kmh: 210 } }],
  // ISO 272: M10 has 16 mm, 17 before (DIN 933).
  ["M10", { size: "M10", hex: { now: 16, before: 17 } }],
  ["M10x1.25", { size: "M10", pitches: [1.5, 1.25, 1] }],
  ["M8 bolt", { size: "M8", hex: { now: 13 } }],
  ["13 mm spanner", { table: "hex", width: 13, threads: [{ size: "M8", before: false }] }],
  ["17 socket", { table: "hex", threads: [{ size: "M10", before: true }] }],
  ["hex 13", { table: "hex", width: 13, threads: [{ size: "M8", before: false }] }],
  ["hex 17 mm", { table: "hex", threads: [{ size: "M10", before: true }] }],
  ["what does (58W) mean?", { table: "tyre mark", mark: "58W", load: { index: 58, kilograms: 236 }, speed: { symbol: "W", kmh: 270 } }],
  // ISO 261: M10 has 1.5 coarse, 1.25 and 1 fine.
  ["M10 x 1,25", { table: "thread", size: "M10", pitch: 1.25 }],
  ["what size spanner for M8", { table: "thread", size: "M8", pitch: null }],
  // ASME B1.1: 1/4-20 UNC, 1/4-28 UNF; 5/16-18 and -24.
  ["1/4-20", { table: "inch thread", size: "1/4", coarse: 20, fine: 28 }],
  ["5/16 UNF", { table: "inch thread", coarse: 18, fine: 24 }],
  // A whole sidewall; the speed is that of the mark in brackets. UN Regulation No. 75: W is 270 km/h.
  ["120/70ZR17 M/C (58W)", { table: "tyre mark", load: { index: 58, kilograms: 236 }, speed: { symbol: "W", kmh: 270 } }],
])("%s", (typed, row) => {
  expect(found(typed)).toMatchObject(row);
});

test("of a place that the tread law's table lacks it says which it has; a spec's words are no place", () => {
  for (const words of ["tread law France", "tread law in france?", "legal tread in France", "France tread law"])
    expect(found(words), words).toMatchObject({ table: "tread law", lacks: expect.stringMatching(/^france$/iu), rows: { length: 4 } });
  for (const words of ["tread limits front", "minimum tread rear tyre", "legal tread ok"]) expect(found(words), words).toBeNull();
  expect(found("tread law Germany")).toMatchObject({ lacks: null, rows: [{ place: "Germany" }] });
});

test("tread law and resting volts are whole tables", () => {
  // Road Vehicles (Construction and Use) Regulations 1986, reg. 27: 1.0 mm; Battery Council International: 12.65 V charged.
  expect(found("tread law")).toMatchObject({ rows: expect.arrayContaining([expect.objectContaining({ place: "United Kingdom", millimetres: 1 })]) });
  expect(found("battery voltages")).toMatchObject({ kinds: expect.arrayContaining([expect.objectContaining({ kind: "flooded" })]) });
});

test("a kind of battery has its own row, and is told from the battery of the bike", () => {
  // Battery Council International: a flooded one rests at 12.65 V when charged.
  const flooded = { table: "resting volts", kinds: [{ kind: "flooded", points: expect.arrayContaining([{ volts: 12.65, charge: 1 }]) }] };
  for (const words of ["lead acid", "flooded battery", "wet cell battery"]) expect(found(words), words).toMatchObject(flooded);
  for (const words of ["AGM", "AGM battery", "what is AGM"]) expect(found(words), words).toMatchObject({ kinds: [{ kind: "AGM" }] });
  for (const words of ["lithium battery", "LiFePO4", "lithium battery voltage"]) expect(found(words), words).toMatchObject({ kinds: [{ kind: "lithium" }] });
  expect(found("battery")).toBeNull();
});

test("each table can be had whole", () => {
  // UN Regulation No. 75, Annex 4 and 2.33.
  expect(found("load index")).toMatchObject({ rows: expect.arrayContaining([{ index: 58, kilograms: 236 }]) });
  // An "s" of the plural is no symbol.
  for (const words of ["speed symbols", "speed rating"])
    expect(found(words), words).toMatchObject({ table: "speed symbols", rows: expect.arrayContaining([{ symbol: "V", kmh: 240 }]) });
  for (const words of ["thread sizes", "hex sizes", "what are the thread sizes"])
    expect(found(words), words).toMatchObject({
      table: "threads",
      rows: expect.arrayContaining([{ size: "M8", pitches: [1.25, 1], hex: { now: 13, before: 13 } }]),
    });
  for (const words of ["UK tread", "tread depth in the UK"]) expect(found(words), words).toMatchObject({ rows: [{ place: "United Kingdom", millimetres: 1 }] });
  // Without a place, it is the bike's own limit that is meant.
  expect(found("tread depth")).toBeNull();
});

test.each([
  [
    "M10x1.25",
    "M10x1.25: a fine pitch of M10, which has 1.5, 1.25 and 1 mm, the coarse one first (ISO 261); hex head 16 mm, 17 mm on older bolts (ISO 272, DIN 933).",
  ],
  ["M8x1.1", "M8x1.1: no pitch of M8, which has 1.25 and 1 mm, the coarse one first (ISO 261)"],
  ["58W", "58W: load index 58, 236 kg on that tyre; speed symbol W, up to 270 km/h (UN Regulation No. 75"],
  ["10W-40", "10W-40: cold, tested for cranking at -25 °C and for pumping at -30 °C; hot, 12.5 to below 16.3 mm²/s at 100 °C (SAE J300:2015)."],
  ["hex 17", "17 mm across flats: M10 on older bolts (DIN 933)."],
  ["flooded battery", "flooded, 12 V, at rest for six hours or more: 12.65 V 100 %"],
])("%s is told in one line, with its source", (typed, line) => {
  const row = found(typed);
  const lines = row === null ? [] : lookUpWords(printer).lines(row);
  expect(lines).toEqual([expect.stringContaining(line)]);
});

test("riders' words for a table, and one place of the tread law", () => {
  for (const words of ["battery voltage", "state of charge", "12.4 V", "12,4 volts", "12 V"])
    expect(found(words), words).toMatchObject({ table: "resting volts" });
  // 49 CFR 571.116 S5.1.1: DOT 3 at least 205 °C dry.
  for (const words of ["brake fluid types", "DOT?"])
    expect(found(words), words).toMatchObject({ rows: expect.arrayContaining([expect.objectContaining({ name: "DOT 3", dry: 205 })]) });
  for (const words of ["viscosity", "SAE J300"]) expect(found(words), words).toMatchObject({ table: "oil grades", source: "SAE J300:2015" });
  // StVZO section 36: 1.6 mm.
  for (const words of ["legal tread in Germany", "Germany tread law", "minimum tread depth, Germany?"])
    expect(found(words), words).toMatchObject({ rows: [{ place: "Germany", millimetres: 1.6 }] });
  expect(found("minimum tread in the UK")).toMatchObject({ rows: [{ place: "United Kingdom", millimetres: 1 }] });
  for (const words of ["minimum tread", "min tread depth"]) expect(found(words), words).toMatchObject({ rows: { length: 4 } });
});

test.each([
  "legal tread on Mars",
  "120/70ZR17",
  "14.8 mm spanner",
  "23 spanner",
  "7/8-20",
  "5 V",
  "oil",
  "rear axle",
  "58",
  "front tyre pressure",
  "M99",
  "valves",
  "99W-99",
  "battery",
])("%s is no mark of a table", (typed) => {
  expect(found(typed)).toBeNull();
});
