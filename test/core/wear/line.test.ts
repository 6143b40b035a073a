// The line of wear against certified regressions and a general-purpose library.

import fc from "fast-check";
import { linearRegression } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { lineThrough, type Point, valueAt } from "../../../src/core/wear/line.ts";

const NOTHING = { start: null, slope: null };

/** NIST Statistical Reference Datasets, linear regression, "Norris" (lower level of difficulty): 36 observations. */
// biome-ignore format: a table of figures
const NORRIS: readonly Point[] = [
  [0.2, 0.1], [337.4, 338.8], [118.2, 118.1], [884.6, 888], [10.1, 9.2], [226.5, 228.1], [666.3, 668.5], [996.3, 998.5], [448.6, 449.1], [777, 778.9],
  [558.2, 559.2], [0.4, 0.3], [0.6, 0.1], [775.5, 778.1], [666.9, 668.8], [338, 339.3], [447.5, 448.9], [11.6, 10.8], [556, 557.7], [228.1, 228.3],
  [995.8, 998], [887.6, 888.8], [120.2, 119.6], [0.3, 0.3], [0.3, 0.6], [556.8, 557.6], [339.1, 339.3], [887.2, 888], [999, 998.5], [779, 778.9],
  [11.1, 10.2], [118.3, 117.6], [229.2, 228.9], [669.1, 668.4], [448.9, 449.2], [0.5, 0.2],
].map(([x = 0, y = 0]) => ({ x, y }));

