// Tyre pressure: judged cold, as it stands; corrected for temperature only where two temperatures are in play.
// At constant volume the absolute pressure goes with the absolute temperature (Gay-Lussac); a gauge shows the pressure above the air outside.
// Gauge pressures in kPa, temperatures in °C.

import type { Judgement, Limit } from "../judgement/verdict.ts";
import { fromCanonical } from "../quantity/units.ts";

/** Air at sea level. Source: ICAO Doc 7488/3, standard atmosphere: 101 325 Pa. */
export const SEA_LEVEL = 101.325;
/** What is added to °C for the absolute temperature. */
const KELVIN = fromCanonical(0, "K");

/** What a gauge shows at another temperature, the tyre left alone. @param air pressure of the air outside, in kPa */
export const atTemperature = (gauge: number, from: number, to: number, air = SEA_LEVEL): number => ((gauge + air) * (to + KELVIN)) / (from + KELVIN) - air;

/**
 * What to fill a tyre to in a garage before a ride that starts where it is colder, so that the pressure wanted is there at the start.
 * Never less than the pressure wanted: a garage that is no warmer than the road asks for no air to be let out, for a tyre is set cold where the ride starts.
 */
export const setIndoors = (wanted: number, garage: number, road: number, air = SEA_LEVEL): number =>
  garage > road ? atTemperature(wanted, road, garage, air) : wanted;

/** How pressure is judged: a row of trade/. `slack` kPa either way is as good as set; `low` and `high` are shares of the pressure wanted beyond which the bike is not ridden. */
export type PressureRule = { readonly slack: number; readonly low: number; readonly high: number; readonly source: string };

export type PressureJudgement = Judgement & {
  /** What to add where it stands, in kPa; negative: let out. Zero when it is as wanted. */
  readonly add: number;
};

/**
 * A cold pressure against the one wanted, or a window of them: within the slack it is good; beyond it, it is to be set now; far off, the bike is not ridden before it is set.
 * @param wanted the ends of what the manual asks for; equal for one figure
 */
export function judgePressure(gauge: number, wanted: { readonly min: number; readonly max: number }, rule: PressureRule, source: string): PressureJudgement {
  const limit: Limit = { min: wanted.min, max: wanted.max, near: null, source };
  const off = gauge < wanted.min ? gauge - wanted.min : gauge > wanted.max ? gauge - wanted.max : 0;
  if (Math.abs(off) <= rule.slack * (1 + 1e-9)) return { is: "within", side: null, room: null, limit, add: 0 };
  const side = off < 0 ? "low" : "high";
  const far = Math.abs(off) >= (off < 0 ? rule.low * wanted.min : rule.high * wanted.max) * (1 - 1e-9);
  return { is: far ? "beyond limit" : "at limit", side, room: -Math.abs(off), limit, add: -off };
}
