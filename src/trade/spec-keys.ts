// The specs that a bike can have: what each holds, whom it fits, what is typical of it, and what follows where it is used. Values belong to the bikes; none are here.
// Keys are never renamed nor used again: what members entered refers to them.

import type { EquipmentRule } from "../core/equipment.ts";
import type { System } from "../core/plan/plan.ts";
import type { Dimension, UnitId } from "../core/quantity/units.ts";
import type { UnderKind } from "../core/spec/under.ts";
import type { CautionKey } from "./cautions.ts";
import { CHAIN_SHARES } from "./chain.ts";
import { COOLANT_SHARES } from "./coolant.ts";

export type SpecKeyRow = {
  readonly system: System;
  readonly holds: Dimension | "words";
  /** What a single figure means: the value itself, the least that may be left, or the most that may be. */
  readonly end: "value" | "least" | "most";
  /** Printed for riding solo, two-up and loaded. */
  readonly byUse?: true;
  /** Tyres, brakes and axles: where members differ only a named page settles it. */
  readonly byPage?: true;
  readonly fits?: EquipmentRule;
  /** The unit that a bare figure is in. */
  readonly unit: UnitId | null;
  /** What a manual can ask for on any bike, in the canonical unit: beyond it a slip is asked about. Common practice, widened; null for words. */
  readonly plausible: Between | null;
  /** Set to its figure or within its window: with one end open it sets nothing. */
  readonly bothEnds?: true;
  /** Also taken in per cent and kept as typed: the shares that a manual can print, of what it is when new or of what is in it. */
  readonly shares?: Between;
  /** What its figure may be printed under; typed beside it, that is kept. */
  readonly under?: readonly UnderKind[];
  /** Volts that a battery shows at rest, and no charging circuit at speed: from `from` on, up to `figure` where it is one figure alone, and to `window` where it has two ends or names its revolutions. Common practice. */
  readonly atRest?: { readonly from: number; readonly window: number; readonly figure: number };
  /** The figure holds at a force, which is typed behind it and kept so. */
  readonly atForce?: true;
  /** The figure may name how the bike has to stand, which is typed behind it and kept so. */
  readonly stands?: true;
  /** The figure may name over how many pitches it is, which is typed behind it and kept so. */
  readonly overPitches?: true;
  /** Words that may well be a measured value alone: a socket's size, a battery's voltage. */
  readonly sizes?: readonly Dimension[];
  /** The key of the words that are often typed behind the figure: "3.9 L 10W-40" is a fill and its grade. */
  readonly beside?: string;
  /** Shown as typical where nothing is entered, never used to judge: in `unit`. Source of all: common practice, road bikes. */
  readonly typical?: readonly [from: number, to: number];
  /** What is done next where this torque is used: one of AFTERWARDS. */
  readonly afterwards?: Afterwards;
  readonly caution: CautionKey | null;
};

type Between = readonly [from: number, to: number];

/** What follows the tightening of a joint; words/ has a sentence for each. */
export const AFTERWARDS = ["slack again", "belt again", "pump brake", "drum again", "spin wheel", "turn steering", "new split pin", "new washer"] as const;
export type Afterwards = (typeof AFTERWARDS)[number];

const BURNS = { fuel: ["carburettor", "injection"] } as const satisfies EquipmentRule;
const CHAIN = { finalDrive: ["chain"] } as const satisfies EquipmentRule;
const BELT = { finalDrive: ["belt"] } as const satisfies EquipmentRule;
const SHAFT = { finalDrive: ["shaft"] } as const satisfies EquipmentRule;
const LIQUID = { cooling: ["liquid"] } as const satisfies EquipmentRule;
const VALVES = { valveGear: ["screw", "shim"] } as const satisfies EquipmentRule;
const SIDECAR = { sidecar: ["fitted"] } as const satisfies EquipmentRule;
const CABLE_CLUTCH = { clutch: ["cable"] } as const satisfies EquipmentRule;
const FRONT_DISC = { frontBrake: ["disc"] } as const satisfies EquipmentRule;
const REAR_DISC = { rearBrake: ["disc"] } as const satisfies EquipmentRule;
const HAS_BATTERY = { battery: ["flooded", "AGM", "gel", "lithium"] } as const satisfies EquipmentRule;

