// After a fall: the rider first, then whatever could fail on the way home. When in doubt it is carried, not ridden.

import { listed } from "./listed.ts";

export const AFTER_A_FALL = listed("after a fall", {
  "you first": ["rider-first", "helmet-and-kit"],
  "before it is started": ["engine-off", "leaks", "fuel-lines", "covers-and-radiators", "lain-on-its-side"],
  steering: ["handlebars", "fork-and-wheel-in-line", "full-lock", "fork"],
  "brakes and controls": [
    "levers",
    "footrests-and-pedals",
    "brake-hoses",
    "brake-fluid",
    "front-brake-cable",
    "brake-feel",
    "throttle-cable",
    "throttle-grip",
    "clutch-cable",
  ],
  wheels: ["tyre-condition", "spokes", "cast-rims", "chain", "belt", "shaft-drive"],
  "frame and lights": ["frame", "fasteners", "side-stand", "headlamp", "tail-and-brake-light", "indicators", "mirrors"],
  "wheels off the ground": ["wheels-turn", "wheel-bearings", "steering-head"],
  "engine running": ["start", "idle-and-leaks", "throttle-running"],
  "on the move": ["roll-first", "abs-lamp", "look-again"],
});
