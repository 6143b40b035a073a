// The starter plans: which standard items each has, and where its intervals differ from the catalogue's.
// Common practice for bikes of that kind; the maker's manual has the last word. Equipment still decides which lines a bike gets.

import type { Columns, Repeat } from "../core/plan/plan.ts";
import { everyNthMark, repeating } from "./items/row.ts";
import type { StandardItemKey } from "./standard-items.ts";

export type StarterRow = {
  readonly name: string;
  readonly items: readonly StandardItemKey[];
  /** How far apart its services lie, where not as in the catalogue (CATALOGUE_MARK): what goes by services is moved onto them, for one as for every nth. */
  readonly mark?: Columns;
  readonly intervals: { readonly [K in StandardItemKey]?: Repeat };
};

/** Lines that every road bike shares; those it is not fitted for fall away by themselves, and come when it is fitted otherwise. */
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
  "wiring.inspect",
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
  "front-discs.measure",
  "rear-discs.measure",
  "front-drum.adjust",
  "rear-drum.adjust",
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
  "rims.inspect",
  "wheel-bearings.inspect",
  "steering-head.inspect",
  "swingarm.inspect",
  "fork-oil.replace",
  "throttle-cable.adjust",
  "throttle-grip.test",
  "controls.lubricate",
  "side-stand.test",
  "centre-stand.lubricate",
  "fasteners.check",
  "timing-belt.replace",
  ...["points.adjust", "points.replace", "points-cam.lubricate", "ignition-timing.adjust"],
  ...["variator-belt.inspect", "variator-belt.replace", "variator-rollers.inspect", "variator-filter.clean", "variator-clutch.inspect", "final-gears.replace"],
  ...["charge-lead.inspect", "high-voltage-cables.inspect", "drive-battery.test", "motor-mounts.check"],
  ...["sidecar-fittings.check", "sidecar-alignment.measure", "sidecar-tread.measure", "sidecar-tyre.replace"],
  ...["sidecar-bearings.inspect", "sidecar-suspension.lubricate"],
] as const satisfies readonly StandardItemKey[];

/** The catalogue's services. */
export const CATALOGUE_MARK = { miles: 4000, km: 6000 } as const;
const CRUISER_MARK = { miles: 5000, km: 8000 } as const;
const TOURER_MARK = { miles: 6000, km: 10_000 } as const;
const SHORT_MARK = { miles: 3000, km: 5000 } as const;

