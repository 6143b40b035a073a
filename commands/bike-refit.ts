// /bike refit: a part that came off and goes on again, with the distance that it had.

import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import { PARTS_AGAIN, refit } from "../src/usecases/refit.ts";
import { refused } from "../src/usecases/refusals.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { messageOutcome } from "./shapes.ts";

/** All at once they go on and off as sets, by a command of their own. */
const TYRES = "tyres";

export const bikeRefit = define({
  name: "bike",
  sub: "refit",
  options: {
    part: {
      takes: "choice",
      required: true,
      choices: [...PARTS_AGAIN, TYRES],
      also: {
        [TYRES]: ["tyre", "tire", "tires", "both tyres", "wheels"],
        "front tyre": ["front tire", "tyre front", "tire front"],
        "rear tyre": ["rear tire", "back tyre", "back tire", "tyre rear", "tire rear"],
        "chain and sprockets": ["chain"],
        "front brake pads": ["front pads"],
        "rear brake pads": ["rear pads"],
        "rear brake disc": ["rear disc"],
        "front brake discs": ["front disc", "front discs"],
      },
    },
    at: { takes: "text", required: true },
    piece: { takes: "text", required: false },
    on: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: async (ctx, { part, at, piece, on, bike }) =>
    part === TYRES ? refused({ why: "tyres", because: "by set", set: "" }) : refit(ctx, { part, at, ...given({ piece, on, bike }) }),
  say: sayOutcome,
});
