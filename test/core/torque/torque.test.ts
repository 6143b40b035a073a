// Torque against published tables and worked examples; each source beside its values.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toCanonical } from "../../../src/core/quantity/units.ts";
import { settingWith } from "../../../src/core/torque/adapter.ts";
import { estimate } from "../../../src/core/torque/estimate.ts";
import { crossFits } from "../../../src/core/torque/hex.ts";
import { crossOrder } from "../../../src/core/torque/stages.ts";
import { readThread, stressArea, stripArea, type Thread } from "../../../src/core/torque/thread.ts";
import { fits, stepAt, usualAccuracy, type Wrench } from "../../../src/core/torque/wrench.ts";
import { ALUMINIUM_SHEAR, FRICTION, GRADES, INCH_SPANNERS, METRIC_SPANNERS, THREADS } from "../../../src/trade/fasteners.ts";

const thread = (name: string): Thread => {
  const read = readThread(name, THREADS);
  if (read === null) throw new Error(`no thread: ${name}`);
  return read;
};
const LBF = 4.448_221_615_260_5;

describe("stress area", () => {
  // Source: ISO 898-1:2013 tables 4 to 7, three digits as printed.
  test.each([
    ["M5", 14.2],
    ["M6", 20.1],
    ["M8", 36.6],
    ["M10", 58.0],
    ["M12", 84.3],
    ["M14", 115],
    ["M12x1.5", 88.1],
    ["M12x1.25", 92.1],
    ["M14x1.5", 125],
    // From memory of the same tables.
    ["M8x1", 39.2],
    ["M10x1.25", 61.2],
  ])("%s", (name, printed) => {
    expect(Number(stressArea(thread(name)).toPrecision(3))).toBeCloseTo(printed, printed < 100 ? 1 : 0);
  });
  // Source: ASME B1.1; FED-STD-H28/2B, square inches to four places.
  test.each([
    ["1/4-20", 0.0318],
    ["5/16-18", 0.0524],
    ["3/8-16", 0.0775],
    ["7/16-14", 0.1063],
    ["1/4-28", 0.0364],
    ["5/16-24", 0.058],
    ["3/8-24", 0.0878],
    ["7/16-20", 0.1187],
    ["1/2-20", 0.1599],
    ["1/2 UNC", 0.1419],
  ])("%s", (name, printed) => {
    expect(Math.abs(stressArea(thread(name)) / 25.4 ** 2 - printed)).toBeLessThan(1e-4);
  });
});

describe("proof load is area times proof stress, within the standard's rounding of 1 %", () => {
  // Source: ISO 898-1:2013 tables 4 to 7, newtons.
  test.each([
    ["M5", "8.8", 8230],
    ["M6", "8.8", 11_600],
    ["M8", "8.8", 21_200],
    ["M10", "8.8", 33_700],
    ["M12", "8.8", 48_900],
    ["M6", "10.9", 16_700],
    ["M8", "10.9", 30_400],
    ["M10", "10.9", 48_100],
    ["M5", "10.9", 11_800],
    ["M12", "10.9", 70_000],
    ["M14", "8.8", 66_700],
    ["M14", "10.9", 95_500],
    ["M5", "12.9", 13_800],
    ["M6", "12.9", 19_500],
    ["M8", "12.9", 35_500],
    ["M10", "12.9", 56_300],
    ["M12", "12.9", 81_800],
    ["M14", "12.9", 112_000],
    // From memory of the same tables.
    ["M8x1", "8.8", 22_700],
    ["M10x1.25", "10.9", 50_800],
    ["M12x1.25", "12.9", 89_300],
  ] as const)("%s class %s", (name, grade, printed) => {
    expect(Math.abs((stressArea(thread(name)) * GRADES[grade].proof) / printed - 1)).toBeLessThan(0.01);
  });
  // Source: SAE J429 table, pounds-force.
  test.each([
    ["1/4-20", "grade 2", 1750],
    ["1/4-20", "grade 5", 2700],
    ["1/4-20", "grade 8", 3800],
    ["5/16-18", "grade 5", 4450],
    ["3/8-16", "grade 5", 6600],
    ["3/8-16", "grade 8", 9300],
    ["5/16-18", "grade 2", 2900],
    ["5/16-18", "grade 8", 6300],
    ["3/8-16", "grade 2", 4250],
    ["7/16-14", "grade 2", 5850],
    ["7/16-14", "grade 5", 9050],
    ["7/16-14", "grade 8", 12_800],
    ["1/4-28", "grade 5", 3100],
    ["1/4-28", "grade 8", 4350],
    ["3/8-24", "grade 2", 4800],
    ["3/8-24", "grade 8", 10_500],
    // From memory of the same table.
    ["1/2-13", "grade 5", 12_100],
    ["1/2-20", "grade 8", 19_200],
  ] as const)("%s %s", (name, grade, printed) => {
    expect(Math.abs((stressArea(thread(name)) * GRADES[grade].proof) / LBF / printed - 1)).toBeLessThan(0.01);
  });
});

