// /bike date: the days of a bike's papers, told in time.

import { z } from "zod";
import { type BikeDates, bikeDate as noteDate } from "../src/usecases/bike-dates.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { localDate } from "./shapes.ts";

const dated = z.object({ what: z.string(), on: localDate });

export const bikeDate = define({
  name: "bike",
  sub: "date",
  options: {
    what: { takes: "text", required: false },
    on: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<BikeDates>(
    z.object({
      bikes: z.array(z.object({ bike: z.string(), nickname: z.string(), dates: z.array(dated) })),
      changed: z.object({ nickname: z.string(), what: z.string(), on: localDate.nullable() }).nullable(),
    }),
  ),
  run: (ctx, { what, on, bike }) => noteDate(ctx, given({ what, on, bike })),
  say: ({ bikes, changed }, words) => said([...(changed === null ? [] : [words.season.dateChanged(changed)]), ...words.season.dates(bikes)]),
});
