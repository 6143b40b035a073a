// Batteries of 12 V: resting volts by chemistry, what freezes when, how fast they lose charge, what the charging circuit should show.

import type { RestTable } from "../core/battery/rest.ts";
import type { Limit } from "../core/judgement/verdict.ts";
import { toCanonical } from "../core/quantity/units.ts";

export type Chemistry = "flooded" | "AGM" | "gel" | "lithium";

/** Common practice: charge a lead-acid battery that rests at 12.4 V or less, since it then sulphates. */
const CHARGE_LEAD: Limit = { min: 12.4, max: null, near: 0.1, source: "common practice" };

/** Common practice: full and rested a lead-acid battery of 12 V shows 12.6 to 12.9 V by its kind; a meter may be off by a tenth. */
const MOST_LEAD = 13;

/** AGM and gel: typical figures from memory; makers differ by about 0.1 V. */
const VALVE_REGULATED: RestTable = {
  points: [
    { volts: 12.8, charge: 1 },
    { volts: 12.55, charge: 0.75 },
    { volts: 12.25, charge: 0.5 },
    { volts: 12, charge: 0.25 },
    { volts: 11.75, charge: 0 },
  ],
  unsure: null,
  limit: { ...CHARGE_LEAD, min: 12.5 },
  most: MOST_LEAD,
  typical: true,
  source: "typical figures, from memory; makers differ by about 0.1 V",
};

export const REST_TABLES = {
  flooded: {
    points: [
      { volts: 12.65, charge: 1 },
      { volts: 12.45, charge: 0.75 },
      { volts: 12.24, charge: 0.5 },
      { volts: 12.06, charge: 0.25 },
      { volts: 11.89, charge: 0 },
    ],
    unsure: null,
    limit: CHARGE_LEAD,
    most: MOST_LEAD,
    source: "Battery Council International table, 12 V at rest, 80 °F",
  },
  AGM: VALVE_REGULATED,
  gel: VALVE_REGULATED,
  // Charts of lithium iron phosphate disagree by 10 to 20 points of charge on the flat part, so no share is said there.
  lithium: {
    points: [
      { volts: 13.6, charge: 0.99 },
      { volts: 13.4, charge: 0.9 },
      { volts: 12.8, charge: 0.2 },
      { volts: 12, charge: 0.1 },
      { volts: 10, charge: 0 },
    ],
    unsure: [12.8, 13.4],
    limit: { min: 12.8, max: null, near: 0.1, source: "published charts of four lithium iron phosphate cells put 12.8 V at a fifth of the charge or less" },
    // The charts end at 13.6 V; makers and meters differ by a tenth each.
    most: 13.8,
    source: "published charts of lithium iron phosphate",
  },
} as const satisfies Record<Chemistry, RestTable>;

/** Hours without charge or load before resting volts mean something. Source: common practice, six hours or more. */
export const RESTED_HOURS = 6;

/** Specific gravity by share of charge. Source: Battery Council International table, 80 °F. */
export const GRAVITY = [
  { x: 1, y: 1.265 },
  { x: 0.75, y: 1.225 },
  { x: 0.5, y: 1.19 },
  { x: 0.25, y: 1.155 },
  { x: 0, y: 1.12 },
] as const;

/** Freezing point in °C by specific gravity. Source: US Army TM 5-1185, table III, and OD 1002 (printed in °F: 32, 19, 5, -16, -62, -90). A much-copied other table puts Celsius figures in the Fahrenheit column. */
export const FREEZING = [
  { x: 1, y: toCanonical(32, "°F") },
  { x: 1.1, y: toCanonical(19, "°F") },
  { x: 1.15, y: toCanonical(5, "°F") },
  { x: 1.2, y: toCanonical(-16, "°F") },
  { x: 1.25, y: toCanonical(-62, "°F") },
  { x: 1.28, y: toCanonical(-90, "°F") },
] as const;

/** Volts lost a day while it stands connected. Common practice: lead-acid loses some 3 to 10 % of its charge a month, more with a clock or an alarm. */
export const LOST_A_DAY: Readonly<Record<Chemistry, { readonly mean: number; readonly sd: number }>> = {
  flooded: { mean: 0.0035, sd: 0.003 },
  AGM: { mean: 0.0025, sd: 0.0025 },
  gel: { mean: 0.0025, sd: 0.0025 },
  lithium: { mean: 0.001, sd: 0.0015 },
};

/** Volts at rest that rise by more were charged meanwhile: a gauge and the weather make less. Common practice. */
export const CHARGED_BY = 0.1;

/** At the battery with the engine at the revolutions the manual names. Common practice, where the manual's own window is not known; lithium makers ask for 14.6 V at most. */
export const CHARGING: Readonly<Record<Chemistry, Limit>> = {
  flooded: { min: 13.5, max: 15, near: 0.2, source: "common practice" },
  AGM: { min: 13.5, max: 14.8, near: 0.2, source: "common practice" },
  gel: { min: 13.5, max: 14.5, near: 0.1, source: "common practice" },
  lithium: { min: 13.6, max: 14.6, near: 0.1, source: "common practice" },
};

/** Days at rest after which a battery in lay-up wants its charge looked at. Common practice; a maintenance charger left on makes it needless, and the maker has the last word. */
export const CHARGE_DAYS = { flooded: 30, AGM: 60, gel: 60, lithium: 90 } as const satisfies Record<Chemistry, number>;

/** Days from a reading by which a battery that stands is charged, however slowly its volts fall. Common practice: makers ask for a charge in storage every three months of a flooded one, every six of AGM and gel. */
export const CHARGE_LATEST = { flooded: 90, AGM: 180, gel: 180 } as const satisfies Record<Exclude<Chemistry, "lithium">, number>;

/** Days after which a charge is asked for again of a battery that was read too low. Common practice: a lead-acid one left so for months stays weak. */
export const LOW_AGAIN = 28;

/** Revolutions a minute below which low volts say nothing of the charging circuit: idling it may rest below its window. Common practice; manuals name 2,500 to 5,000. */
export const CHARGING_RPM = 2000;

/** Share of the revolutions that a charging figure is printed for, at which it is as good as those. A tachometer is read no finer: common practice. */
export const NO_SLOWER = 0.9;

/** Volts at rest below which a battery of 12 V is more than flat. Common practice: a lead-acid battery that stays some 2 V low has lost one of its six cells; four lithium iron phosphate cells below 2.5 V each may be harmed for good. */
export const MORE_THAN_FLAT: Readonly<Record<Chemistry, number>> = { flooded: 11, AGM: 11, gel: 11, lithium: 10 };

/** Volts at rest at or below which it may as well be a battery of 6 V, which no table here is for. Three cells, full: 6.4 V. */
export const SIX_VOLTS = 7;

/** Volts by which a workshop meter may be off. Common practice: some 0.5 % and a digit of 15 V. */
export const METER_OFF = 0.1;

/** Volts with the engine running at or below which they are those of a circuit of 6 V: a battery of 12 V shows more even when nothing charges it. Common practice: 6 V is charged with some 6.8 to 7.5 V. */
export const SIX_VOLTS_CHARGING = 8;

/** Air within so many °C of where its acid freezes, or below that, may have frozen it: volts and thermometers are no nearer. Common practice. */
export const FREEZES_NEAR = 3;
