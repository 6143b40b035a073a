// /torque wrench-add: a torque wrench or a pressure gauge of the member's.

import { z } from "zod";
import { DRIVES, WRENCH_KINDS, type Wrench } from "../src/core/torque/wrench.ts";
import { given } from "../src/usecases/given.ts";
import { listWrench } from "../src/usecases/wrenches.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { wrench } from "./shapes-tools.ts";

export const torqueWrenchAdd = define({
  name: "torque",
  sub: "wrench-add",
  options: {
    name: { takes: "text", required: true },
    range: { takes: "text", required: true },
    step: { takes: "text", required: true },
    accuracy: { takes: "text", required: false },
    drive: { takes: "choice", required: false, choices: DRIVES },
    type: { takes: "choice", required: false, choices: WRENCH_KINDS },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<{ readonly wrench: Wrench }>(z.object({ wrench })),
  run: (ctx, { name, range, step, accuracy, drive, type }) => listWrench(ctx, { name, range, step, ...given({ accuracy, drive, type }) }),
  say: (out, words) => said([words.torque.listed(out.wrench)]),
});
