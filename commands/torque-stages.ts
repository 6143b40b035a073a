// /torque stages: several fasteners, evenly.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type Stages, stagesFor } from "../src/usecases/torque.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { torqueTarget } from "./shapes.ts";

export const torqueStages = define({
  name: "torque",
  sub: "stages",
  options: { target: { takes: "text", required: true }, fasteners: { takes: "text", required: true }, angle: { takes: "text", required: false } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Stages>(
    z.object({
      target: torqueTarget,
      order: z.array(z.number().int()),
      stages: z.array(z.object({ share: z.number(), low: z.number(), high: z.number() })),
      angle: z.number().nullable(),
    }),
  ),
  run: async (ctx, { target, fasteners, angle }) => stagesFor(ctx, { target, fasteners, ...given({ angle }) }),
  say: (s, { torque }) =>
    said(
      [
        torque.order(s.order),
        ...s.stages.map(({ share, low, high }) => torque.stage(share, low, high, s.target.unit)),
        ...(s.angle === null ? [] : [torque.angle(s.angle)]),
        torque.check(),
      ],
      { caution: torque.caution },
    ),
});
