// /plan add: an item of the member's own.

import { ACTIONS, SYSTEMS } from "../src/core/plan/plan.ts";
import { given } from "../src/usecases/given.ts";
import { addItem, type PlanEdited } from "../src/usecases/plan-edits.ts";
import { define, shapeOf } from "./define.ts";
import { planEdited, sayEdited } from "./replies/plan-edits.ts";

export const planAdd = define({
  name: "plan",
  sub: "add",
  options: {
    called: { takes: "text", required: true },
    every: { takes: "text", required: true },
    action: { takes: "choice", required: false, choices: ACTIONS },
    system: { takes: "choice", required: false, choices: SYSTEMS },
    why: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<PlanEdited>(planEdited),
  run: (ctx, { called, every, action, system, why, bike }) => addItem(ctx, { called, every, ...given({ action, system, why, bike }) }),
  say: sayEdited,
});
