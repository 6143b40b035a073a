// What a bike's own specs say, as limits.

import { shareRange, shareTyped } from "../core/chain/elongation.ts";
import type { Limit } from "../core/judgement/verdict.ts";
import type { Spec, SpecUse } from "../core/spec/spec.ts";
import type { JudgedRow } from "../trade/judged.ts";
import { onItsSide, type SpecKey } from "../trade/spec-keys.ts";
import type { Rig } from "./judged.ts";
import { specFor } from "./specs.ts";

/** `lesser`: the load that it is for, where that is less than the bike is ridden with. */
export type Figure = { readonly low: number | null; readonly high: number | null; readonly source: string; readonly typed: string; readonly lesser?: SpecUse };

/** The manual that a spec is from, with its page; empty where none was named. */
export const sourceWords = ({ source }: Spec): string => (source === null ? "" : `${source.manual}${source.page === null ? "" : `, p. ${source.page}`}`);

/** The ends of a spec as a limit. A single figure that is neither a least nor a most is a window around itself: a twentieth either way, and no less than the least that its kind allows. */
export function limitOf({ low, high, source }: Figure, row: JudgedRow): Limit {
  const only = low !== null && low === high;
  // None at all is never within: at the most half the figure is taken.
  const around = low === null ? 0 : Math.max(Math.abs(low) / 20, low === 0 ? row.around : Math.min(row.around, Math.abs(low) / 2));
  return only
    ? { min: low - around, max: low + around, near: null, nominal: low, source }
    : { min: low, max: high, near: Math.min(row.near, low === null || high === null ? row.near : (high - low) / 5), source };
}

/** The loads whose figure is held against one, its own first: two up it is no lighter than solo, and loaded no lighter than two up. */
const LIGHTER: Readonly<Record<SpecUse, readonly SpecUse[]>> = { solo: ["solo"], "two-up": ["two-up", "solo"], loaded: ["loaded", "two-up", "solo"] };

/** What the bike's specs say of a key; null where nothing does, or members differ and nothing settles it. */
export function figureOf(rig: Rig, key: SpecKey, use: SpecUse | null): Figure | null {
  const uses = LIGHTER[use ?? "solo"];
  const asked = uses.map((each) => specFor(rig.specs, rig.bike, key, each));
  const found = asked.findIndex(({ is }) => is !== "none");
  const settled = asked[found] ?? ({ is: "none" } as const);
  const lesser = found > 0 ? uses[found] : undefined;
  if (settled.is !== "one" || settled.spec.holds.is !== "figure") return null;
  // Entered before such was refused: what is said of the other side is no limit of this.
  const { low, high } = onItsSide(key, settled.spec.holds);
  if (low === null && high === null) return null;
  return {
    low,
    high,
    source: sourceWords(settled.spec),
    typed: settled.spec.typed,
    ...(lesser === undefined ? {} : { lesser }),
  };
}

/** What its manual prints in per cent: a chain's limit, the antifreeze in its coolant; null where nothing is entered so. */
export function shareOf(
  rig: Rig,
  key: "chain length limit" | "coolant strength" = "chain length limit",
): { readonly share: number; readonly most: number | null; readonly source: string } | null {
  const settled = specFor(rig.specs, rig.bike, key);
  const typed = settled.is === "one" && settled.spec.holds.is === "words" ? settled.spec.typed : null;
  const [least, most] = typed === null ? [] : (shareRange(typed) ?? [shareTyped(typed), null]);
  return settled.is !== "one" || typeof least !== "number" ? null : { share: least, most: most ?? null, source: sourceWords(settled.spec) };
}
