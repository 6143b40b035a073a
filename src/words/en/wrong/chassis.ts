// What people type when something is wrong with the chassis, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { BROKEN, FEELS_ODD, LEAK, LOOSE, NO_PLAY } from "./things.ts";

export const ENGLISH_CHASSIS_WRONG = {
  "swingarm bearing": [
    {
      things: ["swingarm", "swing arm", "swingarm bearing", "swingarm bearings", "swingarm pivot", "swingarm bushes"],
      signs: ["has play", "play", "loose", "worn", "notchy", "seized", "shot"],
    },
    { things: ["play in the"], signs: ["swingarm", "swing arm", "swingarm bearings"] },
  ],
  steering: [
    {
      things: ["steering", "head bearings", "steering head", "headstock", "steering head bearings", "steering bearings"],
      signs: [
        ...["notchy", "loose", "clunking", "clunks", "has play", "play", "stiff", "catching", "shot", "heavy", "tight", "sticky", "binding", "vague"],
        ...["worn", "worn out", "has a notch", "notch in the middle", "had it", "toast", "knackered", "rough", "gritty", "seized"],
      ],
    },
    {
      things: ["steering", "handling"],
      signs: [...FEELS_ODD, "feels vague", "feels wobbly", "feels loose"],
      signLast: true,
    },
    { things: ["bars", "handlebars", "handlebar"], signs: ["loose", "bent", "wobbling", "shaking"] },
    {
      things: ["bike", "it"],
      signs: ["pulls to the left", "pulls to the right", "pulls left", "pulls right", "wanders", "weaves", "wobbles", "wobbling", "shakes its head"],
    },
    { things: ["wobble", "weave", "speed wobble"], signs: ["at", "under braking", "at speed"] },
  ],
  "fork leak": [
    {
      things: [
        ...["fork", "forks", "fork seal", "fork seals", "left fork", "right fork", "fork leg", "left fork seal", "right fork seal", "fork seal on the left"],
        ...["fork seal on the right", "fork oil"],
      ],
      signs: [
        ...LEAK,
        ...["blown", "gone", "wet", "oily", "misting", "had it", "toast", "shot", "knackered", "worn out", "done for", "finished", "past it", "losing oil"],
      ],
    },
  ],
  "shock leak": [
    {
      things: ["shock", "rear shock", "shocks", "damper"],
      signs: [...LEAK, "blown", "gone", "oily", "had it", "toast", "shot", "knackered", "worn out", "done for", "finished"],
    },
  ],
  "sticking throttle": [
    {
      things: ["throttle", "throttle grip"],
      signs: [
        ...[
          "sticking",
          "sticks",
          "stuck",
          "sticky",
          "not snapping back",
          "doesn't snap back",
          "does not snap back",
          "won't snap back",
          "will not snap back",
          "does not close",
          "doesn't close",
          "does not return",
          "won't return",
          "not closing",
          "won't close",
          "slow to close",
          "slow to snap back",
          "slow to return",
          "snaps back slowly",
          "snaps back slow",
          "returns slowly",
          "closes slowly",
        ],
        ...["doesn't return"],
      ],
    },
  ],
  cable: [
    {
      things: ["cable", "clutch cable", "throttle cable", "brake cable", "cables"],
      signs: ["frayed", "fraying", "snapped", "broken", "broke", "kinked", "sticking"],
    },
  ],
  mirror: [{ things: ["mirror", "left mirror", "right mirror", "mirrors"], signs: [...LOOSE, ...BROKEN, "smashed", "shattered"] }],
  "side stand": [
    {
      things: ["side stand", "sidestand", "kickstand", "centre stand", "center stand", "side stand switch", "side stand spring"],
      signs: [...LOOSE, ...BROKEN, "won't stay up", "drops", "dropping down", "not working", "sticking"],
    },
  ],
  fastener: [
    {
      things: ["bolt", "nut", "screw", "axle nut", "caliper bolt", "caliper bolts", "bolts", "rack bolt", "engine bolt", "drain bolt", "split pin"],
      signs: ["loose", "missing", "came loose", "fell out", "fallen out", "gone", "sheared", "stripped", "snapped"],
    },
  ],
  frame: [
    { things: ["frame", "swingarm", "subframe", "sub frame", "engine mount", "footpeg mount"], signs: ["cracked", "bent", "crack", "broken", "twisted"] },
  ],
  "no throttle play": [
    { things: ["throttle", "throttle cable", "throttle grip"], signs: ["no free play", "no freeplay", "no play", "has no free play", "has no freeplay"] },
    {
      things: ["throttle free play", "throttle freeplay", "throttle play", "throttle grip play"],
      signs: ["none", "zero", "none at all", "nil"],
      signLast: true,
    },
    { things: NO_PLAY, signs: ["throttle", "throttle grip", "throttle cable"] },
  ],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
