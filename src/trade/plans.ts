// The four starter plans: which standard items each has, and where its intervals differ from the catalogue's.
// Common practice for bikes of that kind; the maker's manual has the last word. Equipment still decides which lines a bike gets.

import type { Repeat } from "../core/plan/plan.ts";
import { everyNthMark, repeating } from "./items/row.ts";
import type { StandardItemKey } from "./standard-items.ts";

export type StarterRow = {
  readonly name: string;
  readonly items: readonly StandardItemKey[];
  readonly intervals: { readonly [K in StandardItemKey]?: Repeat };
};

/** Lines that every road bike shares; those it is not fitted for fall away by themselves. */
const COMMON = [
  "engine-oil.replace",
  "engine-oil.inspect",
  "valve-clearance.adjust",
  "air-filter.replace",
  "fuel-hoses.inspect",
  "spark-plugs.replace",
  "coolant.replace",
  "coolant.inspect",
  "coolant-hoses.inspect",
  "battery.test",
  "battery-acid.top-up",
  "lights.test",
  "clutch-free-play.adjust",
  "clutch-fluid.replace",
  "chain.lubricate",
  "chain.adjust",
  "chain.measure",
  "chain.replace",
  "drive-belt.inspect",
  "drive-belt.replace",
  "shaft-oil.inspect",
  "shaft-oil.replace",
  "shaft-splines.lubricate",
  "front-pads.measure",
  "rear-pads.measure",
  "front-shoes.measure",
  "rear-shoes.measure",
  "brake-fluid.inspect",
  "brake-fluid.replace",
  "brake-hoses.inspect",
  "brake-hoses.replace",
  "tyre-pressure.measure",
  "front-tread.measure",
  "rear-tread.measure",
  "front-tyre.replace",
  "rear-tyre.replace",
  "spokes.check",
  "wheel-bearings.inspect",
  "steering-head.inspect",
  "fork-oil.replace",
  "throttle-cable.adjust",
  "throttle-grip.test",
  "controls.lubricate",
  "side-stand.test",
  "centre-stand.lubricate",
  "fasteners.check",
] as const satisfies readonly StandardItemKey[];

const TOURER_MARK = { miles: 6000, km: 10_000 } as const;

export const STARTERS = {
  "chain-drive twin": {
    name: "Chain-drive twin, common practice",
    items: [...COMMON, "idle-speed.adjust", "throttle-balance.adjust", "timing-belt.replace"],
    intervals: {},
  },
  "belt-drive cruiser": {
    name: "Belt-drive cruiser, common practice",
    items: [...COMMON, "gearbox-oil.replace", "exhaust.check", "idle-speed.adjust", "timing-belt.replace"],
    intervals: {
      "engine-oil.replace": repeating(5000, 8000, 12),
      "drive-belt.inspect": repeating(5000, 8000),
      "gearbox-oil.replace": everyNthMark(2, { miles: 5000, km: 8000 }),
      "spark-plugs.replace": everyNthMark(3, { miles: 5000, km: 8000 }),
      "air-filter.replace": everyNthMark(2, { miles: 5000, km: 8000 }),
      "front-pads.measure": repeating(5000, 8000),
      "rear-pads.measure": repeating(5000, 8000),
      "fasteners.check": repeating(5000, 8000),
      "throttle-cable.adjust": repeating(5000, 8000),
      "throttle-grip.test": repeating(5000, 8000),
      "clutch-free-play.adjust": repeating(5000, 8000),
    },
  },
  "shaft-drive tourer": {
    name: "Shaft-drive tourer, common practice",
    items: [...COMMON, "gearbox-oil.replace", "throttle-balance.adjust", "suspension.inspect", "timing-belt.replace"],
    intervals: {
      "engine-oil.replace": repeating(6000, 10_000, 12),
      "valve-clearance.adjust": repeating(6000, 10_000),
      "shaft-oil.inspect": repeating(6000, 10_000),
      "shaft-oil.replace": everyNthMark(2, TOURER_MARK, 24),
      "gearbox-oil.replace": everyNthMark(2, TOURER_MARK),
      "spark-plugs.replace": everyNthMark(2, TOURER_MARK),
      "air-filter.replace": everyNthMark(2, TOURER_MARK),
      "front-pads.measure": repeating(6000, 10_000),
      "rear-pads.measure": repeating(6000, 10_000),
      "fasteners.check": repeating(6000, 10_000),
      "throttle-balance.adjust": repeating(6000, 10_000),
    },
  },
  "dual-purpose single": {
    name: "Single-cylinder dual-purpose, common practice",
    items: [
      ...COMMON.filter((key) => key !== "air-filter.replace"),
      "air-filter.clean",
      "oil-strainer.clean",
      "linkage.lubricate",
      "idle-speed.adjust",
      "breather.clean",
      "timing-belt.replace",
    ],
    intervals: {
      "engine-oil.replace": repeating(3000, 5000, 12),
      "valve-clearance.adjust": repeating(6000, 10_000),
      "spark-plugs.replace": repeating(6000, 10_000),
      "spokes.check": repeating(3000, 5000),
      "front-pads.measure": repeating(3000, 5000),
      "rear-pads.measure": repeating(3000, 5000),
      "chain.measure": repeating(3000, 5000),
      "chain.replace": repeating(12_000, 20_000),
      "fasteners.check": repeating(3000, 5000),
      "steering-head.inspect": repeating(6000, 10_000),
      "wheel-bearings.inspect": repeating(6000, 10_000),
    },
  },
} as const satisfies Record<string, StarterRow>;