describe("the line through readings", () => {
  test("NIST StRD Norris: certified estimates and their standard deviations, to nine digits", () => {
    // Certified residual standard deviation 0.884796396144373.
    const line = lineThrough(NORRIS, 0.884796396144373, NOTHING);
    if (line === null) throw new Error("no line");
    expect(line.start).toBeCloseTo(-0.262323073774029, 9);
    expect(line.slope).toBeCloseTo(1.00211681802045, 12);
    expect(Math.sqrt(line.startVar)).toBeCloseTo(0.232818234301152, 9);
    expect(Math.sqrt(line.slopeVar)).toBeCloseTo(0.000429796848199937, 12);
    // What it leaves of the readings: certified residual sum of squares.
    const left = NORRIS.reduce((sum, { x, y }) => sum + (y - line.start - line.slope * x) ** 2, 0);
    expect(left).toBeCloseTo(26.6173985294224, 9);
  });

  test("prediction intervals of the textbook formula (computed with SciPy 1.17.1 for the same data): 500.79608593645 ± 1.82429 at 500", () => {
    const noise = 0.8847963961443979;
    const line = lineThrough(NORRIS, noise, NOTHING);
    if (line === null) throw new Error("no line");
    const t = 2.0322445093177186;
    for (const [x, mean, upper] of [
      [500, 500.79608593645315, 502.6203778187228],
      [0, -0.26232307377398456, 1.5970073957281081],
      [1200, 1202.277858550771, 1204.2241874670367],
    ] as const) {
      const at = valueAt(line, x);
      expect(at.mean).toBeCloseTo(mean, 8);
      expect(at.mean + t * Math.sqrt(at.variance + noise * noise)).toBeCloseTo(upper, 6);
    }
  });

  // NIST StRD, linear regression, NoInt1 and NoInt2 (average level of difficulty), lines through zero: a start that is as good as certain. Certified slope, its
  // standard deviation, and the residual mean square.
  test.each([
    ["NoInt1", Array.from({ length: 11 }, (_, n) => [60 + n, 130 + n] as const), 2.07438016528926, 0.0165289256198347, 12.7272727272727],
    ["NoInt2", [[4, 3] as const, [5, 4] as const, [6, 4] as const], 0.727272727272727, 0.0420827318078432, 0.136363636363636],
  ])("NIST StRD %s, to nine digits", (_, data, slope, sd, square) => {
    const points = data.map(([x, y]) => ({ x, y }));
    const line = lineThrough(points, Math.sqrt(square), { start: { mean: 0, sd: 1e-5 }, slope: null });
    if (line === null) throw new Error("no line");
    expect(line.slope).toBeCloseTo(slope, 9);
    expect(Math.sqrt(line.slopeVar)).toBeCloseTo(sd, 9);
    expect(line.start).toBeCloseTo(0, 8);
    const left = points.reduce((sum, { x, y }) => sum + (y - line.slope * x) ** 2, 0);
    expect(left / (points.length - 1)).toBeCloseTo(square, 9);
  });

  // Standard deviations as printed, to the last digit: Moore and McCabe, Introduction to the Practice of Statistics, example 10.3, and a set with a poor fit; both
  // checked against R 1.8.1 in a public statistics library. Prediction intervals: the textbook formula, computed with SciPy 1.17.1 for the same data.
  test.each([
    {
      set: "Moore and McCabe, 10.3",
      points: [
        [15.6, 5.2],
        [26.8, 6.1],
        [37.8, 8.7],
        [36.4, 8.5],
        [35.5, 8.8],
        [18.6, 4.9],
        [15.3, 4.5],
        [7.9, 2.5],
        [0, 1.1],
      ],
      ...{ noise: 0.43453655400678937, t: 2.364624251592784, startSd: 0.286036932, slopeSd: 0.011448491 },
      at: [
        [20, 5.276584439964276, 6.360487749812873],
        [50, 11.342929850730155, 12.67203043234809],
      ],
    },
    {
      set: "a poor fit",
      points: [
        [1, 1],
        [2, 0],
        [3, 5],
        [4, 2],
        [5, -1],
        [6, 12],
      ],
      ...{ noise: 4.487018312123691, t: 2.7764451051977934, startSd: 4.17718672, slopeSd: 1.07260253 },
      at: [[7, 8.066666666666666, 25.087480409053033]],
    },
  ])("$set", ({ points, noise, t, startSd, slopeSd, at }) => {
    const line = lineThrough(
      points.map(([x = 0, y = 0]) => ({ x, y })),
      noise,
      NOTHING,
    );
    if (line === null) throw new Error("no line");
    expect(Math.sqrt(line.startVar)).toBeCloseTo(startSd, 8);
    expect(Math.sqrt(line.slopeVar)).toBeCloseTo(slopeSd, 8);
    for (const [x = 0, mean = 0, upper = 0] of at) {
      const there = valueAt(line, x);
      expect(there.mean).toBeCloseTo(mean, 9);
      expect(there.mean + t * Math.sqrt(there.variance + noise * noise)).toBeCloseTo(upper, 9);
    }
  });

  test("agrees with a general-purpose library on worn tyres", () => {
    const points = [0, 1900, 4100, 6050, 8300].map((x, n) => ({ x, y: [6.9, 6.1, 5.0, 4.2, 3.1][n] ?? 0 }));
    const line = lineThrough(points, 0.2, NOTHING);
    const { m, b } = linearRegression(points.map(({ x, y }) => [x, y]));
    expect(line?.slope).toBeCloseTo(m, 12);
    expect(line?.start).toBeCloseTo(b, 9);
  });
  test("and on whatever was read, at distances in any order", () => {
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const readings = fc.array(fc.tuple(figure(0, 20_000), figure(0, 10)), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(readings, figure(0.05, 1), (read, noise) => {
        const xs = read.map(([x]) => x);
        // The library's own sums lose their digits where all lie at nearly one place.
        fc.pre(Math.max(...xs) - Math.min(...xs) > 1000);
        const line = lineThrough(
          read.map(([x, y]) => ({ x, y })),
          noise,
          NOTHING,
        );
        const { m, b } = linearRegression(read.map(([x, y]) => [x, y]));
        if (line === null) throw new Error("no line");
        expect(Math.abs(line.slope - m)).toBeLessThan(1e-9);
        expect(Math.abs(line.start - b)).toBeLessThan(1e-6);
      }),
      { numRuns: 500 },
    );
  });

  test("readings at one place settle no line, whatever their rounding", () => {
    // A third of three times 0.1 is not 0.1.
    for (const x of [0, 0.1, 1e-7, 12_345.6])
      expect(
        lineThrough(
          [4, 5, 6].map((y) => ({ x, y })),
          0.2,
          NOTHING,
        ),
      ).toBeNull();
    expect(lineThrough([], 0.2, NOTHING)).toBeNull();
  });

  test("one reading settles no line by itself, and one with a belief about the slope does", () => {
    expect(lineThrough([{ x: 100, y: 5 }], 0.2, NOTHING)).toBeNull();
    expect(
      lineThrough(
        [
          { x: 100, y: 5 },
          { x: 100, y: 5.2 },
        ],
        0.2,
        NOTHING,
      ),
    ).toBeNull();
    const line = lineThrough([{ x: 100, y: 5 }], 0.2, { start: null, slope: { mean: -0.001, sd: 0.0005 } });
    expect(line?.slope).toBeCloseTo(-0.001, 12);
    expect(line?.start).toBeCloseTo(5.1, 9);
  });
});

