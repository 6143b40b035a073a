// /plan share: a plan as the group's for its make and model; in place of another only by a press.

import { given } from "../src/usecases/given.ts";
import { type PlanShared, sharePlan } from "../src/usecases/plan-share.ts";
import { define, shapeOf } from "./define.ts";
import { planShared, sayShared } from "./replies/plan-edits.ts";

export const planShare = define({
  name: "plan",
  sub: "share",
  options: { manual: { takes: "text", required: true }, bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "shared",
  data: shapeOf<PlanShared>(planShared),
  run: (ctx, { manual, bike }) => sharePlan(ctx, { manual, ...given({ bike }) }),
  say: sayShared,
});
