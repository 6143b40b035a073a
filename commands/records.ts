// /records: look back at what was done, with a table to keep.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type LookBack, lookBack } from "../src/usecases/look-back.ts";
import { define, shapeOf } from "./define.ts";
import { sayRecords } from "./replies/records.ts";
import { defect, unit, work } from "./shapes.ts";

const bikeRecords = z.object({
  ...{ bike: z.string(), nickname: z.string(), unit, work: z.array(work.extend({ state: z.enum(["live", "withdrawn"]) })) },
  ...{ costs: z.array(z.object({ currency: z.string().nullable(), minor: z.number().int() })), defects: z.array(defect) },
});

export const records = define({
  name: "records",
  sub: null,
  options: {
    bike: { takes: "text", required: false, complete: "bike" },
    item: { takes: "text", required: false, complete: "item" },
    since: { takes: "text", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<LookBack>(z.object({ is: z.literal("records"), bikes: z.array(bikeRecords) })),
  run: (ctx, input) => lookBack(ctx, given(input)),
  say: sayRecords,
});
