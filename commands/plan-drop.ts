// /plan drop: an item that this bike does not need, or one dropped before and wanted again.

import { given } from "../src/usecases/given.ts";
import { dropItem, type PlanEdited } from "../src/usecases/plan-edits.ts";
import { define, shapeOf } from "./define.ts";
import { planEdited, sayEdited } from "./replies/plan-edits.ts";

export const planDrop = define({
  name: "plan",
  sub: "drop",
  options: {
    item: { takes: "text", required: true, complete: "item" },
    back: { takes: "flag", required: false },
    why: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<PlanEdited>(planEdited),
  run: (ctx, { item, back, why, bike }) => dropItem(ctx, { item, ...given({ back, why, bike }) }),
  say: sayEdited,
});
