// What is commonly found wrong with a motorcycle, by name. The words that name each and the sentence that matters are in words/.
// `usual` is how riders and mechanics grade it by common practice; the member grades their own. `mends`: standard items whose work can be what mends it.

import type { Grade } from "../core/defect.ts";
import { type Equipment, type EquipmentRule, isFitted } from "../core/equipment.ts";
import type { System } from "../core/plan/plan.ts";
import type { CautionKey } from "./cautions.ts";
import type { StandardItemKey } from "./standard-items.ts";

type DefectRow = {
  readonly system: System;
  readonly usual: Grade;
  readonly caution: CautionKey | null;
  readonly mends: readonly StandardItemKey[];
  /** Work that fits a new one: what was wrong was of the old, so it closes without a question. Of items of both ends, the one whose end is said. */
  readonly ofOld?: readonly StandardItemKey[];
  /** It may as well be right again with what is on, so a new one is not taken for granted where the words only name it. */
  readonly recovers?: true;
  /** Work that hides what was found and may leave its cause: whether it mends it is asked. */
  readonly mayMend?: readonly (StandardItemKey | "battery.charge")[];
  /** Graded so by itself, whoever notes it; the owner may still grade it otherwise. */
  readonly always?: true;
  /** The line that it makes due by itself: what was seen says that the part is at its end. */
  readonly due?: StandardItemKey;
  /** On a bike fitted with any of these it is another kind, with advice of its own. */
  readonly instead?: { readonly kind: string; readonly on: readonly EquipmentRule[] };
  /** Which bikes can have it: noted on another all the same, and said. */
  readonly fits?: EquipmentRule;
  readonly source: string;
};

const PRACTICE = "common practice";
/** What nobody rides on whatever else is known: its sentence says so, and the defect is graded so at once. */
const STOPS = { usual: "do not ride", always: true } as const;
const BRAKES = ["front-pads.measure", "rear-pads.measure", "calipers.clean", "brake-fluid.replace", "brake-hoses.replace"] as const;
/** A top-up brings the level back and leaves the leak or the worn pads that let it sink. */
const LOW_BRAKE_FLUID = {
  ...{ system: "brakes", usual: "do not ride", caution: "brake fluid", mends: ["brake-fluid.replace"], mayMend: ["brake-fluid.inspect"] },
  source: PRACTICE,
} as const satisfies DefectRow;

/** A tyre's own fault, which goes with the tyre. */
const BY_NEW_TYRE = {
  ...{ system: "wheels and tyres", caution: "tyres", source: PRACTICE },
  ...{ mends: ["front-tyre.replace", "rear-tyre.replace"], ofOld: ["front-tyre.replace", "rear-tyre.replace"] },
} as const satisfies Omit<DefectRow, "usual">;

