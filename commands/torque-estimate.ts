// /torque estimate: a figure from the fastener, where nothing depends on it and no manual has one.

import { z } from "zod";
import { type Estimated, estimateTorque, GRADE_NAMES, MATERIALS, THREAD_STATES } from "../src/usecases/fasteners.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

export const torqueEstimate = define({
  name: "torque",
  sub: "estimate",
  options: {
    thread: { takes: "text", required: true },
    grade: { takes: "choice", required: true, choices: GRADE_NAMES },
    threads: { takes: "choice", required: true, choices: THREAD_STATES },
    joint: { takes: "text", required: true },
    into: { takes: "choice", required: true, choices: MATERIALS },
    engaged: { takes: "text", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Estimated>(
    z.object({
      ...{ likely: z.number(), from: z.number(), to: z.number(), upTo: z.number(), preload: z.number(), area: z.number(), atWorst: z.number() },
      ...{ holeAtWorst: z.number().nullable(), limitedByHole: z.boolean(), into: z.enum(MATERIALS) },
      ...{ thread: z.string(), grade: z.string(), threads: z.string() },
    }),
  ),
  run: async (ctx, { thread, grade, threads, joint, into, engaged }) => estimateTorque(ctx, { thread, grade, threads, joint, into, ...given({ engaged }) }),
  say: (e, { torque }) =>
    said([torque.estimate(e), torque.ends(e), ...(e.limitedByHole ? [torque.byHole()] : []), torque.settles()], { caution: torque.estimateCaution }),
});
