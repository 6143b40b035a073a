// Probabilities that the forecast needs.

/** Share of a standard normal distribution below `z`, to 1e-5. Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.16. */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.33267 * Math.abs(z));
  const beyond = 0.3989423 * Math.exp((-z * z) / 2) * t * (0.4361836 + t * (-0.1201676 + t * 0.937298));
  return z > 0 ? 1 - beyond : beyond;
}

/** Share of a gamma distribution below `x`, by its mean and variance. Source: the cube root is nearly normal, Wilson and Hilferty (1931), PNAS 17. */
export function gammaBelow(x: number, mean: number, variance: number): number {
  if (x < 0) return 0;
  if (mean <= 0) return 1;
  const ninth = variance / (9 * mean * mean);
  return normalBelow((Math.cbrt(x / mean) - 1 + ninth) / Math.sqrt(ninth));
}
