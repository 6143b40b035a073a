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
  // Counted from the mean of x: with distances of some ten thousand the sums would else lose half their digits.
  const weight = 1 / (noise * noise);
  const centre = points.length === 0 ? 0 : points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const level = points.length === 0 ? 0 : points.reduce((sum, { y }) => sum + y, 0) / points.length;
  // Precisions of (value at the centre, slope).
  let aa = points.length * weight;
  let ab = 0;
  let bb = 0;
  let ay = 0;
  let by = 0;
  for (const { x, y } of points) {
    const dx = x - centre;
    bb += dx * dx * weight;
    by += dx * (y - level) * weight;
  }
  if (prior.start !== null) {
    // Believed at x = 0, that is at -centre from the middle.
    const w = 1 / (prior.start.sd * prior.start.sd);
    const y = prior.start.mean - level;
    aa += w;
    ab += -centre * w;
    bb += centre * centre * w;
    ay += y * w;
    by += -centre * y * w;
  }
  if (prior.slope !== null) {
    const w = 1 / (prior.slope.sd * prior.slope.sd);
    bb += w;
    by += prior.slope.mean * w;
  }
  const det = aa * bb - ab * ab;
  if (!(det > aa * bb * 1e-12)) return null;
  const middle = level + (bb * ay - ab * by) / det;
  const slope = (aa * by - ab * ay) / det;
  const middleVar = bb / det;
  const slopeVar = aa / det;
  const between = -ab / det;
  return {
    start: middle - slope * centre,
    slope,
    startVar: middleVar - 2 * centre * between + centre * centre * slopeVar,
    slopeVar,
    covariance: between - centre * slopeVar,
  };
}

/** The line's value at `x` and its variance, without the scatter of a reading. */
export function valueAt(line: Line, x: number): { readonly mean: number; readonly variance: number } {
  return { mean: line.start + line.slope * x, variance: line.startVar + 2 * x * line.covariance + x * x * line.slopeVar };
}
