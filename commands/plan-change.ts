// /plan change: an interval of one's own, shown beside the one in force before it is saved.

import { given } from "../src/usecases/given.ts";
import { type IntervalChange, proposeInterval } from "../src/usecases/plan.ts";
import { define, shapeOf } from "./define.ts";
import { sayChange } from "./replies/plan.ts";
import { intervalChange } from "./shapes.ts";

export const planChange = define({
  name: "plan",
  sub: "change",
  options: {
    item: { takes: "text", required: true, complete: "item" },
    every: { takes: "text", required: true },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<IntervalChange>(intervalChange),
  run: (ctx, { item, every, bike }) => proposeInterval(ctx, { item, every, ...given({ bike }) }),
  say: sayChange,
});
