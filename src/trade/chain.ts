// Chains: how far they may lengthen.

import type { ElongationRule } from "../core/chain/elongation.ts";

/** Published limits run from 1 to 3 %: bike makers print a length of their own, chain makers 3 % (up to 66 teeth on the larger sprocket) or 1.5 % where nothing takes up the slack. */
export const ELONGATION: ElongationRule = {
  least: 0.01,
  most: 0.03,
  fine: 0.001,
  source: "published limits run from 1 to 3 %; chain makers' engineering pages",
};

/** Limits that a manual can print in per cent, as shares: the published ones, widened. Beyond them a slip is asked about. */
export const CHAIN_SHARES = [0.005, 0.04] as const;
