// /bike odometer: a new dial. The bike's own distance goes on; only the figure starts again.

import { z } from "zod";
import { type DialNoted, newDial } from "../src/usecases/change-bike.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { sayChanged } from "./replies/bikes.ts";
import { press } from "./replies/said.ts";
import { bikeShown, unit } from "./shapes.ts";

const oldDial = z.object({ figure: z.number(), unit, how: z.enum(["typed", "rolled over", "same distance", "last reading"]) });

export const bikeOdometer = define({
  name: "bike",
  sub: "odometer",
  options: {
    now: { takes: "text", required: true },
    last: { takes: "text", required: false },
    unit: { takes: "choice", required: false, choices: ["mi", "km"] },
    why: { takes: "choice", required: false, choices: ["replaced", "rolled over", "unit changed"] },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<DialNoted>(bikeShown.extend({ source: z.string(), replaced: z.boolean(), old: oldDial.nullable() })),
  run: (ctx, { now, last, unit, why, bike }) => newDial(ctx, { now, cause: why ?? "replaced", ...given({ last, unit, bike }) }),
  say: (bike, words) => {
    const changed = sayChanged(bike, words);
    const lines = [words.bikes.dialNoted(bike), ...changed.lines.slice(1)];
    return { ...changed, lines, actions: [press("undo", bike.source, words.readings.labels.undo), ...changed.actions] };
  },
});
