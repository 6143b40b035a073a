// Before a trip: what must last the way, measured, and what goes along.

import { listed } from "./listed.ts";

export const PRE_TRIP = listed("pre-trip", {
  "from a step back": ["odometer", "leaks", "fuel-lines", "frame", "fasteners", "battery-volts"],
  "tyres and wheels": ["tyre-pressures", "tyre-tread", "tyre-condition", "spokes", "cast-rims", "sidecar-wheel"],
  brakes: ["brake-fluid", "brake-hoses", "front-pads", "rear-pads", "front-shoes", "rear-shoes", "front-brake-cable", "brake-feel", "brake-hold"],
  "at the bars": ["handlebars", "full-lock", "throttle-cable", "throttle-grip", "clutch-cable", "clutch-fluid"],
  levels: ["engine-oil-level", "gearbox-oil-level", "coolant-level", "traction-charge"],
  "springs and drive": ["fork", "rear-suspension", "chain", "belt", "shaft-drive", "side-stand"],
  "wheels off the ground": ["wheel-bearings", "swingarm", "steering-head"],
  "key on": ["headlamp", "tail-and-brake-light", "indicators", "horn"],
  "load and papers": ["load-settings", "luggage", "tools-and-spares", "papers"],
});
