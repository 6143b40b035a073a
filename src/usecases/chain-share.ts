// How far a chain has lengthened where that is said in per cent, and no length was read: held against the limit of its manual, else against what every published limit says.

import { shareTyped } from "../core/chain/elongation.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Judgement } from "../core/judgement/verdict.ts";
import type { Repos } from "../store/store.ts";
import { howWorked } from "../trade/workshop.ts";
import type { Garaged } from "./garage.ts";
import { judgeShare } from "./judge-chain.ts";
import { rigsOf } from "./rig.ts";

/** Null where the item does not measure a chain's length, or no share was typed. */
export async function chainShareAt(q: Repos, g: Garaged, item: ItemKey, typed: string): Promise<Judgement | null> {
  const share = howWorked(item)?.measures.includes("chain length") === true ? shareTyped(typed) : null;
  if (share === null) return null;
  // A bike of which nothing was measured is loaded without its specs.
  const rig = (await rigsOf(q, [g.bike])).get(g.bike.id) ?? g.rig;
  return judgeShare(share, rig);
}
