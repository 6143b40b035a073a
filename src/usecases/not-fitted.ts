// Work named that a bike cannot have, since it is fitted otherwise: spokes on cast wheels, a coolant where air cools.

import { type EquipmentPart, type EquipmentRule, isFitted } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import type { Refusal } from "../core/refusal.ts";
import { under } from "../message/among.ts";
import { fluidsNamed } from "../message/fluids-named.ts";
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

/** What of the words names a circuit that was bled or filled, without the fluid: "bled the clutch", "brake fluid in the clutch"; null where they say no such thing. */
function circuitSaid(said: string, { workDone, details }: Vocabulary): string | null {
  const fluids = fluidsNamed(said, [details]);
  if (fluids.length === 0 && !said.split(" ").some((word) => under(workDone, word)?.includes("bleed") === true)) return null;
  const rest = fluids.reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end), said);
  return Object.values(details.fluids.circuits).some((names) => names.some((name) => rest.includes(` ${name} `))) ? rest : null;
}

const isChanged = (said: string, languages: readonly Vocabulary[]): boolean =>
  languages.some(({ workDone }) => said.split(" ").some((word) => under(workDone, word)?.includes("replace") === true));

/** The standard item that words name by its longest name, where this bike is fitted otherwise; null where they name none, or one that it can have. */
export function itemNotFitted(ctx: Pick<Ctx, "vocabulary" | "also">, { bike }: Garaged, typed: string): NotFitted | null {
  const said = ` ${foldWord(typed)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;
  const languages = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)];
  const named = languages.flatMap((each) => {
    const circuit = circuitSaid(said, each);
    return FITS.flatMap(([key, fits]) => {
      // What is bled is the clutch's fluid, and not its cable.
      const names = circuit === null ? (each.items[key] ?? []) : (each.details.fluids.circuits[key] ?? []);
      return names.filter((name) => (circuit ?? said).includes(` ${name} `)).map((name) => ({ key, fits, length: name.length }));
    });
  });
  const longest = Math.max(0, ...named.map(({ length }) => length));
  const meant = named.filter(({ length }) => length === longest);
  const [first] = meant;
  if (first === undefined || meant.some(({ fits }) => isFitted(fits, bike.equipment))) return null;
  const part = (Object.keys(first.fits) as EquipmentPart[]).find((each) => !isFitted({ [each]: first.fits[each] }, bike.equipment));
  if (part === undefined) return null;
  // What was changed is the fluid, and not its level.
  const item = first.key === "brake-fluid.inspect" && isChanged(said, languages) ? "brake-fluid.replace" : first.key;
  // The class that was named is what it would be fitted with.
  const classes = fluidsNamed(
    typed,
    languages.map(({ details }) => details),
  ).map(({ name }) => name);
  const all: readonly string[] = first.fits[part] ?? [];
  const wants = [...all.filter((each) => classes.includes(each)), ...all.filter((each) => !classes.includes(each))];
  return { why: "item not fitted", item: item as string as ItemKey, nickname: bike.nickname, part, is: bike.equipment[part], wants };
}
