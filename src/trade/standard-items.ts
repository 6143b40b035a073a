// The catalogue of standard plan items: every job that a starter plan can ask for, once.

import type { ItemKey } from "../core/ids.ts";
import type { PlanItem, Repeat } from "../core/plan/plan.ts";
import { CHASSIS_ITEMS } from "./items/chassis.ts";
import { DRIVE_ITEMS } from "./items/drive.ts";
import { ELECTRIC_ITEMS } from "./items/electrics.ts";
import { ENGINE_ITEMS } from "./items/engine.ts";
import { FRAME_ITEMS } from "./items/frame.ts";
import type { ItemRow } from "./items/row.ts";
import { TRANSMISSION_ITEMS } from "./items/transmission.ts";

export const STANDARD_ITEMS = {
  ...ENGINE_ITEMS,
  ...ELECTRIC_ITEMS,
  ...DRIVE_ITEMS,
  ...TRANSMISSION_ITEMS,
  ...CHASSIS_ITEMS,
  ...FRAME_ITEMS,
} as const satisfies Record<string, ItemRow>;
export type StandardItemKey = keyof typeof STANDARD_ITEMS;

/** A plan line from the catalogue, in another interval where the plan says so. */
export function planItem(key: StandardItemKey, repeat: Repeat | null): PlanItem {
  const row: ItemRow = STANDARD_ITEMS[key];
  return {
    key: key as string as ItemKey,
    called: null,
    system: row.system,
    action: row.action,
    anchor: row.anchor,
    first: row.first ?? null,
    repeat: repeat ?? row.repeat,
    parked: row.parked,
    noLateWindow: row.noLateWindow ?? false,
    shortened: row.shortened ?? {},
    measuredBy: row.measuredBy ?? null,
    covers: (row.covers ?? []) as readonly ItemKey[],
    fits: row.fits ?? {},
    engine: row.engine ?? "any",
    position: row.position ?? "any",
    minutes: row.minutes,
    caution: row.caution ?? null,
    firstOnUsedBike: row.firstOnUsedBike ?? null,
    source: row.source,
  };
}
