// Hydraulic fluids by the class on the cap. Boiling points are the least that the standard allows, dry and with 3.70 % of water by weight in the reference fluid.

import type { FluidClass } from "../core/fluid/mixing.ts";

const STANDARD = "49 CFR 571.116 S5.1.1 and S5.1.2";

export const FLUID_CLASSES = {
  "DOT 3": { base: "glycol", dry: 205, wet: 140, months: 24, source: `${STANDARD}; change: common practice` },
  "DOT 4": { base: "glycol", dry: 230, wet: 155, months: 24, source: `${STANDARD}; change: common practice` },
  // The standard has no row of its own for 5.1: it is the label of a fluid without silicone that meets the limits of DOT 5.
  "DOT 5.1": { base: "glycol", dry: 260, wet: 180, months: 24, source: `${STANDARD}; change: common practice` },
  "DOT 5": { base: "silicone", dry: 260, wet: 180, months: 48, source: `${STANDARD}; change: common practice` },
  "mineral oil": { base: "mineral oil", dry: null, wet: null, months: 24, source: "common practice; the bike maker's own fluid" },
} as const satisfies Record<string, FluidClass>;

/**
 * Per cent of water by weight from which brake fluid is changed whatever its age. Common practice; the standard wets the fluid that it boils once more to about 3.7 %.
 * Source of that: 49 CFR 571.116 S6.2, by the humidified reference fluid. Silicone and mineral oil take up none.
 */
export const MOST_WATER = { percent: 3, source: "common practice; 49 CFR 571.116 tests fluid as wet at about 3.7 %" } as const;

/**
 * What riders put in by mistake and no hydraulic circuit takes, whatever is in there. Oils swell the rubber that brake fluid leaves alone; water boils and rusts.
 * Source: 49 CFR 571.116 S5.1 asks of a brake fluid what none of these meets; which rubber they spoil: common practice.
 */
export const STRANGE_FLUIDS = {
  "engine oil": "petroleum",
  "gear oil": "petroleum",
  "fork oil": "petroleum",
  "automatic transmission fluid": "petroleum",
  "power steering fluid": "petroleum",
  "penetrating oil": "petroleum",
  "cooking oil": "petroleum",
  oil: "petroleum",
  petrol: "petroleum",
  diesel: "petroleum",
  "brake cleaner": "petroleum",
  water: "water",
  coolant: "water",
  "washer fluid": "water",
} as const satisfies Record<string, "petroleum" | "water">;

export type StrangeFluidName = keyof typeof STRANGE_FLUIDS;

/** What starter plans have: the age of the class that most bikes are filled with. */
export const USUAL_MONTHS: number = FLUID_CLASSES["DOT 4"].months;

export type FluidClassName = keyof typeof FLUID_CLASSES;
