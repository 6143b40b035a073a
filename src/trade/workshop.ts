// How each item is worked at: tools, what is used up, what has to be apart, what comes before it, the specs it needs and what it measures.
// Common practice for road bikes; the maker's manual has the last word. By item key, so that plans given to bikes long ago have it too.

import type { ItemKey } from "../core/ids.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Apart, Consumable, HowWorked } from "../core/sheet/how.ts";
import { CONSUMABLES, type ConsumableName, type ToolName } from "./shelf.ts";
import type { SpecKey } from "./spec-keys.ts";
import type { StandardItemKey } from "./standard-items.ts";

type Row = {
  readonly tools?: readonly ToolName[];
  readonly uses?: readonly Use[];
  readonly opens?: readonly Apart[];
  readonly after?: readonly StandardItemKey[];
  readonly closed?: readonly Apart[];
  readonly specs?: readonly SpecKey[];
  readonly measures?: readonly ReadingKind[];
};
/** A consumable: as needed, so many of it, or as much as a spec says; `kind` is the spec of its grade or part number. */
type Use = ConsumableName | { readonly what: ConsumableName; readonly count?: number; readonly spec?: SpecKey; readonly kind?: SpecKey };

const WHEELS = ["front wheel", "rear wheel"] as const;
const WASHER = { what: "crush washer", count: 1 } as const;
const BRAKE_FLUID = { what: "brake fluid, sealed", kind: "brake fluid" } as const;
const AXLES = ["front axle torque", "front axle pinch bolt torque", "rear axle torque"] as const;

