// Tightening several fasteners evenly: in stages, and across from one another.

/** How many fasteners an order is given for: two take turns, more than these are worked by the manual's own plan. */
export const FEWEST = 2;
export const MOST = 24;

/** Shares of the final torque. Common practice. */
export const STAGES = [0.5, 0.75, 1] as const;

/**
 * The order in which fasteners numbered round a circle are tightened. Even counts: the opposite ones in pairs, each pair as far as can be from the pairs before,
 * which is midway between them where there is a midway. Odd counts: a star, each the nearest to straight across from the last. Common practice.
 * @throws RangeError below 2 or above 24
 */
export function crossOrder(count: number): readonly number[] {
  if (!Number.isInteger(count) || count < FEWEST || count > MOST) throw new RangeError(`a pattern of ${count}`);
  // Half of an odd ring, rounded down, shares no divisor with it: such steps come by every fastener once.
  if (count % 2 === 1) return Array.from({ length: count }, (_, n) => ((n * (count - 1)) / 2) % count).map((n) => n + 1);
  const half = count / 2;
  return pairsApart(half).flatMap((n) => [n + 1, n + 1 + half]);
}

/** Pairs by their first fastener, 0 to `pairs` - 1; the pairs too lie round a ring, since the last is beside the first turned round. */
function pairsApart(pairs: number): readonly number[] {
  const order = [0];
  const apart = (a: number, b: number): number => Math.min(Math.abs(a - b), pairs - Math.abs(a - b));
  const nearest = (n: number): number => Math.min(...order.map((other) => apart(n, other)));
  const all = (n: number): number => order.reduce((sum, other) => sum + apart(n, other), 0);
  while (order.length < pairs) {
    const left = Array.from({ length: pairs }, (_, n) => n).filter((n) => !order.includes(n));
    // Of those equally far from the nearest, the one farther from all; else the first round the circle.
    left.sort((a, b) => nearest(b) - nearest(a) || all(b) - all(a) || a - b);
    order.push(left[0] ?? 0);
  }
  return order;
}