export const STARTERS = {
  "chain-drive twin": {
    name: "Chain-drive twin, common practice",
    items: [...COMMON, "idle-speed.adjust", "throttle-balance.adjust", "linkage.lubricate"],
    intervals: {},
  },
  "belt-drive cruiser": {
    name: "Belt-drive cruiser, common practice",
    mark: CRUISER_MARK,
    items: [
      ...COMMON,
      ...["primary-chain.adjust", "primary-oil.replace", "gearbox-oil.replace", "exhaust.check", "idle-speed.adjust"],
      ...["cooling-fins.clean", "steering-head.lubricate"],
    ],
    intervals: {
      "engine-oil.replace": repeating(5000, 8000, 12),
      "drive-belt.inspect": repeating(5000, 8000),
      "gearbox-oil.replace": everyNthMark(2, CRUISER_MARK),
      "spark-plugs.replace": everyNthMark(3, CRUISER_MARK),
      "air-filter.replace": everyNthMark(2, CRUISER_MARK),
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
    mark: TOURER_MARK,
    items: [...COMMON, ...["gearbox-oil.replace", "throttle-balance.adjust", "suspension.inspect", "fuel-filter.replace", "swingarm.lubricate"]],
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
    mark: SHORT_MARK,
    items: [
      ...COMMON.filter((key) => key !== "air-filter.replace"),
      "air-filter.clean",
      "oil-strainer.clean",
      "linkage.lubricate",
      "idle-speed.adjust",
      "breather.clean",
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
  "four-cylinder sport tourer": {
    name: "Four-cylinder sport tourer, common practice",
    items: [...COMMON, ...["throttle-balance.adjust", "fuel-filter.replace", "linkage.lubricate", "suspension.inspect", "calipers.clean"], "idle-speed.adjust"],
    intervals: {
      "engine-oil.replace": repeating(8000, 12_000, 12),
      "valve-clearance.adjust": repeating(16_000, 24_000),
      "spark-plugs.replace": repeating(16_000, 24_000),
      "throttle-balance.adjust": repeating(8000, 12_000),
      "clutch-fluid.replace": repeating(null, null, 24),
    },
  },
  "small commuter": {
    name: "Small commuter, common practice",
    items: [...COMMON, "idle-speed.adjust", "oil-strainer.clean", "rear-brake-cam.lubricate", "front-brake-cam.lubricate", "cooling-fins.clean"],
    intervals: {
      "engine-oil.replace": repeating(2000, 3000, 12),
      "valve-clearance.adjust": repeating(4000, 6000),
      "spark-plugs.replace": repeating(6000, 9000),
      "air-filter.replace": repeating(8000, 12_000),
      "chain.replace": repeating(12_000, 20_000),
      "fork-oil.replace": repeating(12_000, 18_000, 36),
    },
  },
  classic: {
    name: "Classic with points ignition and drum brakes, common practice",
    mark: SHORT_MARK,
    items: [
      ...COMMON,
      "idle-speed.adjust",
      ...["oil-strainer.clean", "head-bolts.check", "front-brake-cam.lubricate", "rear-brake-cam.lubricate", "steering-head.lubricate"],
      ...["gearbox-oil.inspect"],
    ],
    intervals: {
      "engine-oil.replace": repeating(1500, 2500, 12),
      "valve-clearance.adjust": repeating(3000, 5000),
      "spark-plugs.replace": repeating(6000, 10_000),
      "spokes.check": repeating(3000, 5000),
      "front-shoes.measure": repeating(3000, 5000),
      "rear-shoes.measure": repeating(3000, 5000),
      "chain.replace": repeating(10_000, 16_000),
      "fork-oil.replace": repeating(6000, 10_000, 24),
      "steering-head.inspect": repeating(3000, 5000),
      "wheel-bearings.inspect": repeating(6000, 10_000),
      "fasteners.check": repeating(1500, 2500),
    },
  },
  electric: {
    name: "Electric, common practice",
    items: [
      ...COMMON,
      ...["cooling-fins.clean", "suspension.inspect"],
      ...["calipers.clean", "frame.inspect", "headlamp-aim.adjust", "steering-head.lubricate", "linkage.lubricate"],
    ],
    intervals: { "drive-belt.replace": repeating(30_000, 48_000) },
  },
  scooter: {
    name: "Scooter with variator, common practice",
    mark: SHORT_MARK,
    items: [...COMMON, ...["oil-strainer.clean", "idle-speed.adjust"]],
    intervals: {
      "engine-oil.replace": repeating(3000, 5000, 12),
      "valve-clearance.adjust": repeating(6000, 10_000),
      "spark-plugs.replace": repeating(6000, 10_000),
      "air-filter.replace": repeating(6000, 10_000),
    },
  },
  "sidecar outfit": {
    name: "Sidecar outfit, common practice",
    mark: SHORT_MARK,
    items: [...COMMON, ...["gearbox-oil.replace", "throttle-balance.adjust", "idle-speed.adjust"]],
    intervals: {
      "engine-oil.replace": repeating(3000, 5000, 12),
      "valve-clearance.adjust": repeating(6000, 10_000),
      "sidecar-fittings.check": repeating(3000, 5000, 12),
      "gearbox-oil.replace": repeating(6000, 10_000),
      "shaft-oil.replace": repeating(6000, 10_000, 24),
      "front-tread.measure": repeating(1000, 1600, 3),
      "rear-tread.measure": repeating(1000, 1600, 3),
      "steering-head.inspect": repeating(3000, 5000),
      "wheel-bearings.inspect": repeating(3000, 5000),
    },
  },
} as const satisfies Record<string, StarterRow>;