test("the variance of the start is the textbook's: noise squared times (1/n + mean of x squared / sum of squares)", () => {
  const line = lineThrough(
    [10, 11, 12].map((x) => ({ x, y: x })),
    1,
    { start: null, slope: null },
  );
  expect(line?.startVar).toBeCloseTo(1 / 3 + 121 / 2, 9);
  expect(line?.covariance).toBeCloseTo(-11 / 2, 9);
});

describe("what is believed beforehand", () => {
  type State = { readonly start: number; readonly slope: number; readonly ss: number; readonly st: number; readonly tt: number };
  /** One more reading by the textbook's update (Kalman, 1960; Gelman et al., Bayesian Data Analysis, ch. 14.8, gives the same posterior). */
  const updated = ({ start, slope, ss, st, tt }: State, { x, y }: Point, noise: number): State => {
    const [a, b] = [ss + st * x, st + tt * x];
    const spread = a + b * x + noise * noise;
    const off = y - start - slope * x;
    return {
      start: start + (a * off) / spread,
      slope: slope + (b * off) / spread,
      ss: ss - (a * a) / spread,
      st: st - (a * b) / spread,
      tt: tt - (b * b) / spread,
    };
  };

  test("one reading of 4.5 mm at 2,000 km against a new tyre of 7 ± 1 mm that wears by 1 ± 0.5 mm in 1,000 km, worked by hand", () => {
    // Spread 1 + 1 + 0.25 = 2.25 mm², off by -0.5 mm: 7 - 0.5 / 2.25, -0.001 - 0.5 * 0.0005 / 2.25.
    const line = lineThrough([{ x: 2000, y: 4.5 }], 0.5, { start: { mean: 7, sd: 1 }, slope: { mean: -0.001, sd: 0.0005 } });
    expect(line?.start).toBeCloseTo(7 - 0.5 / 2.25, 9);
    expect(line?.slope).toBeCloseTo(-0.001 - 0.00025 / 2.25, 12);
    expect(line?.startVar).toBeCloseTo(1 - 1 / 2.25, 9);
    expect((line?.slopeVar ?? 0) * 1e7).toBeCloseTo(2.5 - 2.5 / 2.25, 6);
    expect((line?.covariance ?? 0) * 1e4).toBeCloseTo(-5 / 2.25, 6);
  });

  test("whatever was read, readings and beliefs together are what updating by one reading after another comes to", () => {
    const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.record({ x: figure(0, 20_000), y: figure(0, 10) }), { minLength: 1, maxLength: 8 }),
        figure(0.05, 1),
        fc.record({ mean: figure(3, 9), sd: figure(0.2, 3) }),
        fc.record({ mean: figure(-0.002, 0), sd: figure(0.0001, 0.002) }),
        (points, noise, start, slope) => {
          const line = lineThrough(points, noise, { start, slope });
          const known: State = { start: start.mean, slope: slope.mean, ss: start.sd ** 2, st: 0, tt: slope.sd ** 2 };
          const by = points.reduce((state, point) => updated(state, point, noise), known);
          if (line === null) throw new Error("no line");
          const near = (a: number, b: number, scale: number) => expect(Math.abs(a - b) / scale).toBeLessThan(1e-6);
          near(line.start, by.start, start.sd);
          near(line.slope, by.slope, slope.sd);
          near(line.startVar, by.ss, start.sd ** 2);
          near(line.slopeVar, by.tt, slope.sd ** 2);
          near(line.covariance, by.st, start.sd * slope.sd);
          const at = valueAt(line, 5000);
          near(at.mean, by.start + 5000 * by.slope, start.sd + 5000 * slope.sd);
          near(at.variance, by.ss + 2 * 5000 * by.st + 5000 ** 2 * by.tt, start.sd ** 2 + (5000 * slope.sd) ** 2);
        },
      ),
      { numRuns: 300 },
    );
  });
});
