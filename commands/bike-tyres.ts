// /bike tyres: sets swapped back and forth, each with a distance of its own.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type TyresShown, tyres } from "../src/usecases/tyres.ts";
import { define, shapeOf } from "./define.ts";
import { press, said } from "./replies/said.ts";
import { distance, localDate, unit } from "./shapes.ts";

export const bikeTyres = define({
  name: "bike",
  sub: "tyres",
  options: {
    set: { takes: "text", required: false },
    off: { takes: "text", required: false },
    at: { takes: "text", required: false },
    on: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<TyresShown>(
    z.object({
      ...{ bike: z.string(), nickname: z.string(), unit, source: z.string().nullable() },
      sets: z.array(z.object({ set: z.string(), ridden: distance, fitted: z.boolean(), since: localDate })),
    }),
  ),
  run: (ctx, { set, off, at, on, bike }) => tyres(ctx, given({ set, off, at, on, bike })),
  say: (shown, words) =>
    shown.source === null
      ? said(words.bikes.tyreSets(shown, words.today))
      : said(words.bikes.tyreSets(shown, words.today), {
          caution: words.caution("tyres"),
          actions: [press("undo", shown.source, words.readings.labels.undo), press("show-due", shown.bike, words.bikes.labels.due)],
        }),
});
