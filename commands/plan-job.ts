// /plan job: the service sheet that is being worked through, and an item of it ticked off.

import { z } from "zod";
import { OUTCOMES } from "../src/core/schedule/facts.ts";
import { given } from "../src/usecases/given.ts";
import { type JobShown, type JobWorked, showJob, tick } from "../src/usecases/jobs.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { define, shapeOf } from "./define.ts";
import { OUTCOMES_ALSO } from "./replies/said.ts";
import { sayJob, sayWorked } from "./replies/sheet.ts";
import { jobShown, jobWorked } from "./replies/sheet-shapes.ts";

type Out = JobShown | JobWorked;

export const planJob = define({
  name: "plan",
  sub: "job",
  options: {
    done: { takes: "text", required: false, complete: "item" },
    found: { takes: "text", required: false },
    left: { takes: "text", required: false },
    outcome: { takes: "choice", required: false, choices: OUTCOMES, also: OUTCOMES_ALSO },
    at: { takes: "text", required: false },
    on: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Out>(z.union([jobWorked, jobShown])),
  run: (ctx, { done, found, left, outcome, at, on, bike }): Promise<Result<Out>> =>
    done === undefined ? showJob(ctx, given({ bike })) : tick(ctx, { item: done, ...given({ found, left, outcome, at, on, bike }) }),
  say: (out, words) => ("outcome" in out ? sayWorked(out, words) : sayJob(out, words)),
});
