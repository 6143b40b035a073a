// The trade's tables row by row against what is published: whole tables, so that no single figure can slip.

import { describe, expect, test } from "vitest";
import { chargeAt, freezesAt, judgeResting } from "../../src/core/battery/rest.ts";
import { fromCanonical } from "../../src/core/quantity/units.ts";
import { FREEZING, GRAVITY, REST_TABLES, RESTED_HOURS } from "../../src/trade/battery.ts";
import { HEX_WIDTHS, METRIC_SPANNERS, THREADS } from "../../src/trade/fasteners.ts";
import { HOT_GRADES, WINTER_GRADES } from "../../src/trade/oil-grades.ts";
import { TREAD_LAW } from "../../src/trade/tread-law.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../../src/trade/tyres.ts";

describe("tyre marks", () => {
  // UN Regulation No. 75, Annex 4 (the ETRTO's table): load index and kilograms.
  // biome-ignore format: a table of figures
  const ANNEX_4: readonly (readonly [number, number])[] = [
    [42, 150], [43, 155], [44, 160], [45, 165], [46, 170], [47, 175], [48, 180], [49, 185], [50, 190], [51, 195], [52, 200],
    [53, 206], [54, 212], [55, 218], [56, 224], [57, 230], [58, 236], [59, 243], [60, 250], [61, 257], [62, 265], [63, 272],
    [64, 280], [65, 290], [66, 300], [67, 307], [68, 315], [69, 325], [70, 335], [71, 345], [72, 355], [73, 365], [74, 375],
    [75, 387], [76, 400], [77, 412], [78, 425], [79, 437], [80, 450], [81, 462], [82, 475], [83, 487], [84, 500], [85, 515],
  ];
  test("every load index", () => expect(LOAD_KILOGRAMS).toEqual(Object.fromEntries(ANNEX_4)));
  test("the loads are the preferred numbers R 80 (ISO 3): 80 steps to ten times as much, 450 kg at 80, rounded by the table within 1.6 %", () => {
    for (const [index, kilograms] of Object.entries(LOAD_KILOGRAMS))
      expect(Math.abs(kilograms / (450 * 10 ** ((Number(index) - 80) / 80)) - 1), index).toBeLessThan(0.016);
  });
  // UN Regulation No. 75, 2.33; B and G from memory. Shops that print 109, 121 and 159 km/h have turned mph back.
  test("every speed symbol", () =>
    expect(SPEED_KMH).toEqual({
      ...{ B: 50, F: 80, G: 90, J: 100, K: 110, L: 120, M: 130, N: 140, P: 150, Q: 160 },
      ...{ R: 170, S: 180, T: 190, U: 200, H: 210, V: 240, W: 270, Y: 300 },
    }));
});

describe("the least tread", () => {
  // UK Road Vehicles (Construction and Use) Regulations 1986, reg. 27, over 50 cc; StVZO section 36; KDV section 4(4); 49 CFR 571.119 S6.4 has bars and no law for use.
  test("every place", () =>
    expect(Object.fromEntries(Object.entries(TREAD_LAW).map(([place, { millimetres }]) => [place, millimetres]))).toEqual({
      ...{ "United Kingdom": 1, Germany: 1.6, Austria: 1.6, "United States": null },
    }));
  // A British motorcycle's three quarters need not be the middle ones: that is the rule for cars. Austria's are.
  test("and where on the tread", () =>
    expect(Object.fromEntries(Object.entries(TREAD_LAW).map(([place, { band }]) => [place, band]))).toEqual({
      "United Kingdom": "three quarters of the breadth",
      Germany: "main grooves of the middle",
      Austria: "middle three quarters",
      "United States": "moulded bar",
    }));
});

describe("engine oil", () => {
  // SAE J300:2015: °C at which cranking and pumping are measured.
  test("every winter grade", () =>
    expect(Object.entries(WINTER_GRADES).map(([grade, { cranks, pumps }]) => [grade, cranks, pumps])).toEqual([
      ...[["0W", -35, -40] as const, ["5W", -30, -35] as const, ["10W", -25, -30] as const],
      ...[["15W", -20, -25] as const, ["20W", -15, -20] as const, ["25W", -10, -15] as const],
    ]));
  // SAE J300:2015: mm²/s at 100 °C, from and below; 20 begins at 6.9 in this issue, at 5.6 in those before.
  test("every grade when hot", () =>
    expect(Object.fromEntries(Object.entries(HOT_GRADES).map(([grade, { from, below }]) => [grade, [from, below]]))).toEqual({
      ...{ "8": [4, 6.1], "12": [5, 7.1], "16": [6.1, 8.2], "20": [6.9, 9.3] },
      ...{ "30": [9.3, 12.5], "40": [12.5, 16.3], "50": [16.3, 21.9], "60": [21.9, 26.1] },
    }));
});

