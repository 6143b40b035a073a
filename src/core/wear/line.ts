// A straight line through readings that scatter: what tread, lining or a chain has worn against the distance it was ridden.
// Least squares with what is known beforehand taken in as further, weaker readings (Bayesian linear regression with known scatter and a normal prior,
// Gelman et al., Bayesian Data Analysis, 3rd ed., ch. 14.8). Without a prior it is plain least squares.

/** One reading: `x` the distance, `y` the value. */
export type Point = { readonly x: number; readonly y: number };

/** A belief about a figure before any reading: a mean and a standard deviation. */
export type Belief = { readonly mean: number; readonly sd: number };

/** The line y = start + slope · x, with the variances of both and their covariance. */
export type Line = {
  readonly start: number;
  readonly slope: number;
  readonly startVar: number;
  readonly slopeVar: number;
  readonly covariance: number;
};

/**
 * The line through the points.
 * @param noise standard deviation of one reading
 * @param prior what is believed of the value at x = 0 and of the slope; null for nothing
 * @returns null when points and beliefs do not settle a line: one point, or all at one x, without a prior
 */
export function lineThrough(points: readonly Point[], noise: number, prior: { readonly start: Belief | null; readonly slope: Belief | null }): Line | null {
  // What is believed of the start is one more reading, at x = 0. All are counted from their weighted mean, where value and slope do not depend on one another: sums
  // over distances of some ten thousand, or with a start that is as good as certain, would else lose half their digits.
  const weight = 1 / (noise * noise);
  const all = points.map(({ x, y }) => ({ x, y, w: weight }));
  if (prior.start !== null) all.push({ x: 0, y: prior.start.mean, w: 1 / (prior.start.sd * prior.start.sd) });
  const sum = (of: (each: (typeof all)[number]) => number): number => all.reduce((total, each) => total + of(each), 0);
  const precision = sum(({ w }) => w);
  const centre = sum(({ x, w }) => x * w) / precision;
  const level = sum(({ y, w }) => y * w) / precision;
  const believed = prior.slope === null ? 0 : 1 / (prior.slope.sd * prior.slope.sd);
  const across = sum(({ x, w }) => (x - centre) ** 2 * w) + believed;
  // What is left by rounding of readings at one x is no spread.
  if (!(across > precision * centre * centre * 1e-24)) return null;
  const slope = (sum(({ x, y, w }) => (x - centre) * (y - level) * w) + believed * (prior.slope?.mean ?? 0)) / across;
  return {
    start: level - slope * centre,
    slope,
    startVar: 1 / precision + (centre * centre) / across,
    slopeVar: 1 / across,
    covariance: -centre / across,
  };
}

/** The line's value at `x` and its variance, without the scatter of a reading. */
export function valueAt(line: Line, x: number): { readonly mean: number; readonly variance: number } {
  return { mean: line.start + line.slope * x, variance: line.startVar + 2 * x * line.covariance + x * x * line.slopeVar };
}
