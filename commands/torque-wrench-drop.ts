// /torque wrench-drop: a wrench off the member's list.

import { z } from "zod";
import { dropWrench } from "../src/usecases/wrenches.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

export const torqueWrenchDrop = define({
  name: "torque",
  sub: "wrench-drop",
  options: { name: { takes: "text", required: true } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<{ readonly name: string }>(z.object({ name: z.string() })),
  run: (ctx, input) => dropWrench(ctx, input),
  say: ({ name }, words) => said([words.torque.dropped(name)]),
});