describe("hex heads", () => {
  // ISO 272 (ISO 4014, ISO 4017), and DIN 931/933 before they took it over: they differ at M10, M12 and M14.
  test("every width", () =>
    expect(Object.entries(HEX_WIDTHS).map(([size, { now, before }]) => [size, now, before])).toEqual([
      ...[["5", 8, 8] as const, ["6", 10, 10] as const, ["8", 13, 13] as const],
      ...[["10", 16, 17] as const, ["12", 18, 19] as const, ["14", 21, 22] as const],
    ]));
  test("each is of a thread in the table, and there is a spanner for it", () => {
    const widths = METRIC_SPANNERS.map(({ width }) => width);
    for (const [size, { now, before }] of Object.entries(HEX_WIDTHS)) {
      expect(Object.keys(THREADS.metric)).toContain(size);
      expect(widths).toEqual(expect.arrayContaining([now, before]));
    }
  });
});

describe("threads", () => {
  // ISO 261, as far as ISO 898-1 tables 4 to 7 list loads for the pitch; M4, M7, M16 and M18 and the pitch of 1 mm from memory of them.
  test("every metric pitch, the coarse one first", () =>
    expect(THREADS.metric).toEqual({
      ...{ "4": [0.7], "5": [0.8], "6": [1], "7": [1], "8": [1.25, 1], "10": [1.5, 1.25, 1], "12": [1.75, 1.5, 1.25], "14": [2, 1.5] },
      ...{ "16": [2, 1.5], "18": [2.5, 1.5] },
    }));
  // ASME B1.1; from 9/16 in on Shigley, Mechanical Engineering Design, table 8-2.
  test("every inch thread", () =>
    expect(Object.entries(THREADS.unified).map(([size, { UNC, UNF }]) => [size, UNC, UNF])).toEqual([
      ...[["1/4", 20, 28] as const, ["5/16", 18, 24] as const, ["3/8", 16, 24] as const, ["7/16", 14, 20] as const],
      ...[["1/2", 13, 20] as const, ["9/16", 12, 18] as const, ["5/8", 11, 18] as const, ["3/4", 10, 16] as const],
    ]));
});

describe("batteries", () => {
  const charges = [1, 0.75, 0.5, 0.25, 0];
  // Battery Council International, 12 V at rest, 80 °F: specific gravity by charge. Ranges: a battery maker's table at 25 °C.
  test.each([
    [1, 1.265, 1.255, 1.275],
    [0.75, 1.225, 1.215, 1.235],
    [0.5, 1.19, 1.18, 1.2],
    [0.25, 1.155, 1.155, 1.165],
    [0, 1.12, 1.11, 1.13],
  ])("at a charge of %d the acid's gravity is %d", (charge, gravity, from, to) => {
    const ours = GRAVITY.find(({ x }) => x === charge)?.y ?? 0;
    expect(ours).toBe(gravity);
    expect(ours).toBeGreaterThanOrEqual(from);
    expect(ours).toBeLessThanOrEqual(to);
  });
  test("a cell at rest shows its gravity and 0.845 V more (textbook rule): six of them within 0.1 V of the table, which drifts above it as charge falls", () => {
    for (const charge of charges) {
      const { volts } = REST_TABLES.flooded.points.find((point) => point.charge === charge) ?? { volts: 0 };
      const rule = 6 * ((GRAVITY.find(({ x }) => x === charge)?.y ?? 0) + 0.845);
      expect(Math.abs(volts - rule), String(charge)).toBeLessThan(0.105);
    }
  });
  // US Army TM 5-1185, table III, and OD 1002: °F by specific gravity.
  test.each([
    [1, 32],
    [1.1, 19],
    [1.15, 5],
    [1.2, -16],
    [1.25, -62],
    [1.28, -90],
  ])("acid of %d freezes at %d °F", (gravity, fahrenheit) => {
    const celsius = freezesAt(0, [{ x: 0, y: gravity }], FREEZING);
    expect(fromCanonical(celsius, "°F")).toBeCloseTo(fahrenheit, 9);
  });
  // A public chart of four lithium iron phosphate cells in series. Where it is flat others disagree with it by 10 to 20 points, so that no share is told there.
  test.each([
    [13.6, 0.99, true],
    [13.4, 0.9, false],
    [13.3, 0.7, false],
    [13.2, 0.4, false],
    [13, 0.3, false],
    [12.8, 0.2, false],
    [12, 0.1, true],
    [10, 0, true],
  ])("lithium at %d V is %d charged on the chart: told %s", (volts, charge, told) => {
    const { charge: ours } = judgeResting(volts, REST_TABLES.lithium, RESTED_HOURS, RESTED_HOURS);
    if (told) expect(ours).toBeCloseTo(charge, 9);
    else expect(ours).toBeNull();
  });
  test("the ends of the flat part are the chart's", () => {
    expect(chargeAt(13.4, REST_TABLES.lithium)).toBeCloseTo(0.9, 9);
    expect(chargeAt(12.8, REST_TABLES.lithium)).toBeCloseTo(0.2, 9);
  });
  // Maker-neutral typical figures, from memory; makers differ by about 0.1 V.
  test.each(["AGM", "gel"] as const)("%s rests at typical figures that say so", (kind) => {
    expect(REST_TABLES[kind].points.map(({ volts }) => volts)).toEqual([12.8, 12.55, 12.25, 12, 11.75]);
    expect(REST_TABLES[kind].points.map(({ charge }) => charge)).toEqual(charges);
    expect(REST_TABLES[kind].source).toContain("from memory");
  });
});