test("inch threads are read from 4 to 80 turns an inch", () => {
  expect(["15/16-7", "15/16-4", "1/4-80"].map((name) => readThread(name, THREADS)?.pitch)).toEqual([25.4 / 7, 25.4 / 4, 25.4 / 80]);
  expect(["15/16-3", "1/4-81"].map((name) => readThread(name, THREADS))).toEqual([null, null]);
});

// Source: Introduction to the Design and Behavior of Bolted Joints, 4th ed., table of metric thread areas: nut thread strip area over one diameter, 6H/6g, mm².
describe("least area that strips a hole", () => {
  test.each([
    ["M5", 49.994],
    ["M6", 73.145],
    ["M8", 134.63],
    ["M10", 214.77],
    ["M12", 313.41],
    ["M14", 434.47],
    ["M16", 569.12],
  ])("%s", (name, printed) => {
    const { diameter } = thread(name);
    expect(Math.abs(stripArea(thread(name), diameter) / printed - 1)).toBeLessThan(0.01);
    expect(stripArea(thread(name), 2 * diameter)).toBeCloseTo(2 * stripArea(thread(name), diameter), 9);
  });
});

describe("torque from preload, T = K·d·F", () => {
  const K20 = { likely: 0.2, from: 0.2, to: 0.2 };
  // Source: a hardware maker's table, K = 0.20, clamp 0.75 x 55 ksi x area; pounds-force feet (some figures are truncated there).
  test.each([
    ["1/4-20", 5.4],
    ["5/16-18", 11.5],
    ["3/8-16", 20],
    ["7/16-14", 32],
    ["1/2-13", 48.8],
    ["1/4-28", 6.3],
    ["7/16-20", 35.7],
    ["1/2-20", 55],
  ])("%s grade 2: %s lbf·ft", (name, printed) => {
    const { likely } = estimate(thread(name), GRADES["grade 2"], K20, { material: "steel" });
    expect(Math.abs(likely / toCanonical(1, "ft-lb") - printed)).toBeLessThan(Math.max(0.3, printed * 0.01));
  });
  // Source: an engineering article's chart, 3/8-16 grade 5: clamp 4,940 lbf; 30 lbf·ft at K 0.20, 23 at K 0.15 (both truncated).
  test("3/8-16 grade 5", () => {
    const dry = estimate(thread("3/8-16"), GRADES["grade 5"], K20, { material: "steel" });
    expect(dry.preload / LBF).toBeCloseTo(4940, -1);
    expect(Math.floor(dry.likely / toCanonical(1, "ft-lb"))).toBe(30);
    const slick = estimate(thread("3/8-16"), GRADES["grade 5"], { likely: 0.15, from: 0.15, to: 0.15 }, { material: "steel" });
    expect(Math.floor(slick.likely / toCanonical(1, "ft-lb"))).toBe(23);
  });
  // Source: Shigley, Mechanical Engineering Design, 9th ed., example 8-3: 3/4 in-16, preload 25 kip, table 8-15; part (b) comes to 3,750 lbf·in at K 0.20 (that figure from memory).
  test("textbook: 3/4-16 at 25 kip", () => {
    // The preload is given there, so the grade is the one whose three quarters of proof it is.
    const given = thread("3/4-16");
    const { likely, preload, area } = estimate(given, { proof: (25_000 * LBF) / stressArea(given) / 0.75 }, K20, { material: "steel" });
    expect(area / 25.4 ** 2).toBeCloseTo(0.373, 3);
    expect(preload / LBF).toBeCloseTo(25_000, 6);
    expect(likely / toCanonical(1, "in-lb")).toBeCloseTo(3750, 6);
  });
  // Source: a handbook of fastening and joining, its worked example of five nut factors: a no. 10 screw, 0.190 in, at 1,275 lbf.
  test.each([
    [0.3, 72.7],
    [0.25, 60.6],
    [0.2, 48.5],
    [0.15, 36.3],
    [0.1, 24.2],
  ])("handbook: 0.190 in at 1,275 lbf, K %d: %d lbf·in", (k, printed) => {
    const screw: Thread = { name: "10-32", diameter: 0.19 * 25.4, pitch: 25.4 / 32 };
    const { likely } = estimate(screw, { proof: (1275 * LBF) / stressArea(screw) / 0.75 }, { likely: k, from: k, to: k }, { material: "steel" });
    // 48.45 is printed 48.5 there.
    expect(Math.abs(likely / toCanonical(1, "in-lb") - printed)).toBeLessThan(0.051);
  });
  // Computed from the standard's printed proof loads: 0.75 x 21,200 N x 0.2 x 8 mm, and so on.
  test.each([
    ["M8", "8.8", 0.2, 25.44],
    ["M8", "10.9", 0.2, 36.48],
    ["M6", "8.8", 0.2, 10.44],
    ["M10", "10.9", 0.15, 54.113],
  ] as const)("%s class %s at K %d: %d N·m", (name, grade, k, worked) => {
    const { likely } = estimate(thread(name), GRADES[grade], { likely: k, from: k, to: k }, { material: "steel" });
    expect(Math.abs(likely / worked - 1)).toBeLessThan(0.01);
  });
  test("less thread in aluminium carries less, and twice the diameter carries a bolt of class 8.8", () => {
    const into = (engaged: number) => estimate(thread("M8"), GRADES["8.8"], FRICTION.dry, { material: "aluminium", engaged, shear: ALUMINIUM_SHEAR });
    expect(into(16).likely).toBeCloseTo(estimate(thread("M8"), GRADES["8.8"], FRICTION.dry, { material: "steel" }).likely, 9);
    expect([into(8).limitedByHole, into(16).limitedByHole]).toEqual([true, false]);
    expect(into(6).likely).toBeCloseTo(into(8).likely * 0.75, 9);
    // A harder bolt finds the same hole: no more torque for it than the hole bears.
    const hard = estimate(thread("M8"), GRADES["12.9"], FRICTION.dry, { material: "aluminium", engaged: 8, shear: ALUMINIUM_SHEAR });
    expect(hard.likely).toBeCloseTo(into(8).likely, 9);
    expect(hard.preload).toBeCloseTo(0.6 * ALUMINIUM_SHEAR * stripArea(thread("M8"), 8), 9);
  });
  test("every state of the threads is said with its range, and the worst of it is told", () => {
    for (const friction of Object.values(FRICTION)) {
      const e = estimate(thread("M8"), GRADES["8.8"], friction, { material: "steel" });
      expect(e.from).toBeLessThan(e.likely);
      expect(e.likely).toBeLessThan(e.to);
      expect(e.atWorst).toBeCloseTo((0.75 * friction.likely) / friction.from, 9);
      expect(e.holeAtWorst).toBeNull();
      const soft = estimate(thread("M8"), GRADES["12.9"], friction, { material: "aluminium", engaged: 8, shear: ALUMINIUM_SHEAR });
      expect(soft.holeAtWorst).toBeCloseTo((0.6 * friction.likely) / friction.from, 9);
    }
  });
});

