// /plan compare: the plan in force beside the starter plan as it is now, or the group's.

import { given } from "../src/usecases/given.ts";
import { type BaseChange, compareBase, PLANS_TO_COMPARE } from "../src/usecases/plan-base.ts";
import { define, shapeOf } from "./define.ts";
import { baseChange, sayBase } from "./replies/plan-edits.ts";

export const planCompare = define({
  name: "plan",
  sub: "compare",
  options: { with: { takes: "choice", required: true, choices: PLANS_TO_COMPARE }, bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<BaseChange>(baseChange),
  run: (ctx, { with: other, bike }) => compareBase(ctx, { with: other, ...given({ bike }) }),
  say: sayBase,
});
