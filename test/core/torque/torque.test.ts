// Torque against published tables and worked examples; each source beside its values.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toCanonical } from "../../../src/core/quantity/units.ts";
import { settingWith } from "../../../src/core/torque/adapter.ts";
import { estimate } from "../../../src/core/torque/estimate.ts";
import { crossFits } from "../../../src/core/torque/hex.ts";
import { crossOrder } from "../../../src/core/torque/stages.ts";
import { readThread, stressArea, type Thread } from "../../../src/core/torque/thread.ts";
import { fits, type Wrench } from "../../../src/core/torque/wrench.ts";
import { FRICTION, GRADES, INCH_SPANNERS, METRIC_SPANNERS, THREADS } from "../../../src/trade/fasteners.ts";

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
  ])("%s", (name, printed) => {
    expect(Number(stressArea(thread(name)).toPrecision(3))).toBeCloseTo(printed, printed < 100 ? 1 : 0);
  });
  // Source: ASME B1.1; FED-STD-H28/2B, square inches to four places.
  test.each([
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
    ["M8", "12.9", 35_500],
    ["M12", "12.9", 81_800],
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
    ["7/16-14", "grade 8", 12_800],
  ] as const)("%s %s", (name, grade, printed) => {
    expect(Math.abs((stressArea(thread(name)) * GRADES[grade].proof) / LBF / printed - 1)).toBeLessThan(0.01);
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
  test("less thread in aluminium carries less, and twice the diameter carries the bolt", () => {
    const into = (engaged: number) => estimate(thread("M8"), GRADES["8.8"], FRICTION.dry, { material: "aluminium", engaged });
    expect(into(16).likely).toBeCloseTo(estimate(thread("M8"), GRADES["8.8"], FRICTION.dry, { material: "steel" }).likely, 9);
    expect([into(8).limitedByHole, into(16).limitedByHole]).toEqual([true, false]);
    expect(into(8).likely).toBeCloseTo(into(16).likely / 2, 9);
  });
  test("every state of the threads is said with its range, and the worst of it is told", () => {
    for (const friction of Object.values(FRICTION)) {
      const e = estimate(thread("M8"), GRADES["8.8"], friction, { material: "steel" });
      expect(e.from).toBeLessThan(e.likely);
      expect(e.likely).toBeLessThan(e.to);
      expect(e.atWorst).toBeCloseTo((0.75 * friction.likely) / friction.from, 9);
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
  ...{ id: name, name, low, high, step, unit, accuracy },
});
const SMALL = wrench("small", 5, 25, 0.5, "N·m");
const BIG = wrench("big", 20, 100, 1, "ft-lb");
const inLb = (low: number, high = low) => ({ low: toCanonical(low, "in-lb"), high: toCanonical(high, "in-lb") });

describe("which wrench, and where to set it", () => {
  test("60 to 80 in-lb on a wrench of half newton metres: 8.0, and its 4 % stay inside", () => {
    const [best] = fits(inLb(60, 80), [BIG, SMALL]);
    expect(best).toMatchObject({ setting: 8, keepsInside: true, lowOnScale: false, wrench: { name: "small" } });
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
    expect(() => crossOrder(2)).toThrow(RangeError);
  });
});
