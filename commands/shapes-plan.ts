// Shapes of the outcomes of plans, as scripts find them under `data`.

import { z } from "zod";
import { distance, dueBike, dueLine, planOffers, unit } from "./shapes.ts";

export const columns = z.object({ miles: z.number().nullable(), km: z.number().nullable() });
export const interval = columns.extend({ months: z.number().nullable(), hours: z.number().nullable() });
export const repeat = z.looseObject({ by: z.enum(["interval", "nth mark", "nth time", "mark list"]) });
export const planShown = z.object({
  bike: z.string(),
  nickname: z.string(),
  planName: z.string(),
  column: unit,
  dropped: z.array(z.string()),
  offers: planOffers,
  lines: z.array(
    z.object({
      item: z.string(),
      name: z.string(),
      system: z.string(),
      anchor: z.enum(["marks", "last done"]),
      first: interval.nullable(),
      repeat,
      before: repeat.nullable(),
    }),
  ),
});
const under = z.object({
  ...{ repeat, first: interval.nullable(), anchor: z.enum(["marks", "last done"]), shortened: z.record(z.string(), interval) },
  ...{ marks: z.array(distance), due: dueLine },
});
export const intervalChange = z.object({
  bike: dueBike.omit({ dues: true, first: true }),
  column: unit,
  item: z.string(),
  name: z.string(),
  was: under,
  will: under,
  draft: z.string().nullable(),
  why: z.string().nullable(),
  rev: z.number().int(),
  saved: z.boolean(),
});
