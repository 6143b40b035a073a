// /bike refit: a part that came off and goes on again, with the distance that it had.

import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import { PARTS_AGAIN, refit } from "../src/usecases/refit.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { messageOutcome } from "./shapes.ts";

export const bikeRefit = define({
  name: "bike",
  sub: "refit",
  options: {
    part: { takes: "choice", required: true, choices: PARTS_AGAIN },
    at: { takes: "text", required: true },
    piece: { takes: "text", required: false },
    on: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: (ctx, { part, at, piece, on, bike }) => refit(ctx, { part, at, ...given({ piece, on, bike }) }),
  say: sayOutcome,
});
