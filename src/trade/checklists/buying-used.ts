// Buying a used one: papers first, then cold, then running, then a ride if the seller agrees.

import { listed } from "./listed.ts";

export const BUYING_USED = listed("buying used", {
  "papers first": ["numbers-and-papers", "history", "recalls", "keys"],
  "cold, on its stand": ["engine-is-cold", "leaks", "fuel-lines", "signs-of-a-fall", "frame", "engine-oil-level", "coolant-level", "belt"],
  "tyres and wheels": ["tyre-condition", "tyre-tread", "tyre-age", "spokes", "cast-rims"],
  brakes: ["brake-fluid", "brake-hoses", "front-pads", "rear-pads", "front-shoes", "rear-shoes", "brake-feel"],
  "at the bars": ["handlebars", "full-lock", "throttle-cable", "throttle-grip", "clutch-cable", "clutch-fluid", "levers"],
  "springs and drive": ["fork", "rear-suspension", "chain", "shaft-drive"],
  "wheels off the ground": ["wheel-bearings", "swingarm", "steering-head"],
  "key on": ["battery-volts", "headlamp", "tail-and-brake-light", "indicators", "horn"],
  "engine running": ["start", "smoke", "charging-volts"],
  "on the road": ["brake-hold", "abs-lamp", "test-ride", "look-again"],
});
