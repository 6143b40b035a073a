// Lay-up: putting a bike away. It is run while there is fuel and oil to be run through, left until cold, and then closed up.

import { listed } from "./listed.ts";

export const LAY_UP = listed("lay-up", {
  "clean and dry": ["wash-and-dry", "odometer"],
  "fuel and oil": ["fuel-stabiliser", "carburettor-bowls", "oil-before-rest", "traction-charge"],
  "while it cools": ["chain-before-rest", "cool-down"],
  "once it is cold": ["coolant-strength", "bare-metal", "tyres-at-rest", "battery-at-rest"],
  "closed up": ["stop-openings", "cover", "no-short-starts"],
});