export const DEFECTS = {
  "soft brake": { system: "brakes", ...STOPS, caution: "brakes", mends: BRAKES, source: PRACTICE },
  "brake fluid leak": {
    system: "brakes",
    ...STOPS,
    caution: "brake fluid",
    mends: ["brake-hoses.replace", "brake-fluid.replace"],
    source: PRACTICE,
  },
  // A hose past its best is replaced, not watched: its line falls due by itself.
  "damaged brake hose": {
    ...{
      system: "brakes",
      ...STOPS,
      caution: "brakes",
      mends: ["brake-hoses.replace", "brake-hoses.inspect"],
      ofOld: ["brake-hoses.replace"],
      source: PRACTICE,
    },
    due: "brake-hoses.replace",
  },
  "damaged brake": {
    system: "brakes",
    ...STOPS,
    caution: "brakes",
    mends: [
      ...["front-pads.measure", "rear-pads.measure", "front-shoes.measure", "rear-shoes.measure", "front-discs.measure", "rear-discs.measure"],
      ...["calipers.clean", "front-drum.adjust", "rear-drum.adjust", "front-brake-cam.lubricate", "rear-brake-cam.lubricate"],
    ],
    source: PRACTICE,
  },
  // Something is not as it was, and nobody can say yet what.
  "odd brake": { system: "brakes", ...STOPS, caution: "brakes", mends: BRAKES, source: PRACTICE },
  // Brake fluid darkens as it ages and takes up water: it is past its time, and nothing leaks.
  "old brake fluid": {
    ...{ system: "brakes", usual: "watch", caution: "brake fluid", mends: ["brake-fluid.replace"], ofOld: ["brake-fluid.replace"], source: PRACTICE },
    due: "brake-fluid.replace",
  },
  "dragging brake": {
    system: "brakes",
    ...STOPS,
    caution: "brakes",
    // New pads free no piston that has seized: whether they were all is asked.
    mends: ["calipers.clean"],
    mayMend: ["front-pads.measure", "rear-pads.measure"],
    source: PRACTICE,
  },
  "brake noise": {
    system: "brakes",
    ...STOPS,
    caution: "brakes",
    mends: ["front-pads.measure", "rear-pads.measure", "calipers.clean"],
    source: PRACTICE,
  },
  "pulsing brake": { system: "brakes", usual: "watch", caution: "brakes", mends: ["front-pads.measure", "rear-pads.measure"], source: PRACTICE },
  "brake light": { system: "ignition and electrics", usual: "do not ride", caution: null, mends: ["lights.test"], source: PRACTICE },
  headlight: { system: "ignition and electrics", usual: "do not ride", caution: null, mends: ["lights.test"], source: PRACTICE },
  light: { system: "ignition and electrics", usual: "watch", caution: null, mends: ["lights.test"], source: PRACTICE },
  horn: { system: "ignition and electrics", usual: "watch", caution: null, mends: ["lights.test"], source: PRACTICE },
  "flat battery": {
    system: "ignition and electrics",
    usual: "watch",
    caution: "battery",
    mends: ["battery.test"],
    mayMend: ["battery.charge"],
    ofOld: ["battery.test"],
    recovers: true,
    source: PRACTICE,
  },
  // Charged while it is frozen, or with a case that is cracked or swollen, a battery can burst.
  "damaged battery": {
    ...{ system: "ignition and electrics", usual: "do not ride", caution: "battery", mends: ["battery.test"], ofOld: ["battery.test"], source: PRACTICE },
    instead: { kind: "damaged lithium battery", on: [{ battery: ["lithium"] }, { fuel: ["electric"] }] },
  },
  // It holds no acid to thaw, and a cell that is hurt can catch fire hours later.
  "damaged lithium battery": {
    system: "ignition and electrics",
    ...STOPS,
    caution: "lithium battery",
    mends: ["battery.test"],
    ofOld: ["battery.test"],
    source: PRACTICE,
  },
  "not charging": { system: "ignition and electrics", usual: "watch", caution: "battery", mends: ["battery.test"], source: PRACTICE },
  // A regulator that no longer holds it back boils a battery with acid dry, which then gasses; a lithium one can catch fire. It burns lamps and control units too.
  overcharging: { system: "ignition and electrics", ...STOPS, caution: "battery", mends: ["battery.test"], source: PRACTICE },
  "warning light": { system: "ignition and electrics", usual: "do not ride", caution: null, mends: [], source: PRACTICE },
  "fuel leak": { system: "fuel and air", ...STOPS, caution: "fuel", mends: ["fuel-hoses.inspect", "fuel-filter.replace"], source: PRACTICE },
  "damaged fuel hose": { system: "fuel and air", ...STOPS, caution: "fuel", mends: ["fuel-hoses.inspect"], source: PRACTICE },
  "running rough": {
    system: "fuel and air",
    usual: "watch",
    caution: null,
    mends: ["spark-plugs.replace", "throttle-balance.adjust", "air-filter.replace"],
    source: PRACTICE,
  },
  // It drives the camshaft: when it breaks, pistons and valves may meet.
  "timing belt": { system: "engine", ...STOPS, caution: null, mends: ["timing-belt.replace"], ofOld: ["timing-belt.replace"], source: PRACTICE },
  // A valve without clearance does not close, and burns.
  "tight valve": { system: "engine", usual: "watch", caution: null, mends: ["valve-clearance.adjust"], source: PRACTICE },
  // Oil and water meet through a head gasket, a cracked casting or an oil cooler: what oils the bearings then does not.
  "oil and coolant mixed": {
    ...{ system: "engine", ...STOPS, caution: "hot", mends: [], mayMend: ["engine-oil.replace", "coolant.replace"], source: PRACTICE },
    // Where no coolant is, the water in the oil is of the air.
    instead: { kind: "foam under the oil cap", on: [{ cooling: ["air", "oil"] }] },
  },
  // Foam under the cap alone is mostly water of short cold rides: a change of oil shows whether it comes again.
  "foam under the oil cap": { system: "engine", usual: "watch", caution: "hot", mends: [], mayMend: ["engine-oil.replace"], source: PRACTICE },
  "oil leak": { system: "engine", usual: "watch", caution: "hot", mends: ["engine-oil.replace"], source: PRACTICE },
  "engine noise": { system: "engine", usual: "do not ride", caution: null, mends: ["valve-clearance.adjust"], source: PRACTICE },
  smoke: { system: "engine", usual: "watch", caution: null, mends: [], source: PRACTICE },
  exhaust: { system: "engine", usual: "watch", caution: "hot", mends: ["exhaust.check"], source: PRACTICE },
  "coolant leak": { system: "cooling", ...STOPS, caution: "hot", mends: ["coolant-hoses.inspect", "coolant.replace"], source: PRACTICE },
  // Corrosion inhibitors that are used up let it rust: it is changed, and the cause looked for.
  "dirty coolant": {
    system: "cooling",
    usual: "watch",
    caution: "hot",
    mends: ["coolant.replace"],
    ofOld: ["coolant.replace"],
    due: "coolant.replace",
    source: PRACTICE,
  },
  "damaged coolant hose": { system: "cooling", ...STOPS, caution: "hot", mends: ["coolant-hoses.inspect"], source: PRACTICE },
  overheating: { system: "cooling", usual: "do not ride", caution: "hot", mends: ["coolant.replace", "coolant-hoses.inspect"], source: PRACTICE },
  "slipping clutch": { system: "clutch and gearbox", usual: "watch", caution: null, mends: ["clutch-free-play.adjust"], source: PRACTICE },
  "dragging clutch": { system: "clutch and gearbox", usual: "watch", caution: null, mends: ["clutch-free-play.adjust"], source: PRACTICE },
  // Air or a leak in its hydraulics, or a cable at its end: it may not open when it must.
  "soft clutch": {
    ...{ system: "clutch and gearbox", usual: "watch", caution: null, mends: ["clutch-fluid.replace"], mayMend: ["clutch-free-play.adjust"] },
    source: PRACTICE,
  },
  "no clutch play": { system: "clutch and gearbox", usual: "watch", caution: null, mends: ["clutch-free-play.adjust"], source: PRACTICE },
  gearbox: { system: "clutch and gearbox", usual: "watch", caution: null, mends: ["gearbox-oil.replace"], source: PRACTICE },
  // What is wrong with the chain itself: setting it, or oil, hides a tight spot or a stiff link and leaves it in.
  chain: {
    ...{ system: "final drive", ...STOPS, caution: "moving chain", mends: ["chain.replace"], ofOld: ["chain.replace"], source: PRACTICE },
    ...{ mayMend: ["chain.adjust", "chain.lubricate"], fits: { finalDrive: ["chain"] } },
  },
  // Too slack or too tight, by eye.
  "chain tension": {
    ...{
      system: "final drive",
      ...STOPS,
      caution: "moving chain",
      mends: ["chain.adjust", "chain.replace"],
      ofOld: ["chain.replace"],
      fits: { finalDrive: ["chain"] },
    },
    source: PRACTICE,
  },
  // On the plates it wipes off; in the joints it is the end of the chain. Its owner says which.
  "rusty chain": {
    ...{ system: "final drive", usual: "watch", caution: "moving chain", mends: ["chain.replace"], ofOld: ["chain.replace"], mayMend: ["chain.lubricate"] },
    ...{ fits: { finalDrive: ["chain"] }, source: PRACTICE },
  },
  "worn sprockets": { system: "final drive", ...STOPS, caution: "moving chain", mends: ["chain.replace"], fits: { finalDrive: ["chain"] }, source: PRACTICE },
  "chain at its end": {
    ...{ system: "final drive", usual: "watch", caution: "moving chain", mends: ["chain.replace"], ofOld: ["chain.replace"], source: PRACTICE },
    due: "chain.replace",
  },
  "drive belt": {
    ...{
      system: "final drive",
      ...STOPS,
      caution: null,
      mends: ["drive-belt.replace"],
      ofOld: ["drive-belt.replace"],
      fits: { finalDrive: ["belt"] },
      source: PRACTICE,
    },
    instead: { kind: "timing belt", on: [{ finalDrive: ["chain", "shaft", "variator", "hub motor"], camDrive: ["timing belt"] }] },
  },
  puncture: {
    ...STOPS,
    ...BY_NEW_TYRE,
  },
  "plugged tyre": {
    usual: "watch",
    always: true,
    ...BY_NEW_TYRE,
  },
  "damaged tyre": {
    ...STOPS,
    ...BY_NEW_TYRE,
  },
  "cracked tyre": {
    usual: "do not ride",
    ...BY_NEW_TYRE,
  },
  "squared-off tyre": {
    usual: "watch",
    ...BY_NEW_TYRE,
  },
  "cupped tyre": {
    usual: "watch",
    ...BY_NEW_TYRE,
  },
  "valve cap": { system: "wheels and tyres", usual: "watch", caution: null, mends: [], source: PRACTICE },
  // Nothing is wrong with the tyre, and it does not hold.
  "oily tyre": { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: [], source: PRACTICE },
  rubbing: { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: [], source: PRACTICE },
  "fitted wrong": { system: "wheels and tyres", usual: "do not ride", caution: "tyres", mends: [], source: PRACTICE },
  "wheel bearing": { system: "wheels and tyres", ...STOPS, caution: "lifting", mends: ["wheel-bearings.inspect"], source: PRACTICE },
  "swingarm bearing": {
    system: "frame and stands",
    ...STOPS,
    caution: "lifting",
    mends: ["swingarm.inspect", "swingarm.lubricate"],
    source: PRACTICE,
  },
  spoke: { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: ["spokes.check"], source: PRACTICE },
  "damaged wheel": { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: [], source: PRACTICE },
  steering: {
    system: "steering and suspension",
    ...STOPS,
    caution: "steering",
    mends: ["steering-head.inspect", "steering-head.lubricate"],
    source: PRACTICE,
  },
  "fork leak": { system: "steering and suspension", usual: "do not ride", caution: "brakes", mends: ["fork-oil.replace"], source: PRACTICE },
  "shock leak": { system: "steering and suspension", usual: "watch", caution: null, mends: ["suspension.inspect"], source: PRACTICE },
  "sticking throttle": {
    system: "controls",
    ...STOPS,
    caution: "throttle",
    mends: ["throttle-cable.adjust", "throttle-grip.test", "controls.lubricate"],
    source: PRACTICE,
  },
  cable: {
    system: "controls",
    ...STOPS,
    caution: null,
    mends: ["controls.lubricate", "clutch-free-play.adjust", "throttle-cable.adjust"],
    source: PRACTICE,
  },
  mirror: { system: "controls", usual: "watch", caution: null, mends: ["fasteners.check"], source: PRACTICE },
  "side stand": { system: "frame and stands", usual: "do not ride", caution: null, mends: ["side-stand.test"], source: PRACTICE },
  fastener: { system: "frame and stands", ...STOPS, caution: "fasteners", mends: ["fasteners.check"], source: PRACTICE },
  frame: { system: "frame and stands", ...STOPS, caution: null, mends: [], source: PRACTICE },

  // Worn out, and the end of the bike is not said: what is fitted at either end may be what mends it.
  "worn tyre": {
    ...STOPS,
    ...BY_NEW_TYRE,
  },
  "worn pads": {
    system: "brakes",
    ...STOPS,
    caution: "brakes",
    mends: ["front-pads.measure", "rear-pads.measure"],
    ofOld: ["front-pads.measure", "rear-pads.measure"],
    source: PRACTICE,
  },
  "worn shoes": {
    system: "brakes",
    ...STOPS,
    caution: "drum dust",
    mends: ["front-shoes.measure", "rear-shoes.measure"],
    ofOld: ["front-shoes.measure", "rear-shoes.measure"],
    source: PRACTICE,
  },

  // Found by measuring, and some by eye: the work that mends each closes it.
  "worn front tyre": { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: ["front-tyre.replace"], ofOld: ["front-tyre.replace"], source: PRACTICE },
  "worn rear tyre": { system: "wheels and tyres", ...STOPS, caution: "tyres", mends: ["rear-tyre.replace"], ofOld: ["rear-tyre.replace"], source: PRACTICE },
  "worn sidecar tyre": {
    ...{ system: "wheels and tyres", ...STOPS, caution: "tyres", mends: ["sidecar-tyre.replace"], ofOld: ["sidecar-tyre.replace"], source: PRACTICE },
  },
  // No plan has a line for the brake of a sidecar: its owner says when it is mended.
  "worn sidecar brake": { system: "brakes", ...STOPS, caution: "brakes", mends: [], source: PRACTICE },
  "worn front pads": { system: "brakes", ...STOPS, caution: "brakes", mends: ["front-pads.measure"], ofOld: ["front-pads.measure"], source: PRACTICE },
  "worn rear pads": { system: "brakes", ...STOPS, caution: "brakes", mends: ["rear-pads.measure"], ofOld: ["rear-pads.measure"], source: PRACTICE },
  "worn front shoes": { system: "brakes", ...STOPS, caution: "drum dust", mends: ["front-shoes.measure"], ofOld: ["front-shoes.measure"], source: PRACTICE },
  "worn rear shoes": { system: "brakes", ...STOPS, caution: "drum dust", mends: ["rear-shoes.measure"], ofOld: ["rear-shoes.measure"], source: PRACTICE },
  "worn front drum": { system: "brakes", ...STOPS, caution: "drum dust", mends: [], mayMend: ["front-shoes.measure"], source: PRACTICE },
  "worn rear drum": { system: "brakes", ...STOPS, caution: "drum dust", mends: [], mayMend: ["rear-shoes.measure"], source: PRACTICE },
  "worn disc": {
    system: "brakes",
    usual: "do not ride",
    caution: "brakes",
    mends: ["front-discs.measure", "rear-discs.measure"],
    ofOld: ["front-discs.measure", "rear-discs.measure"],
    source: PRACTICE,
  },
  // Of a bike as a whole: how it was kept before the ends were told apart.
  "low brake fluid": LOW_BRAKE_FLUID,
  "low front brake fluid": LOW_BRAKE_FLUID,
  "low rear brake fluid": LOW_BRAKE_FLUID,
  // Right again by a reading alone: a new tyre may be pumped up wrong too.
  "wrong front pressure": { system: "wheels and tyres", usual: "do not ride", caution: "tyres", mends: [], source: PRACTICE },
  "wrong rear pressure": { system: "wheels and tyres", usual: "do not ride", caution: "tyres", mends: [], source: PRACTICE },
  "wrong sidecar pressure": { system: "wheels and tyres", usual: "do not ride", caution: "tyres", mends: [], source: PRACTICE },
  "slack chain": { system: "final drive", usual: "do not ride", caution: "moving chain", mends: ["chain.adjust", "chain.replace"], source: PRACTICE },
  "tight chain": { system: "final drive", usual: "do not ride", caution: "moving chain", mends: ["chain.adjust", "chain.replace"], source: PRACTICE },
  "slack belt": {
    ...{ system: "final drive", usual: "do not ride", caution: "moving belt", mends: ["drive-belt.inspect", "drive-belt.replace"], source: PRACTICE },
  },
  "worn chain": { system: "final drive", usual: "do not ride", caution: "moving chain", mends: ["chain.replace"], ofOld: ["chain.replace"], source: PRACTICE },
  "no throttle play": { system: "controls", usual: "do not ride", caution: "throttle", mends: ["throttle-cable.adjust"], source: PRACTICE },
  "low engine oil": { system: "engine", usual: "do not ride", caution: "hot", mends: ["engine-oil.inspect", "engine-oil.replace"], source: PRACTICE },
  // Found by what was put in.
  // Rubber that the wrong fluid has reached swells or goes soft: new fluid alone leaves it so, and whether more was renewed is asked.
  "attacked brake seals": {
    ...{ system: "brakes", ...STOPS, caution: "brake fluid", mends: [], mayMend: ["brake-fluid.replace", "brake-hoses.replace"], source: PRACTICE },
  },
  "attacked clutch seals": { system: "clutch and gearbox", ...STOPS, caution: "brake fluid", mends: [], mayMend: ["clutch-fluid.replace"], source: PRACTICE },
  "mixed clutch fluid": { system: "clutch and gearbox", usual: "do not ride", caution: "brake fluid", mends: ["clutch-fluid.replace"], source: PRACTICE },
  "mixed brake fluid": { system: "brakes", usual: "do not ride", caution: "brake fluid", mends: ["brake-fluid.replace"], source: PRACTICE },
} as const satisfies Record<string, DefectRow>;

export type DefectKind = keyof typeof DEFECTS;

/** The row of a kind; null for a kind that is not, or no longer, in the table. */
export const defectRow = (kind: string | null): DefectRow | null => (kind === null ? null : ((DEFECTS as Readonly<Record<string, DefectRow>>)[kind] ?? null));

/** What a kind is on a bike so fitted: a lithium battery that is swollen wants other advice than one with acid. */
export function kindOn(kind: string | null, equipment: Equipment): string | null {
  const instead = defectRow(kind)?.instead;
  return instead?.on.some((rule) => isFitted(rule, equipment)) === true ? instead.kind : kind;
}

/** All that can be wrong with a tyre: told before what was read of it. */
export const TYRE_CONDITION: readonly DefectKind[] = [
  ...([
    "puncture",
    "plugged tyre",
    "damaged tyre",
    "cracked tyre",
    "squared-off tyre",
    "cupped tyre",
    "worn tyre",
    "worn front tyre",
    "worn rear tyre",
    "worn sidecar tyre",
  ] as const),
  ...(["wrong front pressure", "wrong rear pressure", "wrong sidecar pressure"] as const),
];
