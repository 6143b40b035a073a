// /tyre date: how old a tyre is by the code moulded on it.

import { z } from "zod";
import { type TyreDated, tyreDated } from "../src/usecases/judge-tyres.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { tyreMade } from "./shapes.ts";

export const tyreDate = define({
  name: "tyre",
  sub: "date",
  options: { code: { takes: "text", required: true } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<TyreDated>(
    z.object({
      typed: z.string(),
      date: tyreMade,
      months: z.number().int(),
      age: z.enum(["within", "look yearly", "replace"]),
    }),
  ),
  run: async (ctx, input) => tyreDated(ctx, input),
  say: ({ date, months, age }, words) => said(words.tyres.dated(date, months, age), { caution: age === "within" ? null : words.caution("tyres") }),
});
