// Messages as riders type them in a hurry: short forms, slips, figures in words, what is alike at the other end; and talk that looks like them.

import type { Case } from "./corpus.ts";

const c = (say: string, ...means: readonly string[]): Case => ({ say, means });

/** Of Heron alone. */
export const SHORTHAND: readonly Case[] = [
  c("5 thirty-seconds on the front, 4 on the back", "tread/front 5 1/32 in@Heron", "tread/rear 4 1/32 in@Heron"),
  c("5/32 on the front, 4/32 on the back", "tread/front 0.15625 in@Heron", "tread/rear 0.125 in@Heron"),
  c("5/32nds front, 4 rear", "tread/front 0.15625 in@Heron", "tread/rear 4 ?@Heron ?unit"),
  c("rear is 6 thirty-seconds", "tread/rear 6 1/32 in@Heron"),
  c("4/32nds left on the rear", "tread/rear 0.125 in@Heron"),
  c("pads inner 2.8 outer 3.6 on the front caliper", 'pad thickness/front 2.8 mm@Heron {"side":"inner"}', 'pad thickness/front 3.6 mm@Heron {"side":"outer"}'),
  c("front caliper pads inner 3 outer 2.5", 'pad thickness/front 3 mm@Heron {"side":"inner"}', 'pad thickness/front 2.5 mm@Heron {"side":"outer"}'),
  c("rear res. just above min", "brake fluid level/rear 3 level@Heron"),
  c("front res full", "brake fluid level/front 4 level@Heron"),
  c("rear reservoir between the lines", "brake fluid level/rear 3 level@Heron"),
  c("front res just below max", "brake fluid level/front 3 level@Heron"),
  c("topped up the rear brake fluid abt 10ml", "W brake-fluid.inspect=topped up (10 mL)@Heron"),
  c("topped up the front brake fluid approx 15 ml", "W brake-fluid.inspect=topped up (15 mL)@Heron"),
  c("did the oil lst sunday, 14,730ish", "odometer 14730 mi@Heron on 2026-11-22", "W engine-oil.replace=done on 2026-11-22@Heron"),
  c("14,730ish on the clock", "odometer 14730 mi@Heron"),
  c("oil changed, 14,730-ish", "odometer 14730 mi@Heron", "W engine-oil.replace=replaced@Heron"),
  c("front 34ish rear 38ish", "cold pressure/front 34 psi@Heron", "cold pressure/rear 38 psi@Heron"),
  c("air filter cleaned not changed", "W ?=done@Heron ?item"),
  c("chain lubed not adjusted", "W chain.lubricate=done@Heron"),
  c("MOT passed at 14,850 advisory front tyre close to limit", "odometer 14850 mi@Heron"),
  c("MOT passed at 14,850, advisory: front tyre close to limit", "odometer 14850 mi@Heron"),
  c("got it through the MOT at 14,850", "odometer 14850 mi@Heron"),
  c("14,63o mi", "odometer 14630 mi@Heron ?number"),
  c("heron 14,63O", "odometer 14630 mi@Heron ?number"),
  c("odo 146oo", "odometer 14600 mi@Heron ?number"),
  c("coolant 50/50 changed at 14,600 3 weeks ago", "W coolant.replace=replaced at 14600 on 2026-11-04@Heron"),
  c("changed the coolant 50/50 at 14,600", "W coolant.replace=replaced at 14600@Heron"),
  c("chain kinked 2 stiff links", "D chain “chain kinked 2 stiff links”@Heron"),
  c("rear pads nearly gone, 1.5mm", "pad thickness/rear 1.5 mm@Heron", "D worn rear pads “rear pads nearly gone”@Heron"),
  c("rear pads almost finished, 1.2 mm", "pad thickness/rear 1.2 mm@Heron", "D worn rear pads “rear pads almost finished”@Heron"),
  c("bat 12.6 rested", 'battery voltage 12.6 V@Heron {"conditions":["rested"]}'),
];

/** Of three bikes. */
export const SHORTHAND_ON_THREE: readonly Case[] = [
  c("bramble bat 12.55 heron bat 12.71", "battery voltage 12.55 V@Bramble", "battery voltage 12.71 V@Heron"),
  c("Bramble's on 8700 now, heron hasn't moved", "odometer 8700 km@Bramble"),
];

/** None of it is logged. */
export const SHORTHAND_TALK: readonly string[] = [
  "change the 10o bulb",
  "nearly changed the oil",
  "the oil was almost changed",
  "nearly gone half four, see you there",
  "almost finished my tea",
  "oil not changed",
  "not lubed the chain",
  "just above min wage at work",
  "thirty-seconds to go",
  "room 14o2",
  "see you about 5ish",
  "ride starts 10ish, 30 miles or so",
  "a bat flew past at 12.5 mph",
  "MOT next week at 9",
  "MOT due at 15,000",
  "mixing it 50/50 with water",
  "the res. hotel is full",
];