export const WORKSHOP = {
  "engine-oil.replace": {
    tools: ["sockets", "torque wrench", "oil filter wrench", "drain pan", "funnel"],
    uses: [
      { what: "engine oil", spec: "engine oil with filter", kind: "engine oil grade" },
      { what: "oil filter", count: 1, kind: "oil filter" },
      WASHER,
      { what: "cover O-ring", count: 1 },
    ],
    specs: ["engine oil with filter", "engine oil grade", "oil drain plug torque", "oil filter torque"],
    measures: ["oil level"],
  },
  "engine-oil.inspect": { tools: ["rag"], measures: ["oil level"] },
  "oil-strainer.clean": {
    tools: ["sockets", "drain pan", "torque wrench"],
    uses: [{ what: "cover O-ring", count: 1 }],
    specs: ["oil drain plug torque"],
  },
  "valve-clearance.adjust": {
    tools: ["feeler gauges", "sockets", "hex keys", "torque wrench"],
    uses: [{ what: "valve cover gasket", count: 1 }, "shims, once measured"],
    opens: ["seat", "tank", "valve cover"],
    after: ["head-bolts.check"],
    specs: ["intake valve clearance", "exhaust valve clearance", "valve cover bolt torque"],
    measures: ["valve clearance"],
  },
  "timing-belt.replace": {
    tools: ["sockets", "torque wrench", "locking pins for the cams"],
    uses: [{ what: "timing belt", count: 1 }],
    opens: ["seat", "tank"],
  },
  "breather.clean": { tools: ["pliers", "rag"], uses: ["contact cleaner"], opens: ["seat"] },
  "exhaust.check": { tools: ["sockets", "torque wrench"], specs: ["exhaust nut torque"] },
  "air-filter.replace": {
    tools: ["screwdrivers", "hex keys", "rag"],
    uses: [{ what: "air filter", count: 1, kind: "air filter" }],
    opens: ["seat", "tank", "air box"],
    specs: ["air filter"],
  },
  "air-filter.clean": { tools: ["screwdrivers", "rag"], uses: ["air filter oil"], opens: ["seat", "air box"] },
  "fuel-hoses.inspect": { tools: ["torch", "pliers"], opens: ["seat", "tank"] },
  "fuel-filter.replace": {
    tools: ["pliers", "rag"],
    uses: [
      { what: "fuel filter", count: 1 },
      { what: "hose clamp", count: 2 },
    ],
    opens: ["seat", "tank"],
  },
  "throttle-balance.adjust": {
    tools: ["vacuum gauges", "screwdrivers", "fan"],
    after: ["valve-clearance.adjust", "spark-plugs.replace", "air-filter.replace", "air-filter.clean", "throttle-cable.adjust"],
    specs: ["idle speed"],
  },
  "idle-speed.adjust": {
    tools: ["screwdrivers"],
    after: ["valve-clearance.adjust", "spark-plugs.replace", "air-filter.replace", "air-filter.clean", "throttle-balance.adjust", "throttle-cable.adjust"],
    specs: ["idle speed"],
  },
  "coolant.replace": {
    tools: ["sockets", "drain pan", "funnel"],
    uses: [{ what: "coolant", spec: "coolant amount", kind: "coolant kind" }, WASHER],
    after: ["coolant-hoses.inspect"],
    specs: ["coolant amount", "coolant kind"],
    measures: ["coolant level", "coolant strength"],
  },
  "coolant.inspect": { tools: ["torch"], measures: ["coolant level"] },
  "coolant-hoses.inspect": { tools: ["torch", "screwdrivers"] },

  "spark-plugs.replace": {
    tools: ["plug socket", "torque wrench", "wire gap gauge"],
    // One a cylinder: how many there are is the bike's, and so is the kind.
    uses: [{ what: "spark plug", kind: "spark plug" }],
    opens: ["seat", "tank"],
    specs: ["spark plug", "spark plug gap", "spark plug torque"],
    measures: ["plug gap"],
  },
  "battery.test": { tools: ["multimeter", "screwdrivers"], opens: ["seat"], specs: ["battery charging voltage"], measures: ["battery voltage"] },
  "battery-acid.top-up": { tools: ["goggles", "funnel"], uses: ["distilled water"], opens: ["seat"] },
  "lights.test": {},
  "clutch-free-play.adjust": { tools: ["open spanners", "rule"], specs: ["clutch free play"], measures: ["clutch free play"] },
  "clutch-fluid.replace": {
    tools: ["ring spanners", "bleed hose and bottle", "rag"],
    uses: [{ what: "clutch fluid, sealed", kind: "clutch fluid" }],
    specs: ["clutch fluid", "bleed screw torque"],
    measures: ["clutch fluid level"],
  },
  "gearbox-oil.replace": {
    tools: ["sockets", "torque wrench", "drain pan", "funnel"],
    uses: [{ what: "gearbox oil", spec: "gearbox oil", kind: "gearbox oil grade" }, WASHER],
    specs: ["gearbox oil", "gearbox oil grade"],
  },
  "chain.lubricate": {
    tools: ["rag", "paddock stand"],
    uses: ["chain lube", "chain cleaner"],
    after: ["chain.adjust", "chain.measure"],
    closed: ["rear wheel"],
  },
  "chain.adjust": {
    tools: ["ring spanners", "torque wrench", "rule"],
    after: ["chain.measure"],
    closed: ["rear wheel"],
    specs: ["chain slack", "rear axle torque"],
    measures: ["chain slack"],
  },
  "chain.measure": { tools: ["rule", "paddock stand"], specs: ["chain length limit"], measures: ["chain length"] },
  "chain.replace": {
    tools: ["chain tool", "sockets", "torque wrench", "paddock stand"],
    uses: [
      { what: "chain", count: 1, kind: "chain size" },
      { what: "front sprocket", count: 1, kind: "sprockets" },
      { what: "rear sprocket", count: 1, kind: "sprockets" },
      { what: "rivet link", count: 1 },
      { what: "lock washer", count: 1 },
    ],
    opens: ["sprocket cover", "rear wheel"],
    specs: ["chain size", "sprockets", "front sprocket torque", "rear sprocket torque", "rear axle torque", "chain slack"],
    measures: ["chain slack"],
  },
  "drive-belt.inspect": { tools: ["belt tension gauge", "rule"], closed: ["rear wheel"], specs: ["belt deflection"], measures: ["belt deflection"] },
  "drive-belt.replace": {
    tools: ["sockets", "torque wrench", "belt tension gauge", "paddock stand"],
    uses: [{ what: "drive belt", count: 1 }],
    opens: ["sprocket cover", "rear wheel"],
    specs: ["belt deflection", "rear axle torque", "swingarm pivot torque"],
    measures: ["belt deflection"],
  },
  "shaft-oil.inspect": { tools: ["hex keys", "funnel"] },
  "shaft-oil.replace": {
    tools: ["hex keys", "torque wrench", "drain pan", "funnel"],
    uses: [{ what: "shaft drive oil", spec: "shaft drive oil", kind: "shaft drive oil grade" }, WASHER],
    specs: ["shaft drive oil", "shaft drive oil grade", "shaft drain plug torque"],
  },
  "shaft-splines.lubricate": {
    tools: ["sockets", "torque wrench", "paddock stand"],
    uses: ["spline grease"],
    opens: ["rear wheel"],
    specs: ["rear axle torque"],
  },

  "front-pads.measure": { tools: ["torch", "calliper gauge"], specs: ["front pad limit"], measures: ["pad thickness"] },
  "rear-pads.measure": { tools: ["torch", "calliper gauge"], specs: ["rear pad limit"], measures: ["pad thickness"] },
  "front-shoes.measure": {
    tools: ["sockets", "calliper gauge", "torque wrench"],
    uses: [{ what: "split pin", count: 1 }],
    opens: ["front wheel"],
    specs: ["front shoe limit", "front drum limit", "front axle torque", "front brake free play"],
    measures: ["shoe thickness", "drum diameter"],
  },
  "rear-shoes.measure": {
    tools: ["sockets", "calliper gauge", "torque wrench"],
    uses: [{ what: "split pin", count: 1 }],
    opens: ["rear wheel"],
    specs: ["rear shoe limit", "rear drum limit", "rear axle torque", "rear brake free play"],
    measures: ["shoe thickness", "drum diameter"],
  },
  "brake-fluid.inspect": { tools: ["torch"], measures: ["brake fluid level"] },
  "brake-fluid.replace": {
    tools: ["ring spanners", "bleed hose and bottle", "rag", "torque wrench"],
    uses: [BRAKE_FLUID],
    after: ["brake-hoses.inspect", "brake-hoses.replace", "calipers.clean", "front-pads.measure", "rear-pads.measure"],
    closed: WHEELS,
    specs: ["brake fluid", "bleed screw torque"],
    measures: ["brake fluid level"],
  },
  "brake-hoses.inspect": { tools: ["torch"] },
  "brake-hoses.replace": {
    tools: ["ring spanners", "torque wrench", "bleed hose and bottle"],
    uses: [{ what: "brake hose set", count: 1 }, "crush washer", BRAKE_FLUID],
    closed: WHEELS,
    specs: ["brake hose bolt torque", "brake fluid", "bleed screw torque"],
  },
  "calipers.clean": {
    tools: ["sockets", "torque wrench", "soft brush"],
    uses: ["brake cleaner", "caliper pin grease"],
    specs: ["front caliper bolt torque", "rear caliper bolt torque", "brake pad pin torque"],
  },

  "tyre-pressure.measure": { tools: ["pressure gauge", "pump"], specs: ["front tyre pressure", "rear tyre pressure"], measures: ["cold pressure"] },
  "front-tread.measure": { tools: ["tread gauge"], specs: ["front tread limit"], measures: ["tread"] },
  "rear-tread.measure": { tools: ["tread gauge"], specs: ["rear tread limit"], measures: ["tread"] },
  "front-tyre.replace": {
    tools: ["sockets", "torque wrench", "tyre levers", "paddock stand"],
    uses: [{ what: "front tyre", count: 1, kind: "front tyre size" }, "valve or tube", "balance weights"],
    opens: ["front wheel"],
    specs: ["front tyre size", "front axle torque", "front axle pinch bolt torque", "front caliper bolt torque", "front tyre pressure"],
  },
  "rear-tyre.replace": {
    tools: ["sockets", "torque wrench", "tyre levers", "paddock stand"],
    uses: [{ what: "rear tyre", count: 1, kind: "rear tyre size" }, "valve or tube", "balance weights", { what: "split pin", count: 1 }],
    opens: ["rear wheel"],
    specs: ["rear tyre size", "rear axle torque", "rear tyre pressure"],
  },
  "spokes.check": { tools: ["spoke spanner", "paddock stand"] },
  "wheel-bearings.inspect": { tools: ["paddock stand"], specs: AXLES },

  "steering-head.inspect": { tools: ["front stand"] },
  "steering-head.lubricate": {
    tools: ["front stand", "sockets", "hook spanner", "torque wrench"],
    uses: ["bearing grease", { what: "lock washer", count: 1 }],
    opens: ["front wheel", "front fork"],
    specs: ["steering stem torque", "triple clamp pinch bolt torque", "front axle torque"],
  },
  "fork-oil.replace": {
    tools: ["front stand", "sockets", "measuring jug", "torque wrench"],
    uses: [{ what: "fork oil", spec: "fork oil", kind: "fork oil grade" }, "fork seals"],
    opens: ["front wheel", "front fork"],
    specs: ["fork oil", "fork oil grade", "fork oil height", "triple clamp pinch bolt torque", "front axle torque"],
  },
  "suspension.inspect": { tools: ["torch"] },
  "linkage.lubricate": {
    tools: ["sockets", "torque wrench", "paddock stand"],
    uses: ["bearing grease"],
    opens: ["rear wheel"],
    specs: ["linkage bolt torque", "shock bolt torque", "rear axle torque"],
  },

  "throttle-cable.adjust": { tools: ["open spanners", "rule"], specs: ["throttle free play"], measures: ["throttle free play"] },
  "throttle-grip.test": {},
  "controls.lubricate": { tools: ["cable oiler", "screwdrivers"], uses: ["cable oil", "light grease"] },
  "side-stand.test": { uses: ["light grease"] },
  "centre-stand.lubricate": { uses: ["light grease"] },
  "fasteners.check": { tools: ["sockets", "torque wrench", "hex keys"], closed: WHEELS },

  "charging.test": { tools: ["multimeter"], opens: ["seat"], after: ["battery.test"], specs: ["battery charging voltage"], measures: ["charging voltage"] },
  "wiring.inspect": { tools: ["torch"], opens: ["seat"] },
  "headlamp-aim.adjust": { tools: ["screwdrivers", "rule"] },
  "points.adjust": { tools: ["feeler gauges", "screwdrivers"], specs: ["points gap"], measures: ["points gap"] },
  "points.replace": { tools: ["feeler gauges", "screwdrivers"], uses: [{ what: "points set", count: 1 }], specs: ["points gap"] },
  "points-cam.lubricate": { uses: ["light grease"], after: ["points.adjust", "points.replace"] },
  "ignition-timing.adjust": { tools: ["timing lamp", "screwdrivers"], after: ["points.adjust", "points.replace"], specs: ["ignition timing"] },
  // High voltage is looked at from outside, and opened by nobody without the training for it.
  "charge-lead.inspect": { tools: ["torch"] },
  "high-voltage-cables.inspect": { tools: ["torch"] },
  "drive-battery.test": {},
  "motor-mounts.check": { tools: ["sockets", "torque wrench"] },
  "cooling-fins.clean": { tools: ["soft brush"] },
  "variator-belt.inspect": { tools: ["sockets", "calliper gauge", "torque wrench"], opens: ["drive cover"] },
  "variator-belt.replace": {
    tools: ["sockets", "variator holding tool", "torque wrench"],
    uses: [{ what: "variator belt", count: 1 }],
    opens: ["drive cover"],
  },
  "variator-rollers.inspect": { tools: ["sockets", "variator holding tool", "torque wrench"], opens: ["drive cover"] },
  "variator-filter.clean": { tools: ["screwdrivers"] },
  "variator-clutch.inspect": { tools: ["sockets", "variator holding tool", "torque wrench"], opens: ["drive cover"] },
  "final-gears.replace": { tools: ["sockets", "torque wrench", "drain pan", "funnel"], uses: ["gearbox oil", WASHER] },
  "primary-oil.replace": { tools: ["sockets", "torque wrench", "drain pan", "funnel"], uses: ["primary case oil", WASHER] },
  "primary-chain.adjust": { tools: ["sockets", "rule"] },
  "gearbox-oil.inspect": { tools: ["rag", "funnel"] },
  "hub-rubbers.inspect": {
    tools: ["sockets", "torque wrench", "paddock stand"],
    opens: ["rear wheel"],
    specs: ["rear axle torque"],
  },
  "swingarm.inspect": { tools: ["paddock stand"] },
  "swingarm.lubricate": {
    tools: ["sockets", "torque wrench", "paddock stand"],
    uses: ["bearing grease"],
    opens: ["rear wheel"],
    after: ["swingarm.inspect"],
    specs: ["swingarm pivot torque", "rear axle torque"],
  },
  "frame.inspect": { tools: ["torch"] },
  "rims.inspect": { tools: ["torch"] },
  "front-discs.measure": { tools: ["micrometer"], specs: ["front disc limit"], measures: ["disc thickness"] },
  "rear-discs.measure": { tools: ["micrometer"], specs: ["rear disc limit"], measures: ["disc thickness"] },
  "front-drum.adjust": { tools: ["open spanners", "rule"], closed: ["front wheel"], specs: ["front brake free play"] },
  "rear-drum.adjust": { tools: ["open spanners", "rule"], closed: ["rear wheel"], specs: ["rear brake free play"] },
  "front-brake-cam.lubricate": {
    tools: ["sockets", "torque wrench", "front stand"],
    uses: ["bearing grease"],
    opens: ["front wheel"],
    specs: ["front axle torque"],
  },
  "rear-brake-cam.lubricate": {
    tools: ["sockets", "torque wrench", "paddock stand"],
    uses: ["bearing grease"],
    opens: ["rear wheel"],
    specs: ["rear axle torque"],
  },
  // Before the clearances, which it changes.
  "head-bolts.check": { tools: ["sockets", "torque wrench"], opens: ["seat", "tank"] },
  "sidecar-fittings.check": { tools: ["sockets", "torque wrench"] },
  "sidecar-alignment.measure": { tools: ["straight edges", "rule"], after: ["sidecar-fittings.check"], closed: WHEELS },
  "sidecar-tread.measure": { tools: ["tread gauge"], specs: ["sidecar tread limit"], measures: ["tread"] },
  "sidecar-tyre.replace": {
    tools: ["sockets", "torque wrench", "tyre levers"],
    uses: [{ what: "sidecar tyre", count: 1, kind: "sidecar tyre size" }, "valve or tube"],
    specs: ["sidecar tyre size", "sidecar tyre pressure"],
  },
  "sidecar-bearings.inspect": { tools: ["paddock stand"] },
  "sidecar-suspension.lubricate": { uses: ["light grease"] },
} as const satisfies Partial<Record<StandardItemKey, Row>>;