describe("an adapter makes the lever longer, so the wrench is set lower", () => {
  // Sources: US Army TM 9-254 fig. 4-6 and published worked examples; the last two computed from the formula.
  test.each([
    ["50 lbf·ft, 16 in and 2 in in line", 50, 16, 2, 0, 44.444],
    ["80 N·m, 400 and 50 mm in line", 80, 400, 50, 0, 71.111],
    ["100 lbf·ft, 12 in and 9 in in line", 100, 12, 9, 0, 57.143],
    ["80 N·m at a right angle", 80, 400, 50, 90, 80],
    ["100 N·m, 400 and 50 mm at 45°", 100, 400, 50, 45, 91.879],
    ["100 N·m, 400 and 50 mm at 135°", 100, 400, 50, 135, 109.696],
  ])("%s", (_, torque, wrench, adapter, angle, printed) => {
    expect(settingWith(torque, { wrench, adapter, angle })).toBeCloseTo(printed, 2);
  });
  test("geometry that takes the lever away gives no figure", () => {
    expect(settingWith(20, { wrench: 100, adapter: 100, angle: 180 })).toBeNull();
    expect(settingWith(20, { wrench: 0, adapter: 100, angle: 0 })).toBeNull();
    expect(settingWith(20, { wrench: 100, adapter: 50, angle: 200 })).toBeNull();
  });
});

