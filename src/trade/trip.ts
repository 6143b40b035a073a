// Before and on a trip: how much faster things wear under load, what goes along, what is looked at each day.

import type { EquipmentRule } from "../core/equipment.ts";
import type { SpecUse } from "../core/spec/spec.ts";

/** How many times faster tyres and pads wear. Common practice, from memory: a passenger or full luggage takes about a fifth of their life. */
export const FASTER: Readonly<Record<SpecUse, { readonly times: number; readonly source: string }>> = {
  solo: { times: 1, source: "by definition" },
  "two-up": { times: 1.2, source: "common practice, from memory" },
  loaded: { times: 1.2, source: "common practice, from memory" },
};

type Row = { readonly fits: EquipmentRule };
const COMBUSTION = { fuel: ["carburettor", "injection"] } as const;

/** What goes along; common practice. */
export const TRIP_KIT = {
  "tool roll": { fits: {} },
  gauge: { fits: {} },
  "plug kit": { fits: { tyres: ["tubeless"] } },
  "tube kit": { fits: { tyres: ["tubed"] } },
  spokes: { fits: { wheels: ["wire-spoked"] } },
  "chain link": { fits: { finalDrive: ["chain"] } },
  "chain oil": { fits: { finalDrive: ["chain"] } },
  "engine oil": { fits: COMBUSTION },
  fuses: { fits: {} },
  bulbs: { fits: {} },
  "clutch cable": { fits: { clutch: ["cable"] } },
  papers: { fits: {} },
  "first aid": { fits: {} },
} as const satisfies Record<string, Row>;

/** Each morning, and what it takes is a minute; common practice. */
export const DAILY_CARD = {
  tyres: { fits: {} },
  oil: { fits: COMBUSTION },
  "chain drive": { fits: { finalDrive: ["chain"] } },
  "belt drive": { fits: { finalDrive: ["belt"] } },
  brakes: { fits: {} },
  lights: { fits: {} },
  leaks: { fits: {} },
  luggage: { fits: {} },
} as const satisfies Record<string, Row>;

export type KitKey = keyof typeof TRIP_KIT;
export type DailyKey = keyof typeof DAILY_CARD;
