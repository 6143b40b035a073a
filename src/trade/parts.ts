// Parts with a life of their own, by position: which work puts a new one there, and what is changed with it. Common practice.

import type { EquipmentRule } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import type { PartRow } from "../core/parts/fitted.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import type { StandardItemKey } from "./standard-items.ts";

type Row = {
  readonly items: readonly StandardItemKey[];
  /** Left out: replaced, or done where replacing is what the item is. */
  readonly outcomes?: readonly Outcome[];
  readonly fits?: EquipmentRule;
  readonly kit?: readonly string[];
  /** May a used one go on again? Not what is used up, nor what common practice never fits twice, such as a timing belt. */
  readonly again?: true;
  /** What else is counted and read of the piece that is on. */
  readonly goesWith?: readonly StandardItemKey[];
};

const REPLACED = ["replaced"] as const;
const RENEWED = ["replaced", "done"] as const;

export const PARTS = {
  "front tyre": { items: ["front-tyre.replace"], goesWith: ["front-tread.measure"], again: true },
  "rear tyre": { items: ["rear-tyre.replace"], goesWith: ["rear-tread.measure"], again: true },
  "front brake pads": { items: ["front-pads.measure"], outcomes: REPLACED, fits: { frontBrake: ["disc"] }, again: true },
  "rear brake pads": { items: ["rear-pads.measure"], outcomes: REPLACED, fits: { rearBrake: ["disc"] }, again: true },
  "front brake shoes": { items: ["front-shoes.measure"], outcomes: REPLACED, fits: { frontBrake: ["drum"] }, again: true },
  "rear brake shoes": { items: ["rear-shoes.measure"], outcomes: REPLACED, fits: { rearBrake: ["drum"] }, again: true },
  "front brake discs": { items: ["front-discs.measure"], outcomes: REPLACED, fits: { frontBrake: ["disc"] }, again: true },
  "rear brake disc": { items: ["rear-discs.measure"], outcomes: REPLACED, fits: { rearBrake: ["disc"] }, again: true },
  // A new chain on worn sprockets wears fast: they are changed as a kit.
  "chain and sprockets": { items: ["chain.replace"], fits: { finalDrive: ["chain"] }, kit: ["chain", "front sprocket", "rear sprocket"], again: true },
  "drive belt": { items: ["drive-belt.replace"], fits: { finalDrive: ["belt"] }, again: true },
  "timing belt": { items: ["timing-belt.replace"], fits: { camDrive: ["timing belt"] } },
  battery: { items: ["battery.test"], outcomes: REPLACED, fits: { battery: ["flooded", "AGM", "gel", "lithium"] }, again: true },
  "spark plugs": { items: ["spark-plugs.replace"], fits: { fuel: ["carburettor", "injection"] }, again: true },
  "air filter": { items: ["air-filter.replace"], fits: { fuel: ["carburettor", "injection"] }, again: true },
  "brake hoses": { items: ["brake-hoses.replace"] },
  "engine oil": { items: ["engine-oil.replace"], fits: { fuel: ["carburettor", "injection"] } },
  "brake fluid": { items: ["brake-fluid.replace"] },
  coolant: { items: ["coolant.replace"], fits: { cooling: ["liquid"] } },
  "fork oil": { items: ["fork-oil.replace"], fits: { fork: ["telescopic", "upside-down"] } },
  "shaft drive oil": { items: ["shaft-oil.replace"], fits: { finalDrive: ["shaft"] } },
} as const satisfies Record<string, Row>;

const keysOf = (keys: readonly StandardItemKey[]): readonly ItemKey[] => keys as readonly string[] as readonly ItemKey[];

export const PART_ROWS: readonly PartRow[] = Object.entries(PARTS as Readonly<Record<string, Row>>).map(
  ([part, { items, outcomes = RENEWED, fits = {}, kit = [], again = false, goesWith = [] }]) => ({
    ...{ part, items: keysOf(items), goesWith: keysOf(goesWith), outcomes, fits, kit, again },
  }),
);
