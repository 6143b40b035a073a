// A battery put on its charger is work that no plan asks for: kept among a bike's work, since the day by which to charge again counts from it.

import type { ItemKey } from "../ids.ts";

/** The name under which a charge is kept; it is no item of a plan. */
export const CHARGED = "battery.charge" as ItemKey;
