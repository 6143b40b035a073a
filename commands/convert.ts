// /convert: a figure in one unit as the tool in the hand shows it.

import { type ConvertAnswer, convertTyped } from "../src/usecases/convert.ts";
import { define, shapeOf } from "./define.ts";
import { sayConversion } from "./replies/conversion.ts";
import { conversion } from "./shapes-tools.ts";

export const convert = define({
  name: "convert",
  sub: null,
  options: {
    what: { takes: "text", required: true },
    to: { takes: "text", required: false, complete: "unit" },
    exact: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<ConvertAnswer>(conversion),
  run: (ctx, { what, to, exact }) => convertTyped(ctx, what, to ?? null, exact ?? false),
  say: sayConversion,
});