const words = (system: System, more: Partial<SpecKeyRow> = {}): SpecKeyRow => ({
  ...{ system, holds: "words", end: "value", unit: null, plausible: null, caution: null },
  ...more,
});
const torque = (system: System, more: Partial<SpecKeyRow> = {}): SpecKeyRow => ({
  // N·m: from a small cover screw to the nut of a large clutch. What a row narrows it to is common practice, wide on both sides: it catches a slip, no more.
  ...{ system, holds: "torque", end: "value", unit: null, plausible: [0.5, 450], under: ["threads"], caution: "fasteners" },
  ...more,
});
const length = (system: System, end: SpecKeyRow["end"], plausible: Between, more: Partial<SpecKeyRow> = {}): SpecKeyRow => ({
  ...{ system, holds: "length", end, unit: "mm", plausible, under: ["engine", "degrees"], caution: null },
  ...more,
});
const volume = (system: System, plausible: Between, more: Partial<SpecKeyRow> = {}): SpecKeyRow => ({
  ...{ system, holds: "volume", end: "value", unit: "L", plausible, caution: null },
  ...more,
});
const pressure = (more: Partial<SpecKeyRow> = {}): SpecKeyRow => ({
  // kPa: 9 psi in a tyre for soft ground to some 65 psi behind a sidecar.
  ...{
    system: "wheels and tyres",
    holds: "pressure",
    end: "value",
    unit: null,
    plausible: [60, 450],
    byUse: true,
    byPage: true,
    bothEnds: true,
    under: ["cold"],
    caution: "tyres",
  },
  ...more,
});

