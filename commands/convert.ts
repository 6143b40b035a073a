// /convert: a figure in one unit as the tool in the hand shows it.

import { askConvert, type Conversion } from "../src/core/quantity/convert-question.ts";
import { define, shapeOf } from "./define.ts";
import { sayConversion } from "./replies/conversion.ts";
import { conversion } from "./shapes.ts";

type Converted = Extract<Conversion, { is: "converted" }>;
export const convert = define({
  name: "convert",
  sub: null,
  options: { what: { takes: "text", required: true }, to: { takes: "text", required: false, complete: "unit" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Converted>(conversion),
  run: async (ctx, { what, to }) => {
    const asked = askConvert(what, to ?? null, ctx.vocabulary.units, ctx.who.numbers);
    if (asked.is === "converted") return { is: "done", value: asked };
    return { is: "refused", why: { why: "cannot convert", typed: what, because: asked.why, to: to ?? null, candidates: asked.candidates } };
  },
  say: sayConversion,
});
