// How far a chain has lengthened where that is said in per cent, and no length was read: held against the limit of its manual, else against what every published limit says.

import { judgeElongation, ownLimit, pitchOf, shareTyped } from "../core/chain/elongation.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Judgement } from "../core/judgement/verdict.ts";
import type { Repos } from "../store/store.ts";
import { ELONGATION } from "../trade/chain.ts";
import { howWorked } from "../trade/workshop.ts";
import type { Garaged } from "./garage.ts";
import { type Rig, shareOf } from "./judge.ts";
import { rigsOf } from "./rig.ts";
import { specFor } from "./specs.ts";

/** Null where the item does not measure a chain's length, or no share was typed. */
export async function chainShareAt(q: Repos, g: Garaged, item: ItemKey, typed: string): Promise<Judgement | null> {
  const share = howWorked(item)?.measures.includes("chain length") === true ? shareTyped(typed) : null;
  if (share === null) return null;
  // A bike of which nothing was measured is loaded without its specs.
  const rig = (await rigsOf(q, [g.bike])).get(g.bike.id) ?? g.rig;
  return judgeElongation(1 + share, 1, 1, limitOf(rig), ELONGATION).judgement;
}

function limitOf(rig: Rig): number | null {
  const printed = shareOf(rig)?.share ?? null;
  if (printed !== null) return printed;
  const [longest, size] = [specFor(rig.specs, rig.bike, "chain length limit"), specFor(rig.specs, rig.bike, "chain size")];
  const most = longest.is === "one" && longest.spec.holds.is === "figure" ? longest.spec.holds.high : null;
  const pitch = size.is === "one" ? pitchOf(size.spec.typed) : null;
  return most === null || pitch === null ? null : ownLimit(most, Math.round(most / pitch), pitch);
}
