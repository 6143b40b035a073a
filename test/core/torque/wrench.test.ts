// Which wrench and which spanner serve, against the scales makers mark and the sizes of the standards; each source beside its values.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toCanonical } from "../../../src/core/quantity/units.ts";
import { crossFits } from "../../../src/core/torque/hex.ts";
import { fits, stepAt, usualAccuracy, type Wrench } from "../../../src/core/torque/wrench.ts";
import { INCH_SPANNERS, METRIC_SPANNERS } from "../../../src/trade/fasteners.ts";

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
  test("from exactly a fifth of its scale a wrench is not low on it, and just below it is", () => {
    const at = (torque: number, high: number) => fits({ low: torque, high: torque }, [wrench("any", 1, high, 0.5, "N·m")])[0]?.lowOnScale;
    expect([at(10, 50), at(9.5, 50), at(11, 55), at(10.5, 55), at(8, 50)]).toEqual([false, true, false, true, true]);
  });
  test("of two that do it alike the finer step is taken, whatever their units", () => {
    // Five inch-pounds are 0.56 N·m.
    const [newtons, inches] = [wrench("X", 2, 22, 1, "N·m"), wrench("Y", 10, 200, 5, "in-lb")];
    for (const both of [
      [newtons, inches],
      [inches, newtons],
    ])
      expect(fits({ low: 8, high: 12 }, both).map((fit) => fit.wrench.name)).toEqual(["Y", "X"]);
    const fine = wrench("Z", 2, 22, 0.5, "N·m");
    expect(fits({ low: 8, high: 12 }, [newtons, fine, inches]).map((fit) => fit.wrench.name)).toEqual(["Z", "Y", "X"]);
  });
  test("a step that misses a single figure by a fiftieth serves, by more it does not", () => {
    const at = (torque: number) => fits({ low: torque, high: torque }, [wrench("coarse", 0, 100, 10, "N·m")])[0]?.why;
    expect([at(39.3), at(40.8), at(39.1), at(41)]).toEqual(["fits", "fits", "no step inside", "no step inside"]);
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
    expect(crossFits(size(13), INCH_SPANNERS).map(({ spanner, grip }) => [spanner.name, grip])).toEqual([
      ["1/2 in", "no"],
      ["17/32 in", "loose"],
    ]);
    expect(crossFits(size(12.7, "1/2 in"), METRIC_SPANNERS).map(({ spanner, grip }) => [spanner.name, grip])).toEqual([
      ["13 mm", "loose"],
      ["12 mm", "no"],
    ]);
  });
  // Sources: ISO 272 widths for M3 to M30 (5.5, 7, 8, 10, 13, 16, 18, 21, 24, 27, 30, 34, 36, 41, 46); before 1982 M10, M12, M14 and M22 had 17, 19, 22 and 32 mm.
  test("the metric widths of the standard, new and old, are there, each once and in order", () => {
    const widths = METRIC_SPANNERS.map((spanner) => spanner.width);
    expect([5.5, 7, 8, 10, 13, 16, 18, 21, 24, 27, 30, 34, 36, 41, 46, 17, 19, 22, 32].filter((width) => !widths.includes(width))).toEqual([]);
    expect(widths).toEqual([...new Set(widths)].sort((a, b) => a - b));
    // Whole millimetres without a gap, as spanner sets have them up to 30.
    expect(widths.slice(1, 26)).toEqual(Array.from({ length: 25 }, (_, n) => n + 6));
  });
  // Source: ASME B18.2.1, hex cap screws: one and a half times the diameter from 3/8 to 1 in, but for 7/16 (5/8) and 9/16 (13/16); 1/4 and 5/16 have 7/16 and 1/2.
  test("the inch widths of the standard are there, each once and in order", () => {
    const widths = INCH_SPANNERS.map((spanner) => spanner.width / 25.4);
    const ruled = [3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1].map((diameter) => diameter * 1.5);
    expect([...ruled, 7 / 16, 1 / 2, 5 / 8, 13 / 16].filter((width) => !widths.some((each) => Math.abs(each - width) < 1e-9))).toEqual([]);
    expect(widths).toEqual([...new Set(widths)].sort((a, b) => a - b));
    // Every inch size is a whole number of 32nds, and in sixteenths there is no gap from 5/16 to 1 1/2.
    expect(widths.filter((width) => Math.abs(width * 32 - Math.round(width * 32)) > 1e-9)).toEqual([]);
    expect(Array.from({ length: 20 }, (_, n) => (n + 5) / 16).filter((width) => !widths.some((each) => Math.abs(each - width) < 1e-9))).toEqual([]);
  });
  test("each is named as wide as it is", () => {
    for (const { name, width } of INCH_SPANNERS) {
      const [, whole = "0", above = "0", below = "1"] = /^(?:(\d+)(?: |(?= in)))?(?:(\d+)\/(\d+) )?in$/u.exec(name.replace(/^(\d+) in$/u, "$1 in")) ?? [];
      expect(width, name).toBeCloseTo((Number(whole) + Number(above) / Number(below)) * 25.4, 9);
    }
    for (const { name, width } of METRIC_SPANNERS) expect(name).toBe(`${width} mm`);
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
    [36, "1 7/16 in", "loose"],
    [30, "1 3/16 in", "safe"],
    [29, "1 1/8 in", "no"],
    [28.575, "29 mm", "loose"],
    // By hundredths nominal widths cannot say.
    [27, "1 1/16 in", "tight"],
    [12.9, "12.8 mm", "tight"],
    [12.9, "12.79 mm", "no"],
    // 0.15 mm of 11 is 1.36 %, 0.12 is 1.09 %.
    [11, "11.15 mm", "loose"],
    [11, "11.12 mm", "safe"],
    // 5.9 % more is a neighbour, 6.1 % is another size.
    [100, "105.9 mm", "loose"],
    [100, "94.1 mm", "no"],
  ])("%s mm takes %s: %s", (head, name, grip) => {
    const shelf = [...METRIC_SPANNERS, ...INCH_SPANNERS];
    const spanner = shelf.find((each) => each.name === name) ?? size(Number.parseFloat(name));
    expect(crossFits(size(head), [spanner]).map((fit) => fit.grip)).toEqual([grip]);
  });
  test("more than six hundredths off is another size, and is not named", () => {
    expect(crossFits(size(100), [size(106.1), size(93.9), size(107), size(93)])).toEqual([]);
  });
});
