// /bike card: a roadside card to keep on the phone for where there is no signal.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type CardShown, roadsideCard } from "../src/usecases/picture-card.ts";
import { define, shapeOf } from "./define.ts";
import { drawRoadsideCard, sayCard } from "./replies/card.ts";
import { equipment } from "./shapes.ts";

export const bikeCard = define({
  name: "bike",
  sub: "card",
  options: { bike: { takes: "text", required: false, complete: "bike" }, recovery: { takes: "text", required: false } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<CardShown>(
    z.object({
      bike: z.string(),
      nickname: z.string(),
      equipment,
      rows: z.array(
        z.object({
          key: z.string(),
          said: z.array(z.object({ use: z.enum(["solo", "two-up", "loaded"]).nullable(), typed: z.string() })),
          differ: z.boolean(),
        }),
      ),
      recovery: z.string().nullable(),
      saved: z.boolean(),
    }),
  ),
  run: (ctx, { bike, recovery }) => roadsideCard(ctx, given({ bike, recovery })),
  say: sayCard,
  draw: drawRoadsideCard,
});
