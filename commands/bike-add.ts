// /bike add: a bike in under a minute; the plan and what it is fitted with come with its kind.

import { z } from "zod";
import type { KindId } from "../src/trade/kinds.ts";
import { type Added, addBike } from "../src/usecases/add-bike.ts";
import { KIND_NAMES } from "../src/words/en/bikes.ts";
import { define, shapeOf } from "./define.ts";
import { historyForm } from "./replies/history.ts";
import { formButton, press, said } from "./replies/said.ts";
import { equipment, unit } from "./shapes.ts";

const KINDS = Object.keys(KIND_NAMES) as KindId[];

export const bikeAdd = define({
  name: "bike",
  sub: "add",
  options: {
    name: { takes: "text", required: true },
    kind: { takes: "choice", required: true, choices: KINDS },
    odometer: { takes: "text", required: true },
    unit: { takes: "choice", required: false, choices: ["mi", "km"] },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Added>(
    z.object({
      bike: z.string(),
      nickname: z.string(),
      kind: z.enum(KINDS),
      unit,
      figure: z.number(),
      equipment,
      items: z.number().int(),
      planName: z.string(),
      firstBike: z.boolean(),
      asks: z.array(z.object({ item: z.string(), called: z.string() })),
    }),
  ),
  run: (ctx, input) => addBike(ctx, input),
  say: (added, words) =>
    said(
      [
        words.bikes.added(added),
        words.bikes.fitted(added.equipment),
        words.bikes.planSource(),
        words.bikes.askHistory(),
        ...(added.firstBike ? [words.bikes.next(added.nickname)] : []),
      ],
      {
        actions: [
          formButton("history", added.bike, words.bikes.labels.history, historyForm(added.nickname, added.asks, words)),
          press("history-unknown", added.bike, words.bikes.labels.unknown),
          press("history-whole", added.bike, words.bikes.labels.whole),
          press("fit-part", added.bike, words.bikes.labels.fit),
        ],
      },
    ),
});
