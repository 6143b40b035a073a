// Out of storage: a bike that stood the winter, before its first ride. Nothing that wants it cold comes after the start.

import { listed } from "./listed.ts";

export const OUT_OF_STORAGE = listed("out of storage", {
  "before the key": ["nests", "leaks", "stopped-openings", "fuel-lines", "fuel-stale", "wiring", "odometer"],
  battery: ["battery-frozen", "battery-level", "battery-vent", "battery-volts", "battery-fitted"],
  "tyres and wheels": ["tyre-pressures", "tyre-condition", "tyre-tread", "tyre-age", "spokes", "cast-rims", "sidecar-wheel"],
  brakes: ["brake-fluid", "brake-hoses", "brake-feel", "front-pads", "rear-pads", "front-shoes", "rear-shoes", "front-brake-cable", "brake-hold"],
  "at the bars": ["handlebars", "full-lock", "throttle-cable", "throttle-grip", "clutch-cable", "clutch-fluid", "levers"],
  lights: ["headlamp", "tail-and-brake-light", "indicators", "horn", "mirrors"],
  levels: ["engine-oil-level", "gearbox-oil-level", "coolant-level", "coolant-strength", "fuel-level"],
  "chain, belt or shaft": ["chain", "belt", "shaft-drive", "fasteners"],
  "engine running": ["start", "idle-and-leaks", "charging-volts", "throttle-running", "side-stand-switch"],
  "wheels off the ground": ["wheels-turn", "wheel-bearings", "steering-head"],
  "the first ride": ["abs-lamp", "first-miles", "look-again"],
});
