// The kinds of bike a member picks from, and what a bike of each kind is usually fitted with. Common practice; changed per bike.

import type { Equipment } from "../core/equipment.ts";
import type { STARTERS } from "./plans.ts";

export type KindId = keyof typeof STARTERS;

const USUAL = {
  finalDrive: "chain",
  wheels: "cast",
  tyres: "tubeless",
  cooling: "liquid",
  throttle: "cable",
  clutch: "cable",
  frontBrake: "disc",
  rearBrake: "disc",
  abs: "fitted",
  brakeFluid: "DOT 4",
  fuel: "injection",
  ignition: "electronic",
  valveGear: "shim",
  camDrive: "chain",
  battery: "AGM",
  fork: "telescopic",
  rearSuspension: "linkage",
  centreStand: "none",
  sidecar: "none",
} as const satisfies Equipment;

/** What small and old machines lack. */
const SIMPLE = { cooling: "air", abs: "none" } as const satisfies Partial<Equipment>;

/** What brakes with a disc are entered with until their owner says what the cap has. Common practice. */
export const USUAL_BRAKE_FLUID = USUAL.brakeFluid;

export const KINDS: Readonly<Record<KindId, { readonly equipment: Equipment }>> = {
  "chain-drive twin": { equipment: USUAL },
  "belt-drive cruiser": {
    equipment: {
      ...USUAL,
      finalDrive: "belt",
      cooling: "air",
      throttle: "by-wire",
      valveGear: "hydraulic",
      camDrive: "gear or pushrod",
      rearSuspension: "twin shock",
    },
  },
  "shaft-drive tourer": {
    equipment: {
      ...USUAL,
      finalDrive: "shaft",
      throttle: "by-wire",
      clutch: "hydraulic mineral oil",
      fork: "other",
      rearSuspension: "direct",
      centreStand: "fitted",
    },
  },
  "dual-purpose single": {
    equipment: { ...USUAL, wheels: "wire-spoked", tyres: "tubed", cooling: "air", abs: "none", fuel: "carburettor", valveGear: "screw", battery: "flooded" },
  },
  "four-cylinder sport tourer": { equipment: { ...USUAL, fork: "upside-down", clutch: "hydraulic brake fluid", centreStand: "fitted" } },
  "small commuter": {
    equipment: { ...USUAL, ...SIMPLE, rearBrake: "drum", valveGear: "screw", rearSuspension: "twin shock", centreStand: "fitted" },
  },
  classic: {
    equipment: {
      ...{ ...USUAL, ...SIMPLE, wheels: "wire-spoked", tyres: "tubed", frontBrake: "drum", rearBrake: "drum", brakeFluid: "none", fuel: "carburettor" },
      ...{ ignition: "points", valveGear: "screw", battery: "flooded", rearSuspension: "twin shock", centreStand: "fitted" },
    },
  },
  electric: {
    equipment: {
      ...{ ...USUAL, finalDrive: "belt", cooling: "air", throttle: "by-wire", clutch: "automatic", fuel: "electric", valveGear: "none", camDrive: "none" },
      ...{ battery: "lithium", rearSuspension: "direct" },
    },
  },
  scooter: {
    equipment: {
      ...{ ...USUAL, finalDrive: "variator", clutch: "automatic", valveGear: "screw", rearSuspension: "twin shock", centreStand: "fitted" },
    },
  },
  "sidecar outfit": {
    equipment: {
      ...{ ...USUAL, finalDrive: "shaft", wheels: "wire-spoked", tyres: "tubed", cooling: "air", abs: "none", fuel: "carburettor", valveGear: "screw" },
      ...{ battery: "flooded", rearSuspension: "twin shock", sidecar: "fitted" },
    },
  },
};
