// One line of caution each, shown where the work can hurt.

import type { CautionKey } from "../../trade/cautions.ts";

export const ENGLISH_CAUTIONS = {
  brakes:
    "Brakes: keep pads, discs and linings free of oil, try them before riding, a disc brake pumped hard first, and have a licensed mechanic look if you are not sure.",
  "drum brakes":
    "Drum brakes: keep oil and grease off the linings, set the free play and try the brake before riding, and have a licensed mechanic look if you are not sure.",
  "brake fluid":
    "Brake fluid harms paint and eyes, and air in the line takes the brake away: use the type named on the cap, from a sealed bottle, and follow the maker's manual.",
  tyres: "Tyres: set pressures cold, to the maker's plate. Do not ride on cords, cuts or bulges.",
  lifting: "Lift only at the points the maker's manual names, and make sure the bike cannot tip before you reach under it.",
  fuel: "Fuel vapour burns: work in fresh air, engine cold, no flame or spark near.",
  battery: "Battery acid burns and the gas explodes: shield your eyes, no sparks, take the negative lead off first and put it on last.",
  "lithium battery":
    "A lithium battery burns when it is shorted, crushed or overcharged: no tools across its terminals, and one that is swollen, hot or leaking goes outdoors, away from anything that burns.",
  hot: "Hot oil and coolant scald: let the engine cool as the maker's manual says, and never open a hot radiator cap.",
  fasteners: "Use the torque in the maker's manual for that fastener; do not guess for brakes, axles and steering.",
  "check tightness":
    "A look, not a second tightening: threadlocked, split-pinned and stretch bolts are not turned. What is loose gets the torque in the maker's manual; do not guess for brakes, axles and steering.",
  "moving chain": "Never clean or oil a chain with the engine turning it: it takes fingers. Push the bike or turn the wheel by hand.",
  "moving belt": "Never reach for a belt with the engine turning it: it takes fingers. Push the bike or turn the wheel by hand.",
  steering: "Steering: play or a notch at the head is not to be ridden on. Support the front wheel off the ground safely before you check.",
  throttle: "The throttle must snap shut by itself at every bar position, off and running, before you ride.",
  "drum dust":
    "Drum dust is not to be breathed, in old linings least of all: never blow it out, wipe it up wet. Set the free play and try the brake before riding.",
  start: "Start it in the open, out of gear, front brake held: exhaust gas kills indoors, and the exhaust is hot at once.",
  "first ride":
    "Try both brakes first, discs pumped until they are firm, then ride gently and near home. Where braking or steering was opened, have a licensed mechanic look before you do.",
  "high voltage":
    "High voltage kills: look only, touch nothing behind orange covers or cables, switch off first as the maker's manual says, and leave the rest to a trained workshop.",
} as const satisfies Record<CautionKey, string>;
