// /tyre pressure: what to set in a warm garage before a cold road.

import { z } from "zod";
import { pressureIndoors, type SetIndoors } from "../src/usecases/judge-tyres.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

const amount = z.object({ value: z.number(), unit: z.string() });

export const tyrePressure = define({
  name: "tyre",
  sub: "pressure",
  options: { want: { takes: "text", required: true }, garage: { takes: "text", required: true }, road: { takes: "text", required: true } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<SetIndoors>(
    z.object({ want: amount, garage: amount, road: amount, garageIs: z.enum(["warmer", "as warm", "colder", "too far apart"]), set: z.number() }),
  ),
  run: async (ctx, input) => pressureIndoors(ctx, input),
  say: (answer, words) => said(words.tyres.indoors(answer), { caution: words.caution("tyres") }),
});
