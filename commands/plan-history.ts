// /plan history: every change of a plan, who made it, when and why.

import { given } from "../src/usecases/given.ts";
import { planHistory as historyOf, type PlanHistory } from "../src/usecases/plan-edits.ts";
import { define, shapeOf } from "./define.ts";
import { planHistoryShape, sayHistory } from "./replies/plan-edits.ts";

export const planHistory = define({
  name: "plan",
  sub: "history",
  options: { bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<PlanHistory>(planHistoryShape),
  run: (ctx, { bike }) => historyOf(ctx, given({ bike })),
  say: sayHistory,
});
