// Seeded chance, the same on every machine.

export type Chance = {
  /** Uniform in [0, 1). */
  readonly u: () => number;
  readonly normal: () => number;
  /** Log-normal by its median. */
  readonly around: (median: number, sigma: number) => number;
  readonly between: (from: number, to: number) => number;
  readonly poisson: (mean: number) => number;
};

/** Source of the generator: mulberry32, a public-domain 32-bit generator; of the normal deviate: Box and Muller (1958). */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const u = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  let [lastMean, limit] = [0, 1];
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - u())) * Math.cos(2 * Math.PI * u());
  return {
    u,
    normal,
    around: (median, sigma) => median * Math.exp(sigma * normal()),
    between: (from, to) => from + (to - from) * u(),
    poisson(mean) {
      if (mean !== lastMean) [lastMean, limit] = [mean, Math.exp(-mean)];
      let [n, product] = [0, u()];
      while (product > limit) {
        n++;
        product *= u();
      }
      return n;
    },
  };
}
