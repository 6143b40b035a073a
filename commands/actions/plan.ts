// Saving a change of a plan, leaving it, and taking it back.

import { z } from "zod";
import type { BikeId, ItemKey } from "../../src/core/ids.ts";
import { type IntervalChange, proposeSooner, saveInterval, undoInterval } from "../../src/usecases/plan-change.ts";
import { handler, shapeOf } from "../define.ts";
import { sayChange } from "../replies/plan.ts";
import { said } from "../replies/said.ts";
import { intervalChange } from "../shapes-plan.ts";

const data = shapeOf<IntervalChange>(intervalChange);

/** "Look at it sooner": shown before it is saved, as every change of the plan is. */
export const lookSooner = handler<IntervalChange>({
  kind: "press",
  visibility: "private",
  data,
  run: (ctx, { subject }) => {
    const [bike = "", ...item] = subject.split(".");
    return proposeSooner(ctx, { bike: bike as BikeId, item: item.join(".") as ItemKey });
  },
  say: sayChange,
});
export const setInterval = handler<IntervalChange>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject, rev }) => saveInterval(ctx, { draft: subject, rev }),
  say: sayChange,
});
export const takeIntervalBack = handler<IntervalChange>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject, rev }) => undoInterval(ctx, { bike: subject as BikeId, rev }),
  say: sayChange,
});
export const leavePlan = handler<{ readonly left: true }>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf(z.object({ left: z.literal(true) })),
  run: async () => ({ is: "done", value: { left: true } }),
  say: (_out, words) => said([words.plan.left()]),
});
