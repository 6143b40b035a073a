// Tightening several fasteners evenly: in stages, and across from one another.

/** How many fasteners an order is given for: two take turns, more than these are worked by the manual's own plan. */
export const FEWEST = 2;
export const MOST = 24;

/** Shares of the final torque. Common practice. */
export const STAGES = [0.5, 0.75, 1] as const;

/** The order in which fasteners numbered round a circle are tightened: each as far as can be from those before. @throws RangeError below 2 or above 24 */
export function crossOrder(count: number): readonly number[] {
  if (!Number.isInteger(count) || count < FEWEST || count > MOST) throw new RangeError(`a pattern of ${count}`);
  const order = [0];
  const apart = (a: number, b: number): number => Math.min(Math.abs(a - b), count - Math.abs(a - b));
  while (order.length < count) {
    const last = order.at(-1) ?? 0;
    const left = Array.from({ length: count }, (_, n) => n).filter((n) => !order.includes(n));
    // Across from the last one; of two alike, the one farther from all that went before.
    left.sort((a, b) => apart(b, last) - apart(a, last) || nearest(b) - nearest(a) || a - b);
    order.push(left[0] ?? 0);
  }
  return order.map((n) => n + 1);

  function nearest(n: number): number {
    return Math.min(...order.map((other) => apart(n, other)));
  }
}
