// What people type when something is wrong with the drive, in English.

import type { DefectRule } from "../../../core/reading/defect-words.ts";
import type { DefectKind } from "../../../trade/defects.ts";
import { BROKEN, CRACK_IN, DONE_FOR, NO_PLAY, TO_THE_BAR, WORN_BELT } from "./things.ts";

const BELT_TEETH = [
  ...["belt tooth", "belt teeth", "drive belt tooth", "drive belt teeth", "tooth of the belt", "tooth on the belt", "teeth of the belt", "teeth on the belt"],
];
const CHAIN = ["chain", "drive chain"];
const LOST = ["missing", "gone", "lost", "fell off", "fallen off", "came off", "fell out", "dropped off", "flew off"];
/** What holds a chain together. */
const LINK = [
  ...["chain master link clip", "master link clip", "chain master link", "master link", "chain clip", "chain link clip", "split link", "chain split link"],
  ...["connecting link", "link clip", "spring clip", "chain spring clip", "spring link", "chain joining link", "joining link", "soft link", "rivet link"],
  ...["chain rivet link", "chain link", "chain links", "chain plate", "chain plates", "chain side plate", "side plate", "link plate", "chain link plate"],
  ...["chain roller", "chain rollers", "chain pin", "chain pins", "chain rivet", "chain rivets", "clip on the chain", "clip of the chain", "chain clips"],
];

