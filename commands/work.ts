// /work: record a job in the member's own words.

import { HOW_WE_KNOW, OUTCOMES } from "../src/core/schedule/facts.ts";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import { recordWork } from "../src/usecases/record-work.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { OUTCOMES_ALSO } from "./replies/said.ts";
import { messageOutcome } from "./shapes.ts";

export const work = define({
  name: "work",
  sub: null,
  options: {
    did: { takes: "text", required: true, complete: "item" },
    bike: { takes: "text", required: false, complete: "bike" },
    at: { takes: "text", required: false },
    on: { takes: "text", required: false },
    how: { takes: "choice", required: false, choices: HOW_WE_KNOW },
    outcome: { takes: "choice", required: false, choices: OUTCOMES, also: OUTCOMES_ALSO },
    found: { takes: "text", required: false },
    left: { takes: "text", required: false },
    with: { takes: "text", required: false },
    cost: { takes: "text", required: false },
    by: { takes: "text", required: false },
    note: { takes: "text", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: (ctx, { did, ...more }) => recordWork(ctx, { did, ...given(more) }),
  say: sayOutcome,
});
