// /torque stages: several fasteners, evenly.

import { z } from "zod";
import { type Stages, stagesFor } from "../src/usecases/fasteners.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { beforehand } from "./replies/torque.ts";
import { torqueTarget, wrench } from "./shapes-tools.ts";

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
      stages: z.array(z.object({ share: z.number(), low: z.number(), high: z.number(), setting: z.number().nullable(), lowOnScale: z.boolean() })),
      angle: z.number().nullable(),
      wrench: wrench.nullable(),
    }),
  ),
  run: (ctx, { target, fasteners, angle }) => stagesFor(ctx, { target, fasteners, ...given({ angle }) }),
  say: (s, { torque }) =>
    said(
      [
        torque.order(s.order),
        ...s.stages.map((stage) => torque.stage(stage, s.target.unit, s.wrench)),
        ...(s.angle === null ? [] : [torque.angle(s.angle)]),
        torque.check(),
        torque.settles(),
      ],
      { caution: beforehand(s.wrench) ? `${torque.caution} ${torque.slack}` : torque.caution },
    ),
});
