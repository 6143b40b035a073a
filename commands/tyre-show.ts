// /tyre show: the tyres of a bike judged, and how far they still go.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type TyreReport, tyresJudged } from "../src/usecases/judge-tyres.ts";
import { define, shapeOf } from "./define.ts";
import { sayTyres } from "./replies/tyres.ts";
import { defect, distance, judged, leakOn, tyreAged, unit, worn } from "./shapes.ts";

export const tyreShow = define({
  name: "tyre",
  sub: "show",
  options: { bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<TyreReport>(
    z.object({
      ...{
        bike: z.string(),
        nickname: z.string(),
        unit,
        judged: z.array(judged),
        worn: z.array(worn),
        aged: z.array(tyreAged),
        undated: z.array(z.enum(["front", "rear"])),
      },
      lasted: z.array(z.object({ place: z.enum(["front", "rear"]), went: distance })),
      defects: z.array(defect),
      leaks: z.array(leakOn),
    }),
  ),
  run: (ctx, { bike }) => tyresJudged(ctx, given({ bike })),
  say: sayTyres,
});