const ROWS = {
  // Typical pressures in psi: unit null, so that a bare figure is asked about or taken in the member's own.
  "front tyre pressure": pressure(),
  "rear tyre pressure": pressure(),
  "sidecar tyre pressure": pressure({ fits: SIDECAR }),
  "front tyre size": words("wheels and tyres", { sizes: ["length"], byPage: true, caution: "tyres" }),
  "rear tyre size": words("wheels and tyres", { sizes: ["length"], byPage: true, caution: "tyres" }),
  "sidecar tyre size": words("wheels and tyres", { sizes: ["length"], byPage: true, fits: SIDECAR, caution: "tyres" }),
  "front tread limit": length("wheels and tyres", "least", [0.4, 6], { byPage: true, caution: "tyres" }),
  "rear tread limit": length("wheels and tyres", "least", [0.4, 6], { byPage: true, caution: "tyres" }),
  "sidecar tread limit": length("wheels and tyres", "least", [0.4, 6], { byPage: true, fits: SIDECAR, caution: "tyres" }),
  // What the rider's own tool roll must hold.
  "axle sockets": words("wheels and tyres", { sizes: ["length"] }),
  "front axle torque": torque("wheels and tyres", { plausible: [20, 180], byPage: true, afterwards: "pump brake" }),
  "front axle pinch bolt torque": torque("wheels and tyres", { plausible: [5, 60], byPage: true }),
  "rear axle torque": torque("wheels and tyres", { plausible: [25, 300], byPage: true, afterwards: "slack again" }),
  "rear axle pinch bolt torque": torque("wheels and tyres", { plausible: [5, 80], byPage: true }),

  "engine oil with filter": volume("engine", [0.2, 10], { beside: "engine oil grade", fits: BURNS, typical: [1, 4.5], caution: "hot" }),
  "engine oil without filter": volume("engine", [0.2, 10], { beside: "engine oil grade", fits: BURNS, typical: [0.9, 4.2], caution: "hot" }),
  "engine oil dry": volume("engine", [0.2, 12], { beside: "engine oil grade", fits: BURNS, typical: [1.1, 5] }),
  "engine oil grade": words("engine", { fits: BURNS }),
  "oil filter": words("engine", { fits: BURNS }),
  "oil drain plug torque": torque("engine", { plausible: [5, 90], fits: BURNS, afterwards: "new washer" }),
  "oil filter torque": torque("engine", { plausible: [3, 50], fits: BURNS }),
  "intake valve clearance": length("engine", "value", [0.01, 1], { fits: VALVES, typical: [0.05, 0.25] }),
  "exhaust valve clearance": length("engine", "value", [0.01, 1], { fits: VALVES, typical: [0.08, 0.35] }),
  compression: {
    system: "engine",
    holds: "pressure",
    end: "value",
    unit: null,
    plausible: [300, 2500],
    under: ["engine", "rpm", "throttle"],
    fits: BURNS,
    caution: null,
  },
  "exhaust nut torque": torque("engine", { plausible: [5, 60], fits: BURNS }),
  "valve cover bolt torque": torque("engine", { plausible: [3, 35], fits: VALVES }),

  "idle speed": words("fuel and air", { fits: BURNS }),
  "throttle free play": length("fuel and air", "value", [0, 20], { fits: { throttle: ["cable"] }, typical: [2, 6], caution: "throttle" }),
  "fuel grade": words("fuel and air", { fits: BURNS, caution: "fuel" }),
  "fuel tank": volume("fuel and air", [0.5, 70], { fits: BURNS }),
  "fuel reserve": volume("fuel and air", [0.1, 20], { fits: BURNS }),
  "air filter": words("fuel and air", { fits: BURNS }),

  "spark plug": words("ignition and electrics", { fits: BURNS }),
  "spark plug gap": length("ignition and electrics", "value", [0.2, 2], { fits: BURNS, typical: [0.6, 1.1] }),
  "spark plug torque": torque("ignition and electrics", { plausible: [5, 45], fits: BURNS }),
  "points gap": length("ignition and electrics", "value", [0.1, 1], { fits: { ignition: ["points"] }, typical: [0.3, 0.4] }),
  "ignition timing": words("ignition and electrics", { fits: BURNS }),
  battery: words("ignition and electrics", { sizes: ["voltage"], fits: HAS_BATTERY, caution: "battery" }),
  "battery charging voltage": {
    ...{ system: "ignition and electrics", holds: "voltage", end: "value", unit: "V", plausible: [6, 16], fits: HAS_BATTERY, typical: [13.8, 14.8] },
    ...{ atRest: { from: 8.5, window: 13, figure: 13.5 }, under: ["engine", "rpm", "degrees"] },
    caution: "battery",
  },
  fuses: words("ignition and electrics"),
  "headlamp bulb": words("ignition and electrics", { sizes: ["voltage", "power"] }),
  "tail and brake bulb": words("ignition and electrics", { sizes: ["voltage", "power"] }),
  "indicator bulb": words("ignition and electrics", { sizes: ["voltage", "power"] }),

  "coolant amount": volume("cooling", [0.2, 10], { beside: "coolant kind", fits: LIQUID, caution: "hot" }),
  // °C: how much frost it must stand; a value further down is better.
  "coolant strength": {
    system: "cooling",
    holds: "temperature",
    end: "most",
    unit: "°C",
    plausible: [-70, 0],
    shares: COOLANT_SHARES,
    fits: LIQUID,
    typical: [-40, -25],
    caution: null,
  },
  "coolant kind": words("cooling", { fits: LIQUID }),

  "clutch free play": length("clutch and gearbox", "value", [0, 40], { fits: CABLE_CLUTCH, typical: [10, 20] }),
  "clutch fluid": words("clutch and gearbox", { fits: { clutch: ["hydraulic brake fluid", "hydraulic mineral oil"] }, caution: "brake fluid" }),
  "gearbox oil": volume("clutch and gearbox", [0.05, 6], { beside: "gearbox oil grade", caution: "hot" }),
  "gearbox oil grade": words("clutch and gearbox"),

  "chain slack": length("final drive", "value", [3, 90], { fits: CHAIN, stands: true, typical: [25, 40], caution: "moving chain" }),
  "chain size": words("final drive", { sizes: ["length"], fits: CHAIN }),
  "chain length limit": length("final drive", "most", [50, 3000], { fits: CHAIN, shares: CHAIN_SHARES, overPitches: true }),
  sprockets: words("final drive", { fits: CHAIN }),
  "front sprocket torque": torque("final drive", { plausible: [5, 300], fits: CHAIN }),
  "rear sprocket torque": torque("final drive", { plausible: [10, 200], fits: { finalDrive: ["chain", "belt"] } }),
  "belt deflection": length("final drive", "value", [1, 40], { fits: BELT, typical: [6, 14], atForce: true }),
  "shaft drive oil": volume("final drive", [0.02, 2], { beside: "shaft drive oil grade", fits: SHAFT, typical: [0.1, 0.3] }),
  "shaft drive oil grade": words("final drive", { fits: SHAFT }),
  "shaft drain plug torque": torque("final drive", { plausible: [5, 90], fits: SHAFT, afterwards: "new washer" }),

  "brake fluid": words("brakes", { fits: { brakeFluid: ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1", "mineral oil"] }, byPage: true, caution: "brake fluid" }),
  "front pad limit": length("brakes", "least", [0.3, 8], { fits: FRONT_DISC, byPage: true, caution: "brakes" }),
  "rear pad limit": length("brakes", "least", [0.3, 8], { fits: REAR_DISC, byPage: true, caution: "brakes" }),
  "front disc limit": length("brakes", "least", [1.5, 15], { fits: FRONT_DISC, byPage: true, caution: "brakes" }),
  "rear disc limit": length("brakes", "least", [1.5, 15], { fits: REAR_DISC, byPage: true, caution: "brakes" }),
  "front disc runout limit": length("brakes", "most", [0.05, 1], { fits: FRONT_DISC, byPage: true, typical: [0.1, 0.3], caution: "brakes" }),
  "rear disc runout limit": length("brakes", "most", [0.05, 1], { fits: REAR_DISC, byPage: true, typical: [0.1, 0.3], caution: "brakes" }),
  "front shoe limit": length("brakes", "least", [0.5, 8], { fits: { frontBrake: ["drum"] }, byPage: true, caution: "brakes" }),
  "rear shoe limit": length("brakes", "least", [0.5, 8], { fits: { rearBrake: ["drum"] }, byPage: true, caution: "brakes" }),
  "front drum limit": length("brakes", "most", [60, 330], { fits: { frontBrake: ["drum"] }, byPage: true, caution: "drum dust" }),
  "rear drum limit": length("brakes", "most", [60, 330], { fits: { rearBrake: ["drum"] }, byPage: true, caution: "drum dust" }),
  "front brake free play": length("brakes", "value", [0, 60], { byPage: true, caution: "brakes" }),
  "rear brake free play": length("brakes", "value", [0, 60], { byPage: true, caution: "brakes" }),
  "brake pedal height": length("brakes", "value", [-120, 150], { byPage: true, caution: "brakes" }),
  "front caliper bolt torque": torque("brakes", { plausible: [8, 90], fits: FRONT_DISC, byPage: true, afterwards: "pump brake" }),
  "rear caliper bolt torque": torque("brakes", { plausible: [8, 90], fits: REAR_DISC, byPage: true, afterwards: "pump brake" }),
  "brake pad pin torque": torque("brakes", { plausible: [1, 50], byPage: true, afterwards: "pump brake" }),
  "brake disc bolt torque": torque("brakes", { plausible: [5, 80], byPage: true }),
  "brake hose bolt torque": torque("brakes", { plausible: [5, 60], byPage: true, afterwards: "new washer" }),
  "bleed screw torque": torque("brakes", { plausible: [2, 25], byPage: true }),

  "steering stem torque": torque("steering and suspension", { plausible: [5, 250], afterwards: "turn steering", caution: "steering" }),
  "triple clamp pinch bolt torque": torque("steering and suspension", { plausible: [5, 70], caution: "steering" }),
  "handlebar clamp torque": torque("controls", { plausible: [3, 70], caution: "steering" }),
  "fork oil": volume("steering and suspension", [0.05, 2], { beside: "fork oil grade", unit: "mL", fits: { fork: ["telescopic", "upside-down"] } }),
  "fork oil grade": words("steering and suspension", { fits: { fork: ["telescopic", "upside-down"] } }),
  "fork oil height": length("steering and suspension", "value", [10, 500], { fits: { fork: ["telescopic", "upside-down"] } }),
  "front static sag": length("steering and suspension", "value", [0, 80], { byUse: true }),
  "rear static sag": length("steering and suspension", "value", [0, 80], { byUse: true }),
  "front rider sag": length("steering and suspension", "value", [5, 150], { byUse: true, typical: [30, 40] }),
  "rear rider sag": length("steering and suspension", "value", [5, 150], { byUse: true, typical: [30, 40] }),
  "rear spring preload": words("steering and suspension", { sizes: ["length"], byUse: true }),
  "swingarm pivot torque": torque("steering and suspension", { plausible: [10, 350] }),
  "shock bolt torque": torque("steering and suspension", { plausible: [8, 200], fits: { rearSuspension: ["linkage", "twin shock", "direct"] } }),
  "linkage bolt torque": torque("steering and suspension", { plausible: [8, 200], fits: { rearSuspension: ["linkage"] } }),
  "most load": { system: "frame and stands", holds: "mass", end: "most", unit: null, plausible: [50, 700], byPage: true, caution: "tyres" },
} as const satisfies Record<string, SpecKeyRow>;

export type SpecKey = keyof typeof ROWS;
export const SPEC_KEYS: Readonly<Record<SpecKey, SpecKeyRow>> = ROWS;
export const SPEC_KEY_NAMES = Object.keys(ROWS) as SpecKey[];

/** Is it a key of ours? */
export const isSpecKey = (key: string): key is SpecKey => key in ROWS;

type Ends = { readonly low: number | null; readonly high: number | null };

/** Does it say the other side of a limit, or a window where the limit has one side; or leave an end open where both are wanted? */
export function isOtherEnd(key: SpecKey, { low, high }: Ends): boolean {
  const { end, bothEnds } = SPEC_KEYS[key];
  if (end === "value") return bothEnds === true && (low === null || high === null);
  return end === "least" ? high !== null : low !== null;
}

/** What of two ends is on the side that a limit has; both of what is a value. */
export function onItsSide(key: SpecKey, { low, high }: Ends): Ends {
  const { end } = SPEC_KEYS[key];
  return { low: end === "most" ? null : low, high: end === "least" ? null : high };
}
