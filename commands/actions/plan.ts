// Saving a change of a plan, leaving it, and taking it back.

import { z } from "zod";
import type { BikeId, ItemKey } from "../../src/core/ids.ts";
import { type IntervalChange, saveInterval, undoInterval } from "../../src/usecases/plan.ts";
import { refused } from "../../src/usecases/refusals.ts";
import { handler, shapeOf } from "../define.ts";
import { sayChange } from "../replies/plan.ts";
import { said } from "../replies/said.ts";
import { intervalChange } from "../shapes.ts";

const data = shapeOf<IntervalChange>(intervalChange);

export const setInterval = handler<IntervalChange>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: async (ctx, { subject, rev }) => {
    const [bike = "", item = "", ...legs] = subject.split("/");
    const [miles = null, km = null, months = null, hours = null] = legs.map((leg) => (/^\d+$/u.test(leg) ? Number(leg) : null));
    if (miles === null && km === null && months === null && hours === null) return refused({ why: "gone" });
    return saveInterval(ctx, { bike: bike as BikeId, item: item as ItemKey, every: { miles, km, months, hours }, rev });
  },
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