const ROWS: Readonly<Record<string, Row>> = WORKSHOP;

/** How an item is worked at; null when there is no row for it, as for an item of a member's own. */
export function howWorked(item: ItemKey): HowWorked | null {
  const row = ROWS[item];
  if (row === undefined) return null;
  const { tools = [], uses = [], opens = [], after = [], closed = [], specs = [], measures = [] } = row;
  return { tools, consumables: uses.map(consumable), opens, after: after as readonly string[] as readonly ItemKey[], closed, specs, measures };
}

const consumable = (use: Use): Consumable =>
  typeof use === "string"
    ? { what: use, count: null, spec: null, kind: null }
    : { what: use.what, count: use.count ?? null, spec: use.spec ?? null, kind: use.kind ?? null };

/** What is measured of a part that only wears, and which way: it goes back by a new part alone. */
export const WEARS: Readonly<Partial<Record<ReadingKind, "down" | "up">>> = {
  tread: "down",
  "pad thickness": "down",
  "shoe thickness": "down",
  "disc thickness": "down",
  "chain length": "up",
};

/** Ticked with its level low and then full it was drained all the same, with its filter: what is only filled up has a line of its own, or goes by the level alone. */
export const isDrained = (item: string): boolean => item === ("engine-oil.replace" satisfies StandardItemKey);

/** What must be bought for one job and is on nobody's shelf: the rest is kept at hand. */
export const isKeptAtHand = (what: string): boolean => CONSUMABLES[what as ConsumableName] === "kept at hand";
