// Which units are meant when a question names none, or names them by a bare word.

import type { Dimension, UnitId } from "./units.ts";

/** What a figure is turned into when no unit is asked for. */
export const USUAL: Readonly<Record<Dimension, readonly (readonly [readonly UnitId[], readonly UnitId[]])[]>> = {
  distance: [
    [["mi"], ["km"]],
    [["km"], ["mi"]],
  ],
  length: [
    [["in", "ft", "thou", "1/32 in", "1/64 in"], ["mm"]],
    [["mm", "cm", "m"], ["in"]],
  ],
  pressure: [
    [["psi"], ["bar", "kPa"]],
    [["bar", "kPa", "kgf/cm²"], ["psi"]],
    [
      ["inHg", "mmHg"],
      ["kPa", "mmHg", "inHg"],
    ],
  ],
  torque: [
    [["in-lb"], ["N·m", "ft-lb"]],
    [["ft-lb"], ["N·m"]],
    [["N·m"], ["ft-lb", "in-lb"]],
    [
      ["kgf·m", "kgf·cm"],
      ["N·m", "ft-lb"],
    ],
  ],
  temperature: [
    [["°F", "K"], ["°C"]],
    [["°C"], ["°F"]],
  ],
  "temperature difference": [
    [["Δ°F"], ["Δ°C"]],
    [["Δ°C"], ["Δ°F"]],
  ],
  volume: [
    [["US gal", "US qt", "US pt", "imp gal", "imp qt", "imp pt"], ["L"]],
    [["US fl oz", "imp fl oz"], ["mL"]],
    [["L"], ["US qt", "imp pt"]],
    [["mL"], ["US fl oz", "imp fl oz"]],
  ],
  mass: [
    [["lb"], ["kg"]],
    [["oz"], ["g"]],
    [["kg"], ["lb"]],
    [["g"], ["oz"]],
  ],
  speed: [
    [["mph"], ["km/h"]],
    [["km/h", "m/s"], ["mph"]],
  ],
  power: [
    [["hp", "PS"], ["kW"]],
    [["kW"], ["hp", "PS"]],
  ],
  consumption: [
    [["mpg US", "mpg imp", "km/L"], ["L/100 km"]],
    [["L/100 km"], ["mpg US", "mpg imp"]],
  ],
  voltage: [
    [["mV"], ["V"]],
    [["V"], ["mV"]],
  ],
  "engine hours": [[["h"], ["h"]]],
  angle: [
    [["turn"], ["°"]],
    [["°"], ["turn"]],
  ],
  force: [
    [["lbf"], ["N"]],
    [["N", "kgf"], ["lbf"]],
  ],
};

/** What "metric" asks for. */
export const METRIC: Partial<Record<Dimension, readonly UnitId[]>> = {
  length: ["mm"],
  pressure: ["bar"],
  torque: ["N·m"],
  volume: ["L"],
  mass: ["kg"],
  speed: ["km/h"],
  distance: ["km"],
  temperature: ["°C"],
  power: ["kW"],
  force: ["N"],
  consumption: ["L/100 km"],
};
/** What "imperial" asks for. */
export const INCH: Partial<Record<Dimension, readonly UnitId[]>> = {
  length: ["in"],
  pressure: ["psi"],
  torque: ["ft-lb"],
  mass: ["lb"],
  speed: ["mph"],
  distance: ["mi"],
  temperature: ["°F"],
  power: ["hp"],
  force: ["lbf"],
};

/**
 * Units that a bare word stands for where another thing is asked for: 24 "lb" of torque are foot-pounds or inch-pounds, 36 "lb" in a tyre are psi.
 * Where two are named, twelve or more apart, they are asked about and never taken.
 */
export const ALSO: Partial<Record<UnitId, Partial<Record<Dimension, readonly UnitId[]>>>> = {
  lb: { torque: ["ft-lb", "in-lb"], pressure: ["psi"], force: ["lbf"] },
  lbf: { torque: ["ft-lb", "in-lb"], pressure: ["psi"], mass: ["lb"] },
  kg: { torque: ["kgf·m", "kgf·cm"], pressure: ["kgf/cm²"], force: ["kgf"] },
  kgf: { torque: ["kgf·m", "kgf·cm"], pressure: ["kgf/cm²"], mass: ["kg"] },
  oz: { volume: ["US fl oz", "imp fl oz"] },
  "°C": { "temperature difference": ["Δ°C"] },
  "°F": { "temperature difference": ["Δ°F"] },
  "°": { "temperature difference": ["Δ°C", "Δ°F"] },
};
