// /plan list: what is done to a bike, and how often.

import { given } from "../src/usecases/given.ts";
import { type PlanShown, showPlan } from "../src/usecases/plan.ts";
import { define, shapeOf } from "./define.ts";
import { sayPlan } from "./replies/plan.ts";
import { planShown } from "./shapes-plan.ts";

export const planList = define({
  name: "plan",
  sub: "list",
  options: { bike: { takes: "text", required: false, complete: "bike" }, share: { takes: "flag", required: false } },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<PlanShown>(planShown),
  run: (ctx, { bike }) => showPlan(ctx, given({ bike })),
  say: sayPlan,
});
