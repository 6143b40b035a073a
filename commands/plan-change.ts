// /plan change: an interval, a list of services or what a use shortens, shown beside what is in force before it is saved.

import { CONDITIONS } from "../src/core/plan/plan.ts";
import { given } from "../src/usecases/given.ts";
import { COUNTED_FROM, type IntervalChange, proposeInterval } from "../src/usecases/plan-change.ts";
import { define, shapeOf } from "./define.ts";
import { sayChange } from "./replies/plan.ts";
import { intervalChange } from "./shapes-plan.ts";

export const planChange = define({
  name: "plan",
  sub: "change",
  options: {
    item: { takes: "text", required: true, complete: "item" },
    every: { takes: "text", required: false },
    marks: { takes: "text", required: false },
    counted: { takes: "choice", required: false, choices: COUNTED_FROM },
    when: { takes: "choice", required: false, choices: CONDITIONS },
    why: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<IntervalChange>(intervalChange),
  run: (ctx, { item, ...more }) => proposeInterval(ctx, { item, ...given(more) }),
  say: sayChange,
});
