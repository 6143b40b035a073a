// /torque set: which wrench, and where to set it.

import { given } from "../src/usecases/given.ts";
import { type SetAnswer, setTorque } from "../src/usecases/torque.ts";
import { define, shapeOf } from "./define.ts";
import { drawTorque, sayTorque } from "./replies/torque.ts";
import { torqueSet } from "./shapes-tools.ts";

export const torqueSetCommand = define({
  name: "torque",
  sub: "set",
  options: {
    target: { takes: "text", required: true },
    adapter: { takes: "text", required: false },
    lever: { takes: "text", required: false },
    angle: { takes: "text", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<SetAnswer>(torqueSet),
  run: (ctx, { target, adapter, lever, angle }) => setTorque(ctx, { target, ...given({ adapter, lever, angle }) }),
  say: sayTorque,
  draw: drawTorque,
});
