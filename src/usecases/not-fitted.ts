// Work named that a bike cannot have, since it is fitted otherwise: spokes on cast wheels, a coolant where air cools.

import { type EquipmentPart, type EquipmentRule, isFitted } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Refusal } from "../core/refusal.ts";
import { foldWord } from "../message/scan.ts";
import type { ItemRow } from "../trade/items/row.ts";
import { STANDARD_ITEMS, type StandardItemKey } from "../trade/standard-items.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";

/** What words name, why the bike has none, and what it would have to be fitted with. */
export type NotFitted = Extract<Refusal, { why: "item not fitted" }>;

const FITS: readonly (readonly [StandardItemKey, EquipmentRule])[] = (Object.keys(STANDARD_ITEMS) as StandardItemKey[]).map((key) => {
  const row: ItemRow = STANDARD_ITEMS[key];
  return [key, row.fits ?? {}];
});

/** The standard item that words name by its longest name, where this bike is fitted otherwise; null where they name none, or one that it can have. */
export function itemNotFitted(ctx: Pick<Ctx, "vocabulary" | "also">, { bike }: Garaged, typed: string): NotFitted | null {
  const said = ` ${foldWord(typed)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;
  const named = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].flatMap(({ items }) =>
    FITS.flatMap(([key, fits]) => (items[key] ?? []).filter((name) => said.includes(` ${name} `)).map((name) => ({ key, fits, length: name.length }))),
  );
  const longest = Math.max(0, ...named.map(({ length }) => length));
  const meant = named.filter(({ length }) => length === longest);
  const [first] = meant;
  if (first === undefined || meant.some(({ fits }) => isFitted(fits, bike.equipment))) return null;
  const part = (Object.keys(first.fits) as EquipmentPart[]).find((each) => !isFitted({ [each]: first.fits[each] }, bike.equipment));
  if (part === undefined) return null;
  return {
    why: "item not fitted",
    item: first.key as string as ItemKey,
    nickname: bike.nickname,
    part,
    is: bike.equipment[part],
    wants: first.fits[part] ?? [],
  };
}
