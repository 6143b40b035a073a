// Before a ride: a walk round the bike, then the bars, the levels, the key, the engine.

import { listed } from "./listed.ts";

export const PRE_RIDE = listed("pre-ride", {
  "from a step back": ["nests", "leaks", "fuel-lines", "frame", "fasteners", "wiring", "battery-fitted", "battery-vent", "battery-volts"],
  "tyres and wheels": ["tyre-pressures", "tyre-condition", "spokes", "cast-rims", "sidecar-wheel", "wheel-seals"],
  brakes: ["brake-fluid", "brake-hoses", "front-pads", "rear-pads", "front-shoes", "rear-shoes", "front-brake-cable", "brake-feel", "brake-hold"],
  "at the bars": ["handlebars", "full-lock", "throttle-cable", "throttle-grip", "clutch-cable", "clutch-fluid", "levers", "mirrors"],
  levels: ["engine-oil-level", "gearbox-oil-level", "coolant-level", "fuel-level", "traction-charge"],
  "springs and drive": ["fork", "rear-suspension", "chain", "belt", "shaft-drive", "side-stand", "centre-stand"],
  "wheels off the ground": ["rim-runout", "wheel-bearings", "wheels-turn", "swingarm", "steering-head"],
  "key on": ["headlamp", "tail-and-brake-light", "indicators", "horn", "lenses-and-reflectors"],
  "engine running": ["start", "side-stand-switch", "stop-switch", "throttle-running"],
});
