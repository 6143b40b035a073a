// /torque wrench-list: the member's torque wrenches.

import { z } from "zod";
import type { Wrench } from "../src/core/torque/wrench.ts";
import { wrenchesOf } from "../src/usecases/wrenches.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { wrench } from "./shapes-tools.ts";

export const torqueWrenchList = define({
  name: "torque",
  sub: "wrench-list",
  options: {},
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<{ readonly wrenches: readonly Wrench[] }>(z.object({ wrenches: z.array(wrench) })),
  run: (ctx) => wrenchesOf(ctx),
  say: ({ wrenches }, words) => said(wrenches.length === 0 ? [words.torque.noneListed()] : wrenches.map(words.torque.inList)),
});
