// The kinds of reading in English: one line each, its name and how to measure it; and the words of places, levels and conditions.

import type { ConditionRead } from "../../core/reading/detail.ts";
import type { Level, ReadingKind } from "../../core/reading/kinds.ts";

/** How to measure: common practice; the maker's manual has the last word. */
export const KIND_WORDS = {
  odometer: { name: "odometer", howTo: "Read the total figure on the dial, not the trip meter." },
  "engine hours": { name: "engine hours", howTo: "Read the hour meter with the ignition on." },
  "cold pressure": { name: "cold tyre pressure", howTo: "Before riding, at the temperature where the ride starts." },
  tread: { name: "tread depth", howTo: "In the main groove at the most worn point, not on a wear bar." },
  "tyre date code": { name: "tyre date code", howTo: "The last four digits behind DOT on the sidewall, week and year; they may stand on one side only." },
  "pad thickness": { name: "pad thickness", howTo: "The lining alone, without its backing plate, at its thinnest." },
  "shoe thickness": { name: "brake shoe lining", howTo: "With the wheel out: the lining alone at its thinnest, of riveted ones down to the rivet heads." },
  "drum diameter": {
    name: "drum diameter",
    howTo: "With the wheel out: across the inside where the shoes run, at its widest, beside the lip. Wipe the dust up wet, never blow.",
  },
  "disc thickness": { name: "disc thickness", howTo: "With a micrometer at the most worn spot, away from the outer edge." },
  "disc runout": {
    name: "disc runout",
    howTo: "With a dial gauge near the disc's edge, disc and hub clean, over one slow turn of the wheel: from its lowest to its highest.",
  },
  "chain slack": { name: "chain slack", howTo: "Midway along the lower run at the tightest spot, with the bike standing as its manual says." },
  "chain length": { name: "chain length", howTo: "Pulled taut, pin centre to pin centre; say over how many pitches." },
  "chain elongation": { name: "chain elongation", howTo: "With a chain wear gauge, chain pulled taut; or length over many pitches against new." },
  "belt deflection": { name: "belt deflection", howTo: "Midway along the lower run, at the force that the manual names, belt cold." },
  "battery voltage": { name: "battery voltage at rest", howTo: "Everything off, at least six hours after charging or riding." },
  "charging voltage": { name: "charging voltage", howTo: "Across the battery with the engine running; say at how many rpm." },
  "brake fluid level": { name: "brake fluid level", howTo: "At the reservoir's window, bars straight and the reservoir level." },
  "brake fluid boiling point": {
    name: "brake fluid boiling point",
    howTo: "With a tester that boils a little of it, in a sample drawn from the caliper if you can: the reservoir is the best of it.",
  },
  "brake fluid water": {
    name: "water in the brake fluid",
    howTo: "With a tester for the class of fluid that is in it; a boiling point is surer, and the reservoir is the best of it.",
  },
  "clutch fluid level": { name: "clutch fluid level", howTo: "At the reservoir's window, bars straight and the reservoir level." },
  "oil level": { name: "oil level", howTo: "Bike upright on level ground, engine as warm as its manual says." },
  "coolant level": { name: "coolant level", howTo: "At the overflow tank, engine cold. Never open a hot radiator." },
  "coolant strength": { name: "coolant frost protection", howTo: "With a coolant tester, engine cold. Never open a hot radiator." },
  "antifreeze share": {
    name: "share of antifreeze in the coolant",
    howTo: "With a refractometer, engine cold; its scale in °C is surer. Never open a hot radiator.",
  },
  "clutch free play": { name: "clutch free play", howTo: "At the end of the lever, before it begins to pull." },
  "throttle free play": { name: "throttle free play", howTo: "At the rim of the grip, in both directions of the bars." },
  "brake free play": { name: "brake free play", howTo: "At the end of the lever or the pedal, pressed by hand, before the brake begins to come on." },
  "brake pedal height": { name: "brake pedal height", howTo: "Pedal against the footrest: above it plus, below it minus." },
  "static sag": { name: "static sag", howTo: "Wheel off the ground against the bike standing by itself." },
  "rider sag": { name: "rider sag", howTo: "Wheel off the ground against the rider in full kit on the bike." },
  "valve clearance": {
    name: "valve clearance",
    howTo: "Engine stone cold, unless your manual's figure is for a warm one; feeler gauge with a light drag; one figure a valve.",
  },
  compression: { name: "compression", howTo: "Engine warm, throttle wide open, the same gauge each time." },
  "plug gap": { name: "spark plug gap", howTo: "With a wire gauge, without pressing on the centre electrode." },
  "points gap": { name: "contact breaker gap", howTo: "With a clean feeler gauge, the cam turned to where the points are widest apart." },
  fuel: { name: "fuel", howTo: "What the pump says, to the same mark each time. Engine off, no flame near." },
  "ambient temperature": { name: "air temperature", howTo: "In the shade, where the bike stands." },
} as const satisfies Record<ReadingKind, { name: string; howTo: string }>;

export const LEVEL_WORDS = {
  empty: "empty",
  below: "below the low mark",
  "low mark": "at the low mark",
  between: "between the marks",
  full: "at the full mark",
  above: "above the full mark",
} as const satisfies Record<Level, string>;

export const CONDITION_WORDS = {
  cold: "cold",
  warm: "warm",
  upright: "bike upright",
  "on the side stand": "on the side stand",
  rested: "rested",
  "at force": "at the force named",
  "throttle open": "throttle open",
  "under load": "under load",
  running: "engine running",
  idling: "idling",
  "under draw": "with current drawn",
  "on the charger": "on the charger",
  charged: "after charging",
  "with backing plate": "backing plate included",
  "bars straight": "bars straight",
} as const satisfies Record<ConditionRead, string>;