export const ENGLISH_DRIVE_WRONG = {
  "slipping clutch": [
    {
      things: ["clutch", "clutch plates"],
      signs: ["slipping", "slips", "slipped", "worn", "worn out", "burnt", "burnt out", "toast", "had it", "shot", "knackered"],
    },
  ],
  "soft clutch": [
    {
      things: ["clutch", "clutch lever", "clutch feel"],
      signs: [
        ...["spongy", "spongey", "soft", "mushy", "squishy", "no pressure", "lost pressure", "loses pressure", "pumps up", "comes to the bar", "sinks"],
        ...["comes back to the bar", "goes to the bar", "pulls to the bar", "comes to the grip", "comes back to the grip", "to the bar", "to the grip"],
        ...["goes limp", "limp", "floppy", ...TO_THE_BAR],
      ],
    },
  ],
  "no clutch play": [
    {
      things: ["clutch", "clutch lever", "clutch cable"],
      signs: ["no free play", "no freeplay", "no play", "has no free play", "has no freeplay", "has no play"],
    },
    { things: NO_PLAY, signs: ["clutch", "clutch lever", "clutch cable"] },
  ],
  "dragging clutch": [{ things: ["clutch"], signs: ["dragging", "drags", "not disengaging", "won't disengage", "sticking"] }],
  gearbox: [
    { things: ["gearbox", "transmission"], signs: ["jumping out of gear", "jumps out of gear", "crunching", "grinding", "noisy"] },
    { things: ["second", "third", "fourth", "fifth", "bike", "it", "gear"], signs: ["jumping out of gear", "jumps out of gear"] },
  ],
  "chain at its end": [
    {
      things: ["chain adjuster", "chain adjusters", "adjuster", "adjusters", "axle adjuster", "axle adjusters"],
      signs: [
        "at its end",
        "at the end",
        "at their end",
        "at the limit",
        ...["run out", "ran out", "maxed out", "run out of travel", "ran out of travel", "out of travel", "run out of adjustment", "ran out of adjustment"],
        ...["at the end of their travel", "at the end of the travel", "at the end of their range", "at the end of the range", "at end of travel"],
        ...["at the end of its adjustment", "at the end of their adjustment", "at max", "at the max", "all used up", "used up", "at the stop", "at the stops"],
        "all the way back",
        "out of adjustment",
        ...["at the end of its marks", "at the end of their marks", "at the end of the marks", "on the last mark", "at the last mark", "past the last mark"],
        ...["out of marks", "off the marks", "past the marks", "in the red", "in the red zone", "at the red mark", "at the end of its travel"],
        ...["at the end of the adjustment", "at the end of its range", "at the replace mark", "on the replace mark"],
      ],
    },
    {
      things: ["no adjustment left on the", "no adjustment left on", "no adjustment left in the", "no more adjustment on the"],
      signs: [...CHAIN, "adjusters"],
    },
    { things: ["chain", "drive chain"], signs: ["worn out", "stretched", "out of adjustment", "no adjustment left", "has no adjustment left"] },
    { things: ["chain", "drive chain"], signs: DONE_FOR, signLast: true },
  ],
  chain: [
    {
      things: CHAIN,
      signs: [
        ...["jumping", "jumps", "skipping", "skips", "broken", "snapped", "kinked", "kinked link", "kinked links", "stiff link", "stiff links", "tight spot"],
        ...["tight spots", "has a tight spot", "has tight spot", "has tight spots", "have a tight spot", "there's a tight spot", "rattles", "rattling"],
        ...["seized links", "seized link", "came off", "comes off", "fell off", "derailed", "clip missing", "cracked", "cracks", "has a crack", "frozen links"],
        ...[
          "missing a roller",
          "missing rollers",
          "missing a clip",
          "missing its clip",
          "missing a plate",
          "missing a link plate",
          "split",
          "is binding",
          "binding",
        ],
        ...["roller missing", "rollers missing", "o-rings missing", "missing o-rings", "bent link", "bent"],
      ],
    },
    {
      things: LINK,
      signs: [...BROKEN, ...LOST, "cracks", "has a crack", "loose", "stiff", "seized", "kinked", "worn", "broke", "coming off", "open", "the wrong way round"],
    },
    { things: [...CRACK_IN, "missing", "lost"], signs: [...LINK, "chain", "drive chain"] },
  ],
  "chain tension": [
    {
      things: CHAIN,
      signs: [
        "too tight",
        "very slack",
        "too slack",
        "all slack",
        "very loose",
        "hanging",
        "hangs low",
        "sagging badly",
        "sags badly",
        "loose",
        "flapping",
        ...["no slack", "no slack at all", "no slack left", "has no slack", "has no slack at all", "has no slack left", "zero slack", "bar tight"],
      ],
      signLast: true,
    },
    { things: ["no slack in", "no slack at all in", "no slack left in"], signs: CHAIN },
    { things: ["too tight", "very slack", "too slack", "very loose", "loose"], signs: CHAIN },
    { things: CHAIN, signs: ["is tight", "is very tight", "is way too tight", "is really tight"], signLast: true },
  ],
  "rusty chain": [{ things: CHAIN, signs: ["rusty", "rusted", "has rust", "rust", "all rust", "corroded", "gone rusty", "red with rust"] }],
  "worn sprockets": [
    {
      things: [
        "sprocket",
        "sprockets",
        "front sprocket",
        "rear sprocket",
        "back sprocket",
        "sprocket teeth",
        "sprocket nut",
        "sprocket bolts",
        "sprocket bolt",
      ],
      signs: [
        ...[
          "hooked",
          "worn",
          "worn out",
          "worn down",
          "shot",
          "toast",
          "knackered",
          "shark finned",
          "missing teeth",
          "missing a tooth",
          "sharp",
          "loose",
          "broken",
        ],
        ...["missing", "cracked", "gone", "has play", "wobbles", "teeth hooked", "teeth missing", "tooth missing", "came loose"],
      ],
    },
  ],
  "drive belt": [
    { things: ["drive belt", "belt", "final drive belt"], signs: WORN_BELT },
    { things: CRACK_IN, signs: ["drive belt", "belt"] },
    {
      things: ["drive belt", "final drive belt"],
      signs: ["too slack", "very slack", "far too slack", "way too slack", "too loose", "very loose", "hangs", "hanging"],
    },
    { things: ["drive belt", "belt", "final drive belt"], signs: ["jumps teeth", "jumped teeth", "jumping teeth", "jumped a tooth", "jumps a tooth"] },
    {
      things: BELT_TEETH,
      signs: ["missing", "gone", "sheared", "sheared off", "broken", "worn", "cracked", "damaged", "chipped", "stripped", "torn", "torn off", "broke off"],
    },
  ],
  "slack chain": [],
  "tight chain": [],
  "slack belt": [],
  "worn chain": [],
  "attacked clutch seals": [],
  "mixed clutch fluid": [],
} satisfies Partial<Readonly<Record<DefectKind, readonly DefectRule[]>>>;