describe("threads as they are written", () => {
  test.each([
    ["M8", "M8x1.25"],
    ["m 10", "M10x1.5"],
    ["M10×1.25", "M10x1.25"],
    ["M10 x 1,25", "M10x1.25"],
    ["5/16-18", "5/16-18"],
    ["3/8 UNF", "3/8-24"],
    ['1/4" - 28', "1/4-28"],
  ])("%s", (text, name) => {
    expect(thread(text).name).toBe(name);
  });
  test.each(["M8x8", "M99", "8", "3/8", "big", "1/0-20", "M8x0"])("%s is none", (text) => {
    expect(readThread(text, THREADS)).toBeNull();
  });
});

const wrench = (name: string, low: number, high: number, step: number, unit: Wrench["unit"], accuracy = 0.04): Wrench => ({
  ...{ id: name, name, low, high, step, unit, accuracy, drive: null, kind: null },
});
const SMALL = wrench("small", 5, 25, 0.5, "N·m");
const BIG = wrench("big", 20, 100, 1, "ft-lb");
const inLb = (low: number, high = low) => ({ low: toCanonical(low, "in-lb"), high: toCanonical(high, "in-lb") });

describe("which wrench, and where to set it", () => {
  test("60 to 80 in-lb on a wrench of half newton metres: 8.0, and its 4 % stay inside", () => {
    const [best] = fits(inLb(60, 80), [BIG, SMALL]);
    expect(best).toMatchObject({ setting: 8, keepsInside: true, lowOnScale: false, wrench: { name: "small" } });
  });
  test("of several steps inside, the one whose whole error stays inside is taken", () => {
    // 4 % either way: only 10.4 to 10.6 keeps 10 to 11 whole; 10.5 does, 10.0 and 11.0 do not.
    expect(fits({ low: 10, high: 11 }, [SMALL])[0]).toMatchObject({ setting: 10.5, keepsInside: true });
    // The step nearest to the middle lies outside, the next one inside: the inside one is set.
    expect(fits({ low: 10.01, high: 11 }, [wrench("coarse", 0.5, 40.5, 1, "N·m")])[0]).toMatchObject({ setting: 10.5 });
    expect(fits({ low: 9.99, high: 10.49 }, [wrench("coarse", 1, 41, 1, "N·m")])[0]).toMatchObject({ setting: 10 });
  });
  test("without its owner's word a wrench is taken as the standard has it", () => {
    // ISO 6789-1:2017, from memory: 6 % up to 10 N·m, 4 % above.
    expect([usualAccuracy(10, "N·m"), usualAccuracy(88, "in-lb"), usualAccuracy(25, "N·m"), usualAccuracy(4, "bar")]).toEqual([0.06, 0.06, 0.04, 0.04]);
  });
  test("a stage is set on the nearest step, and not beyond the scale's ends", () => {
    expect([stepAt(12.2, SMALL), stepAt(5.2, SMALL), stepAt(4, SMALL), stepAt(26, SMALL)]).toEqual([12, 5, null, null]);
  });
  test("a setting in the lowest fifth of the scale is said to be there, and another wrench is preferred", () => {
    const wide = wrench("wide", 10, 200, 1, "N·m");
    const both = fits({ low: 18, high: 22 }, [wide, SMALL]);
    expect(both.map((fit) => [fit.wrench.name, fit.lowOnScale])).toEqual([
      ["small", false],
      ["wide", true],
    ]);
  });
  test("a scale that ends below, begins above, or has no step inside is said so", () => {
    expect(fits({ low: 150, high: 160 }, [SMALL])[0]).toMatchObject({ setting: null, why: "above its scale" });
    expect(fits({ low: 1, high: 2 }, [SMALL])[0]).toMatchObject({ setting: null, why: "below its scale" });
    expect(fits({ low: 10.1, high: 10.3 }, [SMALL])[0]).toMatchObject({ setting: null, why: "no step inside" });
  });
  test("whatever is set lies on a step, inside the scale and inside the window", () => {
    const anyWrench = fc.record({
      low: fc.integer({ min: 1, max: 50 }),
      span: fc.integer({ min: 10, max: 200 }),
      step: fc.constantFrom(0.1, 0.2, 0.25, 0.5, 1, 2, 5),
    });
    fc.assert(
      fc.property(anyWrench, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 40 }), ({ low, span, step }, from, width) => {
        const one = wrench("any", low, low + span, step, "N·m");
        const [fit] = fits({ low: from, high: from + width }, [one]);
        if (fit?.setting == null) return;
        expect(fit.setting).toBeGreaterThanOrEqual(Math.max(low, from));
        expect(fit.setting).toBeLessThanOrEqual(Math.min(low + span, from + width));
        expect(Math.abs((fit.setting - low) / step - Math.round((fit.setting - low) / step))).toBeLessThan(1e-9);
        expect(fit.keepsInside).toBe(fit.setting * 0.96 >= from && fit.setting * 1.04 <= from + width);
      }),
    );
  });
});

