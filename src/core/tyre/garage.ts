// A tyre read in a garage before a ride that starts where it is colder. Gauge pressures in kPa.

import { toCanonical } from "../quantity/units.ts";
import type { AirSaid } from "../reading/detail.ts";
import { atTemperature, setIndoors } from "./pressure.ts";

/** What a tyre read in the garage shows where the ride starts, by the gas law; null where that is not told, or is no colder. */
export function shownOutside(read: number, air: AirSaid): number | null {
  if (air.road === null) return null;
  const [garage, road] = [celsius(air.garage), celsius(air.road)];
  return garage > road ? atTemperature(read, garage, road) : null;
}

/** What to set in the garage so that the pressure wanted is there where the ride starts; null where that is not told, or is over what is wanted by more than a share. @param over that share */
export function toSetIndoors(wanted: number | null, { garage, road }: AirSaid, over: number): number | null {
  if (wanted === null || road === null) return null;
  const set = setIndoors(wanted, celsius(garage), celsius(road));
  return set > wanted * (1 + over) ? null : set;
}

const celsius = ({ value, unit }: AirSaid["garage"]): number => toCanonical(value, unit);
