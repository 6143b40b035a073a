// /torque wrench-add: a torque wrench of the member's.

import { z } from "zod";
import type { Wrench } from "../src/core/torque/wrench.ts";
import { given } from "../src/usecases/given.ts";
import { listWrench } from "../src/usecases/torque.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { wrench } from "./shapes.ts";

export const torqueWrenchAdd = define({
  name: "torque",
  sub: "wrench-add",
  options: {
    name: { takes: "text", required: true },
    range: { takes: "text", required: true },
    step: { takes: "text", required: true },
    accuracy: { takes: "text", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<{ readonly wrench: Wrench }>(z.object({ wrench })),
  run: (ctx, { name, range, step, accuracy }) => listWrench(ctx, { name, range, step, ...given({ accuracy }) }),
  say: (out, words) => said([words.torque.listed(out.wrench)]),
});
