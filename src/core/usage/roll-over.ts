// Where a dial rolls over: after 9,999.9, 99,999.9 or 999,999.9 it shows zero again.

import { type Dial, type DistanceUnit, dialOf } from "../quantity/distance.ts";

/** Dials have had four digits at least. */
const FEWEST = 10_000;
/** So near to its end a dial may soon roll over, as a share of it. */
const NEAR_END = 0.9;

/** The end of the shortest dial that can have shown a figure: the figure at which it starts again at zero. */
export function endOfDial(shown: Dial, unit: DistanceUnit): Dial {
  let end = FEWEST;
  while (dialOf(end, unit) < shown) end *= 10;
  return dialOf(end, unit);
}

/** May a dial that showed this have rolled over since? */
export const mayRollOver = (shown: Dial, unit: DistanceUnit): boolean => shown >= NEAR_END * endOfDial(shown, unit);
