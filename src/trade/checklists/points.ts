// Everything that a checklist can ask for, once. The lists beside this file say which, and in which order.
// A fail of what stops, steers or carries the bike is not to be ridden on; what can wait is watched.

import { type PointRow, pointsOf } from "./row.ts";

const COMBUSTION = { fuel: ["carburettor", "injection"] } as const;
const HYDRAULIC = { brakeFluid: ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1", "mineral oil"] } as const;
const BATTERY = { battery: ["flooded", "AGM", "gel", "lithium"] } as const;
const SPRUNG = { rearSuspension: ["linkage", "twin shock", "direct"] } as const;
const LOOKED = "inspected, within limits";
const STOP = "do not ride";
/** A month out of use: when fuel, battery and what lives in sheds have had their time. Common practice. */
const STOOD = 30;

const POINT_ROWS = {
  // What stands before the key is turned.
  nests: { engine: "cold", onFail: "watch", stoodDays: STOOD },
  "stopped-openings": { engine: "cold", fits: COMBUSTION, onFail: STOP, undoes: "stop-openings" },
  leaks: { onFail: STOP, caution: "fuel" },
  "fuel-lines": { fits: COMBUSTION, undoes: "carburettor-bowls", onFail: STOP, caution: "fuel", records: { "fuel-hoses.inspect": LOOKED } },
  "fuel-stale": { engine: "cold", fits: COMBUSTION, onFail: "watch", caution: "fuel", stoodDays: STOOD },
  wiring: { onFail: "watch" },
  odometer: { onFail: "watch", measures: [{ kind: "odometer", place: null }] },

  // Battery.
  "battery-fitted": { fits: BATTERY, undoes: "battery-at-rest", onFail: "watch", caution: "battery" },
  "battery-vent": { fits: { battery: ["flooded"] }, onFail: "watch", caution: "battery" },
  "battery-level": { fits: { battery: ["flooded"] }, position: "upright", onFail: "watch", caution: "battery", records: { "battery-acid.top-up": LOOKED } },
  "battery-frozen": { fits: { battery: ["flooded", "AGM", "gel"] }, engine: "cold", onFail: STOP, caution: "battery", frost: true, stoodDays: STOOD },
  "battery-volts": {
    fits: BATTERY,
    engine: "cold",
    onFail: "watch",
    caution: "battery",
    measures: [{ kind: "battery voltage", place: null }],
    records: { "battery.test": LOOKED },
  },
  "charging-volts": {
    fits: { ...BATTERY, ...COMBUSTION },
    engine: "warm",
    heat: "runs",
    onFail: "watch",
    caution: "battery",
    measures: [{ kind: "charging voltage", place: null }],
  },
  "traction-charge": { fits: { fuel: ["electric"] }, onFail: "watch", caution: "battery" },

  // Tyres and wheels.
  "tyre-pressures": {
    engine: "cold",
    undoes: "tyres-at-rest",
    vital: "tyres",
    onFail: STOP,
    caution: "tyres",
    measures: [
      { kind: "cold pressure", place: "front" },
      { kind: "cold pressure", place: "rear" },
    ],
  },
  "sidecar-wheel": {
    fits: { sidecar: ["fitted"] },
    vital: "tyres",
    onFail: STOP,
    caution: "tyres",
    measures: [{ kind: "cold pressure", place: "sidecar", optional: true }],
  },
  "tyre-condition": { vital: "tyres", onFail: STOP, caution: "tyres" },
  "tyre-tread": {
    vital: "tyres",
    onFail: STOP,
    caution: "tyres",
    measures: [
      { kind: "tread", place: "front" },
      { kind: "tread", place: "rear" },
    ],
  },
  "tyre-age": { onFail: "watch", caution: "tyres" },
  spokes: { fits: { wheels: ["wire-spoked"] }, onFail: STOP, records: { "spokes.check": LOOKED } },
  "cast-rims": { fits: { wheels: ["cast"] }, onFail: STOP },
  "rim-runout": { position: "weight off", onFail: STOP, caution: "lifting", source: "T-CLOCS pre-ride inspection sheet: run-out no more than 5 mm" },
  "wheel-bearings": { position: "weight off", onFail: STOP, caution: "lifting", records: { "wheel-bearings.inspect": LOOKED } },
  "wheel-seals": { onFail: "watch" },
  "wheels-turn": { position: "weight off", vital: "brakes", onFail: STOP, caution: "lifting" },

  // Brakes.
  "brake-fluid": { fits: HYDRAULIC, position: "upright", vital: "brakes", onFail: STOP, caution: "brake fluid", records: { "brake-fluid.inspect": LOOKED } },
  "brake-feel": { vital: "brakes", onFail: STOP, caution: "brakes" },
  "brake-hold": { vital: "brakes", onFail: STOP, caution: "brakes" },
  "brake-hoses": { fits: HYDRAULIC, vital: "brakes", onFail: STOP, caution: "brakes", records: { "brake-hoses.inspect": LOOKED } },
  "front-pads": {
    fits: { frontBrake: ["disc"] },
    vital: "brakes",
    onFail: STOP,
    caution: "brakes",
    measures: [
      { kind: "pad thickness", place: "front left", optional: true },
      { kind: "pad thickness", place: "front right", optional: true },
    ],
  },
  "rear-pads": {
    fits: { rearBrake: ["disc"] },
    vital: "brakes",
    onFail: STOP,
    caution: "brakes",
    measures: [{ kind: "pad thickness", place: "rear", optional: true }],
  },
  "front-shoes": { fits: { frontBrake: ["drum"] }, vital: "brakes", onFail: STOP, caution: "drum dust" },
  "rear-shoes": { fits: { rearBrake: ["drum"] }, vital: "brakes", onFail: STOP, caution: "drum dust" },
  "front-brake-cable": { fits: { frontBrake: ["drum"] }, vital: "brakes", onFail: STOP, caution: "drum brakes" },
  "abs-lamp": { fits: { abs: ["fitted"] }, onFail: STOP, caution: "brakes" },

  // At the bars.
  handlebars: { vital: "steering", onFail: STOP, caution: "steering" },
  "full-lock": { vital: "steering", onFail: STOP, caution: "steering" },
  "steering-head": { position: "weight off", vital: "steering", onFail: STOP, caution: "steering", records: { "steering-head.inspect": LOOKED } },
  levers: { onFail: "watch" },
  "throttle-cable": { fits: { throttle: ["cable"] }, onFail: STOP, caution: "throttle", records: { "throttle-cable.adjust": LOOKED } },
  "throttle-grip": { fits: { throttle: ["by-wire"] }, onFail: STOP, caution: "throttle", records: { "throttle-grip.test": LOOKED } },
  "throttle-running": { fits: COMBUSTION, engine: "warm", heat: "runs", vital: "steering", onFail: STOP, caution: "throttle" },
  "clutch-cable": { fits: { clutch: ["cable"] }, onFail: "watch", records: { "clutch-free-play.adjust": LOOKED } },
  "clutch-fluid": { fits: { clutch: ["hydraulic brake fluid", "hydraulic mineral oil"] }, position: "upright", onFail: "watch", caution: "brake fluid" },
  mirrors: { onFail: "watch" },

  // Lights.
  headlamp: { onFail: STOP },
  "tail-and-brake-light": { onFail: STOP },
  indicators: { onFail: "watch" },
  horn: { onFail: "watch" },
  "lenses-and-reflectors": { onFail: "watch" },

  // Levels.
  "engine-oil-level": { fits: COMBUSTION, position: "upright", onFail: STOP, records: { "engine-oil.inspect": LOOKED } },
  "gearbox-oil-level": { planHas: "gearbox-oil.replace", position: "upright", onFail: "watch" },
  "coolant-level": { fits: { cooling: ["liquid"] }, engine: "cold", position: "upright", onFail: STOP, caution: "hot", records: { "coolant.inspect": LOOKED } },
  "coolant-strength": {
    fits: { cooling: ["liquid"] },
    engine: "cold",
    onFail: "watch",
    caution: "hot",
    frost: true,
    measures: [{ kind: "coolant strength", place: null }],
  },
  "fuel-level": { fits: COMBUSTION, onFail: "watch", caution: "fuel" },

  // Chassis and drive.
  frame: { onFail: STOP },
  fasteners: { onFail: STOP, caution: "check tightness" },
  fork: { onFail: STOP },
  "rear-suspension": { fits: SPRUNG, onFail: "watch" },
  swingarm: { fits: SPRUNG, position: "weight off", onFail: STOP, caution: "lifting" },
  chain: {
    fits: { finalDrive: ["chain"] },
    onFail: STOP,
    caution: "moving chain",
    measures: [{ kind: "chain slack", place: null, optional: true }],
    records: { "chain.adjust": LOOKED },
  },
  belt: { fits: { finalDrive: ["belt"] }, onFail: STOP, records: { "drive-belt.inspect": LOOKED } },
  "shaft-drive": { fits: { finalDrive: ["shaft"] }, position: "upright", onFail: STOP, records: { "shaft-oil.inspect": LOOKED } },
  "side-stand": { onFail: "watch" },
  "side-stand-switch": { heat: "runs", onFail: "watch", records: { "side-stand.test": LOOKED } },
  "centre-stand": { fits: { centreStand: ["fitted"] }, onFail: "watch", caution: "lifting" },

  // Engine running, and the first ride.
  start: { fits: COMBUSTION, heat: "runs", onFail: "watch", caution: "start" },
  "idle-and-leaks": { fits: COMBUSTION, heat: "runs", onFail: STOP, caution: "hot" },
  "stop-switch": { fits: COMBUSTION, heat: "runs", onFail: "watch" },
  "first-miles": { heat: "runs", onFail: STOP, caution: "first ride" },
  "look-again": { engine: "warm", heat: "runs", onFail: "watch", caution: "hot" },

  // Lay-up.
  "wash-and-dry": { engine: "cold", onFail: "watch", caution: "brakes" },
  "fuel-stabiliser": { fits: COMBUSTION, heat: "runs", onFail: "watch", caution: "fuel" },
  "carburettor-bowls": { fits: { fuel: ["carburettor"] }, heat: "runs", onFail: "watch", caution: "fuel" },
  "oil-before-rest": { fits: COMBUSTION, engine: "warm", position: "upright", onFail: "watch", caution: "hot", records: { "engine-oil.replace": "replaced" } },
  "chain-before-rest": { fits: { finalDrive: ["chain"] }, onFail: "watch", caution: "moving chain", records: { "chain.lubricate": "done" } },
  "cool-down": { fits: COMBUSTION, heat: "cools", onFail: "watch", caution: "hot" },
  "bare-metal": { onFail: "watch", caution: "brakes" },
  "tyres-at-rest": {
    engine: "cold",
    onFail: "watch",
    caution: "lifting",
    measures: [
      { kind: "cold pressure", place: "front" },
      { kind: "cold pressure", place: "rear" },
    ],
  },
  "battery-at-rest": { fits: BATTERY, onFail: "watch", caution: "battery", measures: [{ kind: "battery voltage", place: null }] },
  "stop-openings": { fits: COMBUSTION, engine: "cold", onFail: "watch", caution: "hot" },
  cover: { engine: "cold", onFail: "watch" },
  "no-short-starts": { onFail: "watch" },

  // Before a trip.
  "load-settings": { onFail: "watch", caution: "tyres" },
  luggage: { onFail: STOP },
  "tools-and-spares": { onFail: "watch" },
  papers: { onFail: "watch" },

  // Buying a used one.
  "numbers-and-papers": { onFail: STOP },
  history: { onFail: "watch" },
  recalls: { onFail: "watch" },
  keys: { onFail: "watch" },
  "engine-is-cold": { engine: "cold", onFail: "watch" },
  "signs-of-a-fall": { onFail: "watch" },
  smoke: { fits: COMBUSTION, heat: "runs", onFail: "watch", caution: "hot" },
  "test-ride": { heat: "runs", onFail: STOP, caution: "first ride" },

  // After a fall.
  "rider-first": { onFail: STOP },
  "helmet-and-kit": { onFail: STOP },
  "engine-off": { onFail: STOP, caution: "fuel" },
  "fork-and-wheel-in-line": { vital: "steering", onFail: STOP, caution: "steering" },
  "footrests-and-pedals": { vital: "brakes", onFail: STOP },
  "lain-on-its-side": { fits: COMBUSTION, onFail: STOP, caution: "hot" },
  "covers-and-radiators": { onFail: STOP, caution: "hot" },
  "roll-first": { vital: "brakes", onFail: STOP, caution: "first ride" },
} as const satisfies Record<string, PointRow>;

export type PointKey = keyof typeof POINT_ROWS;
export const POINTS = pointsOf<PointKey>(POINT_ROWS);

/** The points that look at the tyres themselves. */
export const TYRE_POINTS = ["tyre-pressures", "sidecar-wheel", "tyre-condition", "tyre-tread", "tyre-age"] as const satisfies readonly PointKey[];
