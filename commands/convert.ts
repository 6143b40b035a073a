// /convert: a figure in one unit as the tool in the hand shows it.

import { z } from "zod";
import { askConvert, type Conversion } from "../src/core/quantity/convert-question.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

type Converted = Extract<Conversion, { is: "converted" }>;
const answer = z.object({
  unit: z.string(),
  from: z.number(),
  to: z.number(),
  middle: z.number().nullable(),
  exact: z.array(z.number()).length(2),
  decimals: z.number().int(),
});

export const convert = define({
  name: "convert",
  sub: null,
  options: { what: { takes: "text", required: true }, to: { takes: "text", required: false, complete: "unit" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Converted>(
    z.object({
      is: z.literal("converted"),
      typed: z.string(),
      from: z.number(),
      to: z.number(),
      middle: z.number().nullable(),
      unit: z.string(),
      answers: z.array(answer),
      taken: z.boolean(),
    }),
  ),
  run: async (ctx, { what, to }) => {
    const asked = askConvert(what, to ?? null, ctx.vocabulary.units, ctx.who.numbers);
    if (asked.is === "converted") return { is: "done", value: asked };
    return { is: "refused", why: { why: "cannot convert", typed: what, because: asked.why, to: to ?? null, candidates: asked.candidates } };
  },
  say: (converted, words) => said([words.convert.answer(converted), ...words.convert.notes(converted)], { caution: words.convert.caution(converted) }),
});