describe("spanners of the other system", () => {
  const size = (mm: number, name = `${mm} mm`) => ({ name, width: mm });
  // Exact widths, 1 in = 25.4 mm; which may be loaded is common practice.
  test("7/16 in goes on an 11 mm hex with 0.11 mm to spare", () => {
    expect(crossFits(size(11), INCH_SPANNERS)).toEqual([
      { spanner: { name: "7/16 in", width: expect.closeTo(11.1125, 9) }, clearance: expect.closeTo(0.1125, 9), grip: "safe" },
    ]);
  });
  test("13 mm and 1/2 in do not both hold", () => {
    expect(crossFits(size(13), INCH_SPANNERS).map(({ spanner, grip }) => [spanner.name, grip])).toEqual([["1/2 in", "no"]]);
    expect(crossFits(size(12.7, "1/2 in"), METRIC_SPANNERS).map(({ spanner, grip }) => [spanner.name, grip])).toEqual([
      ["13 mm", "loose"],
      ["12 mm", "no"],
    ]);
  });
  // Sources: ISO 272 (M5 to M14) and ASME B18.2.1 hex cap screws (1/4 to 1/2 in): every width across flats is among the spanners.
  test("the widths of the standards are there", () => {
    expect([8, 10, 13, 16, 18, 21].filter((width) => !METRIC_SPANNERS.some((spanner) => spanner.width === width))).toEqual([]);
    const inches = [7 / 16, 1 / 2, 9 / 16, 5 / 8, 3 / 4].map((width) => width * 25.4);
    expect(inches.filter((width) => !INCH_SPANNERS.some((spanner) => Math.abs(spanner.width - width) < 1e-9))).toEqual([]);
  });
  // Clearances computed from 1 in = 25.4 mm exactly.
  test.each([
    [14, "9/16 in", 0.2875],
    [17, "11/16 in", 0.4625],
    [19, "3/4 in", 0.05],
    [22, "7/8 in", 0.225],
    [7.9375, "8 mm", 0.0625],
    [9.525, "10 mm", 0.475],
    [15.875, "16 mm", 0.125],
    [20.6375, "21 mm", 0.3625],
    [23.8125, "24 mm", 0.1875],
  ])("%d mm in %s: %d mm to spare", (head, name, clearance) => {
    const fit = crossFits(size(head), [...METRIC_SPANNERS, ...INCH_SPANNERS]).find(({ spanner }) => spanner.name === name);
    expect(fit?.clearance).toBeCloseTo(clearance, 9);
  });
  test.each([
    [7.9375, "8 mm", "safe"],
    [15.875, "16 mm", "safe"],
    [19, "3/4 in", "safe"],
    [14, "9/16 in", "loose"],
  ])("%s mm takes %s: %s", (head, name, grip) => {
    const all = crossFits(size(head), [...METRIC_SPANNERS, ...INCH_SPANNERS]).filter(({ spanner }) => spanner.name === name);
    expect(all.map((fit) => fit.grip)).toEqual([grip]);
  });
});

describe("several fasteners", () => {
  test("are tightened across from one another", () => {
    expect(crossOrder(4)).toEqual([1, 3, 2, 4]);
    expect(crossOrder(6)).toEqual([1, 4, 2, 5, 3, 6]);
  });
  test("each once, and every step of an even ring at least a third of the way round", () => {
    for (let count = 3; count <= 24; count++) {
      const order = crossOrder(count);
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, n) => n + 1));
      const apart = (a: number, b: number): number => Math.min(Math.abs(a - b), count - Math.abs(a - b));
      for (let n = 1; n < count; n++)
        if (count >= 4) expect(apart(order[n] ?? 0, order[n - 1] ?? 0), `${count}: ${order.join()}`).toBeGreaterThanOrEqual(Math.floor(count / 3));
    }
    expect(crossOrder(2)).toEqual([1, 2]);
    expect(() => crossOrder(1)).toThrow(RangeError);
    expect(() => crossOrder(25)).toThrow(RangeError);
  });
});
