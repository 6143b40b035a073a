// The specs of a bike: its own, and those that others of the same make and model entered in a group where it is shown.

import type { Bike } from "../core/bike.ts";
import type { GroupId } from "../core/ids.ts";
import { symbolOf } from "../core/quantity/units.ts";
import { hasPage, modelKey, type Settled, type Spec, type SpecUse, settledSpec } from "../core/spec/spec.ts";
import type { Repos } from "../store/store.ts";
import { judgedRow } from "../trade/judged.ts";
import { SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";

/** What the faces of /spec go by. */
export { AFTERWARDS, isSpecKey, SPEC_KEY_NAMES } from "../trade/spec-keys.ts";

const TREAD_LIMITS: readonly string[] = Object.values(judgedRow("tread").specs);
/** Is it an owner's own tread limit, which others see nothing of until it names a page of a manual? */
export const isTreadLimit = (key: string): boolean => TREAD_LIMITS.includes(key);

/**
 * All that is known for a bike, the latest first.
 * @param group what is shared in this group only, where one is spoken in: nothing of another group shows there. Null: of all groups where the bike is shown
 */
export async function specsOf(q: Repos, bike: Pick<Bike, "id" | "model">, group: GroupId | null): Promise<readonly Spec[]> {
  const others = bike.model === null ? [] : await q.specs.sharing(bike.id, modelKey(bike.model), group);
  const all = await q.specs.ofBikes([bike.id, ...others]);
  // Without a page of a manual a tread limit is the law or the wish of its owner, and says nothing of another's bike.
  return all.filter((spec) => spec.bike === bike.id || hasPage(spec) || !isTreadLimit(spec.key));
}

/** Which of a bike's specs of one key stands. @param use a load, for keys that are printed by it; null: what was entered with none named */
export const specFor = (specs: readonly Spec[], bike: Pick<Bike, "id">, key: SpecKey, use: SpecUse | null = null): Settled =>
  settledSpec(specs, key, SPEC_KEYS[key].byUse === true ? use : null, bike.id, SPEC_KEYS[key].byPage === true);

/** As it was typed; a bare figure with the unit that it was taken in. */
export const typedWithUnit = ({ typed, holds }: Pick<Spec, "typed" | "holds">): string =>
  holds.is === "figure" && !/\p{L}/u.test(typed) ? `${typed} ${symbolOf(holds.unit)}` : typed;
